import type { DayNumber } from '../days';
import { bedLimits } from './bedLimits';
import type { BedStanding, LeftOutReason } from './answer';
import type { MadePlan } from './makePlan';
import { isPinned } from './ready';
import { noCaps, stepGain, stepOf } from './settle';

/** Distance that the best of one step of anything would take away [g N]; 0 where nothing would. */
function bestStep(plan: MadePlan, at: number, left: readonly number[]): number {
  const { ready } = plan;
  const { response } = ready.beds[at]!;
  const limits = ready.beds.map((bed, place) =>
    place === at ? bedLimits(bed.response, ready.sources, ready.question.limits) : [],
  );
  let best = 0;
  response.layers.forEach(({ day, source, blocked }, layer) => {
    if (day !== 0 || blocked !== null || isPinned(ready, at, source)) return;
    const step = stepOf(ready, at, layer);
    const part = { bed: at, layer, source };
    const later = plan.coming[at]!;
    const gain = stepGain(
      ready,
      part,
      step,
      new Map(),
      later,
      noCaps(ready.beds.length),
      limits,
      left,
    );
    best = Math.max(best, gain);
  });
  return best;
}

/** Why a bed gets nothing this week, and when that changes. */
export function leftOutReason(
  plan: MadePlan,
  at: number,
  before: BedStanding,
  left: readonly number[],
): { readonly reason: LeftOutReason; readonly from: DayNumber | null } {
  const { ready, today, checked } = plan;
  const { question, sources } = ready;
  const { bed, response, aim } = ready.beds[at]!;
  const only = (reason: LeftOutReason, from: DayNumber | null = null) => ({ reason, from });
  if (question.wishes.pins.some(({ bedId, sourceId }) => bedId === bed.bedId && sourceId === null))
    return only({ kind: 'pinned' });

  const { stopped } = checked[at]!;
  if (stopped) return only({ kind: 'caution', caution: stopped }, stopped.date);
  const isHungry = before.supply < question.weights.lowShare * aim.need;
  const isBare = before.covered < question.limits.numbers['cover thin'];
  if (!isHungry && !isBare) return only({ kind: 'enough' });
  const walks = today.filter((own, place) => {
    const { pinned, bed: one } = ready.beds[place]!;
    return own.size > 0 || pinned.length > 0 || one.isWalkedToday === true;
  });
  const gainWithAll = bestStep(plan, at, ready.litres);
  if (gainWithAll > 0) {
    const isFull = question.wishes.bedsADay !== null && walks.length >= question.wishes.bedsADay;
    return isFull && bestStep(plan, at, left) > 0
      ? only({ kind: 'beds a day', worth: gainWithAll })
      : only({ kind: 'better elsewhere' });
  }

  const offers = response.layers.filter(
    ({ day, source }) => day === 0 && ready.litres[source]! > 0,
  );
  if (offers.length === 0) return only({ kind: 'nothing on hand' });
  const blocked = offers.flatMap((offer) => (offer.blocked === null ? [] : [offer.blocked]));
  const [first] = blocked;
  if (first && first.kind !== 'enough' && (isHungry || blocked.length === offers.length))
    return only({ kind: 'caution', caution: first }, first.date);
  const hasBrowns = offers.some(({ source }) => sources[source]!.role === 'browns');
  if (isBare && !isHungry && !hasBrowns) return only({ kind: 'only browns' }, first?.date ?? null);
  return only({ kind: 'enough' }, first?.date ?? null);
}
