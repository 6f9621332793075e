import { useId, useState } from 'react';
import { SectionWeaves } from '../../charts/section/SectionWeaves';
import { SmallSection } from '../../charts/section/Small';
import { Icon } from '../../controls/marks/Icon';
import { PickOne } from '../../controls/PickOne';
import { seasonsOf } from '../../core/season/seasonAccounts';
import { seasonStart, yearOf } from '../../core/days';
import { seasonWord } from '../../words/seasonAccountWords';
import { useSections } from '../beds/useSections';
import { useCommands } from '../frame/commands';
import { useGarden, useMowings } from '../store';
import { BedSheet } from './BedSheet';

/** Sheets to take outside or to file, one for each bed; on the screen as they come on paper. */
export function BedSheets(props: {
  readonly bedIds: readonly string[];
  readonly onBack: () => void;
}) {
  const { bedIds, onBack } = props;
  const garden = useGarden();
  const bedResults = useMowings((state) => state.bedResults);
  const { print } = useCommands();
  const weaves = useId();
  const { facts, shared } = useSections();
  const [season, setSeason] = useState<number | null>(null);
  const beds = garden.beds.filter(({ id }) => bedIds.includes(id));
  const { seasonStartMonth } = garden.garden;
  const years = [
    ...new Set(
      beds.flatMap(({ id }) => {
        const results = bedResults[id];
        if (!results) return [];
        return seasonsOf(results.input)
          .filter(({ firstDay }) => firstDay <= results.season.today)
          .map(({ firstDay }) => yearOf(seasonStart(firstDay, seasonStartMonth)));
      }),
    ),
  ].sort((one, other) => other - one);
  return (
    <div className="page bed-sheets">
      <div className="page-head not-printed">
        <div>
          <button type="button" className="button-small" onClick={onBack}>
            <Icon name="left" /> Back
          </button>
          <h1 tabIndex={-1}>
            {beds.length === 1 ? 'A sheet for this bed' : 'Sheets for the beds'}
          </h1>
          <p className="soft">One sheet of A4 or Letter each, in black on white.</p>
        </div>
        <button type="button" className="button-main" onClick={print}>
          Print {beds.length === 1 ? 'it' : `these ${beds.length}`}
        </button>
      </div>
      {years.length > 1 && (
        <PickOne
          label="Season"
          value={String(season ?? years[0])}
          groups={[
            {
              label: null,
              options: years.map((year) => ({
                value: String(year),
                label: seasonWord(year, seasonStartMonth),
              })),
            },
          ]}
          onPick={(year) => setSeason(Number(year))}
        />
      )}
      <SectionWeaves prefix={weaves} />
      {beds.map((bed) => {
        const own = facts.get(bed.id);
        return (
          <BedSheet key={bed.id} bed={bed} season={season}>
            {own && <SmallSection facts={own} {...shared} weaves={weaves} />}
          </BedSheet>
        );
      })}
    </div>
  );
}
