import { useHeardAtRest } from '../../controls/Announcer';
import type { DaySpan } from '../../charts/season/data';
import { seasonEnd } from '../../core/days';
import type { ComingRanges } from '../../store/comingRanges';
import type { ComingSeason } from '../../store/nextSeasonSlice';
import { imaginedProgress } from '../../words/imaginedWords';
import {
  comingRangesWords,
  comingSeasonWords as words,
  comingStoppedWords,
} from '../../words/seasonPlaceWords';
import { useGarden } from '../store';
import { useToday } from '../useReadingContext';
import { TroubleReason } from '../WorkTrouble';
import { useIsComing, type UsedComingRanges } from './useComingSeason';

/** What the sums of a season that has not begun rest on, or that there are none. */
export function ComingSeasonLine(props: {
  readonly coming: ComingSeason;
  readonly likely: UsedComingRanges;
  readonly span: DaySpan;
}) {
  const { coming, span } = props;
  const { ranges, stop, goOn } = props.likely;
  const isComing = useIsComing(span);
  const { seasonStartMonth } = useGarden().garden;
  const today = useToday();
  if (span.from <= seasonEnd(today, seasonStartMonth)) return null;
  if (!isComing) return <p className="small">{words.later}</p>;
  if (coming.state !== 'failed')
    return (
      <>
        <p className="small">{words.rests}</p>
        {ranges && <RangesLine ranges={ranges} stop={stop} goOn={goOn} />}
      </>
    );
  return (
    <div className="field-trouble">
      <p role="alert">
        <span aria-hidden="true" className="field-trouble-mark" />
        {words.failed}
      </p>
      <TroubleReason reason={coming.reason} />
    </div>
  );
}

/** How far its imagined seasons are, with the one button that stops them or lets them go on. */
function RangesLine({
  ranges,
  stop,
  goOn,
}: Omit<UsedComingRanges, 'ranges'> & { readonly ranges: ComingRanges }) {
  const { state, isStopped, done, of, reason, beds } = ranges;
  const bedCount = useGarden().beds.length;
  const counts = Object.values(beds).map(({ count }) => count);
  const isBusy = state === 'working' && !isStopped;
  const isOver = state === 'ready';
  useHeardAtRest(
    state === 'failed'
      ? words.rangesFailed
      : isOver
        ? comingRangesWords(counts)
        : isBusy
          ? words.busyHeard
          : '',
    'coming season',
  );
  return (
    <div className="imagined-line">
      <p className="small soft">
        {isStopped
          ? comingStoppedWords(counts, bedCount)
          : state === 'failed'
            ? words.rangesFailed
            : isBusy && done < of
              ? imaginedProgress(done, of)
              : comingRangesWords(counts)}
      </p>
      {isBusy && <progress aria-label={words.progress} max={Math.max(1, of)} value={done} />}
      {!isOver && (
        <button
          type="button"
          className="button-small not-printed"
          onClick={isStopped || state === 'failed' ? goOn : stop}
        >
          {isStopped ? words.goOn : state === 'failed' ? words.again : words.stop}
        </button>
      )}
      {state === 'failed' && <TroubleReason reason={reason} />}
    </div>
  );
}
