import { describe, expect, test } from 'vitest';
import { cropCoefficient } from '../../../app/core/crop/stages';
import {
  extraterrestrialRadiation,
  hargreavesReferenceEvapotranspiration,
  millimetresPerMegajoule,
  totalAvailableWater,
  waterStress,
} from '../../../app/core/soil/evapotranspiration';
import {
  type CanopyDay,
  type WaterStore,
  waterDay,
  waterSizes,
} from '../../../app/core/soil/water';
import type { SoilProperties } from '../../../app/core/season/input';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { fruitingCrop } from '../../core/season/handMadeBed';
import { asked } from '../../core/soil/asked';
import { halfUnitsOff, readCases } from '../readCases';

const table = readCases(import.meta.dirname);
const printed = (example: string): Map<string, string> =>
  new Map(
    table.rows
      .filter(([number]) => number === example)
      .map(([, , quantity, value]) => [quantity!, value!]),
  );
const agree = (value: number, text: string | undefined): void =>
  expect(halfUnitsOff(value, text!)).toBeLessThanOrEqual(1);

const bareSoil: CanopyDay = {
  transpiration: 0,
  evaporation: 0,
  isPlanted: false,
  canopy: 0,
  reach: 0,
  depletionShare: 0.5,
};

describe('FAO Irrigation and Drainage Paper 56 (1998), worked examples: half a unit of the last printed digit', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe('example,page,quantity,printed');
    const count = (example: string): number => printed(example).size;
    expect(
      Object.fromEntries(
        [...new Set(table.rows.map(([one]) => one!))].map((one) => [one, count(one)]),
      ),
    ).toEqual({
      '8': 2,
      '10': 1,
      '17': 1,
      '18': 1,
      '20': 2,
      '30': 4,
      '31': 20,
      '36': 18,
      '37': 30,
      '45b': 1,
    });
    expect(table.rows).toHaveLength(80);
  });

  test('Example 8: radiation above the air, 20 S on 3 September', () => {
    const radiation = extraterrestrialRadiation(-20, 246);
    agree(radiation, printed('8').get('Ra MJ/m2/d'));
    agree(radiation * millimetresPerMegajoule, printed('8').get('Ra mm/d'));
  });

  test.each([
    ['10', 'Ra MJ/m2/d', -22.9, 135],
    ['17', 'Ra', 13 + 44 / 60, 105],
    ['18', 'Ra', 50 + 48 / 60, 187],
    ['20', 'Ra', 45 + 43 / 60, 196],
  ])(
    'Example %s: radiation above the air (%s) at %d degrees on day %i',
    (example, name, latitude, day) => {
      agree(extraterrestrialRadiation(latitude, day), printed(example).get(name));
    },
  );

  test('Example 20: evapotranspiration from temperatures alone, near Lyon in July', () => {
    agree(
      hargreavesReferenceEvapotranspiration(14.8, 26.6, 45 + 43 / 60, 196),
      printed('20').get('Hargreaves ETo mm/d'),
    );
  });

  test('Example 30: coefficient of dry beans, stages of 25, 25, 30 and 20 days', () => {
    const beans = {
      ...fruitingCrop,
      cropCoefficientStart: 0.15,
      cropCoefficientMiddle: 1.14,
      cropCoefficientEnd: 0.25,
      stageShares: [0.25, 0.25, 0.3, 0.2],
    } as const;
    for (const [name, value] of printed('30'))
      agree(cropCoefficient(beans, Number(name.replace('day ', '')) / 100), value);
  });

  test('Example 31: bare loam drying after rain, Ze so that TEW is 20 and REW 9 mm, 4.5 mm a day', () => {
    // FC - WP/2 = 0.20, so 0.1 m gives 20 mm; the layer is thick enough never to limit.
    const soil: SoilProperties = {
      fieldCapacity: 0.25,
      wiltingPoint: 0.1,
      bulkDensityKgPerL: 1.3,
      organicMatterPercent: 2,
      startingMineralTop: null,
    };
    const c = { ...typicalCoefficients(), evaporationDepth: 0.1, readilyEvaporableShare: 9 / 20 };
    const sizes = waterSizes(soil, 300);
    const water: WaterStore = { top: sizes.topFull, lower: sizes.lowerFull, cover: 0 };
    const evaporation = 1.2 - 0.15;
    for (let day = 1; day <= 10; day++) {
      const before = water.top;
      waterDay(
        water,
        sizes,
        soil,
        { ...bareSoil, evaporation },
        asked({ evapotranspiration: 4.5 }),
        false,
        c,
      );
      agree((before - water.top) / (evaporation * 4.5), printed('31').get(`day ${day} Kr`));
      agree(sizes.topFull - water.top, printed('31').get(`day ${day} De end mm`));
    }
  });

  const soils = {
    'loamy sand': [0.15, 0.06],
    silt: [0.32, 0.15],
    'silty clay': [0.35, 0.23],
  } as const;
  const roots = { onion: [0.4, 0.3], tomato: [0.8, 0.4], maize: [1.2, 0.55] } as const;
  const zones = Object.entries(soils).flatMap(([soil, [full, wilt]]) =>
    Object.entries(roots).map(([crop, [depth, share]]) => ({
      soil,
      crop,
      full,
      wilt,
      depth,
      share,
    })),
  );
  test.each(zones)(
    'Example 36: water $crop can reach and use in $soil',
    ({ soil, crop, full, wilt, depth, share }) => {
      const available = totalAvailableWater(full, wilt, 1000 * depth);
      agree(available, printed('36').get(`${crop} on ${soil} TAW mm`));
      // What can be used before the crop slows is where the stress factor leaves 1.
      const readily = Number(printed('36').get(`${crop} on ${soil} RAW mm`));
      expect(waterStress(readily - 0.5, available, share)).toBe(1);
      expect(waterStress(readily + 0.5 + 1e-9, available, share)).toBeLessThan(1);
    },
  );

  test('Example 37: tomato slowing over ten dry days, through our whole day of water', () => {
    const soil: SoilProperties = {
      fieldCapacity: 0.32,
      wiltingPoint: 0.12,
      bulkDensityKgPerL: 1.3,
      organicMatterPercent: 2,
      startingMineralTop: null,
    };
    const sizes = waterSizes(soil, 500);
    // 55 mm gone of the 160 mm that 80 cm hold, shared by depth; no evaporation from the soil.
    const water: WaterStore = {
      top: sizes.topFull - (55 * 3) / 8,
      lower: sizes.lowerFull - (55 * 5) / 8,
      cover: 0,
    };
    // The example holds p at 0.4; ours moves it by 0.04 for each mm a day over 5.
    const plants: CanopyDay = { ...bareSoil, transpiration: 1.2, reach: 1, depletionShare: 0.44 };
    const gone = (): number => sizes.topFull - water.top + sizes.lowerFull - water.lower;
    for (let day = 1; day <= 10; day++) {
      const before = gone();
      waterDay(
        water,
        sizes,
        soil,
        plants,
        asked({ evapotranspiration: 5 }),
        false,
        typicalCoefficients(),
      );
      const used = gone() - before;
      agree(used / 6, printed('37').get(`day ${day} Ks`));
      agree(used, printed('37').get(`day ${day} ETc adj`));
      agree(gone(), printed('37').get(`day ${day} Dr end`));
    }
  });

  test('Chapter 10: half the ground under organic cover evaporates a quarter less', () => {
    const soil = { ...bareSoil, evaporation: 0.35 };
    const properties: SoilProperties = {
      fieldCapacity: 0.27,
      wiltingPoint: 0.12,
      bulkDensityKgPerL: 1.3,
      organicMatterPercent: 3,
      startingMineralTop: null,
    };
    const sizes = waterSizes(properties, 300);
    const evaporated = (covered: number): number => {
      const water: WaterStore = { top: sizes.topFull, lower: sizes.lowerFull, cover: 0 };
      waterDay(
        water,
        sizes,
        properties,
        soil,
        asked({ evapotranspiration: 5, coverFraction: covered }),
        false,
        typicalCoefficients(),
      );
      return sizes.topFull - water.top;
    };
    agree(1 - evaporated(0.5) / evaporated(0), printed('45b').get('reduction of soil evaporation'));
  });
});
