import type { BedAnswer } from '../season/bedAnswer';
import { answerBed } from '../season/bedAnswer';
import type { LayerInput } from '../season/input';
import type { Caution } from '../season/verdict';
import { mgPerKgFromGramsPerM2 } from '../units';
import type {
  BedLeftOut,
  BedStanding,
  ComingLayer,
  PlanLayer,
  PlanLimit,
  PlanLine,
  PlanReason,
  PlanTurn,
} from './answer';
import { supplyWith } from './bedDistance';
import { bedLimits, passedLimit } from './bedLimits';
import { factsWith, layersOf, pinnedCautions, type CheckedBed } from './checked';
import { leftOutReason } from './leftOut';
import { keptLeaves } from './keptLeaves';
import type { MadePlan } from './makePlan';
import { layerIdOf, type Ready, type ReadyBed } from './ready';
import { amountOf } from './sourceAccounts';
import { stepLitresOf, stepOf } from './settle';
import { standingOf, withLayers } from './standing';

/** What is left of each source once this week's layers are laid [L]. */
export const litresLeft = ({ ready, today }: MadePlan): readonly number[] => {
  const left = [...ready.litres];
  ready.beds.forEach(({ response }, bed) => {
    for (const [at, millimetres] of today[bed]!)
      left[response.layers[at]!.source]! -= millimetres * response.areaM2;
  });
  return left;
};

export const standing = (
  { question }: Ready,
  { aims, looks }: ReadyBed,
  answer: BedAnswer,
): BedStanding => standingOf(answer, aims, looks, question.limits, question.weights);

/** Litres by the square metre and back are off by a hair: whole steps are whole again. */
const inSteps = (litres: number, step: number): number => Math.round(litres / step) * step;

function planLayers(ready: Ready, at: number, amounts: ReadonlyMap<number, number>): PlanLayer[] {
  const { pinned, response } = ready.beds[at]!;
  const { sources, question } = ready;
  const layer = (
    source: number,
    millimetres: number,
    isPinned: boolean,
    placement: PlanLayer['placement'],
  ): PlanLayer => {
    const from = sources[source]!;
    return {
      layerId: layerIdOf(from.id, question.today, placement),
      sourceId: from.id,
      ref: from.ref,
      day: question.today,
      condition: from.condition,
      placement,
      amount: amountOf(
        from,
        isPinned
          ? millimetres * response.areaM2
          : inSteps(millimetres * response.areaM2, stepLitresOf(from)),
      ),
      depthMillimetres: millimetres * from.oneMillimetre.laidDepth,
      isPinned,
    };
  };
  return [
    ...pinned.map(({ source, millimetres }) => layer(source, millimetres, true, 'laid')),
    ...[...amounts].map(([place, millimetres]) => {
      const { source, placement } = response.layers[place]!;
      return layer(source, millimetres, false, placement);
    }),
  ];
}

function reasonOf(ready: Ready, bed: ReadyBed, before: BedStanding, isOwn: boolean): PlanReason {
  if (!isOwn) return 'pinned';
  const { weights, limits } = ready.question;
  const isHungry = before.supply < weights.lowShare * bed.aim.need;
  const isBare = before.covered < limits.numbers['cover thin'];
  if (isHungry && isBare) return 'hungry and bare';
  if (isHungry || isBare) return isHungry ? 'hungry' : 'bare ground';
  return before.supply > weights.highShare * bed.aim.need && bed.aim.need > 0
    ? 'too much'
    : 'bare ground';
}

function limitOf(
  plan: MadePlan,
  at: number,
  { amounts, stopped }: CheckedBed,
  left: readonly number[],
): PlanLimit {
  const { ready } = plan;
  const { response } = ready.beds[at]!;
  if (amounts.size === 0) return { kind: 'pinned' };
  if (stopped) return { kind: 'caution', caution: stopped };
  const [[place, millimetres]] = [...amounts].sort((one, other) => other[1] - one[1]) as [
    [number, number],
  ];
  const step = stepOf(ready, at, place);
  const { source, mostMillimetres } = response.layers[place]!;
  const { limits } = ready.question;
  const own = bedLimits(response, ready.sources, limits);
  const passed = passedLimit(own, response, new Map(amounts).set(place, millimetres + step));
  if (passed) return passed;
  if (millimetres + step > mostMillimetres + 1e-9)
    return { kind: 'layer depth', millimetres: mostMillimetres };
  if (left[source]! >= step * response.areaM2 - 1e-6) return { kind: 'better elsewhere' };
  const sourceId = ready.sources[source]!.id;
  const litres = keptLeaves(ready.question).get(sourceId);
  return litres === undefined
    ? { kind: 'all used', sourceId }
    : { kind: 'kept to mix', sourceId, litres };
}

/** Least gain of working a layer in that is worth saying [g N/m2]. */
const leastGain = 0.3;

function turnsOf(
  ready: Ready,
  at: number,
  layers: readonly LayerInput[],
  before: BedStanding,
  after: BedStanding,
): readonly PlanTurn[] {
  const bed = ready.beds[at]!;
  const turns: PlanTurn[] = [];
  const { question } = ready;
  const lacking = question.weights.lowShare * bed.aim.need - before.supply;
  const greens = layers.filter(({ isGreens, placement }) => isGreens && placement === 'laid');
  if (lacking > 0 && greens.length > 0) {
    const hoed = answerBed(
      {
        ...bed.bed.question,
        input: withLayers(
          bed.withPins.input,
          layers.map((layer) => (layer.isGreens ? { ...layer, placement: 'hoed' } : layer)),
        ),
        facts: factsWith(ready, at),
      },
      question.limits,
    );
    const supplyGain = standing(ready, bed, hoed).supply - after.supply;
    if (supplyGain > leastGain) turns.push({ kind: 'hoed in', supplyGain });
  }
  if (lacking > 0) {
    const { bulkDensityKgPerL } = bed.base.input.soil;
    turns.push({
      kind: 'nitrate test',
      mgPerKg:
        bed.base.verdict.nitrateMgPerKg + mgPerKgFromGramsPerM2(lacking, bulkDensityKgPerL, 30),
    });
  }
  return turns;
}

const totalOf = ({ distance }: BedStanding): number => distance.nitrogen + distance.ground;

/** This week's lines, the beds without one, and what the coming weeks may bring. */
export function linesOf(
  plan: MadePlan,
  toEnd: readonly BedAnswer[],
): {
  readonly lines: readonly PlanLine[];
  readonly leftOut: readonly BedLeftOut[];
  readonly coming: readonly ComingLayer[];
} {
  const { ready, checked, today } = plan;
  const left = litresLeft(plan);
  const lines: PlanLine[] = [];
  const leftOut: BedLeftOut[] = [];
  ready.beds.forEach((bed, at) => {
    const before = standing(ready, bed, bed.base);
    const own = checked[at]!;
    if (today[at]!.size === 0 && bed.pinned.length === 0) {
      leftOut.push({
        bedId: bed.bed.bedId,
        ...leftOutReason(plan, at, before, left),
        standing: before,
      });
      return;
    }
    const after = standing(ready, bed, own.answer);
    const cautions: readonly Caution[] = [...pinnedCautions(ready, at), ...own.cautions];
    lines.push({
      bedId: bed.bed.bedId,
      layers: planLayers(ready, at, today[at]!),
      odds: null,
      why: {
        reason: reasonOf(ready, bed, before, today[at]!.size > 0),
        before,
        after,
        afterAll: standing(ready, bed, toEnd[at]!),
        programmeSupply: supplyWith(bed.response, 0, today[at]!),
        worth: totalOf(before) - totalOf(after),
        limit: limitOf(plan, at, own, left),
        turns: turnsOf(ready, at, layersOf(ready, at, today[at]!), before, after),
      },
      cautions,
    });
  });
  return { lines, leftOut, coming: comingLayers(plan) };
}

function comingLayers({ ready, coming }: MadePlan): readonly ComingLayer[] {
  return ready.beds
    .flatMap(({ bed, response }, at) =>
      [...coming[at]!].map(([place, millimetres]): ComingLayer => {
        const { source, day } = response.layers[place]!;
        const from = ready.sources[source]!;
        return {
          day: ready.question.days[day]!,
          bedId: bed.bedId,
          sourceId: from.id,
          ref: from.ref,
          amount: amountOf(from, inSteps(millimetres * response.areaM2, stepLitresOf(from))),
          depthMillimetres: millimetres * from.oneMillimetre.laidDepth,
        };
      }),
    )
    .sort((one, other) => one.day - other.day);
}
