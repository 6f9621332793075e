import { describe, expect, test } from 'vitest';
import type { SourceFacts, TreatmentFacts } from '../../app/core/season/cautions/facts';
import { type BedUse, treatmentFinding } from '../../app/core/season/cautions/treatment';
import { limits } from '../../app/tables/thresholds';
import { dayIn } from './madeBed';

/*
 * Four steps for treated lawns (label first; four mowings: a Nebraska column; six weeks: Michigan
 * State), and the pot test for what came from elsewhere (Washington State 2011).
 */

const treated = dayIn(5, 4);
const season = dayIn(1, 1);
const food: BedUse = { food: true, sensitive: false };
const beans: BedUse = { food: true, sensitive: true };
const flowers: BedUse = { food: false, sensitive: false };

const treatment = (changes: Partial<TreatmentFacts> = {}): TreatmentFacts => ({
  answer: 'treated',
  product: '',
  date: treated,
  label: 'silent',
  intervalDays: null,
  beanTestPassed: null,
  ...changes,
});

const lawn = (
  changes: Partial<TreatmentFacts> = {},
  mowingDays: readonly number[] = [7, 14, 21, 28, 35].map((days) => treated + days),
): SourceFacts => ({
  kind: 'lawn',
  name: 'Front',
  mayCarryWeedkiller: true,
  treatment: treatment(changes),
  mowingDays,
  creepingGrass: false,
  seedHeadsSeen: null,
});

const store = (changes: Partial<TreatmentFacts> = {}): SourceFacts => ({
  ...lawn(changes, []),
  kind: 'store',
  name: 'hay',
});

const rowOf = (source: SourceFacts, cutOn: number, use = food): string | null =>
  treatmentFinding(source, cutOn, season, use, limits)?.row ?? null;

describe('lawns', () => {
  test('nothing put on it, or cut before it was: nothing found', () => {
    expect(rowOf(lawn({ answer: 'nothing' }), treated + 10)).toBeNull();
    expect(rowOf(lawn(), treated - 1)).toBeNull();
    expect(rowOf(lawn(), treated)).toBe('label silent');
  });

  test('the label forbids: never', () => {
    expect(rowOf(lawn({ label: 'forbids' }), treated + 300, flowers)).toBe('label forbids');
  });

  test('the label’s interval, to the day', () => {
    const source = lawn({ label: 'interval', intervalDays: 60 });
    expect(rowOf(source, treated + 59)).toBe('label interval');
    expect(rowOf(source, treated + 60, beans)).toBeNull();
    expect(treatmentFinding(source, treated + 59, season, food, limits)).toMatchObject({
      date: treated + 60,
      number: 59,
      threshold: 60,
    });
  });

  test('a silent label: four logged mowings and six weeks, both', () => {
    expect(
      rowOf(
        lawn(
          {},
          [7, 14, 21].map((days) => treated + days),
        ),
        treated + 60,
      ),
    ).toBe('label silent');
    expect(rowOf(lawn(), treated + 41)).toBe('label silent');
    expect(rowOf(lawn(), treated + 42)).toBeNull();
    // the mowing itself and those before the treatment do not count
    const three = [-7, 7, 14, 21, 60].map((days) => treated + days);
    expect(rowOf(lawn({}, three), treated + 60)).toBe('label silent');
  });

  test('and then not on sensitive crops in that season, unless a pot of beans grew straight', () => {
    expect(rowOf(lawn(), treated + 60, beans)).toBe('label silent sensitive');
    expect(rowOf(lawn({ beanTestPassed: treated + 50 }), treated + 60, beans)).toBeNull();
    const nextSeason = treatmentFinding(lawn(), treated + 60, treated + 1, beans, limits);
    expect(nextSeason).toBeNull();
  });

  test('a missing day or label holds it back as a silent label does', () => {
    expect(rowOf(lawn({ date: null }), treated + 200)).toBe('label silent');
    expect(rowOf(lawn({ label: null }), treated + 10)).toBe('label silent');
    expect(rowOf(lawn({ label: 'interval', intervalDays: null }), treated + 10)).toBe(
      'label silent',
    );
  });

  test('nobody knows: no food bed', () => {
    expect(rowOf(lawn({ answer: 'unknown' }), treated, food)).toBe('unknown lawn');
    expect(rowOf(lawn({ answer: 'unknown' }), treated, flowers)).toBe('unknown lawn flowers');
    expect(limits.facts['unknown lawn']).toBe('stop');
    expect(limits.facts['unknown lawn flowers']).toBe('caution');
  });

  test('nobody asked yet: asked first', () => {
    expect(rowOf(lawn({ answer: 'not asked' }), treated)).toBe('not asked');
    expect(limits.facts['not asked']).toBe('stop');
  });
});

describe('hay, straw, manure and compost from elsewhere', () => {
  test('unknown: test first, and never on sensitive crops', () => {
    expect(rowOf(store({ answer: 'unknown' }), treated)).toBe('unknown source');
    expect(rowOf(store({ answer: 'unknown', beanTestPassed: treated }), treated)).toBeNull();
    expect(rowOf(store({ answer: 'unknown', beanTestPassed: treated }), treated, beans)).toBe(
      'unknown source sensitive',
    );
    expect(rowOf(store({ answer: 'unknown' }), treated, flowers)).toBe('unknown source flowers');
  });
  test('treated', () => {
    expect(rowOf(store(), treated)).toBe('treated source');
    expect(rowOf(store({ label: 'forbids' }), treated, flowers)).toBe('label forbids');
  });
  test('one’s own heap is not asked; what cannot carry it is never held back', () => {
    expect(rowOf({ ...store({ answer: 'not asked' }), kind: 'heap' }, treated)).toBeNull();
    expect(rowOf(store({ answer: 'not asked' }), treated)).toBe('not asked');
    expect(
      rowOf({ ...store({ answer: 'unknown' }), mayCarryWeedkiller: false }, treated),
    ).toBeNull();
  });
});

describe('several treatments of one lawn', () => {
  const after = (days: number, label: Partial<TreatmentFacts>): TreatmentFacts =>
    treatment({ date: treated + days, ...label });
  const both = (now: TreatmentFacts, ...earlier: TreatmentFacts[]): SourceFacts => ({
    ...lawn(),
    treatment: now,
    earlierTreatments: earlier,
  });
  const forbids = after(0, { label: 'forbids', product: 'the first' });
  const month = after(10, { label: 'interval', intervalDays: 30, product: 'a month' });
  const week = after(14, { label: 'interval', intervalDays: 7, product: 'a week' });

  test('each holds by itself: a later one takes nothing of an earlier one away', () => {
    const cutOn = treated + 60;
    expect(rowOf(both(week, forbids), cutOn)).toBe('label forbids');
    expect(rowOf(both({ ...week, answer: 'nothing' }, forbids), cutOn)).toBe('label forbids');
    expect(rowOf(both(week, month), cutOn)).toBeNull();
    expect(rowOf(both({ ...week, answer: 'nothing' }), cutOn)).toBeNull();
  });

  test('the longer is told, with what was put on then', () => {
    for (const source of [both(week, month), both(month, week)])
      expect(treatmentFinding(source, treated + 15, season, food, limits)).toMatchObject({
        row: 'label interval',
        date: treated + 40,
        product: 'a month',
      });
    // cut before the second was put on, only the first counts
    expect(treatmentFinding(both(week, month), treated + 12, season, food, limits)?.product).toBe(
      'a month',
    );
    expect(rowOf(both(week, month), treated + 9)).toBeNull();
  });

  test('without a day none ends', () => {
    expect(rowOf(both(week, treatment({ date: null })), treated + 300)).toBe('label silent');
    expect(rowOf(both(month, treatment({ answer: 'unknown', date: null })), treated + 300)).toBe(
      'unknown lawn',
    );
  });
});
