import { describe, expect, test } from 'vitest';
import { textFromDay } from '../../../app/core/days';
import { readDownload, type DownloadAsked } from '../../../app/document/weather/readDownload';
import { believableWeather } from '../../../app/document/weather/weatherTypes';
import { madeAnswer } from '../../main/weather/madeService';

// Answers here are made, to the form that the service's documentation describes; none was recorded.
const asked: DownloadAsked = {
  latitudeDegrees: 52.5,
  longitudeDegrees: 13.4,
  firstDay: '2031-05-01',
  lastDay: '2031-05-05',
};
const may = (count: number) => Array.from({ length: count }, (_day, at) => `2031-05-0${at + 1}`);
const read = (answer: unknown, changes: Partial<DownloadAsked> = {}) =>
  readDownload(typeof answer === 'string' ? answer : JSON.stringify(answer), {
    ...asked,
    ...changes,
  });
const good = (answer: unknown, changes: Partial<DownloadAsked> = {}) => {
  const result = read(answer, changes);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const values = (answer: unknown) =>
  good(answer).days.map(({ day, values: { lowest, highest, rain } }) => [
    textFromDay(day),
    lowest,
    highest,
    rain,
  ]);
/** A made answer with the values of one column replaced. */
const madeWith = (column: string, ...replaced: (number | string | null)[]) => {
  const answer = madeAnswer(may(replaced.length));
  answer.daily[column] = replaced;
  return answer;
};

test('days in deg C and mm, and what they stand for', () => {
  const download = good(madeAnswer(may(3)));
  expect(values(madeAnswer(may(3)))).toEqual([
    ['2031-05-01', 7, 18, 0],
    ['2031-05-02', 8, 19, 6.4],
    ['2031-05-03', 9, 20, 0],
  ]);
  expect(download).toMatchObject({
    latitudeDegrees: 52.5,
    longitudeDegrees: 13.4,
    elevationMetres: 45,
    firstDay: '2031-05-01',
    lastDay: '2031-05-03',
    wholeDays: 3,
    // asked for were five
    notYet: 2,
  });
  expect(download.gaps.total).toBe(0);
  expect(download.refused.total).toBe(0);
});

test('the example that our notes on daily weather print: a missing value is a gap, never nought', () => {
  const answer = madeAnswer(may(3));
  answer.daily['temperature_2m_max'] = [18.4, null, 21];
  answer.daily['temperature_2m_min'] = [7.1, 8, 9.9];
  answer.daily['precipitation_sum'] = [0, 3.2, null];
  expect(values(answer)).toEqual([
    ['2031-05-01', 7.1, 18.4, 0],
    ['2031-05-02', 8, undefined, 3.2],
    ['2031-05-03', 9.9, 21, undefined],
  ]);
  expect(good(answer).gaps.first).toEqual([
    { from: '2031-05-02', to: '2031-05-02', days: 1, missing: ['highest'] },
    { from: '2031-05-03', to: '2031-05-03', days: 1, missing: ['rain'] },
  ]);
});

test('days of which nothing is known yet are none', () => {
  const answer = madeAnswer(may(5));
  for (const name of ['temperature_2m_max', 'temperature_2m_min', 'precipitation_sum'])
    answer.daily[name]!.splice(3, 2, null, null);
  expect(good(answer)).toMatchObject({ lastDay: '2031-05-03', notYet: 2, gaps: { total: 0 } });
});

test('degrees Fahrenheit and inches, should they come', () => {
  const answer = madeAnswer(may(1));
  Object.assign(answer['daily_units'] as object, {
    temperature_2m_max: '°F',
    temperature_2m_min: '°F',
    precipitation_sum: 'inch',
  });
  Object.assign(answer.daily, {
    temperature_2m_max: [68],
    temperature_2m_min: [32],
    precipitation_sum: [1],
  });
  expect(values(answer)).toEqual([['2031-05-01', 0, 20, 25.4]]);
});

describe('what cannot be is refused, with its line', () => {
  const refused = (answer: unknown) => good(answer).refused.first;
  test('out of bounds, below nought', () => {
    expect(believableWeather.highest[1]).toBe(60);
    expect(refused(madeWith('temperature_2m_max', 18, 61))).toEqual([
      {
        line: 2,
        day: '2031-05-02',
        reason: { kind: 'out of range', measure: 'highest', value: 61 },
      },
    ]);
    expect(refused(madeWith('precipitation_sum', -0.1, 0))).toMatchObject([
      { line: 1, reason: { kind: 'below nought', value: -0.1 } },
    ]);
  });
  test('a highest below its lowest: both go', () => {
    const answer = madeWith('temperature_2m_max', 18, 3);
    expect(refused(answer)).toMatchObject([{ line: 2, reason: { kind: 'highest below lowest' } }]);
    expect(values(answer)[1]).toEqual(['2031-05-02', undefined, undefined, 6.4]);
  });
  test('words where a number should be', () => {
    expect(refused(madeWith('precipitation_sum', 0, 'much', 2))).toMatchObject([
      { line: 2, reason: { kind: 'no number', text: 'much' } },
    ]);
  });
  test('days that are none, come twice, or leave one out', () => {
    const days = ['2031-05-01', '2031-05-01', '2031-05-02', '2031-05-04', '2031-02-30'];
    const download = good(madeAnswer(days));
    expect(download.refused.first.map(({ line, reason }) => [line, reason])).toEqual([
      [2, { kind: 'no day', text: '2031-05-01' }],
      [4, { kind: 'no day', text: '2031-05-04' }],
      [5, { kind: 'no day', text: '2031-02-30' }],
    ]);
    expect(download.days).toHaveLength(2);
  });
  test('days that were not asked for are left out', () => {
    expect(
      good(madeAnswer(may(5)), { firstDay: '2031-05-02', lastDay: '2031-05-03' }),
    ).toMatchObject({ firstDay: '2031-05-02', lastDay: '2031-05-03', refused: { total: 0 } });
  });
});

describe('what is no answer to the question', () => {
  const error = (answer: unknown, changes: Partial<DownloadAsked> = {}) => {
    const result = read(answer, changes);
    return result.ok ? null : result.error;
  };
  test('cut short, at any character', () => {
    const whole = JSON.stringify(madeAnswer(may(2)));
    for (let end = 0; end < whole.length; end += 7)
      expect(error(whole.slice(0, end))).toEqual({ kind: 'not whole' });
  });
  test('a fault of the service, in its own words', () => {
    expect(error({ error: true, reason: 'No.' })).toEqual({ kind: 'service says', reason: 'No.' });
  });
  test.each([
    ['a list', []],
    ['a word', '"weather"'],
    ['no place', { daily: {} }],
    ['no days', { latitude: 52.5, longitude: 13.4 }],
    ['days that are no list', { latitude: 52.5, longitude: 13.4, daily: { time: 'May' } }],
  ])('%s', (_name, answer) => {
    expect(error(answer)).toMatchObject({ kind: 'other form' });
  });
  test('columns of another length, or not there', () => {
    const answer = madeAnswer(may(3));
    answer.daily['precipitation_sum'] = [0];
    expect(error(answer)).toEqual({
      kind: 'other form',
      what: 'precipitation_sum: 1 values for 3 days',
    });
    delete answer.daily['precipitation_sum'];
    expect(error(answer)).toEqual({ kind: 'other form', what: 'precipitation_sum' });
  });
  test('another unit', () => {
    const answer = madeAnswer(may(1));
    Object.assign(answer['daily_units'] as object, { temperature_2m_min: 'K' });
    expect(error(answer)).toEqual({ kind: 'other unit', measure: 'lowest', unit: 'K' });
  });
  test('another place; but the back of the world is near itself', () => {
    expect(error(madeAnswer(may(1)), { longitudeDegrees: -13.4 })).toEqual({
      kind: 'other place',
      latitudeDegrees: 52.5,
      longitudeDegrees: 13.4,
    });
    const far = { ...madeAnswer(may(1)), longitude: 180 };
    expect(error(far, { longitudeDegrees: -179.9 })).toBeNull();
  });
  test('nothing of use in it', () => {
    const answer = madeAnswer(may(1));
    for (const name of ['temperature_2m_max', 'temperature_2m_min', 'precipitation_sum'])
      answer.daily[name] = [null];
    expect(error(answer)).toMatchObject({ kind: 'no days' });
  });
});
