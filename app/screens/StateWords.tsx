import { CoverMark, StateMark, WeightMark } from '../controls/marks/Mark';
import type { CoverState, NitrogenState, Weight } from '../core/season/verdict';

/** A nitrogen state: its mark and its word, never one without the other. */
export function NitrogenWord({ state }: { readonly state: NitrogenState }) {
  return (
    <span className="state-word">
      <StateMark state={state} />
      <span>{state}</span>
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
