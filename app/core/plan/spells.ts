import type { DayNumber } from '../days';
import type { BedSeason } from '../season/input';
import { isStanding } from '../season/plantingAccount';

/** An evening on which a bed is looked at, and the weeks it stands for. */
export interface Look {
  readonly day: DayNumber;
  readonly weeks: number;
}

const daysOfWeek = 7;
/** Weeks after the plan's own that one look stands for. */
const weeksOfLateLook = 4;

/**
 * When a plan looks at the beds: on its own days, and after them every four weeks, in the middle of
 * them, to the season's end. What is laid this week lies or lacks long after the plan's last day.
 *
 * @param days of the plan, a week apart
 */
export function looksOf(days: readonly DayNumber[], lastDay: DayNumber): readonly Look[] {
  const looks: Look[] = days
    .filter((day) => day <= lastDay)
    .map((day): Look => ({ day, weeks: 1 }));
  const last = looks.at(-1)?.day;
  if (last === undefined) return looks;
  let left = Math.floor((lastDay - last) / daysOfWeek);
  let from = last;
  while (left > 0) {
    const weeks = Math.min(weeksOfLateLook, left);
    looks.push({ day: from + daysOfWeek * Math.ceil(weeks / 2), weeks });
    from += daysOfWeek * weeks;
    left -= weeks;
  }
  return looks;
}

/** Share of the weeks that looks stand for, by look; together 1. */
export function sharesOf(looks: readonly Look[]): readonly number[] {
  const all = looks.reduce((sum, { weeks }) => sum + weeks, 0);
  return looks.map(({ weeks }) => weeks / all);
}

/** Looks that one stands for where a rough count will do. */
const looksTogether = 3;

/** Every few looks one, in their middle: its place among them and the share of the weeks it stands for. */
export function fewLooks(
  looks: readonly Look[],
): readonly { readonly look: number; readonly share: number }[] {
  const shares = sharesOf(looks);
  return Array.from({ length: Math.ceil(looks.length / looksTogether) }, (_unused, at) => {
    const own = shares.slice(at * looksTogether, (at + 1) * looksTogether);
    return {
      look: at * looksTogether + Math.floor((own.length - 1) / 2),
      share: own.reduce((sum, share) => sum + share, 0),
    };
  });
}

/** Day on which a bed is judged: its today, or the next start where nothing stands; null: none comes. */
export function judgedDay(input: BedSeason): DayNumber | null {
  const { today } = input;
  if (input.plantings.some((planting) => isStanding(planting, today))) return today;
  const next = input.plantings
    .map(({ startDay }) => startDay)
    .filter((day) => day > today && day <= input.lastDay);
  return next.length > 0 ? Math.min(...next) : null;
}

/** A time with the same plants on a bed: those of today, or those of a planting that is to come. */
export interface Spell {
  /** its first day, or today */
  readonly judgedOn: DayNumber;
  /** of the weeks looked at, those in which anything stands before the next spell 0-1 */
  readonly share: number;
}

/**
 * The times a bed is judged in: from today, or the next start on an empty bed, and again from every
 * later start, so that what is left for what grows there next counts as well.
 *
 * @returns earliest first; none where nothing stands and nothing comes
 */
export function spellsOf(input: BedSeason, looks: readonly Look[]): readonly Spell[] {
  const first = judgedDay(input);
  if (first === null) return [];
  const starts = [
    first,
    ...input.plantings
      .map(({ startDay }) => startDay)
      .filter((day) => day > first && day <= input.lastDay)
      .sort((one, other) => one - other),
  ].filter((day, at, all) => all.indexOf(day) === at);
  const shares = sharesOf(looks);
  return starts.map((judgedOn, at): Spell => {
    const until = starts[at + 1] ?? Infinity;
    const share = looks.reduce(
      (sum, { day }, look) =>
        day >= judgedOn &&
        day < until &&
        input.plantings.some((planting) => isStanding(planting, day))
          ? sum + shares[look]!
          : sum,
      0,
    );
    return { judgedOn, share };
  });
}
