import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseGarden } from '../../app/document/parse';
import { serializeGarden } from '../../app/document/serialize';
import type { MowingsState } from '../../app/store/contract';
import { redoLabel, undoLabel } from '../../app/store/selectors';
import { exampleGarden } from '../document/exampleGarden';
import { storeWith, testStore } from './surroundings';

const open = async () => (await storeWith(exampleGarden())).store;

describe('one door for changes', () => {
  test('no garden, no change', () => {
    const { store } = testStore();
    expect(store.getState().edit('x', () => undefined)).toEqual({
      ok: false,
      error: { kind: 'no-garden' },
    });
  });
  test('a recipe that changes nothing is no step', async () => {
    const store = await open();
    store.getState().edit('Nothing', (garden) => {
      garden.garden.name = 'Behind the barn';
    });
    expect(store.getState().past).toEqual([]);
    expect(store.getState().unsaved).toBe(false);
  });
  test('undo and redo carry the name of the step', async () => {
    const store = await open();
    expect(undoLabel(store.getState())).toBeNull();
    store.getState().editGarden({ name: 'Other' });
    expect(undoLabel(store.getState())).toBe('Change the garden');
    store.getState().undo();
    expect(store.getState().garden?.garden.name).toBe('Behind the barn');
    expect(undoLabel(store.getState())).toBeNull();
    expect(redoLabel(store.getState())).toBe('Change the garden');
    store.getState().redo();
    expect(store.getState().garden?.garden.name).toBe('Other');
  });
  test('undone to what the file holds, nothing is unsaved', async () => {
    const store = await open();
    store.getState().editGarden({ name: 'Other' });
    expect(store.getState().unsaved).toBe(true);
    store.getState().undo();
    expect(store.getState().unsaved).toBe(false);
  });
  test('a field being typed in is one step, until it is left', async () => {
    const store = await open();
    const type = (name: string) => store.getState().editBed('bed-1', { name }, 'name of bed-1');
    type('A');
    type('Al');
    type('Ali');
    expect(store.getState().past).toHaveLength(1);
    store.getState().endGesture();
    type('Alice');
    expect(store.getState().past).toHaveLength(2);
    store.getState().undo();
    expect(store.getState().garden?.beds[0]?.name).toBe('Ali');
    store.getState().undo();
    expect(store.getState().garden?.beds[0]?.name).toBe('Long bed');
  });
  test('another change in between ends the gesture', async () => {
    const store = await open();
    store.getState().editBed('bed-1', { name: 'A' }, 'g');
    store.getState().editBed('bed-2', { name: 'B' });
    store.getState().editBed('bed-1', { name: 'AA' }, 'g');
    expect(store.getState().past).toHaveLength(3);
  });
  test('what its file could not hold is refused and leaves everything as it was', async () => {
    const store = await open();
    const before = store.getState();
    const refused = [
      store.getState().editBed('bed-1', { areaM2: -1 }),
      store.getState().editBed('bed-1', { name: '' }),
      store.getState().addPlanting({ ...exampleGarden().plantings[0]!, bedId: 'nowhere' }),
      store.getState().edit('Twice', (garden) => void garden.beds.push(garden.beds[0]!)),
    ];
    for (const result of refused)
      expect(result).toMatchObject({ ok: false, error: { kind: 'broken' } });
    expect(refused[0]).toMatchObject({ error: { where: 'bed 1 “Long bed”, area' } });
    expect(store.getState()).toBe(before);
  });
  test('the garden on screen cannot be changed but through the door', async () => {
    const store = await open();
    expect(() => {
      store.getState().garden!.beds[0]!.name = 'behind its back';
    }).toThrow(TypeError);
  });
});

/** Everything a person might do, in any order, with things that are there or not. */
const ids = fc.constantFrom('1', '2', '3', '9');
const example = exampleGarden();
const command: fc.Arbitrary<(state: MowingsState) => unknown> = fc.oneof(
  fc.string({ maxLength: 3 }).map((name) => (s: MowingsState) => s.editGarden({ name })),
  fc.tuple(ids, fc.string({ maxLength: 3 }), fc.boolean()).map(
    ([id, name, typing]) =>
      (s: MowingsState) =>
        s.editBed(`bed-${id}`, { name }, typing ? 'typing' : undefined),
  ),
  fc.constant((s: MowingsState) => s.addBed(example.beds[0]!)),
  ids.map((id) => (s: MowingsState) => s.deleteBed(`bed-${id}`)),
  ids.map((id) => (s: MowingsState) => s.deletePlanting(`planting-${id}`)),
  fc.constant((s: MowingsState) =>
    s.logMowing({
      date: '2021-06-19',
      lawnId: 'lawn-1',
      amount: example.mowings[0]!.amount,
      wetness: 'dry',
      kind: null,
    }),
  ),
  ids.map((id) => (s: MowingsState) => s.deleteMowing(`mowing-${id}`)),
  ids.map((id) => (s: MowingsState) => s.restOf(`mowing-${id}`, { to: 'lawn' })),
  ids.map((id) => (s: MowingsState) => s.deleteApplication(`application-${id}`)),
  ids.map(
    (id) => (s: MowingsState) => s.editApplication(`application-${id}`, { placement: 'dug' }),
  ),
  fc
    .integer({ min: -1, max: 30 })
    .map(
      (millimetres) => (s: MowingsState) =>
        s.logEvent({ kind: 'water', date: '2021-06-10', bedId: 'bed-1', millimetres }),
    ),
  ids.map((id) => (s: MowingsState) => s.deleteEvent(`event-${id}`)),
  ids.map((id) => (s: MowingsState) => s.deleteLawn(`lawn-${id}`)),
  ids.map((id) => (s: MowingsState) => s.deleteStock(`stock-${id}`)),
  ids.map((id) => (s: MowingsState) => s.deleteContainer(`container-${id}`)),
  fc
    .integer({ min: 1, max: 20 })
    .map(
      (kilograms) => (s: MowingsState) =>
        s.weighContainer('container-2', { date: '2021-06-01', kilograms, wetness: 'damp' }),
    ),
  fc.constant((s: MowingsState) =>
    s.logBacklog({
      lawnId: 'lawn-2',
      bedId: 'bed-1',
      from: '2021-04-01',
      to: '2021-05-01',
      everyDays: 7,
      amount: example.mowings[0]!.amount,
      wetness: 'dry',
      condition: 'just cut',
      placement: 'laid',
    }),
  ),
  fc.constant((s: MowingsState) => s.endGesture()),
  fc.constant((s: MowingsState) => s.undo()),
  fc.constant((s: MowingsState) => s.redo()),
);

describe('any sequence of commands', () => {
  test('undo all is the start, redo all is the end, and every garden on the way can be saved and read', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(command, { maxLength: 25 }), async (commands) => {
        const store = await open();
        const start = store.getState().garden;
        for (const run of commands) run(store.getState());
        const end = store.getState().garden;
        const undone = store.getState().past.length;
        expect(parseGarden(serializeGarden(end!))).toEqual({ ok: true, value: end });

        for (let step = 0; step < undone; step++) {
          store.getState().undo();
          expect(parseGarden(serializeGarden(store.getState().garden!)).ok).toBe(true);
        }
        expect(store.getState().garden).toBe(start);
        expect(store.getState().unsaved).toBe(false);
        store.getState().undo();
        expect(store.getState().garden).toBe(start);

        for (let step = 0; step < undone; step++) store.getState().redo();
        expect(store.getState().garden).toBe(end);
      }),
      { numRuns: 150 },
    );
  });
  test('a change after undo drops what could be redone', async () => {
    const store = await open();
    store.getState().editGarden({ name: 'A' });
    store.getState().editGarden({ name: 'B' });
    store.getState().undo();
    store.getState().editGarden({ name: 'C' });
    expect(store.getState().future).toEqual([]);
    store.getState().redo();
    expect(store.getState().garden?.garden.name).toBe('C');
  });
});
