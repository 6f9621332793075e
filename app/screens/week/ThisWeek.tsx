import { memo, useCallback, useMemo, useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { Disclosure } from '../../controls/Disclosure';
import { dayOf, partsFromDay, textFromDay } from '../../core/days';
import { clippingsKeep } from '../../document/clippingsKeep';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import { imaginedShare, openMowings } from '../../store/selectors';
import { percent } from '../../words/chartFormat';
import { lostPartSentence } from '../../words/lostPart';
import { editFailureSentence } from '../../words/messages';
import { logWords } from '../../words/weekWords';
import { useDesk } from '../desk';
import { useGoToPart, weatherHeading } from '../garden/wantedPart';
import { useShown } from '../shown';
import { useGarden, useMowings, useMowingsStore } from '../store';
import { useToday } from '../useReadingContext';
import { backLog, goneMowings, weekNewsBlock } from '../places';
import { layAdvice } from './layAdvice';
import type { WantedBed } from './LayForm';
import { LogMowing } from './LogMowing';
import { Notices } from './Notices';
import { OpenMowing } from './OpenMowing';
import { PastMowings } from './PastMowings';
import { PlanSection } from './plan/PlanSection';
import { Water } from './water/Water';
import { weekBefore, type WeekBefore } from './weekNews';

/* drawn again only when what they show is another, not with every letter or answer */
const Log = memo(LogMowing);
const Plan = memo(PlanSection);
const Said = memo(Notices);
const Watering = memo(Water);
const Past = memo(PastMowings);

/** What the beds say today, the clippings in hand and where they go, and what went before. */
export function ThisWeek() {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const undecided = useMemo(() => openMowings(garden), [garden]);
  const open = useMemo(
    () => undecided.filter((mowing) => clippingsKeep(mowing, today)),
    [undecided, today],
  );
  const gone = undecided.filter((mowing) => dayOf(mowing.date) <= today && !open.includes(mowing));
  const [chosen, setChosen] = useState<string | null>(null);
  const [fresh, setFresh] = useState<string | null>(null);
  /** counts how often a mowing was logged, which the plan answers */
  const [looks, setLooks] = useState(0);
  const [wanted, setWanted] = useState<WantedBed | null>(null);
  const store = useMowingsStore();
  const [news, setNews] = useDesk<WeekBefore | null>('week news', () => null);
  const openId = open.some(({ id }) => id === chosen) ? chosen : (open[0]?.id ?? null);
  const inHand = open.find(({ id }) => id === openId);
  const lawn = garden.lawns.find(({ id }) => id === inHand?.lawnId);
  // what is held back is not offered to any bed
  const isHeld =
    inHand && lawn ? lawnHeldBack(garden, lawn, dayOf(inHand.date))?.weight === 'stop' : false;
  const layHere = useCallback(
    (bedId: string) => {
      const bed = garden.beds.find(({ id }) => id === bedId);
      const results = store.getState().bedResults[bedId];
      const mowing = garden.mowings.find(({ id }) => id === openId);
      const advice =
        bed && results && mowing ? layAdvice(garden, bed, results, mowing, shown) : null;
      setWanted((now) => ({ bedId, press: (now?.press ?? 0) + 1, advice }));
    },
    [garden, openId, shown, store],
  );
  const onLogged = useCallback((id: string) => {
    setChosen(id);
    setLooks((now) => now + 1);
  }, []);
  return (
    <div className="page week-page">
      <div className="page-head week-head">
        <div>
          <h1 tabIndex={-1}>This week</h1>
          <p className="lead">{shown.day(today)}</p>
        </div>
        <GoOn onGone={setNews} />
      </div>
      {news && news.to === shown.iso(today) && (
        <weekNewsBlock.Part before={news} onDismiss={() => setNews(null)} />
      )}
      <section className="sheet log-sheet not-printed" aria-labelledby="log">
        <h2 id="log">{open.length > 0 ? logWords.again : logWords.first}</h2>
        <Disclosure summary={logWords.catchUp} quiet>
          <backLog.Part />
        </Disclosure>
        <Log onLogged={onLogged} />
      </section>
      <Plan looks={looks} />
      <Imagined />
      <div className="two-columns">
        <Said onLayHere={open.length > 0 && !isHeld ? layHere : null} />
        <div className="section">
          <section className="section" aria-labelledby="in-hand">
            <div className="section-head">
              <h2 id="in-hand">Clippings in hand</h2>
            </div>
            {open.length === 0 && (
              <p>
                None. Mown today? Write down what came off, and see which bed it would help and
                which it would harm.
              </p>
            )}
            {open.map((mowing) => (
              <OpenMowing
                key={mowing.id}
                mowing={mowing}
                isOpen={mowing.id === openId}
                focusOnShow={mowing.id === fresh}
                wanted={mowing.id === openId ? wanted : null}
                onOpen={() => {
                  setChosen(mowing.id);
                  setFresh(mowing.id);
                }}
              />
            ))}
            {gone.length > 0 && <goneMowings.Part mowings={gone} />}
          </section>
          <Watering />
          <Past />
        </div>
      </div>
    </div>
  );
}

/** Says what the days ahead rest on, wherever part of the season was measured by nobody. */
function Imagined() {
  const garden = useGarden();
  const one = useMowings((state) => Object.values(state.bedResults)[0]);
  const goToPart = useGoToPart();
  if (!one) return null;
  const untilToday = one.season.kind.slice(0, one.season.today - one.season.firstDay + 1);
  const past = imaginedShare(untilToday);
  const { place, standing } = garden.weather.normals;
  return (
    <div className="imagined-note">
      <p>
        {past > 0.995
          ? 'No weather of this season is on record yet: all of it is imagined. Log rain, or bring measured days.'
          : past > 0.05
            ? `The days ahead are imagined, and so are ${percent(past)} of those gone by. Log rain, or bring measured days.`
            : 'The days ahead are imagined: forecasts rest on them.'}
      </p>
      <Disclosure summary="From what" quiet>
        <p>
          An imagined rest of the season, made from the usual months of {place} (
          {standing.replace(/\.$/, '')}).{' '}
          <button type="button" className="button-small" onClick={() => goToPart(weatherHeading)}>
            Bring measured days
          </button>
        </p>
      </Disclosure>
    </div>
  );
}

/** Brings the next real week of the sample's record. */
function GoOn({ onGone }: { readonly onGone: (before: WeekBefore) => void }) {
  const garden = useGarden();
  const goOnAWeek = useMowings((state) => state.goOnAWeek);
  const announce = useAnnounce();
  const shown = useShown();
  const today = useToday();
  const store = useMowingsStore();
  const { year } = partsFromDay(today);
  const [refused, setRefused] = useState<string | null>(null);
  if (garden.weather.bundledRecord === null) return null;
  return (
    <div className="go-on not-printed">
      <button
        type="button"
        className="button"
        onClick={() => {
          const now = textFromDay(today);
          const { bedResults } = store.getState();
          void goOnAWeek().then(
            (result) => {
              setRefused(result.ok ? null : editFailureSentence(result.error));
              if (!result.ok) return;
              onGone(weekBefore(now, result.value.today, bedResults));
              announce(`It is now ${shown.day(result.value.today)}.`);
            },
            () => setRefused(lostPartSentence),
          );
        }}
      >
        Go on a week
      </button>
      <p className="small soft">Brings what the weather of {year} really did next.</p>
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
    </div>
  );
}
