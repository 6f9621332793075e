import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ownBed } from '../../../app/core/season/ownInput';
import { anyBed } from './anyBed';

const keysOf = (things: readonly object[]): string[] => [
  ...new Set(things.map((thing) => Object.keys(thing).join(' '))),
];

test('a bed of one build is the bed', () => {
  fc.assert(
    fc.property(anyBed, (bed) => {
      expect(ownBed(bed)).toEqual(bed);
    }),
    { numRuns: 100, seed: 1 },
  );
});

test('whatever is absent, things of a kind have the same fields in the same order', () => {
  const beds = fc
    .sample(anyBed, { numRuns: 200, seed: 2 })
    .map(({ runoffCurveNumber, ...bed }, at) => ({
      ...bed,
      ...(at % 2 === 0 ? { runoffCurveNumber } : {}),
      layers: bed.layers.map((layer) => ({
        ...layer,
        ...(at % 5 === 0 ? { slowKind: 'manure' as const } : {}),
      })),
      plantings: bed.plantings.map((planting) => ({
        ...planting,
        ...(at % 3 === 0 ? { standsSince: planting.startDay } : {}),
      })),
    }));
  const plantings = beds.flatMap((bed) => bed.plantings);
  const layers = beds.flatMap((bed) => bed.layers);
  expect(keysOf(plantings).length).toBeGreaterThan(1);
  expect(keysOf(layers).length).toBeGreaterThan(1);
  expect(keysOf(beds).length).toBeGreaterThan(1);
  const own = beds.map((bed) => ownBed(bed));
  expect(keysOf(own)).toHaveLength(1);
  expect(keysOf(own.flatMap((bed) => bed.plantings))).toHaveLength(1);
  expect(keysOf(own.flatMap((bed) => bed.plantings.map(({ crop }) => crop)))).toHaveLength(1);
  expect(keysOf(own.flatMap((bed) => bed.layers))).toHaveLength(1);
  expect(keysOf(own.map(({ weather }) => weather))).toHaveLength(1);
});

test('what is written into the copy is not in the bed', () => {
  const [bed] = fc
    .sample(anyBed, { numRuns: 50, seed: 3 })
    .filter(({ plantings, layers }) => plantings.length > 0 && layers.length > 0);
  const before = structuredClone(bed!);
  const own = ownBed(bed!);
  Object.assign(own.coefficients, { decayBase: 9 });
  Object.assign(own.soil, { organicMatterPercent: 9 });
  Object.assign(own.layers[0]!, { nitrogen: 9 });
  Object.assign(own.plantings[0]!.crop, { need: 9 });
  expect(bed).toEqual(before);
});
