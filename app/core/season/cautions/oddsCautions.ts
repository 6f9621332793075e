import type { DrawsAnswer } from '../draws/runDraws';
import { flowerWeather } from '../flowerWeather';
import type { LayerInput } from '../input';
import { weigh, type Limits } from '../limits';
import { isStanding } from '../plantingAccount';
import type { Caution, Weight } from '../verdict';
import type { Run } from './facts';
import { makeCaution } from './makeCaution';

/** Draws that are worth fewer than this cannot tell three seasons in ten from five (ours). */
const leastWorth = 10;

interface Odds {
  readonly weight: Weight;
  readonly threshold: number;
  readonly inTen: number;
}

function weighOdds(run: Run, draws: DrawsAnswer, limits: Limits): Odds | null {
  const { overFeeding } = draws;
  const { input } = run;
  if (overFeeding === null || draws.effectiveCount < leastWorth) return null;
  const planting = input.plantings.find(({ id }) => id === overFeeding.plantingId);
  // once the window is over there is nothing left to spoil
  if (!planting || !isStanding(planting, input.today) || overFeeding.last < input.today)
    return null;
  const inTen = 10 * overFeeding.odds;
  const weighed = weigh(inTen, limits.lines['over-feeding odds']);
  return weighed && { ...weighed, inTen };
}

function oddsCaution(
  run: Run,
  { overFeeding }: DrawsAnswer,
  { weight, threshold, inTen }: Odds,
  limits: Limits,
  layer: { readonly id: string; readonly without: number } | null,
): Caution[] {
  if (overFeeding === null) return [];
  const { excessClass, plantingId, begins } = overFeeding;
  const sure = limits.numbers['over-feeding all but sure'];
  const isSure = weight === 'caution' && inTen > sure;
  const sets = excessClass === 'flower' || excessClass === 'fruit';
  return [
    makeCaution(
      'over-feeding',
      weight,
      isSure ? 'over-feeding all but sure' : 'over-feeding odds',
      {
        number: inTen,
        threshold: isSure ? sure : threshold,
        unit: 'in 10',
        date: begins,
        detail: {
          plantingId,
          excessClass,
          ...(layer ? { without: layer.without } : {}),
          // leaves without fruit have other reasons as well, and the weather may be one
          ...(sets ? flowerWeather(run.result, run.input.today, limits) : {}),
        },
        layerId: layer?.id ?? null,
      },
    ),
  ];
}

/**
 * Too much before a crop flowers, sets fruit or fills, by the odds of the imagined seasons.
 *
 * @param run at likely values; what the weather did is told by it
 * @returns nothing while the draws are worth too little, and once the time of harm is over
 */
export function oddsOfBed(run: Run, draws: DrawsAnswer, limits: Limits): Caution[] {
  const odds = weighOdds(run, draws, limits);
  return odds ? oddsCaution(run, draws, odds, limits, null) : [];
}

/**
 * The same of a layer about to be laid: what the odds are with it, if it raises them. A rise that
 * is hardly there is not the layer's, and a small one is a note at most, so that no weight jumps.
 *
 * @param layers the proposed ones
 * @param before the same imagined seasons without them
 */
export function oddsOfLayers(
  after: Run,
  layers: readonly LayerInput[],
  draws: { readonly before: DrawsAnswer; readonly after: DrawsAnswer },
  limits: Limits,
): Caution[] {
  const [first] = layers.filter(
    ({ materialClass }) => materialClass === 'green' || materialClass === 'slow',
  );
  const odds = weighOdds(after, draws.after, limits);
  if (!first || !odds) return [];
  const without = 10 * (draws.before.overFeeding?.odds ?? 0);
  const rise = odds.inTen - without;
  if (rise < limits.numbers['over-feeding least rise']) return [];
  const isNote = rise < limits.numbers['over-feeding rise'];
  const lines = limits.lines['over-feeding odds'];
  const weighed: Odds = isNote ? { ...odds, weight: 'note', threshold: lines.note } : odds;
  return oddsCaution(after, draws.after, weighed, limits, { id: first.id, without });
}
