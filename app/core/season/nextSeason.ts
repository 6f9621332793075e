import type { DayNumber } from '../days';
import type { BedSeason } from './input';
import type { SeasonResult } from './result';
import { runSeason } from './season';

/** What lies ready in a bed's top 30 cm through the season after the one that holds today. */
export interface NextSeason {
  readonly bedId: string;
  readonly today: DayNumber;
  readonly firstDay: DayNumber;
  readonly days: number;
  /** index into `dayKinds` */
  readonly kind: Uint8Array;
  /** g N/m2: every evening, and the evening before the first */
  readonly pools: Pick<SeasonResult['pools'], 'mineralTop'>;
  readonly start: Pick<SeasonResult['start'], 'mineralTop'>;
}

/**
 * The run gone on with from what this season leaves, through the season after it.
 *
 * @param input to the end of that season; its last season start is that season's first day
 * @validity as `runSeason`; all its days are imagined, and nothing is laid that is not written down
 * @throws RangeError where the run knows no season after the first
 */
export function nextSeason(input: BedSeason): NextSeason {
  const firstDay = input.seasonStarts.at(-1);
  if (firstDay === undefined || firstDay <= input.today)
    throw new RangeError(`The run of ${input.bedId} ends before the next season`);
  const { kind, pools } = runSeason(input);
  const from = firstDay - input.firstDay;
  return {
    bedId: input.bedId,
    today: input.today,
    firstDay,
    days: input.lastDay - firstDay + 1,
    kind: kind.slice(from),
    pools: { mineralTop: pools.mineralTop.slice(from) },
    start: { mineralTop: pools.mineralTop[from - 1]! },
  };
}
