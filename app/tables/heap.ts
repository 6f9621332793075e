import type { HeapRows } from '../core/heap/heap';
import { row } from './row';

/** What a garden heap loses. From memory: nothing on heaps of clippings was read. */
export const heapRows = {
  dryLost: row(
    0.35,
    0.5,
    0.7,
    'share',
    'Assumed',
    'half of the dry matter of a heap is gone by the time it is compost; recalled',
    'memory',
  ),
  nitrogenLost: row(
    0.15,
    0.4,
    0.65,
    'share',
    'Assumed',
    'more from heaps of grass alone, less with leaves through it; recalled',
    'memory',
  ),
  lossDays: row(30, 60, 120, 'days', 'Assumed', 'faster when turned and warm', 'assumed'),
} as const satisfies HeapRows;

/** What clippings lose while they are spread out to dry. */
export const dryingRows = {
  dryLost: row(
    0.02,
    0.05,
    0.15,
    'share',
    'Recalled',
    'grass goes on breathing until it is dry, and crumbles fall through: more in a slow, damp week',
    'memory',
  ),
} as const;
