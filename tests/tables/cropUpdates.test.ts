import { describe, expect, test } from 'vitest';
import { cropOf } from '../../app/tables/crops';
import { cropTimings } from '../../app/tables/cropTimings';
import { clippingsSanity } from '../../app/tables/lawns';
import { demandRules, firstYearUse, officialRows } from '../../app/tables/officialDemand';
import type { CropRow, Row } from '../../app/tables/shapes';
import updates from './cropUpdates.json';

/**
 * The second reading of crop values, line by line: what it found, what it asks for (`action`) and
 * what became of it. `taken`: the crop row holds the three numbers. `typical taken`: its likely
 * value alone, few sites having been read. `kept`: the crop row stays, with the reason where the
 * reading lies elsewhere. `carried`: in a row of its own. `checked`: ours lies within what was
 * read. `not carried` and `gap` say why, or that nothing was found.
 */
interface Update {
  readonly item: string;
  readonly field: string;
  readonly value: readonly (number | null)[];
  readonly action: string;
  readonly outcome: string;
  readonly cell?: string;
  readonly row?: string;
  readonly why?: string;
  readonly percent?: boolean;
}
const lines: readonly Update[] = updates;

const allowed: Readonly<Record<string, readonly string[]>> = {
  replace: ['taken'],
  'replace typical': ['typical taken'],
  'keep, recalled': ['kept'],
  check: ['kept'],
  'check range': ['kept'],
  'new or check': ['carried', 'checked', 'not carried'],
  gap: ['gap'],
};

const carriers: Readonly<Record<string, unknown>> = {
  cropTimings,
  clippingsSanity,
  demandRules,
  firstYearUse,
  officialRows: Object.fromEntries(officialRows.map((row) => [row.name, row])),
};

const rowAt = (path: string): Row => {
  const found = path
    .split('.')
    .reduce<unknown>(
      (value, key) => (value as Record<string, unknown> | undefined)?.[key],
      carriers,
    );
  expect(found, path).toHaveProperty('typical');
  return found as Row;
};

const cellOf = ({ item, cell = '' }: Update): Row => {
  const row = cropOf(item)?.[cell as keyof CropRow];
  expect(row, `${item} ${cell}`).toHaveProperty('typical');
  return row as Row;
};

describe('the second reading of crop values', () => {
  test('is here whole: 193 lines', () => {
    expect(lines).toHaveLength(193);
    const count = (outcome: string): number =>
      lines.filter((line) => line.outcome === outcome).length;
    expect({
      taken: count('taken'),
      typicalTaken: count('typical taken'),
      kept: count('kept'),
      carried: count('carried'),
      checked: count('checked'),
      notCarried: count('not carried'),
      gap: count('gap'),
    }).toEqual({
      taken: 48,
      typicalTaken: 7,
      kept: 57,
      carried: 58,
      checked: 1,
      notCarried: 15,
      gap: 7,
    });
  });

  test.each(lines.map((line, at) => [at, line.item, line.field, line.action, line] as const))(
    '%i: %s %s (%s) was obeyed',
    (_, item, field, action, line) => {
      expect(allowed[action], action).toContain(line.outcome);
      const [low, typical, high] = line.value as [number | null, number | null, number | null];
      switch (line.outcome) {
        case 'taken': {
          const row = cellOf(line);
          expect([row.low, row.typical, row.high]).toEqual(line.value);
          expect(row.standing).not.toBe('memory');
          break;
        }
        case 'typical taken':
          expect(cellOf(line).typical).toBe(typical);
          break;
        case 'kept': {
          const row = cellOf(line);
          if (action === 'keep, recalled') {
            expect([row.low, row.typical, row.high]).toEqual(line.value);
            expect(row.standing).toBe('memory');
          }
          // a row that stays outside what was read says why
          const outside =
            (low !== null && row.typical < low) || (high !== null && row.typical > high);
          if (outside) expect(line.why?.length ?? 0).toBeGreaterThan(10);
          break;
        }
        case 'checked': {
          const row = cellOf(line);
          expect(row.typical).toBeGreaterThanOrEqual(low ?? -Infinity);
          expect(row.typical).toBeLessThanOrEqual(high ?? Infinity);
          break;
        }
        case 'carried': {
          const row = rowAt(line.row ?? '');
          const scale = line.percent ? 100 : 1;
          if (field === 'official_row_crosscheck' || field === 'official_row_new_crop') {
            if (typical !== null) expect(row.typical).toBe(typical);
          } else {
            const ours = [row.low, row.typical, row.high].map((value) => value * scale);
            line.value.forEach((value, at) => {
              if (value !== null) expect(ours[at]).toBeCloseTo(value, 9);
            });
            if (typical === null) expect(ours[1]).toBe(high);
          }
          break;
        }
        default:
          expect((line.why?.length ?? 0) > 10 || line.outcome === 'gap').toBe(true);
      }
    },
  );

  test('official lower bounds are yield x content + residue credit', () => {
    const checked = lines.filter(({ field }) => field === 'official_row_crosscheck');
    expect(checked).toHaveLength(15);
    for (const { item, row, value } of checked) {
      const official = officialRows.find(({ name }) => row === `officialRows.${name}.demand`);
      const bound =
        (official?.goodYield?.typical ?? NaN) * (official?.removedPerKilogram.typical ?? NaN) +
        (official?.residueCredit?.typical ?? 0);
      expect(Math.abs(bound - (value[0] ?? NaN)), item).toBeLessThan(0.0501);
    }
  });
});
