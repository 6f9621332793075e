import type { DrawsQuestion } from '../core/season/draws/runDraws';
import { dayOf } from '../core/days';
import { typicalWeatherSpread } from '../tables/imaginedWeather';
import { parseGarden } from './parse';
import { sampleText } from './sampleGarden';
import { bedSeason } from './seasonInput';
import { seasonSpread } from './seasonSpread';

/** With all beds about as many runs as make the engine's code as fast as it gets. */
const draws = 80;

/**
 * The beds of the sample, whose imagined seasons nobody wants to know: run by a worker that has
 * nothing else to do yet, they make its code fast before the first garden asks. All of them: code
 * made fast for few kinds of beds has to be made anew where the garden has another kind. A worker
 * stops when it is asked.
 */
export function warmQuestion(): readonly DrawsQuestion[] {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) return [];
  const garden = parsed.value;
  const { today, latitudeDegrees } = garden.garden;
  if (!today) return [];
  return garden.beds.map(({ id }) => ({
    input: bedSeason(garden, id, dayOf(today)),
    spread: seasonSpread(garden, id),
    weather: { kind: 'generated', spread: typicalWeatherSpread(latitudeDegrees) },
    tests: [],
    seed: 1,
    count: draws,
  }));
}
