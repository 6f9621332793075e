import { textFromDay } from '../../core/days';
import type { TableData } from '../export/tableData';
import type { LawnChartData } from './geometry';

/** A row a week: what a lawn should give, with the ends of its likely range, and what was mown. */
export function lawnTable(
  { weeks, cuts, today }: Pick<LawnChartData, 'weeks' | 'cuts' | 'today'>,
  unit: string,
): TableData {
  return {
    head: [
      'week from',
      'growth',
      `expected [${unit}]`,
      `10 % of weeks below [${unit}]`,
      `10 % of weeks above [${unit}]`,
      `as its kind usually grows [${unit}]`,
      `mown [${unit}]`,
      'mown on',
    ],
    rows: weeks.map(({ from, low, typical, high, usual }) => {
      const cut = cuts.find((one) => one.from !== null && one.from <= from + 6 && one.day >= from);
      return [
        textFromDay(from),
        from > today ? 'imagined' : 'reckoned',
        typical,
        low,
        high,
        usual,
        cut?.aWeek ?? null,
        cut ? textFromDay(cut.day) : null,
      ];
    }),
  };
}
