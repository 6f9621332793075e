import type { GrowingPlanting } from './growingPlanting';

/**
 * Nitrogen that stays below when the tops go [g/m2]: the roots' share of all the plant held, and of
 * a plant that stays for years never less than its crown had, as far as there is any.
 */
export const crownOf = ({ nitrogen, harvested, crown, crop }: GrowingPlanting): number =>
  Math.min(nitrogen, Math.max(crown, crop.rootShare * (nitrogen + harvested)));
