import type { BedSeason } from '../input';
import type { Draws } from './columns';
import { drawnBed } from './drawnBed';
import type { SeasonSpread } from './spread';

export { makeDraws, type Draws } from './columns';

/**
 * A bed's season in one draw, for a run by itself.
 *
 * @param weather an imagined season of its own for this draw; measured days are the same in all
 * @returns an input for `runSeason`, balanced like any other
 */
export function drawnSeason(
  input: BedSeason,
  spread: SeasonSpread,
  weather: BedSeason['weather'],
  draws: Draws,
  draw: number,
): BedSeason {
  const bed = drawnBed({ ...input, weather }, spread, draws);
  bed.write(draw);
  return bed.input;
}
