import type { DayNumber } from '../core/days';
import type { BedQuestion } from '../core/season/bedAnswer';
import { anyBed } from './bedPast';
import { cautionFacts, onHandOf } from './cautionFacts';
import { bedParts, keptWith } from './keptParts';
import type { Application, Bed, Garden } from './schema';
import { bedSeason } from './seasonInput';

const kept = keptWith<Bed, BedQuestion>();

/**
 * Everything that is asked of the engine about one bed, with layers that are only proposed or without.
 * Without, and of a garden that nobody can change any more, it is the same object as the last time for
 * as long as nothing of it changed: an edit makes anew the questions it touches.
 *
 * @throws as `bedSeason`
 */
export function bedQuestion(
  garden: Garden,
  bedId: string,
  today: DayNumber,
  extraApplications: readonly Application[] = [],
): BedQuestion {
  const make = (): BedQuestion => laidOut(garden, bedId, today, extraApplications);
  const bed = anyBed(garden, bedId);
  if (!bed || extraApplications.length > 0 || !Object.isFrozen(garden)) return make();
  const onHand = JSON.stringify(onHandOf(garden, today));
  return kept(bed, [today, onHand, ...bedParts(garden, bed)], make);
}

function laidOut(
  garden: Garden,
  bedId: string,
  today: DayNumber,
  extraApplications: readonly Application[],
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
