import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seeded } from '../../../app/core/random';
import { flowKinds, pools } from '../../../app/core/season/flows';
import type { BedSeason, LayerInput } from '../../../app/core/season/input';
import type { SeasonResult } from '../../../app/core/season/result';
import { runSeason } from '../../../app/core/season/season';
import { anyBed, lawRuns } from './anyBed';

function shuffled<Item>(items: readonly Item[], seed: number): Item[] {
  const random = seeded(seed);
  return items
    .map((item) => ({ item, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
}

/** Moves everything to one of a few days of the year, so that much of it meets on one day. */
function crowded(bed: BedSeason): BedSeason {
  const snap = (day: number): number => bed.firstDay + 50 * Math.floor((day - bed.firstDay) / 50);
  return {
    ...bed,
    layers: bed.layers.map((one) => ({ ...one, day: snap(one.day) })),
    events: bed.events.map((one) => ({ ...one, day: snap(one.day) })),
  };
}

/** Largest difference of any pool or flow on any day, g N/m2. */
function difference(one: SeasonResult, other: SeasonResult): number {
  let most = 0;
  const compare = (a: Float64Array, b: Float64Array): void =>
    a.forEach((grams, day) => (most = Math.max(most, Math.abs(grams - b[day]!))));
  for (const pool of pools) compare(one.pools[pool], other.pools[pool]);
  flowKinds.forEach((_kind, flow) => compare(one.flows[flow]!, other.flows[flow]!));
  return most;
}

const halves = (layer: LayerInput): LayerInput[] =>
  ['a', 'b'].map((name) => ({
    ...layer,
    id: `${layer.id} ${name}`,
    freshKgPerM2: layer.freshKgPerM2 / 2,
    dryKgPerM2: layer.dryKgPerM2 / 2,
    nitrogen: layer.nitrogen / 2,
    carbon: layer.carbon / 2,
    laidDepth: layer.laidDepth / 2,
  }));

const total = (result: SeasonResult, series: 'coverDepth' | 'coverDryKg'): number =>
  result[series].reduce((a, b) => a + b, 0);

describe('laws of order and parts, any bed', () => {
  test('the order of layers and events in the file never matters: not one bit differs', () => {
    fc.assert(
      fc.property(anyBed, fc.nat(), (bed, seed) => {
        const plain = crowded(bed);
        const mixed = {
          ...plain,
          layers: shuffled(plain.layers, seed),
          events: shuffled(plain.events, seed + 1),
        };
        expect(difference(runSeason(plain), runSeason(mixed))).toBe(0);
      }),
      lawRuns,
    );
  });

  test('nor does the order of plantings', () => {
    fc.assert(
      fc.property(
        anyBed.filter((bed) => bed.plantings.length > 1),
        (bed) => {
          const turned = { ...bed, plantings: bed.plantings.toReversed() };
          expect(difference(runSeason(bed), runSeason(turned))).toBeLessThan(1e-9);
        },
      ),
      lawRuns,
    );
  });

  test('a layer written down as two halves of the same day is the same layer', () => {
    fc.assert(
      fc.property(
        anyBed.filter((bed) => bed.layers.length > 0),
        (bed) => {
          const whole = runSeason(bed);
          const parts = runSeason({ ...bed, layers: bed.layers.flatMap(halves) });
          expect(difference(whole, parts)).toBeLessThan(1e-9);
          for (const series of ['coverDepth', 'coverDryKg'] as const)
            expect(total(parts, series)).toBeCloseTo(total(whole, series), 6);
        },
      ),
      lawRuns,
    );
  });

  test('a planting written down as two of half its share is the same planting', () => {
    fc.assert(
      fc.property(
        anyBed.filter((bed) => bed.plantings.length > 0),
        (bed) => {
          const plain = { ...bed, events: bed.events.filter((one) => one.kind !== 'harvest') };
          const plantings = plain.plantings.flatMap((one) =>
            ['a', 'b'].map((name) => ({ ...one, id: `${one.id} ${name}`, share: one.share / 2 })),
          );
          const parts = runSeason({ ...plain, plantings });
          expect(difference(runSeason(plain), parts)).toBeLessThan(1e-9);
        },
      ),
      lawRuns,
    );
  });

  test('everything is per m2: the area of the bed changes nothing', () => {
    fc.assert(
      fc.property(anyBed, fc.double({ min: 0.1, max: 500, noNaN: true }), (bed, areaM2) => {
        expect(difference(runSeason(bed), runSeason({ ...bed, areaM2 }))).toBe(0);
      }),
      { ...lawRuns, numRuns: 100 },
    );
  });
});
