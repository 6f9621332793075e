import { failure, success, type Result } from '../../app/core/result';
import {
  weatherServiceHost,
  type WeatherError,
  type WeatherQuestion,
  type WeatherTrouble,
} from '../../app/host/contract';

/** The one address that is ever asked; nothing that the page, a file or a setting says changes it. */
export const weatherAddress = `https://${weatherServiceHost}/v1/archive`;

/** A lifetime of days is under 2 MB; more is not what was asked for. */
const limitBytes = 4_000_000;
const patienceMilliseconds = 20_000;
/** Of what a service gives as its reason, as much as a sentence can hold. */
const reasonCharacters = 200;
const reasonBytes = 20_000;

export interface WeatherServiceOptions {
  /** another address, for tests on this machine; the program itself never says one */
  readonly address?: string;
  readonly patienceMilliseconds?: number;
  readonly limitBytes?: number;
}

/** Asks the weather service once for each call. What the answer means is not looked at. */
export type AskWeather = (
  question: WeatherQuestion,
  calledOff: AbortSignal,
) => Promise<Result<string, WeatherError>>;

const trouble = (why: WeatherTrouble, detail = '') =>
  failure<WeatherError>({ kind: 'no-weather', why, detail });

/** All that is ever sent: a place to a tenth of a degree, two days, and which values are wanted. */
export function weatherRequest(address: string, question: WeatherQuestion): string {
  const { latitudeTenths, longitudeTenths, firstDay, lastDay } = question;
  const asked = new URL(address);
  asked.search = new URLSearchParams({
    latitude: (latitudeTenths / 10).toFixed(1),
    longitude: (longitudeTenths / 10).toFixed(1),
    start_date: firstDay,
    end_date: lastDay,
    daily: 'temperature_2m_max,temperature_2m_min,precipitation_sum',
    timezone: 'auto',
  }).toString();
  return asked.toString();
}

/**
 * The weather service over the net. One request, no cookies, no redirect followed, a limit in time
 * and in size.
 *
 * @returns the text of an answer that calls itself JSON. `no-weather`: `no way` (nothing there, no
 *   net, no trust), `slow`, `turned down` (with the service's reason), `moved`, `too much`,
 *   `cut off`, `no data` (an empty answer or a web page); `cancelled` when it was called off
 * @source the service's documentation of its address and parameters, as our notes on daily weather
 *   have it; it was never asked from where this was written
 */
export function weatherService(options: WeatherServiceOptions = {}): AskWeather {
  const address = options.address ?? weatherAddress;
  const patience = options.patienceMilliseconds ?? patienceMilliseconds;
  const limit = options.limitBytes ?? limitBytes;
  return async (question, calledOff) => {
    const slow = new AbortController();
    const timer = setTimeout(() => slow.abort(), patience);
    const ended = (): Result<string, WeatherError> | null => {
      if (calledOff.aborted) return failure({ kind: 'cancelled' });
      return slow.signal.aborted ? trouble('slow', String(Math.round(patience / 1000))) : null;
    };
    try {
      const answer = await fetch(weatherRequest(address, question), {
        redirect: 'manual',
        credentials: 'omit',
        cache: 'no-store',
        headers: { accept: 'application/json' },
        signal: AbortSignal.any([calledOff, slow.signal]),
      }).catch((error: unknown) => ended() ?? trouble('no way', codeIn(error)));
      if (!(answer instanceof Response)) return answer;
      if (answer.type === 'opaqueredirect' || (answer.status >= 300 && answer.status < 400)) {
        await answer.body?.cancel();
        return trouble('moved');
      }
      const isJson = /\bjson\b/i.test(answer.headers.get('content-type') ?? '');
      if (!answer.ok) {
        const told = await bodyOf(answer, reasonBytes).catch(() => null);
        return ended() ?? trouble('turned down', reasonIn(told, answer.status));
      }
      if (!isJson) {
        await answer.body?.cancel();
        return trouble('no data');
      }
      const text = await bodyOf(answer, limit).catch(() => undefined);
      if (text === undefined) return ended() ?? trouble('cut off');
      if (text === null) return trouble('too much', String(Math.round(limit / 1_000_000)));
      return text.trim() === '' ? trouble('no data') : success(text);
    } finally {
      clearTimeout(timer);
    }
  };
}

/** The body as text, null past the limit; throws when it breaks off or is not UTF-8. */
async function bodyOf(answer: Response, limit: number): Promise<string | null> {
  const reader = answer.body?.getReader();
  if (!reader) return '';
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let [text, bytes] = ['', 0];
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    bytes += value.length;
    if (bytes > limit) {
      await reader.cancel();
      return null;
    }
    text += decoder.decode(value, { stream: true });
  }
}

/** What the service says of itself, as plain short text; the number of the refusal where it says nothing. */
function reasonIn(body: string | null, status: number): string {
  try {
    const told: unknown = JSON.parse(body ?? '');
    if (typeof told === 'object' && told !== null && 'reason' in told) {
      const plain = String(told.reason)
        .replace(/[\p{C}\s]+/gu, ' ')
        .trim();
      if (plain !== '') return plain.slice(0, reasonCharacters);
    }
  } catch {
    // not JSON: the number says enough
  }
  return String(status);
}

/** The system's short word for a connection that failed, such as ENOTFOUND. */
function codeIn(error: unknown): string {
  const cause = error instanceof Error ? error.cause : undefined;
  return typeof cause === 'object' && cause !== null && 'code' in cause ? String(cause.code) : '';
}
