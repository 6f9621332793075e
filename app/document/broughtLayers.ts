import type { BedEvent, BedSeason, LayerInput } from '../core/season/input';
import type { SeasonResult } from '../core/season/result';

/** A layer that was laid on the ground a bed was made of. */
export interface BroughtLayer {
  readonly layer: LayerInput;
  /** as it was laid, for each m2 of the new bed [kg/m2] */
  readonly dryKgPerM2: number;
  /** what was done on the first morning to the cover of its ground alone */
  readonly morning: readonly BedEvent[];
}

/** What was laid on the grounds a bed was made of, and on theirs before them. */
export const broughtLayers = (input: BedSeason): readonly BroughtLayer[] =>
  (input.ground ?? []).flatMap(({ input: was, share, morning = [] }) => [
    ...was.layers.map((layer) => ({ layer, dryKgPerM2: share * layer.dryKgPerM2, morning })),
    ...broughtLayers(was).map((one) => ({
      layer: one.layer,
      dryKgPerM2: share * one.dryKgPerM2,
      morning,
    })),
  ]);

/**
 * Share of a layer that lay on the evening before a day of the run, 0-1; before the first one what
 * came with the ground.
 */
export function lyingOnEve(result: SeasonResult, layerId: string, index: number): number {
  if (index <= 0) return result.brought?.lying.get(layerId) ?? 0;
  return result.layers.find(({ id }) => id === layerId)?.left[index - 1] ?? 0;
}

/**
 * What is left of a share that lay on an evening once a morning's raking and digging are done; both
 * take of all that lies.
 */
export const leftAfter = (events: readonly BedEvent[]): number =>
  events.reduce(
    (left, event) =>
      event.kind === 'rake off' || event.kind === 'dig cover in' ? left * (1 - event.share) : left,
    1,
  );
