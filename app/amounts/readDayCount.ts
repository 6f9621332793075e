import { leadingNumber } from './plainNumber';

const inDays: readonly (readonly [RegExp, number])[] = [
  [/^(?:d|days?)?$/, 1],
  [/^(?:w|wks?|weeks?)$/, 7],
  [/^fortnights?$/, 14],
];

/** How many days are meant: "28", "28 days", "4 weeks", "1½ weeks"; null where that cannot be read. */
export function readDayCount(text: string): number | null {
  const typed = leadingNumber(text);
  const size = inDays.find(([unit]) => unit.test(typed?.rest.replace(/[.!]$/, '') ?? 'none'))?.[1];
  return typed && size !== undefined && typed.value >= 0 ? typed.value * size : null;
}
