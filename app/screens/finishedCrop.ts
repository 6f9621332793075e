import type { DayNumber } from '../core/days';
import type { BedResults } from '../store/contract';

export interface FinishedCrop {
  readonly crop: string;
  /** the day on which it was to end */
  readonly since: DayNumber;
}

/**
 * What stands on a bed past its end while nothing else grows there; null elsewhere. Such a bed is
 * neither fed nor hungry: the question is whether the crop is still there.
 */
export function finishedCrop({ input, cautions }: BedResults): FinishedCrop | null {
  const overdue = cautions.filter(({ kind }) => kind === 'overdue');
  const isOver = (id: string) => overdue.some(({ detail }) => detail['plantingId'] === id);
  const standing = input.plantings.filter(
    ({ startDay, clearingDay }) =>
      startDay <= input.today && (clearingDay === null || clearingDay > input.today),
  );
  const [first] = overdue;
  if (!first || first.date === null || !standing.every(({ id }) => isOver(id))) return null;
  return { crop: String(first.detail['crop'] ?? 'the crop'), since: first.date };
}
