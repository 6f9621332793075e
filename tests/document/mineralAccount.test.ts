import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { runSeason } from '../../app/core/season/season';
import { elementOfOxide } from '../../app/core/units';
import { bedQuestion } from '../../app/document/bedQuestion';
import { mineralAccount, type MineralSeason } from '../../app/document/mineralAccount';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';
import { cropMineralRows, cropMineralsOf } from '../../app/tables/cropMinerals';
import { clippingsMinerals } from '../../app/tables/lawns';

const sample = (): Garden => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error(parsed.error.kind);
  return parsed.value;
};
const idOf = (garden: Garden, name: string): string =>
  garden.beds.find((bed) => bed.name === name)?.id ?? '';
const accountOf = (garden: Garden, bedId: string, today = '2013-06-15') => {
  const { input } = bedQuestion(garden, bedId, dayOf(today));
  return { input, seasons: mineralAccount(garden, input, runSeason(input)) };
};
const lineOf = (seasons: readonly MineralSeason[], name: string) =>
  seasons.flatMap(({ lines }) => lines).find((line) => line.name === name);

describe('phosphorus and potassium of a bed', () => {
  test('what clippings bring is their dry weight times what the source says they hold', () => {
    const garden = sample();
    const { input, seasons } = accountOf(garden, idOf(garden, 'Gate bed'));
    const dry = input.layers.reduce((sum, layer) => sum + layer.dryKgPerM2, 0);
    const laid = lineOf(seasons, 'Clippings')?.figures;
    expect(dry).toBeGreaterThan(0.5);
    for (const mineral of ['phosphorus', 'potassium'] as const) {
      const row = clippingsMinerals[`${mineral}Percent`];
      // the median of draws, so within a few per cent of the likely value
      expect(laid?.[mineral].typical).toBeGreaterThan(dry * 10 * row.typical * 0.93);
      expect(laid?.[mineral].typical).toBeLessThan(dry * 10 * row.typical * 1.07);
      expect(laid?.[mineral].low).toBeGreaterThan(dry * 10 * row.low);
      expect(laid?.[mineral].high).toBeLessThan(dry * 10 * row.high);
    }
  });

  test('twice the clippings bring twice as much', () => {
    const garden = sample();
    const bedId = idOf(garden, 'Gate bed');
    const once = lineOf(accountOf(garden, bedId).seasons, 'Clippings')?.figures;
    const halfAsBig = {
      ...garden,
      beds: garden.beds.map((bed) => (bed.id === bedId ? { ...bed, areaM2: bed.areaM2 / 2 } : bed)),
    };
    const twice = lineOf(accountOf(halfAsBig, bedId).seasons, 'Clippings')?.figures;
    expect((twice?.potassium.typical ?? NaN) / (once?.potassium.typical ?? NaN)).toBeCloseTo(2, 9);
  });

  test('a logged pick carries off what its crop holds, and counts once it was picked', () => {
    const garden = sample();
    const planting = garden.plantings.find(({ cropId }) => cropId === 'tomato');
    const bed = garden.beds.find(({ id }) => id === planting?.bedId);
    if (!planting || !bed) throw new Error('no tomatoes');
    const picked: Garden = {
      ...garden,
      garden: { ...garden.garden, today: '2013-10-30' },
      plantings: garden.plantings.map((one) =>
        one.id === planting.id ? { ...one, cleared: '2013-10-20' } : one,
      ),
    };
    const { input, seasons } = accountOf(picked, bed.id, '2013-10-30');
    const run = runSeason(input);
    const { harvested } = run.plantings.find(({ id }) => id === planting.id) ?? { harvested: NaN };
    const out = lineOf(seasons, 'Tomatoes')?.figures.potassium.typical ?? NaN;
    expect(harvested).toBeGreaterThan(0);
    const crop = input.plantings.find(({ id }) => id === planting.id)?.crop;
    const kilograms = harvested / (crop?.harvestGramsPerKilogram ?? NaN);
    const row = cropMineralsOf('tomato').potassium;
    expect(-out / kilograms).toBeGreaterThan(row.low);
    expect(-out / kilograms).toBeLessThan(row.high);
    // in June nothing of it was picked
    expect(lineOf(accountOf(garden, bed.id).seasons, 'Tomatoes')?.way).not.toBe('picked');
  });

  test('what a laboratory said of one’s own compost goes before the table’s, which nobody read', () => {
    const garden = sample();
    const bedId = idOf(garden, 'Gate bed');
    const [layer] = garden.applications;
    const mine = (percents: { phosphorusPercent?: number; potassiumPercent?: number }): Garden => ({
      ...garden,
      materials: [{ id: 'mine', name: 'My compost', basedOn: 'compost-garden', ...percents }],
      applications: [
        {
          ...layer!,
          id: 'compost-tested',
          bedId,
          date: '2013-06-10',
          from: { source: 'elsewhere', materialId: 'mine' },
          amount: {
            text: '10 kg',
            quantity: { kind: 'mass', kilograms: 10 },
            certainty: 'plain',
          },
          placement: 'laid',
          condition: 'crisp',
          wetness: 'dry',
          mixtureId: null,
          passedStops: [],
        },
      ],
    });
    const tested = mine({ phosphorusPercent: 0.6, potassiumPercent: 1.5 });
    const { input, seasons } = accountOf(tested, bedId);
    const line = lineOf(seasons, 'My compost')!;
    const gramsOfDry = input.layers[0]!.dryKgPerM2 * 1000;
    expect(line.figures.phosphorus.typical / (gramsOfDry * 0.006)).toBeCloseTo(1, 1);
    expect(line.figures.potassium.typical / (gramsOfDry * 0.015)).toBeCloseTo(1, 1);
    expect(line.isRecalled).toBe(false);
    expect(line.contents.potassium.standing).toBe('measured');
    // one of the two was measured: the other is still recalled, and says so
    expect(
      lineOf(accountOf(mine({ phosphorusPercent: 0.6 }), bedId).seasons, 'My compost'),
    ).toEqual(expect.objectContaining({ isRecalled: true }));
  });

  test('the balance is the sum of its lines', () => {
    const garden = sample();
    for (const { id } of garden.beds) {
      for (const season of accountOf(garden, id).seasons) {
        const sum = season.lines.reduce((all, line) => all + line.figures.potassium.typical, 0);
        // medians of sums are sums of medians only nearly
        expect(Math.abs(season.balance.potassium.typical - sum)).toBeLessThan(
          0.05 * Math.abs(sum) + 1e-9,
        );
      }
    }
  });
});

describe('minerals of crops', () => {
  // New England Vegetable Management Guide, table 4: lb of P2O5 and K2O an acre at the yield in tons.
  // P of P2O5 2 x 30.974 / 141.944, K of K2O 2 x 39.098 / 94.196 (atomic weights)
  test('are the element of the printed oxide', () => {
    expect(elementOfOxide.phosphorus).toBeCloseTo((2 * 30.974) / 141.944, 4);
    expect(elementOfOxide.potassium).toBeCloseTo((2 * 39.098) / 94.196, 3);
    // 20 tons of cabbage carry off 30 and 130 lb: 0.75 and 3.25 g of the oxides in a kilogram
    expect(cropMineralRows.cabbage?.phosphorus.typical).toBeCloseTo(0.75 * 0.4364, 4);
    expect(cropMineralRows.cabbage?.potassium.typical).toBeCloseTo(3.25 * 0.8301, 4);
    // 24 tons of cucumbers: 33-72 and 100-400 lb
    expect(cropMineralRows.cucumber?.phosphorus.low).toBeCloseTo((33 / 48) * 0.4364, 4);
    expect(cropMineralRows.cucumber?.potassium.high).toBeCloseTo((400 / 48) * 0.8301, 4);
  });
});
