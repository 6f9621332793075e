import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { flowIndex, flowKinds } from '../../app/core/season/flows';
import type { CoverState, NitrogenState } from '../../app/core/season/verdict';
import type { Garden } from '../../app/document/schema';
import { weekBefore, weekNews } from '../../app/screens/week/weekNews';
import type { BedResults } from '../../app/store/contract';

const beds = [
  { id: 'near', name: 'Near', areaM2: 2, roof: 'open' },
  { id: 'glass', name: 'Glass', areaM2: 4, roof: 'glass or film' },
];
const garden = { beds } as unknown as Garden;
const firstDay = dayOf('2013-06-01');
const days = 30;
const leached = flowIndex('mineralLower', 'leached', 'washed out');

/** Rain and washing-out by day of June; everything else is nothing. */
const bedOn = (
  today: string,
  states: readonly [NitrogenState, CoverState],
  rain: Readonly<Record<number, number>> = {},
  washed: Readonly<Record<number, number>> = {},
): BedResults => {
  const series = (byDay: Readonly<Record<number, number>>) =>
    Float64Array.from({ length: days }, (_, index) => byDay[index + 1] ?? 0);
  return {
    verdict: { state: states[0], coverState: states[1] },
    season: {
      firstDay,
      today: dayOf(today),
      rain: series(rain),
      flows: flowKinds.map((_, index) => series(index === leached ? washed : {})),
    },
  } as unknown as BedResults;
};

describe('what a week brought', () => {
  const before = weekBefore('2013-06-15', '2013-06-22', {
    near: bedOn('2013-06-15', ['about right', 'thin']),
    glass: bedOn('2013-06-15', ['short', 'good']),
  });

  test('rain and losses of its seven days alone, by bed and in grams', () => {
    const rain = { 15: 50, 16: 3, 18: 5, 20: 0.4, 22: 1, 23: 40 };
    const washed = { 15: 9, 17: 0.5, 19: 1, 23: 9 };
    const news = weekNews(garden, before, {
      near: bedOn('2013-06-22', ['about right', 'thin'], rain, washed),
      glass: bedOn('2013-06-22', ['short', 'good'], {}, { 18: 0.2 }),
    })!;
    expect(news.rainMillimetres).toBeCloseTo(9.4, 9);
    expect(news.rainDays).toBe(3);
    expect(news.washed.map(({ bed, grams }) => [bed.name, Number(grams.toFixed(6))])).toEqual([
      ['Near', 3],
      ['Glass', 0.8],
    ]);
    expect(news.nitrogen).toEqual([]);
    expect(news.cover).toEqual([]);
  });

  test('the beds whose state is another, with what it was', () => {
    const news = weekNews(garden, before, {
      near: bedOn('2013-06-22', ['short', 'bare']),
      glass: bedOn('2013-06-22', ['short', 'good']),
    })!;
    expect(news.nitrogen).toMatchObject([{ bed: { name: 'Near' }, was: 'about right' }]);
    expect(news.cover).toMatchObject([{ bed: { name: 'Near' }, was: 'thin' }]);
  });

  test('nothing is told until every bed was reckoned for the new day', () => {
    const old = bedOn('2013-06-15', ['short', 'good']);
    const fresh = bedOn('2013-06-22', ['short', 'good']);
    expect(weekNews(garden, before, { near: fresh, glass: old })).toBeNull();
    expect(weekNews(garden, before, { near: fresh })).toBeNull();
  });
});
