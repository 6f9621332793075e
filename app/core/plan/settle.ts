import type { Result } from '../result';
import type { PlanTrouble } from './answer';
import { bedDistance } from './bedDistance';
import { bedLimits, passedLimit, type BedLimit } from './bedLimits';
import type { Solution, Solver } from './linearProgramme';
import { planProgramme, type PlanProgramme } from './programme';
import type { PlanSource } from './question';
import { isPinned, walksTaken, type Ready } from './ready';

/** Millimetres by bed and by place in its `layers`; what is not named is none. */
export type Amounts = readonly ReadonlyMap<number, number>[];

/** A programme's answer in amounts. */
export interface Found {
  readonly objective: number;
  readonly amounts: Amounts;
}

const bareMinimum = 1e-7;

/** Limits lower than the beds' own, found by the full model: [mm] by bed and layer. */
export type Caps = readonly ReadonlyMap<number, number>[];

export const noCaps = (beds: number): Map<number, number>[] =>
  Array.from({ length: beds }, () => new Map<number, number>());

/** The programme of a plan that is ready; `settled` amounts of the first day are kept to. */
export function programmeOf(
  ready: Ready,
  settled: Amounts | null,
  caps: Caps,
  litres: readonly number[] = ready.litres,
): PlanProgramme {
  const { question, beds, sources } = ready;
  return planProgramme({
    beds: beds.map(({ response }, bed) => ({
      ...response,
      layers: response.layers.map((layer, at) => {
        const most = caps[bed]?.get(at);
        return most === undefined
          ? layer
          : { ...layer, mostMillimetres: Math.min(most, layer.mostMillimetres) };
      }),
    })),
    sources,
    litres,
    days: question.days.length,
    perKilogram: beds.map(({ perKilogram }) => perKilogram),
    isPinned: (bed, source) => isPinned(ready, bed, source),
    visited: beds.map(({ pinned }) => pinned.length > 0),
    walksTaken: walksTaken(ready),
    bedsADay: question.wishes.bedsADay,
    settled: settled === null ? null : (bed, layer) => settled[bed]?.get(layer) ?? 0,
    limits: question.limits,
    weights: question.weights,
  });
}

function amountsOf({ amounts }: PlanProgramme, { values }: Solution, beds: number): Amounts {
  const found = noCaps(beds);
  for (const { column, bed, layer } of amounts) {
    const value = values[column]!;
    if (value > bareMinimum) found[bed]!.set(layer, value);
  }
  return found;
}

/** Solves a plan's programme. */
export function solved(
  ready: Ready,
  solve: Solver,
  settled: Amounts | null,
  caps: Caps,
  litres?: readonly number[],
): Result<Found, PlanTrouble> {
  const programme = programmeOf(ready, settled, caps, litres);
  const answer = solve(programme.programme);
  if (!answer.ok) return answer;
  return {
    ok: true,
    value: {
      objective: answer.value.objective,
      amounts: amountsOf(programme, answer.value, ready.beds.length),
    },
  };
}

/** The limits of every bed, reckoned once. */
export const limitsOf = ({ beds, sources, question }: Ready): readonly (readonly BedLimit[])[] =>
  beds.map(({ response }) => bedLimits(response, sources, question.limits));

/** Half a bucket; where there is less than that of a source, all of it [L]. */
export const stepLitresOf = ({ stepLitres, litres }: PlanSource): number =>
  litres > 0 ? Math.min(stepLitres, litres) : stepLitres;

export const stepOf = (ready: Ready, bed: number, layer: number): number => {
  const { response } = ready.beds[bed]!;
  return stepLitresOf(ready.sources[response.layers[layer]!.source]!) / response.areaM2;
};

interface Part {
  readonly bed: number;
  readonly layer: number;
  readonly source: number;
  readonly wanted: number;
}

/** The first day's part of an answer. */
const firstDay = (ready: Ready, amounts: Amounts): readonly Part[] =>
  amounts.flatMap((own, bed) =>
    [...own].flatMap(([layer, wanted]): Part[] => {
      const response = ready.beds[bed]!.response.layers[layer]!;
      return response.day === 0 ? [{ bed, layer, source: response.source, wanted }] : [];
    }),
  );

/**
 * The first day's amounts in whole steps (half buckets). Every amount starts at the step below; then,
 * where a step was cut off, it is given back where it does most good by the programme's own distance,
 * as long as it does any, there is enough, and no limit is passed.
 */
export function rounded(
  ready: Ready,
  found: Found,
  caps: Caps,
  limits: readonly (readonly BedLimit[])[],
): Amounts {
  const parts = firstDay(ready, found.amounts);
  const result = noCaps(ready.beds.length);
  const left = [...ready.litres];
  for (const { bed, layer, source, wanted } of parts) {
    const step = stepOf(ready, bed, layer);
    const steps = Math.floor(wanted / step + 1e-6);
    if (steps === 0) continue;
    result[bed]!.set(layer, steps * step);
    left[source]! -= steps * step * ready.beds[bed]!.response.areaM2;
  }
  const later = found.amounts.map((own, bed) =>
    [...own].filter(([layer]) => ready.beds[bed]!.response.layers[layer]!.day > 0),
  );
  const gains = (one: Part): number => {
    const step = stepOf(ready, one.bed, one.layer);
    const have = result[one.bed]!.get(one.layer) ?? 0;
    if (have >= one.wanted - 1e-9) return -Infinity;
    return stepGain(ready, one, step, result[one.bed]!, later[one.bed]!, caps, limits, left);
  };
  for (;;) {
    let best: Part | null = null;
    let most = 0;
    for (const one of parts) {
      const gain = gains(one);
      if (gain > most) [best, most] = [one, gain];
    }
    if (best === null) return result;
    const step = stepOf(ready, best.bed, best.layer);
    result[best.bed]!.set(best.layer, (result[best.bed]!.get(best.layer) ?? 0) + step);
    left[best.source]! -= step * ready.beds[best.bed]!.response.areaM2;
  }
}

/** Distance that one step more takes away [g N]; -Infinity where it may not be. */
export function stepGain(
  ready: Ready,
  { bed, layer, source }: Pick<Part, 'bed' | 'layer' | 'source'>,
  step: number,
  have: ReadonlyMap<number, number>,
  later: Iterable<readonly [number, number]>,
  caps: Caps,
  limits: readonly (readonly BedLimit[])[],
  left: readonly number[],
): number {
  const { response, perKilogram } = ready.beds[bed]!;
  const { question } = ready;
  const depth = (have.get(layer) ?? 0) + step;
  const most = Math.min(response.layers[layer]!.mostMillimetres, caps[bed]?.get(layer) ?? Infinity);
  if (depth > most + 1e-9) return -Infinity;
  if (step * response.areaM2 > left[source]! + 1e-6) return -Infinity;
  const more = new Map(have).set(layer, depth);
  if (passedLimit(limits[bed]!, response, more) !== null) return -Infinity;
  const distance = (amounts: ReadonlyMap<number, number>): number =>
    bedDistance(response, new Map([...later, ...amounts]), perKilogram, question.weights);
  return distance(have) - distance(more);
}
