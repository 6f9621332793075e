import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { bedSeason, recordOf, soilOf } from '../../app/document/seasonInput';
import type { Application, Garden, Planting } from '../../app/document/schema';
import { cropOf } from '../../app/tables/crops';
import { materialOf } from '../../app/tables/materials';
import { nurseryDays } from '../../app/tables/nursery';
import { soils } from '../../app/tables/soils';
import { wantedShares } from '../../app/tables/wanted';
import { exampleGarden } from './exampleGarden';

const today = dayOf('2021-06-20');
const season = (garden: Garden, bedId = 'bed-1', day = today) => bedSeason(garden, bedId, day);
const changed = (change: (garden: Garden) => void): Garden => {
  const garden = exampleGarden();
  change(garden);
  return garden;
};
const planting = (changes: Partial<Planting>): Planting => ({
  ...exampleGarden().plantings[1]!,
  firstHarvest: null,
  cleared: null,
  ...changes,
});
const only = (changes: Partial<Planting>) =>
  changed((garden) => {
    garden.plantings = [planting(changes)];
    garden.events = [];
  });
const firstPlanting = (garden: Garden, day = today) => season(garden, 'bed-1', day).plantings[0]!;

describe('how long a bed is run', () => {
  test('from the first to the last day of the season that holds today', () => {
    const input = season(exampleGarden());
    expect(input.firstDay).toBe(dayOf('2021-01-01'));
    expect(input.lastDay).toBe(dayOf('2021-12-31'));
    expect(input.seasonStarts).toEqual([]);
    expect(input.weather.kind).toHaveLength(365);
  });
  test('a southern season runs from July to June', () => {
    const garden = changed((one) => {
      one.garden.latitudeDegrees = -36;
      one.garden.seasonStartMonth = 7;
    });
    const input = season(garden);
    expect([input.firstDay, input.lastDay]).toEqual([dayOf('2020-07-01'), dayOf('2021-06-30')]);
  });
  test('from six weeks before an earlier planting that still stands, with the season start inside', () => {
    const garden = only({ cropId: 'garlic', started: '2020-10-10', cleared: '2021-07-10' });
    const input = season(garden);
    expect(input.firstDay).toBe(dayOf('2020-10-10') - 42);
    expect(input.seasonStarts).toEqual([dayOf('2021-01-01')]);
  });
  test('with the season of a planting that was cleared since: what it left is still there', () => {
    const garden = only({ started: '2019-05-10', cleared: '2019-10-01' });
    const input = season(garden);
    expect(input.firstDay).toBe(dayOf('2019-01-01'));
    expect(input.seasonStarts).toEqual([dayOf('2020-01-01'), dayOf('2021-01-01')]);
    expect(input.plantings).toHaveLength(1);
  });
  test('with the season of the first layer, and not of one that is only thought of', () => {
    const garden = changed((one) => (one.applications[1]!.date = '2018-06-05'));
    expect(season(garden).firstDay).toBe(dayOf('2018-01-01'));
    const ahead = changed((one) => (one.applications[1]!.date = '2021-06-25'));
    expect(season(ahead).firstDay).toBe(dayOf('2021-01-01'));
  });
  test('a planting that stands for ever is no reason to run for ever', () => {
    const garden = only({ cropId: 'tomato', started: '2011-05-01' });
    expect(season(garden).firstDay).toBe(dayOf('2021-01-01') - 366);
  });
  test('the day the bed was known wins, earlier or later', () => {
    const known = (date: string) => season(changed((one) => (one.beds[0]!.knownSince = date)));
    expect(known('2021-04-10').firstDay).toBe(dayOf('2021-04-10'));
    expect(known('2019-11-10').firstDay).toBe(dayOf('2019-11-10'));
    expect(known('2019-11-10').seasonStarts).toEqual([dayOf('2020-01-01'), dayOf('2021-01-01')]);
    expect(known('2021-11-10').firstDay).toBe(dayOf('2021-01-01'));
  });
  test('what lies outside the run is left out', () => {
    const garden = changed((one) => (one.beds[0]!.knownSince = '2021-06-02'));
    const input = season(garden);
    expect(input.layers).toEqual([]);
    expect(input.events.map(({ kind }) => kind)).toEqual(['rake off', 'harvest']);
  });
});

describe('layers', () => {
  const layers = (garden: Garden) =>
    Object.fromEntries(season(garden).layers.map((layer) => [layer.id, layer]));
  test('buckets of a weighed bag’s clippings: 40 L of 12.5 kg in 50 L, damp, on 6 m2', () => {
    const layer = layers(exampleGarden())['application-1']!;
    const row = materialOf('grass-fresh-generic')!;
    // damp: 0.56 kg water per kg dry on the outside, on top of the row's own moisture
    const moisture = row.moisturePercent.typical / 100;
    const dryShare = (1 - moisture) / (1 + 0.56 * (1 - moisture));
    const dry = (40 * (12.5 / 50) * dryShare) / 6;
    expect(layer.dryKgPerM2).toBeCloseTo(dry, 12);
    expect(layer.freshKgPerM2).toBeCloseTo(10 / 6, 12);
    expect(layer.laidDepth).toBeCloseTo(40 / 6, 12);
    expect(layer.nitrogen).toBeCloseTo(dry * 10 * row.nitrogenPercent.typical, 12);
    expect(layer.carbon / layer.nitrogen).toBeCloseTo(row.carbonToNitrogen.typical, 9);
    expect(layer).toMatchObject({ materialClass: 'green', isGreens: true, condition: 'just cut' });
  });
  test('a kind of mowing other than the lawn’s', () => {
    const garden = changed((one) => (one.mowings[0]!.kind = 'lean'));
    expect(layers(garden)['application-1']!.materialId).toBe('grass-fresh-lean-summer');
  });
  test('without a weighed bag the table’s density holds', () => {
    const garden = changed((one) => (one.containers[0]!.weighed = null));
    const row = materialOf('grass-fresh-generic')!;
    const perLitre = (row.densityKgPerM3.typical / 1000) * (1 - row.moisturePercent.typical / 100);
    expect(layers(garden)['application-1']!.dryKgPerM2).toBeCloseTo((40 * perLitre) / 6, 12);
  });
  test('a bag that was weighed with leaves says nothing of clippings', () => {
    const garden = changed((one) => (one.containers[0]!.weighed!.of = 'leaves-mixed-whole'));
    const unweighed = changed((one) => (one.containers[0]!.weighed = null));
    expect(layers(garden)).toEqual(layers(unweighed));
  });
  test('weight typed: 3 kg dry straw with its own test, 0.65 % N and the material’s carbon', () => {
    const layer = layers(exampleGarden())['application-2']!;
    const row = materialOf('straw-barley')!;
    const dry = (3 * (1 - row.moisturePercent.typical / 100)) / 6;
    expect(layer.dryKgPerM2).toBeCloseTo(dry, 12);
    expect(layer.nitrogen).toBeCloseTo(dry * 1000 * 0.0065, 12);
    // own material: 0.7 % N at C:N 62
    expect(layer.carbon).toBeCloseTo(dry * 1000 * 0.007 * 62, 9);
  });
  test('a C:N that would need more carbon than straw can hold takes the most it can', () => {
    const garden = changed((one) => {
      one.applications[1]!.nitrogenPercent = 2;
      one.applications[1]!.carbonToNitrogen = 60;
    });
    const layer = layers(garden)['application-2']!;
    expect(layer.nitrogen / layer.dryKgPerM2).toBeCloseTo(20, 9);
    expect(layer.carbon / layer.dryKgPerM2).toBeCloseTo(550, 9);
  });
  test('a depth is litres: 10 mm on 2 m2 is 20 L', () => {
    const [layer] = season(exampleGarden(), 'bed-2').layers;
    const row = materialOf('weeds-green')!;
    const perLitre = (row.densityKgPerM3.typical / 1000) * (1 - row.moisturePercent.typical / 100);
    expect(layer!.laidDepth).toBeCloseTo(10, 12);
    expect(layer!.dryKgPerM2).toBeCloseTo((20 * perLitre) / 2, 12);
    expect(layer!.placement).toBe('hoed');
  });
  test('wetness changes the weight of what was typed by volume, and what a weight holds; never both', () => {
    const wet = (wetness: 'soaked' | 'dry', amount: Application['amount']['quantity']) =>
      layers(
        changed((one) => {
          one.mowings[0]!.wetness = wetness;
          one.applications[0]!.amount.quantity = amount;
        }),
      )['application-1']!;
    const bag = { kind: 'containers', count: 1, containerId: 'container-1' } as const;
    const weight = { kind: 'mass', kilograms: 10 } as const;
    expect(wet('soaked', bag).nitrogen).toBe(wet('dry', bag).nitrogen);
    expect(wet('soaked', bag).freshKgPerM2).toBeGreaterThan(wet('dry', bag).freshKgPerM2);
    expect(wet('soaked', weight).nitrogen).toBeLessThan(wet('dry', weight).nitrogen);
    expect(wet('soaked', weight).freshKgPerM2).toBeCloseTo(10 / 6, 12);
  });
  test('compost brings its slow and mineral shares', () => {
    const garden = changed((one) => {
      one.applications[0]!.from = { source: 'elsewhere', materialId: 'compost-garden' };
    });
    const row = materialOf('compost-garden')!;
    expect(layers(garden)['application-1']).toMatchObject({
      materialClass: 'slow',
      slowShare: row.slowShare?.typical,
      mineralShare: row.mineralShare?.typical,
    });
  });
  test('layers only thought of are added, on their own bed', () => {
    const extra = { ...exampleGarden().applications[0]!, id: 'proposed', date: '2021-06-20' };
    const withExtra = bedSeason(exampleGarden(), 'bed-1', today, { extraApplications: [extra] });
    const other = bedSeason(exampleGarden(), 'bed-2', today, { extraApplications: [extra] });
    expect(withExtra.layers.map(({ id }) => id)).toContain('proposed');
    expect(other.layers.map(({ id }) => id)).not.toContain('proposed');
  });
});

describe('plantings', () => {
  const tomato = cropOf('tomato')!;
  test('need of the usual pick: uptake / (1 - 0.15) x 0.7, legumes / (1 - 0.20)', () => {
    const crop = firstPlanting(only({ wanted: 'usual' })).crop;
    expect(crop.need).toBeCloseTo((tomato.uptake.typical / 0.85) * wantedShares.usual.typical, 9);
    const beans = firstPlanting(
      only({ cropId: 'snap_bean_pole', how: 'sown', wanted: 'usual' }),
    ).crop;
    expect(beans.need).toBeCloseTo((cropOf('snap_bean_pole')!.uptake.typical / 0.8) * 0.7, 9);
  });
  test('a pick in kg: in proportion up to the good one, less above it', () => {
    const good = tomato.goodYield.typical;
    const need = (kilogramsPerM2: number) =>
      firstPlanting(only({ wanted: { kilogramsPerM2 } })).crop.need;
    expect(need(good)).toBeCloseTo(tomato.uptake.typical / 0.85, 9);
    expect(need(good / 2)).toBeCloseTo(need(good) / 2, 9);
    expect(need(good * 2)).toBeLessThan(need(good) * 2);
    expect(need(good * 2)).toBeGreaterThan(need(good));
    expect(firstPlanting(only({ wanted: 'heavy' })).crop.need).toBeCloseTo(need(good), 9);
    expect(firstPlanting(only({ wanted: 'poor' })).crop.need).toBeLessThan(need(good) / 2);
  });
  test('nitrogen of the wanted harvest is kilograms x g N/kg', () => {
    const crop = firstPlanting(only({ wanted: { kilogramsPerM2: 4.5 } })).crop;
    expect(crop.harvestNitrogen).toBeCloseTo(4.5 * tomato.removedPerKilogram.typical, 9);
  });
  test('typed days win over the row’s', () => {
    const typed = firstPlanting(only({ firstHarvest: '2021-07-20', cleared: '2021-10-05' }));
    expect(typed.firstHarvestDay).toBe(dayOf('2021-07-20'));
    expect(typed.clearingDay).toBe(dayOf('2021-10-05'));
    expect(typed.cleared).toBe(false);
    const usual = firstPlanting(only({}));
    expect(usual.usualEndDay).toBe(dayOf('2021-05-25') + tomato.usualDays.typical);
    expect(usual.clearingDay).toBe(usual.usualEndDay);
    expect(usual.firstHarvestDay).toBe(dayOf('2021-05-25') + tomato.firstHarvestDays.typical);
  });
  test('past its usual end and not cleared: it still stands', () => {
    const late = firstPlanting(only({}), dayOf('2021-12-20'));
    expect(late.usualEndDay).toBeLessThan(dayOf('2021-12-20'));
    expect(late.clearingDay).toBeNull();
    expect(firstPlanting(only({ cleared: '2021-10-05' }), dayOf('2021-12-20')).cleared).toBe(true);
  });
  test('begun the other way than the row counts, it has a nursery’s days more or less', () => {
    const sown = firstPlanting(only({ how: 'sown' })).crop.usualDays;
    const planted = firstPlanting(only({ how: 'planted' })).crop.usualDays;
    expect(sown - planted).toBe(nurseryDays.typical);
  });
  test('degree-days to the usual end come from the normals without whole years of record', () => {
    const { normalDegreeDays, crop } = firstPlanting(only({}));
    // 25 May to mid October at 15-19 deg C by the normals, less the base
    expect(normalDegreeDays).toBeGreaterThan(crop.usualDays * (14 - crop.baseCelsius));
    expect(normalDegreeDays).toBeLessThan(crop.usualDays * (19 - crop.baseCelsius));
  });
  test('nodules: not looked is not none', () => {
    const seen = (nodules: Planting['nodules']) =>
      firstPlanting(only({ cropId: 'snap_bean_pole', nodules })).nodulesSeen;
    expect([seen('not looked'), seen('pink'), seen('white'), seen('none')]).toEqual([
      null,
      true,
      false,
      false,
    ]);
  });
  test('a perennial grows anew each season', () => {
    const old = firstPlanting(only({ cropId: 'asparagus', started: '2015-04-01' }));
    expect(old.startDay).toBe(dayOf('2021-01-01'));
  });
});

describe('soil', () => {
  const soil = (change: (garden: Garden) => void, bed = 0) => {
    const garden = changed(change);
    return soilOf(garden, garden.beds[bed]!, dayOf('2021-05-01'), today);
  };
  const test1 = (changes: object) => ({ ...exampleGarden().events[5]!, ...changes }) as never;
  test('water by texture', () => {
    expect(soil(() => undefined, 1).fieldCapacity).toBe(soils.loam.fieldCapacity.typical);
  });
  test('organic matter: the latest test by today, else the bed’s, else the years of mulch', () => {
    expect(soil(() => undefined).organicMatterPercent).toBe(3.4);
    expect(soil(() => undefined, 1).organicMatterPercent).toBe(4);
    const tested = soil((one) =>
      one.events.push(
        test1({ id: 'a', date: '2021-04-20', organicMatterPercent: 5 }),
        test1({ id: 'b', date: '2021-04-16', organicMatterPercent: 6 }),
        test1({ id: 'c', date: '2021-06-21', organicMatterPercent: 7 }),
      ),
    );
    expect(tested.organicMatterPercent).toBe(5);
  });
  test('nitrate of a test before the first day is the start: 9 mg/kg x 1.3 kg/L x 30 cm', () => {
    const { startingMineralTop, bulkDensityKgPerL } = soil(() => undefined);
    expect(startingMineralTop).toBeCloseTo((9 * bulkDensityKgPerL * 30) / 100, 12);
  });
  test('not one after the first day, nor one of long ago', () => {
    expect(season(exampleGarden()).soil.startingMineralTop).toBeNull();
    const long = soil((one) => (one.events[5]!.date = '2021-02-01'));
    expect(long.startingMineralTop).toBeNull();
  });
});

describe('weather', () => {
  test('the own rain gauge outranks the record, twice a day adds up', () => {
    const garden = changed((one) => {
      one.events.push(
        { id: 'x', kind: 'rain gauge', date: '2021-06-19', millimetres: 5 },
        { id: 'y', kind: 'rain gauge', date: '2021-06-19', millimetres: 1 },
      );
    });
    const day = recordOf(garden, today).find((one) => one.day === dayOf('2021-06-19'));
    expect(day).toMatchObject({ minimumCelsius: 13, rainMillimetres: 6 });
  });
  test('the record after today is not looked at', () => {
    const garden = changed((one) => one.weather.days.push(['2021-06-21', -40, 50, 900]));
    expect(season(garden)).toEqual(season(exampleGarden()));
  });
  test('no rain reaches a bed under glass', () => {
    const { rainMillimetres } = season(exampleGarden(), 'bed-2').weather;
    expect(Math.max(...rainMillimetres)).toBe(0);
    expect(season(exampleGarden(), 'bed-2').keptMoist).toBe(true);
  });
});

describe('the bed as it was known then', () => {
  const then = dayOf('2021-05-26');
  test('later layers, plantings, events and ends are not in it', () => {
    const input = bedSeason(exampleGarden(), 'bed-1', then, { knownThen: true });
    expect(input.layers).toEqual([]);
    expect(input.events).toEqual([]);
    const tomato = input.plantings.find(({ id }) => id === 'planting-2');
    expect(tomato?.clearingDay).toBe(tomato?.usualEndDay);
  });
  test('what was done by then is', () => {
    const input = bedSeason(exampleGarden(), 'bed-1', dayOf('2021-06-02'), { knownThen: true });
    expect(input.layers).toHaveLength(2);
  });
});
