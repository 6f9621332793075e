import { failure, success, type Result } from '../result';
import type { BedAnswer } from '../season/bedAnswer';
import type { PlanAnswer, PlanTrouble } from './answer';
import { answerWithAmounts, checkedBed, type CheckedBed } from './checked';
import { bedDistance } from './bedDistance';
import type { Solver } from './linearProgramme';
import { mendMoves } from './mends';
import { mowAdvice } from './mowAdvice';
import { planEffects } from './planEffects';
import { linesOf, standing } from './planLines';
import type { PlanQuestion } from './question';
import { ready as readyFor, type Ready } from './ready';
import {
  limitsOf,
  noCaps,
  rounded,
  solved,
  stepLitresOf,
  type Amounts,
  type Found,
} from './settle';
import { simpleAmounts } from './simpleRule';
import { sourceAccounts } from './sourceAccounts';

/** A plan before it is told: this week checked, the coming weeks expected. */
export interface MadePlan {
  readonly ready: Ready;
  readonly checked: readonly CheckedBed[];
  /** this week's amounts [mm] */
  readonly today: Amounts;
  /** coming weeks' amounts in whole steps [mm] */
  readonly coming: Amounts;
  /** objective before rounding, and of what was settled; null where no solver answered */
  readonly objective: number | null;
  readonly settledObjective: number;
  readonly trouble: PlanTrouble | null;
}

/** Times that the programme is asked again because the full model held a layer back. */
const mostRounds = 6;

/** Depth of all layers of a bed together under which a walk is not worth it [mm as handled] (ours). */
const thinnestMillimetres = 0.5;

const isCrumb = (own: ReadonlyMap<number, number>): boolean =>
  [...own.values()].reduce((sum, millimetres) => sum + millimetres, 0) < thinnestMillimetres - 1e-9;

const withoutCrumbs = (amounts: Amounts): Amounts =>
  amounts.map((own) => (isCrumb(own) ? new Map<number, number>() : own));

interface Week {
  readonly objective: number | null;
  readonly today: Amounts;
  readonly checked: readonly CheckedBed[];
  readonly trouble: PlanTrouble | null;
}

/** A bed's layers, or none where the full model finds that they do no good. */
function worthwhile(ready: Ready, bed: number, checked: CheckedBed): CheckedBed {
  if (checked.layers.length === 0) return checked;
  const { withPins } = ready.beds[bed]!;
  const distanceOf = (answer: BedAnswer): number => {
    const { distance } = standing(ready, ready.beds[bed]!, answer);
    return distance.nitrogen + distance.ground;
  };
  return distanceOf(checked.answer) < distanceOf(withPins)
    ? checked
    : { amounts: new Map(), layers: [], answer: withPins, cautions: [], stopped: null };
}

/** Solves, rounds and checks until the full model has nothing against this week's layers. */
function thisWeek(ready: Ready, solve: Solver): Week {
  const caps = noCaps(ready.beds.length);
  const limits = limitsOf(ready);
  let objective: number | null = null;
  for (let round = 1; ; round++) {
    const found = solved(ready, solve, null, caps);
    const wanted = withoutCrumbs(
      found.ok ? rounded(ready, found.value, caps, limits) : simpleAmounts(ready, caps, limits),
    );
    if (found.ok) objective ??= found.value.objective;
    const checked = wanted.map((own, bed) => worthwhile(ready, bed, checkedBed(ready, bed, own)));
    let isHeldBack = false;
    checked.forEach(({ amounts }, bed) => {
      for (const [layer, millimetres] of wanted[bed]!) {
        const kept = amounts.get(layer) ?? 0;
        if (kept >= millimetres - 1e-9) continue;
        isHeldBack = true;
        caps[bed]!.set(layer, kept);
      }
      for (const [layer, millimetres] of found.ok ? found.value.amounts[bed]! : []) {
        const isToday = ready.beds[bed]!.response.layers[layer]!.day === 0;
        if (!isToday || wanted[bed]!.has(layer) || !(millimetres > 0)) continue;
        isHeldBack = true;
        caps[bed]!.set(layer, 0);
      }
    });
    if (!isHeldBack || round === mostRounds)
      return {
        objective: found.ok ? objective : null,
        today: checked.map(({ amounts }) => amounts),
        checked,
        trouble: found.ok ? null : found.error,
      };
  }
}

/** The coming weeks' part of an answer in whole steps, never more of a source than there will be. */
function comingWeeks(ready: Ready, found: Found): Amounts {
  const { beds, sources } = ready;
  const left = [...ready.litres];
  beds.forEach(({ response }, bed) => {
    for (const [at, millimetres] of found.amounts[bed]!) {
      const { day, source } = response.layers[at]!;
      if (day === 0) left[source]! -= millimetres * response.areaM2;
    }
  });
  return beds.map(({ response }, bed) => {
    const own = new Map<number, number>();
    for (const [at, millimetres] of found.amounts[bed]!) {
      const { day, source } = response.layers[at]!;
      if (day === 0) continue;
      const step = stepLitresOf(sources[source]!);
      const wanted = Math.round((millimetres * response.areaM2) / step);
      const litres = Math.min(wanted, Math.floor(left[source]! / step + 1e-6)) * step;
      if (!(litres > 0)) continue;
      left[source]! -= litres;
      own.set(at, litres / response.areaM2);
    }
    return own;
  });
}

const distanceOf = ({ beds, question }: Ready, amounts: Amounts): number =>
  beds.reduce(
    (sum, { response, perKilogram }, bed) =>
      sum + bedDistance(response, amounts[bed]!, perKilogram, question.weights),
    0,
  );

/** Told how many steps of a plan are done, of how many. */
export type TellProgress = (progress: { readonly done: number; readonly of: number }) => void;

/** Steps after the beds were asked: this week, the coming weeks, the whole told. */
const stepsAfterBeds = 3;

/** This week's part alone: what is done today, by the full model, and nothing about later weeks. */
export function todayOf(
  question: PlanQuestion,
  solve: Solver,
): Result<{ readonly ready: Ready } & Pick<Week, 'today' | 'trouble'>, PlanTrouble> {
  const ready = readyFor(question);
  return ready.ok ? success({ ready: ready.value, ...thisWeek(ready.value, solve) }) : ready;
}

/** Makes the plan, without the words about it: what `makePlan` tells. */
export function planOf(
  question: PlanQuestion,
  solve: Solver,
  tell?: TellProgress,
): Result<MadePlan, PlanTrouble> {
  const beds = question.beds.length;
  const of = beds + stepsAfterBeds;
  const prepared = readyFor(question, (done) => tell?.({ done, of }));
  if (!prepared.ok) return prepared;
  const ready = prepared.value;
  const week = thisWeek(ready, solve);
  tell?.({ done: beds + 1, of });
  const rest = solved(ready, solve, week.today, noCaps(ready.beds.length));
  tell?.({ done: beds + 2, of });
  const coming = rest.ok
    ? comingWeeks(ready, rest.value)
    : ready.beds.map((): ReadonlyMap<number, number> => new Map());
  return success({
    ready,
    checked: week.checked,
    today: week.today,
    coming,
    objective: week.objective,
    settledObjective: rest.ok ? rest.value.objective : distanceOf(ready, week.today),
    trouble: week.trouble,
  });
}

/** Beds with this week's and the coming weeks' layers, by the full model. */
export const answersToEnd = ({ ready, today, coming }: MadePlan): readonly BedAnswer[] =>
  ready.beds.map((_bed, at) =>
    answerWithAmounts(ready, at, new Map([...today[at]!, ...coming[at]!])),
  );

/**
 * The weekly plan: what goes where this week, what may follow, where the rest goes, what to collect
 * next, and what each of it does, by the programme and by the full model.
 *
 * @param solve a solver of linear programmes with whole columns; where it fails, `simpleAmounts`
 *   stands in for it and the answer says so
 * @returns fails on what only the gardener can settle: no bed, pins for what is not there
 */
export function makePlan(
  question: PlanQuestion,
  solve: Solver,
  tell?: TellProgress,
): Result<PlanAnswer, PlanTrouble> {
  const made = planOf(question, solve, tell);
  if (!made.ok) return made;
  const plan = made.value;
  const { ready } = plan;
  const mends = mendMoves(plan);
  if (question.sources.length === 0 && mends.length === 0)
    return failure({ kind: 'nothing to lay' });
  const toEnd = answersToEnd(plan);
  const { lines, leftOut, coming } = linesOf(plan, toEnd);
  const laid = ready.sources.map((source) =>
    lines
      .flatMap(({ layers }) => layers)
      .filter(({ sourceId }) => sourceId === source.id)
      .reduce((sum, { amount }) => sum + amount.litres, 0),
  );
  const mow = mowAdvice(plan, solve);
  tell?.({
    done: question.beds.length + stepsAfterBeds,
    of: question.beds.length + stepsAfterBeds,
  });
  return success({
    today: question.today,
    lines,
    leftOut,
    coming,
    sources: sourceAccounts(question, ready.sources, laid),
    effects: planEffects(plan, toEnd),
    mends,
    mow,
    how:
      plan.trouble === null && plan.objective !== null
        ? { kind: 'solved', objective: plan.objective, rounded: plan.settledObjective }
        : {
            kind: 'simple rule',
            because: plan.trouble ?? { kind: 'solver failed', reason: 'no answer' },
          },
  });
}
