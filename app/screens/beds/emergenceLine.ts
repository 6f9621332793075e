import { emergenceOf } from '../../core/crop/emergence';
import { dayOf } from '../../core/days';
import { dayKinds } from '../../core/season/input';
import type { SeasonResult } from '../../core/season/result';
import type { Planting } from '../../document/schema';
import { cropEmergence, trialsOf, type CropEmergence } from '../../tables/emergence';
import type { DayStyle } from '../../words/dates';
import { emergenceWords } from '../../words/emergenceWords';

const imagined = dayKinds.indexOf('imagined');

/** When a sowing is up, by the soil of its bed's run; '' for plants, and where it cannot be foretold. */
export function emergenceLine(
  { how, started, cleared }: Planting,
  /** of the table's row */
  tableId: string,
  season: SeasonResult,
  style: DayStyle,
): string {
  const of = (cropEmergence as Readonly<Record<string, CropEmergence | undefined>>)[tableId];
  if (how !== 'sown' || !of) return '';
  const sown = dayOf(started);
  const emergence = emergenceOf(trialsOf(of.trials), sown, season);
  const until = emergence.kind === 'up' ? emergence.day : season.firstDay + season.days - 1;
  if (cleared !== null && dayOf(cleared) <= until) return '';
  const kinds = season.kind.subarray(
    Math.max(0, sown + 1 - season.firstDay),
    until + 1 - season.firstDay,
  );
  return emergenceWords(
    emergence,
    { isImagined: kinds.includes(imagined), relative: of.isRelative ? of.trials : null },
    style,
  );
}
