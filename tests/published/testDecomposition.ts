import { describe, expect, test } from 'vitest';
import { decayParameters } from '../../app/core/cover/decay';
import { asPublished, breakEven, decompose, printedDays } from './decomposition';
import { halfUnitsOff, readCases } from './readCases';

/**
 * Tests of one of the two tables of decomposition, solved apart and given to 0.001 mg N and 0.01 % C.
 *
 * @param folder where `cases.csv` and `break-even.csv` lie
 */
export function testDecomposition(folder: string, materialClass: 'green' | 'mature'): void {
  const table = readCases(folder);
  const even = readCases(folder, 'break-even.csv');

  test('no row of it is missing', () => {
    expect(table.header).toBe(
      [
        'carbon_to_nitrogen,decay_per_day,microbe_carbon_to_nitrogen,humified_share',
        ...printedDays.map((day) => `net_nitrogen_mg_per_g_carbon_day_${day}`),
        ...printedDays.map((day) => `carbon_mineralised_percent_day_${day}`),
      ].join(','),
    );
    expect(table.rows.map(([ratio]) => ratio)).toEqual([
      '9',
      '10',
      '12',
      '15',
      '17',
      '20',
      '25',
      '30',
      '40',
      '60',
      '80',
      '150',
    ]);
    for (const row of table.rows) expect(row).toHaveLength(12);
  });

  test.each(table.rows)('C:N %s: k %s, CNb %s, h %s', (ratio, decay, microbes, humified) => {
    const ours = decayParameters(materialClass, Number(ratio), asPublished);
    expect(halfUnitsOff(ours.decay, decay!)).toBeLessThanOrEqual(1);
    expect(halfUnitsOff(ours.microbeCarbonToNitrogen, microbes!)).toBeLessThanOrEqual(1);
    expect(halfUnitsOff(ours.humusShare, humified!)).toBeLessThanOrEqual(1);
  });

  describe.each(['one step', 'daily steps'])('%s', (steps) => {
    test.each(table.rows)(
      'C:N %s: nitrogen and carbon on four days',
      (ratio, _k, _b, _h, ...printed) => {
        printedDays.forEach((days, at) => {
          const ours = decompose(
            materialClass,
            Number(ratio),
            days,
            steps === 'one step' ? days : 1,
          );
          expect(halfUnitsOff(ours.nitrogen, printed[at]!)).toBeLessThanOrEqual(1);
          expect(halfUnitsOff(ours.carbon, printed[at + printedDays.length]!)).toBeLessThanOrEqual(
            1,
          );
        });
      },
    );
  });

  test('the break-even table is here', () => {
    expect(even.header).toBe('day,carbon_to_nitrogen');
    expect(even.rows.map(([day]) => Number(day))).toEqual([...printedDays]);
  });

  test.each(even.rows)('by day %s nothing is free nor tied up at C:N %s', (day, printed) => {
    expect(
      halfUnitsOff(breakEven(materialClass, Number(day), 9, 60), printed!),
    ).toBeLessThanOrEqual(1);
  });
}
