import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { failure, success, type Result } from '../../app/core/result';
import type { WeatherError, WeatherGiven, WeatherQuestion } from '../../app/host/contract';
import { writeWhole } from '../files';
import type { AskWeather } from './weatherService';

/** Gardens one person keeps, and slips of the pen in a longitude; more in a day is a mistake. */
const mostPlacesADay = 5;

const keptShape = z.strictObject({
  latitudeTenths: z.number().int(),
  longitudeTenths: z.number().int(),
  firstDay: z.string(),
  lastDay: z.string(),
  text: z.string(),
});
const shape = z.strictObject({
  /** the computer's civil day on which all of it was asked */
  day: z.string(),
  /** what was given was to be forgotten: nothing more is asked on that day */
  isForgotten: z.boolean(),
  answers: z.array(keptShape).max(mostPlacesADay),
});
type Kept = z.infer<typeof shape>;

export interface WeatherDesk {
  /**
   * Asks the service, each place at most once a day; what it answered earlier on the same day is
   * given again. A newer question calls off the one that is under way. A try that brought nothing
   * does not count.
   */
  ask(question: WeatherQuestion): Promise<Result<WeatherGiven, WeatherError>>;
  callOff(): void;
  /** drops what is kept of answers; of the day nothing stays but that it was asked */
  forget(): Promise<Result<null, WeatherError>>;
}

const covers = (kept: WeatherQuestion, asked: WeatherQuestion): boolean =>
  kept.firstDay <= asked.firstDay && kept.lastDay >= asked.lastDay;

/**
 * The rule that a place is asked for once a day, kept over a restart in a small file of the
 * program's own folder, which only its owner may read.
 */
export function createWeatherDesk(
  dataFolder: string,
  askService: AskWeather,
  today: () => string,
): WeatherDesk {
  const path = join(dataFolder, 'weather-answers.json');
  let underWay: AbortController | null = null;

  async function keptToday(): Promise<Kept> {
    try {
      const kept = shape.parse(JSON.parse(await readFile(path, 'utf8')));
      if (kept.day === today()) return kept;
    } catch {
      // none yet, or one that was damaged: the worst is to ask once more
    }
    return { day: today(), isForgotten: false, answers: [] };
  }
  const keep = (kept: Kept) =>
    writeWhole(path, JSON.stringify(kept), 'weather-answers.json', { mode: 0o600 });

  return {
    async ask(question) {
      underWay?.abort();
      const own = new AbortController();
      underWay = own;
      try {
        const kept = await keptToday();
        const place = kept.answers.find(
          ({ latitudeTenths, longitudeTenths }) =>
            latitudeTenths === question.latitudeTenths &&
            longitudeTenths === question.longitudeTenths,
        );
        if (place && covers(place, question)) return success({ text: place.text, isKept: true });
        if (place || kept.isForgotten || kept.answers.length >= mostPlacesADay)
          return failure({ kind: 'no-weather', why: 'asked today', detail: '' });
        const answer = await askService(question, own.signal);
        if (!answer.ok) return answer;
        const text = answer.value;
        const written = await keep({ ...kept, answers: [...kept.answers, { ...question, text }] });
        return written.ok ? success({ text, isKept: false }) : written;
      } finally {
        if (underWay === own) underWay = null;
      }
    },
    callOff() {
      underWay?.abort();
    },
    async forget() {
      const { day, answers, isForgotten } = await keptToday();
      if (answers.length > 0 || isForgotten) return keep({ day, isForgotten: true, answers: [] });
      await rm(path, { force: true });
      return success(null);
    },
  };
}
