import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { columnsOf, newYorkJson } from '../../.config/makeWeather.js';
import { dayOf, textFromDay } from '../../app/core/days';
import { bundledRecord } from '../../app/tables/bundledRecords';
import { climates, climatesByDistance, climateStanding } from '../../app/tables/climates';
import { coefficientRows, typicalCoefficients } from '../../app/tables/coefficients';
import { cropOf, cropRows } from '../../app/tables/crops';
import { lawnMaterials, moistureRow, outsideWater } from '../../app/tables/lawns';
import { materialOf, materialRows } from '../../app/tables/materials';
import { bulkDensityRow, organicMatterRow, soils } from '../../app/tables/soils';
import { lawnKinds, textures } from '../../app/document/schema';

describe('coefficients', () => {
  test('the typical set is the typical cell of every row', () => {
    const typical = typicalCoefficients();
    expect(Object.keys(typical).sort()).toEqual(Object.keys(coefficientRows).sort());
    for (const [name, value] of Object.entries(typical)) {
      expect(value, name).toBe(coefficientRows[name as keyof typeof typical].typical);
    }
  });

  test('green humus never asks for more than its limits at any C:N that is used', () => {
    const c = typicalCoefficients();
    expect(c.humusTurnoverLimit).toBeLessThan(c.humusCarbonToNitrogen);
    expect(c.humusShareLimit).toBeLessThan(1);
  });
});

describe('crops', () => {
  test('are named by their id, and the stages fill the season', () => {
    for (const crop of cropRows) {
      expect(cropOf(crop.id)).toBe(crop);
      expect(crop.stageShares.reduce((one, two) => one + two, 0)).toBeCloseTo(1, 12);
      expect(crop.firstHarvestDays.typical, crop.id).toBeLessThanOrEqual(crop.usualDays.typical);
      if (crop.flowerDays) {
        // cover crops are dug in before they flower
        const end = crop.excessClass === 'cover' ? crop.flowerDays.high : crop.usualDays.typical;
        expect(crop.flowerDays.typical, crop.id).toBeLessThanOrEqual(end);
      }
    }
    expect(cropOf('toString')).toBeUndefined();
    expect(new Set(cropRows.map(({ name }) => name)).size).toBe(cropRows.length);
  });

  test('carry off less than they hold at the good yield', () => {
    const carriesOff = cropRows
      .filter(({ excessClass }) => excessClass !== 'cover')
      .filter(
        ({ goodYield, removedPerKilogram, uptake }) =>
          goodYield.typical * removedPerKilogram.typical >= 0.9 * uptake.typical,
      );
    // dill: two sources of its content lie nearly 2x apart, and uptake rests on the lower one
    expect(carriesOff.map(({ id }) => id)).toEqual(['dill']);
    const dill = cropOf('dill');
    expect((dill?.goodYield.typical ?? 0) * (dill?.removedPerKilogram.low ?? 0)).toBeLessThan(
      0.9 * (dill?.uptake.typical ?? 0),
    );
  });

  test('beans bear more nitrate than peas, and only legumes fix', () => {
    const [bean, pea] = [cropOf('snap_bean_pole')?.legume, cropOf('pea')?.legume];
    expect(pea?.leafyLimit.typical).toBeCloseTo(4.8, 9);
    expect(pea?.poddingLimit.typical).toBeCloseTo(3.4, 9);
    expect(bean?.leafyLimit.typical).toBeCloseTo(5.76, 9);
    expect(bean?.leafyLimit.high).toBeCloseTo(11.04, 9);
    const legumes = cropRows.filter(({ legume }) => legume).map(({ family }) => family);
    expect(new Set(legumes)).toEqual(new Set(['Fabaceae']));
  });
});

describe('materials', () => {
  test('are named by their id', () => {
    for (const material of materialRows) expect(materialOf(material.id)).toBe(material);
    expect(materialOf('constructor')).toBeUndefined();
    expect(new Set(materialRows.map(({ name }) => name)).size).toBe(materialRows.length);
  });

  test('greens and browns are never the same', () => {
    for (const { id, isGreens, isBrowns } of materialRows) {
      expect(isGreens && isBrowns, id).toBe(false);
    }
  });

  test('only what has rotted has a slow pool', () => {
    for (const { id, materialClass, slowShare } of materialRows) {
      expect(slowShare !== undefined, id).toBe(materialClass === 'slow');
    }
  });
});

describe('lawns', () => {
  test('every kind of lawn of the file has clippings of its own', () => {
    expect(Object.keys(lawnMaterials).sort()).toEqual([...lawnKinds].sort());
    expect(new Set(Object.values(lawnMaterials)).size).toBe(lawnKinds.length);
  });

  test('wet grass weighs more: 80, 82 and 85 per cent water, 15 kg for a soaked bag', () => {
    const material = materialOf(lawnMaterials.ordinary);
    if (!material) throw new Error('Ordinary clippings are missing');
    const water = (['dry', 'damp', 'soaked'] as const).map(
      (wetness) => moistureRow(material, 'just cut', wetness).typical,
    );
    expect(water.map((percent) => Math.round(percent))).toEqual([80, 82, 85]);
    const dryKilograms = 11.3 * (1 - 0.8);
    expect(dryKilograms / (1 - (water[2] ?? 0) / 100)).toBeCloseTo(15, 0);
  });

  test('wilting concerns green stuff only, and is undone by rain', () => {
    const [grass, straw] = [materialOf(lawnMaterials.ordinary), materialOf('straw-wheat')];
    if (!grass || !straw) throw new Error('A material is missing');
    expect(moistureRow(grass, 'crisp', 'dry').typical).toBe(15);
    expect(moistureRow(straw, 'limp', 'dry')).toBe(straw.moisturePercent);
    const soaked = moistureRow(grass, 'limp', 'soaked');
    // limp grass holds 1.5 kg water per kg dry matter
    const held = 0.6 / 0.4 + outsideWater.soaked.typical;
    expect(soaked.typical).toBeCloseTo((100 * held) / (1 + held), 9);
  });
});

describe('soils', () => {
  test('the twelve kinds of the triangle are there; clay loam lies between loam and clay', () => {
    expect(textures).toHaveLength(12);
    expect(Object.keys(soils).sort()).toEqual([...textures].sort());
    for (const [texture, { fieldCapacity, wiltingPoint }] of Object.entries(soils)) {
      expect(fieldCapacity.typical, texture).toBeGreaterThan(wiltingPoint.typical);
    }
    const held = (texture: keyof typeof soils): number => soils[texture].fieldCapacity.typical;
    expect(held('clay loam')).toBeGreaterThan(held('loam'));
    expect(held('clay loam')).toBeLessThanOrEqual(held('clay'));
  });

  // Saxton & Rawls 2006, table of classes at 2.5 % organic matter, recalled: per cent by volume
  test.each([
    ['sandy clay loam', 17, 27],
    ['clay loam', 22, 36],
    ['sandy clay', 25, 36],
  ] as const)('%s, which has no row in FAO-56: %d and %d %%', (texture, wilting, capacity) => {
    const { wiltingPoint, fieldCapacity } = soils[texture];
    expect(Math.round(100 * wiltingPoint.typical)).toBe(wilting);
    expect(Math.round(100 * fieldCapacity.typical)).toBe(capacity);
    expect(fieldCapacity.place).toContain(texture);
  });

  test('soil grows lighter with organic matter, never heavier than usual', () => {
    for (const texture of textures) {
      let before = Infinity;
      for (const matter of [1, 2.5, 4, 6, 8, 15]) {
        const { typical } = bulkDensityRow(texture, matter);
        expect(typical).toBeLessThanOrEqual(Math.min(before, 1.3));
        before = typical;
      }
    }
    expect(bulkDensityRow('loam', 3).typical).toBe(1.3);
    expect(bulkDensityRow('loam', 20).low).toBeLessThan(bulkDensityRow('loam', 8).low);
  });

  test('a test outranks the years of mulch, and not knowing is the widest', () => {
    expect(organicMatterRow(3.4, 'many').typical).toBe(3.4);
    expect(organicMatterRow(null, 'a few').typical).toBe(4);
    const unknown = organicMatterRow(null, null);
    for (const years of ['none', 'a few', 'many'] as const) {
      const known = organicMatterRow(null, years);
      expect(unknown.low).toBeLessThanOrEqual(known.low);
      expect(unknown.high).toBeGreaterThanOrEqual(known.high);
    }
  });
});

describe('climates', () => {
  test('twelve months of weather that can be', () => {
    for (const climate of climates) {
      const { maximumCelsius, minimumCelsius, rainMillimetres, wetDays, id } = climate;
      for (const months of [maximumCelsius, minimumCelsius, rainMillimetres, wetDays]) {
        expect(months, id).toHaveLength(12);
      }
      for (let month = 0; month < 12; month += 1) {
        expect(maximumCelsius[month], id).toBeGreaterThan(minimumCelsius[month] ?? NaN);
        expect(wetDays[month], id).toBeLessThan(28);
      }
      for (const frost of [climate.lastSpringFrost, climate.firstAutumnFrost]) {
        if (frost !== null) expect(() => dayOf(`2001-${frost}`), id).not.toThrow();
      }
      expect(climate.frostKnown === 'none expected', id).toBe(climate.lastSpringFrost === null);
      expect(climateStanding(climate).length, id).toBeLessThanOrEqual(200);
    }
    expect(new Set(climates.map(({ id }) => id)).size).toBe(climates.length);
  });

  test('south of the equator it is warmest in January', () => {
    for (const { id, latitudeDegrees, maximumCelsius } of climates) {
      const warmerInJuly = (maximumCelsius[6] ?? 0) > (maximumCelsius[0] ?? 0);
      expect(warmerInJuly, id).toBe(latitudeDegrees > 0);
    }
  });

  test('the nearest stations come first', () => {
    expect(climatesByDistance(40.8, -74)[0]?.id).toBe('new-york-central-park');
    expect(climatesByDistance(51.5, -0.1)[0]?.id).toBe('heathrow');
    expect(climatesByDistance(-37.8, 145)[0]?.id).toBe('laverton-melbourne-victoria');
  });
});

describe('the New York record', () => {
  const root = join(import.meta.dirname, '../..');
  const csv = readFileSync(join(root, 'node_modules/vega-datasets/data/weather.csv'), 'utf8');

  test('is the package, day by day', () => {
    const text = readFileSync(join(root, 'assets/weather/new-york.json'), 'utf8');
    expect(text).toBe(newYorkJson(csv));
    const record = bundledRecord('new-york');
    const { days, ...columns } = columnsOf(csv, 'New York');
    expect(record).toMatchObject(columns);
    expect(days).toHaveLength(1461);
    const first = dayOf(record?.firstDay ?? '');
    expect(days).toEqual(days.map((_, index) => textFromDay(first + index)));
  });

  test('says who measured it, and is the only one', () => {
    expect(bundledRecord('new-york')?.credit).toContain('NOAA');
    expect(bundledRecord('seattle')).toBeUndefined();
  });
});
