import { lotOf, type LikelyRange } from '../core/lawn/clippings';
import { lotInputOf } from './layerMass';
import { materialById } from './materialValues';
import type { Container, Garden } from './schema';

type Weighed = NonNullable<Container['weighed']>;

/** Clippings that nobody said more of. */
const anyClippings = 'grass-fresh-generic';

export interface BagHolds {
  /** kilograms of dry weight in a full one, by the tables alone and with the weight in their place */
  readonly byTable: LikelyRange;
  readonly weighed: LikelyRange;
}

/** What a full container holds of what was in it when it was weighed, without that weight and with it. */
export function bagHolds(garden: Garden, container: Container, weighed: Weighed): BagHolds {
  const material = materialById(garden, weighed.of ?? anyClippings);
  const holds = (of: Container['weighed']): LikelyRange =>
    lotOf(
      lotInputOf(
        { containers: [{ ...container, weighed: of }] },
        {
          quantity: { kind: 'containers', count: 1, containerId: container.id },
          certainty: 'plain',
        },
        material,
        { condition: 'just cut', wetness: weighed.wetness },
        null,
      ),
    ).dryKilograms;
  return { byTable: holds(null), weighed: holds(weighed) };
}
