import { textFromDay, type DayNumber } from '../../core/days';
import type { ChartUnits } from '../../words/chartUnits';
import type { TableData } from '../export/tableData';
import type { DaySpan } from '../season/data';
import type { BedStrip } from './data';
import { toldKind, type DayOrigins } from '../season/origin';
import { rangeOn, readyOn } from './geometry';

/** What begins, ends or is laid on a bed on a day. */
function happenings(bed: BedStrip, day: DayNumber): readonly string[] {
  const found = (at: DayNumber | null, words: string): readonly string[] =>
    at === day ? [`${bed.name}: ${words}`] : [];
  return [
    ...bed.plantings.flatMap(({ name, sown, start, flower, pick, end }) => [
      ...found(start, `${name} ${sown ? 'sown' : 'planted'}`),
      ...found(flower, `${name} flower`),
      ...found(pick, `${name} first pick`),
      ...found(end, `${name} end`),
    ]),
    ...bed.layers.flatMap(({ name, day: laid, inSoil }) =>
      found(laid, `${name} ${inSoil === true ? 'dug or hoed in' : 'laid'}`),
    ),
  ];
}

/** A row a day, a column a bed: what lies ready, in the unit that is read. */
export function stripsTable(
  beds: readonly BedStrip[],
  span: DaySpan,
  units: ChartUnits,
  origins?: DayOrigins,
): TableData {
  const { nitrogen } = units;
  const run = beds.find((bed) => bed.run !== null)?.run ?? null;
  const hasRange = ({ range }: BedStrip): boolean => typeof range === 'object';
  return {
    head: [
      'day',
      'weather',
      ...beds.flatMap((bed) => {
        const column = (what: string): string => `${bed.name}, ${what} [${nitrogen.short}]`;
        const ready = column(`ready in the top ${units.topSoil}`);
        return hasRange(bed)
          ? [ready, column('10 % of seasons below'), column('10 % of seasons above')]
          : [ready];
      }),
      'what happens',
    ],
    rows: Array.from({ length: span.to - span.from + 1 }, (_value, index) => {
      const day = span.from + index;
      const at = run ? day - run.firstDay : -1;
      return [
        textFromDay(day),
        run && at >= 0 && at < run.days ? toldKind(origins, day, run.kind[at]) : null,
        ...beds.flatMap((bed) => {
          const range = rangeOn(bed, day);
          const values = [
            readyOn(bed, day),
            ...(hasRange(bed) ? [range?.low ?? null, range?.high ?? null] : []),
          ];
          return values.map((grams) => (grams === null ? null : grams * nitrogen.perInside));
        }),
        beds.flatMap((bed) => happenings(bed, day)).join('; '),
      ];
    }),
  };
}
