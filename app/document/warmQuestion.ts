import type { DrawsQuestion } from '../core/season/draws/runDraws';
import { dayOf } from '../core/days';
import { typicalWeatherSpread } from '../tables/imaginedWeather';
import { parseGarden } from './parse';
import { sampleText } from './sampleGarden';
import { bedSeason } from './seasonInput';
import { seasonSpread } from './seasonSpread';

/** A fruiting crop under clippings and browns, and beans: what most gardens make the engine do. */
const bedIds: readonly string[] = ['bed-wall', 'bed-beans-straw'];
/** About as many runs as make the engine's code as fast as it gets; a worker stops when it is asked. */
const draws = 250;

/**
 * Beds of the sample whose imagined seasons nobody wants to know: run by a worker that has nothing
 * else to do yet, they make its code fast before the first garden asks.
 */
export function warmQuestion(): readonly DrawsQuestion[] {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) return [];
  const garden = parsed.value;
  const { today, latitudeDegrees } = garden.garden;
  if (!today) return [];
  return bedIds.map((id) => ({
    input: bedSeason(garden, id, dayOf(today)),
    spread: seasonSpread(garden, id),
    weather: { kind: 'generated', spread: typicalWeatherSpread(latitudeDegrees) },
    tests: [],
    seed: 1,
    count: draws,
  }));
}
