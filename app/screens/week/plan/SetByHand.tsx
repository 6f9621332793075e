import type { PlanAnswer } from '../../../core/plan/answer';
import type { PlanPin } from '../../../core/plan/question';
import { exactWords } from '../../../words/planSays';
import { planSourceWords } from '../../../words/planWords';
import { useShown } from '../../shown';
import { useMowings } from '../../store';
import { usePlanNames } from './usePlanNames';

/** The plan's id of something, as its words need it. */
function refOf(sourceId: string): PlanAnswer['sources'][number]['ref'] | null {
  const [kind, ...rest] = sourceId.split(' ');
  const id = rest.join(' ');
  if (kind === 'mowing') return { source: 'mowing', mowingId: id };
  return kind === 'stock' ? { source: 'stock', stockId: id } : null;
}

/** Amounts that the plan keeps to, each with the way back. */
export function SetByHand({ onFree }: { readonly onFree: (words: string) => void }) {
  const pins = useMowings((state) => state.planWishes.pins);
  const pinPlan = useMowings((state) => state.pinPlan);
  const names = usePlanNames();
  const { estimate, units } = useShown();
  const exact = pins.flatMap((pin: PlanPin) => {
    const ref = pin.sourceId === null ? null : refOf(pin.sourceId);
    return ref ? [{ ...pin, what: planSourceWords(ref, names) }] : [];
  });
  if (exact.length === 0) return null;
  return (
    <div className="plan-set not-printed">
      <h3>{exactWords.heading}</h3>
      <p className="small soft">{exactWords.unsaved}</p>
      <ul className="plain-list">
        {exact.map(({ bedId, sourceId, litres, what }) => {
          const bed = names.bed(bedId);
          const words =
            litres === 0
              ? exactWords.nothing(bed, what)
              : exactWords.one(bed, estimate(litres, units.volume), what);
          return (
            <li key={`${bedId} ${sourceId}`}>
              {words}{' '}
              <button
                type="button"
                className="button-small"
                aria-label={`${exactWords.choose}: ${bed}, ${what}`}
                onClick={() => {
                  pinPlan(bedId, sourceId, null);
                  onFree(exactWords.free(bed));
                }}
              >
                {exactWords.choose}
              </button>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
