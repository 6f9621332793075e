import { classFor } from '../../app/core/cover/residueClass';
import { startingState } from '../../app/core/season/startingState';
import { poolIndex } from '../../app/core/season/ways';
import { decayDay } from '../../app/core/season/dayDecay';
import { flowKinds } from '../../app/core/season/flows';
import { temperatureFactor } from '../../app/core/soil/temperature';
import { bareBed } from '../core/season/handMadeBed';
import type { SlowKind } from '../../app/core/season/input';
import type { Points } from '../../app/core/season/draws/spread';
import type { Values } from './drawn';

export interface Jar {
  readonly kind: 'green' | 'mature';
  readonly carbonToNitrogen: number;
  readonly celsius: number;
  readonly days: number;
  readonly placement?: 'dug' | 'laid';
}

export interface Out {
  /** net nitrogen set free, % of the nitrogen put in */
  readonly nitrogenPercent: number;
  /** mg N per g C put in */
  readonly perGramCarbon: number;
  /** carbon breathed out, % of the carbon put in */
  readonly carbonPercent: number;
}

/** Incubations are kept moist; nobody prints how near field capacity. Assumed. */
const jarMoisture: Points = { low: 0.8, typical: 1, high: 1 };
/** More nitrate than anything in a jar could want. */
const plenty = 1000;

/**
 * The program's own day of decomposition in a jar at one warmth: material of 100 g C mixed in (or
 * lying on top and moist), more nitrate at hand than it can hold.
 */
export function incubate(jar: Jar, values: Values): Out {
  const c = values.coefficients;
  const state = startingState(bareBed(), 300);
  state.nitrogen[poolIndex.mineralTop] = plenty;
  const placement = jar.placement ?? 'dug';
  const item = classFor(state.classes, placement, jar.kind, jar.carbonToNitrogen, c);
  item.residue = 100;
  const flows = new Float64Array(flowKinds.length);
  const today = temperatureFactor(jar.celsius) * values.of('moisture of a jar', jarMoisture);
  // The step is exact at a constant clock; only what lies on top is rationed by the day.
  const steps = placement === 'dug' ? 1 : jar.days;
  const clock = (today * jar.days) / steps;
  for (let step = 0; step < steps; step++)
    decayDay(state, flows, { soil: clock, surface: clock }, c);
  const freed =
    state.nitrogen[poolIndex.mineralTop]! + state.nitrogen[poolIndex.coverFree]! - plenty;
  return {
    nitrogenPercent: freed * jar.carbonToNitrogen,
    perGramCarbon: 10 * freed,
    carbonPercent: 100 - item.residue - item.microbes - item.humus,
  };
}

/** The C:N at which a jar of browns neither frees nor holds by the last day, by halving. */
export function breakEven(
  kind: Jar['kind'],
  celsius: number,
  days: number,
  values: Values,
): number {
  let [under, over] = [8, 80];
  for (let round = 0; round < 12; round++) {
    const carbonToNitrogen = (under + over) / 2;
    const { perGramCarbon } = incubate({ kind, carbonToNitrogen, celsius, days }, values);
    if (perGramCarbon > 0) under = carbonToNitrogen;
    else over = carbonToNitrogen;
  }
  return (under + over) / 2;
}

/**
 * Compost, manure or meal mixed into the same jar.
 *
 * @param basis `organic`: of the nitrogen that was not ready at the start, and only what came since
 * @returns % of nitrogen
 */
export function incubateSlow(
  share: { readonly ready: number; readonly slow: number; readonly kind: SlowKind },
  celsius: number,
  days: number,
  basis: 'total' | 'organic',
  values: Values,
): number {
  const state = startingState(bareBed(), 300);
  state.slow[share.kind === 'meal' ? 'dugQuick' : 'dugActive'] = 100 * share.slow;
  state.nitrogen[poolIndex.slow] = 100 * share.slow;
  state.nitrogen[poolIndex.mineralTop] = 0;
  const flows = new Float64Array(flowKinds.length);
  const today = temperatureFactor(celsius) * values.of('moisture of a jar', jarMoisture);
  decayDay(state, flows, { soil: today * days, surface: 0 }, values.coefficients);
  const since = state.nitrogen[poolIndex.mineralTop]!;
  return basis === 'total' ? 100 * share.ready + since : since / (1 - share.ready);
}
