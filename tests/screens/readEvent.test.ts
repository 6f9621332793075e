import { describe, expect, test } from 'vitest';
import { noLabMinerals, readEvent, type EventEntry } from '../../app/screens/beds/readEvent';
import type { Bed } from '../../app/document/schema';

const bed = { id: 'bed-1', areaM2: 5 } as Bed;
const context = {
  units: 'metric',
  containers: [{ id: 'can', name: 'can', plural: 'cans', litres: 10 }],
} as const;
const entry = (changes: Partial<EventEntry>): EventEntry => ({
  date: '2013-06-15',
  amount: '',
  plantingId: 'planting-1',
  nitrate: '',
  organicMatter: '',
  minerals: noLabMinerals,
  depth: '30 cm',
  share: 1,
  ...changes,
});

describe('what is written down on a bed', () => {
  test.each([
    ['10 mm', 10],
    ['10', 10],
    ['1/2 in', 12.7],
    ['25 L', 5],
    ['2 cans', 4],
  ])('water: %s on 5 m2 is %d mm (1 L on 1 m2 is 1 mm, a definition)', (amount, millimetres) => {
    const { event } = readEvent('water', entry({ amount }), bed, context, 1.3);
    expect(event).toMatchObject({ kind: 'water', bedId: 'bed-1' });
    expect(event && 'millimetres' in event ? event.millimetres : NaN).toBeCloseTo(millimetres, 9);
  });

  test('rain may be nothing, water may not', () => {
    expect(readEvent('rain gauge', entry({ amount: '0' }), bed, context, 1.3).event).toMatchObject({
      millimetres: 0,
    });
    expect(readEvent('water', entry({ amount: '0' }), bed, context, 1.3).event).toBeNull();
  });

  test.each([
    ['14', 14],
    ['14 ppm', 14],
    ['14.5 mg/kg', 14.5],
    ['0', 0],
    // kg/ha over 10 x 1.3 kg/L x 30 cm = 3.9: arithmetic
    ['78 kg/ha', 20],
  ])('nitrate %s is %d mg/kg', (nitrate, value) => {
    const { event } = readEvent('soil test', entry({ nitrate }), bed, context, 1.3);
    if (event?.kind !== 'soil test') throw new Error('no soil test');
    expect(event.nitrateMgPerKg).toBeCloseTo(value, 9);
    expect(event.organicMatterPercent).toBeNull();
    expect(event.depthCentimetres).toBeCloseTo(30, 9);
  });

  test('what a laboratory printed is kept where it was not mg/kg of nitrate-N', () => {
    const kept = (nitrate: string) => readEvent('soil test', entry({ nitrate }), bed, context, 1.3);
    expect(kept('78 kg/ha').event).toMatchObject({ nitrateText: '78 kg/ha' });
    expect(kept('14 ppm').event).not.toHaveProperty('nitrateText');
  });

  test('a test without numbers, or with wild ones, is not taken', () => {
    expect(readEvent('soil test', entry({}), bed, context, 1.3).event).toBeNull();
    expect(readEvent('soil test', entry({ nitrate: 'low' }), bed, context, 1.3).event).toBeNull();
    expect(readEvent('soil test', entry({ nitrate: '5000' }), bed, context, 1.3).event).toBeNull();
    expect(
      readEvent('soil test', entry({ organicMatter: '0' }), bed, context, 1.3).event,
    ).toBeNull();
    expect(
      readEvent('soil test', entry({ nitrate: '10', organicMatter: '61' }), bed, context, 1.3)
        .troubles,
    ).toHaveProperty('organicMatter');
  });

  test('a laboratory’s phosphorus is kept word for word, and rated only with its method', () => {
    const minerals = { ...noLabMinerals, phosphorus: ' 42 ppm ', phosphorusRating: 'optimum' };
    const refused = readEvent('soil test', entry({ minerals }), bed, context, 1.3);
    expect(refused.event).toBeNull();
    expect(refused.troubles.extractant?.sentence).toContain('method');
    const read = readEvent(
      'soil test',
      entry({ minerals: { ...minerals, extractant: 'Mehlich-3' } }),
      bed,
      context,
      1.3,
    );
    expect(read.event).toMatchObject({
      nitrateMgPerKg: null,
      organicMatterPercent: null,
      minerals: { extractant: 'Mehlich-3', phosphorus: '42 ppm', phosphorusRating: 'optimum' },
    });
    // of what is in the report, nothing that was typed is dropped
    const beside = { ...noLabMinerals, extractant: 'Olsen' };
    expect(
      readEvent('soil test', entry({ nitrate: '14', minerals: beside }), bed, context, 1.3).event,
    ).toMatchObject({ minerals: { extractant: 'Olsen' } });
    for (const bare of ['42', '4,2', '< 5', '1 200']) {
      const figure = { ...noLabMinerals, potassium: bare };
      expect(
        readEvent('soil test', entry({ minerals: figure }), bed, context, 1.3).troubles.potassium
          ?.sentence,
      ).toContain('unit');
    }
    const methodAlone = { ...noLabMinerals, extractant: 'Olsen' };
    expect(readEvent('soil test', entry({ minerals: methodAlone }), bed, context, 1.3).event).toBe(
      null,
    );
  });
});
