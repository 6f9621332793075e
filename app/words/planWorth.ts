import type { Distance, MendMove, PlanEffects, PlanTrouble } from '../core/plan/answer';
import { estimateWithUnit } from './figures';
import { dayIn, fromTo, planAmountWords, planSourceWords, type PlanNames } from './planWords';

/** Too much, too little and bare ground, as grams of nitrogen. */
export const distanceWords = ({ nitrogen, ground }: Distance, { units }: PlanNames): string =>
  estimateWithUnit(nitrogen + ground, units.nitrogen);

const distanceOf = ({ nitrogen, ground }: Distance): number => nitrogen + ground;

/** What one way of laying leaves to be wished for, set against laying nothing. */
const against = (grams: string, distance: Distance, nothing: Distance): string => {
  const change = distanceOf(distance) - distanceOf(nothing);
  // so little of a difference is none
  if (Math.abs(change) < 0.02 * distanceOf(nothing)) return `${grams}, no change`;
  return change < 0 ? `${grams}, better` : `${grams}, worse`;
};

/** The plan against doing nothing and against all on the nearest bed. */
export function effectWords(effects: PlanEffects, names: PlanNames): string {
  const grams = (distance: Distance): string => distanceWords(distance, names);
  const { doNothing, plan, planToEnd, allOnNearest } = effects;
  const told = (distance: Distance): string => against(grams(distance), distance, doNothing);
  const strongest = (['stop', 'caution'] as const).find((weight) =>
    allOnNearest.cautions.some((caution) => caution.weight === weight),
  );
  const isNearer = distanceOf(allOnNearest) < distanceOf(plan);
  const speaks =
    strongest === undefined
      ? ''
      : isNearer
        ? `, but a ${strongest} speaks against it, which these sums do not count`
        : `, and a ${strongest} speaks against it`;
  const nearest =
    allOnNearest.bedId === null
      ? ''
      : ` With all the clippings on ${names.bed(allOnNearest.bedId)}, the nearest: ${told(allOnNearest)}${speaks}.`;
  return (
    'What is amiss on all beds, as nitrogen: too little, too much, and ground that lies bare. ' +
    `With nothing laid: ${grams(doNothing)}. With this plan: ${told(plan)}. ` +
    `With the coming weeks too, as expected: ${told(planToEnd)}.${nearest}`
  );
}

/** What would make an over-fed bed better, and what that buys. */
export function mendWords(move: MendMove, names: PlanNames): string {
  const { units } = names;
  switch (move.kind) {
    case 'rake and carry': {
      const to = move.toBedId === null ? 'the heap' : names.bed(move.toBedId);
      const gain =
        move.to === null
          ? ''
          : ` On ${names.bed(move.toBedId ?? '')} ${fromTo(move.to.before, move.to.after)}.`;
      return `Take off ${names.bed(move.fromBedId)} what was laid on ${dayIn(move.laidOn, names)}, and give it to ${to}. It is about ${estimateWithUnit(move.dryKilograms, units.mass)} dry, with ${estimateWithUnit(move.nitrogenGrams, units.nitrogen)} of nitrogen still in it. In hand and to come on ${names.bed(move.fromBedId)}: ${fromTo(move.from.before, move.from.after)}.${gain}`;
    }
    case 'hungry neighbour':
      return `Plant something hungry between what stands on ${names.bed(move.bedId)}: ${estimateWithUnit(move.surplus, units.nitrogenPerArea)} lie there with nobody to take them.`;
    case 'browns from now on': {
      const { buys } = move;
      const rule = `From now on give ${names.bed(move.bedId)} leaves or straw where its ground shows, and no more greens.`;
      return buys === null
        ? rule
        : `${rule} ${planAmountWords(buys.amount, names)} of ${planSourceWords(buys.ref, names)} today would hold some back. In hand and to come: ${fromTo(buys.before, buys.after)}.`;
    }
  }
}

/** Why there is no plan, or only a simple one. */
export function planTroubleWords(trouble: PlanTrouble, names: PlanNames): string {
  switch (trouble.kind) {
    case 'no beds':
      return 'There is no bed yet to plan for.';
    case 'nothing to lay':
      return 'Nothing is cut, nothing is kept and nothing should grow: there is nothing to share out.';
    case 'pinned too much':
      return `You asked for ${estimateWithUnit(trouble.asked, names.units.volume)} of something of which there are ${estimateWithUnit(trouble.there, names.units.volume)}: ask for less, or log what else was cut.`;
    case 'pinned unknown':
      return 'You asked for something that is no longer there: take that wish out.';
    case 'no solution':
      return 'What was asked for cannot all be kept at once.';
    case 'took too long':
      return `Weighing all beds against each other took more than ${trouble.seconds} seconds.`;
    case 'solver failed':
      return 'The part that weighs all beds against each other did not start.';
  }
}

/** Said with a plan by the simple rule. */
export const simpleRuleWords =
  'So a simple rule was used: one thin layer to the hungriest bed first, then to the next.';
