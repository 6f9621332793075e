import type { ReadingContext } from '../../../amounts/amount';
import { seasonEnd, textFromDay, type DayNumber } from '../../../core/days';
import { clippingsKeep } from '../../../document/clippingsKeep';
import type { Bed, Garden } from '../../../document/schema';
import type { BedResults } from '../../../store/contract';
import { openMowings } from '../../../store/selectors';
import { lawnMaterials } from '../../../tables/lawns';
import type { Shown } from '../../shown';
import { layAdvice } from '../../week/layAdvice';
import { newRow, readRow, type LayRow, type ReadRow } from '../../week/layRows';
import { mowingSource } from '../../week/sources';

/** So many are kept side by side. */
export const mostAlternatives = 3;

/** Weeks from today on which it would be laid. */
export const weeksAhead = ['0', '1', '2'] as const;
export type WeeksAhead = (typeof weeksAhead)[number];
export const weeksWords: Readonly<Record<WeeksAhead, string>> = {
  '0': 'today',
  '1': 'in a week',
  '2': 'in two weeks',
};

/** A layer that is thought of, as it is being typed. */
export interface Alternative {
  readonly row: LayRow;
  readonly weeks: WeeksAhead;
}

export const dayOfAlternative = (weeks: WeeksAhead, today: DayNumber): DayNumber =>
  today + 7 * Number(weeks);

/** Those of the weeks that still lie in the season: nothing is reckoned beyond it. */
export const weeksLeft = (garden: Garden, today: DayNumber): readonly WeeksAhead[] => {
  const last = seasonEnd(today, garden.garden.seasonStartMonth);
  return weeksAhead.filter((weeks) => dayOfAlternative(weeks, today) <= last);
};

/**
 * The likeliest first thought: of what is cut and waiting so much as would mend a bed that is short,
 * else a thin layer; of what the first lawn gives where nothing waits.
 */
export function firstAlternative(
  garden: Garden,
  bed: Bed,
  results: BedResults,
  shown: Shown,
): Alternative {
  const { today } = results.season;
  const waiting = openMowings(garden).find((mowing) => clippingsKeep(mowing, today));
  const [lawn] = garden.lawns;
  const what = waiting
    ? mowingSource(waiting.id)
    : lawn
      ? `elsewhere:${lawnMaterials[lawn.kind]}`
      : '';
  const advised = waiting ? layAdvice(garden, bed, results, waiting, shown) : null;
  const amount = advised?.amount ?? (shown.system === 'us' ? '1/4 in' : '6 mm');
  return { row: { ...newRow(what, bed.id), amount }, weeks: '0' };
}

/** The same once more, to be changed; a key of its own. */
export const copyOf = ({ row, weeks }: Alternative): Alternative => ({
  row: { ...row, key: newRow('').key },
  weeks,
});

export const readAlternative = (
  garden: Garden,
  context: ReadingContext,
  bed: Bed,
  { row, weeks }: Alternative,
  today: DayNumber,
): ReadRow =>
  readRow(garden, context, { ...row, bedId: bed.id }, textFromDay(dayOfAlternative(weeks, today)));
