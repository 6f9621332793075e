import { memo, useDeferredValue, useEffect, useMemo, useState } from 'react';
import { CoverChart } from '../../charts/cover/Chart';
import { coverTable } from '../../charts/cover/tableData';
import { SeasonChart } from '../../charts/season/Chart';
import { seasonTable } from '../../charts/season/tableData';
import { nothingToRemark } from '../../words/cautions';
import { bedSheets } from '../places';
import { CautionList } from '../CautionList';
import { finishedCrop } from '../finishedCrop';
import { plantedWords } from '../plantedWords';
import { ImaginedLine, StateOdds } from '../Imagined';
import { coverSays } from '../coverSays';
import { useShown } from '../shown';
import { useUnchanged } from '../useUnchanged';
import { CoverWord, NitrogenWord } from '../StateWords';
import { useGarden, useMowings } from '../store';
import { useAnsweredGarden } from '../useAnsweredGarden';
import { useToday } from '../useReadingContext';
import { StateSays } from '../why/StateSays';
import { WorkTrouble } from '../WorkTrouble';
import { RoomLine } from '../week/RoomLine';
import { TakeAway } from '../takeAway/TakeAway';
import { BedChartFigures } from './BedChartFigures';
import { BedContents } from './BedContents';
import { KeyedPage } from '../keys/KeyedPage';
import { BedHead } from './BedHead';
import { BedLedger } from './BedLedger';
import { BedLog } from './BedLog';
import { BedSection } from './BedSection';
import { BedPlantings } from './BedPlantings';
import { RakeAdvised } from './RakeAdvised';
import { BedSoil } from './BedSoil';
import { coverChartData, seasonChartData, seasonSpan } from './chartData';
import { HowSure } from './HowSure';
import { ledgerPeriods } from './ledgerPeriods';
import { BedTools } from './change/BedTools';
import { RetiredBed } from './change/RetiredBed';
import { CoverWorth } from './CoverWorth';
import { MineralAccount } from './MineralAccount';
import { SeasonsAccount } from './SeasonsAccount';
import { WhatIfSection } from './whatIf/WhatIfSection';

/* drawn again only when what they show is another */
const Season = memo(SeasonChart);
const Cover = memo(CoverChart);
const Section = memo(BedSection);
const Sure = memo(HowSure);
const WhatIf = memo(WhatIfSection);
const Log = memo(BedLog);
const Plantings = memo(BedPlantings);
const Soil = memo(BedSoil);
const Ledger = memo(BedLedger);
const Seasons = memo(SeasonsAccount);
const Minerals = memo(MineralAccount);

const noPart: ReadonlySet<string> = new Set();
const notYetSure: ReadonlySet<string> = new Set(['bed-sure']);

/** One bed: its states and why, its season, cover and ledger, its log, plantings and soil. */
export function BedPage({ bedId }: { readonly bedId: string }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const results = useMowings((state) => state.bedResults[bedId]);
  const history = useMowings((state) => state.history);
  const draws = useMowings((state) => state.draws[bedId]);
  const openBed = useMowings((state) => state.openBed);
  const wantHistory = useMowings((state) => state.wantHistory);
  useEffect(() => {
    // with every later change it is asked again once the bed itself is reckoned
    wantHistory(bedId);
  }, [wantHistory, bedId]);
  const bed = garden.beds.find(({ id }) => id === bedId);

  const answered = useAnsweredGarden(results);
  const weeks = history?.bedId === bedId ? history.weeks : null;
  const now = useMemo(
    () => ({ garden: answered, results, draws, weeks }),
    [answered, results, draws, weeks],
  );
  // The states of an edit do not wait for the drawings, which follow in pieces that give way to keys.
  const later = useDeferredValue(now);
  // the first are drawn with the page
  const drawn = later.results ? later : now;
  const { garden: drawnGarden, results: drawnResults, weeks: drawnWeeks } = drawn;
  const made = useMemo(() => {
    if (!drawnResults) return null;
    const { from, to } = seasonSpan(drawnGarden, drawnResults);
    return {
      from,
      to,
      cover: coverChartData(drawnGarden, drawnResults, shown.chart),
      ledger: ledgerPeriods(drawnGarden, drawnResults),
    };
  }, [drawnGarden, drawnResults, shown.chart]);
  const imagined = drawn.draws?.answer;
  const madeSeason = useMemo(
    () =>
      drawnResults && seasonChartData(drawnGarden, drawnResults, drawnWeeks, shown.chart, imagined),
    [drawnGarden, drawnResults, drawnWeeks, imagined, shown.chart],
  );
  // an edit of another bed changes the garden, and nothing of these
  const season = useUnchanged(madeSeason);
  const charts = useUnchanged(made);

  const retired = garden.retiredBeds?.find(({ id }) => id === bedId);
  const [showsSheet, setShowsSheet] = useState(false);
  if (bed && showsSheet)
    return <bedSheets.Part bedIds={[bedId]} onBack={() => setShowsSheet(false)} />;
  if (!bed && retired) return <RetiredBed bed={retired} />;
  if (!bed)
    return (
      <div className="page">
        <h1 tabIndex={-1}>This bed is no longer in the garden</h1>
        <div>
          <button type="button" className="button" onClick={() => openBed(null)}>
            All beds
          </button>
        </div>
      </div>
    );
  return (
    <KeyedPage>
      <BedHead
        name={bed.name}
        deed={charts && season && <BedContents without={drawn.draws ? noPart : notYetSure} />}
      >
        <p className="soft">
          {shown.estimate(bed.areaM2, shown.units.area)}.{' '}
          {plantedWords(garden, bed.id, today, shown)}.
        </p>
        <BedTools bed={bed} onSheet={() => setShowsSheet(true)} />
      </BedHead>
      <WorkTrouble />
      <ImaginedLine />
      {!results || !drawnResults || !charts || !season ? (
        <p className="soft">Reckoning the season…</p>
      ) : (
        <BedChartFigures bedId={bedId}>
          <div className="bed-top">
            <section className="sheet" aria-labelledby="bed-state">
              <h2 id="bed-state">How it stands</h2>
              <dl className="bed-state">
                <div>
                  <dt>Nitrogen</dt>
                  <dd>
                    <NitrogenWord
                      state={results.verdict.state}
                      finished={finishedCrop(results) !== null}
                    />
                    <StateSays bed={bed} results={results} />
                    {results.verdict.ratio !== null && finishedCrop(results) === null && (
                      <StateOdds draws={draws} state={results.verdict.state} />
                    )}
                    <RoomLine bed={bed} results={results} />
                  </dd>
                </div>
                <div>
                  <dt>Cover</dt>
                  <dd>
                    <CoverWord state={results.verdict.coverState} />
                    <p>{coverSays(results, shown)}</p>
                    <CoverWorth results={results} />
                  </dd>
                </div>
              </dl>
            </section>
            <Section bed={bed} garden={drawnGarden} results={drawnResults} />
            <section className="section bed-top-cautions" aria-labelledby="bed-cautions">
              <div className="section-head">
                <h2 id="bed-cautions">Worth knowing</h2>
              </div>
              {results.cautions.length > 0 ? (
                <CautionList cautions={results.cautions} />
              ) : (
                <p>{nothingToRemark}</p>
              )}
              <RakeAdvised bed={bed} results={results} />
            </section>
          </div>
          <section className="section" aria-labelledby="bed-season">
            <h2 id="bed-season" tabIndex={-1} className="section-head">
              Its season
            </h2>
            <TakeAway
              name={`Season of ${bed.name}`}
              table={() => seasonTable(season, { from: charts.from, to: charts.to })}
            >
              <Season {...season} bedName={bed.name} from={charts.from} to={charts.to} />
            </TakeAway>
          </section>
          {drawn.draws && (
            <Sure bed={bed} garden={drawnGarden} results={drawnResults} draws={drawn.draws} />
          )}
          <WhatIf key={bed.id} bed={bed} results={drawnResults} />
          <section className="section" aria-labelledby="bed-cover">
            <h2 id="bed-cover" tabIndex={-1} className="section-head">
              Its cover
            </h2>
            <TakeAway name={`Cover on ${bed.name}`} table={() => coverTable(charts.cover)}>
              <Cover {...charts.cover} bedName={bed.name} />
            </TakeAway>
          </section>
          <div className="two-columns two-columns-left">
            <Log bed={bed} results={drawnResults} />
            <div className="section">
              <Plantings bed={bed} />
              <Soil bed={bed} results={drawnResults} />
            </div>
          </div>
          <section className="section" aria-labelledby="bed-ledger">
            <h2 id="bed-ledger" tabIndex={-1} className="section-head">
              Its ledger
            </h2>
            <Ledger bed={bed} periods={charts.ledger} />
          </section>
          <Seasons garden={drawnGarden} results={drawnResults} />
          <Minerals garden={drawnGarden} results={drawnResults} />
        </BedChartFigures>
      )}
    </KeyedPage>
  );
}
