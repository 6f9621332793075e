import '../../style/charts/strips.css';
import { useMemo, useState } from 'react';
import { Icon } from '../../controls/marks/Icon';
import { seasonEnd, seasonStart, yearOf, type DayNumber } from '../../core/days';
import { plantingsBySeason } from '../../document/plantingsBySeason';
import { seasonWord } from '../../words/seasonAccountWords';
import {
  movingHint,
  plantingsIn,
  seasonPlaceWords as words,
  walkHint,
} from '../../words/seasonPlaceWords';
import { KeyedPage } from '../keys/KeyedPage';
import { NoBeds } from '../beds/NoBeds';
import { PlantingDialog } from '../beds/PlantingDialog';
import { useGoToPart } from '../garden/wantedPart';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { WorkTrouble } from '../WorkTrouble';
import { SeasonStrips } from './SeasonStrips';
import { firstDayKnown } from './stripsData';

/** How to go on by keys from what is focused on the strips. */
function hintOfStrip(focused: Element): string | null {
  if (focused.matches('.strip-handle')) return movingHint;
  return focused.closest('.why-panel, .strip-fields') === null && focused.closest('[data-bed]')
    ? walkHint
    : null;
}

/** All beds through a season, what stands and lies on them, and the lawns beneath. */
export function SeasonPlace() {
  const garden = useGarden();
  const today = useToday();
  const goToPart = useGoToPart();
  const results = useMowings((state) => state.bedResults);
  const [isSowing, setSowing] = useState(false);
  const { seasonStartMonth } = garden.garden;
  const thisStart = seasonStart(today, seasonStartMonth);
  const [wantedStart, setStart] = useState<DayNumber | null>(null);
  const first = useMemo(
    () => seasonStart(firstDayKnown(garden, results, today), seasonStartMonth),
    [garden, results, today, seasonStartMonth],
  );
  const begun = useMemo(() => plantingsBySeason(garden), [garden]);
  const last = Math.max(seasonEnd(thisStart, seasonStartMonth) + 1, begun.at(-1)?.start ?? 0);
  const from = Math.max(first, Math.min(last, wantedStart ?? thisStart));
  const span = useMemo(
    () => ({ from, to: seasonEnd(from, seasonStartMonth) }),
    [from, seasonStartMonth],
  );
  // the nearest on either side in which anything begins
  const before = begun.findLast(({ start }) => start < from);
  const after = begun.find(({ start }) => start > from);
  const called = (day: DayNumber): string => seasonWord(yearOf(day), seasonStartMonth);
  const step = (by: -1 | 1): void =>
    setStart(by < 0 ? seasonStart(from - 1, seasonStartMonth) : span.to + 1);
  return (
    <KeyedPage className="page season-page" hintOf={hintOfStrip}>
      <div className="page-head">
        <div>
          <h1 tabIndex={-1}>{words.title}</h1>
          {garden.beds.length > 0 && (
            <p className="soft">
              The thicker the soil, the more nitrogen lies ready in it.{' '}
              <span className="not-printed">
                Press a planting for its dates and its bed, or drag it along.
              </span>
            </p>
          )}
        </div>
        {garden.beds[0] && (
          <button
            data-doing="sow"
            type="button"
            className="button not-printed"
            onClick={() => setSowing(true)}
          >
            Sow or plant something…
          </button>
        )}
      </div>
      {isSowing && garden.beds[0] && (
        <PlantingDialog
          bedId={garden.beds[0].id}
          planting={null}
          choosesBed
          onClose={() => setSowing(false)}
        />
      )}
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
              {before && (
                <button
                  type="button"
                  className="button-small"
                  onClick={() => setStart(before.start)}
                >
                  {plantingsIn(before.count, called(before.start))}
                </button>
              )}
              <strong aria-live="polite">{called(from)}</strong>
              {after && (
                <button
                  type="button"
                  className="button-small"
                  onClick={() => setStart(after.start)}
                >
                  {plantingsIn(after.count, called(after.start))}
                </button>
              )}
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
    </KeyedPage>
  );
}
