import { lyingCarbon, type ResidueClass } from '../cover/residueClass';
import { freeStep, starvedStep, type ClassStep } from '../cover/tieUp';
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
function settle(state: BedState, flows: Float64Array, step: ClassStep, fromSoil: number): void {
  const { item, after } = step;
  const laid = item.placement === 'laid';
  const eaten = (item.residue - after.residue) / item.parameters.carbonToNitrogen;
  const humified = (after.humus - item.humus) / item.parameters.humusCarbonToNitrogen;
  move(state, flows, laid ? flow.coverEaten : flow.dugEaten, Math.max(0, eaten));
  move(state, flows, laid ? flow.coverHumified : flow.dugHumified, Math.max(0, humified));
  if (step.released >= 0)
    move(state, flows, laid ? flow.coverReleased : flow.dugReleased, step.released);
  else {
    const held = -step.released;
    move(state, flows, laid ? flow.soilHeld : flow.dugHeld, fromSoil);
    if (laid) move(state, flows, flow.coverHeld, Math.max(0, held - fromSoil));
  }
  item.residue = after.residue;
  item.microbes = after.microbes;
  item.humus = after.humus;
}

interface Wanting {
  readonly step: ClassStep;
  readonly days: number;
}

/** Shares a supply among classes that tie up, in proportion to what each wants. */
function shareOut(
  wanting: readonly Wanting[],
  supply: number,
  turnoverDays: number,
  c: Coefficients,
): ClassStep[] {
  const wanted = wanting.reduce((sum, one) => sum - one.step.released, 0);
  if (wanted <= supply) return wanting.map((one) => one.step);
  return wanting.map(({ step, days }) =>
    starvedStep(
      step.item,
      days,
      turnoverDays,
      -step.released,
      (supply * -step.released) / wanted,
      c,
    ),
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
  const small = c.lyingShareOfMicrobesAndHumus;
  const wantingCover: Wanting[] = [];
  const wantingSoil: Wanting[] = [];
  for (const item of state.classes) {
    // holds what was lying this morning until the day is settled
    item.lyingFactor = lyingCarbon(item, small);
    const days = residueDays(item, clocks, c);
    const step = freeStep(item, days, clocks.soil, c);
    if (step.released >= 0) settle(state, flows, step, 0);
    else (item.placement === 'laid' ? wantingCover : wantingSoil).push({ step, days });
  }

  if (wantingCover.length > 0) {
    const free = c.coverFreeShareForTieUp * Math.max(0, state.nitrogen[poolIndex.coverFree]!);
    const soil = c.soilShareForCoverTieUp * Math.max(0, state.nitrogen[poolIndex.mineralTop]!);
    const steps = shareOut(wantingCover, free + soil, clocks.soil, c);
    const used = steps.reduce((sum, step) => sum + Math.max(0, -step.released), 0);
    const soilPart = used > 0 ? Math.max(0, used - free) / used : 0;
    for (const step of steps) settle(state, flows, step, soilPart * Math.max(0, -step.released));
  }
  if (wantingSoil.length > 0) {
    const supply = Math.max(0, state.nitrogen[poolIndex.mineralTop]!);
    for (const step of shareOut(wantingSoil, supply, clocks.soil, c))
      settle(state, flows, step, Math.max(0, -step.released));
  }

  for (const item of state.classes)
    item.lyingFactor =
      item.lyingFactor > 0 ? Math.min(1, lyingCarbon(item, small) / item.lyingFactor) : 0;
  return slowDay(state, flows, clocks, c);
}

/** Compost and the like release at a fixed rate; what lies on top by the surface clock. */
function slowDay(
  state: BedState,
  flows: Float64Array,
  clocks: DecayClocks,
  c: Coefficients,
): number {
  const lying = state.slow.topActive + state.slow.topInert;
  const fromTop = -state.slow.topActive * Math.expm1(-c.slowRate * clocks.surface);
  const fromDug = -state.slow.dugActive * Math.expm1(-c.slowRate * clocks.soil);
  move(state, flows, flow.slowCover, fromTop);
  move(state, flows, flow.slowSoil, fromDug);
  state.slow.topActive -= fromTop;
  state.slow.dugActive -= fromDug;
  return lying > 0 ? (lying - fromTop) / lying : 0;
}
