import { describe, expect, test } from 'vitest';
import { factIds, lineIds, numberIds, type RowId } from '../../app/core/season/limits';
import { sources } from '../../app/tables/sources';
import { limits, thresholdRow, thresholdRows } from '../../app/tables/thresholds';

/* Expected lines are those of the design's page on states and cautions. */

const cellsOf = (id: RowId) => {
  const { note, caution, stop, number } = thresholdRow(id);
  return [note, caution, stop, number].filter((cell) => cell !== null);
};

describe('the table behind states and cautions', () => {
  test('has each row once, and none too many', () => {
    const ids = thresholdRows.map((row) => row.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect([...ids].sort()).toEqual([...lineIds, ...numberIds, ...factIds].sort());
  });

  test('every number has a unit, a place, a source that exists and a standing', () => {
    for (const row of thresholdRows) {
      const cells = cellsOf(row.id);
      if (cells.length === 0) expect(row.fact, row.id).not.toBeNull();
      for (const cell of cells) {
        expect(cell.unit, row.id).not.toBe('');
        expect(cell.place, row.id).not.toBe('');
        expect(Object.keys(sources), row.id).toContain(cell.source);
        expect(cell.low).toBeLessThanOrEqual(cell.typical);
        expect(cell.typical).toBeLessThanOrEqual(cell.high);
      }
      if (row.fact) expect(Object.keys(sources), row.id).toContain(row.fact.source);
    }
  });

  test('a line that is only an estimate of ours is marked as judged', () => {
    for (const row of thresholdRows)
      for (const cell of [...cellsOf(row.id), ...(row.fact ? [row.fact] : [])])
        if (cell.standing === 'assumed') expect(cell.judged, row.id).toBe(true);
  });

  test('lines rise from note to stop', () => {
    for (const id of lineIds) {
      const { note, caution, stop } = limits.lines[id];
      const finite = [note, caution, stop].filter(Number.isFinite);
      expect(finite, id).toEqual([...finite].sort((a, b) => a - b));
      expect(new Set(finite).size, id).toBe(finite.length);
      expect(finite.length, id).toBeGreaterThan(0);
    }
  });

  test.each([
    ['layer just cut', 8, 13, 25],
    ['layer limp', 20, 40, 75],
    ['layer crisp', 40, 75, 150],
    ['all cover', Infinity, 100, 150],
    ['over-fed tender storage', Infinity, 1.2, 1.5],
    ['over-fed storage', Infinity, 1.3, 1.7],
    ['over-fed fruit', Infinity, 1.3, 1.8],
    ['over-fed flower', Infinity, 1.3, 2],
    ['over-fed leaf', Infinity, 2, Infinity],
    ['over-fed head', Infinity, 2, Infinity],
    ['over-fed perennial', Infinity, 1.2, 1.7],
    ['nitrate at flowering', Infinity, 20, 30],
    ['room leaf', 1.1, 1.5, 2],
    ['room fruit', 1.1, 1.3, 1.8],
  ] as const)('%s: %d, %d, %d', (id, note, caution, stop) => {
    expect(limits.lines[id]).toEqual({ note, caution, stop });
  });

  test.each([
    ['enough to the end', 1.1],
    ['leaving enough to the end', 1.05],
    ['leaving over-fed', 0.1],
    ['leaving enough for now', 17],
    ['forecast meets', 0.85],
    ['little open', 0.1],
    ['short look-ahead', 28],
    ['short share', 0.9],
    ['short least need', 0.3],
    ['short least open', 0.15],
    ['leaving short', 0.9],
    ['out of reach', 0.4],
    ['room share', 0.33],
    ['room season limit', 80],
    ['cover bare', 0.3],
    ['cover thin', 0.7],
    ['silent mowings', 4],
    ['silent days', 42],
    ['manure splashed', 120],
    ['manure off the ground', 90],
  ] as const)('%s: %d', (id, value) => {
    expect(limits.numbers[id]).toBe(value);
  });

  test('a judged stop says so: an inch of just-cut clippings is a line we set', () => {
    for (const id of ['layer just cut', 'layer limp', 'layer crisp', 'all cover'] as const)
      expect(thresholdRow(id).stop?.judged, id).toBe(true);
    expect(thresholdRow('slug rain').number?.judged).toBe(true);
    expect(() => thresholdRow('no such row')).toThrow();
  });

  test('is plain data that can cross to a worker', () => {
    expect(structuredClone(limits)).toEqual(limits);
  });
});
