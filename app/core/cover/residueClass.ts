import type { Coefficients } from '../season/coefficients';
import type { MaterialClass, Placement } from '../season/input';
import { decayParameters, newDecayDay, type DecayDay, type DecayParameters } from './decay';

/**
 * Plant material that decays alike on one bed: placement x green or mature x C:N. Each material
 * keeps its own pools; a mixed C:N would hide that browns hold nitrogen while greens free it.
 * Carbon in g C per m2, changed in place by the day.
 */
export interface ResidueClass {
  readonly key: string;
  readonly placement: Placement;
  readonly materialClass: Exclude<MaterialClass, 'slow'>;
  readonly parameters: DecayParameters;
  residue: number;
  microbes: number;
  humus: number;
  /** share of what was lying this morning that still lies tonight; 1 where nothing lies on top */
  lyingFactor: number;
  /** dry matter of its layers on top that still lies [kg/m2] */
  lyingDry: number;
  /** the step of the day, for the day's own use */
  readonly today: DecayDay;
  /** g N/m2 it would tie up today if there were enough; 0 while it releases. For the day's own use */
  wanted: number;
  /** of what it ties up today, what the soil gives. For the day's own use */
  fromSoil: number;
}

const keyOf = (placement: Placement, materialClass: string, carbonToNitrogen: number): string =>
  `${placement} ${materialClass} ${carbonToNitrogen.toPrecision(10)}`;

/** Finds or opens the class that a material of this kind and C:N, to ten digits, belongs to. */
export function classFor(
  classes: ResidueClass[],
  placement: Placement,
  materialClass: Exclude<MaterialClass, 'slow'>,
  carbonToNitrogen: number,
  coefficients: Coefficients,
): ResidueClass {
  for (const known of classes) {
    if (known.placement !== placement || known.materialClass !== materialClass) continue;
    const { carbonToNitrogen: own } = known.parameters;
    if (own === carbonToNitrogen) return known;
    // digits are written out only for neighbours
    const isNear = Math.abs(own - carbonToNitrogen) <= 1e-9 * carbonToNitrogen;
    if (isNear && known.key === keyOf(placement, materialClass, carbonToNitrogen)) return known;
  }
  const opened: ResidueClass = {
    key: keyOf(placement, materialClass, carbonToNitrogen),
    placement,
    materialClass,
    parameters: decayParameters(materialClass, carbonToNitrogen, coefficients),
    residue: 0,
    microbes: 0,
    humus: 0,
    lyingFactor: 1,
    lyingDry: 0,
    today: newDecayDay(),
    wanted: 0,
    fromSoil: 0,
  };
  classes.push(opened);
  return opened;
}

/** Carbon still lying to be seen: residue and a small share of what microbes and humus hold (model 2). */
export const lyingCarbon = (item: ResidueClass, shareOfMicrobesAndHumus: number): number =>
  item.residue + shareOfMicrobesAndHumus * (item.microbes + item.humus);

export const residueNitrogen = (item: ResidueClass): number =>
  item.residue / item.parameters.carbonToNitrogen;
export const microbeNitrogen = (item: ResidueClass): number =>
  item.microbes / item.parameters.microbeCarbonToNitrogen;
export const humusNitrogen = (item: ResidueClass): number =>
  item.humus / item.parameters.humusCarbonToNitrogen;
