import type { Bed, Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { smotheredToday } from '../coverSays';
import { finishedCrop } from '../finishedCrop';
import type { PlanAnswer } from '../../core/plan/answer';
import { hasRoom } from './layAdvice';
import { mayOffer, planOfBed } from './plan/planOfBed';

export interface QuietBed {
  readonly bed: Bed;
  readonly results: BedResults;
}

/** What can be done about beds on which nothing presses. Every bed is in one group. */
export interface QuietGroups {
  /** the week's plan has something for them */
  readonly planned: readonly QuietBed[];
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
  plan: Pick<PlanAnswer, 'lines' | 'leftOut'> | null,
): QuietGroups {
  const groups = {
    planned: [] as QuietBed[],
    couldTake: [] as QuietBed[],
    toCover: [] as QuietBed[],
    finished: [] as QuietBed[],
    leave: [] as QuietBed[],
  };
  for (const bed of quiet) {
    const results = bedResults[bed.id];
    if (!results) continue;
    groups[groupOf(garden, bed, results, plan)].push({ bed, results });
  }
  return groups;
}

function groupOf(
  garden: Garden,
  bed: Bed,
  results: BedResults,
  answer: Pick<PlanAnswer, 'lines' | 'leftOut'> | null,
): keyof QuietGroups {
  const { state, coverState, excessClass } = results.verdict;
  const plan = planOfBed(answer, bed.id);
  if (plan?.kind === 'line') return 'planned';
  if (finishedCrop(results)) return 'finished';
  // whatever is laid over seedlings, they would not come through it
  if (smotheredToday(results)) return 'leave';
  const isWanting = state === 'about right' || state === 'short';
  if (isWanting && mayOffer(plan) && hasRoom(garden, bed, results)) return 'couldTake';
  // a cover crop closes over its ground by itself
  const isOpen = coverState === 'bare' || coverState === 'thin';
  return isOpen && excessClass !== 'cover' ? 'toCover' : 'leave';
}
