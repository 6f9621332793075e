import type { LayerInput } from '../input';
import { type Limits, weigh } from '../limits';
import { seasonFirstDay } from '../seasonAccount';
import type { Caution } from '../verdict';
import { groundTaken } from './crowded';
import type { CautionFacts, Run } from './facts';
import { factCaution, makeCaution } from './makeCaution';

/**
 * Raw manure before a harvest: 120 days for what grows in or near the ground, 90 elsewhere. Asked
 * of every planting picked after the manure, also of one that was added later.
 *
 * @source 7 CFR 205.203(c)(1)
 */
export function rawManureCautions(
  run: Run,
  layers: readonly LayerInput[],
  facts: CautionFacts,
  limits: Limits,
): Caution[] {
  const { numbers } = limits;
  const cautions: Caution[] = [];
  for (const layer of layers) {
    if (!facts.layers[layer.id]?.isRawManure) continue;
    for (const planting of run.input.plantings) {
      const { crop } = planting;
      if (crop.excessClass === 'flower' || crop.excessClass === 'cover') continue;
      const lastPick = planting.clearingDay ?? planting.usualEndDay;
      if (lastPick <= layer.day) continue;
      const firstPick = Math.max(planting.firstHarvestDay, layer.day);
      const row = crop.eatenFromSoil ? 'manure splashed' : 'manure off the ground';
      const wait = numbers[row];
      const days = firstPick - layer.day;
      if (days >= wait + numbers['manure margin']) continue;
      const isInside = days < wait;
      cautions.push(
        makeCaution('raw manure', limits.facts[isInside ? 'raw manure' : 'raw manure close'], row, {
          number: days,
          threshold: wait,
          unit: 'days',
          // The last day on which manure would have been in time for this planting.
          date: planting.firstHarvestDay - wait,
          detail: { plantingId: planting.id, pickFrom: layer.day + wait },
          layerId: layer.id,
        }),
      );
    }
  }
  return cautions;
}

/** Compost laid in the season of a day, in mm over the bed: phosphorus builds up unseen. */
export function compostCautions(
  run: Run,
  day: number,
  facts: CautionFacts,
  limits: Limits,
  layerId: string | null,
): Caution[] {
  const from = seasonFirstDay(run.input, day);
  const depth = run.input.layers
    .filter((layer) => layer.day >= from && layer.day <= day)
    .filter((layer) => facts.layers[layer.id]?.isCompost)
    .reduce((sum, layer) => sum + layer.laidDepth, 0);
  const weighed = weigh(depth, limits.lines['compost depth']);
  return weighed
    ? [
        makeCaution('compost phosphorus', weighed.weight, 'compost depth', {
          number: depth,
          threshold: weighed.threshold,
          unit: 'mm',
          layerId,
        }),
      ]
    : [];
}

/** Plantings as they stand: too much of the bed promised, or still there after their time. */
export function plantingCautions(run: Run, limits: Limits): Caution[] {
  const { input } = run;
  const { standing, share, weighed } = groundTaken(input.plantings, input.today, limits);
  const cautions: Caution[] = weighed
    ? [
        makeCaution('share over one', weighed.weight, 'share of the bed', {
          number: share,
          threshold: weighed.threshold,
          unit: 'share',
        }),
      ]
    : [];
  // what stays for years is never overdue: it rests till its next season
  for (const planting of standing)
    if (
      !planting.seasons &&
      !planting.cleared &&
      planting.clearingDay === null &&
      planting.usualEndDay < input.today
    )
      cautions.push(
        factCaution('overdue', 'overdue', limits, {
          number: input.today - planting.usualEndDay,
          threshold: 0,
          unit: 'days',
          date: planting.usualEndDay,
          detail: { plantingId: planting.id },
        }),
      );
  return cautions;
}
