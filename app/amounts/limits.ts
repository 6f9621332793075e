import { toShown, type ShownUnit } from '../core/shownUnit';
import type { Field } from './amount';

/**
 * The most that is believed without asking, in kg, L, m2, mm (m for `length`) or containers: a
 * guard against slips of the finger, our own choice and well past any garden. Nothing about nature.
 */
export const limits = {
  containers: 500,
  litres: 50_000,
  kilograms: 20_000,
  depthMillimetres: 1000,
  cutMillimetres: 300,
  lawnM2: 100_000,
} as const;

/** Largest value of a one-measure field, in its inside unit. */
export const measureLimits: Readonly<
  Record<Exclude<Field, 'mowing' | 'layer' | 'stock' | 'water' | 'temperature'>, number>
> = { rain: 2000, area: 1_000_000, length: 1000, depth: 1000, volume: 50_000, weight: 20_000 };

export const temperatureLimits = { lowest: -70, highest: 60 } as const;

/** Twelve figures: without the last-digit noise of unit arithmetic, so that 3 x 35 L is 105 L. */
export const tidyNumber = (value: number): number => Number(value.toPrecision(12));

/** A limit in the unit the garden is shown in, to two figures. */
export const limitText = (limit: number, unit: ShownUnit): string =>
  `${Number(toShown(limit, unit).toPrecision(2))} ${unit.symbol}`;
