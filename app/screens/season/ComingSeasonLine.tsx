import type { DaySpan } from '../../charts/season/data';
import { seasonEnd } from '../../core/days';
import type { ComingSeason } from '../../store/nextSeasonSlice';
import { comingSeasonWords as words } from '../../words/seasonPlaceWords';
import { useGarden } from '../store';
import { useToday } from '../useReadingContext';
import { TroubleReason } from '../WorkTrouble';
import { useIsComing } from './useComingSeason';

/** What the sums of a season that has not begun rest on, or that there are none. */
export function ComingSeasonLine(props: { readonly coming: ComingSeason; readonly span: DaySpan }) {
  const { coming, span } = props;
  const isComing = useIsComing(span);
  const { seasonStartMonth } = useGarden().garden;
  const today = useToday();
  if (span.from <= seasonEnd(today, seasonStartMonth)) return null;
  if (!isComing) return <p className="small">{words.later}</p>;
  if (coming.state !== 'failed') return <p className="small">{words.rests}</p>;
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
