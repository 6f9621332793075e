import type { Cited } from '../reference';
import type { Quantity } from './quantity';

/** What a stuff is made of. Contents are of dry matter. */
export interface StuffRows {
  readonly nitrogenPercent: Cited;
  /** share of dry matter 0-1; held while nitrogen is drawn, so that C:N moves with nitrogen */
  readonly carbonFraction: number;
  /** per cent of fresh weight when just cut (or as kept) and dry to the touch */
  readonly moisturePercent: Cited;
  /** kg fresh per m3 as it is handled, just cut and dry to the touch */
  readonly densityKgPerM3: Cited;
}

/** A container that was weighed full of this stuff. */
export interface WeighedContainer {
  readonly litres: number;
  readonly kilograms: number;
  /** kg water on the outside per kg dry matter when it was weighed */
  readonly outsideWater: Cited;
}

export interface LotInput {
  readonly quantity: Quantity;
  readonly stuff: StuffRows;
  /** litres of the container the quantity is counted in */
  readonly containerLitres: number | null;
  /** outranks the density of the table for containers, volumes and depths */
  readonly weighed: WeighedContainer | null;
  /** per cent of fresh weight in its condition now (limp, crisp), dry to the touch */
  readonly moistureNowPercent: Cited;
  /** kg water on the outside per kg dry matter, by wetness: 0 for dry */
  readonly outsideWater: Cited;
  /** factor on what was said: 1 for plain, spread for "about" and "not sure" */
  readonly certainty: Cited;
  /** how full one container is against another */
  readonly fullness: Cited;
  /** g dry matter per m2 of lawn and cm taken off */
  readonly dryMassPerCentimetre: Cited;
  /** how dense what lies at a typed depth may be, as a factor on the density */
  readonly depthFactor: Cited;
  /** area a depth lies on; null where no depth can come */
  readonly areaM2: number | null;
}

/** Litres of the counting container. Throws when there is none: a count is then no amount. */
export const countedLitres = (input: LotInput): number => {
  if (input.containerLitres === null) throw new Error('A counted quantity needs its container');
  return input.containerLitres;
};
