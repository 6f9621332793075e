import { expect, test } from 'vitest';
import { halfUnitsOff, readCases } from '../readCases';
import { stoppingNitrate } from './ours';

const table = readCases(import.meta.dirname);

test('no row of it is missing', () => {
  expect(table.header).toBe('stage,kilograms_per_hectare');
  expect(table.rows.map(([stage]) => stage)).toEqual(['leafy', 'podding']);
});

test.each(table.rows)('peas, %s: nodules stop at %s kg/ha of nitrate-N', (stage, printed) => {
  const ours = stoppingNitrate(stage as 'leafy' | 'podding');
  expect(halfUnitsOff(ours, printed!)).toBeLessThanOrEqual(1);
});
