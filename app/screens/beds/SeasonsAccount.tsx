import { useEffect, useMemo } from 'react';
import { Figured } from '../../controls/Figured';
import type { Garden } from '../../document/schema';
import { seasonAccountsWith } from '../../document/seasonsAccount';
import { carriedDoor } from '../../store/carried';
import type { BedResults } from '../../store/contract';
import {
  expectedFailed,
  expectedSoon,
  expectedWords,
  seasonAccountTitle,
} from '../../words/seasonAccountWords';
import { useShown } from '../shown';
import { SeasonsTable } from './SeasonsTable';
import { expectedFigures } from '../why/findingWhys';
import { useMowings } from '../store';
import { TroubleReason } from '../WorkTrouble';

/** The bed from season to season: what came in, went out, and what is left for the next year. */
export function SeasonsAccount(props: {
  /** what the results are answers to */
  readonly garden: Garden;
  readonly results: BedResults;
}) {
  const { garden, results } = props;
  const { chart: units } = useShown();
  const { seasonStartMonth } = garden.garden;
  const { bedId } = results.input;
  const carried = useMowings((state) => (state.carried?.bedId === bedId ? state.carried : null));
  const openDoor = useMowings((state) => state.openDoor);
  useEffect(() => openDoor(carriedDoor(bedId)).close, [openDoor, bedId]);
  const ends = carried?.ends;
  const seasons = useMemo(
    () => seasonAccountsWith(garden, results.input, results.season, ends ?? []).slice(-2),
    [garden, results, ends],
  );
  return (
    <section
      className="section"
      aria-labelledby="bed-seasons"
      aria-busy={carried?.state === 'working'}
    >
      <h2 id="bed-seasons" tabIndex={-1} className="section-head">
        {seasonAccountTitle}
      </h2>
      <SeasonsTable seasons={seasons} />
      {seasons.map(
        ({ firstDay, year, expectedNextSeason }) =>
          expectedNextSeason && (
            <Expected
              key={firstDay}
              says={expectedWords(expectedNextSeason, year, seasonStartMonth, units)}
            />
          ),
      )}
      {carried?.state === 'failed' ? (
        <div className="field-trouble">
          <p role="alert">
            <span aria-hidden="true" className="field-trouble-mark" />
            {expectedFailed}
          </p>
          <TroubleReason reason={carried.reason} />
        </div>
      ) : (
        carried?.state !== 'ready' && !ends?.length && <p>{expectedSoon}</p>
      )}
    </section>
  );
}

function Expected({ says }: { readonly says: string }) {
  const shown = useShown();
  return <Figured says={says} figures={expectedFigures({ shown }, says)} />;
}
