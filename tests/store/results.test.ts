import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import type { Amount, Garden } from '../../app/document/schema';
import { serializeGarden } from '../../app/document/serialize';
import type { LayingDraft, MowingsStore } from '../../app/store/contract';
import type { Engine } from '../../app/worker/protocol';
import { exampleGarden as wholeExample } from '../document/exampleGarden';
import {
  sameThreadEngine,
  silentEngine,
  storeWith,
  testStore,
  type TestStore,
} from './surroundings';

const litres = (value: number): Amount => ({
  text: `${String(value)} L`,
  quantity: { kind: 'volume', litres: value },
  certainty: 'plain',
});
/** The example with no stop passed yet. */
const exampleGarden = (): Garden => {
  const garden = wholeExample();
  for (const application of garden.applications) application.passedStops = [];
  return garden;
};
/** Clippings of the example's first lawn, which is clean. */
const draft = (changes: Partial<LayingDraft> & { litres?: number } = {}): LayingDraft => ({
  bedId: 'bed-1',
  date: '2021-06-20',
  placement: 'laid',
  passedStops: [],
  parts: [
    {
      from: { source: 'mowing', mowingId: 'mowing-1' },
      amount: litres(changes.litres ?? 30),
      condition: 'just cut',
      wetness: 'damp',
    },
  ],
  ...changes,
});
const reckoned = async (garden: Garden = exampleGarden()): Promise<TestStore> => {
  const opened = await storeWith(garden, { engine: sameThreadEngine() });
  await opened.time.pass(1000);
  return opened;
};
const until = async (time: TestStore['time'], isSo: () => boolean): Promise<void> => {
  for (let turn = 0; turn < 50 && !isSo(); turn++) await time.pass(100);
  expect(isSo()).toBe(true);
};

describe('beds', () => {
  test('are reckoned when a garden opens: season, state, cautions, balance', async () => {
    const { store } = await reckoned();
    const { work, bedResults } = store.getState();
    expect(work).toBe('ready');
    expect(Object.keys(bedResults).sort()).toEqual(['bed-1', 'bed-2']);
    expect(bedResults['bed-1']!.season.residual).toBeLessThan(1e-9);
    expect(bedResults['bed-2']!.verdict.state).toBe('nothing planted');
  });
  test('again after every change; the last good answers stay until then', async () => {
    const { store, time } = await reckoned();
    const before = store.getState().bedResults['bed-1'];
    store.getState().deleteApplication('application-1');
    expect(store.getState().work).toBe('working');
    expect(store.getState().bedResults['bed-1']).toBe(before);
    await time.pass(1000);
    expect(store.getState().work).toBe('ready');
    expect(store.getState().bedResults['bed-1']!.input.layers).toHaveLength(1);
    store.getState().undo();
    await time.pass(1000);
    expect(store.getState().bedResults['bed-1']!.verdict).toEqual(before!.verdict);
  });
  test('a bed that is gone has no results', async () => {
    const { store } = await reckoned();
    store.getState().deleteBed('bed-2');
    expect(Object.keys(store.getState().bedResults)).toEqual(['bed-1']);
  });
  test('an answer about an older garden is not shown', async () => {
    const answers: (() => void)[] = [];
    const inner = sameThreadEngine();
    const slow: Engine = {
      ask: (question) =>
        new Promise((resolve) => answers.push(() => void inner.ask(question).then(resolve))),
      stop: () => undefined,
    };
    const { store, time } = await storeWith(exampleGarden(), { engine: slow });
    await time.pass(100);
    store.getState().editGarden({ name: 'Other' });
    answers[0]?.();
    await time.pass(0);
    expect(store.getState()).toMatchObject({ work: 'working', bedResults: {} });
    await time.pass(100);
    answers[1]?.();
    await until(time, () => store.getState().work === 'ready');
  });
  test('a failure is said, with what was there before', async () => {
    let isBroken = false;
    const inner = sameThreadEngine();
    const engine: Engine = {
      ask: async (question) =>
        isBroken ? { state: 'failed', reason: 'a flow ran backwards' } : inner.ask(question),
      stop: () => undefined,
    };
    const { store, time } = await storeWith(exampleGarden(), { engine });
    await time.pass(1000);
    isBroken = true;
    store.getState().editGarden({ latitudeDegrees: 41 });
    await time.pass(1000);
    expect(store.getState()).toMatchObject({ work: 'failed', workReason: 'a flow ran backwards' });
    expect(Object.keys(store.getState().bedResults)).toHaveLength(2);
  });
  test('when the day turns', async () => {
    const garden = exampleGarden();
    garden.garden.today = null;
    const { store, time } = await reckoned(garden);
    expect(store.getState().bedResults['bed-1']!.input.today).toBe(dayOf('2021-06-20'));
    store.setState({ about: { native: false, version: '0', folder: '', today: '2021-06-21' } });
    await time.pass(1000);
    expect(store.getState().bedResults['bed-1']!.input.today).toBe(dayOf('2021-06-21'));
  });
  test('the state week by week as it was known, for the bed that is open', async () => {
    const { store, time } = await reckoned();
    expect(store.getState().history).toBeNull();
    store.getState().openBed('bed-1');
    await until(time, () => store.getState().history?.state === 'ready');
    const { weeks } = store.getState().history!;
    expect(weeks.at(-1)?.day).toBe(dayOf('2021-06-20'));
    expect(weeks.length).toBe(25);
    const early = weeks.find(({ day }) => day < dayOf('2021-05-20'))!;
    expect(early.nitrogen).toBe('nothing planted');
    const state = store.getState().history;
    store.getState().wantHistory('bed-1');
    expect(store.getState().history).toBe(state);
  });
});

describe('a proposed layer', () => {
  const proposed = async (drafts: readonly LayingDraft[]) => {
    const opened = await reckoned();
    opened.store.getState().propose(drafts);
    return opened;
  };
  const ready = (store: MowingsStore) => store.getState().preview?.state === 'ready';
  test('shows the bed with and without it, and is in no file and no history', async () => {
    const { store, time } = await proposed([draft()]);
    expect(store.getState().preview).toMatchObject({ state: 'working', beds: [] });
    await until(time, () => ready(store));
    const [bed] = store.getState().preview!.beds;
    expect(bed!.after.input.layers).toHaveLength(bed!.before.input.layers.length + 1);
    expect(bed!.layerIds).toEqual(['application-4']);
    expect(bed!.after.verdict.ratio).toBeGreaterThan(bed!.before.verdict.ratio!);
    expect(store.getState().past).toEqual([]);
    expect(store.getState().garden?.applications).toHaveLength(3);
  });
  test('typing on: one question after the pause, the newest', async () => {
    let questions = 0;
    const inner = sameThreadEngine();
    const engine: Engine = {
      ask: (question) => {
        if (question.kind === 'proposal') questions++;
        return inner.ask(question);
      },
      stop: () => undefined,
    };
    const { store, time } = await storeWith(exampleGarden(), { engine });
    await time.pass(1000);
    for (const amount of [3, 30, 300]) {
      store.getState().propose([draft({ litres: amount })]);
      await time.pass(5);
    }
    await until(time, () => ready(store));
    expect(questions).toBe(1);
    expect(store.getState().preview!.beds[0]!.after.input.layers.at(-1)?.laidDepth).toBeCloseTo(
      50,
      6,
    );
  });
  test('an inch just cut is a stop, seen before it is accepted', async () => {
    const { store, time } = await proposed([draft({ litres: 6 * 26 })]);
    await until(time, () => ready(store));
    const { cautions } = store.getState().preview!.beds[0]!;
    expect(cautions).toContainEqual(
      expect.objectContaining({ kind: 'layer depth', weight: 'stop' }),
    );
  });
  test('one the garden could not hold says why', async () => {
    const { store, time } = await proposed([draft({ bedId: 'bed-9' })]);
    await until(time, () => store.getState().preview?.state === 'failed');
    expect(store.getState().preview?.reason).toContain('bed');
  });
  test('is reckoned again when the garden changes, and forgotten when there is none', async () => {
    const { store, time } = await proposed([draft()]);
    await until(time, () => ready(store));
    store.getState().deleteApplication('application-1');
    expect(store.getState().preview?.state).toBe('working');
    await until(time, () => ready(store));
    expect(store.getState().preview!.beds[0]!.before.input.layers).toHaveLength(1);
    store.getState().propose([]);
    expect(store.getState().preview).toBeNull();
  });
});

describe('laying it', () => {
  test('one part, one step, one application with the words typed', async () => {
    const { store } = await reckoned();
    const result = await store.getState().layIt([draft()]);
    expect(result).toEqual({ ok: true, value: ['application-4'] });
    expect(store.getState().garden?.applications.at(-1)).toMatchObject({
      bedId: 'bed-1',
      amount: { text: '30 L' },
      mixtureId: null,
      passedStops: [],
    });
    expect(store.getState().past.map(({ label }) => label)).toEqual(['Lay 30 L on Long bed']);
    store.getState().undo();
    expect(store.getState().garden?.applications).toHaveLength(3);
  });
  test('several beds and a mixture with a brown are one step', async () => {
    const { store } = await reckoned();
    const mixed = draft();
    const straw = {
      from: { source: 'stock', stockId: 'stock-2' },
      amount: litres(20),
      condition: 'crisp',
      wetness: 'dry',
    } as const;
    const drafts = [
      { ...mixed, parts: [...mixed.parts, straw] },
      draft({ bedId: 'bed-2', litres: 5 }),
    ];
    await store.getState().layIt(drafts, 'without cautions');
    const added = store.getState().garden!.applications.slice(3);
    expect(added.map(({ bedId, mixtureId }) => [bedId, mixtureId])).toEqual([
      ['bed-1', 'mixture-2'],
      ['bed-1', 'mixture-2'],
      ['bed-2', null],
    ]);
    expect(store.getState().past).toHaveLength(1);
  });
  test('a stop asks for a deliberate second step, which is kept; then once per source and season', async () => {
    const { store } = await reckoned();
    const thick = draft({ litres: 6 * 26 });
    const refused = await store.getState().layIt([thick]);
    expect(refused).toMatchObject({ ok: false, error: { kind: 'stops' } });
    if (refused.ok || refused.error.kind !== 'stops') throw new Error('no stop');
    const kinds = refused.error.stops.map(({ caution }) => caution.kind);
    expect(kinds).toContain('layer depth');
    expect(store.getState().past).toEqual([]);

    const passed = await store.getState().layIt([{ ...thick, passedStops: kinds }]);
    expect(passed.ok).toBe(true);
    expect(store.getState().garden?.applications.at(-1)?.passedStops).toEqual(kinds);

    // the same lawn in the same season: the depth is a caution now, and no stop
    const again = await store.getState().layIt([draft({ litres: 6 * 26, date: '2021-06-20' })]);
    const still =
      again.ok || again.error.kind !== 'stops'
        ? []
        : again.error.stops.map(({ caution }) => caution.kind);
    expect(still).not.toContain('layer depth');
  });
  test('another lawn asks anew', async () => {
    const garden = exampleGarden();
    garden.applications[0]!.passedStops = ['layer depth'];
    garden.mowings[1]!.lawnId = 'lawn-2';
    const { store } = await reckoned(garden);
    const other = draft({ litres: 6 * 26 });
    const from = { source: 'mowing', mowingId: 'mowing-2' } as const;
    const result = await store
      .getState()
      .layIt([{ ...other, parts: [{ ...other.parts[0]!, from }] }]);
    expect(result).toMatchObject({ ok: false, error: { kind: 'stops' } });
    if (result.ok || result.error.kind !== 'stops') return;
    expect(result.error.stops.map(({ caution }) => caution.kind)).toContain('layer depth');
  });
  test('clippings of a lawn whose label forbids it are stopped', async () => {
    const garden = exampleGarden();
    garden.lawns[0]!.treatment = { answer: 'treated', date: '2021-05-04', label: 'forbids' };
    const { store } = await reckoned(garden);
    const result = await store.getState().layIt([draft({ litres: 10 })]);
    expect(result).toMatchObject({ ok: false, error: { kind: 'stops' } });
  });
  test('when the sums fail, it can still be recorded', async () => {
    const engine: Engine = {
      ...silentEngine,
      ask: async () => ({ state: 'failed', reason: 'broken' }),
    };
    const { store } = await storeWith(exampleGarden(), { engine });
    expect(await store.getState().layIt([draft()])).toEqual({
      ok: false,
      error: { kind: 'engine-failed', reason: 'broken' },
    });
    expect(await store.getState().layIt([draft()], 'without cautions')).toMatchObject({ ok: true });
  });
  test('what the garden could not hold is refused, with or without cautions', async () => {
    const { store } = await reckoned();
    const nowhere = draft({ bedId: 'bed-9' });
    expect(await store.getState().layIt([nowhere])).toMatchObject({ error: { kind: 'broken' } });
    expect(await store.getState().layIt([nowhere], 'without cautions')).toMatchObject({
      error: { kind: 'broken' },
    });
    expect(store.getState().past).toEqual([]);
  });
});

test('the sample: every bed balances and the gate bed is over-fed', async () => {
  const { store, time } = testStore({ engine: sameThreadEngine() });
  await store.getState().startSample();
  await until(time, () => store.getState().work === 'ready');
  const { bedResults, garden } = store.getState();
  for (const bed of garden!.beds) expect(bedResults[bed.id]!.season.residual).toBeLessThan(1e-9);
  const gate = garden!.beds.find(({ name }) => name.startsWith('Gate'))!;
  expect(bedResults[gate.id]!.verdict.state).toBe('over-fed');
  expect(serializeGarden(garden!).length).toBeGreaterThan(10_000);
});
