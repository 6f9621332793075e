// What-if and water in the store: weighed when wanted, stopped, anew after changes, and told when they fail.
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { runPaired } from '../../app/core/plan/pairedDraws';
import { whatIfQuestions } from '../../app/document/whatIfQuestion';
import type { Amount, Garden } from '../../app/document/schema';
import type { LayingDraft } from '../../app/store/contract';
import { applicationsOf } from '../../app/store/proposal';
import type { WhatIfDraft } from '../../app/store/whatIfContract';
import { limits } from '../../app/tables/thresholds';
import { sameThreadEngine as wholeEngine } from '../../app/worker/client';
import { lookUpEvery } from '../../app/worker/slices';
import type {
  AskOptions,
  Engine,
  Question,
  QuestionKind,
  Settled,
} from '../../app/worker/protocol';
import { exampleGarden as wholeExample } from '../document/exampleGarden';
import { storeWith, testStore, type TestStore } from './surroundings';

/** The example without its nitrate test, so that no bed's draws are ever too few. */
function exampleGarden(): Garden {
  const garden = wholeExample();
  garden.events = garden.events.filter(({ kind }) => kind !== 'soil test');
  return garden;
}

const draft = (litres: number, date = '2021-06-20'): LayingDraft => {
  const amount: Amount = {
    text: `${litres} L`,
    quantity: { kind: 'volume', litres },
    certainty: 'plain',
  };
  return {
    bedId: 'bed-1',
    date,
    placement: 'laid',
    passedStops: [],
    parts: [
      {
        from: { source: 'mowing', mowingId: 'mowing-1' },
        amount,
        condition: 'limp',
        wetness: 'damp',
      },
    ],
  };
};
const two: readonly WhatIfDraft[] = [
  { key: 'one', draft: draft(10) },
  { key: 'other', draft: draft(60, '2021-06-27') },
];

/** An engine for these questions alone; of the others nothing comes. */
function engineFor(
  own: Partial<Record<QuestionKind, () => Promise<Settled<never>>>> = {},
  drawsBetween = 10,
) {
  const inner = wholeEngine(() => lookUpEvery(drawsBetween));
  const asked: QuestionKind[] = [];
  const engine: Engine = {
    ask: (question: Question, options?: AskOptions): Promise<Settled<any>> => {
      asked.push(question.kind);
      const answer = own[question.kind];
      if (answer) return answer();
      return ['what if', 'what if draws', 'water'].includes(question.kind)
        ? inner.ask(question as never, options)
        : Promise.resolve({ state: 'superseded' });
    },
    stop: () => inner.stop(),
  };
  return { engine, asked };
}

const until = async (time: TestStore['time'], isSo: () => boolean): Promise<void> => {
  for (let turn = 0; turn < 400 && !isSo(); turn++) await time.pass(10);
  expect(isSo()).toBe(true);
};
const failed = async (): Promise<Settled<never>> => ({ state: 'failed', reason: 'a stone' });
const never = (): Promise<Settled<never>> => new Promise(() => undefined);

describe('what if', () => {
  test('the likely course of each alternative, then odds, those of the engine itself', async () => {
    const { engine } = engineFor();
    const { store, time } = await storeWith(exampleGarden(), { engine });
    store.getState().weighWhatIf('bed-1', two);
    expect(store.getState().whatIf).toMatchObject({ bedId: 'bed-1', state: 'working', likely: {} });
    await until(time, () => store.getState().whatIf?.draws.state === 'ready');
    const whatIf = store.getState().whatIf!;
    expect(whatIf.state).toBe('ready');
    expect(Object.keys(whatIf.likely)).toEqual(['one', 'other']);
    const garden = store.getState().garden!;
    const layers = two.map((one) => applicationsOf(garden, [one.draft]));
    const { imagined } = whatIfQuestions(garden, 'bed-1', dayOf('2021-06-20'), layers, 100);
    const [one, other] = runPaired(imagined, limits).others;
    expect(whatIf.draws).toMatchObject({ odds: { one, other }, count: 100, done: 300, of: 300 });
    // nothing of it is in the garden, nor in its history
    expect(garden.applications).toEqual(exampleGarden().applications);
    expect(store.getState().past).toEqual([]);
  });

  test('the newest alternatives count, and none at all are forgotten', async () => {
    const { engine, asked } = engineFor();
    const { store, time } = await storeWith(exampleGarden(), { engine });
    store.getState().weighWhatIf('bed-1', two);
    store.getState().weighWhatIf('bed-1', two.slice(0, 1));
    await until(time, () => store.getState().whatIf?.draws.state === 'ready');
    expect(Object.keys(store.getState().whatIf!.draws.odds)).toEqual(['one']);
    expect(asked.filter((kind) => kind === 'what if')).toHaveLength(1);
    store.getState().weighWhatIf('bed-1', []);
    expect(store.getState().whatIf).toBeNull();
    await time.pass(1_000);
    expect(store.getState().whatIf).toBeNull();
  });

  test('comparing is stopped, keeps the likely course, and goes on when asked', async () => {
    let isHeld = true;
    const { engine } = engineFor();
    const held: Engine = {
      ask: (question: Question, options?: AskOptions): Promise<Settled<any>> =>
        question.kind === 'what if draws' && isHeld
          ? never()
          : engine.ask(question as never, options),
      stop: () => engine.stop(),
    };
    const { store, time } = await storeWith(exampleGarden(), { engine: held });
    store.getState().weighWhatIf('bed-1', two);
    await until(time, () => store.getState().whatIf?.draws.state === 'working');
    store.getState().stopWhatIf();
    expect(store.getState().whatIf).toMatchObject({ state: 'ready', draws: { state: 'idle' } });
    expect(Object.keys(store.getState().whatIf!.likely)).toHaveLength(2);
    isHeld = false;
    store.getState().resumeWhatIf();
    await until(time, () => store.getState().whatIf?.draws.state === 'ready');
  });

  test('after a change of the garden it is weighed again; without its bed it is gone', async () => {
    const { engine, asked } = engineFor();
    const { store, time } = await storeWith(exampleGarden(), { engine });
    store.getState().weighWhatIf('bed-1', two.slice(0, 1));
    await until(time, () => store.getState().whatIf?.draws.state === 'ready');
    store.getState().editGarden({ name: 'Another' });
    expect(store.getState().whatIf).toMatchObject({ state: 'working', draws: { odds: {} } });
    await until(time, () => store.getState().whatIf?.draws.state === 'ready');
    expect(asked.filter((kind) => kind === 'what if')).toHaveLength(2);
    store.getState().deleteBed('bed-1');
    expect(store.getState().whatIf).toBeNull();
  });

  test('what fails says so: the sums, the seasons, and a layer the garden could not hold', async () => {
    const sums = await storeWith(exampleGarden(), engineFor({ 'what if': failed }));
    sums.store.getState().weighWhatIf('bed-1', two);
    await until(sums.time, () => sums.store.getState().whatIf?.state === 'failed');
    expect(sums.store.getState().whatIf?.reason).toBe('a stone');

    const seasons = await storeWith(exampleGarden(), engineFor({ 'what if draws': failed }));
    seasons.store.getState().weighWhatIf('bed-1', two);
    await until(seasons.time, () => seasons.store.getState().whatIf?.draws.state === 'failed');
    expect(seasons.store.getState().whatIf).toMatchObject({
      state: 'ready',
      draws: { reason: 'a stone' },
    });

    const broken = await storeWith(exampleGarden(), engineFor());
    const bad = draft(10);
    const from = { source: 'stock', stockId: 'nowhere' } as const;
    const parts = bad.parts.map((part) => ({ ...part, from }));
    broken.store.getState().weighWhatIf('bed-1', [{ key: 'bad', draft: { ...bad, parts } }]);
    await until(broken.time, () => broken.store.getState().whatIf?.state === 'failed');
    expect(broken.store.getState().whatIf?.reason).not.toBe('');
  });
});

describe('water', () => {
  test('is reckoned while a place shows it, and again after a change', async () => {
    const { engine, asked } = engineFor();
    const { store, time } = await storeWith(exampleGarden(), { engine });
    await time.pass(1_000);
    expect(asked).not.toContain('water');
    store.getState().wantWater();
    await until(time, () => store.getState().water.state === 'ready');
    expect(Object.keys(store.getState().water.beds).sort()).toEqual(['bed-1', 'bed-2']);
    store.getState().editGarden({ name: 'Another' });
    expect(store.getState().water.state).toBe('working');
    expect(Object.keys(store.getState().water.beds)).toHaveLength(2);
    await until(time, () => store.getState().water.state === 'ready');
    store.getState().leaveWater();
    store.getState().editGarden({ name: 'A third' });
    await time.pass(1_000);
    expect(asked.filter((kind) => kind === 'water')).toHaveLength(2);
  });

  test('in the hot July of the sample a bed is due; once watered it is not, and undone it is', async () => {
    const { engine } = engineFor();
    const { store, time } = testStore({ engine });
    await store.getState().startSample();
    store.getState().wantWater();
    const dueToday = (): boolean => {
      const { garden, water } = store.getState();
      return water.beds['bed-wall']?.due?.day === dayOf(garden!.garden.today!);
    };
    const ready = () => until(time, () => store.getState().water.state === 'ready');
    await ready();
    expect(dueToday()).toBe(false);
    for (let week = 0; week < 5; week++) {
      expect((await store.getState().goOnAWeek()).ok).toBe(true);
      expect(store.getState().water.state).toBe('working');
      await ready();
    }
    expect(store.getState().garden!.garden.today).toBe('2013-07-20');
    expect(dueToday()).toBe(true);
    const { pour } = store.getState().water.beds['bed-wall']!.due!;
    store
      .getState()
      .logEvent({ kind: 'water', bedId: 'bed-wall', date: '2013-07-20', millimetres: pour });
    await ready();
    expect(dueToday()).toBe(false);
    store.getState().undo();
    await ready();
    expect(dueToday()).toBe(true);
  });

  test('that failed says so', async () => {
    const { store, time } = await storeWith(exampleGarden(), engineFor({ water: failed }));
    store.getState().wantWater();
    await until(time, () => store.getState().water.state === 'failed');
    expect(store.getState().water.reason).toBe('a stone');
  });
});
