import type { PlanMeasure } from '../core/plan/question';
import type { Garden } from './schema';

type Container = Garden['containers'][number];

/** Sizes of what counts as a bucket [L]. */
const bucketLitres = { least: 5, most: 30 } as const;

/** The smallest of some containers, by name where several are as small; null where there is none. */
function smallestOf(containers: readonly Container[]): Container | null {
  const [smallest] = [...containers].sort(
    (one, other) => one.litres - other.litres || (one.name < other.name ? -1 : 1),
  );
  return smallest ?? null;
}

/** The gardener's bucket: the smallest container of a bucket's size; null where there is none. */
export function bucketOf(garden: Garden): PlanMeasure | null {
  const smallest = smallestOf(
    garden.containers.filter(
      ({ litres }) => litres >= bucketLitres.least && litres <= bucketLitres.most,
    ),
  );
  return smallest ? { containerId: smallest.id, litres: smallest.litres } : null;
}

/** What a garden without a bucket fills: its smallest container above a bucket; null where there is a bucket or none. */
export const bagOf = (garden: Garden): Container | null =>
  bucketOf(garden)
    ? null
    : smallestOf(garden.containers.filter(({ litres }) => litres > bucketLitres.most));
