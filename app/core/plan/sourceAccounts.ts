import type { PlanAmount, RestChoice, SourceAccount } from './answer';
import { keptLeaves, leavesToMix } from './keptLeaves';
import type { PlanQuestion, PlanSource } from './question';

/** So many litres of a source; less than half a bucket is told in litres. */
export function amountOf(source: PlanSource, litres: number): PlanAmount {
  const { oneMillimetre, measure, stepLitres } = source;
  const isCounted = measure !== null && (litres === 0 || litres > stepLitres * (1 - 1e-6));
  return {
    litres,
    counted: isCounted
      ? { containerId: measure.containerId, count: litres / measure.litres }
      : null,
    freshKilograms: litres * oneMillimetre.freshKgPerM2,
    dryKilograms: litres * oneMillimetre.dryKgPerM2,
    nitrogenGrams: litres * oneMillimetre.nitrogen,
  };
}

type Leaves = Extract<RestChoice['place'], { to: 'heap' }>['leaves'];

/** Leaves, or other browns in store, that bring a heap of the rest to the ratio wanted. */
function leavesFor(
  question: PlanQuestion,
  rest: PlanSource,
  litres: number,
  litresLeft: (source: PlanSource) => number,
): Leaves {
  const browns = question.sources
    .filter(({ role, ref }) => role === 'browns' && ref.source === 'stock')
    .sort((one, other) => litresLeft(other) - litresLeft(one) || (one.id < other.id ? -1 : 1));
  const leaves =
    browns.find(({ oneMillimetre }) => oneMillimetre.materialId.startsWith('leaves')) ?? browns[0];
  if (!leaves || !(leaves.oneMillimetre.freshKgPerM2 > 0)) return null;
  const wantedLitres = leavesToMix(question, rest, litres, leaves);
  return {
    sourceId: leaves.id,
    litres: wantedLitres,
    bags: question.leafBagLitres === null ? null : wantedLitres / question.leafBagLitres,
    litresOnHand: litresLeft(leaves),
    carbonToNitrogen: question.weights.heapCarbonToNitrogen,
  };
}

/** Where the rest of greens can go: lawn first, then the heap with leaves, or dried and kept. */
function choicesFor(
  question: PlanQuestion,
  source: PlanSource,
  litres: number,
  litresLeft: (source: PlanSource) => number,
): readonly RestChoice[] {
  const lawn = question.lawns.find(({ lawnId }) => lawnId === source.lawnId);
  const isCut = source.ref.source === 'mowing';
  const isTreated = source.heldBack !== null;
  const heap: RestChoice = {
    place: {
      to: 'heap',
      stockId: question.heapStockId,
      leaves: leavesFor(question, source, litres, litresLeft),
    },
    not: isTreated ? 'treated' : question.heapStockId === null ? 'no heap' : null,
  };
  const store: RestChoice = {
    place: { to: 'dry and store', millimetresSpread: question.weights.spreadMillimetres },
    not: isTreated ? 'treated' : source.isSoaked ? 'soaked' : null,
  };
  const hasOther = heap.not === null || store.not === null;
  return [
    {
      place: { to: 'lawn', millimetres: lawn ? litres / lawn.areaM2 : 0 },
      not: isCut && hasOther ? 'already collected' : null,
    },
    heap,
    store,
  ];
}

/**
 * Every source that is there this week: what was, what is laid, and where the rest goes. The rest is
 * what there was less what is laid, so that nothing is lost between them.
 *
 * @param laidLitres by place in `sources`
 */
export function sourceAccounts(
  question: PlanQuestion,
  sources: readonly PlanSource[],
  laidLitres: readonly number[],
): readonly SourceAccount[] {
  const [today] = question.days;
  const kept = keptLeaves(question);
  const litresLeft = (source: PlanSource): number =>
    source.litres - (laidLitres[sources.indexOf(source)] ?? 0);
  return sources.flatMap((source, at): SourceAccount[] => {
    if (source.day !== null && source.day !== today) return [];
    const laid = laidLitres[at] ?? 0;
    const rest = Math.max(0, source.litres - laid);
    return [
      {
        sourceId: source.id,
        ref: source.ref,
        role: source.role,
        was: amountOf(source, source.litres),
        laid: amountOf(source, laid),
        rest: amountOf(source, rest),
        kept: kept.has(source.id) ? amountOf(source, Math.min(rest, kept.get(source.id)!)) : null,
        choices:
          source.role === 'greens' && source.ref.source !== 'stock'
            ? choicesFor(question, source, rest, litresLeft)
            : [],
        heldBack: source.heldBack,
      },
    ];
  });
}
