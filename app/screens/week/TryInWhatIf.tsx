import type { Bed } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { tryWords } from '../../words/whatIfWords';
import { firstAlternative } from '../beds/whatIf/alternatives';
import { usePutOnDesk } from '../desk';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { whenThere } from '../whenThere';

/** Beside room that is offered: the same layer set against the bed as it is, in imagined seasons. */
export function TryInWhatIf({ bed, results }: { readonly bed: Bed; readonly results: BedResults }) {
  const garden = useGarden();
  const shown = useShown();
  const put = usePutOnDesk();
  const goTo = useMowings((state) => state.goTo);
  const openBed = useMowings((state) => state.openBed);
  return (
    <button
      type="button"
      className="button-small not-printed"
      onClick={() => {
        put(`what if ${bed.id}`, [firstAlternative(garden, bed, results, shown)]);
        goTo('beds');
        openBed(bed.id);
        whenThere('#bed-what-if', (heading) => {
          heading.focus();
          heading.scrollIntoView({ block: 'start' });
        });
      }}
    >
      {tryWords(bed.name)}
    </button>
  );
}
