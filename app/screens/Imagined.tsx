import { useEffect, useState } from 'react';
import { useMowings, useMowingsStore } from './store';
import type { NitrogenState } from '../core/season/verdict';
import type { BedDraws, DrawsWork } from '../store/contract';
import {
  behindWords,
  imaginedProgress,
  imaginedReady,
  stateOddsWords,
} from '../words/imaginedWords';
import { TroubleReason } from './WorkTrouble';

/** Numbers that run are read a few times a second; each change holds up what is drawn beside it. */
const lookMilliseconds = 250;

function useFar(): Pick<DrawsWork, 'done' | 'of'> {
  const store = useMowingsStore();
  const [far, setFar] = useState(() => store.getState().drawsWork);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | null = null;
    const look = (): void => {
      timer = null;
      setFar(store.getState().drawsWork);
    };
    const stop = store.subscribe((now, before) => {
      if (now.drawsWork !== before.drawsWork) timer ??= setTimeout(look, lookMilliseconds);
    });
    return () => {
      stop();
      if (timer !== null) clearTimeout(timer);
    };
  }, [store]);
  return far;
}

/**
 * How far the imagined seasons of all beds are, with the one button that stops them or lets them
 * go on. It always takes the same room, so that nothing on the page moves while they are run.
 */
export function ImaginedLine() {
  const state = useMowings(({ drawsWork }) => drawsWork.state);
  const isStopped = useMowings(({ drawsWork }) => drawsWork.isStopped);
  const reason = useMowings(({ drawsWork }) => drawsWork.reason);
  const far = useFar();
  const draws = useMowings(({ draws: all }) => all);
  const stop = useMowings(({ stopDraws }) => stopDraws);
  const goOn = useMowings(({ resumeDraws }) => resumeDraws);
  const counts = Object.values(draws).map(({ answer }) => answer.count);
  const isBusy = state === 'working' && !isStopped;
  const words = isBusy
    ? imaginedProgress(far.done, far.of)
    : state === 'failed'
      ? 'The imagined seasons did not come out: only the likely course is shown.'
      : imaginedReady(counts);
  return (
    <div className="imagined-line">
      <p className="small soft">
        {isStopped ? `Imagining is stopped. ${counts.length > 0 ? words : ''}` : words}
      </p>
      {isBusy && (
        <progress aria-label="Imagined seasons" max={Math.max(1, far.of)} value={far.done} />
      )}
      <button type="button" className="button-small" onClick={isStopped ? goOn : stop}>
        {isStopped ? 'Go on imagining' : 'Stop imagining'}
      </button>
      {state === 'failed' && <TroubleReason reason={reason} />}
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
