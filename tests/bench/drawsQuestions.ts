import { dayOf } from '../../app/core/days';
import type { DrawsQuestion } from '../../app/core/season/draws/runDraws';
import type { Garden } from '../../app/document/schema';
import { bedSeason } from '../../app/document/seasonInput';
import { seasonSpread } from '../../app/document/seasonSpread';
import { typicalWeatherSpread } from '../../app/tables/imaginedWeather';

/** A question of each bed of a made-up garden, with as many draws as asked. */
export const drawsQuestions = (garden: Garden, count: number, seed: number): DrawsQuestion[] =>
  garden.beds.map(({ id }) => ({
    input: bedSeason(garden, id, dayOf(garden.garden.today!)),
    spread: seasonSpread(garden, id),
    weather: {
      kind: 'generated',
      spread: typicalWeatherSpread(garden.garden.latitudeDegrees),
    },
    tests: [],
    seed,
    count,
  }));
