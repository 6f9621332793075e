import { useMowings } from './store';
import type { NitrogenState } from '../core/season/verdict';
import type { BedDraws } from '../store/contract';
import {
  behindWords,
  imaginedProgress,
  imaginedReady,
  stateOddsWords,
} from '../words/imaginedWords';
import { TroubleReason } from './WorkTrouble';

/**
 * How far the imagined seasons of all beds are, with the one button that stops them or lets them
 * go on. It always takes the same room, so that nothing on the page moves while they are run.
 */
export function ImaginedLine() {
  const work = useMowings((state) => state.drawsWork);
  const draws = useMowings((state) => state.draws);
  const stop = useMowings((state) => state.stopDraws);
  const goOn = useMowings((state) => state.resumeDraws);
  const counts = Object.values(draws).map(({ answer }) => answer.count);
  const isBusy = work.state === 'working' && !work.isStopped;
  const words = isBusy
    ? imaginedProgress(work.done, work.of)
    : work.state === 'failed'
      ? 'The imagined seasons did not come out: only the likely course is shown.'
      : imaginedReady(counts);
  return (
    <div className="imagined-line">
      <p className="small soft">
        {work.isStopped ? `Imagining is stopped. ${counts.length > 0 ? words : ''}` : words}
      </p>
      {isBusy && (
        <progress aria-label="Imagined seasons" max={Math.max(1, work.of)} value={work.done} />
      )}
      <button type="button" className="button-small" onClick={work.isStopped ? goOn : stop}>
        {work.isStopped ? 'Go on imagining' : 'Stop imagining'}
      </button>
      {work.state === 'failed' && <TroubleReason reason={work.reason} />}
    </div>
  );
}

/** The odds of a bed's states, beside the state itself. */
export function StateOdds(props: {
  readonly draws: BedDraws | undefined;
  /** the state of the likely course */
  readonly state: NitrogenState;
}) {
  const { draws, state } = props;
  if (!draws) return <p className="small soft">Its odds are still to come.</p>;
  return (
    <p className="small">
      {stateOddsWords(draws.answer.states, state)}
      {draws.isBehind && <span className="soft"> ({behindWords})</span>}.
    </p>
  );
}
