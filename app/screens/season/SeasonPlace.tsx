import { useMemo, useState } from 'react';
import { Icon } from '../../controls/marks/Icon';
import { seasonEnd, seasonStart, yearOf, type DayNumber } from '../../core/days';
import { seasonWord } from '../../words/seasonAccountWords';
import { seasonPlaceWords as words } from '../../words/seasonPlaceWords';
import { NoBeds } from '../beds/NoBeds';
import { useGoToPart } from '../garden/wantedPart';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { WorkTrouble } from '../WorkTrouble';
import { SeasonStrips } from './SeasonStrips';
import { firstDayKnown } from './stripsData';

/** All beds through a season, what stands and lies on them, and the lawns beneath. */
export function SeasonPlace() {
  const garden = useGarden();
  const today = useToday();
  const goToPart = useGoToPart();
  const results = useMowings((state) => state.bedResults);
  const { seasonStartMonth } = garden.garden;
  const thisStart = seasonStart(today, seasonStartMonth);
  const [wantedStart, setStart] = useState<DayNumber | null>(null);
  const first = useMemo(
    () => seasonStart(firstDayKnown(garden, results, today), seasonStartMonth),
    [garden, results, today, seasonStartMonth],
  );
  const last = seasonEnd(thisStart, seasonStartMonth) + 1;
  const from = Math.max(first, Math.min(last, wantedStart ?? thisStart));
  const span = useMemo(
    () => ({ from, to: seasonEnd(from, seasonStartMonth) }),
    [from, seasonStartMonth],
  );
  const called = (day: DayNumber): string => seasonWord(yearOf(day), seasonStartMonth);
  const step = (by: -1 | 1): void =>
    setStart(by < 0 ? seasonStart(from - 1, seasonStartMonth) : span.to + 1);
  return (
    <div className="page season-page">
      <div className="page-head">
        <div>
          <h1 tabIndex={-1}>{words.title}</h1>
          {garden.beds.length > 0 && (
            <p className="soft">
              The thicker the soil, the more nitrogen lies ready in it. Press a planting for its
              dates, or drag it.
            </p>
          )}
        </div>
      </div>
      <WorkTrouble />
      {garden.beds.length === 0 ? (
        <NoBeds onAdd={() => goToPart('garden-beds')} />
      ) : (
        <SeasonStrips
          span={span}
          name={`Season ${called(from)}`}
          years={
            <div className="strip-years" role="group" aria-label="Season shown">
              <button
                type="button"
                className="button-small"
                aria-disabled={from <= first}
                onClick={() => from > first && step(-1)}
              >
                <Icon name="left" /> Earlier
              </button>
              <strong aria-live="polite">{called(from)}</strong>
              <button
                type="button"
                className="button-small"
                aria-disabled={from >= last}
                onClick={() => from < last && step(1)}
              >
                Later <Icon name="right" />
              </button>
            </div>
          }
        />
      )}
    </div>
  );
}
