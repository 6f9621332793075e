import { describe, expect, test } from 'vitest';
import { decayParameters } from '../../../app/core/cover/decay';
import { coverFraction } from '../../../app/core/cover/wetness';
import type { LayerInput } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import {
  bareBed,
  clippings,
  compost,
  firstOf2013,
  moved,
  steadyWeather,
  straw,
} from './handMadeBed';

const c = typicalCoefficients();
const weather = (rain: number) => {
  const made = steadyWeather(365, 14, 26);
  made.rainMillimetres.fill(rain);
  return made;
};

describe('what is still lying of a layer (model, cover: residue and 0.12 of microbes and humus)', () => {
  const layer = clippings(firstOf2013 + 3, 12);

  test('is the carbon of its class that lies, over the carbon that was laid', () => {
    const result = runSeason(bareBed({ weather: weather(4), layers: [layer] }));
    const p = decayParameters('green', layer.carbon / layer.nitrogen, c);
    for (const index of [3, 10, 60, 200]) {
      const microbes = result.pools.coverMicrobes[index]! * p.microbeCarbonToNitrogen;
      const humus = result.pools.coverHumus[index]! * p.humusCarbonToNitrogen;
      const lying =
        result.pools.coverResidue[index]! * p.carbonToNitrogen + 0.12 * (microbes + humus);
      const { left } = result.layers[0]!;
      expect(left[index]).toBeCloseTo(lying / layer.carbon, 9);
      expect(result.coverDryKg[index]).toBeCloseTo(left[index]! * layer.dryKgPerM2, 9);
      expect(result.coverFraction[index]).toBeCloseTo(coverFraction(result.coverDryKg[index]!, c));
    }
    expect(result.layers[0]!.left[2]).toBe(0);
    expect(result.layers[0]!.left[200]).toBeLessThan(0.6);
  });

  test('of compost what its slow part has not set free', () => {
    const heap = compost(firstOf2013, 10);
    const result = runSeason(bareBed({ weather: weather(4), layers: [heap] }));
    const laid = heap.nitrogen * (1 - heap.mineralShare);
    const freed = moved(result, 'slow', 'coverFree');
    expect(freed).toBeGreaterThan(0.1);
    expect(result.layers[0]!.left.at(-1)).toBeCloseTo((laid - freed) / laid, 9);
  });
});

describe('what does not rot stays', () => {
  test('in frost all of every layer lies on, and goes on rotting when it thaws', () => {
    const frozen = weather(2);
    frozen.minimumCelsius.fill(-12, 0, 60);
    frozen.maximumCelsius.fill(-4, 0, 60);
    const layers = [clippings(firstOf2013 + 1, 12), compost(firstOf2013 + 1, 10)];
    const result = runSeason(bareBed({ weather: frozen, layers }));
    for (const { left } of result.layers) {
      expect(left[1]).toBe(1);
      expect(left[59]).toBe(1);
      expect(left[150]).toBeLessThan(0.99);
    }
  });

  test('chips lie as they were laid until they are dug in, and then rot as wood does', () => {
    const wood = (over: Partial<LayerInput>): LayerInput =>
      straw(firstOf2013, 60, { materialId: 'chips', carbon: 2400, nitrogen: 12, ...over });
    const dig = { kind: 'dig cover in', day: firstOf2013 + 100, share: 1 } as const;
    const bed = (layer: LayerInput, events: (typeof dig)[]) =>
      runSeason(bareBed({ weather: weather(2), layers: [layer], events }));
    const lying = bed(wood({ materialClass: 'inert' }), []);
    expect(lying.layers[0]!.left.at(-1)).toBe(1);
    expect(lying.pools.coverResidue.at(-1)).toBeCloseTo(12, 12);
    const dug = bed(wood({ materialClass: 'inert' }), [dig]);
    expect(dug.pools.coverResidue[99]).toBeCloseTo(12, 12);
    expect(dug.pools.coverResidue.at(-1)).toBe(0);
    const atOnce = (materialClass: 'inert' | 'mature' | 'wood') =>
      bed(wood({ materialClass, placement: 'dug' }), []).pools.dugResidue;
    expect([...atOnce('inert')]).toEqual([...atOnce('wood')]);
    // a year at 20 deg C, in poor soil: less than half of the wood is left, of straw of its C:N far less
    expect(atOnce('wood').at(-1)).toBeLessThan(11);
    expect(atOnce('wood').at(-1)).toBeGreaterThan(3 * atOnce('mature').at(-1)!);
    // the same soil, a hundred days later: less warmth is left, so less is gone
    expect(dug.pools.dugResidue.at(-1)).toBeLessThan(12);
    expect(dug.pools.dugResidue.at(-1)).toBeGreaterThan(atOnce('inert').at(-1)!);
  });

  test('a material without nitrogen feeds nothing and breaks nothing', () => {
    const bare = straw(firstOf2013, 40, { nitrogen: 0 });
    const result = runSeason(bareBed({ weather: weather(2), layers: [bare] }));
    expect(result.residual).toBeLessThan(1e-9);
    expect(moved(result, 'applied', '*')).toBe(0);
    // it hides the ground all the same, to the last day
    expect(result.layers[0]!.left.at(-1)).toBe(1);
    expect(result.coverDryKg.at(-1)).toBeCloseTo(bare.dryKgPerM2, 12);
  });

  test('compost that has nothing slow to set free lies as it was laid', () => {
    const heap = compost(firstOf2013, 10, { slowShare: 0 });
    const { layers } = runSeason(bareBed({ weather: weather(2), layers: [heap] }));
    expect(layers[0]!.left.at(-1)).toBe(1);
  });
});

describe('how deep it lies: from its laid to its settled density over two drying days', () => {
  const layer = clippings(firstOf2013, 20, { settledDensityKgPerM3: 100 });
  const laidDensity = (1000 * layer.dryKgPerM2) / layer.laidDepth;
  const depthAt = (rain: readonly number[]): number[] => {
    const made = weather(0);
    made.rainMillimetres.set(rain);
    const { layers } = runSeason(bareBed({ weather: made, layers: [layer] }));
    const { depth, left } = layers[0]!;
    return [0, 1, 2, 3].map((index) => (1000 * left[index]! * layer.dryKgPerM2) / depth[index]!);
  };
  const half = (laidDensity + 100) / 2;

  test('dry days settle it, half way each', () => {
    expect(laidDensity).toBeCloseTo(50, 9);
    for (const [at, density] of [half, 100, 100, 100].entries())
      expect(depthAt([0, 0, 0, 0])[at]).toBeCloseTo(density, 9);
  });

  test('a millimetre of rain keeps it from settling that day, less does not', () => {
    for (const [at, density] of [laidDensity, half, half, 100].entries())
      expect(depthAt([1, 0.9, 12, 0])[at]).toBeCloseTo(density, 9);
  });
});

describe('watering and dry places', () => {
  const day = firstOf2013 + 9;
  test('all that was written down for a day goes on the bed that day, and no more', () => {
    const events = [5, 7.5].map((depth) => ({ kind: 'water', day, depth }) as const);
    const result = runSeason(bareBed({ weather: weather(0), events }));
    expect(result.watered[9]).toBeCloseTo(12.5, 12);
    expect(result.watered.reduce((sum, one) => sum + one, 0)).toBeCloseTo(12.5, 12);
    const without = runSeason(bareBed({ weather: weather(0) }));
    expect(result.availableWaterTop[9]!).toBeGreaterThan(without.availableWaterTop[9]!);
  });

  test('where it never rains in a normal year, a shower brings no nitrogen, and nothing breaks', () => {
    const dry = bareBed({ weather: weather(0) });
    dry.weather.rainMillimetres[30] = 12;
    const normals = { ...dry.normals, rainMillimetres: new Array<number>(12).fill(0) };
    const result = runSeason({ ...dry, normals });
    expect(moved(result, 'rain', 'mineralTop')).toBe(0);
    expect(result.residual).toBeLessThan(1e-9);
  });
});
