import type { Result } from '../../../core/result';
import type { BedChangeFailure } from '../../../document/bedChanges/changeFailure';
import type { Garden } from '../../../document/schema';
import { bedChangeSentence } from '../../../words/bedChangeWords';
import { editFailureSentence } from '../../../words/messages';
import { useShown } from '../../shown';
import { useMowings } from '../../store';

/** Keeps a garden with changed beds as one named step; answers why not, or null when it was kept. */
export function useBedChange(): (
  label: string,
  changed: Result<Garden, BedChangeFailure>,
) => string | null {
  const edit = useMowings((state) => state.edit);
  const shown = useShown();
  return (label, changed) => {
    if (!changed.ok) return bedChangeSentence(changed.error, shown.dayWord);
    const { beds, retiredBeds, plantings } = changed.value;
    const kept = edit(label, (draft) => {
      draft.beds = beds;
      draft.plantings = plantings;
      if (retiredBeds) draft.retiredBeds = retiredBeds;
      else delete draft.retiredBeds;
    });
    return kept.ok ? null : editFailureSentence(kept.error);
  };
}
