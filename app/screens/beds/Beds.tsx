import { type ReactNode, useId } from 'react';
import { SectionWeaves } from '../../charts/section/SectionWeaves';
import { SmallSection } from '../../charts/section/Small';
import { useGoToPart } from '../garden/wantedPart';
import { useGarden, useMowings } from '../store';
import { useShown } from '../shown';
import { useToday } from '../useReadingContext';
import { CoverWord, NitrogenWord, WeightWord } from '../StateWords';
import { finishedCrop } from '../finishedCrop';
import { plantedWords } from '../plantedWords';
import { coverSentence } from '../../words/states';
import type { Bed } from '../../document/schema';
import { ImaginedLine, StateOdds } from '../Imagined';
import { StateSays } from '../why/StateSays';
import { WorkTrouble } from '../WorkTrouble';
import { BedsTally } from './BedsTally';
import { NoBeds } from './NoBeds';
import { useSections } from './useSections';

/** Every bed with both its states in words and shapes. */
export function Beds() {
  const garden = useGarden();
  const shown = useShown();
  const goToPart = useGoToPart();
  const beds = [...garden.beds].sort((one, other) => (one.steps ?? 1e9) - (other.steps ?? 1e9));
  const weaves = useId();
  const { facts, shared } = useSections();
  return (
    <div className="page">
      <div className="page-head">
        <div>
          <h1 tabIndex={-1}>Beds</h1>
          {beds.length > 0 && (
            <p className="soft">
              From the gate outwards. In the drawings a dot is{' '}
              {shown.estimate(shared.gramsPerDot, shown.units.nitrogenPerArea)} of nitrogen ready in
              the soil, and the line across it lies {shown.chart.topSoil} down.
            </p>
          )}
        </div>
        {beds.length > 0 && (
          <button type="button" className="button" onClick={() => goToPart('garden-beds')}>
            Add or change beds
          </button>
        )}
      </div>
      <WorkTrouble />
      {beds.length > 0 && <ImaginedLine />}
      {beds.length === 0 && <NoBeds onAdd={() => goToPart('garden-beds')} />}
      <BedsTally />
      <SectionWeaves prefix={weaves} />
      <ul className="plain-list bed-list">
        {beds.map((bed) => {
          const own = facts.get(bed.id);
          return (
            <li key={bed.id}>
              <BedEntry bed={bed}>
                {own && <SmallSection facts={own} {...shared} weaves={weaves} />}
              </BedEntry>
            </li>
          );
        })}
      </ul>
    </div>
  );
}

/** @param children the bed's section */
function BedEntry({ bed, children }: { readonly bed: Bed; readonly children: ReactNode }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const results = useMowings((state) => state.bedResults[bed.id]);
  const draws = useMowings((state) => state.draws[bed.id]);
  const work = useMowings((state) => state.work);
  const openBed = useMowings((state) => state.openBed);
  const strongest = results?.cautions[0];
  const same = results?.cautions.filter(({ weight }) => weight === strongest?.weight).length ?? 0;
  return (
    <article className="bed-entry" aria-labelledby={`bed-${bed.id}`}>
      <div className="bed-entry-name">
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
                <p className="small">{coverSentence(results.verdict)}</p>
              </dd>
            </div>
          </dl>
          <p className="bed-entry-weight small">
            {strongest ? (
              <>
                <WeightWord weight={strongest.weight} />
                {same > 1 && <span className="soft">and {same - 1} more like it</span>}
              </>
            ) : (
              <span className="soft">nothing against it</span>
            )}
          </p>
        </>
      ) : (
        <p className="soft">{work === 'failed' ? 'Not reckoned' : 'Reckoning the season…'}</p>
      )}
    </article>
  );
}
