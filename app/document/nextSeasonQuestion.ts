import { seasonEnd, type DayNumber } from '../core/days';
import type { DrawsQuestion } from '../core/season/draws/runDraws';
import type { SeasonWeather } from '../core/season/input';
import { drawsQuestion, type YearsOfGarden } from './drawsQuestion';
import type { Garden } from './schema';
import { bedSeason } from './seasonInput';

/** One run of weather up to a day of it, another from that day on. */
function goneOnWith(one: SeasonWeather, other: SeasonWeather, from: number): SeasonWeather {
  const joined = (left: Float64Array, right: Float64Array): Float64Array => {
    const all = left.slice();
    all.set(right.subarray(from), from);
    return all;
  };
  return {
    ...one,
    minimumCelsius: joined(one.minimumCelsius, other.minimumCelsius),
    maximumCelsius: joined(one.maximumCelsius, other.maximumCelsius),
    rainMillimetres: joined(one.rainMillimetres, other.rainMillimetres),
  };
}

/** Makes the questions about the beds of one garden and day, so that its years are laid out once. */
export function nextSeasonQuestions(
  garden: Garden,
  today: DayNumber,
): (bedId: string, count: number) => DrawsQuestion {
  const laidOut: YearsOfGarden = new Map();
  const goneOn = new Map<readonly SeasonWeather[], readonly SeasonWeather[]>();
  const nextStart = seasonEnd(today, garden.garden.seasonStartMonth) + 1;
  return (bedId, count) => {
    const input = bedSeason(garden, bedId, today, { throughNextSeason: true });
    const question = drawsQuestion(garden, bedId, today, count, { input, laidOut });
    const { weather } = question;
    if (weather.kind !== 'years') return question;
    const { seasons: years } = weather;
    let seasons = goneOn.get(years);
    if (!seasons) {
      const from = nextStart - input.firstDay;
      seasons = years.map((year, at) =>
        goneOnWith(year, years[(at + 1) % years.length] ?? year, from),
      );
      goneOn.set(years, seasons);
    }
    return { ...question, weather: { kind: 'years', seasons } };
  };
}
