import type { DecayDay } from '../cover/decay';
import { lyingCarbon, type ResidueClass } from '../cover/residueClass';
import { freeStep, starvedStep } from '../cover/tieUp';
import { move, poolIndex, type BedState } from './bedState';
import type { Coefficients } from './coefficients';
import { flowIndex } from './flows';

const flow = {
  coverEaten: flowIndex('coverResidue', 'coverMicrobes', 'eaten'),
  coverHumified: flowIndex('coverMicrobes', 'coverHumus', 'humified'),
  coverReleased: flowIndex('coverMicrobes', 'coverFree', 'released'),
  coverHeld: flowIndex('coverFree', 'coverMicrobes', 'held back'),
  soilHeld: flowIndex('mineralTop', 'coverMicrobes', 'held back from the soil'),
  dugEaten: flowIndex('dugResidue', 'dugMicrobes', 'eaten'),
  dugHumified: flowIndex('dugMicrobes', 'dugHumus', 'humified'),
  dugReleased: flowIndex('dugMicrobes', 'mineralTop', 'released'),
  dugHeld: flowIndex('mineralTop', 'dugMicrobes', 'held back'),
  slowCover: flowIndex('slow', 'coverFree', 'released from compost'),
  slowSoil: flowIndex('slow', 'mineralTop', 'released from compost'),
} as const;

/** The day's normalised days: of the soil, and of residues lying on top (air, wetness of the cover). */
export interface DecayClocks {
  readonly soil: number;
  readonly surface: number;
}

function residueDays(item: ResidueClass, clocks: DecayClocks, c: Coefficients): number {
  if (item.placement === 'dug') return clocks.soil;
  if (item.placement === 'hoed') return clocks.soil * c.hoedRate;
  const place =
    item.materialClass === 'green'
      ? c.surfaceRateGreen
      : c.surfaceRateGreen * c.surfaceRateMatureShare;
  return clocks.surface * place;
}

/** Writes a class's step into the flows and its carbon; `fromSoil` is what of a tie-up the soil gave. */
function settle(
  state: BedState,
  flows: Float64Array,
  item: ResidueClass,
  step: DecayDay,
  fromSoil: number,
): void {
  const laid = item.placement === 'laid';
  move(state, flows, laid ? flow.coverEaten : flow.dugEaten, Math.max(0, step.eaten));
  move(state, flows, laid ? flow.coverHumified : flow.dugHumified, Math.max(0, step.humified));
  if (step.released >= 0)
    move(state, flows, laid ? flow.coverReleased : flow.dugReleased, step.released);
  else {
    move(state, flows, laid ? flow.soilHeld : flow.dugHeld, fromSoil);
    if (laid) move(state, flows, flow.coverHeld, Math.max(0, -step.released - fromSoil));
  }
  item.residue = step.after.residue;
  item.microbes = step.after.microbes;
  item.humus = step.after.humus;
}

/** Waits for nitrogen this day, on top or dug and hoed in. */
const isWaiting = (item: ResidueClass, onTop: boolean): boolean =>
  item.wanted > 0 && (item.placement === 'laid') === onTop;

/** Shares a supply among the classes that wait for it, in proportion to what each wants. */
function shareOut(
  state: BedState,
  onTop: boolean,
  wanted: number,
  supply: number,
  clocks: DecayClocks,
  c: Coefficients,
): void {
  if (wanted <= supply) return;
  for (const item of state.classes)
    if (isWaiting(item, onTop))
      starvedStep(
        item,
        residueDays(item, clocks, c),
        clocks.soil,
        item.wanted,
        (supply * item.wanted) / wanted,
        c,
        item.today.turned,
      );
}

/**
 * A day of decomposition (model 3): releasing classes first; then those that tie up share what
 * there is. In the cover that is at most 20 % of its free nitrogen, then at most 0.1 % of the
 * soil's nitrate; dug in or hoed in, all of the nitrate of 0-30 cm.
 *
 * @returns the share of the compost lying on top that still lies; classes keep theirs themselves
 */
export function decayDay(
  state: BedState,
  flows: Float64Array,
  clocks: DecayClocks,
  c: Coefficients,
): number {
  if (clocks.soil > 0 || clocks.surface > 0) decayClasses(state, flows, clocks, c);
  else standStill(state, c);
  return slowDay(state, flows, clocks, c);
}

/** Frozen: nothing decays, and what lies stays. */
function standStill(state: BedState, c: Coefficients): void {
  for (const item of state.classes)
    if (item.placement === 'laid')
      item.lyingFactor = lyingCarbon(item, c.lyingShareOfMicrobesAndHumus) > 0 ? 1 : 0;
}

function decayClasses(
  state: BedState,
  flows: Float64Array,
  clocks: DecayClocks,
  c: Coefficients,
): void {
  const small = c.lyingShareOfMicrobesAndHumus;
  // e^-l of greens and of browns, once for all classes of a kind
  let greenTurned = -1;
  let matureTurned = -1;
  let wantedOnTop = 0;
  let wantedBelow = 0;
  for (const item of state.classes) {
    // holds what was lying this morning until the day is settled
    if (item.placement === 'laid') item.lyingFactor = lyingCarbon(item, small);
    if (item.materialClass === 'inert') continue;
    let turned = matureTurned;
    if (item.materialClass === 'green') {
      if (greenTurned < 0) greenTurned = Math.exp(-item.parameters.turnover * clocks.soil);
      turned = greenTurned;
    } else if (matureTurned < 0)
      turned = matureTurned = Math.exp(-item.parameters.turnover * clocks.soil);
    const step = freeStep(item, residueDays(item, clocks, c), clocks.soil, c, turned);
    if (step.released >= 0) {
      item.wanted = 0;
      settle(state, flows, item, step, 0);
    } else {
      item.wanted = -step.released;
      if (item.placement === 'laid') wantedOnTop += item.wanted;
      else wantedBelow += item.wanted;
    }
  }
  if (wantedOnTop > 0) tieUpOnTop(state, flows, wantedOnTop, clocks, c);
  if (wantedBelow > 0) tieUpBelow(state, flows, wantedBelow, clocks, c);
  for (const item of state.classes)
    if (item.placement === 'laid')
      item.lyingFactor =
        item.lyingFactor > 0 ? Math.min(1, lyingCarbon(item, small) / item.lyingFactor) : 0;
}

function tieUpOnTop(
  state: BedState,
  flows: Float64Array,
  wanted: number,
  clocks: DecayClocks,
  c: Coefficients,
): void {
  const free = c.coverFreeShareForTieUp * Math.max(0, state.nitrogen[poolIndex.coverFree]!);
  const soil = c.soilShareForCoverTieUp * Math.max(0, state.nitrogen[poolIndex.mineralTop]!);
  shareOut(state, true, wanted, free + soil, clocks, c);
  let used = 0;
  for (const item of state.classes)
    if (isWaiting(item, true)) used += Math.max(0, -item.today.released);
  const soilPart = used > 0 ? Math.max(0, used - free) / used : 0;
  for (const item of state.classes)
    if (isWaiting(item, true))
      settle(state, flows, item, item.today, soilPart * Math.max(0, -item.today.released));
}

function tieUpBelow(
  state: BedState,
  flows: Float64Array,
  wanted: number,
  clocks: DecayClocks,
  c: Coefficients,
): void {
  const supply = Math.max(0, state.nitrogen[poolIndex.mineralTop]!);
  shareOut(state, false, wanted, supply, clocks, c);
  for (const item of state.classes)
    if (isWaiting(item, false))
      settle(state, flows, item, item.today, Math.max(0, -item.today.released));
}

/** Compost and the like release at a fixed rate; what lies on top by the surface clock. */
function slowDay(
  state: BedState,
  flows: Float64Array,
  clocks: DecayClocks,
  c: Coefficients,
): number {
  const { slow } = state;
  const lying = slow.topActive + slow.topInert;
  if (slow.topActive === 0 && slow.dugActive === 0) return lying > 0 ? 1 : 0;
  const fromTop = -slow.topActive * Math.expm1(-c.slowRate * clocks.surface);
  const fromDug = -slow.dugActive * Math.expm1(-c.slowRate * clocks.soil);
  move(state, flows, flow.slowCover, fromTop);
  move(state, flows, flow.slowSoil, fromDug);
  slow.topActive -= fromTop;
  slow.dugActive -= fromDug;
  return lying > 0 ? (lying - fromTop) / lying : 0;
}
