import { describe, expect, test } from 'vitest';
import { coverLayersOf, seasonDataOf, stuffOf } from '../../app/charts/fromBed';
import type { BedSeason, CropInput, LayerInput, PlantingInput } from '../../app/core/season/input';
import { pools } from '../../app/core/season/flows';
import type { SeasonResult } from '../../app/core/season/result';
import { seasonFromFlows } from './seasonFromFlows';

const layer = (changes: Partial<LayerInput>): LayerInput =>
  ({ id: 'a', day: 100, placement: 'laid', laidDepth: 8, ...changes }) as LayerInput;
const planting = (changes: Partial<PlantingInput>, band: number, flowerDays: number | null = 40) =>
  ({
    share: 1,
    startDay: 100,
    clearingDay: 200,
    sown: true,
    firstHarvestDay: 160,
    crop: { enoughNitrateLow: band, enoughNitrateHigh: band + 5, flowerDays } as CropInput,
    ...changes,
  }) as PlantingInput;
const bed = (plantings: readonly PlantingInput[], layers: readonly LayerInput[] = []): BedSeason =>
  ({ today: 150, plantings, layers, soil: { bulkDensityKgPerL: 1.2 } }) as unknown as BedSeason;
const run = (ids: readonly string[]): SeasonResult =>
  seasonFromFlows(
    Object.fromEntries(pools.map((pool) => [pool, 0])) as SeasonResult['start'],
    3,
    () => 0,
    { plantings: ids.map((id) => ({ id })) as unknown as SeasonResult['plantings'] },
  );
const names = { planting: (id: string) => `plant ${id}`, layer: (id: string) => `layer ${id}` };

describe('the band that is enough', () => {
  const spring = planting({ id: 'spring', clearingDay: 140 }, 10);
  const small = planting({ id: 'small', share: 0.2 }, 20);
  const large = planting({ id: 'large', share: 0.8 }, 30);
  const autumn = planting({ id: 'autumn', startDay: 210, clearingDay: 260 }, 40);
  const low = (plantings: readonly PlantingInput[]) =>
    seasonDataOf(bed(plantings), run([]), names).cropBand?.lowMgPerKg;

  test('is that of the largest planting that stands, else of the next to come', () => {
    expect(low([spring, small, large, autumn])).toBe(30);
    expect(low([spring, autumn])).toBe(40);
    expect(low([spring])).toBeUndefined();
  });
});

describe('plantings', () => {
  test('that the run does not know are left out, the others stand in order of their start', () => {
    const late = planting({ id: 'late', startDay: 120 }, 20);
    const early = planting({ id: 'early', startDay: 90 }, 20);
    const gone = planting({ id: 'gone' }, 20);
    const data = seasonDataOf(bed([late, gone, early]), run(['late', 'early']), names);
    expect(data.plantings.map((one) => one.name)).toEqual(['plant early', 'plant late']);
    expect(data.bulkDensityKgPerL).toBe(1.2);
  });

  test('cleared before they flower have no first flower', () => {
    const cut = planting({ id: 'cut', clearingDay: 120 }, 20);
    const grown = planting({ id: 'grown' }, 20);
    const leaf = planting({ id: 'leaf' }, 20, null);
    const data = seasonDataOf(bed([cut, grown, leaf]), run(['cut', 'grown', 'leaf']), names);
    expect(data.plantings.map((one) => one.flowerDay)).toEqual([null, 140, null]);
  });
});

describe('layers', () => {
  test('dug or hoed in are on the chart but no cover', () => {
    const input = bed(
      [],
      [
        layer({ id: 'laid' }),
        layer({ id: 'hoed', placement: 'hoed' }),
        layer({ id: 'dug', placement: 'dug' }),
      ],
    );
    expect(seasonDataOf(input, run([]), names).layers.map((one) => one.inSoil)).toEqual([
      false,
      true,
      true,
    ]);
    expect(coverLayersOf(input, names).map((one) => one.name)).toEqual(['layer laid']);
  });

  test.each([
    ['green', 'grass-fresh-generic', 'greens'],
    ['mature', 'straw-wheat', 'straw'],
    ['mature', 'hay-grass', 'straw'],
    ['mature', 'leaves-mixed-whole', 'leaves'],
    ['mature', 'newspaper', 'other'],
    ['slow', 'compost-garden', 'compost'],
    ['slow', 'leaf-mould', 'compost'],
  ] as const)('%s %s is drawn as %s', (materialClass, materialId, stuff) => {
    expect(stuffOf(layer({ materialClass, materialId }))).toBe(stuff);
  });
});
