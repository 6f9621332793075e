import type { DayNumber } from '../core/days';
import type { BedQuestion } from '../core/season/bedAnswer';
import { cautionFacts } from './cautionFacts';
import type { Application, Garden } from './schema';
import { bedSeason } from './seasonInput';

/** Everything that is asked of the engine about one bed, with layers that are only proposed or without. */
export function bedQuestion(
  garden: Garden,
  bedId: string,
  today: DayNumber,
  extraApplications: readonly Application[] = [],
): BedQuestion {
  const input = bedSeason(garden, bedId, today, { extraApplications });
  const before = today - 7;
  // in the first week of the run there is no last week of it
  const weekAgo =
    input.firstDay <= before ? bedSeason(garden, bedId, before, { knownThen: true }) : null;
  return {
    input,
    weekAgo: weekAgo?.lastDay === input.lastDay ? weekAgo : null,
    facts: cautionFacts(garden, bedId, today, extraApplications),
  };
}
