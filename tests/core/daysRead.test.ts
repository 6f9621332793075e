import { describe, expect, test } from 'vitest';
import { dayFromText, dayOf, textFromDay } from '../../app/core/days';

describe('a day that is written down', () => {
  test('is the day the platform’s own calendar says, for two hundred years', () => {
    for (let day = -25_567; day < 47_482; day++) {
      const text = new Date(day * 86_400_000).toISOString().slice(0, 10);
      if (dayOf(text) !== day || textFromDay(day) !== text)
        expect({ text, read: dayOf(text), written: textFromDay(day) }).toEqual({
          text,
          read: day,
          written: text,
        });
    }
    expect(dayOf('2013-06-15')).toBe(Date.UTC(2013, 5, 15) / 86_400_000);
  });

  test.each([
    '2013-02-29',
    '2100-02-29',
    '2013-06-31',
    '2013-13-01',
    '2013-00-10',
    '2013-01-00',
    '2013-1-01',
    '2013-01-1',
    ' 2013-01-1',
    '2013/01/01',
    '2013-01-011',
    '+213-01-01',
    '20l3-01-01',
    '٢٠١٣-٠١-٠١',
    '',
  ])('and is none is told apart: "%s"', (text) => {
    expect(dayFromText(text)).toBeNull();
    expect(() => dayOf(text)).toThrow('Not a civil day');
  });

  test('may be the leap day of a year that has one', () => {
    expect(dayFromText('2012-02-29')).toBe(Date.UTC(2012, 1, 29) / 86_400_000);
    expect(dayFromText('2000-02-29')).not.toBeNull();
  });
});
