import { lyingCarbon, type ResidueClass } from '../cover/residueClass';
import { stepFreely, stepStarved } from '../cover/tieUp';
import type { BedState } from './bedState';
import { move, poolIndex, wayOf } from './ways';
import type { Coefficients } from './coefficients';

const { coverFree, mineralTop } = poolIndex;

const flow = {
  coverEaten: wayOf('coverResidue', 'coverMicrobes', 'eaten'),
  coverHumified: wayOf('coverMicrobes', 'coverHumus', 'humified'),
  coverReleased: wayOf('coverMicrobes', 'coverFree', 'released'),
  coverHeld: wayOf('coverFree', 'coverMicrobes', 'held back'),
  soilHeld: wayOf('mineralTop', 'coverMicrobes', 'held back from the soil'),
  dugEaten: wayOf('dugResidue', 'dugMicrobes', 'eaten'),
  dugHumified: wayOf('dugMicrobes', 'dugHumus', 'humified'),
  dugReleased: wayOf('dugMicrobes', 'mineralTop', 'released'),
  dugHeld: wayOf('mineralTop', 'dugMicrobes', 'held back'),
  slowCover: wayOf('slow', 'coverFree', 'released from compost'),
  slowSoil: wayOf('slow', 'mineralTop', 'released from compost'),
} as const;

/** Normalised days in one civil day: of the soil, and of residues on top (air, wetness of the cover). */
export interface DecayClocks {
  readonly soil: number;
  readonly surface: number;
}

/** What lies of a class neither decays nor is eaten today. */
function standStill(item: ResidueClass, c: Coefficients): void {
  item.lyingFactor = lyingCarbon(item, c.lyingShareOfMicrobesAndHumus) > 0 ? 1 : 0;
  item.lyingDry *= item.lyingFactor;
}

/** A class's step becomes its carbon; on top, what then is left of what lay this morning. */
function keepStep(item: ResidueClass, c: Coefficients): void {
  const { after } = item.today;
  const small = c.lyingShareOfMicrobesAndHumus;
  const before = item.onTop ? lyingCarbon(item, small) : 0;
  item.residue = after.residue;
  item.microbes = after.microbes;
  item.humus = after.humus;
  if (!item.onTop) return;
  const factor = before > 0 ? Math.min(1, lyingCarbon(item, small) / before) : 0;
  item.lyingFactor = factor;
  item.lyingDry *= factor;
}

/**
 * The step of a class in the soil that has eaten all, written where it belongs: years of them lie in
 * a bed, and nothing of them is seen, waits or is starved.
 */
function turnOver(item: ResidueClass, lost: number): void {
  const { today, parameters: p } = item;
  const microbes = item.microbes * (1 - lost);
  const turned = item.microbes - microbes;
  const humus = item.humus + p.humusShare * turned;
  today.humified = (humus - item.humus) * p.inHumus;
  today.released = turned * p.inMicrobes - today.humified;
  item.microbes = microbes;
  item.humus = humus;
  item.wanted = 0;
}

/** Writes a class's step that ties nitrogen up into the flows and its carbon. */
function settleWaiting(
  state: BedState,
  flows: Float64Array,
  item: ResidueClass,
  c: Coefficients,
): void {
  const { today, onTop } = item;
  keepStep(item, c);
  move(state, flows, onTop ? flow.coverEaten : flow.dugEaten, Math.max(0, today.eaten));
  move(state, flows, onTop ? flow.coverHumified : flow.dugHumified, Math.max(0, today.humified));
  if (today.released >= 0)
    move(state, flows, onTop ? flow.coverReleased : flow.dugReleased, today.released);
  else holdBack(state, flows, item);
}

function holdBack(state: BedState, flows: Float64Array, item: ResidueClass): void {
  const { fromSoil } = item;
  if (item.onTop) {
    move(state, flows, flow.soilHeld, fromSoil);
    move(state, flows, flow.coverHeld, Math.max(0, -item.today.released - fromSoil));
  } else move(state, flows, flow.dugHeld, fromSoil);
}

/** Waits for nitrogen this day, on top or dug and hoed in. */
const isWaiting = (item: ResidueClass, onTop: boolean): boolean =>
  item.wanted > 0 && item.onTop === onTop;

/**
 * A day of decomposition (model 3): classes that release go first; the others divide what
 * they find. In the cover that is at most 20 % of its free nitrogen, then at most 0.1 % of the
 * soil's nitrate; dug in or hoed in, all of the nitrate of 0-30 cm. What of the cover then still
 * lies is in the `lyingFactor` of its classes and of the compost.
 */
export function decayDay(
  state: BedState,
  flows: Float64Array,
  clocks: DecayClocks,
  c: Coefficients,
): void {
  if (clocks.soil > 0 || clocks.surface > 0) decayClasses(state, flows, clocks, c);
  else for (const item of state.classes) if (item.onTop) standStill(item, c);
  slowDay(state, flows, clocks, c);
}

function decayClasses(
  state: BedState,
  flows: Float64Array,
  clocks: DecayClocks,
  c: Coefficients,
): void {
  const { classes } = state;
  // 1 - e^-l of greens and of browns, once for all classes of a kind
  let greenLost = Number.NaN;
  let matureLost = Number.NaN;
  // what those that release do together: one move for all of them
  let givesOnTop = false;
  let eatenOnTop = 0;
  let humifiedOnTop = 0;
  let releasedOnTop = 0;
  let givesBelow = false;
  let eatenBelow = 0;
  let humifiedBelow = 0;
  let releasedBelow = 0;
  // what those that wait want, and the first of them
  let wantedOnTop = 0;
  let firstOnTop = 0;
  let wantedBelow = 0;
  let firstBelow = 0;
  for (let at = 0; at < classes.length; at++) {
    const item = classes[at]!;
    const { today } = item;
    let lost: number;
    if (item.isGreen) {
      if (!(greenLost >= 0)) greenLost = -Math.expm1(-item.parameters.turnover * clocks.soil);
      lost = greenLost;
    } else if (item.isInert) {
      standStill(item, c);
      continue;
    } else {
      if (!(matureLost >= 0)) matureLost = -Math.expm1(-item.parameters.turnover * clocks.soil);
      lost = matureLost;
    }
    if (item.residue === 0 && !item.onTop) {
      turnOver(item, lost);
      givesBelow = true;
      humifiedBelow += Math.max(0, today.humified);
      releasedBelow += today.released;
      continue;
    }
    today.lost = lost;
    today.turned = 1 - lost;
    today.residueDays = clocks.soil * item.soilRate + clocks.surface * item.surfaceRate;
    today.turnoverDays = clocks.soil;
    stepFreely(item, c);
    const { released } = today;
    if (released < 0) {
      item.wanted = -released;
      if (item.onTop) {
        if (wantedOnTop === 0) firstOnTop = at;
        wantedOnTop -= released;
      } else {
        if (wantedBelow === 0) firstBelow = at;
        wantedBelow -= released;
      }
      continue;
    }
    item.wanted = 0;
    if (item.onTop) {
      givesOnTop = true;
      eatenOnTop += Math.max(0, today.eaten);
      humifiedOnTop += Math.max(0, today.humified);
      releasedOnTop += released;
    } else {
      givesBelow = true;
      eatenBelow += Math.max(0, today.eaten);
      humifiedBelow += Math.max(0, today.humified);
      releasedBelow += released;
    }
    keepStep(item, c);
  }
  if (givesOnTop) {
    move(state, flows, flow.coverEaten, eatenOnTop);
    move(state, flows, flow.coverHumified, humifiedOnTop);
    move(state, flows, flow.coverReleased, releasedOnTop);
  }
  if (givesBelow) {
    move(state, flows, flow.dugEaten, eatenBelow);
    move(state, flows, flow.dugHumified, humifiedBelow);
    move(state, flows, flow.dugReleased, releasedBelow);
  }
  if (wantedOnTop > 0) tieUpOnTop(state, flows, c, wantedOnTop, firstOnTop);
  if (wantedBelow > 0) tieUpBelow(state, flows, c, wantedBelow, firstBelow);
}

function tieUpOnTop(
  state: BedState,
  flows: Float64Array,
  c: Coefficients,
  wanted: number,
  first: number,
): void {
  const { classes, nitrogen } = state;
  const free = c.coverFreeShareForTieUp * Math.max(0, nitrogen[coverFree]!);
  const soil = c.soilShareForCoverTieUp * Math.max(0, nitrogen[mineralTop]!);
  const used = shareOut(classes, true, free + soil, c, wanted, first);
  const soilPart = used > 0 ? Math.max(0, used - free) / used : 0;
  for (let at = first; at < classes.length; at++) {
    const item = classes[at]!;
    if (!isWaiting(item, true)) continue;
    item.fromSoil = soilPart * Math.max(0, -item.today.released);
    settleWaiting(state, flows, item, c);
  }
}

function tieUpBelow(
  state: BedState,
  flows: Float64Array,
  c: Coefficients,
  wanted: number,
  first: number,
): void {
  const { classes, nitrogen } = state;
  shareOut(classes, false, Math.max(0, nitrogen[mineralTop]!), c, wanted, first);
  for (let at = first; at < classes.length; at++) {
    const item = classes[at]!;
    if (!isWaiting(item, false)) continue;
    item.fromSoil = Math.max(0, -item.today.released);
    settleWaiting(state, flows, item, c);
  }
}

/**
 * Shares a supply among the classes that wait for it, in proportion to what each wants.
 *
 * @param wanted what all of them want, g N/m2
 * @param first place of the first of them
 * @returns what they take of it, g N/m2
 */
function shareOut(
  classes: readonly ResidueClass[],
  onTop: boolean,
  supply: number,
  c: Coefficients,
  wanted: number,
  first: number,
): number {
  let used = 0;
  for (let at = first; at < classes.length; at++) {
    const item = classes[at]!;
    if (!isWaiting(item, onTop)) continue;
    if (wanted > supply) stepStarved(item, (supply * item.wanted) / wanted, c);
    used += Math.max(0, -item.today.released);
  }
  return used;
}

/** What goes of a store at a rate; most beds have compost or meal, on top or dug in, and not all four. */
const freedOf = (store: number, rate: number): number =>
  store > 0 ? -Math.expm1(-rate) * store : 0;

/**
 * Compost, manure and meals: what still can be freed goes by N(t) = N (1 - e^(-k t)), meals at a
 * rate of their own; what lies on top by the clock of the surface.
 *
 * @source rows `slowRate` and `mealRate`
 */
function slowDay(state: BedState, flows: Float64Array, clocks: DecayClocks, c: Coefficients): void {
  const { slow } = state;
  const lying = slow.topActive + slow.topInert + slow.topQuick;
  if (slow.topActive + slow.dugActive + slow.topQuick + slow.dugQuick === 0) {
    slow.lyingFactor = 1;
    return;
  }
  const slowOnTop = freedOf(slow.topActive, c.slowRate * clocks.surface);
  const quickOnTop = freedOf(slow.topQuick, c.mealRate * clocks.surface);
  const slowDug = freedOf(slow.dugActive, c.slowRate * clocks.soil);
  const quickDug = freedOf(slow.dugQuick, c.mealRate * clocks.soil);
  const fromTop = slowOnTop + quickOnTop;
  move(state, flows, flow.slowCover, fromTop);
  move(state, flows, flow.slowSoil, slowDug + quickDug);
  slow.topActive -= slowOnTop;
  slow.topQuick -= quickOnTop;
  slow.dugActive -= slowDug;
  slow.dugQuick -= quickDug;
  // what has no nitrogen at all lies with the compost, and stays where there is none of it
  slow.lyingFactor = lying > 0 ? (lying - fromTop) / lying : 1;
}
