import type { NextSeason } from '../core/season/nextSeason';
import { bedSeason } from '../document/seasonInput';
import { limits } from '../tables/thresholds';
import type { Read, Write } from './gardenSlice';
import type { Surroundings } from './surroundings';
import { nothingShown, whileShown, type ShownAnswers } from './whileShown';

/** All beds through the season after the one that holds today. */
export type ComingSeason = ShownAnswers<NextSeason>;

export interface NextSeasonSlice {
  readonly comingSeason: ComingSeason;
  /** a place that shows it is open: reckoned, and reckoned anew after every change */
  wantComingSeason(): void;
  /** that place was left */
  leaveComingSeason(): void;
}

export interface NextSeasonDoor {
  readonly slice: NextSeasonSlice;
  /** garden or day are other than before */
  changed(): void;
}

/** The coming season takes a run of every bed: asked for while it is shown. */
export function nextSeasonDoor(
  read: Read,
  write: Write,
  surroundings: Pick<Surroundings, 'engine' | 'later' | 'computerToday'>,
): NextSeasonDoor {
  const season = whileShown<NextSeason>(
    read,
    surroundings,
    (garden, today) => {
      const beds = garden.beds.map(({ id }) =>
        bedSeason(garden, id, today, { throughNextSeason: true }),
      );
      return surroundings.engine.ask<'next season'>({ kind: 'next season', beds, limits });
    },
    (changes) => write((state) => ({ comingSeason: { ...state.comingSeason, ...changes } })),
  );
  return {
    slice: {
      comingSeason: nothingShown,
      wantComingSeason: () => {
        if (!season.isWanted()) season.want();
      },
      leaveComingSeason: () => {
        season.leave();
        // what it comes to may be another by the time it is looked at again
        write({ comingSeason: nothingShown });
      },
    },
    changed: season.ask,
  };
}
