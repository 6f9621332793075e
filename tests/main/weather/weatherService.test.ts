import { createServer } from 'node:net';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { weatherServiceHost, type WeatherQuestion } from '../../../app/host/contract';
import {
  weatherAddress,
  weatherRequest,
  weatherService,
  type WeatherServiceOptions,
} from '../../../main/weather/weatherService';
import { madeAnswer, madeService, respond, type MadeService } from './madeService';

let service: MadeService;
beforeEach(async () => {
  service = await madeService();
});
afterEach(() => service.stop());

const question: WeatherQuestion = {
  latitudeTenths: 525,
  longitudeTenths: -3,
  firstDay: '2031-05-01',
  lastDay: '2031-05-03',
};
const ask = (
  options: WeatherServiceOptions = {},
  signal: AbortSignal = new AbortController().signal,
) => weatherService({ address: service.address, ...options })(question, signal);

test('the address is fixed, and the one that is shown', () => {
  expect(weatherAddress).toBe(`https://${weatherServiceHost}/v1/archive`);
  expect(weatherServiceHost).toBe('archive-api.open-meteo.com');
});

test('what is sent is the place to a tenth of a degree, two days and three names, and nothing of the person', async () => {
  expect(await ask()).toEqual({ ok: true, value: JSON.stringify(madeAnswer()) });
  const asked = new URL(service.asked[0]!, 'http://there');
  // names of the parameters: the service's documentation, daily-weather notes, section 3
  expect(Object.fromEntries(asked.searchParams)).toEqual({
    latitude: '52.5',
    longitude: '-0.3',
    start_date: '2031-05-01',
    end_date: '2031-05-03',
    daily: 'temperature_2m_max,temperature_2m_min,precipitation_sum',
    timezone: 'auto',
  });
  expect(Object.keys(service.headers())).not.toContain('cookie');
  expect(Object.keys(service.headers())).not.toContain('referer');
  expect(weatherRequest(weatherAddress, question)).toContain('latitude=52.5&longitude=-0.3&');
});

test('nobody there', async () => {
  await service.stop();
  expect(await ask()).toEqual({
    ok: false,
    error: { kind: 'no-weather', why: 'no way', detail: 'ECONNREFUSED' },
  });
  service = await madeService();
});

test('slow: before the first word, and in the middle of the answer', async () => {
  service.answerWith(() => undefined);
  const slow = { kind: 'no-weather', why: 'slow' };
  expect(await ask({ patienceMilliseconds: 50 })).toMatchObject({ ok: false, error: slow });
  service.answerWith((response) => {
    response.writeHead(200, { 'content-type': 'application/json' });
    response.write('{"daily":');
  });
  expect(await ask({ patienceMilliseconds: 200 })).toMatchObject({ ok: false, error: slow });
});

test('called off', async () => {
  const calledOff = new AbortController();
  service.answerWith(() => calledOff.abort());
  expect(await ask({}, calledOff.signal)).toEqual({ ok: false, error: { kind: 'cancelled' } });
});

test('turned down, with the reason the service gives, or the number it gives', async () => {
  service.answerWith((response) =>
    respond(response, { error: true, reason: 'Out of\u0007 the\nallowed range.' }, 400),
  );
  expect(await ask()).toEqual({
    ok: false,
    error: { kind: 'no-weather', why: 'turned down', detail: 'Out of the allowed range.' },
  });
  service.answerWith((response) => respond(response, '<h1>no</h1>', 503, 'text/html'));
  expect(await ask()).toMatchObject({ error: { why: 'turned down', detail: '503' } });
  service.answerWith((response) => respond(response, { reason: 'x'.repeat(15_000) }, 429));
  const long = await ask();
  expect(long.ok ? null : long.error).toMatchObject({
    why: 'turned down',
    detail: 'x'.repeat(200),
  });
});

test('moved: the other address is never asked', async () => {
  const elsewhere = await madeService();
  for (const status of [301, 302, 307, 308]) {
    service.answerWith((response) =>
      response.writeHead(status, { location: elsewhere.address }).end(),
    );
    expect(await ask()).toMatchObject({ ok: false, error: { why: 'moved' } });
  }
  expect(elsewhere.asked).toEqual([]);
  await elsewhere.stop();
});

test('too much, whether or not it is said beforehand', async () => {
  service.answerWith((response) => respond(response, `"${'x'.repeat(5000)}"`));
  expect(await ask({ limitBytes: 1000 })).toMatchObject({ ok: false, error: { why: 'too much' } });
  service.answerWith((response) => {
    response.writeHead(200, { 'content-type': 'application/json' });
    const more = () => {
      while (!response.destroyed && response.write('x'.repeat(10_000)));
    };
    response.on('drain', more);
    more();
  });
  expect(await ask({ limitBytes: 100_000 })).toMatchObject({ error: { why: 'too much' } });
});

test('cut off: fewer bytes than were said, and a connection that breaks', async () => {
  service.answerWith((response) => {
    response.writeHead(200, { 'content-type': 'application/json', 'content-length': '5000' });
    response.write('{"daily":', () => response.destroy());
  });
  expect(await ask()).toMatchObject({ ok: false, error: { why: 'cut off' } });
  service.answerWith((response) => {
    response.writeHead(200, { 'content-type': 'application/json' });
    response.write('{"daily":', () => response.destroy());
  });
  expect(await ask()).toMatchObject({ ok: false, error: { why: 'cut off' } });
});

test('not data: nothing at all, a web page, text that is none', async () => {
  service.answerWith((response) => respond(response, ''));
  expect(await ask()).toMatchObject({ ok: false, error: { why: 'no data' } });
  service.answerWith((response) => respond(response, '<p>Sign in here</p>', 200, 'text/html'));
  expect(await ask()).toMatchObject({ ok: false, error: { why: 'no data' } });
  service.answerWith((response) =>
    response
      .writeHead(200, { 'content-type': 'application/json' })
      .end(Buffer.from([0x22, 0xff, 0xfe, 0x22])),
  );
  expect(await ask()).toMatchObject({ ok: false, error: { why: 'cut off' } });
});

test('something there that speaks another language', async () => {
  const mute = createServer((socket) => socket.write('hello\r\n', () => socket.destroy()));
  await new Promise<void>((resolve) => void mute.listen(0, '127.0.0.1', resolve));
  const at = mute.address();
  const port = typeof at === 'object' && at ? at.port : 0;
  expect(await ask({ address: `http://127.0.0.1:${port}/` })).toMatchObject({
    error: { why: 'no way' },
  });
  await new Promise((resolve) => void mute.close(resolve));
});
