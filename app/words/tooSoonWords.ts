import type { Weight } from '../core/season/verdict';
import type { TooSoon } from '../document/tooSoonAfter';
import type { Row } from '../tables/shapes';
import { sourceLine } from './sourceLine';

const seasons = (count: number): string => `${String(count)} ${count === 1 ? 'season' : 'seasons'}`;

const away = ({ low, high, typical }: Row): string =>
  low === high ? seasons(typical) : `${seasons(typical)} (${String(low)} to ${String(high)})`;

/**
 * "Potatoes after its own family: Tomatoes stood there, started 18 May 2012, no season between. The nightshade family stays away 3 seasons (2 to 4) …", with where the seasons come from.
 *
 * @param source the row's source as a reader knows it
 */
export function tooSoonWords(
  crop: string,
  soon: TooSoon,
  startedOn: string,
  source: string,
): string {
  const { freeSeasons, name, reason } = soon.family;
  const between =
    soon.seasonsAway < 1 ? 'no season between' : `${seasons(soon.seasonsAway)} between`;
  return `${crop} after its own family: ${soon.crop} stood there, started ${startedOn}, ${between}. The ${name} is best away for ${away(freeSeasons)}: ${reason}. ${sourceLine({ ...freeSeasons, source, judged: false })}`;
}

/**
 * Sooner than the fewest seasons anybody gives is a caution; sooner than is usual only a note, and
 * so is a cover crop that was dug in young or is going to be.
 */
export const tooSoonWeight = ({ seasonsAway, family, isCover }: TooSoon): Weight =>
  seasonsAway < family.freeSeasons.low && !isCover ? 'caution' : 'note';
