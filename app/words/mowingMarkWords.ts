import type { MowingMark } from '../document/mowingMarks';

const firstPlaces = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const;

/** "second", "7th" */
export const placeWord = (nth: number): string => firstPlaces[nth - 1] ?? `${nth}th`;

/**
 * What follows a lawn's name to tell which mowing of it is meant: " (mown 9 June, second mowing)".
 *
 * @param dayWords says a day
 */
export function mowingMarkWords(
  { nth, day }: MowingMark,
  dayWords: (day: number) => string,
): string {
  const parts = [
    ...(day === null ? [] : [`mown ${dayWords(day)}`]),
    ...(nth === null ? [] : [`${placeWord(nth)} mowing`]),
  ];
  return parts.length === 0 ? '' : ` (${parts.join(', ')})`;
}
