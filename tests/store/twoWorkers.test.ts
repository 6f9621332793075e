import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { runDraws, type DrawsAnswer } from '../../app/core/season/draws/runDraws';
import { bedQuestion } from '../../app/document/bedQuestion';
import { drawsQuestions } from '../../app/document/drawsQuestion';
import { limits } from '../../app/tables/thresholds';
import { workerEngine } from '../../app/worker/client';
import { dealtOut } from '../../app/worker/inParts';
import type { Progress, QuestionOf, Settled } from '../../app/worker/protocol';
import { exampleGarden } from '../document/exampleGarden';
import { turn, WorkingWorker } from './workingWorker';

/* Where there are two cores, the imagined seasons of a garden's beds are run in both workers. */

const today = dayOf('2021-06-20');
const both = drawsQuestions(exampleGarden(), ['bed-1', 'bed-2'], today, 30);
const names = ['one', 'two', 'three', 'four', 'five'];
/** Five beds of a garden, two of them new, under five names. */
const draws = (count = 30, of = names): QuestionOf<'draws'> => ({
  kind: 'draws',
  beds: of.map((bedId, at) => {
    const bed = both[at % 2]!;
    return { ...bed, count, input: { ...bed.input, bedId } };
  }),
  limits,
});
const known = new Map<string, DrawsAnswer>();
/** What the sums alone say of each bed. */
const alone = (question: QuestionOf<'draws'>): readonly DrawsAnswer[] =>
  question.beds.map((bed) => {
    const key = `${String(bed.count)} ${bed.input.bedId}`;
    const answer = known.get(key) ?? runDraws(bed, limits)!;
    known.set(key, answer);
    return answer;
  });
const engineOf = (cores: number) => {
  WorkingWorker.made = [];
  return workerEngine(() => new WorkingWorker(), cores);
};
const answered = <Answer>(settled: Settled<Answer>): Answer => {
  if (settled.state !== 'answered') throw new Error(settled.state);
  return settled.answer;
};
const bedsAskedOf = (worker: WorkingWorker): readonly string[] =>
  worker.heard.flatMap((message) =>
    'question' in message && message.question.kind === 'draws'
      ? message.question.beds.map(({ input }) => input.bedId)
      : [],
  );

describe('beds dealt out', () => {
  const bed = (days: number, count = 10) => ({
    ...both[0]!,
    count,
    input: { ...both[0]!.input, firstDay: 1, lastDay: days },
  });
  test('each goes where least is to be done, the first ones first', () => {
    expect(dealtOut([bed(100), bed(100), bed(100), bed(100)], 2)).toEqual([
      [0, 2],
      [1, 3],
    ]);
    // days and draws are what a bed costs
    expect(dealtOut([bed(300), bed(100), bed(100), bed(50, 40), bed(10)], 2)).toEqual([
      [0, 4],
      [1, 2, 3],
    ]);
  });
  test('no part is empty, and none is left out', () => {
    expect(dealtOut([bed(100)], 2)).toEqual([[0]]);
    expect(dealtOut([], 2)).toEqual([]);
    expect(
      dealtOut([bed(1), bed(900), bed(2)], 3)
        .flat()
        .toSorted(),
    ).toEqual([0, 1, 2]);
  });
});

describe('imagined seasons in two workers', () => {
  test('are those of one, to the last digit and in the same order; both had beds to do', async () => {
    const one = answered(await engineOf(1).ask<'draws'>(draws()));
    expect(WorkingWorker.made).toHaveLength(1);
    const two = answered(await engineOf(2).ask<'draws'>(draws()));
    const asked = WorkingWorker.made.map(bedsAskedOf);
    expect(asked.map(([first]) => first)).toEqual(['one', 'two']);
    expect(asked.flat().toSorted()).toEqual(names.toSorted());
    expect(two).toEqual(one);
    expect(two).toEqual(alone(draws()));
  });

  test('tell together how far they are, and of each bed once', async () => {
    const told: Progress[] = [];
    await engineOf(2).ask<'draws'>(draws(), { onProgress: (progress) => told.push(progress) });
    const done = told.map((progress) => progress.done);
    expect(done).toEqual(done.toSorted((one, other) => one - other));
    expect(told.every(({ of }) => of === 150)).toBe(true);
    expect(done.at(-1)).toBe(150);
    const beds = told.flatMap(({ bed }) => (bed ? [bed] : []));
    expect(beds).toHaveLength(5);
    expect(beds.slice(0, 2).map(({ bedId }) => bedId)).toContain('one');
    const byName = new Map(beds.map((bed) => [bed.bedId, bed]));
    expect(names.map((name) => byName.get(name))).toEqual(alone(draws()));
  });

  test('what is on screen is answered meanwhile, and never are there more than two', async () => {
    const engine = engineOf(2);
    const order: string[] = [];
    const long = engine.ask<'draws'>(draws(60)).then((settled) => {
      order.push('draws');
      return answered(settled);
    });
    await turn();
    const beds = { kind: 'beds' as const, beds: [bedQuestion(exampleGarden(), 'bed-1', today)] };
    const [short] = await Promise.all([
      engine.ask<'beds'>({ ...beds, limits }),
      engine.ask<'proposal'>({ kind: 'proposal', beds: [], limits }),
      engine.ask<'history'>({ kind: 'history', weeks: [], limits }),
    ]);
    order.push('the screen');
    expect(answered(short)).toHaveLength(1);
    expect(await long).toHaveLength(5);
    expect(order).toEqual(['the screen', 'draws']);
    expect(WorkingWorker.made).toHaveLength(2);
  });

  test.each([
    ['several beds', names],
    ['one bed', ['one']],
  ])('a newer question, of %s, calls off both parts, which then say nothing', async (_many, of) => {
    const engine = engineOf(2);
    const told: Progress[] = [];
    const older = engine.ask<'draws'>(draws(500), {
      onProgress: (progress) => void told.push(progress),
    });
    while (told.length < 2) await turn();
    const newer = engine.ask<'draws'>(draws(20, of));
    expect(await older).toEqual({ state: 'superseded' });
    const toldThen = told.length;
    expect(answered(await newer)).toEqual(alone(draws(20, of)));
    expect(told).toHaveLength(toldThen);
    for (const worker of WorkingWorker.made) {
      const stopped = worker.heard.find((message) => 'stop' in message)!;
      expect(stopped).toBeDefined();
      expect(worker.said.filter(({ id }) => id === stopped.id).at(-1)).not.toHaveProperty('ok');
    }
  });

  test('called off they are superseded, and both workers hear of it', async () => {
    const engine = engineOf(2);
    const controller = new AbortController();
    const told: Progress[] = [];
    const open = engine.ask<'draws'>(draws(500), {
      signal: controller.signal,
      onProgress: (progress) => void told.push(progress),
    });
    while (told.length < 2) await turn();
    controller.abort();
    expect(await open).toEqual({ state: 'superseded' });
    for (const worker of WorkingWorker.made)
      expect(worker.heard.at(-1)).toMatchObject({ stop: true });
    const late = engine.ask<'draws'>(draws(), { signal: controller.signal });
    expect(await late).toEqual({ state: 'superseded' });
    expect(answered(await engine.ask<'draws'>(draws(20)))).toEqual(alone(draws(20)));
  });

  test.each([0, 1])(
    'worker %i dies: they fail, the other stops, the next are answered',
    async (at) => {
      const engine = engineOf(2);
      const told: Progress[] = [];
      const open = engine.ask<'draws'>(draws(500), {
        onProgress: (progress) => void told.push(progress),
      });
      while (told.length < 2) await turn();
      WorkingWorker.made[at]!.onerror?.({ message: 'out of memory' } as ErrorEvent);
      expect(await open).toEqual({ state: 'failed', reason: 'out of memory' });
      const toldThen = told.length;
      expect(WorkingWorker.made[1 - at]!.heard.at(-1)).toMatchObject({ stop: true });
      expect(answered(await engine.ask<'draws'>(draws()))).toEqual(alone(draws()));
      expect(told).toHaveLength(toldThen);
      expect(WorkingWorker.made).toHaveLength(3);
    },
  );

  test('a broken promise of ours is a reason, not silence', async () => {
    const broken = { kind: 'draws', beds: [{}, {}], limits } as never;
    expect(await engineOf(2).ask<'draws'>(broken)).toMatchObject({ state: 'failed' });
    const inOne = { ...draws(), beds: [...draws().beds, { ...both[0]!, spread: null }] } as never;
    expect(await engineOf(2).ask<'draws'>(inOne)).toMatchObject({ state: 'failed' });
  });

  test('no worker can be made: a failure, not a crash', async () => {
    const engine = workerEngine(() => {
      throw new Error('no workers here');
    }, 2);
    expect(await engine.ask<'draws'>(draws())).toEqual({
      state: 'failed',
      reason: 'no workers here',
    });
  });

  test('stopped, they are superseded', async () => {
    const engine = engineOf(2);
    const open = engine.ask<'draws'>(draws());
    engine.stop();
    expect(await open).toEqual({ state: 'superseded' });
    expect(WorkingWorker.made.every(({ isGone }) => isGone)).toBe(true);
  });
});
