import { bareAfter, groundPieces } from './ground';
import type { PlanWeights } from './question';
import type { BedResponse } from './response';
import { sharesOf } from './spells';

/** Supply of a bed in a spell by the programme's straight lines [g N/m2]; amounts in mm by place in `layers`. */
export const supplyWith = (
  bed: BedResponse,
  spell: number,
  millimetres: ReadonlyMap<number, number>,
): number => {
  let supply = bed.supplies[spell] ?? 0;
  for (const [at, depth] of millimetres) supply += (bed.layers[at]!.supplies[spell] ?? 0) * depth;
  return supply;
};

/** The most that browns may count as holding back in a spell, whichever and however many [g N/m2]. */
export const heldMostOf = ({ layers }: BedResponse, spell: number): number =>
  layers.reduce((most, { held }) => Math.max(most, held[spell]!.most), 0);

/** Where the second piece of what browns hold back begins, for a bed in a spell [g N/m2]. */
export const heldStartOf = ({ layers }: BedResponse, spell: number): number =>
  layers.reduce((most, { held }) => Math.max(most, held[spell]!.start), 0);

/** Too little and too much in one spell [g N/m2]. */
function spellDistance(
  bed: BedResponse,
  spell: number,
  millimetres: ReadonlyMap<number, number>,
  weights: PlanWeights,
): number {
  let least = bed.supplies[spell]!;
  let inHand = bed.supplies[spell]!;
  let added = bed.supplies[spell]!;
  let thin = 0;
  let further = heldStartOf(bed, spell);
  for (const [at, depth] of millimetres) {
    const layer = bed.layers[at]!;
    const held = layer.held[spell]!;
    least += layer.supplies[spell]! * depth;
    if (layer.day === 0) inHand += layer.supplies[spell]! * depth;
    added += Math.max(0, layer.supplies[spell]!) * depth;
    thin += held.thin * depth;
    further += held.further * depth;
  }
  added -= Math.min(thin, further, heldMostOf(bed, spell));
  const { need, excess } = bed.aims[spell]!;
  return (
    (1 - weights.inHand) * Math.max(0, weights.lowShare * need - least) +
    weights.inHand * Math.max(0, weights.lowShare * need - inHand) +
    excess * Math.max(0, added - weights.highShare * need)
  );
}

/**
 * A bed's distance as the programme reckons it, for amounts that are given [g N, area included].
 * The same straight lines and pieces as `planProgramme`, without a solver.
 */
export function bedDistance(
  bed: BedResponse,
  millimetres: ReadonlyMap<number, number>,
  perKilogram: number,
  weights: PlanWeights,
): number {
  const shares = sharesOf(bed.looks);
  let bare = 0;
  for (let look = 0; look < bed.dry.length; look++) {
    let more = 0;
    for (const [at, depth] of millimetres) more += Math.max(0, bed.layers[at]!.dry[look]!) * depth;
    bare += shares[look]! * bareAfter(groundPieces(bed.dry[look]!, perKilogram), more);
  }
  const nitrogen = bed.aims.reduce(
    (sum, { share }, spell) => sum + share * spellDistance(bed, spell, millimetres, weights),
    0,
  );
  return bed.areaM2 * (nitrogen + weights.groundGrams * bare);
}
