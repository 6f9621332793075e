// What was done of a week's plan: all of it, nothing, something else; each one step that undo takes back.
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../app/core/days';
import { leavesWith, mowingAccount, stockAccount } from '../../app/document/accounts';
import { nothingLaid, nothingLaidDays } from '../../app/document/nothingLaid';
import { parseGarden } from '../../app/document/parse';
import { planQuestion } from '../../app/document/planQuestion';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';
import { serializeGarden } from '../../app/document/serialize';
import { sharesOfMowing } from '../../app/screens/week/sharesOfMowing';
import type { LayingDraft } from '../../app/store/contract';
import { undoLabel } from '../../app/store/selectors';
import { sameThreadEngine, storeWith } from './surroundings';

const sample = (): Garden => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error('the sample does not open');
  return parsed.value;
};
const today = dayOf('2013-06-15');
const mowingOf = (garden: Garden) => garden.mowings.find(({ rest }) => rest.to === 'undecided')!;
const bucket = (garden: Garden) => garden.containers.find(({ name }) => name === 'bucket')!;
const draft = (garden: Garden, bedId: string, count: number): LayingDraft => ({
  bedId,
  date: '2013-06-15',
  placement: 'laid',
  parts: [
    {
      from: { source: 'mowing', mowingId: mowingOf(garden).id },
      amount: {
        text: `${String(count)} buckets`,
        quantity: { kind: 'containers', count, containerId: bucket(garden).id },
        certainty: 'plain',
      },
      condition: 'just cut',
      wetness: 'dry',
    },
  ],
  passedStops: [],
});
const heapOf = (garden: Garden) => garden.stock.find(({ role }) => role === 'heap')!.id;

describe('the plan as it stands', () => {
  test('is laid and its rest sent home in one step; nothing of the mowing is left over', async () => {
    const { store } = await storeWith(sample(), { engine: sameThreadEngine() });
    const before = store.getState().garden!;
    const mowing = mowingOf(before);
    const rest = { to: 'heap', stockId: heapOf(before) } as const;
    const done = await store
      .getState()
      .doPlan([draft(before, 'bed-far', 5)], [{ mowingId: mowing.id, rest }]);
    expect(done).toEqual({ ok: true, value: null });
    const after = store.getState().garden!;
    const settled = after.mowings.find(({ id }) => id === mowing.id)!;
    const account = mowingAccount(after, settled);
    expect(settled.rest).toEqual(rest);
    expect(account.layers.map(({ bedId }) => bedId)).toEqual(['bed-far']);
    expect(account.laidDryKilograms + account.leftDryKilograms).toBeCloseTo(
      account.totalDryKilograms,
      12,
    );
    expect(undoLabel(store.getState())).toBe('Do what the plan says');
    store.getState().undo();
    expect(store.getState().garden).toBe(before);
  });

  test('a rest sent home alone is called by where it went', async () => {
    const { store } = await storeWith(sample(), { engine: sameThreadEngine() });
    const { id } = mowingOf(store.getState().garden!);
    await store.getState().doPlan([], [{ mowingId: id, rest: { to: 'lawn' } }]);
    expect(undoLabel(store.getState())).toBe('Leave the rest on the lawn');
  });

  test('sends nothing that is held back to a heap', async () => {
    const { store } = await storeWith(sample(), { engine: sameThreadEngine() });
    store.getState().answerTreatment({ lawnId: mowingOf(sample()).lawnId }, { answer: 'unknown' });
    const before = store.getState().garden!;
    const rest = { to: 'heap', stockId: heapOf(before) } as const;
    const done = await store.getState().doPlan([], [{ mowingId: mowingOf(before).id, rest }]);
    expect(done).toMatchObject({ ok: false, error: { kind: 'held-back' } });
    expect(store.getState().garden).toBe(before);
  });
});

describe('nothing laid', () => {
  test('is kept in the garden, holds for a week of plans, and goes through the file', async () => {
    const { store } = await storeWith(sample(), { engine: sameThreadEngine() });
    const before = store.getState().garden!;
    store.getState().layNothing(['bed-far', 'bed-gate']);
    expect(undoLabel(store.getState())).toBe('Lay nothing on 2 beds');
    const garden = store.getState().garden!;
    const reopened = parseGarden(serializeGarden(garden));
    expect(reopened.ok && reopened.value).toEqual(garden);
    const pinsOn = (day: number) =>
      planQuestion(garden, day).wishes.pins.map(({ bedId, sourceId, litres }) => [
        bedId,
        sourceId,
        litres,
      ]);
    const none = [
      ['bed-far', null, 0],
      ['bed-gate', null, 0],
    ];
    expect(pinsOn(today)).toEqual(none);
    expect(pinsOn(today + nothingLaidDays - 1)).toEqual(none);
    expect(pinsOn(today + nothingLaidDays)).toEqual([]);
    store.getState().undo();
    expect(store.getState().garden).toBe(before);
  });

  test('is taken back for one bed', async () => {
    const { store } = await storeWith(sample(), { engine: sameThreadEngine() });
    store.getState().layNothing(['bed-far', 'bed-gate']);
    store.getState().countIn('bed-far');
    expect(undoLabel(store.getState())).toBe('Count Far bed in again');
    expect(nothingLaid(store.getState().garden!, today).map(({ bedId }) => bedId)).toEqual([
      'bed-gate',
    ]);
  });

  test('joins a laying that was something else, in the same step', async () => {
    const { store } = await storeWith(sample(), { engine: sameThreadEngine() });
    const before = store.getState().garden!;
    await store.getState().layIt([draft(before, 'bed-far', 2)], undefined, ['bed-resting']);
    const after = store.getState().garden!;
    expect(nothingLaid(after, today).map(({ bedId }) => bedId)).toEqual(['bed-resting']);
    expect(after.applications).toHaveLength(before.applications.length + 1);
    store.getState().undo();
    expect(store.getState().garden).toBe(before);
  });
});

test('a bed that was walked to today is no further walk', async () => {
  const { store } = await storeWith(sample(), { engine: sameThreadEngine() });
  await store.getState().layIt([draft(store.getState().garden!, 'bed-far', 2)]);
  const garden = store.getState().garden!;
  const walked = (day: number) =>
    planQuestion(garden, day)
      .beds.filter(({ isWalkedToday }) => isWalkedToday)
      .map(({ bedId }) => bedId);
  expect(walked(today)).toContain('bed-far');
  expect(walked(today + 1)).toEqual([]);
  expect(textFromDay(today)).toBe('2013-06-15');
});

describe('the rest of a mowing', () => {
  const leavesOf = (garden: Garden) =>
    garden.stock.find(({ materialId }) => materialId.startsWith('leaves-'))!;

  test('takes its leaves out of their store and onto the heap, and undo puts them back', async () => {
    const { store } = await storeWith(sample(), { engine: sameThreadEngine() });
    const before = store.getState().garden!;
    const mowing = mowingOf(before);
    const leaves = leavesOf(before);
    const amount = {
      text: '80 L',
      quantity: { kind: 'volume', litres: 80 },
      certainty: 'about',
    } as const;
    const rest = {
      to: 'heap',
      stockId: heapOf(before),
      leaves: { stockId: leaves.id, amount },
    } as const;
    const was = stockAccount(before, leaves.id).leftDryKilograms;
    const had = stockAccount(before, heapOf(before)).leftDryKilograms;
    expect(await store.getState().doPlan([], [{ mowingId: mowing.id, rest }])).toEqual({
      ok: true,
      value: null,
    });
    const after = store.getState().garden!;
    const moved = leavesWith(
      after,
      after.mowings.find(({ id }) => id === mowing.id)!,
    );
    expect(moved).toBeGreaterThan(0);
    // what left one place is at the other, beside the clippings
    expect(stockAccount(after, leaves.id).leftDryKilograms).toBeCloseTo(was - moved, 12);
    expect(stockAccount(after, heapOf(after)).leftDryKilograms).toBeCloseTo(
      had + moved + mowingAccount(before, mowing).leftDryKilograms,
      9,
    );
    const reopened = parseGarden(serializeGarden(after));
    expect(reopened.ok && reopened.value).toEqual(after);
    // a store that something went out of is not deleted unasked
    expect(store.getState().deleteStock(leaves.id)).toMatchObject({ ok: false });
    store.getState().undo();
    expect(store.getState().garden).toBe(before);
  });

  test('dried and kept begins a store, less what drying costs, that can be laid from later', async () => {
    const { store } = await storeWith(sample(), { engine: sameThreadEngine() });
    const before = store.getState().garden!;
    const mowing = mowingOf(before);
    store.getState().restOf(mowing.id, { to: 'dry' });
    const after = store.getState().garden!;
    const settled = after.mowings.find(({ id }) => id === mowing.id)!;
    if (settled.rest.to !== 'store') throw new Error(`it went to ${settled.rest.to}`);
    const { stockId } = settled.rest;
    const store1 = after.stock.find(({ id }) => id === stockId)!;
    expect(store1).toMatchObject({ name: 'Dry grass', role: 'store', materialId: 'grass-dried' });
    const all = mowingAccount(after, settled).leftDryKilograms;
    // app/tables/heap, `dryingRows`: 5 % of the dry matter, recalled
    expect(stockAccount(after, stockId).leftDryKilograms).toBeCloseTo(0.95 * all, 9);
    const shares = sharesOfMowing(after, settled);
    expect(shares.map(({ kind }) => kind)).toEqual(['store', 'lost']);
    expect(shares.reduce((sum, { dryKilograms }) => sum + dryKilograms, 0)).toBeCloseTo(all, 12);
    // the plan may lay it from now on, crisp
    const source = planQuestion(after, today).sources.find(({ id }) => id === `stock ${stockId}`)!;
    expect(source).toMatchObject({ role: 'greens', condition: 'crisp' });
    expect(source.litres * source.oneMillimetre.dryKgPerM2).toBeCloseTo(0.95 * all, 9);
    const reopened = parseGarden(serializeGarden(after));
    expect(reopened.ok && reopened.value).toEqual(after);
    // another mowing of that lawn, cut before, goes to the same store and none of it is lost
    store.getState().logMowing({
      lawnId: mowing.lawnId,
      date: '2013-06-13',
      amount: mowing.amount,
      wetness: 'dry',
      kind: null,
    });
    const second = store.getState().garden!.mowings.at(-1)!;
    store.getState().restOf(second.id, { to: 'dry' });
    const end = store.getState().garden!;
    expect(end.stock).toHaveLength(after.stock.length);
    expect(stockAccount(end, stockId).leftDryKilograms).toBeCloseTo(
      0.95 * (all + mowingAccount(end, end.mowings.at(-1)!).leftDryKilograms),
      9,
    );
  });

  test('of a lawn that was treated otherwise is kept apart', async () => {
    const { store } = await storeWith(sample(), { engine: sameThreadEngine() });
    const garden = store.getState().garden!;
    const mowing = mowingOf(garden);
    store.getState().restOf(mowing.id, { to: 'dry' });
    const other = garden.lawns.find(({ id }) => id !== mowing.lawnId)!;
    store
      .getState()
      .answerTreatment(
        { lawnId: other.id },
        { answer: 'treated', label: 'interval', date: '2013-01-01', intervalDays: 10 },
      );
    store.getState().logMowing({
      lawnId: other.id,
      date: '2013-06-15',
      amount: mowing.amount,
      wetness: 'dry',
      kind: null,
    });
    const second = store.getState().garden!.mowings.at(-1)!;
    expect(store.getState().restOf(second.id, { to: 'dry' })).toMatchObject({ ok: true });
    const dry = store.getState().garden!.stock.filter(({ name }) => name.startsWith('Dry grass'));
    expect(dry.map(({ treatment }) => treatment.answer)).toEqual(['nothing', 'treated']);
  });
});
