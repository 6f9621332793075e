import type { DayNumber } from '../../days';
import type { PlantingInput } from '../input';
import { type Limits, weigh } from '../limits';
import type { Weight } from '../verdict';

/** What of a planting decides on how much of the bed is taken, and when. */
export type TakenGround = Pick<PlantingInput, 'id' | 'share' | 'startDay' | 'clearingDay'>;

/** Days on which more of a bed is promised than there is, first and last included. */
export interface CrowdedSpell {
  readonly from: DayNumber;
  readonly to: DayNumber;
  /** all shares together; 1 is the whole bed */
  readonly share: number;
  readonly weight: Weight;
  readonly threshold: number;
  readonly plantingIds: readonly string[];
}

/** Whether a planting takes ground on a day: from the day it starts to the evening before it leaves. */
export const takesGround = (
  { startDay, clearingDay }: Pick<TakenGround, 'startDay' | 'clearingDay'>,
  day: DayNumber,
): boolean => startDay <= day && (clearingDay === null || clearingDay > day);

/** Plantings on one day and what they take together, with its weight where it is past a line. */
export function groundTaken<Planting extends TakenGround>(
  plantings: readonly Planting[],
  day: DayNumber,
  limits: Limits,
) {
  const standing = plantings.filter((planting) => takesGround(planting, day));
  const share = standing.reduce((sum, planting) => sum + planting.share, 0);
  return { standing, share, weighed: weigh(share, limits.lines['share of the bed']) };
}

/**
 * The spells of a bed in which its plantings take more of it than there is, in the order of days; a
 * spell ends where other plantings stand.
 *
 * @param from, to days looked at, both included
 * @source limits.lines['share of the bed'], the same rule as the caution of today
 */
export function crowdedSpells(
  plantings: readonly TakenGround[],
  from: DayNumber,
  to: DayNumber,
  limits: Limits,
): readonly CrowdedSpell[] {
  // who stands changes only on these days
  const turns = [
    from,
    ...plantings.flatMap(({ startDay, clearingDay }) => [startDay, clearingDay ?? to + 1]),
  ]
    .filter((day) => day >= from && day <= to)
    .sort((one, other) => one - other)
    .filter((day, index, all) => day !== all[index - 1]);
  return turns.flatMap((day, index) => {
    const { standing, share, weighed } = groundTaken(plantings, day, limits);
    return weighed
      ? [
          {
            from: day,
            to: (turns[index + 1] ?? to + 1) - 1,
            share,
            ...weighed,
            plantingIds: standing.map(({ id }) => id),
          },
        ]
      : [];
  });
}
