import { textFromDay } from '../../core/days';
import { windAtTwoMetres } from '../../core/soil/penmanMonteith';
import { gapsOf, type DayBook } from './dayBook';
import { coreMeasures, type ReadDay, type WeatherPreview } from './weatherTypes';

/** Stations measure wind this high over open ground; a table that does not say is taken so. */
export const usualWindHeightMetres = 10;

/** Wind as a garden keeps it, m/s at 2 m; what was measured there stays as it was. */
export const windKept = (metresPerSecond: number, heightMetres: number): number =>
  heightMetres === 2 ? metresPerSecond : windAtTwoMetres({ metresPerSecond, heightMetres });

/** What every form has to say of its days. `days` holds at least one. */
export function previewOf(
  days: readonly ReadDay[],
  book: DayBook,
): Pick<
  WeatherPreview,
  'firstDay' | 'lastDay' | 'days' | 'wholeDays' | 'gaps' | 'refused' | 'outside'
> {
  const first = days[0]?.day ?? 0;
  return {
    firstDay: textFromDay(first),
    lastDay: textFromDay(days.at(-1)?.day ?? first),
    days: days.length,
    wholeDays: days.filter(({ values }) =>
      coreMeasures.every((measure) => values[measure] !== undefined),
    ).length,
    gaps: gapsOf(days),
    refused: book.refused,
    outside: book.outside,
  };
}
