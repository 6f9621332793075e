import type { Coefficients } from '../season/coefficients';
import type { MaterialClass, Placement } from '../season/input';
import { decayParameters, newDecayDay, type DecayDay, type DecayParameters } from './decay';

/**
 * Residue [g C/m2] that is eaten whole on the day it is met (ours). What decays by a share a day
 * never ends, and a bed of ten years would carry every layer it was ever given. At the narrowest C:N
 * of the model a crumb holds 1.3e-7 g of nitrogen, an eighth of what the season is held to against a
 * solver of its equations, and it goes by the flow that all residue goes by.
 */
export const crumb = 1e-6;

/**
 * Plant material that decays alike on one bed: placement x green or mature x C:N. Nothing
 * is averaged across classes; a mixed C:N would hide that browns hold nitrogen while greens free it.
 * Carbon in g C per m2, changed in place by the day.
 */
export interface ResidueClass {
  readonly placement: Placement;
  readonly materialClass: Exclude<MaterialClass, 'slow'>;
  readonly parameters: DecayParameters;
  readonly isGreen: boolean;
  /** neither decays nor is eaten where it is */
  readonly isInert: boolean;
  /** lies on the soil: what it frees goes to the cover, what it ties up comes from there first */
  readonly onTop: boolean;
  /** what a normalised day of the soil, and of the surface, is for its residue */
  readonly soilRate: number;
  readonly surfaceRate: number;
  /** several that earlier seasons left, joined: nothing new comes to it (`joinLeftOvers`) */
  isLeftOver: boolean;
  /** residue that is eaten whole on the day it is met [g C/m2] */
  crumb: number;
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

/** What a normalised day of the soil is for residue: hoed in goes slower than dug in. */
function soilRateOf(placement: Placement, c: Coefficients): number {
  if (placement === 'laid') return 0;
  return placement === 'dug' ? 1 : c.hoedRate;
}

/** What a day of the surface is for residue on top: slower still, browns at half the speed of greens. */
function surfaceRateOf(
  placement: Placement,
  materialClass: ResidueClass['materialClass'],
  c: Coefficients,
): number {
  if (placement !== 'laid') return 0;
  return c.surfaceRateGreen * (materialClass === 'green' ? 1 : c.surfaceRateMatureShare);
}

const digits = (carbonToNitrogen: number): string => carbonToNitrogen.toPrecision(10);

/** Names a class among those of a bed. */
export const classKey = ({ placement, materialClass, parameters }: ResidueClass): string =>
  `${placement} ${materialClass} ${digits(parameters.carbonToNitrogen)}`;

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
    if (known.isLeftOver) continue;
    const { carbonToNitrogen: own } = known.parameters;
    if (own === carbonToNitrogen) return known;
    // written out for neighbours alone: digits are slow to make
    const isNear = Math.abs(own - carbonToNitrogen) <= 1e-9 * carbonToNitrogen;
    if (isNear && digits(own) === digits(carbonToNitrogen)) return known;
  }
  const parameters = decayParameters(materialClass, carbonToNitrogen, coefficients);
  const opened = newClass(placement, materialClass, parameters, coefficients);
  classes.push(opened);
  return opened;
}

/** A class with nothing in it. */
export const newClass = (
  placement: Placement,
  materialClass: ResidueClass['materialClass'],
  parameters: DecayParameters,
  coefficients: Coefficients,
): ResidueClass => ({
  placement,
  materialClass,
  parameters,
  isGreen: materialClass === 'green',
  isInert: materialClass === 'inert',
  onTop: placement === 'laid',
  // one by one: an object spread into another is slow to make, and a draw makes many classes
  soilRate: soilRateOf(placement, coefficients),
  surfaceRate: surfaceRateOf(placement, materialClass, coefficients),
  isLeftOver: false,
  crumb,
  residue: 0,
  microbes: 0,
  humus: 0,
  lyingFactor: 1,
  lyingDry: 0,
  today: newDecayDay(),
  wanted: 0,
  fromSoil: 0,
});

/** Carbon still lying to be seen: residue and a small share of what microbes and humus hold (model 2). */
export const lyingCarbon = (item: ResidueClass, shareOfMicrobesAndHumus: number): number =>
  item.residue + shareOfMicrobesAndHumus * (item.microbes + item.humus);

export const residueNitrogen = (item: ResidueClass): number =>
  item.residue / item.parameters.carbonToNitrogen;
export const microbeNitrogen = (item: ResidueClass): number =>
  item.microbes / item.parameters.microbeCarbonToNitrogen;
export const humusNitrogen = (item: ResidueClass): number =>
  item.humus / item.parameters.humusCarbonToNitrogen;
