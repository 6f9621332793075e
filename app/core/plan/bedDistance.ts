import { bareAfter, groundPieces } from './ground';
import type { PlanWeights } from './question';
import type { BedResponse } from './response';

/** Supply of a bed by the programme's straight lines [g N/m2]; amounts in mm by place in `layers`. */
export const supplyWith = (bed: BedResponse, millimetres: ReadonlyMap<number, number>): number => {
  let supply = bed.supply;
  for (const [at, depth] of millimetres) supply += bed.layers[at]!.supply * depth;
  return supply;
};

/** The most that browns may count as holding back on a bed, whichever and however many [g N/m2]. */
export const heldMostOf = ({ layers }: BedResponse): number =>
  layers.reduce((most, { held }) => Math.max(most, held.most), 0);

/** Where the second piece of what browns hold back begins, for a bed [g N/m2]. */
export const heldStartOf = ({ layers }: BedResponse): number =>
  layers.reduce((most, { held }) => Math.max(most, held.start), 0);

/**
 * A bed's distance as the programme reckons it, for amounts that are given [g N, area included].
 * The same straight lines and pieces as `planProgramme`, without a solver.
 */
export function bedDistance(
  bed: BedResponse,
  millimetres: ReadonlyMap<number, number>,
  days: number,
  perKilogram: number,
  weights: PlanWeights,
): number {
  let bare = 0;
  for (let day = 0; day < bed.dry.length; day++) {
    let more = 0;
    for (const [at, depth] of millimetres) more += Math.max(0, bed.layers[at]!.dry[day]!) * depth;
    bare += bareAfter(groundPieces(bed.dry[day]!, perKilogram), more);
  }
  let least = bed.supply;
  let added = bed.supply;
  let thin = 0;
  let further = heldStartOf(bed);
  for (const [at, depth] of millimetres) {
    least += bed.layers[at]!.supply * depth;
    added += Math.max(0, bed.layers[at]!.supply) * depth;
    const { held } = bed.layers[at]!;
    thin += held.thin * depth;
    further += held.further * depth;
  }
  added -= Math.min(thin, further, heldMostOf(bed));
  const { need, excess } = bed.aim;
  const nitrogen =
    Math.max(0, weights.lowShare * need - least) +
    excess * Math.max(0, added - weights.highShare * need);
  return bed.areaM2 * (nitrogen + (weights.groundGrams * bare) / days);
}
