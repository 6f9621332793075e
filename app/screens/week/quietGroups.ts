import type { Bed, Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { finishedCrop } from '../finishedCrop';
import { hasRoom } from './layAdvice';

export interface QuietBed {
  readonly bed: Bed;
  readonly results: BedResults;
}

/** What can be done about beds on which nothing presses. Every bed is in one group. */
export interface QuietGroups {
  /** there is room for greens, though nobody is short today */
  readonly couldTake: readonly QuietBed[];
  /** fed, and the ground shows: straw, leaves, crisp clippings */
  readonly toCover: readonly QuietBed[];
  /** the crop is past its end: is it still there? */
  readonly finished: readonly QuietBed[];
  readonly leave: readonly QuietBed[];
}

/** Sorts the beds that say nothing pressing by what they could use. */
export function quietGroups(
  garden: Garden,
  quiet: readonly Bed[],
  bedResults: Readonly<Record<string, BedResults>>,
): QuietGroups {
  const groups = {
    couldTake: [] as QuietBed[],
    toCover: [] as QuietBed[],
    finished: [] as QuietBed[],
    leave: [] as QuietBed[],
  };
  for (const bed of quiet) {
    const results = bedResults[bed.id];
    if (!results) continue;
    groups[groupOf(garden, bed, results)].push({ bed, results });
  }
  return groups;
}

function groupOf(garden: Garden, bed: Bed, results: BedResults): keyof QuietGroups {
  const { state, coverState, excessClass } = results.verdict;
  if (finishedCrop(results)) return 'finished';
  if ((state === 'about right' || state === 'short') && hasRoom(garden, bed, results))
    return 'couldTake';
  // a cover crop closes over its ground by itself
  const isOpen = coverState === 'bare' || coverState === 'thin';
  return isOpen && excessClass !== 'cover' ? 'toCover' : 'leave';
}
