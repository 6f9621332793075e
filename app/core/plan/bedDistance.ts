import { bareAfter, groundPieces } from './ground';
import type { PlanWeights } from './question';
import type { BedResponse } from './response';
import { fewLooks, sharesOf } from './spells';

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

/** How much of what is short counts by today's layers alone: of what stands now; what comes can wait. */
export const inHandShare = (bed: BedResponse, spell: number, weights: PlanWeights): number =>
  bed.aims[spell]!.judgedOn > bed.looks[0]!.day ? 0 : weights.inHand;

/**
 * How much more than the likely a supply may turn out to be, one as likely as the other [g N/m2].
 * At the edge of "about right" half of what comes lies beyond it: so a plan that may choose keeps
 * to the middle, and no browns are laid that would draw a bed down to the very edge.
 */
export const supplyOffs = (need: number, { supplyDiffers }: PlanWeights): readonly number[] =>
  supplyDiffers > 0 ? [-supplyDiffers * need, supplyDiffers * need] : [0];

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
  const sure = inHandShare(bed, spell, weights);
  const turnsOut = supplyOffs(need, weights);
  return turnsOut.reduce(
    (sum, off) =>
      sum +
      ((1 - sure) * Math.max(0, weights.lowShare * need - least - off) +
        sure * Math.max(0, weights.lowShare * need - inHand - off) +
        excess * Math.max(0, added + off - weights.highShare * need)) /
        turnsOut.length,
    0,
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
  const bareOn = (look: number, isTodayOnly: boolean): number => {
    let more = 0;
    for (const [at, depth] of millimetres) {
      const { day, dry } = bed.layers[at]!;
      if (!isTodayOnly || day === 0) more += Math.max(0, dry[look]!) * depth;
    }
    return bareAfter(groundPieces(bed.dry[look]!, perKilogram), more);
  };
  let bare = 0;
  sharesOf(bed.looks).forEach((share, look) => {
    bare += (1 - weights.inHand) * share * bareOn(look, false);
  });
  for (const { look, share } of fewLooks(bed.looks))
    bare += weights.inHand * share * bareOn(look, true);
  const nitrogen = bed.aims.reduce(
    (sum, { share }, spell) => sum + share * spellDistance(bed, spell, millimetres, weights),
    0,
  );
  return bed.areaM2 * (nitrogen + weights.groundGrams * bare);
}
