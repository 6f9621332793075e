import type { Coefficients } from '../season/coefficients';
import type { MaterialClass, Placement } from '../season/input';
import { decayParameters, type DecayParameters } from './decay';

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
  /** share of what was lying this morning that still lies tonight; for drawing layers only */
  lyingFactor: number;
}

/** Finds or opens the class that a material of this kind and C:N belongs to. */
export function classFor(
  classes: ResidueClass[],
  placement: Placement,
  materialClass: Exclude<MaterialClass, 'slow'>,
  carbonToNitrogen: number,
  coefficients: Coefficients,
): ResidueClass {
  const key = `${placement} ${materialClass} ${carbonToNitrogen.toPrecision(10)}`;
  const known = classes.find((candidate) => candidate.key === key);
  if (known) return known;
  const opened: ResidueClass = {
    key,
    placement,
    materialClass,
    parameters: decayParameters(materialClass, carbonToNitrogen, coefficients),
    residue: 0,
    microbes: 0,
    humus: 0,
    lyingFactor: 1,
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
