import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../app/core/days';
import { growsFrom } from '../../app/core/season/plantingAccount';
import { movedPlanting } from '../../app/document/movedPlanting';
import { parseGarden } from '../../app/document/parse';
import { plantingDays } from '../../app/document/plantingDays';
import { bedSeason } from '../../app/document/seasonInput';

const folder = join(import.meta.dirname, '../../assets/gardens');
const gardens = [
  'sample.mowings',
  ...readdirSync(join(folder, 'checks'))
    .filter((name) => name.endsWith('.mowings'))
    .map((name) => `checks/${name}`),
].map((file) => {
  const parsed = parseGarden(readFileSync(join(folder, file), 'utf8'));
  if (!parsed.ok) throw new Error(`${file}: ${parsed.error.kind}`);
  return [file, parsed.value] as const;
});

test('the calendar’s days are the engine’s, for all that does not stand for years', () => {
  let checked = 0;
  for (const [, garden] of gardens) {
    const today = dayOf(garden.garden.today ?? '2013-06-15');
    for (const bed of garden.beds) {
      const input = bedSeason(garden, bed.id, today);
      for (const taken of input.plantings) {
        if (taken.seasons) continue;
        const planting = garden.plantings.find(({ id }) => id === taken.id)!;
        const days = plantingDays(garden, planting, input.soil, today);
        checked += 1;
        expect(days.start).toBe(taken.startDay);
        expect(days.end).toBe(taken.clearingDay);
        expect(days.usualEnd).toBe(taken.usualEndDay);
        if (taken.crop.excessClass !== 'cover') expect(days.pick).toBe(taken.firstHarvestDay);
        if (taken.crop.flowerDays !== null)
          expect(days.flower).toBe(growsFrom(taken) + taken.crop.flowerDays);
      }
    }
  }
  expect(checked).toBeGreaterThan(15);
});

describe('a planting moved', () => {
  const date = fc.integer({ min: dayOf('2020-01-01'), max: dayOf('2022-12-31') });
  const planting = fc
    .tuple(date, fc.option(fc.nat(90), { nil: null }), fc.option(fc.nat(120), { nil: null }))
    .map(([start, pick, more]) => ({
      started: textFromDay(start),
      firstHarvest: pick === null ? null : textFromDay(start + pick),
      cleared: more === null ? null : textFromDay(start + (pick ?? 0) + more + 1),
    }));
  const by = fc.integer({ min: -200, max: 200 });

  test('whole: every typed date by as many days, and nothing else is written', () => {
    fc.assert(
      fc.property(planting, by, (before, days) => {
        const after = movedPlanting(before, 'whole', days, null);
        for (const key of ['started', 'firstHarvest', 'cleared'] as const) {
          const was = before[key];
          if (was === null || days === 0) expect(after[key]).toBeUndefined();
          else expect(dayOf(after[key]!) - dayOf(was)).toBe(days);
        }
      }),
    );
  });

  test('by an end: that date alone, and never past another typed one', () => {
    fc.assert(
      fc.property(planting, by, fc.constantFrom('start', 'end'), (before, days, part) => {
        const shownEnd = dayOf(before.started) + 300;
        const dates = movedPlanting(before, part, days, shownEnd);
        const after = { ...before, ...dates };
        expect(
          Object.keys(dates).every((key) => key === (part === 'start' ? 'started' : 'cleared')),
        ).toBe(true);
        const ends = [after.firstHarvest, after.cleared].filter((one) => one !== null);
        for (const end of ends) expect(end >= after.started).toBe(true);
        if (after.firstHarvest !== null && after.cleared !== null)
          expect(after.cleared >= after.firstHarvest).toBe(true);
      }),
    );
  });

  test('an end that nobody typed is typed from where it is shown; none shown, none moved', () => {
    const before = { started: '2021-05-01', firstHarvest: null, cleared: null };
    expect(movedPlanting(before, 'end', -3, dayOf('2021-09-10'))).toEqual({
      cleared: '2021-09-07',
    });
    expect(movedPlanting(before, 'end', -3, null)).toEqual({});
  });
});
