import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { startingState } from '../../app/core/season/startingState';
import { stepDay } from '../../app/core/season/day';
import { flowKinds, pools } from '../../app/core/season/flows';
import type { BedSeason } from '../../app/core/season/input';
import { lowerDepthFor, runPlan } from '../../app/core/season/runPlan';
import { kernelInput } from './kernelInput';

const compiler = 'gcc';

/** What the compiler calls itself; null where there is none. */
export function compilerName(): string | null {
  const { stdout, status } = spawnSync(compiler, ['--version'], { encoding: 'utf8' });
  return status === 0 ? stdout.split('\n')[0]!.trim() : null;
}

/** The C port, compiled, and asked about beds that were written down for it. */
export interface KernelPort {
  /** writes a bed where the port can read it; the place is the name the others take */
  write(input: BedSeason, name: string): string;
  /** nanoseconds of a run: of the fastest, and processor time of all on average */
  time(bed: string, runs: number): { fastest: number; average: number };
  /** share of the time in each part of a run */
  parts(bed: string, runs: number): ReadonlyMap<string, number>;
  /** pools and flows of every day */
  days(bed: string): number[][];
}

/** @param folder where it may write; throws what the compiler says when it does not compile */
export function kernelPort(source: string, folder: string): KernelPort {
  const compiled = (name: string, options: readonly string[]): string => {
    const program = join(folder, name);
    const words = ['-O3', '-std=c11', '-Wall', ...options, '-o', program, source, '-lm'];
    const done = spawnSync(compiler, words, { encoding: 'utf8' });
    if (done.status !== 0) throw new Error(`The C port does not compile.\n${done.stderr}`);
    return program;
  };
  const plain = compiled('kernel', []);
  const sampled = compiled('kernel-parts', ['-DPARTS']);
  const answer = (program: string, words: readonly string[]): string => {
    const done = spawnSync(program, words, { encoding: 'utf8', maxBuffer: 2 ** 28 });
    if (done.status !== 0) throw new Error(`The C port stopped. ${done.stderr}`);
    return done.stdout.trim();
  };
  return {
    write(input, name) {
      const file = join(folder, `${name}.bed`);
      writeFileSync(file, kernelInput(input));
      return file;
    },
    time(bed, runs) {
      const [fastest, all] = answer(plain, [bed, 'time', `${runs}`])
        .split(' ')
        .map(Number);
      return { fastest: fastest!, average: all! / runs };
    },
    parts(bed, runs) {
      const met = answer(sampled, [bed, 'parts', `${runs}`])
        .split('\n')
        .map((line): [string, number] => {
          const [name, count] = line.split(' ');
          return [name!, Number(count)];
        });
      const all = met.reduce((sum, [, count]) => sum + count, 0);
      return new Map(met.map(([name, count]) => [name, count / all]));
    },
    days: (bed) =>
      answer(plain, [bed, 'check'])
        .split('\n')
        .map((line) => line.trim().split(' ').map(Number)),
  };
}

/**
 * The largest difference of a pool or a flow on any day between the engine's day and the port's,
 * absolute below 1 g/m2 and relative above. Throws where the port has another number of days.
 */
export function largestDifference(input: BedSeason, days: readonly (readonly number[])[]): number {
  const lowerDepth = lowerDepthFor(input);
  const state = startingState(input, lowerDepth, runPlan(input, lowerDepth), false);
  const flows = new Float64Array(flowKinds.length);
  if (days.length !== input.lastDay - input.firstDay + 1) throw new Error('Days are missing');
  let largest = 0;
  days.forEach((numbers, index) => {
    flows.fill(0);
    stepDay(input, state, flows, index);
    const own = [...state.nitrogen.subarray(0, pools.length), ...flows];
    own.forEach((value, at) => {
      const apart = Math.abs(value - numbers[at]!) / Math.max(1, Math.abs(value));
      // a number that is none is as far off as can be
      largest = apart <= largest ? largest : Number.isNaN(apart) ? Infinity : apart;
    });
  });
  return largest;
}
