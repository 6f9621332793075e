import { describe, expect, test } from 'vitest';
import { findDay, readDay } from '../../app/amounts/readDay';
import { dayOf, textFromDay } from '../../app/core/days';

/** A Saturday. */
const today = dayOf('2013-06-15');

describe('a date field', () => {
  test.each([
    ['2013-06-08', '2013-06-08'],
    ['2013-6-8', '2013-06-08'],
    ['8 June', '2013-06-08'],
    ['8th of June', '2013-06-08'],
    ['June 8', '2013-06-08'],
    ['June 8th, 2012', '2012-06-08'],
    ['8 jun 2014', '2014-06-08'],
    ['1 Sept.', '2013-09-01'],
    ['20 December', '2012-12-20'],
    ['10 December', '2013-12-10'],
    ['29 February', '2012-02-29'],
    ['today', '2013-06-15'],
    ['Yesterday', '2013-06-14'],
    ['the day before yesterday', '2013-06-13'],
    ['3 days ago', '2013-06-12'],
    ['two weeks ago', '2013-06-01'],
    ['a fortnight ago', '2013-06-01'],
    ['Saturday', '2013-06-15'],
    ['last Saturday', '2013-06-08'],
    ['Monday', '2013-06-10'],
    ['next Monday', '2013-06-17'],
    ['tomorrow', '2013-06-16'],
    ['the day after tomorrow', '2013-06-17'],
    ['in 3 days', '2013-06-18'],
    ['in a fortnight', '2013-06-29'],
    ['In two weeks', '2013-06-29'],
    ['6 weeks from now', '2013-07-27'],
    ['a week from today', '2013-06-22'],
    ['25/6', '2013-06-25'],
    ['6/25', '2013-06-25'],
    ['7/7', '2013-07-07'],
    ['25/6/2012', '2012-06-25'],
    ['25.6.12', '2012-06-25'],
    ['8.6.', '2013-06-08'],
    ['18. 4.', '2013-04-18'],
  ])('%s', (text, day) => {
    const reading = readDay(text, today);
    expect(reading.ok ? textFromDay(reading.value) : reading.error).toBe(day);
  });

  test.each(['2 bags tomorrow', '2 bags in 3 days', 'tomorrow'])(
    'nothing was mown or laid on a day to come: %s',
    (text) => {
      for (const choice of ['past', 'lately'] as const)
        expect(findDay(text, today, choice)).toEqual({ ok: true, value: null });
    },
  );

  test.each([
    ['', 'empty', '2013-06-15'],
    ['soon', 'not-a-day', '2013-06-15'],
    ['8 June or so', 'not-a-day', '2013-06-15'],
    ['8/6', 'ambiguous-date', '2013-06-08'],
    ['8.6', 'ambiguous-date', '2013-06-08'],
    ['31.6.', 'unknown-day', '2013-06-15'],
    ['April', 'month-alone', '2013-04-15'],
    ['in late April', 'month-alone', '2013-04-25'],
    ['last Sept.', 'month-alone', '2013-09-15'],
    ['may 2011', 'month-alone', '2011-05-15'],
    ['31 June', 'unknown-day', '2012-06-30'],
    ['2013-02-30', 'unknown-day', '2013-06-15'],
    ['30 Feb', 'unknown-day', '2013-02-28'],
  ])('%s is refused', (text, kind, suggestion) => {
    expect(readDay(text, today)).toMatchObject({ ok: false, error: { kind, suggestion } });
  });
});
