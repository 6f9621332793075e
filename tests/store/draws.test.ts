import { describe, expect, test } from 'vitest';
import { runDraws } from '../../app/core/season/draws/runDraws';
import { drawsQuestion } from '../../app/document/drawsQuestion';
import { dayOf } from '../../app/core/days';
import type { Amount, Garden } from '../../app/document/schema';
import { serializeGarden } from '../../app/document/serialize';
import type { LayingDraft } from '../../app/store/contract';
import { success } from '../../app/core/result';
import { limits } from '../../app/tables/thresholds';
import { sameThreadEngine } from '../../app/worker/client';
import { lookUpEvery } from '../../app/worker/slices';
import type { AskOptions, Engine, Question, Settled } from '../../app/worker/protocol';
import { exampleGarden as wholeExample } from '../document/exampleGarden';
import { settle, storeWith, testStore, type TestStore } from './surroundings';

interface AskedDraws {
  readonly count: number;
  readonly beds: readonly string[];
}

/** What was asked of an engine that runs a fifth of the draws asked for, or answers as the test says. */
function listening(answers: { draws?: () => Promise<Settled<never>> | null } = {}) {
  const inner = sameThreadEngine();
  const drawsAsked: AskedDraws[] = [];
  const engine: Engine = {
    ask: (question: Question, options?: AskOptions): Promise<Settled<any>> => {
      if (question.kind !== 'draws') return inner.ask(question as never, options);
      drawsAsked.push({
        count: question.beds[0]?.count ?? 0,
        beds: question.beds.map(({ input }) => input.bedId),
      });
      const own = answers.draws?.() ?? null;
      if (own !== null) return own;
      const beds = question.beds.map((bed) => ({ ...bed, count: bed.count / 5 }));
      return inner.ask<'draws'>({ ...question, beds }, options);
    },
    stop: () => inner.stop(),
  };
  return { engine, drawsAsked };
}

/** The example without its nitrate test, so that no bed's draws are ever too few. */
function exampleGarden(): Garden {
  const garden = wholeExample();
  garden.events = garden.events.filter(({ kind }) => kind !== 'soil test');
  return garden;
}

const opened = async (
  garden: Garden = exampleGarden(),
  answers: Parameters<typeof listening>[0] = {},
): Promise<TestStore & ReturnType<typeof listening>> => {
  const heard = listening(answers);
  return { ...(await storeWith(garden, { engine: heard.engine })), ...heard };
};
/** Lets time pass until it is so; a failed test when it never is. */
const until = async (time: TestStore['time'], isSo: () => boolean, step = 10): Promise<void> => {
  for (let turn = 0; turn < 200 && !isSo(); turn++) await time.pass(step);
  expect(isSo()).toBe(true);
};
/** A change that every bed is asked about anew for. */
const moved = ({ store }: TestStore, degrees: number): void =>
  void store.getState().editGarden({ latitudeDegrees: 40 + degrees });
const stages = ({ store }: TestStore): Record<string, string> =>
  Object.fromEntries(
    Object.entries(store.getState().draws).map(([id, { stage, isBehind }]) => [
      id,
      isBehind ? `${stage}, behind` : stage,
    ]),
  );
const draft = (litres: number): LayingDraft => {
  const amount: Amount = {
    text: `${String(litres)} L`,
    quantity: { kind: 'volume', litres },
    certainty: 'plain',
  };
  return {
    bedId: 'bed-1',
    date: '2021-06-20',
    placement: 'laid',
    passedStops: [],
    parts: [
      {
        from: { source: 'mowing', mowingId: 'mowing-1' },
        amount,
        condition: 'just cut',
        wetness: 'damp',
      },
    ],
  };
};

describe('imagined seasons', () => {
  test('a hundred once the beds are reckoned, a thousand when nothing changes for a while', async () => {
    const one = await opened();
    expect(one.store.getState()).toMatchObject({ draws: {}, drawsWork: { state: 'working' } });
    expect(one.drawsAsked).toEqual([]);
    await until(one.time, () => stages(one)['bed-2'] === 'quick');
    expect(one.store.getState().drawsWork).toMatchObject({ state: 'working', done: 40, of: 40 });
    await one.time.pass(1_300);
    expect(stages(one)).toEqual({ 'bed-1': 'quick', 'bed-2': 'quick' });
    await until(one.time, () => one.store.getState().drawsWork.state === 'ready');
    expect(stages(one)).toEqual({ 'bed-1': 'whole', 'bed-2': 'whole' });
    expect(one.drawsAsked.map(({ count }) => count)).toEqual([100, 1000]);
    expect(one.store.getState().drawsWork).toMatchObject({ done: 400, of: 400, reason: null });
    await one.time.pass(10_000);
    expect(one.drawsAsked).toHaveLength(2);
  });

  test('are those of the engine, to the last digit', async () => {
    const { store, time } = await storeWith(exampleGarden(), { engine: sameThreadEngine() });
    await until(time, () => Object.keys(store.getState().draws).length === 2);
    const question = drawsQuestion(exampleGarden(), 'bed-1', dayOf('2021-06-20'), 100);
    expect(store.getState().draws['bed-1']!.answer).toEqual(runDraws(question, limits));
  });

  test('the bed that is looked at comes first', async () => {
    const one = await opened();
    one.store.getState().openBed('bed-2');
    await until(one.time, () => one.drawsAsked.length > 0);
    expect(one.drawsAsked[0]!.beds).toEqual(['bed-2', 'bed-1']);
  });

  test('each bed is there as soon as it is done', async () => {
    const one = await opened();
    const seen = new Set<string>();
    one.store.subscribe(() => seen.add(JSON.stringify(Object.keys(one.store.getState().draws))));
    await until(one.time, () => one.store.getState().drawsWork.state === 'ready', 100);
    expect([...seen]).toContain('["bed-1"]');
    expect([...seen].at(-1)).toBe('["bed-1","bed-2"]');
  });

  test('after a change the last good ones stay, said to be of before, and only a hundred are run', async () => {
    const one = await opened();
    await until(one.time, () => one.store.getState().drawsWork.state === 'ready', 100);
    const before = one.store.getState().draws['bed-1']!.answer;
    for (const degrees of [1, 2, 3]) {
      moved(one, degrees);
      expect(stages(one)).toEqual({ 'bed-1': 'whole, behind', 'bed-2': 'whole, behind' });
      expect(one.store.getState().draws['bed-1']!.answer).toBe(before);
      expect(one.store.getState().drawsWork).toMatchObject({ state: 'working', done: 0 });
      await one.time.pass(30);
    }
    await until(one.time, () => stages(one)['bed-2'] === 'quick');
    expect(one.drawsAsked.map(({ count }) => count)).toEqual([100, 1000, 100]);
    moved(one, 4);
    await one.time.pass(1_000);
    expect(one.drawsAsked.map(({ count }) => count)).toEqual([100, 1000, 100, 100]);
  });

  test('a bed that is gone has none; a bed that is new has none yet', async () => {
    const one = await opened();
    await until(one.time, () => one.store.getState().drawsWork.state === 'ready', 100);
    one.store.getState().deleteBed('bed-2');
    const [bed] = one.store.getState().garden!.beds;
    const { id: _id, ...rest } = bed!;
    one.store.getState().addBed({ ...rest, name: 'New' });
    expect(stages(one)).toEqual({ 'bed-1': 'whole' });
    await until(one.time, () => Object.keys(stages(one)).length === 2);
    // the bed that stayed is not run again
    expect(one.drawsAsked.at(-1)!.beds).toHaveLength(1);
    expect(one.drawsAsked.at(-1)!.beds).not.toContain('bed-1');
  });

  test('those of another garden are not shown, though its beds bear the same ids', async () => {
    const other = exampleGarden();
    other.garden.name = 'Another';
    const one = await opened();
    await until(one.time, () => Object.keys(stages(one)).length === 2);
    one.store.getState().openText(serializeGarden(other), 'Another');
    expect(one.store.getState().draws).toEqual({});
    await one.store.getState().closeGarden();
    expect(one.store.getState()).toMatchObject({ draws: {}, drawsWork: { state: 'idle', of: 0 } });
  });

  test('when the day turns they are of before', async () => {
    const garden = exampleGarden();
    garden.garden.today = null;
    const one = await opened(garden);
    await until(one.time, () => Object.keys(stages(one)).length === 2);
    one.store.setState({ about: { native: false, version: '0', folder: '', today: '2021-06-21' } });
    expect(stages(one)).toEqual({ 'bed-1': 'quick, behind', 'bed-2': 'quick, behind' });
  });

  test('nothing is asked of a garden without beds', async () => {
    const garden = exampleGarden();
    Object.assign(garden, { beds: [], plantings: [], applications: [] });
    garden.events = garden.events.filter((event) => !('bedId' in event));
    const one = await opened(garden);
    await one.time.pass(5_000);
    expect(one.drawsAsked).toEqual([]);
    expect(one.store.getState().drawsWork).toMatchObject({ state: 'idle', of: 0 });
  });
});

describe('stopping them', () => {
  test('ends what runs, keeps what is there, and asks for no more until told to', async () => {
    const one = await opened();
    await until(one.time, () => Object.keys(stages(one)).length === 2);
    one.store.getState().stopDraws();
    expect(one.store.getState().drawsWork).toMatchObject({ state: 'idle', isStopped: true });
    await one.time.pass(5_000);
    moved(one, 1);
    await one.time.pass(5_000);
    expect(one.drawsAsked).toHaveLength(1);
    expect(stages(one)).toEqual({ 'bed-1': 'quick, behind', 'bed-2': 'quick, behind' });
    expect(one.store.getState().drawsWork).toMatchObject({ state: 'idle', isStopped: true });

    one.store.getState().resumeDraws();
    await until(one.time, () => one.store.getState().drawsWork.state === 'ready', 100);
    expect(one.drawsAsked.map(({ count }) => count)).toEqual([100, 100, 1000]);
    expect(stages(one)).toEqual({ 'bed-1': 'whole', 'bed-2': 'whole' });
  });

  test('goes on where it was: what is up to date is not run again', async () => {
    const one = await opened();
    await until(one.time, () => Object.keys(stages(one)).length === 2);
    one.store.getState().stopDraws();
    one.store.getState().resumeDraws();
    await until(one.time, () => one.store.getState().drawsWork.state === 'ready', 100);
    expect(one.drawsAsked.map(({ count }) => count)).toEqual([100, 1000]);
    one.store.getState().stopDraws();
    one.store.getState().resumeDraws();
    expect(one.store.getState().drawsWork).toMatchObject({ state: 'ready', isStopped: false });
    expect(one.drawsAsked).toHaveLength(2);
  });

  test('in the middle of a bed leaves no half answer', async () => {
    const garden = exampleGarden();
    const one = await storeWith(garden, { engine: sameThreadEngine(() => lookUpEvery(30)) });
    const seen: number[] = [];
    one.store.subscribe(({ drawsWork, stopDraws }) => {
      seen.push(drawsWork.done);
      // the first bed is whole, of the second twenty of a hundred are run
      if (drawsWork.done === 120 && !drawsWork.isStopped) stopDraws();
    });
    await until(one.time, () => one.store.getState().drawsWork.isStopped);
    await one.time.pass(500);
    expect(Math.max(...seen)).toBe(120);
    const { draws } = one.store.getState();
    expect(Object.keys(draws)).toEqual(['bed-1']);
    const question = drawsQuestion(garden, 'bed-1', dayOf('2021-06-20'), 100);
    expect(draws['bed-1']!.answer).toEqual(runDraws(question, limits));
  });
});

describe('when they fail', () => {
  test('it is said why, and the last good ones stay', async () => {
    let isBroken = false;
    const one = await opened(exampleGarden(), {
      draws: () =>
        isBroken ? Promise.resolve({ state: 'failed', reason: 'a flow ran backwards' }) : null,
    });
    await until(one.time, () => one.store.getState().drawsWork.state === 'ready', 100);
    isBroken = true;
    moved(one, 1);
    await until(one.time, () => one.store.getState().drawsWork.state === 'failed');
    expect(one.store.getState().drawsWork.reason).toBe('a flow ran backwards');
    expect(one.store.getState().work).toBe('ready');
    expect(stages(one)).toEqual({ 'bed-1': 'whole, behind', 'bed-2': 'whole, behind' });
    isBroken = false;
    moved(one, 2);
    expect(one.store.getState().drawsWork).toMatchObject({ state: 'working', reason: null });
    await until(one.time, () => one.store.getState().drawsWork.state === 'ready', 100);
  });

  test('beds that cannot be reckoned are not imagined either', async () => {
    const engine: Engine = {
      ask: async () => ({ state: 'failed', reason: 'broken' }),
      stop: () => undefined,
    };
    const { store, time } = await storeWith(exampleGarden(), { engine });
    await time.pass(3_000);
    expect(store.getState()).toMatchObject({
      work: 'failed',
      drawsWork: { state: 'failed', reason: 'broken' },
    });
  });

  test('an answer that comes after a change is dropped', async () => {
    const waiting: ((settled: Settled<never>) => void)[] = [];
    const one = await opened(exampleGarden(), {
      draws: () => new Promise((resolve) => waiting.push(resolve)),
    });
    await until(one.time, () => waiting.length === 1);
    one.store.getState().editGarden({ name: 'Other' });
    const answers = ['bed-1', 'bed-2'].map(
      (id) => runDraws(drawsQuestion(exampleGarden(), id, dayOf('2021-06-20'), 5), limits) as never,
    );
    waiting[0]!({ state: 'answered', answer: answers as never });
    await settle();
    expect(one.store.getState().draws).toEqual({});
    await until(one.time, () => waiting.length === 2);
    waiting[1]!({ state: 'answered', answer: answers as never });
    await settle();
    // also from an engine that tells nothing on the way
    expect(Object.keys(stages(one))).toEqual(['bed-1', 'bed-2']);
  });
});

describe('cautions that need them', () => {
  /** Tomatoes alone, with far more rich clippings than they can use. */
  const rich = (): Garden => {
    const garden = exampleGarden();
    const [, tomato] = garden.plantings;
    garden.plantings = [{ ...tomato!, share: 1 }];
    garden.events = [];
    garden.applications.push({
      ...garden.applications[0]!,
      id: 'application-8',
      date: '2021-06-01',
      from: { source: 'elsewhere', materialId: 'grass-fresh-fertilised' },
      amount: {
        text: '12 cm',
        quantity: { kind: 'depth', millimetres: 120 },
        certainty: 'plain',
      },
      mixtureId: null,
    });
    return garden;
  };
  const kinds = ({ store }: TestStore): string[] =>
    (store.getState().bedResults['bed-1']?.cautions ?? []).map(({ kind }) => kind);

  test('come with them, stay while they are of before, and go when they no longer hold', async () => {
    const one = await opened(rich());
    await until(one.time, () => one.store.getState().work === 'ready');
    await until(one.time, () => kinds(one).includes('over-feeding'));
    one.store.getState().editGarden({ name: 'Other' });
    await until(one.time, () => one.store.getState().work === 'ready');
    expect(kinds(one).filter((kind) => kind === 'over-feeding')).toHaveLength(1);
    one.store.getState().deleteApplication('application-8');
    await until(one.time, () => one.store.getState().drawsWork.state === 'ready', 100);
    expect(kinds(one)).not.toContain('over-feeding');
  });

  test('a proposed layer is judged by the same seasons with and without it', async () => {
    const garden = exampleGarden();
    garden.plantings = [{ ...garden.plantings[1]!, share: 1 }];
    const one = await storeWith(garden, { engine: sameThreadEngine() });
    one.store.getState().propose([draft(900)]);
    await until(one.time, () => one.store.getState().preview?.beds[0]?.draws !== undefined, 100);
    const [bed] = one.store.getState().preview!.beds;
    const { before, after } = bed!.draws!;
    expect([before.count, after.count]).toEqual([100, 100]);
    expect(before).toEqual(
      runDraws(drawsQuestion(garden, 'bed-1', dayOf('2021-06-20'), 100), limits),
    );
    expect(after.overFeeding!.odds).toBeGreaterThan(before.overFeeding!.odds);
    const caution = bed!.cautions.find(({ kind }) => kind === 'over-feeding');
    expect(caution).toMatchObject({
      layerId: bed!.layerIds[0],
      number: 10 * after.overFeeding!.odds,
    });
    // another proposal shows its own, or none yet
    one.store.getState().propose([draft(1)]);
    await until(one.time, () => one.store.getState().preview?.state === 'ready');
    await until(
      one.time,
      () => (one.store.getState().preview?.beds[0]?.draws?.after.overFeeding?.odds ?? 1) < 0.3,
    );
    expect(one.store.getState().preview!.beds[0]!.cautions.map(({ kind }) => kind)).not.toContain(
      'over-feeding',
    );
  });
});

test('a store that opens nothing imagines nothing', async () => {
  const heard = listening();
  const { store, time } = testStore({
    engine: heard.engine,
    answers: { recentGardens: async () => success([]) },
  });
  await time.pass(5_000);
  expect(heard.drawsAsked).toEqual([]);
  expect(store.getState().drawsWork.state).toBe('idle');
});
