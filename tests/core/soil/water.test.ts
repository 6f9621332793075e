import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SoilProperties } from '../../../app/core/season/input';
import {
  availableLowerShare,
  availableShare,
  type CanopyDay,
  type WaterStore,
  waterDay,
  waterSizes,
} from '../../../app/core/soil/water';
import { typicalCoefficients } from '../../../app/tables/coefficients';

const c = typicalCoefficients();
const soil: SoilProperties = {
  fieldCapacity: 0.25,
  wiltingPoint: 0.12,
  bulkDensityKgPerL: 1.3,
  organicMatterPercent: 3,
  startingMineralTop: null,
};
const sizes = waterSizes(soil, 300);
const bare: CanopyDay = {
  transpiration: 0,
  evaporation: 0.35,
  isPlanted: false,
  canopy: 0,
  reach: 0,
  depletionShare: 0.5,
};
const leafy: CanopyDay = {
  transpiration: 1,
  evaporation: 0.07,
  isPlanted: true,
  canopy: 0.9,
  reach: 1,
  depletionShare: 0.4,
};
const full = (): WaterStore => ({ top: sizes.topFull, lower: sizes.lowerFull, cover: 0 });

interface Asked {
  readonly plants?: CanopyDay;
  readonly rain?: number;
  readonly logged?: number;
  readonly et0?: number;
  readonly capacity?: number;
  readonly covered?: number;
  readonly keptMoist?: boolean;
}
const oneDay = (water: WaterStore, asked: Asked) =>
  waterDay(
    water,
    sizes,
    soil,
    asked.plants ?? bare,
    {
      rain: asked.rain ?? 0,
      logged: asked.logged ?? 0,
      evapotranspiration: asked.et0 ?? 0,
      coverCapacity: asked.capacity ?? 0,
      coverFraction: asked.covered ?? 0,
    },
    asked.keptMoist ?? false,
    c,
  );

describe('a day of water, in the order of the model', () => {
  test('rain and watering fill the cover before the soil', () => {
    const water = full();
    expect(oneDay(water, { rain: 5, logged: 2, capacity: 4, covered: 1 }).drainageTop).toBeCloseTo(
      3,
    );
    expect(water.cover).toBeCloseTo(4);
  });

  test('evaporation comes before drainage: a full layer drains the surplus of the day, not all of the rain', () => {
    const water = full();
    const report = oneDay(water, { plants: { ...leafy, reach: 0 }, rain: 10, et0: 6 });
    expect(report.drainageTop).toBeLessThan(10 - 5);
    expect(report.drainageTop).toBeGreaterThan(0);
    expect(water.top).toBeCloseTo(sizes.topFull);
  });

  test('a cover gives off the air’s demand on what it hides outside the leaves, at most what it holds', () => {
    const water = { ...full(), cover: 3 };
    oneDay(water, { et0: 4, capacity: 8, covered: 0.5 });
    expect(water.cover).toBeCloseTo(3 - 4 * 0.5);
    const nearlyDry = { ...full(), cover: 0.5 };
    oneDay(nearlyDry, { et0: 4, capacity: 8, covered: 0.5 });
    expect(nearlyDry.cover).toBe(0);
  });

  test('soil under a cover evaporates what the cover leaves of the demand', () => {
    const water = { ...full(), cover: 0.3 };
    oneDay(water, { et0: 4, capacity: 8, covered: 0.5 });
    // 0.35 x 4 mm, a quarter saved by half a cover, less the 0.3 mm that the cover gave.
    expect(sizes.topFull - water.top).toBeCloseTo(0.35 * 4 * 0.75 - 0.3, 9);
  });

  test('a cover that shrank spills into the soil', () => {
    const water = { ...full(), top: sizes.topFull - 10, cover: 5 };
    const report = oneDay(water, { capacity: 2, covered: 0 });
    expect(water.cover).toBeCloseTo(2);
    expect(report.throughfall).toBeCloseTo(3);
  });

  test('plants draw on both layers by the water held, the lower one at half weight', () => {
    const water = full();
    oneDay(water, { plants: { ...leafy, evaporation: 0 }, et0: 3 });
    const fromTop = sizes.topFull - water.top;
    const fromLower = sizes.lowerFull - water.lower;
    expect(fromTop + fromLower).toBeCloseTo(3, 9);
    expect(fromTop / fromLower).toBeCloseTo(2, 9);
  });

  test('kept moist: back to half of what can be used, when all of that is gone', () => {
    const dry = (): WaterStore => ({
      ...full(),
      top: sizes.topFull - 35,
      lower: sizes.lowerFull - 20,
    });
    const water = dry();
    const zone = 2 * 0.13 * 300;
    const share = 0.4 + 0.04 * 5;
    const report = oneDay(water, { plants: leafy, keptMoist: true });
    expect(55).toBeGreaterThan(share * zone);
    expect(report.watered).toBeCloseTo(55 - (share * zone) / 2, 9);
    expect(oneDay(dry(), { plants: leafy, keptMoist: true, rain: 5 }).watered).toBe(0);
    expect(oneDay(dry(), { plants: leafy }).watered).toBe(0);
    // A watering that was written down counts first.
    expect(oneDay(dry(), { plants: leafy, keptMoist: true, logged: 30 }).watered).toBe(30);
    expect(oneDay(dry(), { plants: leafy, keptMoist: true, logged: 3 }).watered).toBeCloseTo(
      report.watered,
      9,
    );
    expect(oneDay(full(), { plants: leafy, keptMoist: true }).watered).toBe(0);
    expect(oneDay(dry(), { plants: { ...leafy, isPlanted: false }, keptMoist: true }).watered).toBe(
      0,
    );
  });

  test('seedlings that hardly use water yet are kept moist like any plants', () => {
    const seedlings: CanopyDay = {
      ...leafy,
      transpiration: 0,
      evaporation: 0.5,
      canopy: 0,
      reach: 0,
    };
    const water = { ...full(), top: sizes.topFull - 36 };
    expect(oneDay(water, { plants: seedlings, keptMoist: true, et0: 4 }).watered).toBeGreaterThan(
      0,
    );
  });

  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const millimetres = fc.double({ min: 0, max: 80, noNaN: true });
  const store = fc.record({
    top: fc.double({ min: sizes.topWilt, max: sizes.topFull, noNaN: true }),
    lower: fc.double({ min: sizes.lowerWilt, max: sizes.lowerFull, noNaN: true }),
    cover: fc.double({ min: 0, max: 8, noNaN: true }),
  });

  test('law: no water is made or lost, and no layer is dried past the wilting point', () => {
    fc.assert(
      fc.property(
        store,
        millimetres,
        millimetres,
        fc.double({ min: 0, max: 12, noNaN: true }),
        share,
        share,
        share,
        (start, rain, logged, et0, covered, canopy, reach) => {
          const total = (water: WaterStore): number => water.top + water.lower + water.cover;
          const still = { ...start };
          const asked: Asked = {
            rain,
            logged,
            covered,
            capacity: 6,
            plants: { ...leafy, canopy, reach },
          };
          const { drainageLower } = oneDay(still, asked);
          expect(total(still) + drainageLower).toBeCloseTo(total(start) + rain + logged, 9);
          const used = { ...start };
          const report = oneDay(used, { ...asked, et0 });
          const gone = total(start) + rain + logged - total(used) - report.drainageLower;
          expect(gone).toBeGreaterThanOrEqual(-1e-9);
          expect(used.top).toBeGreaterThanOrEqual(sizes.topWilt - 1e-9);
          expect(used.lower).toBeGreaterThanOrEqual(sizes.lowerWilt - 1e-9);
          expect(used.cover).toBeGreaterThanOrEqual(0);
          expect(used.cover).toBeLessThanOrEqual(6);
          expect(used.top).toBeLessThanOrEqual(sizes.topFull + 1e-9);
        },
      ),
      { numRuns: 1000, seed: 1998 },
    );
  });
});

// Allen et al. 1998, chapter 8: what plants can take lies between wilting point and field capacity
describe('what plants can take of a layer', () => {
  // top 300 mm from 36 to 75 mm, lower 500 mm from 60 to 125 mm
  const layers = waterSizes(soil, 500);
  test.each([
    [75, 125, 1],
    [90, 140, 1],
    [55.5, 92.5, 0.5],
    [45.75, 76.25, 0.25],
    [36, 60, 0],
    [20, 40, 0],
  ])('%d mm on top and %d mm below: %d of it', (top, lower, share) => {
    // each beside a full layer of the other
    expect(availableShare({ top, lower: 125, cover: 0 }, layers)).toBeCloseTo(share, 12);
    expect(availableLowerShare({ top: 75, lower, cover: 0 }, layers)).toBeCloseTo(share, 12);
  });
});
