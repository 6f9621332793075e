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
