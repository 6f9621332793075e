import { decayParameters } from '../../app/core/cover/decay';
import type { Coefficients } from '../../app/core/season/coefficients';
import { typicalCoefficients } from '../../app/tables/coefficients';
import { decayStep, nitrogenReleased } from '../core/cover/oneStep';

/** Days at which the tables print. */
export const printedDays = [14, 28, 70, 168] as const;

/** Our rows with the project's own correction factors taken off: the relations as published. */
export const asPublished: Coefficients = {
  ...typicalCoefficients(),
  greenMicrobeFactor: 1,
  greenHumusFactor: 1,
};

export interface Decomposed {
  /** mg N per g of residue C set free since the start; negative: tied up */
  readonly nitrogen: number;
  /** per cent of residue C gone as carbon dioxide */
  readonly carbon: number;
}

/** One gram of residue carbon on one clock, plenty of nitrogen, in steps of a whole number of days. */
export function decompose(
  materialClass: 'green' | 'mature',
  carbonToNitrogen: number,
  days: number,
  step: number,
): Decomposed {
  const parameters = decayParameters(materialClass, carbonToNitrogen, asPublished);
  const start = { residue: 1, microbes: 0, humus: 0 };
  let now: { residue: number; microbes: number; humus: number } = start;
  let nitrogen = 0;
  for (let day = 0; day < days; day += step) {
    const next = decayStep(now, parameters, step, step, asPublished.assimilation);
    nitrogen += nitrogenReleased(now, next, parameters);
    now = next;
  }
  return {
    nitrogen: 1000 * nitrogen,
    carbon: 100 * (1 - now.residue - now.microbes - now.humus),
  };
}

/** C:N at which nothing is free nor tied up on a day, by halving between two bounds. */
export function breakEven(
  materialClass: 'green' | 'mature',
  days: number,
  low: number,
  high: number,
): number {
  let under = low;
  let over = high;
  for (let round = 0; round < 60; round++) {
    const middle = (under + over) / 2;
    if (decompose(materialClass, middle, days, days).nitrogen > 0) under = middle;
    else over = middle;
  }
  return under;
}
