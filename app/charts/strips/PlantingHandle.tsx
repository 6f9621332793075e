import { handleWords } from '../../words/seasonPlaceWords';
import { StageShape, stemLift } from '../season/StripPanels';
import type { PlantingPlace } from './geometry';
import type { PlantingHands } from './usePlantingMove';

/** a target for a finger [px] */
const target = 24;
/** against the marks of the plantings that are not chosen */
const grown = 1.75;

/** An end of the chosen planting to take hold of: its own seed or its own two strokes, grown large. */
export function PlantingHandle(props: {
  readonly place: PlantingPlace;
  readonly part: 'start' | 'end';
  /** of the drawing [px] */
  readonly width: number;
  readonly hands: PlantingHands;
}) {
  const { place, part, hands } = props;
  const { startX, endX, planting } = place;
  const x = part === 'start' ? startX : endX;
  if (x === null) return null;
  // the targets of a short planting's two ends lie beside each other
  const apart = startX === null || endX === null ? 0 : Math.max(0, (target - (endX - startX)) / 2);
  const wanted = x - target / 2 + (part === 'start' ? -apart : apart);
  const left = Math.max(0, Math.min(props.width - target, wanted));
  return (
    <button
      type="button"
      className="strip-handle"
      aria-label={handleWords(part, planting.name)}
      style={{
        insetInlineStart: left,
        insetBlockStart: place.top + place.height - stemLift - target / 2,
      }}
      onKeyDown={(event) => hands.onKey(event, planting.id, part)}
      {...hands.on(planting.id, () => part)}
    >
      <svg width={target} height={target} aria-hidden="true" focusable="false">
        <g transform={`translate(${x - left} ${target / 2}) scale(${grown})`}>
          <StageShape stage={part === 'start' ? 'start' : 'cleared'} x={0} y={0} />
        </g>
      </svg>
    </button>
  );
}
