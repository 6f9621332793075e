import { useMemo } from 'react';
import { dayOf, textFromDay } from '../../../core/days';
import { runSeason } from '../../../core/season/season';
import type { RetiredBed } from '../../../document/schema';
import { bedSeason } from '../../../document/seasonInput';
import { seasonAccountsWith } from '../../../document/seasonsAccount';
import { seasonAccountTitle } from '../../../words/seasonAccountWords';
import { useShown } from '../../shown';
import { useGarden } from '../../store';
import { MineralAccount } from '../MineralAccount';
import { SeasonsTable } from '../SeasonsTable';

/** The seasons a bed lived through, to the evening before it was put away. */
export function RetiredAccounts({ bed }: { readonly bed: RetiredBed }) {
  const garden = useGarden();
  const shown = useShown();
  const results = useMemo(() => {
    const eve = dayOf(bed.retired) - 1;
    const input = bedSeason(garden, bed.id, eve, { endsToday: true });
    return input.firstDay <= eve ? { bedId: bed.id, input, season: runSeason(input) } : null;
  }, [garden, bed]);
  const seasons = useMemo(
    () => (results ? seasonAccountsWith(garden, results.input, results.season, []) : []),
    [garden, results],
  );
  if (!results)
    return <p>It was put away before anything could be reckoned of it, so it has no account.</p>;
  return (
    <>
      <section className="section" aria-labelledby="retired-seasons">
        <h2 id="retired-seasons" className="section-head">
          {seasonAccountTitle}
        </h2>
        <p className="soft small">
          To the evening of {shown.day(textFromDay(results.input.lastDay))}, on each square metre.
          What it held then went on with its ground.
        </p>
        <SeasonsTable seasons={seasons} left="Left with its ground" />
      </section>
      <MineralAccount garden={garden} results={results} upTo="up to its last evening" />
    </>
  );
}
