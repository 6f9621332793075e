import { memo } from 'react';
import { weekNotices, type WeekNotice } from './weekNotices';
import { CoverWord, NitrogenWord } from '../StateWords';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import { CautionList, OneCaution } from '../CautionList';
import { coverSays, smotheredToday } from '../coverSays';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { plantedWords } from '../plantedWords';
import { WorkTrouble } from '../WorkTrouble';
import { finishedCrop } from '../finishedCrop';
import { hasRoom } from './layAdvice';
import { QuietBeds } from './QuietBeds';
import { StateSays } from '../why/StateSays';
import { mayOffer, usePlanOfBed } from './plan/planOfBed';
import { PlanOfBedLine } from './plan/PlanOfBedLine';
import { RoomLine } from './RoomLine';
import { TryInWhatIf } from './TryInWhatIf';
import { planSays } from '../../words/planSays';

/** What each bed has to say today, the weightiest first; beds with nothing to say share one line. */
export function Notices({ onLayHere }: { readonly onLayHere: ((bedId: string) => void) | null }) {
  const garden = useGarden();
  const bedResults = useMowings((state) => state.bedResults);
  const work = useMowings((state) => state.work);
  const { notices, quiet } = weekNotices(garden, bedResults);
  const isWaiting = garden.beds.some(({ id }) => !bedResults[id]);
  return (
    <section className="section" aria-labelledby="notices" aria-busy={work === 'working'}>
      <div className="section-head">
        <h2 id="notices">What the beds say</h2>
      </div>
      <WorkTrouble />
      {isWaiting && work !== 'failed' && <p className="soft">Reckoning the season, bed by bed…</p>}
      {garden.beds.length === 0 && (
        <p>There is no bed yet. Under Garden, add the first one; then it can say what it needs.</p>
      )}
      {notices.length === 0 && quiet.length > 0 && <p>Nothing presses today.</p>}
      {notices.length > 0 && (
        <ol className="plain-list notices">
          {notices.map((notice) => (
            <li key={notice.bed.id}>
              <Notice notice={notice} onLayHere={onLayHere} />
            </li>
          ))}
        </ol>
      )}
      <LawnsHeldBack />
      <QuietBeds beds={quiet} onLayHere={onLayHere} />
    </section>
  );
}

/** What a notice holds follows from bed and results: it is drawn again when these are others. */
const Notice = memo(NoticeOfBed, (before, now) => {
  const [one, other] = [before.notice, now.notice];
  return (
    one.bed === other.bed && one.results === other.results && before.onLayHere === now.onLayHere
  );
});

function NoticeOfBed(props: {
  readonly notice: WeekNotice;
  readonly onLayHere: ((bedId: string) => void) | null;
}) {
  const { notice, onLayHere } = props;
  const { bed, results, cautions } = notice;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const openBed = useMowings((state) => state.openBed);
  const goTo = useMowings((state) => state.goTo);
  const { verdict } = results;
  // the bed's own stop gives the same number with its line
  const isSaidBelow =
    verdict.state === 'over-fed' &&
    cautions.some(({ kind, layerId }) => kind === 'room' && layerId === null);
  const finished = finishedCrop(results);
  const plan = usePlanOfBed(bed.id);
  // what lies there is to go first, and seedlings come through no cover
  const mustWait =
    cautions.some(({ kind }) => kind === 'treated lawn') || smotheredToday(results) !== null;
  const mayTake =
    !finished &&
    !mustWait &&
    // a line of the plan can be laid by hand too, in another amount
    (plan?.kind === 'line' || mayOffer(plan)) &&
    (verdict.state === 'short' || verdict.state === 'about right') &&
    hasRoom(garden, bed, results);
  return (
    <article className={`notice notice-${notice.weight}`} aria-labelledby={`notice-${bed.id}`}>
      <div className="notice-head">
        <h3 id={`notice-${bed.id}`}>{bed.name}</h3>
        <p className="small soft">{plantedWords(garden, bed.id, today, shown)}</p>
      </div>
      <p className="notice-states">
        <NitrogenWord state={verdict.state} finished={finished !== null} />
        <span className="soft">·</span>
        <span>
          ground <CoverWord state={verdict.coverState} />
        </span>
      </p>
      {!isSaidBelow && <StateSays bed={bed} results={results} />}
      {verdict.coverState !== 'good' && <p className="small">{coverSays(results, shown)}</p>}
      {!finished && !mustWait && mayOffer(plan) && <RoomLine bed={bed} results={results} />}
      <PlanOfBedLine bedId={bed.id} />
      {cautions.length > 0 && (
        <CautionList
          cautions={cautions}
          feed={plan?.kind === 'line' ? planSays.asPlanned : undefined}
        />
      )}
      <div className="button-row">
        {onLayHere && mayTake && (
          <button type="button" className="button-small" onClick={() => onLayHere(bed.id)}>
            Lay some on {bed.name}
          </button>
        )}
        {mayTake && mayOffer(plan) && <TryInWhatIf bed={bed} results={results} />}
        <button
          type="button"
          className="button-small"
          onClick={() => {
            goTo('beds');
            openBed(bed.id);
          }}
        >
          Open {bed.name}
        </button>
        {notice.more > 0 && (
          <span className="small soft">
            {notice.more === 1 ? '1 more remark' : `${notice.more} more remarks`} there
          </span>
        )}
      </div>
    </article>
  );
}

/** Lawns whose clippings must stay lying, for as long as that holds. */
function LawnsHeldBack() {
  const garden = useGarden();
  const today = useToday();
  const held = garden.lawns.flatMap((lawn) => {
    const caution = lawnHeldBack(garden, lawn, today);
    return caution ? [{ lawn, caution }] : [];
  });
  if (held.length === 0) return null;
  return (
    <div className="quiet">
      {held.map(({ lawn, caution }) => (
        <article key={lawn.id} className="notice" aria-label={lawn.name}>
          <h3>{lawn.name}: held back</h3>
          <OneCaution caution={caution} />
        </article>
      ))}
    </div>
  );
}
