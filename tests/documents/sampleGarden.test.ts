import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { bundledRecord } from '../../app/tables/bundledRecords';
import { cropOf } from '../../app/tables/crops';
import { lawnMaterials, moistureRow } from '../../app/tables/lawns';
import { materialOf } from '../../app/tables/materials';
import { sampleGarden, sampleToday } from './gardens/sampleGarden';
import { bagId } from './gardens/sampleMowings';

const garden = sampleGarden();

const bagsOf = (amount: (typeof garden.mowings)[number]['amount']): number => {
  if (amount.quantity.kind !== 'containers') throw new Error('An amount in bags is wanted');
  expect(amount.quantity.containerId).toBe(bagId);
  return amount.quantity.count;
};

describe('the sample garden holds together', () => {
  test('one bag holds 77 g of nitrogen: 11.3 kg, dry to the touch, at 3.4 %', () => {
    const material = materialOf(lawnMaterials.ordinary);
    const weighed = garden.containers.find(({ id }) => id === bagId)?.weighed;
    if (!material || !weighed) throw new Error('The bag was not weighed');
    const moisture = moistureRow(material, 'just cut', weighed.wetness).typical / 100;
    const dryKilograms = weighed.kilograms * (1 - moisture);
    expect(dryKilograms).toBeCloseTo(2.26, 6);
    expect(dryKilograms * material.nitrogenPercent.typical * 10).toBeCloseTo(76.8, 1);
  });

  test('every bag that was mown is on a bed, on the heap, on the lawn or still open', () => {
    for (const mowing of garden.mowings) {
      const laid = garden.applications
        .filter(({ from }) => from.source === 'mowing' && from.mowingId === mowing.id)
        .reduce((sum, { amount }) => sum + bagsOf(amount), 0);
      const rest = bagsOf(mowing.amount) - laid;
      expect(rest).toBeGreaterThan(-1e-9);
      if (mowing.date === sampleToday) expect(mowing.rest.to).toBe('undecided');
      else expect(mowing.rest.to).not.toBe('undecided');
    }
  });

  test('17 1/2 bags to 9 June, 6 1/2 of them on the gate bed', () => {
    const before = garden.mowings.filter(({ date }) => date < sampleToday);
    expect(before.reduce((sum, { amount }) => sum + bagsOf(amount), 0)).toBeCloseTo(17.5, 9);
    const gate = garden.applications.filter(({ bedId }) => bedId === 'bed-gate');
    expect(gate.reduce((sum, { amount }) => sum + bagsOf(amount), 0)).toBeCloseTo(6.5, 9);
  });

  test('the beds are 51 m2 together and lie along the path in the order of their steps', () => {
    expect(garden.beds.reduce((sum, { areaM2 }) => sum + areaM2, 0)).toBeCloseTo(51, 9);
    for (const { areaM2, lengthMetres, widthMetres } of garden.beds) {
      expect((lengthMetres ?? 0) * (widthMetres ?? 0)).toBeCloseTo(areaM2, 9);
    }
    const steps = garden.beds.map((bed) => bed.steps ?? 0);
    expect([...steps].sort((one, other) => one - other)).toEqual(steps);
  });

  test('nothing tender stands in the open before the last frost of the record', () => {
    const record = bundledRecord('new-york');
    if (!record) throw new Error('The record is missing');
    const start = dayOf(record.firstDay);
    for (const { cropId, started } of garden.plantings) {
      const crop = cropOf(cropId);
      expect(crop, cropId).toBeDefined();
      if (!crop?.frostTender || started > sampleToday) continue;
      const toToday = record.minimumCelsius.slice(
        dayOf(started) - start,
        dayOf(sampleToday) - start,
      );
      expect(Math.min(...toToday), cropId).toBeGreaterThan(0);
    }
  });

  test('nothing is known of the weather after today', () => {
    expect(garden.garden.today).toBe(sampleToday);
    expect(garden.weather.days.at(-1)?.[0]).toBe(sampleToday);
    expect(garden.weather.days).toHaveLength(dayOf(sampleToday) - dayOf('2012-01-01') + 1);
  });

  test('the storm is in the record: 102 mm on 7 June, 176 mm from the 7th to the 14th', () => {
    const rain = garden.weather.days.filter(
      ([date]) => date >= '2013-06-07' && date <= '2013-06-14',
    );
    expect(rain[0]?.[3]).toBeCloseTo(102, 0);
    expect(rain.reduce((sum, [, , , millimetres]) => sum + (millimetres ?? 0), 0)).toBeCloseTo(
      176,
      0,
    );
  });

  test('what is in store today is what was there less what was laid since', () => {
    const left = (stockId: string): number => {
      const stock = garden.stock.find(({ id }) => id === stockId);
      const amountOf = (quantity: (typeof garden.applications)[number]['amount']['quantity']) =>
        quantity.kind === 'mass'
          ? quantity.kilograms
          : quantity.kind === 'volume'
            ? quantity.litres
            : Number.NaN;
      const used = garden.applications
        .filter(({ from }) => from.source === 'stock' && from.stockId === stockId)
        .reduce((sum, { amount }) => sum + amountOf(amount.quantity), 0);
      return stock?.amount ? amountOf(stock.amount.quantity) - used : Number.NaN;
    };
    expect(left('stock-straw')).toBe(18);
    expect(left('stock-compost')).toBe(60);
    expect(left('stock-leaves')).toBe(300);
  });
});
