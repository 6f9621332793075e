import { describe, expect, test, vi } from 'vitest';
import { failure, success } from '../../app/core/result';
import { parseGarden } from '../../app/document/parse';
import { serializeGarden } from '../../app/document/serialize';
import type { Host, HostError } from '../../app/host/contract';
import { exampleGarden } from '../document/exampleGarden';
import { settle, storeWith, testStore } from './surroundings';

const text = serializeGarden(exampleGarden());
const named = (name: string) => {
  const garden = exampleGarden();
  garden.garden.name = name;
  return serializeGarden(garden);
};
const full: HostError = { kind: 'disk-full', name: 'Barn' };

describe('opening', () => {
  test('a garden from its file: history afresh, nothing unsaved', async () => {
    const { store } = await storeWith(exampleGarden());
    store.getState().editGarden({ name: 'Changed' });
    await store.getState().openFile('file-1');
    const { garden, past, future, unsaved, fileId, fileName, message } = store.getState();
    expect(garden).toEqual(exampleGarden());
    expect([past, future, unsaved, fileId, fileName]).toEqual([[], [], false, 'file-1', 'Barn']);
    expect(message).toEqual({ kind: 'opened', name: 'Barn' });
  });
  test.each([
    ['broken JSON', '{"format": ', 'not-json'],
    ['another program', '{"format": "x"}', 'not-a-garden'],
    ['a newer program', text.replace('"schemaVersion": 1', '"schemaVersion": 2'), 'newer'],
    ['a broken value', text.replace('"areaM2": 6', '"areaM2": "six"'), 'broken'],
    ['a dangling bed', text.replace('"bedId": "bed-1"', '"bedId": "bed-7"'), 'dangling'],
  ])('a refused file changes nothing: %s', async (_name, refused, kind) => {
    const { store, of } = await storeWith(exampleGarden());
    store.getState().editGarden({ name: 'Mine' });
    store.getState().goTo('beds');
    const { message: _message, ...before } = store.getState();
    const result = store.getState().openText(refused, 'Foreign');
    expect(result).toMatchObject({ ok: false, error: { kind } });
    const { message, ...after } = store.getState();
    expect(after).toEqual(before);
    expect(after.garden).toBe(before.garden);
    expect(message).toMatchObject({ kind: 'refused', name: 'Foreign', failure: { kind } });
    expect(of('discardDraft')).toHaveLength(1); // of the first opening only
  });
  test('a file that cannot be read changes nothing and says why', async () => {
    const { store } = await storeWith(exampleGarden());
    const { store: other } = testStore({
      answers: { openGarden: async () => failure({ kind: 'no-permission', name: 'Barn' }) },
    });
    expect(store.getState().garden).not.toBeNull();
    await other.getState().openFile('file-1');
    expect(other.getState().garden).toBeNull();
    expect(other.getState().message).toMatchObject({ kind: 'failed', doing: 'open' });
  });
  test('a dialog that was closed is no message', async () => {
    const { store } = testStore({
      answers: { openGarden: async () => failure({ kind: 'cancelled' }) },
    });
    await store.getState().openFile(null);
    expect(store.getState().message).toBeNull();
  });
  test('results of another garden are not shown for this one', async () => {
    const { store } = await storeWith(exampleGarden());
    store.setState({ bedResults: { 'bed-1': {} as never }, history: {} as never });
    store.getState().openText(named('Other'), 'Other');
    expect(store.getState().bedResults).toEqual({});
    expect(store.getState().history).toBeNull();
  });
});

describe('saving', () => {
  test('to the file it came from, under its id', async () => {
    const { store, of } = await storeWith(exampleGarden());
    store.getState().editGarden({ name: 'Changed' });
    expect(await store.getState().save()).toEqual({ ok: true, value: { name: 'Barn' } });
    const [request] = of('saveGarden');
    expect(request).toMatchObject({ id: 'file-1', name: 'Barn', replace: false });
    expect(parseGarden(request.text)).toMatchObject({ value: { garden: { name: 'Changed' } } });
    expect(store.getState()).toMatchObject({ unsaved: false, saving: false, draft: 'none' });
    expect(of('discardDraft')).toHaveLength(2);
  });
  test('what was edited while a save was under way stays unsaved', async () => {
    let answer: (value: any) => void = () => undefined;
    const { store, of } = await storeWith(exampleGarden(), {
      answers: { saveGarden: () => new Promise((resolve) => (answer = resolve)) },
    });
    store.getState().editBed('bed-1', { name: 'Sent' }, 'typing');
    const saving = store.getState().save();
    await settle();
    expect(store.getState().saving).toBe(true);
    store.getState().editBed('bed-1', { name: 'Sent and more' }, 'typing');
    answer(success({ id: 'file-1', name: 'Barn' }));
    await saving;
    expect(store.getState()).toMatchObject({ unsaved: true, saving: false });
    expect(store.getState().garden?.beds[0]?.name).toBe('Sent and more');
    expect(of('discardDraft')).toHaveLength(1); // of the opening: the work in hand is kept
  });
  test('a garden opened while the disk was busy keeps its own file', async () => {
    let answer: (value: any) => void = () => undefined;
    const { store } = await storeWith(exampleGarden(), {
      answers: { saveGarden: () => new Promise((resolve) => (answer = resolve)) },
    });
    store.getState().editGarden({ name: 'First' });
    const saving = store.getState().save();
    await settle();
    store.getState().openText(named('Second'), 'Second');
    answer(success({ id: 'file-1', name: 'Barn' }));
    await saving;
    expect(store.getState()).toMatchObject({ fileId: null, fileName: 'Second', unsaved: true });
  });
  test('a failed save leaves it unsaved and says so', async () => {
    const { store } = await storeWith(exampleGarden(), {
      answers: { saveGarden: async () => failure(full) },
    });
    store.getState().editGarden({ name: 'Changed' });
    expect(await store.getState().save()).toEqual({ ok: false, error: full });
    expect(store.getState()).toMatchObject({
      unsaved: true,
      saving: false,
      message: { kind: 'failed', doing: 'save', error: full },
    });
  });
  test('without a file in a browser window: the page asks for a name first', async () => {
    const { store, of } = testStore();
    await store.getState().start();
    store.getState().openText(text, 'Dropped');
    expect(await store.getState().save()).toEqual({ ok: false, error: { kind: 'cancelled' } });
    expect(of('saveGarden')).toEqual([]);
    expect(await store.getState().saveAs('Mine', false)).toEqual({
      ok: true,
      value: { name: 'Mine' },
    });
    expect(store.getState()).toMatchObject({
      fileId: 'file-new',
      fileName: 'Mine',
      unsaved: false,
    });
  });
  test('a taken name is said beside the field, not in the message', async () => {
    const taken: HostError = { kind: 'name-taken', name: 'Mine' };
    const { store } = await storeWith(exampleGarden(), {
      answers: {
        saveGarden: async ({ replace }) =>
          replace ? success({ id: 'x', name: 'Mine' }) : failure(taken),
      },
    });
    const before = store.getState().message;
    expect(await store.getState().saveAs('Mine', false)).toEqual({ ok: false, error: taken });
    expect(store.getState().message).toBe(before);
    expect((await store.getState().saveAs('Mine', true)).ok).toBe(true);
  });
  test('the units shown are written along without being a change', async () => {
    const { store, of } = await storeWith(exampleGarden());
    store.getState().setUnits('us');
    expect(store.getState()).toMatchObject({ unsaved: false, past: [] });
    await store.getState().save();
    expect(of('saveGarden')[0].text).toContain('"shownUnits": "us"');
    await store.getState().openFile('file-1');
    expect(store.getState().shownUnits).toBe('metric');
  });
});

describe('work in hand is kept outside the document', () => {
  test('every change, once typing pauses', async () => {
    const { store, of, time } = await storeWith(exampleGarden());
    store.getState().editBed('bed-1', { name: 'A' }, 'g');
    store.getState().editBed('bed-1', { name: 'AB' }, 'g');
    expect(store.getState().draft).toBe('waiting');
    await time.pass(900);
    expect(of('keepDraft')).toEqual([]);
    await time.pass(200);
    const [draft, ...more] = of('keepDraft');
    expect(more).toEqual([]);
    expect(draft).toMatchObject({ id: 'file-1', name: 'Barn' });
    expect(draft.text).toContain('"name": "AB"');
    expect(store.getState().draft).toBe('kept');
  });
  test('within five seconds however long the typing lasts', async () => {
    const { store, of, time } = await storeWith(exampleGarden());
    for (let tenth = 0; tenth < 50; tenth++) {
      store.getState().editBed('bed-1', { name: `A${String(tenth)}` }, 'g');
      await time.pass(100);
    }
    expect(of('keepDraft').length).toBeGreaterThan(0);
  });
  test('an undo is a change too; undone to the file, the kept work goes', async () => {
    const { store, of, time } = await storeWith(exampleGarden());
    store.getState().editGarden({ name: 'A' });
    store.getState().editGarden({ name: 'B' });
    await time.pass(5000);
    store.getState().undo();
    await time.pass(5000);
    expect(of('keepDraft').at(-1).text).toContain('"name": "A"');
    store.getState().undo();
    await time.pass(5000);
    expect(of('keepDraft')).toHaveLength(2);
    expect(of('discardDraft')).toHaveLength(2);
    expect(store.getState().draft).toBe('none');
  });
  test('a slow disk never puts an old text over a newer one', async () => {
    const finished: (() => void)[] = [];
    const written: string[] = [];
    const keepDraft: Host['keepDraft'] = ({ text: draft }) =>
      new Promise((resolve) =>
        finished.push(() => {
          written.push(/"name": "(\w)"/.exec(draft)?.[1] ?? '');
          resolve(success(null));
        }),
      );
    const { store, time } = await storeWith(exampleGarden(), { answers: { keepDraft } });
    store.getState().editGarden({ name: 'A' });
    await time.pass(2000);
    store.getState().editGarden({ name: 'B' });
    await time.pass(2000);
    expect(finished).toHaveLength(1);
    finished[0]?.();
    await settle();
    expect(store.getState().draft).toBe('waiting');
    expect(finished).toHaveLength(2);
    finished[1]?.();
    await settle();
    expect(written).toEqual(['A', 'B']);
    expect(store.getState().draft).toBe('kept');
  });
  test('when it cannot be kept the person is told', async () => {
    const { store, time } = await storeWith(exampleGarden(), {
      answers: { keepDraft: async () => failure(full) },
    });
    store.getState().editGarden({ name: 'A' });
    await time.pass(2000);
    expect(store.getState()).toMatchObject({
      draft: 'failed',
      message: { kind: 'failed', doing: 'keep-draft', error: full },
    });
  });
  test('nothing is kept of a sample nobody has touched; the first change is', async () => {
    const { store, of, time } = testStore({ sample: () => Promise.resolve(text) });
    expect(await store.getState().startSample()).toEqual({ ok: true, value: null });
    await time.pass(10_000);
    expect(of('keepDraft')).toEqual([]);
    expect(store.getState().unsaved).toBe(false);
    store.getState().editGarden({ name: 'Mine' });
    await time.pass(10_000);
    expect(of('keepDraft')).toHaveLength(1);
  });
  test('is brought back at start, unsaved, with its file', async () => {
    const draft = { id: 'file-3', name: 'Barn', text: named('Work in hand'), savedAt: 5 };
    const { store } = testStore({ answers: { restoreDraft: async () => success(draft) } });
    expect(store.getState().started).toBe(false);
    await store.getState().start();
    expect(store.getState()).toMatchObject({
      started: true,
      fileId: 'file-3',
      fileName: 'Barn',
      unsaved: true,
      message: { kind: 'restored', name: 'Barn', savedAt: 5 },
    });
    expect(store.getState().garden?.garden.name).toBe('Work in hand');
  });
  test('kept work that cannot be read is said, and the program starts', async () => {
    const draft = { id: null, name: 'Barn', text: '{', savedAt: 5 };
    const { store } = testStore({ answers: { restoreDraft: async () => success(draft) } });
    await store.getState().start();
    expect(store.getState()).toMatchObject({
      started: true,
      garden: null,
      message: { kind: 'draft-refused', failure: { kind: 'not-json' } },
    });
  });
  test('putting the garden away drops it', async () => {
    const { store, of, time } = await storeWith(exampleGarden());
    store.getState().editGarden({ name: 'A' });
    await store.getState().closeGarden();
    await time.pass(10_000);
    expect(store.getState()).toMatchObject({
      garden: null,
      unsaved: false,
      fileId: null,
      past: [],
    });
    expect(of('keepDraft')).toEqual([]);
    expect(of('discardDraft')).toHaveLength(2);
  });
});

test('the shell is told the name and whether there are unsaved changes', async () => {
  const { store, of } = await storeWith(exampleGarden());
  store.getState().editGarden({ name: 'A' });
  await store.getState().save();
  const undo = 'Change the garden';
  expect(of('describeWindow')).toEqual([
    { name: 'Barn', unsaved: false, undo: null, redo: null },
    { name: 'Barn', unsaved: true, undo, redo: null },
    { name: 'Barn', unsaved: false, undo, redo: null },
  ]);
});

test('the day turns while the program is open', async () => {
  let today = '2021-06-20';
  const about: Host['about'] = async () =>
    success({ native: false, version: '0', folder: '', today });
  const { store, time } = testStore({ answers: { about } });
  await store.getState().start();
  const spy = vi.fn();
  store.subscribe(spy);
  today = '2021-06-21';
  await time.pass(6 * 60_000);
  expect(store.getState().about?.today).toBe('2021-06-21');
});
