import { describe, expect, test } from 'vitest';
import { waterStress } from '../../../app/core/soil/evapotranspiration';
import { type CanopyDay, waterDay, waterSizes } from '../../../app/core/soil/water';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { asked } from './asked';

const c = typicalCoefficients();
const soil = {
  fieldCapacity: 0.25,
  wiltingPoint: 0.12,
  bulkDensityKgPerL: 1.3,
  organicMatterPercent: 3,
  startingMineralTop: null,
};
const sizes = waterSizes(soil, 300);
const still: CanopyDay = {
  transpiration: 0,
  evaporation: 0.35,
  isPlanted: true,
  canopy: 0,
  reach: 0.5,
  depletionShare: 0.4,
};
const after = (goneTop: number, goneLower: number, plants = still) => {
  const water = { top: sizes.topFull - goneTop, lower: sizes.lowerFull - goneLower, cover: 0 };
  return waterDay(water, sizes, soil, plants, asked(), false, c);
};

describe('how dry a bed is: what is gone over what can be used readily (FAO-56 eq. 82-84)', () => {
  // 39 mm hold between full and wilting in each layer; on a day without demand p is 0.4 + 0.04 x 5.
  const readily = 0.6 * (39 + 0.5 * 39);

  test('gone from the top and from the share of the lower layer that roots reach', () => {
    expect(after(20, 10).dryness).toBeCloseTo((20 + 0.5 * 10) / readily, 12);
    expect(after(39, 39).dryness).toBeCloseTo(1 / 0.6, 12);
  });

  test('nought when full', () => {
    expect(after(0, 0).dryness).toBe(0);
    expect(after(-10, 0).dryness).toBe(0);
  });

  test('what the sun takes leaves a layer at its wilting point, be the soil ever so fine', () => {
    // 12 mm evaporate from the surface, 9 lie between full and wilting: the layer’s end comes first
    const fine = { ...soil, fieldCapacity: 0.2, wiltingPoint: 0.17 };
    const of = waterSizes(fine, 300);
    const water = { top: of.topWilt + 0.2, lower: of.lowerFull, cover: 0 };
    const hot = asked({ evapotranspiration: 8 });
    waterDay(water, of, fine, { ...still, reach: 0 }, hot, false, c);
    expect(water.top).toBeCloseTo(of.topWilt, 12);
  });

  test('nought in a soil that holds nothing for plants, not endless', () => {
    const dead = { ...soil, wiltingPoint: 0.25 };
    const none = waterSizes(dead, 300);
    const water = { top: none.topFull - 5, lower: none.lowerFull, cover: 0 };
    const report = waterDay(water, none, dead, still, asked(), false, c);
    expect(report.dryness).toBe(0);
    expect(waterStress(5, 0, 0.4)).toBe(0);
  });
});

describe('cover and leaves over the soil', () => {
  test('leaves shade the cover: it gives off only what the air asks of the open part', () => {
    const water = { top: sizes.topFull, lower: sizes.lowerFull, cover: 6 };
    const leafy = { ...still, canopy: 0.5, evaporation: 0 };
    waterDay(
      water,
      sizes,
      soil,
      leafy,
      asked({ evapotranspiration: 4, coverCapacity: 8, coverFraction: 0.8 }),
      false,
      c,
    );
    expect(6 - water.cover).toBeCloseTo(4 * 0.8 * 0.5, 12);
  });

  test('a cover that is nearly full catches only what it has room for', () => {
    const water = { top: sizes.topFull - 20, lower: sizes.lowerFull, cover: 3 };
    const report = waterDay(
      water,
      sizes,
      soil,
      still,
      asked({ rain: 10, coverCapacity: 4, coverFraction: 0.8 }),
      false,
      c,
    );
    expect(water.cover).toBeCloseTo(4, 12);
    expect(report.throughfall).toBeCloseTo(9, 12);
  });

  test('rain of the day counts before the surface is taken to be dry', () => {
    const bare = { ...still, isPlanted: false, reach: 0 };
    const dry = { top: sizes.topFull - 19, lower: sizes.lowerFull, cover: 0 };
    const wetted = { ...dry };
    waterDay(dry, sizes, soil, bare, asked({ evapotranspiration: 4 }), false, c);
    expect(sizes.topFull - dry.top).toBeCloseTo(19, 12);
    waterDay(wetted, sizes, soil, bare, asked({ rain: 15, evapotranspiration: 4 }), false, c);
    // 19 mm is all that evaporates (1000 (0.25 - 0.06) 0.1); 4 mm gone leave it unhindered.
    expect(sizes.topFull - wetted.top).toBeCloseTo(4 + 0.35 * 4, 12);
  });
});
