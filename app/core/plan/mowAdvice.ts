import type { MowAdvice } from './answer';
import type { Solver } from './linearProgramme';
import type { MadePlan } from './makePlan';
import type { PlanLawn } from './question';
import { amountOf } from './sourceAccounts';
import { noCaps, solved } from './settle';

/** What a bag is where there is none [L]. */
const bagWithout = 10;

/** Litres of a source that the plan lays, and the beds that get them. */
function takenOf({ ready, today, coming }: MadePlan, source: number) {
  let litres = 0;
  const bedIds: string[] = [];
  ready.beds.forEach(({ response, bed, pinned }, at) => {
    let own = pinned
      .filter((one) => one.source === source)
      .reduce((sum, { millimetres }) => sum + millimetres * response.areaM2, 0);
    for (const [place, millimetres] of [...today[at]!, ...coming[at]!])
      if (response.layers[place]!.source === source) own += millimetres * response.areaM2;
    if (own > 0) bedIds.push(bed.bedId);
    litres += own;
  });
  return { litres, bedIds };
}

/** Distance that one bag more of a source would take away: the programme solved once more [g N]. */
function worthOfOneMore(plan: MadePlan, solve: Solver, source: number, bagLitres: number): number {
  const { ready } = plan;
  const isToday = ready.sources[source]!.day === ready.question.today;
  const settled = isToday ? null : plan.today;
  const caps = noCaps(ready.beds.length);
  const more = ready.litres.map((litres, at) => (at === source ? litres + bagLitres : litres));
  const before = solved(ready, solve, settled, caps);
  const after = solved(ready, solve, settled, caps, more);
  return before.ok && after.ok ? Math.max(0, before.value.objective - after.value.objective) : 0;
}

/** Bags in halves, rounded up; never more than is expected, rounded up as well. */
const halves = (litres: number, bag: number): number => Math.ceil((2 * litres) / bag - 1e-6) / 2;

function adviceFor(plan: MadePlan, solve: Solver, lawn: PlanLawn): MowAdvice {
  const { ready } = plan;
  const at = ready.sources.findIndex(({ id }) => id === lawn.sourceId);
  const source = ready.sources[at];
  const common = {
    lawnId: lawn.lawnId,
    mowsOn: lawn.mowsOn,
    expectedLitres: lawn.expectedLitres,
    bag: lawn.bag,
  };
  const nothing = {
    litres: 0,
    counted: null,
    freshKilograms: 0,
    dryKilograms: 0,
    nitrogenGrams: 0,
    bags: lawn.bag ? 0 : null,
  };
  if (lawn.heldBack)
    return {
      ...common,
      collect: nothing,
      why: { kind: 'held back', caution: lawn.heldBack },
      worthOfOneMore: 0,
    };
  if (!source)
    return { ...common, collect: nothing, why: { kind: 'nothing expected' }, worthOfOneMore: 0 };
  const { litres, bedIds } = takenOf(plan, at);
  const bags = lawn.bag ? halves(litres, lawn.bag.litres) : null;
  const collected = lawn.bag && bags !== null ? bags * lawn.bag.litres : litres;
  const isWaiting = ready.sources.some(
    ({ ref, lawnId, litres: there }) =>
      ref.source === 'mowing' && lawnId === lawn.lawnId && there > 0,
  );
  return {
    ...common,
    collect: { ...amountOf(source, collected), bags },
    why:
      litres > 0
        ? { kind: 'beds', bedIds }
        : isWaiting
          ? { kind: 'enough waiting' }
          : { kind: 'no bed wants it' },
    worthOfOneMore: worthOfOneMore(plan, solve, at, lawn.bag?.litres ?? bagWithout),
  };
}

/** What to collect of each lawn's next mowing, and what one bag more would be worth. */
export const mowAdvice = (plan: MadePlan, solve: Solver): readonly MowAdvice[] =>
  plan.ready.question.lawns.map((lawn) => adviceFor(plan, solve, lawn));
