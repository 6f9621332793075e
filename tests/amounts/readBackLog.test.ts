import { describe, expect, test } from 'vitest';
import { readBackLog } from '../../app/amounts/readBackLog';
import { dayOf, textFromDay } from '../../app/core/days';
import { metricGarden } from './gardens';

/** A Saturday. */
const today = dayOf('2013-06-15');
const log = (text: string) => readBackLog(text, 'mowing', metricGarden, today);
const days = (text: string): string[] => {
  const answer = log(text);
  if (!answer.ok) throw new Error(answer.error.kind);
  return answer.value.entries.map((entry) => textFromDay(entry.day));
};

describe('what was done on earlier days, in one entry', () => {
  test.each([
    ['2 bags', ['2013-06-15']],
    ['2 bags on 8 June', ['2013-06-08']],
    ['2 bags yesterday, soaked', ['2013-06-14']],
    ['2 bags on 1, 8 and 15 June', ['2013-06-01', '2013-06-08', '2013-06-15']],
    ['2 bags on 1 June; 1 bag on 8 June', ['2013-06-01', '2013-06-08']],
    ['1 bag on 8 June\n2 bags on 1 June', ['2013-06-01', '2013-06-08']],
    ['a bag every Saturday since 25 May', ['2013-05-25', '2013-06-01', '2013-06-08', '2013-06-15']],
    ['a bag every Saturday since 26 May', ['2013-06-01', '2013-06-08', '2013-06-15']],
    ['a bag every 10 days since 16 May', ['2013-05-16', '2013-05-26', '2013-06-05', '2013-06-15']],
    ['a bag a week from 1 May to 16 May', ['2013-05-01', '2013-05-08', '2013-05-15']],
    ['a bag a fortnight for the last 4 weeks', ['2013-05-19', '2013-06-02']],
    ['a bag weekly in May', ['2013-05-01', '2013-05-08', '2013-05-15', '2013-05-22', '2013-05-29']],
    [
      'a bag a week since mid May',
      ['2013-05-15', '2013-05-22', '2013-05-29', '2013-06-05', '2013-06-12'],
    ],
    ['2 bags every other week since 1 June', ['2013-06-01', '2013-06-15']],
  ])('%s', (text, wanted) => expect(days(text)).toEqual(wanted));

  test('on the tomatoes about a bag a week since April', () => {
    const answer = log('on the tomatoes about a bag a week since April');
    if (!answer.ok) throw new Error(answer.error.kind);
    const { entries, daysAreGuessed, series } = answer.value;
    // 1 April to 10 June in steps of seven days
    expect(entries).toHaveLength(11);
    expect(daysAreGuessed).toBe(true);
    expect(series).toEqual({
      from: dayOf('2013-04-01'),
      to: dayOf('2013-06-10'),
      everyDays: 7,
    });
    for (const { reading } of entries) {
      expect(reading.amount).toEqual({
        text: 'on the tomatoes about a bag',
        quantity: { kind: 'containers', count: 1, containerId: 'c-bag' },
        certainty: 'about',
      });
      expect(reading.placeId).toBe('b-wall');
    }
  });

  test('the words of each entry stay as they were typed', () => {
    const answer = log('45 L, Soaked, on 1 June');
    expect(answer).toMatchObject({
      ok: true,
      value: {
        daysAreGuessed: false,
        series: null,
        entries: [{ reading: { amount: { text: '45 L, Soaked' }, wetness: 'soaked' } }],
      },
    });
  });

  test('typed dates are not guessed', () => {
    expect(log('2 bags on 1 June')).toMatchObject({ value: { daysAreGuessed: false } });
  });

  test.each([
    ['', 'empty', '2 bags'],
    ['2 bags a week', 'no-start', '2 bags a week since April'],
    ['2 bgas a week since April', 'unknown-unit', '2 bags a week since April'],
    ['2 bags on 8, 15 and 22 June', 'future-day', '2 bags'],
    ['2 bags on 3 July; 1 bag', 'future-day', '2 bags on 3 July 2012; 1 bag'],
    ['2 bags on 8/6', 'ambiguous-date', '2 bags on 8 June 2013'],
    ['a bag a day since 2010', 'no-start', '2 bags'],
  ])('%s is refused', (text, kind, suggestion) => {
    expect(log(text)).toMatchObject({ ok: false, error: { kind, suggestion } });
    expect(log(suggestion).ok).toBe(true);
  });
});
