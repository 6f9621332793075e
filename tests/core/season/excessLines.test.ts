import { describe, expect, test } from 'vitest';
import { classLines, type ClassNeed } from '../../../app/core/season/excessLines';
import { limits } from '../../../app/tables/thresholds';

/* Lines of the threshold table: storage 1.3 and 1.7, fruit 1.3 and 1.8, leaf 2.0 without a strong line. */

const of = (...needs: readonly (readonly [ClassNeed['excessClass'], number])[]) =>
  needs.map(([excessClass, need]) => ({ excessClass, need }));

describe('lines of what grows on a bed', () => {
  test('one class has its own row, in both uses', () => {
    const fed = classLines(of(['leaf', 0.4]), limits, 'over-fed')!;
    expect(fed).toMatchObject({ row: 'over-fed leaf', excessClass: 'leaf' });
    expect(fed.lines).toEqual({ note: Infinity, caution: 2, stop: Infinity });
    const room = classLines(of(['leaf', 0.4]), limits, 'room')!;
    expect(room.row).toBe('room leaf');
    expect(room.lines.note).toBeCloseTo(1.1, 12);
    expect(room.lines.caution).toBeCloseTo(1.5, 12);
    expect(room.lines.stop).toBeCloseTo(2, 12);
  });

  test('several share a line by need; who has no such line does not weigh on it', () => {
    const { lines } = classLines(of(['storage', 6], ['leaf', 4]), limits, 'over-fed')!;
    expect(lines.caution).toBeCloseTo(0.6 * 1.3 + 0.4 * 2, 12);
    expect(lines.stop).toBeCloseTo(1.7, 12);
    const three = classLines(of(['storage', 6], ['leaf', 4], ['fruit', 2]), limits, 'over-fed')!;
    expect(three.lines.stop).toBeCloseTo((6 * 1.7 + 2 * 1.8) / 8, 12);
  });

  test('the largest need names the row, wherever it stands in the list', () => {
    for (const needs of [
      of(['leaf', 4], ['storage', 6], ['fruit', 2]),
      of(['storage', 6], ['fruit', 2], ['leaf', 4]),
      of(['fruit', 2], ['leaf', 4], ['storage', 6]),
    ])
      expect(classLines(needs, limits, 'over-fed')).toMatchObject({
        row: 'over-fed storage',
        excessClass: 'storage',
      });
  });

  test('legumes and cover crops take no part in the line', () => {
    for (const other of ['legume', 'cover'] as const) {
      const { lines, row } = classLines(of([other, 5], ['leaf', 6]), limits, 'over-fed')!;
      expect(lines.caution).toBeCloseTo(2, 12);
      expect(row).toBe('over-fed leaf');
    }
  });

  test('and with half of the need or more they take the bed', () => {
    expect(classLines(of(['legume', 5], ['leaf', 5]), limits, 'room')).toBeNull();
    expect(classLines(of(['legume', 3], ['cover', 3], ['leaf', 5]), limits, 'room')).toBeNull();
    expect(classLines(of(['cover', 5]), limits, 'room')).toBeNull();
    expect(classLines([], limits, 'room')).toBeNull();
    expect(classLines(of(['leaf', 0]), limits, 'room')).toBeNull();
  });
});
