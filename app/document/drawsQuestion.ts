import type { DayNumber } from '../core/days';
import { seasonsOfYears } from '../core/season/ahead';
import type { WeatherSource } from '../core/season/draws/drawnWeather';
import type { DrawsQuestion } from '../core/season/draws/runDraws';
import type { BedSeason, SeasonWeather } from '../core/season/input';
import { typicalWeatherSpread } from '../tables/imaginedWeather';
import { signCoefficients } from '../tables/signs';
import { anyBed } from './bedPast';
import { laidOutOnce } from './laidOut';
import { looksOf } from './looks';
import { nitrateTests } from './nitrateTests';
import type { Application, Garden } from './schema';
import { bedSeason, underRoof } from './seasonInput';
import { seasonSpread } from './seasonSpread';
import { normalsOf, recordOf } from './weatherRecord';

/** The seed of all draws: the same garden is imagined the same way everywhere and for ever. */
export const drawsSeed = 20;

/** Of a garden whose weather stays: the runs of today from a handful of first days. */
const kept = laidOutOnce<readonly SeasonWeather[] | null>(8);

/** The years of record of a garden, laid out once for all runs of the same days. */
export type YearsOfGarden = Map<string, readonly SeasonWeather[] | null>;

function weatherSource(
  garden: Garden,
  { firstDay, lastDay, today, weather, latitudeDegrees }: BedSeason,
  isRoofed: boolean,
  laidOut: YearsOfGarden,
): WeatherSource {
  const measured = weather.referenceEvapotranspiration;
  const key = JSON.stringify([firstDay, lastDay, today, isRoofed, measured !== undefined]);
  let seasons = laidOut.get(key);
  if (seasons === undefined) {
    const years = kept(garden, [firstDay, lastDay, today].join(), () =>
      seasonsOfYears(recordOf(garden, today), normalsOf(garden), firstDay, lastDay, today),
    );
    seasons =
      years?.map((year) => {
        if (isRoofed) return underRoof(year);
        // what was measured is measured in every one of them, what is imagined in none
        return measured ? { ...year, referenceEvapotranspiration: measured } : year;
      }) ?? null;
    laidOut.set(key, seasons);
  }
  if (seasons !== null) return { kind: 'years', seasons };
  return { kind: 'generated', spread: typicalWeatherSpread(latitudeDegrees), isRoofed };
}

export interface DrawsOptions {
  /**
   * layers that are only thought of; asked with and without them under one seed, a draw differs by
   * the layers alone
   */
  readonly extraApplications?: readonly Application[];
  /** the bed's season where it is known already: of this garden, day and layers */
  readonly input?: BedSeason | undefined;
  /** shared between the beds of one garden and day, so that its years are laid out once */
  readonly laidOut?: YearsOfGarden;
}

/**
 * A bed's imagined seasons as the engine is asked for them: its season at typical values, what of
 * it is uncertain, where the weather after today comes from, what was measured, what was seen. The
 * weather is that of each whole year of record before today where there are three or more, else
 * made up from the monthly normals; nothing of the record after `today` is looked at.
 *
 * @param count how many seasons
 * @throws as `bedSeason`
 */
export function drawsQuestion(
  garden: Garden,
  bedId: string,
  today: DayNumber,
  count: number,
  { extraApplications = [], input: known, laidOut = new Map() }: DrawsOptions = {},
): DrawsQuestion {
  const input = known ?? bedSeason(garden, bedId, today, { extraApplications });
  const isRoofed = anyBed(garden, bedId)?.roof !== 'open';
  return {
    input,
    spread: seasonSpread(garden, bedId, extraApplications),
    weather: weatherSource(garden, input, isRoofed, laidOut),
    tests: nitrateTests(garden, input),
    signs: { looks: looksOf(garden, bedId), coefficients: signCoefficients },
    seed: drawsSeed,
    count,
  };
}

/**
 * The same of several beds, in their order.
 *
 * @param known their seasons by bed id, as far as there are any
 */
export function drawsQuestions(
  garden: Garden,
  bedIds: readonly string[],
  today: DayNumber,
  count: number,
  known: Readonly<Record<string, { readonly input: BedSeason }>> = {},
): DrawsQuestion[] {
  const laidOut: YearsOfGarden = new Map();
  return bedIds.map((bedId) =>
    drawsQuestion(garden, bedId, today, count, { laidOut, input: known[bedId]?.input }),
  );
}
