import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { formatName, schemaVersion } from '../../app/document/schema';
import { parseGarden } from '../../app/document/parse';
import { serializeGarden } from '../../app/document/serialize';

const folder = join(import.meta.dirname, '../documents');
const frozen = readdirSync(folder).filter((name) => /^v\d+\.json$/.test(name));
const read = (name: string): string => readFileSync(join(folder, name), 'utf8');

/** Frozen gardens, one for each version of the file. They are never edited: a person may have one. */
describe('a garden of any version opens', () => {
  test('there is a frozen garden for every version so far', () => {
    const wanted = Array.from(
      { length: schemaVersion },
      (_unused, at) => `v${String(at + 1)}.json`,
    );
    expect([...frozen].sort()).toEqual(wanted.sort());
  });
  test.each(frozen)('%s', (name) => {
    const result = parseGarden(read(name));
    expect(result).toMatchObject({ ok: true, value: { format: formatName, schemaVersion } });
  });
});

test('version 1 keeps everything that was in it, to the byte', () => {
  const result = parseGarden(read('v1.json'));
  if (!result.ok) throw new Error('refused');
  const garden = result.value;
  expect(garden.garden.name).toBe('Behind the barn');
  expect(garden.mowings.map(({ amount }) => amount.text)).toEqual([
    '2 1/2 bags',
    'about 120 m2, 2 cm off',
  ]);
  expect(garden.events.map(({ kind }) => kind).sort()).toEqual([
    'dig cover in',
    'harvest',
    'rain gauge',
    'rake off',
    'soil test',
    'water',
  ]);
  if (schemaVersion === 1) expect(serializeGarden(garden)).toBe(read('v1.json'));
});

test('the two textures that came later open, and stay as they were', () => {
  const result = parseGarden(read('v1-texture.json'));
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  expect(result.value.beds.map(({ texture }) => texture)).toEqual([
    'sandy clay',
    'sandy clay loam',
  ]);
  if (schemaVersion === 1) expect(serializeGarden(result.value)).toBe(read('v1-texture.json'));
});

test('crops of one’s own and what a laboratory said of phosphorus came later, and open', () => {
  const result = parseGarden(read('v1-own.json'));
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  expect(result.value.crops?.map(({ name, basedOn }) => [name, basedOn])).toEqual([
    ['Blue runner of the lane', 'snap_bean_pole'],
  ]);
  expect(result.value.plantings[0]?.cropId).toBe('own-crop-1');
  const tested = result.value.events.find(({ kind }) => kind === 'soil test');
  expect(tested).toMatchObject({ minerals: { extractant: 'Olsen', phosphorus: '31 ppm' } });
  if (schemaVersion === 1) expect(serializeGarden(result.value)).toBe(read('v1-own.json'));
});

test('several treatments of a lawn, and clippings counted by a row of one’s own, came later, and open', () => {
  const result = parseGarden(read('v1-clippings.json'));
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  const lawn = result.value.lawns[1];
  expect(lawn?.earlierTreatments?.map(({ answer }) => answer)).toEqual(['treated', 'unknown']);
  expect(lawn?.ownClippings).toEqual(['own-2']);
  if (schemaVersion === 1) expect(serializeGarden(result.value)).toBe(read('v1-clippings.json'));
});

test('a laboratory’s phosphorus and potassium, and how often a lawn is mown, came later, and open', () => {
  const result = parseGarden(read('v1-lab.json'));
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  expect(result.value.materials[0]).toMatchObject({
    phosphorusPercent: 0.12,
    potassiumPercent: 1.4,
  });
  expect(result.value.lawns[0]?.mownEveryDays).toBe(10);
  if (schemaVersion === 1) expect(serializeGarden(result.value)).toBe(read('v1-lab.json'));
});

test('what may be wrong with a lawn or a store came later, opens, and stays as it was', () => {
  const result = parseGarden(read('v1-hazards.json'));
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  expect(result.value.stock[1]?.hazards).toEqual(['bought in', 'mouldy']);
  if (schemaVersion === 1) expect(serializeGarden(result.value)).toBe(read('v1-hazards.json'));
});

test('beds of another size, split, joined and retired came later, open, and stay as they were', () => {
  const result = parseGarden(read('v1-beds.json'));
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  const { beds, retiredBeds, plantings } = result.value;
  expect(beds.map(({ name, ground }) => [name, ground?.parts.length])).toEqual([
    ['Frame', undefined],
    ['North part', 1],
    ['Long side', 2],
  ]);
  expect(retiredBeds?.map(({ name }) => name)).toContain('Side bed');
  expect(retiredBeds?.find(({ name }) => name === 'Side bed')?.earlierAreas).toEqual([
    { until: '2021-06-01', areaM2: 3 },
  ]);
  expect(plantings.length).toBeGreaterThan(0);
  if (schemaVersion === 1) expect(serializeGarden(result.value)).toBe(read('v1-beds.json'));
});

test('days by place from the weather service came later, open, and stay as they were', () => {
  const result = parseGarden(read('v1-download.json'));
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  expect(result.value.weather.download).toEqual({
    latitudeDegrees: 47.2,
    longitudeDegrees: -1.3,
    agreedOn: null,
    askedOn: '2021-06-19',
    days: [
      ['2021-06-12', 9.4, 21.8, 0],
      ['2021-06-13', 10.1, null, 3.2],
      ['2021-06-14', null, 22, null],
    ],
  });
  if (schemaVersion === 1) expect(serializeGarden(result.value)).toBe(read('v1-download.json'));
});
