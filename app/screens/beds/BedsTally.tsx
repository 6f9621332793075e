import { nitrogenStates } from '../../core/season/verdict';
import { finishedWord } from '../../words/states';
import { finishedCrop } from '../finishedCrop';
import { StateCount } from '../StateWords';
import { useGarden, useMowings } from '../store';

/** From so many beds on they are counted before they are listed. */
const fromBeds = 12;

/** How many beds are in which state, where there are more than one sees at a glance. */
export function BedsTally() {
  const garden = useGarden();
  const bedResults = useMowings((state) => state.bedResults);
  if (garden.beds.length < fromBeds) return null;
  const states = garden.beds.flatMap(({ id }) => {
    const results = bedResults[id];
    return results ? [finishedCrop(results) ? finishedWord : results.verdict.state] : [];
  });
  return (
    <ul className="plain-list beds-tally" aria-label="How many beds are in which state">
      {([...nitrogenStates, finishedWord] as const).map((state) => {
        const count = states.filter((each) => each === state).length;
        return (
          count > 0 && (
            <li key={state}>
              <StateCount state={state} count={count} />
            </li>
          )
        );
      })}
    </ul>
  );
}
