import { type ReactNode, useDeferredValue, useEffect, useId, useRef, useState } from 'react';
import { SectionWeaves } from '../../charts/section/SectionWeaves';
import { SmallSection } from '../../charts/section/Small';
import { Figured } from '../../controls/Figured';
import { Disclosure } from '../../controls/Disclosure';
import { Tick } from '../../controls/Tick';
import { bedSheets } from '../places';
import { cropName } from '../../document/cropValues';
import { plantingsOn } from '../../store/selectors';
import { estimateWithUnit } from '../../words/figures';
import { cautionSentence } from '../../words/cautionSentences';
import { foundWords } from '../../words/seasonPlaceWords';
import { useDesk } from '../desk';
import { matchWords } from '../find/matchWords';
import { SearchField } from '../tables/SearchField';
import { useGoToPart } from '../garden/wantedPart';
import { useGarden, useMowings } from '../store';
import { coverSays } from '../coverSays';
import { useShown } from '../shown';
import { useToday } from '../useReadingContext';
import { CoverWord, NitrogenWord, WeightWord } from '../StateWords';
import { finishedCrop } from '../finishedCrop';
import { plantedWords } from '../plantedWords';
import type { Bed } from '../../document/schema';
import { ImaginedLine, StateOdds } from '../Imagined';
import { roomWhy } from '../why/bedWhys';
import { figuresAndLines } from '../why/cautionWhys';
import { StateSays } from '../why/StateSays';
import { WorkTrouble } from '../WorkTrouble';
import { BedsTally } from './BedsTally';
import { CopyYear } from './change/CopyYear';
import { SeveralBeds } from './change/SeveralBeds';
import { NoBeds } from './NoBeds';
import { useSections } from './useSections';

/** From more beds than this on they can be looked for by name. */
const manyBeds = 12;

/** Every bed with both its states in words and shapes. */
export function Beds() {
  const garden = useGarden();
  const shown = useShown();
  const goToPart = useGoToPart();
  const beds = [...garden.beds].sort((one, other) => (one.steps ?? 1e9) - (other.steps ?? 1e9));
  const today = useToday();
  const [typed, setTyped] = useDesk('beds looked for', () => '');
  const matched = matchWords(
    beds.map((bed) => ({
      bed,
      words: bed.name,
      also: plantingsOn(garden, bed.id, today).map(({ cropId }) => cropName(garden, cropId)),
    })),
    // fewer beds than before, and no field to empty: all are listed
    beds.length > manyBeds ? typed : '',
  );
  const found = new Set(matched.things.map(({ bed }) => bed.id));
  const listed = beds.filter(({ id }) => found.has(id));
  // the first dozen are more than a window holds: the page stands with them, and the others follow
  const isWhole = useDeferredValue(true, false);
  const drawn = isWhole ? listed : listed.slice(0, manyBeds);
  const weaves = useId();
  const [ticked, setTicked] = useState<readonly string[] | null>(null);
  const several = useRef<HTMLButtonElement>(null);
  const wasTicking = useRef(false);
  useEffect(() => {
    // back to what led to the ticking
    if (ticked === null && wasTicking.current) several.current?.focus();
    wasTicking.current = ticked !== null;
  }, [ticked]);
  const visits = useMowings((state) => state.visits);
  const [sheets, setSheets] = useState<{ bedIds: readonly string[]; visit: number } | null>(null);
  const showSheets = (bedIds: readonly string[]): void => setSheets({ bedIds, visit: visits });
  const [copies, setCopies] = useState(false);
  const { facts, shared } = useSections();
  // whoever presses Beds among the places again comes to the beds
  if (sheets?.visit === visits)
    return <bedSheets.Part bedIds={sheets.bedIds} onBack={() => setSheets(null)} />;
  return (
    <div className="page">
      <div className="page-head">
        <div>
          <h1 tabIndex={-1}>Beds</h1>
          {beds.length > 0 && (
            <p className="soft">
              From the gate outwards. In the drawings a dot is{' '}
              {shown.estimate(shared.gramsPerDot, shown.units.nitrogenPerArea)} of nitrogen ready in
              the soil, the line across it lies {shown.chart.topSoil} down, and the strip at its
              side is the water that plants can draw on.
            </p>
          )}
        </div>
        {beds.length > 0 && (
          <div className="button-row">
            <button type="button" className="button" onClick={() => goToPart('garden-beds')}>
              Add or change beds
            </button>
            {!ticked && (
              <button
                ref={several}
                data-doing="several-beds"
                type="button"
                className="button"
                onClick={() => setTicked([])}
              >
                Choose several…
              </button>
            )}
            <button
              data-doing="copy-season"
              type="button"
              className="button"
              onClick={() => setCopies(true)}
            >
              Copy a season…
            </button>
            <button
              data-doing="bed-sheets"
              type="button"
              className="button"
              onClick={() => showSheets(beds.map(({ id }) => id))}
            >
              Sheets for paper…
            </button>
          </div>
        )}
      </div>
      {ticked && (
        <SeveralBeds
          beds={beds.filter(({ id }) => ticked.includes(id))}
          ofAll={beds.length}
          isPart={listed.length < beds.length}
          onAll={() =>
            setTicked(
              ticked.length === beds.length
                ? []
                : [...new Set([...ticked, ...listed.map(({ id }) => id)])],
            )
          }
          onDone={() => setTicked(null)}
          onSheets={() => showSheets(ticked)}
        />
      )}
      {copies && <CopyYear onClose={() => setCopies(false)} />}
      <WorkTrouble />
      {beds.length > 0 && <ImaginedLine />}
      {beds.length === 0 && <NoBeds onAdd={() => goToPart('garden-beds')} />}
      <BedsTally />
      {beds.length > manyBeds && (
        <SearchField
          label="Beds with this name or crop"
          text={typed}
          onText={setTyped}
          found={foundWords(listed.length, beds.length)}
        />
      )}
      <SectionWeaves prefix={weaves} />
      <ul className="plain-list bed-list">
        {drawn.map((bed) => {
          const own = facts.get(bed.id);
          return (
            <li key={bed.id}>
              <BedEntry
                bed={bed}
                tick={
                  ticked && (
                    <Tick
                      label={`Tick ${bed.name}`}
                      checked={ticked.includes(bed.id)}
                      onChange={(is) =>
                        setTicked(
                          is ? [...ticked, bed.id] : ticked.filter((other) => other !== bed.id),
                        )
                      }
                    />
                  )
                }
              >
                {own && <SmallSection facts={own} {...shared} weaves={weaves} />}
              </BedEntry>
            </li>
          );
        })}
      </ul>
      <RetiredBeds />
    </div>
  );
}

/** Beds that were put away, split or joined: out of the list, and still to be read. */
function RetiredBeds() {
  const garden = useGarden();
  const shown = useShown();
  const openBed = useMowings((state) => state.openBed);
  const retired = garden.retiredBeds ?? [];
  if (retired.length === 0) return null;
  return (
    <Disclosure summary={`Beds put away (${retired.length})`}>
      <ul className="plain-list">
        {retired.map(({ id, name, retired: since }) => (
          <li key={id}>
            <button type="button" className="button-small in-words" onClick={() => openBed(id)}>
              {name}
            </button>{' '}
            <span className="small soft">until {shown.day(since)}</span>
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}

/**
 * @param tick to choose it among several, while several are chosen
 * @param children the bed's section
 */
function BedEntry(props: {
  readonly bed: Bed;
  readonly tick: ReactNode;
  readonly children: ReactNode;
}) {
  const { bed, tick, children } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const results = useMowings((state) => state.bedResults[bed.id]);
  const draws = useMowings((state) => state.draws[bed.id]);
  const hasFailed = useMowings((state) => state.work === 'failed');
  const openBed = useMowings((state) => state.openBed);
  const strongest = results?.cautions[0];
  // a weight is never a word alone: who hears the list has no other beside it
  const says = strongest ? cautionSentence(strongest, shown.units) : '';
  // a hungry bed's words name the room it has as well
  const room =
    results && typeof strongest?.detail['room'] === 'number'
      ? [
          {
            text: estimateWithUnit(strongest.detail['room'], shown.units.nitrogenPerArea),
            why: roomWhy({ garden, results, draws, shown }, bed.areaM2, null),
          },
        ]
      : [];
  const same = results?.cautions.filter(({ weight }) => weight === strongest?.weight).length ?? 0;
  return (
    <article className="bed-entry" aria-labelledby={`bed-${bed.id}`}>
      <div className="bed-entry-name">
        {tick}
        <h2 id={`bed-${bed.id}`}>
          <button type="button" className="bed-open" onClick={() => openBed(bed.id)}>
            {bed.name}
          </button>
        </h2>
        <p className="small soft">
          {shown.estimate(bed.areaM2, shown.units.area)}
          {bed.steps !== null && `, ${bed.steps} steps from the gate`}
        </p>
        <p className="small">{plantedWords(garden, bed.id, today, shown)}</p>
      </div>
      {results ? (
        <>
          {children}
          <dl className="bed-entry-states">
            <div>
              <dt>Nitrogen</dt>
              <dd>
                <NitrogenWord
                  state={results.verdict.state}
                  finished={finishedCrop(results) !== null}
                />
                <StateSays bed={bed} results={results} className="small" />
                {results.verdict.ratio !== null && finishedCrop(results) === null && (
                  <StateOdds draws={draws} state={results.verdict.state} />
                )}
              </dd>
            </div>
            <div>
              <dt>Cover</dt>
              <dd>
                <CoverWord state={results.verdict.coverState} />
                <p className="small">{coverSays(results, shown)}</p>
              </dd>
            </div>
          </dl>
          <div className="bed-entry-weight small">
            {strongest ? (
              <>
                <Figured
                  before={<WeightWord weight={strongest.weight} />}
                  says={` ${says}`}
                  figures={[...figuresAndLines(strongest, shown.units), ...room]}
                  className="caution-says"
                />
                {same > 1 && <p className="soft">and {same - 1} more like it</p>}
              </>
            ) : (
              <p className="soft">nothing against it</p>
            )}
          </div>
        </>
      ) : (
        <p className="soft">{hasFailed ? 'Not reckoned' : 'Reckoning the season…'}</p>
      )}
    </article>
  );
}
