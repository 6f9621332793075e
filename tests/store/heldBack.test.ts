// Treated clippings and deleted beds: what the store lets happen, and what stays told.
import { describe, expect, test } from 'vitest';
import type { Treatment } from '../../app/document/schema';
import { parseGarden } from '../../app/document/parse';
import { serializeGarden } from '../../app/document/serialize';
import { mowingAccount, undoLabel } from '../../app/store/selectors';
import { exampleGarden } from '../document/exampleGarden';
import { storeWith } from './surroundings';

const openWith = async (treatment: Treatment) => {
  const { store } = await storeWith(exampleGarden());
  store.getState().answerTreatment({ lawnId: 'lawn-1' }, treatment);
  return store.getState();
};
const onHeap = { to: 'heap', stockId: 'stock-1' } as const;
const heapOf = (state: Awaited<ReturnType<typeof openWith>>) =>
  state.garden!.stock.find(({ id }) => id === 'stock-1')!;

// the threshold table, `label forbids`: it stays on the lawn and never reaches a heap
describe('clippings that are held back', () => {
  test('never go on the heap where the label forbids; the lawn is free', async () => {
    const state = await openWith({ answer: 'treated', label: 'forbids', date: '2021-05-01' });
    for (const option of [undefined, 'in spite of a stop'] as const)
      expect(state.restOf('mowing-2', onHeap, option)).toEqual({
        ok: false,
        error: { kind: 'label-forbids', source: 'Orchard grass' },
      });
    expect(state.restOf('mowing-2', { to: 'lawn' })).toMatchObject({ ok: true });
  });

  test('go there by a second step, and the heap is marked', async () => {
    const { store } = await storeWith(exampleGarden());
    const state = store.getState();
    // none of this lawn's lies on the heap yet
    state.restOf('mowing-1', { to: 'lawn' });
    state.answerTreatment({ lawnId: 'lawn-1' }, { answer: 'unknown' });
    expect(state.restOf('mowing-2', onHeap)).toMatchObject({
      error: { kind: 'held-back', stop: { weight: 'stop', kind: 'treated lawn' } },
    });
    expect(heapOf(store.getState()).treatment.answer).toBe('nothing');
    expect(state.restOf('mowing-2', onHeap, 'in spite of a stop')).toMatchObject({ ok: true });
    expect(heapOf(store.getState()).treatment).toEqual({ answer: 'unknown' });
    store.getState().undo();
    expect(heapOf(store.getState()).treatment.answer).toBe('nothing');
  });

  test('mark the heap they lie on when it is only then said what was put on their lawn', async () => {
    const { store } = await storeWith(exampleGarden());
    const state = store.getState();
    expect(state.restOf('mowing-2', onHeap)).toMatchObject({ ok: true });
    state.answerTreatment(
      { lawnId: 'lawn-1' },
      { answer: 'treated', label: 'forbids', date: '2021-05-01' },
    );
    expect(heapOf(store.getState()).treatment).toMatchObject({ answer: 'treated' });
    store.getState().undo();
    expect(heapOf(store.getState()).treatment.answer).toBe('nothing');
  });

  test('mark the store they were dried for when it is only then said', async () => {
    const { store } = await storeWith(exampleGarden());
    const state = store.getState();
    expect(state.restOf('mowing-2', { to: 'dry' })).toMatchObject({ ok: true });
    const dried = () => {
      const { mowings, stock } = store.getState().garden!;
      const { rest } = mowings.find(({ id }) => id === 'mowing-2')!;
      return stock.find(({ id }) => rest.to === 'store' && id === rest.stockId)!;
    };
    expect(dried().treatment).toEqual({ answer: 'nothing' });
    const straw = store.getState().garden!.stock.find(({ id }) => id === 'stock-2');
    // cut on 12 June: what was put on after it is not in it
    const later = { answer: 'treated', label: 'forbids', date: '2021-06-15' } as const;
    state.answerTreatment({ lawnId: 'lawn-1' }, later);
    expect(dried().treatment).toEqual({ answer: 'nothing' });
    const before = { ...later, date: '2021-05-01' };
    state.answerTreatment({ lawnId: 'lawn-1' }, before);
    expect(dried().treatment).toEqual(before);
    expect(store.getState().garden!.stock.find(({ id }) => id === 'stock-2')).toEqual(straw);
    store.getState().undo();
    expect(dried().treatment).toEqual({ answer: 'nothing' });
  });

  test('cannot be slipped onto the heap by changing the mowing', async () => {
    const state = await openWith({ answer: 'treated', label: 'forbids', date: '2021-05-01' });
    expect(state.editMowing('mowing-2', {}, onHeap)).toMatchObject({
      error: { kind: 'label-forbids' },
    });
  });

  test('where nothing was put on the lawn nothing is asked and nothing marked', async () => {
    const { store } = await storeWith(exampleGarden());
    expect(store.getState().restOf('mowing-2', onHeap)).toMatchObject({ ok: true });
    expect(heapOf(store.getState()).treatment.answer).toBe('nothing');
  });
});

test('what lay on a deleted bed stays in the mowing’s account, through the file and back', async () => {
  const { store } = await storeWith(exampleGarden());
  const accounts = () => {
    const garden = store.getState().garden!;
    return mowingAccount(garden, garden.mowings[0]!);
  };
  const before = accounts();
  const bedId = before.layers[0]!.bedId;
  expect(before.laidDryKilograms).toBeGreaterThan(0);
  store.getState().deleteBed(bedId);
  const after = accounts();
  expect(after.layers).toEqual([]);
  expect(after.gone).toMatchObject([{ name: 'Long bed' }]);
  expect(after.gone[0]!.dryKilograms).toBeCloseTo(before.laidDryKilograms, 12);
  expect(after.leftShare).toBeCloseTo(before.leftShare, 12);
  expect(undoLabel(store.getState())).toBe('Delete Long bed');
  const read = parseGarden(serializeGarden(store.getState().garden!));
  expect(read.ok && read.value.mowings[0]!.onDeletedBeds).toHaveLength(1);
  store.getState().undo();
  expect(accounts()).toEqual(before);
});

test('steps are named for what was done and where', async () => {
  const { store } = await storeWith(exampleGarden());
  const bedId = store.getState().garden!.beds[0]!.id;
  store.getState().logEvent({ kind: 'water', date: '2021-06-19', bedId, millimetres: 10 });
  expect(undoLabel(store.getState())).toBe('Water Long bed');
  const id = store.getState().garden!.events.at(-1)!.id;
  store.getState().deleteEvent(id);
  expect(undoLabel(store.getState())).toBe('Delete a watering of Long bed');
  store.getState().addPlanting({
    bedId,
    cropId: 'snap_bean_pole',
    share: 0.2,
    started: '2021-06-10',
    how: 'sown',
    firstHarvest: null,
    cleared: null,
    tops: 'left',
    wanted: 'usual',
    nodules: 'not looked',
  });
  expect(undoLabel(store.getState())).toBe('Sow climbing beans on Long bed');
});

describe('more put on a lawn', () => {
  const first: Treatment = {
    answer: 'treated',
    product: 'moss killer',
    date: '2021-04-20',
    label: 'forbids',
    labelWords: 'Never compost the clippings.',
  };
  const second: Treatment = {
    answer: 'treated',
    date: '2021-05-20',
    label: 'interval',
    intervalDays: 7,
  };
  const lawnOf = (state: Awaited<ReturnType<typeof openWith>>) =>
    state.garden!.lawns.find(({ id }) => id === 'lawn-1')!;

  test('stands beside what was, in file and rules, and is one step to undo', async () => {
    const { store } = await storeWith(exampleGarden());
    const of = { lawnId: 'lawn-1' };
    store.getState().answerTreatment(of, first);
    store.getState().answerTreatment(of, second, true);
    const state = store.getState();
    expect(lawnOf(state)).toMatchObject({ treatment: second, earlierTreatments: [first] });
    expect(state.restOf('mowing-2', onHeap)).toMatchObject({ error: { kind: 'label-forbids' } });
    const again = parseGarden(serializeGarden(state.garden!));
    expect(again.ok && again.value.lawns[0]?.earlierTreatments).toEqual([first]);
    state.undo();
    expect(lawnOf(store.getState()).treatment).toEqual(first);
    expect(lawnOf(store.getState()).earlierTreatments).toBeUndefined();
  });

  test('a changed answer replaces only itself; “nothing” is no earlier treatment', async () => {
    const { store } = await storeWith(exampleGarden());
    const of = { lawnId: 'lawn-1' };
    store.getState().answerTreatment(of, { answer: 'nothing' });
    store.getState().answerTreatment(of, first, true);
    expect(lawnOf(store.getState()).earlierTreatments ?? []).toEqual([]);
    store.getState().answerTreatment(of, second, true);
    store.getState().answerTreatment(of, { answer: 'nothing' });
    expect(lawnOf(store.getState())).toMatchObject({
      treatment: { answer: 'nothing' },
      earlierTreatments: [first],
    });
    // what is dried of it carries the treatment along
    store.getState().restOf('mowing-2', { to: 'dry' }, 'in spite of a stop');
    const dried = store
      .getState()
      .garden!.stock.filter(({ materialId }) => materialId === 'grass-dried');
    for (const one of dried) expect(one.treatment).toEqual(first);
  });
});
