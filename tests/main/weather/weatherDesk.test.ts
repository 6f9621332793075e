import { mkdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, expect, test, vi } from 'vitest';
import { success } from '../../../app/core/result';
import type { WeatherQuestion } from '../../../app/host/contract';
import { createWeatherDesk } from '../../../main/weather/weatherDesk';
import type { AskWeather } from '../../../main/weather/weatherService';
import { newFolder } from '../folders';

let folder = '';
let today = '2031-05-10';
let service = vi.fn<AskWeather>();
beforeEach(async () => {
  folder = join(newFolder(), 'state');
  await mkdir(folder);
  today = '2031-05-10';
  service = vi.fn<AskWeather>(async ({ firstDay, lastDay }) => success(`${firstDay} ${lastDay}`));
});
/** The desk as a program that was just started has it. */
const desk = () => createWeatherDesk(folder, service, () => today);
const question = (changes: Partial<WeatherQuestion> = {}): WeatherQuestion => ({
  latitudeTenths: 525,
  longitudeTenths: 134,
  firstDay: '2028-01-01',
  lastDay: '2031-05-09',
  ...changes,
});
const askedToday = { ok: false, error: { kind: 'no-weather', why: 'asked today', detail: '' } };

test('a place is asked once a day, over a restart too, and the answer is given again', async () => {
  const text = '2028-01-01 2031-05-09';
  expect(await desk().ask(question())).toEqual({ ok: true, value: { text, isKept: false } });
  expect(await desk().ask(question())).toEqual({ ok: true, value: { text, isKept: true } });
  // days within those that were given are given out of them; days beyond wait until tomorrow
  expect(await desk().ask(question({ firstDay: '2031-01-01' }))).toMatchObject({
    value: { text, isKept: true },
  });
  expect(await desk().ask(question({ firstDay: '2020-01-01' }))).toEqual(askedToday);
  expect(service).toHaveBeenCalledTimes(1);
  today = '2031-05-11';
  expect(await desk().ask(question())).toMatchObject({ value: { isKept: false } });
  expect(service).toHaveBeenCalledTimes(2);
});

test('a try that brought nothing may be made again', async () => {
  service.mockResolvedValueOnce({
    ok: false,
    error: { kind: 'no-weather', why: 'slow', detail: '20' },
  });
  expect(await desk().ask(question())).toMatchObject({ error: { why: 'slow' } });
  expect(await desk().ask(question())).toMatchObject({ ok: true, value: { isKept: false } });
});

test('another place may be asked on the same day, but not any number of them', async () => {
  for (const longitudeTenths of [1, 2, 3, 4, 5])
    expect(await desk().ask(question({ longitudeTenths }))).toMatchObject({ ok: true });
  expect(await desk().ask(question({ longitudeTenths: 6 }))).toEqual(askedToday);
  expect(service).toHaveBeenCalledTimes(5);
});

test('what is forgotten leaves no trace of the place, and is not asked again on that day', async () => {
  await desk().ask(question());
  const path = join(folder, 'weather-answers.json');
  expect(await readFile(path, 'utf8')).toContain('525');
  if (process.platform !== 'win32') expect((await stat(path)).mode & 0o077).toBe(0);
  expect(await desk().forget()).toEqual({ ok: true, value: null });
  expect(await readFile(path, 'utf8')).toBe('{"day":"2031-05-10","isForgotten":true,"answers":[]}');
  expect(await desk().ask(question())).toEqual(askedToday);
  today = '2031-05-11';
  expect(await desk().ask(question())).toMatchObject({ ok: true });
});

test('a newer question calls off the older, and so does calling off', async () => {
  const waits: AskWeather = (_question, calledOff) =>
    new Promise((resolve) =>
      calledOff.addEventListener('abort', () =>
        resolve({ ok: false, error: { kind: 'cancelled' } }),
      ),
    );
  service.mockImplementationOnce(waits);
  const one = desk();
  const first = one.ask(question());
  await expect.poll(() => service.mock.calls.length).toBe(1);
  expect(await one.ask(question({ longitudeTenths: 0 }))).toMatchObject({ ok: true });
  expect(await first).toEqual({ ok: false, error: { kind: 'cancelled' } });
  service.mockImplementationOnce(waits);
  const second = one.ask(question());
  await expect.poll(() => service.mock.calls.length).toBe(3);
  one.callOff();
  expect(await second).toEqual({ ok: false, error: { kind: 'cancelled' } });
});

test('a file of answers that was damaged is no answer', async () => {
  await writeFile(join(folder, 'weather-answers.json'), '{"day":"2031-05-10","answers":[{}]}');
  expect(await desk().ask(question())).toMatchObject({ value: { isKept: false } });
});
