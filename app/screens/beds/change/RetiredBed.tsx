import { useState } from 'react';
import { useAnnounce } from '../../../controls/Announcer';
import { bringBack } from '../../../document/bedChanges/retireBeds';
import { bedsMadeOf } from '../../../document/bedPast';
import { cropName } from '../../../document/cropValues';
import { materialFrom } from '../../../document/materialValues';
import type { RetiredBed as Retired } from '../../../document/schema';
import { bedStepNames } from '../../../words/bedChangeWords';
import { listed } from '../../../words/chartFormat';
import { amountWords } from '../../amountWords';
import { placementWords } from '../../choices';
import { useShown } from '../../shown';
import { useGarden, useMowings } from '../../store';
import { useReadingContext } from '../../useReadingContext';
import { BedHead } from '../BedHead';
import { stuffName } from '../chartData';
import { eventWords } from '../eventWords';
import { RetiredAccounts } from './RetiredAccounts';
import { useBedChange, type Refused } from './useBedChange';

/** A bed that was put away, split or joined: its log, to be read, and a way back where there is one. */
export function RetiredBed({ bed }: { readonly bed: Retired }) {
  const garden = useGarden();
  const shown = useShown();
  const context = useReadingContext();
  const openBed = useMowings((state) => state.openBed);
  const announce = useAnnounce();
  const keepChange = useBedChange();
  const [refused, setRefused] = useState<Refused | null>(null);
  const since = bedsMadeOf(garden, bed.id);
  const entries = [
    ...garden.applications
      .filter(({ bedId }) => bedId === bed.id)
      .map((layer) => ({
        id: layer.id,
        date: layer.date,
        words: `${stuffName(materialFrom(garden, layer.from))}, ${amountWords(layer.amount, garden, context, shown)}, ${placementWords[layer.placement]}`,
      })),
    ...garden.plantings
      .filter(({ bedId }) => bedId === bed.id)
      .map((planting) => ({
        id: planting.id,
        date: planting.started,
        words: `${cropName(garden, planting.cropId)} ${planting.how}${planting.cleared ? `, cleared ${shown.day(planting.cleared)}` : ''}`,
      })),
    ...garden.events.flatMap((event) =>
      'bedId' in event && event.bedId === bed.id
        ? [{ id: event.id, date: event.date, words: eventWords[event.kind].line(event, shown) }]
        : [],
    ),
  ].sort((one, other) => (one.date < other.date ? 1 : -1));
  return (
    <div className="page">
      <BedHead
        name={bed.name}
        deed={
          since.length === 0 && (
            <button
              type="button"
              className="button"
              onClick={() => {
                const why = keepChange(bedStepNames.bringBack(bed.name), bringBack(garden, bed.id));
                if (why === null) announce(`${bed.name} is back among the beds.`);
                setRefused(why);
              }}
            >
              Bring it back
            </button>
          )
        }
      >
        <p className="soft">
          {shown.estimate(bed.areaM2, shown.units.area)}, put away {shown.day(bed.retired)}.
          {since.length > 0 && ` Its ground is now ${listed(since.map(({ name }) => name))}.`}
        </p>
      </BedHead>
      {refused && (
        <p role="alert" className="field-trouble">
          {refused.says}
        </p>
      )}
      {since.length > 0 && (
        <div className="button-row">
          {since
            .filter(({ id }) => garden.beds.some((one) => one.id === id))
            .map(({ id, name }) => (
              <button key={id} type="button" className="button-small" onClick={() => openBed(id)}>
                Open {name}
              </button>
            ))}
        </div>
      )}
      <RetiredAccounts bed={bed} />
      <section className="section" aria-labelledby="retired-log">
        <div className="section-head">
          <h2 id="retired-log">What was done</h2>
        </div>
        {entries.length === 0 && <p>Nothing was written down for this bed.</p>}
        <ol className="plain-list log-list">
          {entries.map(({ id, date, words }) => (
            <li key={id} className="log-entry">
              <p>
                <strong className="nowrap">{shown.day(date)}</strong> {words}.
              </p>
            </li>
          ))}
        </ol>
      </section>
    </div>
  );
}
