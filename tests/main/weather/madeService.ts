import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { dayOf, textFromDay } from '../../../app/core/days';

/**
 * A service on this machine that answers as it is told to. No answer in these tests was ever given
 * by the real one: they are made, to the form that its documentation describes.
 */
export interface MadeService {
  readonly address: string;
  /** what was asked, as whole addresses, oldest first */
  readonly asked: string[];
  /** header names and values of the last request */
  headers(): IncomingMessage['headers'];
  answerWith(answer: (response: ServerResponse, url: string) => void): void;
  stop(): Promise<void>;
}

export async function madeService(): Promise<MadeService> {
  const asked: string[] = [];
  let headers: IncomingMessage['headers'] = {};
  let answer: (response: ServerResponse, url: string) => void = (response) =>
    respond(response, madeAnswer());
  const server = createServer((request, response) => {
    asked.push(request.url ?? '');
    headers = request.headers;
    answer(response, request.url ?? '');
  });
  await new Promise<void>((resolve) => void server.listen(0, '127.0.0.1', resolve));
  const at = server.address();
  const port = typeof at === 'object' && at ? at.port : 0;
  return {
    address: `http://127.0.0.1:${port}/v1/archive`,
    asked,
    headers: () => headers,
    answerWith: (next) => {
      answer = next;
    },
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

export const respond = (
  response: ServerResponse,
  body: unknown,
  status = 200,
  type = 'application/json; charset=utf-8',
): void =>
  void response
    .writeHead(status, { 'content-type': type })
    .end(typeof body === 'string' ? body : JSON.stringify(body));

/** Every day that was asked for, of the place that was asked for. */
export function answerTo(url: string): ReturnType<typeof madeAnswer> {
  const { searchParams } = new URL(url, 'http://there');
  const [first, last] = [
    dayOf(searchParams.get('start_date') ?? ''),
    dayOf(searchParams.get('end_date') ?? ''),
  ];
  const days = Array.from({ length: last - first + 1 }, (_day, at) => textFromDay(first + at));
  return {
    ...madeAnswer(days),
    latitude: Number(searchParams.get('latitude')),
    longitude: Number(searchParams.get('longitude')),
  };
}

/** Made to the documented form: days from `firstDay` on, a warm dry spell and a shower every fourth day. */
export function madeAnswer(
  days: readonly string[] = ['2031-05-01', '2031-05-02', '2031-05-03'],
): Record<string, unknown> & { daily: Record<string, (string | number | null)[]> } {
  return {
    latitude: 52.5,
    longitude: 13.4,
    generationtime_ms: 0.4,
    utc_offset_seconds: 7200,
    timezone: 'Europe/Berlin',
    timezone_abbreviation: 'CEST',
    elevation: 45,
    daily_units: {
      time: 'iso8601',
      temperature_2m_max: '°C',
      temperature_2m_min: '°C',
      precipitation_sum: 'mm',
    },
    daily: {
      time: [...days],
      temperature_2m_max: days.map((_day, at) => 18 + (at % 7)),
      temperature_2m_min: days.map((_day, at) => 7 + (at % 5)),
      precipitation_sum: days.map((_day, at) => (at % 4 === 1 ? 6.4 : 0)),
    },
  };
}
