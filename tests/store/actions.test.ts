import { describe, expect, test } from 'vitest';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Amount } from '../../app/document/schema';
import { serializeGarden } from '../../app/document/serialize';
import { ownGarden } from '../../app/document/startGarden';
import type { OwnGardenAnswers } from '../../app/store/contract';
import {
  mowingAccount,
  openMowings,
  stockAccount,
  undoLabel,
  unaskedSource,
} from '../../app/store/selectors';
import { bundledRecord } from '../../app/tables/bundledRecords';
import { climates } from '../../app/tables/climates';
import { exampleGarden } from '../document/exampleGarden';
import { storeWith, testStore } from './surroundings';

const open = async () => (await storeWith(exampleGarden())).store;
const bags = (count: number): Amount => ({
  text: `${String(count)} bags`,
  quantity: { kind: 'containers', count, containerId: 'container-1' },
  certainty: 'plain',
});
const value = <Value>(result: { ok: boolean; value?: Value }): Value => {
  expect(result).toMatchObject({ ok: true });
  return result.value as Value;
};

describe('the sample garden', () => {
  test('is this program’s own file, to the byte', () => {
    const parsed = parseGarden(sampleText);
    expect(parsed.ok && serializeGarden(parsed.value)).toBe(sampleText);
  });
  test('starts, saved nowhere, unsaved only once it is changed', async () => {
    const { store } = testStore();
    expect(await store.getState().startSample()).toEqual({ ok: true, value: null });
    expect(store.getState()).toMatchObject({ unsaved: false, fileId: null });
    expect(store.getState().garden?.garden.isSample).toBe(true);
  });
  test('goes on a week: the next seven real days, today moved, one step to undo', async () => {
    const { store } = testStore();
    await store.getState().startSample();
    const before = store.getState().garden!;
    expect(before.garden.today).toBe('2013-06-15');
    expect(before.weather.days.at(-1)?.[0]).toBe('2013-06-15');
    expect(value(await store.getState().goOnAWeek())).toEqual({ today: '2013-06-22' });
    const { days } = store.getState().garden!.weather;
    expect(days).toHaveLength(before.weather.days.length + 7);
    // vega-datasets, New York, June 2013: 3 mm on the 17th, 5 mm on the 18th
    const rain = days.slice(-7).map(([, , , millimetres]) => Math.round(millimetres ?? -1));
    expect(rain.slice(1, 3)).toEqual([3, 5]);
    store.getState().undo();
    expect(store.getState().garden).toBe(before);
  });
  test('goes on to the end of the record and not past it', async () => {
    const { store } = testStore();
    await store.getState().startSample();
    let weeks = 0;
    while ((await store.getState().goOnAWeek()).ok) weeks++;
    const record = bundledRecord('new-york')!;
    const left = record.minimumCelsius.length - 366 - 166;
    expect(weeks).toBe(Math.floor(left / 7));
    expect(await store.getState().goOnAWeek()).toEqual({
      ok: false,
      error: { kind: 'no-more-record' },
    });
    expect(parseGarden(serializeGarden(store.getState().garden!)).ok).toBe(true);
  });
  test('a garden of one’s own has no next week to bring', async () => {
    expect(await (await open()).getState().goOnAWeek()).toMatchObject({
      error: { kind: 'no-more-record' },
    });
  });
});

describe('a garden of one’s own from five answers', () => {
  const answers: OwnGardenAnswers = {
    gardenName: 'Ours',
    lawnAreaM2: 100,
    container: { name: 'bag', plural: 'bags', litres: 45 },
    bed: { name: 'Bean bed', areaM2: 6 },
    crop: { cropId: 'snap_bean_pole', started: '2021-05-20', how: 'sown' },
    climate: { kind: 'station', stationId: climates[0]!.id },
    shownUnits: 'us',
  };
  test('holds the answers, is unsaved, shows the units chosen, can be saved and read', () => {
    const { store } = testStore();
    value(store.getState().startOwn(ownGarden, answers));
    const { garden, unsaved, shownUnits, fileName } = store.getState();
    expect([unsaved, shownUnits, fileName]).toEqual([true, 'us', 'Ours']);
    expect(garden?.lawns[0]?.areaM2).toBe(100);
    expect(garden?.weather.days).toEqual([]);
    expect(garden?.garden.today).toBeNull();
    expect(parseGarden(serializeGarden(garden!))).toMatchObject({ ok: true });
  });
  test.each(climates.map(({ id }) => id))('every station makes a garden: %s', (stationId) => {
    const { store } = testStore();
    value(
      store.getState().startOwn(ownGarden, { ...answers, climate: { kind: 'station', stationId } }),
    );
    const climate = climates.find(({ id }) => id === stationId)!;
    expect(store.getState().garden?.garden.seasonStartMonth).toBe(
      climate.latitudeDegrees < 0 ? 7 : 1,
    );
  });
  test('typed normals; wet days worked out where they are not known', () => {
    const { store } = testStore();
    const month = (base: number) => Array.from({ length: 12 }, () => base);
    const climate = {
      kind: 'typed',
      place: 'Here',
      latitudeDegrees: -30,
      minimumCelsius: month(8),
      maximumCelsius: month(20),
      rainMillimetres: month(75),
      wetDays: null,
    } as const;
    value(store.getState().startOwn(ownGarden, { ...answers, climate }));
    expect(store.getState().garden?.weather.normals.wetDays[0]).toBe(10);
    expect(store.getState().garden?.garden.seasonStartMonth).toBe(7);
  });
  test('impossible answers start nothing and say which', () => {
    const { store } = testStore();
    expect(store.getState().startOwn(ownGarden, { ...answers, lawnAreaM2: 0 })).toMatchObject({
      error: { kind: 'broken', where: 'lawn 1 “Lawn”, area' },
    });
    expect(
      store
        .getState()
        .startOwn(ownGarden, { ...answers, climate: { kind: 'station', stationId: 'moon' } }),
    ).toMatchObject({ error: { kind: 'missing' } });
    expect(
      store
        .getState()
        .startOwn(ownGarden, { ...answers, crop: { ...answers.crop, cropId: 'moonwort' } }),
    ).toMatchObject({ error: { kind: 'broken' } });
    expect(store.getState().garden).toBeNull();
  });
});

describe('mowings', () => {
  const mowing = { date: '2021-06-19', lawnId: 'lawn-1', wetness: 'dry', kind: null } as const;
  test('logged with the words typed; changed; deleted with their layers, in one step', async () => {
    const store = await open();
    const id = value(store.getState().logMowing({ ...mowing, amount: bags(2) }));
    expect(undoLabel(store.getState())).toBe('Log 2 bags from Orchard grass');
    const found = () => store.getState().garden?.mowings.find((one) => one.id === id);
    expect(found()).toMatchObject({ amount: { text: '2 bags' }, rest: { to: 'undecided' } });
    value(store.getState().editMowing(id, { amount: bags(3) }));
    expect(found()?.amount.text).toBe('3 bags');

    expect(value(store.getState().deleteMowing('mowing-1'))).toEqual({ layers: 1 });
    expect(store.getState().garden?.applications.map((one) => one.id)).toEqual([
      'application-2',
      'application-3',
    ]);
    store.getState().undo();
    expect(store.getState().garden?.applications).toHaveLength(3);
  });
  test('of a lawn that is not there are refused', async () => {
    const store = await open();
    const result = store.getState().logMowing({ ...mowing, lawnId: 'lawn-9', amount: bags(2) });
    expect(result).toMatchObject({
      error: { kind: 'broken', what: 'it names a lawn that is not there' },
    });
    expect(store.getState().editMowing('mowing-9', {})).toMatchObject({
      error: { kind: 'missing' },
    });
  });
  test('the account: 2 1/2 bags of 50 L less 4 buckets of 10 L of the same grass', async () => {
    const store = await open();
    const garden = store.getState().garden!;
    const account = mowingAccount(garden, garden.mowings[0]!);
    expect(account.leftShare).toBeCloseTo(1 - 40 / 125, 12);
    const heap = stockAccount(garden, 'stock-1');
    expect(heap.addedDryKilograms).toBeCloseTo(account.leftDryKilograms, 12);
    expect(openMowings(garden).map(({ id }) => id)).toEqual(['mowing-2']);
    value(store.getState().restOf('mowing-2', { to: 'lawn' }));
    expect(openMowings(store.getState().garden!)).toEqual([]);
    expect(store.getState().restOf('mowing-2', { to: 'heap', stockId: 'stock-2' })).toMatchObject({
      error: { kind: 'broken', what: 'it names a heap that is not there' },
    });
  });
  test('many mowings left lying are one step', async () => {
    const store = await open();
    const undecided = () =>
      store.getState().garden!.mowings.filter(({ rest }) => rest.to === 'undecided').length;
    const ids = store.getState().garden!.mowings.map(({ id }) => id);
    store.getState().restOf(ids[0]!, { to: 'undecided' });
    const before = undecided();
    expect(before).toBeGreaterThan(1);
    value(store.getState().leaveLying(ids));
    expect(undecided()).toBe(0);
    expect(undoLabel(store.getState())).toMatch(/mowings lying/);
    store.getState().undo();
    expect(undecided()).toBe(before);
  });
  test('a back-log is one entry and one step', async () => {
    const store = await open();
    const backlog = {
      lawnId: 'lawn-1',
      bedId: 'bed-1',
      from: '2021-04-03',
      to: '2021-05-15',
      everyDays: 7,
      amount: { ...bags(1), certainty: 'about' },
      wetness: 'dry',
      condition: 'just cut',
      placement: 'laid',
    } as const;
    expect(value(store.getState().logBacklog(backlog))).toEqual({ mowings: 7 });
    const { mowings, applications } = store.getState().garden!;
    expect(
      mowings
        .slice(2)
        .map(({ date }) => date)
        .at(-1),
    ).toBe('2021-05-15');
    expect(applications).toHaveLength(10);
    expect(applications.at(-1)?.amount.certainty).toBe('about');
    expect(new Set(mowings.map(({ id }) => id)).size).toBe(9);
    expect(store.getState().past).toHaveLength(1);
    store.getState().undo();
    expect(store.getState().garden).toEqual(exampleGarden());
    expect(store.getState().logBacklog({ ...backlog, to: '2021-04-01' })).toMatchObject({
      ok: false,
    });
    expect(store.getState().logBacklog({ ...backlog, to: '2031-04-01' })).toMatchObject({
      ok: false,
    });
  });
});

describe('weighing one bag', () => {
  test('changes what past entries typed in it weigh, in one step that says how many', async () => {
    const store = await open();
    const grams = () => {
      const garden = store.getState().garden!;
      return garden.mowings.map((mowing) => mowingAccount(garden, mowing).totalDryKilograms);
    };
    const [typed = 0, byArea = 0] = grams();
    const weighed = { date: '2021-06-19', kilograms: 25, wetness: 'damp' } as const;
    const counts = value(store.getState().weighContainer('container-1', weighed));
    expect(counts).toEqual({ mowings: 1, layers: 0, stocks: 0 });
    expect(undoLabel(store.getState())).toBe('Weigh one bag, used once');
    expect(grams()[0]).toBeCloseTo(2 * typed, 12);
    expect(grams()[1]).toBe(byArea);
    store.getState().undo();
    expect(grams()[0]).toBe(typed);
  });
  test('a mowing typed by weight never changes', async () => {
    const store = await open();
    const amount: Amount = {
      text: '6 kg',
      quantity: { kind: 'mass', kilograms: 6 },
      certainty: 'plain',
    };
    value(store.getState().editMowing('mowing-1', { amount }));
    const dry = () => {
      const garden = store.getState().garden!;
      return mowingAccount(garden, garden.mowings[0]!).totalDryKilograms;
    };
    const before = dry();
    store
      .getState()
      .weighContainer('container-1', { date: '2021-06-19', kilograms: 25, wetness: 'dry' });
    expect(dry()).toBe(before);
  });
});

describe('events, treatments and things', () => {
  test('every kind of event is logged, changed, deleted', async () => {
    const store = await open();
    for (const event of exampleGarden().events) {
      const { id: _id, ...rest } = event;
      const id = value(store.getState().logEvent(rest as never));
      value(store.getState().editEvent({ ...event, id, note: 'again' }));
      expect(store.getState().garden?.events.find((one) => one.id === id)?.note).toBe('again');
      value(store.getState().deleteEvent(id));
    }
    expect(store.getState().garden).toEqual(exampleGarden());
  });
  test('the treated question of lawn and stock, before their first use', async () => {
    const garden = exampleGarden();
    garden.lawns[0]!.treatment = { answer: 'not asked' };
    garden.stock[1]!.treatment = { answer: 'not asked' };
    const { store } = await storeWith(garden);
    const asked = (from: Parameters<typeof unaskedSource>[1]) =>
      unaskedSource(store.getState().garden!, from);
    expect(asked({ source: 'mowing', mowingId: 'mowing-1' })).toEqual({ lawnId: 'lawn-1' });
    expect(asked({ source: 'stock', stockId: 'stock-2' })).toEqual({ stockId: 'stock-2' });
    expect(asked({ source: 'elsewhere', materialId: 'weeds-green' })).toBeNull();
    value(store.getState().answerTreatment({ lawnId: 'lawn-1' }, { answer: 'nothing' }));
    value(store.getState().answerTreatment({ stockId: 'stock-2' }, { answer: 'unknown' }));
    expect(asked({ source: 'mowing', mowingId: 'mowing-1' })).toBeNull();
    expect(asked({ source: 'stock', stockId: 'stock-2' })).toBeNull();
    expect(store.getState().answerTreatment({ lawnId: 'x' }, { answer: 'nothing' })).toMatchObject({
      error: { kind: 'missing' },
    });
  });
  test('a bed goes with its plantings, layers and events, and comes back with them', async () => {
    const store = await open();
    value(store.getState().deleteBed('bed-1'));
    const { beds, plantings, applications, events } = store.getState().garden!;
    expect([beds.length, plantings.length, applications.length, events.length]).toEqual([
      1, 0, 1, 2,
    ]);
    store.getState().undo();
    expect(store.getState().garden).toEqual(exampleGarden());
  });
  test('what something still points at is not deleted, and it says by what', async () => {
    const { getState } = await open();
    expect(getState().deleteLawn('lawn-1')).toEqual({
      ok: false,
      error: { kind: 'in-use', by: '2 mowings' },
    });
    expect(getState().deleteStock('stock-1')).toMatchObject({ error: { by: '1 mowing' } });
    expect(getState().deleteStock('stock-2')).toMatchObject({ error: { by: '1 layer' } });
    expect(getState().deleteMaterial('own-1')).toMatchObject({ error: { by: '1 stock' } });
    expect(getState().deleteContainer('container-2')).toMatchObject({ error: { by: '1 layer' } });
    expect(getState().deleteLawn('lawn-2')).toMatchObject({ ok: true });
    expect(getState().deletePlanting('planting-2')).toMatchObject({ ok: true });
    expect(getState().garden?.events.some(({ kind }) => kind === 'harvest')).toBe(false);
  });
  test('one’s own row is put wherever the table’s is used, in one step that says how many', async () => {
    const { getState } = await open();
    const before = getState().garden!;
    const from = before.stock
      .map(({ materialId }) => materialId)
      .find((id) => !id.startsWith('own'))!;
    const added = getState().addMaterial({ name: 'Mine', basedOn: from });
    if (!added.ok) throw new Error(added.error.kind);
    const stores = before.stock.filter(({ materialId }) => materialId === from).length;
    const layers = before.applications.filter(
      ({ from: of }) => of.source === 'elsewhere' && of.materialId === from,
    ).length;
    expect(stores).toBeGreaterThan(0);
    expect(getState().swapMaterial(from, added.value)).toEqual({
      ok: true,
      value: { stores, layers },
    });
    const count = (id: string) =>
      getState().garden!.stock.filter(({ materialId }) => materialId === id).length;
    expect([count(from), count(added.value)]).toEqual([0, stores]);
    getState().undo();
    expect(getState().garden!.stock).toEqual(before.stock);
  });
  test('a material is kept while a lawn or a weighed container is counted by it', async () => {
    const { getState } = await open();
    const added = getState().addMaterial({ name: 'Mine', basedOn: 'grass-fresh-generic' });
    if (!added.ok) throw new Error(added.error.kind);
    const id = added.value;
    getState().editLawn('lawn-1', { ownClippings: [id] });
    expect(getState().deleteMaterial(id)).toMatchObject({ error: { by: '1 lawn' } });
    getState().editLawn('lawn-1', { ownClippings: undefined });
    const weighed = { date: '2021-06-01', kilograms: 9, wetness: 'dry', of: id } as const;
    expect(getState().weighContainer('container-1', weighed)).toMatchObject({ ok: true });
    expect(getState().deleteMaterial(id)).toMatchObject({ error: { by: '1 weighed container' } });
    getState().undo();
    expect(getState().deleteMaterial(id)).toMatchObject({ ok: true });
    getState().undo();
    expect(getState().garden?.materials.some((one) => one.id === id)).toBe(true);
  });
  test('a planting that goes to another bed takes its picks along, in the same step', async () => {
    const { getState } = await open();
    expect(getState().editPlanting('planting-2', { bedId: 'bed-2' })).toMatchObject({ ok: true });
    const { garden } = getState();
    expect(garden?.plantings.find(({ id }) => id === 'planting-2')?.bedId).toBe('bed-2');
    expect(garden?.events.find(({ id }) => id === 'event-5')).toMatchObject({ bedId: 'bed-2' });
    // whatever else happened on the bed stays there
    expect(garden?.events.find(({ id }) => id === 'event-1')).toMatchObject({ bedId: 'bed-1' });
    getState().undo();
    expect(getState().garden).toEqual(exampleGarden());
  });
  test('an id that was given away is not given twice', async () => {
    const { getState } = await open();
    const { id: _id, ...bed } = exampleGarden().beds[0]!;
    const one = value(getState().addBed(bed));
    const other = value(getState().addBed(bed));
    value(getState().deleteBed('bed-1'));
    const third = value(getState().addBed(bed));
    expect(new Set(['bed-2', one, other, third]).size).toBe(4);
  });
  test('taking an optional field away', async () => {
    const { getState } = await open();
    value(getState().editLawn('lawn-2', { note: undefined } as never));
    expect(getState().garden?.lawns[1]).not.toHaveProperty('note');
    value(getState().editNormals(getState().garden!.weather.normals));
  });
});
