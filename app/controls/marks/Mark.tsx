import type { CoverState, NitrogenState, Weight } from '../../core/season/verdict';
import {
  classOfWord,
  coverShapes,
  type MarkShape,
  nitrogenShapes,
  weightShapes,
} from '../../words/markShapes';

function Mark({ shape, className }: { readonly shape: MarkShape; readonly className: string }) {
  return (
    <svg
      className={`mark ${className}`}
      viewBox="0 0 20 20"
      width="20"
      height="20"
      aria-hidden="true"
      focusable="false"
    >
      {shape.solid !== '' && <path className="mark-solid" fillRule="evenodd" d={shape.solid} />}
      {shape.open !== '' && <path className="mark-open" d={shape.open} />}
    </svg>
  );
}

/** The nitrogen state of a bed as a shape. The caller puts the word beside it: the mark is hidden from screen readers. */
export function StateMark({ state }: { readonly state: NitrogenState }) {
  return <Mark shape={nitrogenShapes[state]} className={`mark-state-${classOfWord(state)}`} />;
}

/** How well the ground is covered, as a shape; word beside it as above. */
export function CoverMark({ state }: { readonly state: CoverState }) {
  return <Mark shape={coverShapes[state]} className={`mark-cover-${classOfWord(state)}`} />;
}

/** The weight of a caution, as a shape; word beside it as above. */
export function WeightMark({ weight }: { readonly weight: Weight }) {
  return <Mark shape={weightShapes[weight]} className={`mark-weight-${weight}`} />;
}
