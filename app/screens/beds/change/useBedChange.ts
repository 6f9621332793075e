import { dayOf, textFromDay } from '../../../core/days';
import type { Result } from '../../../core/result';
import type { BedChangeFailure } from '../../../document/bedChanges/changeFailure';
import type { Garden } from '../../../document/schema';
import { bedChangeSentence } from '../../../words/bedChangeWords';
import { editFailureSentence } from '../../../words/messages';
import { useShown } from '../../shown';
import { useMowings } from '../../store';
import { useToday } from '../../useReadingContext';

/** Why beds were not changed, in words, and the day on which they could be. */
export interface Refused {
  readonly says: string;
  /** YYYY-MM-DD, by today; null: another day mends nothing */
  readonly possibleOn: string | null;
}

/** Keeps a garden with changed beds as one named step; answers why not, or null when it was kept. */
export function useBedChange(): (
  label: string,
  changed: Result<Garden, BedChangeFailure>,
) => Refused | null {
  const edit = useMowings((state) => state.edit);
  const shown = useShown();
  const today = textFromDay(useToday());
  return (label, changed) => {
    if (!changed.ok)
      return {
        says: bedChangeSentence(changed.error, shown.dayWord),
        possibleOn: dayPossible(changed.error, today),
      };
    const { beds, retiredBeds, plantings } = changed.value;
    const kept = edit(label, (draft) => {
      draft.beds = beds;
      draft.plantings = plantings;
      if (retiredBeds) draft.retiredBeds = retiredBeds;
      else delete draft.retiredBeds;
    });
    return kept.ok ? null : { says: editFailureSentence(kept.error), possibleOn: null };
  };
}

/** The first day from which nothing stands in the way, where that is not still to come. */
function dayPossible(failure: BedChangeFailure, today: string): string | null {
  if (failure.kind !== 'written since' && failure.kind !== 'made since') return null;
  const day =
    failure.kind === 'written since' ? failure.date : textFromDay(dayOf(failure.date) + 1);
  return day <= today ? day : null;
}
