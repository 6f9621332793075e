import { mowingOf } from '../../document/materialValues';
import type { Garden } from '../../document/schema';

/** Whether what lies on a bed was counted in bags or buckets that nobody has weighed yet. */
export function hasUnweighedBags(garden: Garden, bedId: string): boolean {
  const unweighed = new Set(
    garden.containers.filter(({ weighed }) => weighed === null).map(({ id }) => id),
  );
  return garden.applications
    .filter((layer) => layer.bedId === bedId)
    .some((layer) =>
      [layer.amount, mowingOf(garden, layer.from)?.amount].some(
        (amount) =>
          amount?.quantity.kind === 'containers' && unweighed.has(amount.quantity.containerId),
      ),
    );
}
