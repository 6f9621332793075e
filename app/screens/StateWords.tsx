import { CoverMark, StateMark, WeightMark } from '../controls/marks/Mark';
import type { CoverState, NitrogenState, Weight } from '../core/season/verdict';
import { finishedWord } from '../words/states';

/** A nitrogen state: its mark and its word, never one without the other. */
export function NitrogenWord(props: {
  readonly state: NitrogenState;
  /** its crop is past its end: the state of the sums says nothing of the bed */
  readonly finished?: boolean;
}) {
  const { state, finished = false } = props;
  return (
    <span className="state-word">
      <StateMark state={finished ? 'nothing planted' : state} />
      <span>{finished ? finishedWord : state}</span>
    </span>
  );
}

/** A state and how many beds are in it. */
export function StateCount(props: {
  readonly state: NitrogenState | typeof finishedWord;
  readonly count: number;
}) {
  const { state, count } = props;
  return (
    <span className="state-word">
      <StateMark state={state === finishedWord ? 'nothing planted' : state} />
      <span>
        {count} {state}
      </span>
    </span>
  );
}

export function CoverWord({ state }: { readonly state: CoverState }) {
  return (
    <span className="state-word">
      <CoverMark state={state} />
      <span>{state}</span>
    </span>
  );
}

export function WeightWord({ weight }: { readonly weight: Weight }) {
  return (
    <span className={`state-word weight-${weight}`}>
      <WeightMark weight={weight} />
      <span className="strong">{weight}</span>
    </span>
  );
}
