import { join } from 'node:path';
import { flowKinds } from '../../../app/core/season/flows';
import type { BedSeason } from '../../../app/core/season/input';
import { lowerDepthFor, runPlan } from '../../../app/core/season/runPlan';
import { newWatch, watchSeason } from '../../../app/core/season/watchSeason';
import { bigGarden } from '../bigGarden';
import { drawsQuestions } from '../drawsQuestions';
import { compilerName, kernelPort, largestDifference } from '../kernelPort';
import type { BenchPart } from '../part';
import { profileParts } from '../profileParts';
import { median, table, verdictOf } from '../table';

const limit = 2.5;
const aim = 1.6;
const rounds = 9;
const runsPerRound = 300;
const agreement = 1e-9;
const longBeds = 5;
const longRunsPerRound = 30;

const partsOfADay: readonly (readonly [string, string])[] = [
  ['start', 'the first morning'],
  ['events', 'entries, and what is laid'],
  ['plants', 'the plants’ clock and their water'],
  ['water', 'water, temperature'],
  ['losses', 'washing out, rain, humus'],
  ['decay', 'decomposition'],
  ['cover', 'cover sinking, ammonia, wash-in'],
  ['uptake', 'fixation and uptake'],
  ['harvest', 'picking and clearing'],
  ['keep', 'what a draw keeps'],
  ['memory', 'collecting memory'],
];

/** A bed ready to be run over and over, as draws do. */
function runner(input: BedSeason): () => void {
  const plan = runPlan(input, lowerDepthFor(input));
  const watch = newWatch(input);
  const flows = new Float64Array(flowKinds.length);
  return () => watchSeason(input, plan, watch, flows);
}

/** Nanoseconds of a run: of the fastest, and processor time of all on average. */
function timed(run: () => void, runs: number): { fastest: number; average: number } {
  let fastest = Infinity;
  const before = process.cpuUsage();
  for (let at = 0; at < runs; at++) {
    const start = process.hrtime.bigint();
    run();
    fastest = Math.min(fastest, Number(process.hrtime.bigint() - start));
  }
  const { user, system } = process.cpuUsage(before);
  return { fastest, average: (1000 * (user + system)) / runs };
}

export const part: BenchPart = {
  title: 'the lean season against the same loop in C',
  async run({ top, folder, say }) {
    const name = compilerName();
    if (name === null) return 'Not measured: there is no gcc here.';
    const port = kernelPort(join(top, 'tests/bench/kernel.c'), folder);
    const beds = drawsQuestions(bigGarden({ beds: 12, years: 1, seed: 1 }), 1, 1).map(
      ({ input }) => ({ input, file: port.write(input, input.bedId), run: runner(input) }),
    );
    let apart = 0;
    for (const { input, file } of beds)
      apart = Math.max(apart, largestDifference(input, port.days(file)));
    // with seasons that turn, and raking and digging in what lies
    const long = drawsQuestions(bigGarden({ beds: longBeds, years: 10, seed: 2 }), 1, 1);
    const longRuns = long.map(({ input }) => ({
      input,
      file: port.write(input, `long ${input.bedId}`),
      run: runner(input),
    }));
    for (const { input, file } of longRuns)
      apart = Math.max(apart, largestDifference(input, port.days(file)));
    say(`largest difference ${apart.toExponential(1)}`);
    if (!(apart <= agreement))
      throw new Error(`The C port is not the engine: ${apart} apart, at most ${agreement} wanted`);

    for (const { run } of beds) timed(run, runsPerRound);
    const measured = Array.from({ length: rounds }, (_, round) => {
      const sums = { ours: 0, port: 0, oursFastest: 0, portFastest: 0 };
      for (const { run, file } of beds) {
        const own = timed(run, runsPerRound);
        const other = port.time(file, runsPerRound);
        sums.ours += own.average;
        sums.port += other.average;
        sums.oursFastest += own.fastest;
        sums.portFastest += other.fastest;
      }
      say(`round ${round + 1}: ${(sums.ours / sums.port).toFixed(2)}`);
      return sums;
    });
    const micro = (of: (sums: (typeof measured)[number]) => number): number =>
      median(measured.map(of)) / beds.length / 1000;
    const ratio = median(measured.map(({ ours, port: other }) => ours / other));
    const fastest = median(measured.map((sums) => sums.oursFastest / sums.portFastest));
    const spread = measured.map(({ ours, port: other }) => ours / other);
    const ours = micro((sums) => sums.ours);
    const theirs = micro((sums) => sums.port);
    const days = beds.reduce((sum, { input }) => sum + input.lastDay - input.firstDay + 1, 0);

    // the two in turn again, a bed and year of a log of ten years
    const longYears = longRuns.length * 10;
    for (const { run } of longRuns) timed(run, longRunsPerRound);
    const longMeasured = Array.from({ length: rounds }, () => {
      const sums = { ours: 0, port: 0 };
      for (const { run, file } of longRuns) {
        sums.ours += timed(run, longRunsPerRound).average / longYears / 1000;
        sums.port += port.time(file, longRunsPerRound).average / longYears / 1000;
      }
      return sums;
    });
    const longOurs = median(longMeasured.map((sums) => sums.ours));
    const longPort = median(longMeasured.map((sums) => sums.port));
    const own = await profileParts(() => {
      for (let at = 0; at < 2 * runsPerRound; at++) for (const { run } of beds) run();
    });
    const other = new Map<string, number>();
    for (const { file } of beds)
      for (const [key, share] of port.parts(file, 20 * runsPerRound))
        other.set(key, (other.get(key) ?? 0) + share / beds.length);
    const rest = partsOfADay.map(([key, words]) => {
      const here = (own.get(key) ?? 0) * ours;
      const there = (other.get(key) ?? 0) * theirs;
      return [words, here.toFixed(1), there.toFixed(1), (here - there).toFixed(1)];
    });

    return `One run of a bed over a year (${Math.round(days / beds.length)} days), mean of ${beds.length} made-up beds; ${name}, -O3. Both give the same pools and flows on every day, also of ${longBeds} beds over ten years, at most ${apart.toExponential(1)} g/m2 apart (${agreement.toExponential(0)} allowed).

${table(
  ['', 'TypeScript', 'C', 'ratio', `limit ${limit}, aim ${aim}`],
  [
    [
      'processor time, mean [µs]',
      ours.toFixed(1),
      theirs.toFixed(1),
      ratio.toFixed(2),
      verdictOf(ratio, limit, aim),
    ],
    [
      'fastest run [µs]',
      micro((sums) => sums.oursFastest).toFixed(1),
      micro((sums) => sums.portFastest).toFixed(1),
      fastest.toFixed(2),
      '',
    ],
    [
      'a year of ten [µs]',
      longOurs.toFixed(1),
      longPort.toFixed(1),
      (longOurs / longPort).toFixed(2),
      '',
    ],
    [
      'a year of ten / one year',
      (longOurs / ours).toFixed(2),
      (longPort / theirs).toFixed(2),
      '',
      '',
    ],
  ],
)}

Medians of ${rounds} rounds, the two in turn; ratios of the rounds ${Math.min(...spread).toFixed(2)} to ${Math.max(...spread).toFixed(2)}. Where the time goes, by looking in at random [µs of a run]:

${table(['', 'TypeScript', 'C', 'more'], rest)}`;
  },
};
