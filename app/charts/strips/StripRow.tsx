import { type KeyboardEvent, type ReactNode, useMemo } from 'react';
import type { DayNumber } from '../../core/days';
import type { ChartUnits } from '../../words/chartUnits';
import {
  handleWords,
  movingWords,
  plantingLabel,
  readyWords,
  seasonPlaceWords as words,
} from '../../words/seasonPlaceWords';
import type { CalendarStretch } from '../season/calendar';
import type { Stretch } from '../season/geometry';
import type { BedStrip } from './data';
import { bedStripGeometry, readyOn, type PlantingPlace } from './geometry';
import type { StripLayout, StripScale } from './layout';
import { StripDrawing } from './StripDrawing';
import type { usePlantingMove } from './usePlantingMove';

type Moving = ReturnType<typeof usePlantingMove>;

/** so near an end a press takes hold of the end [px] */
const grip = 9;
const handle = 24;

const partAt =
  ({ startX, endX, width }: PlantingPlace) =>
  (offset: number, wide: number) => {
    // what is narrow is moved whole: its ends have handles when it is chosen, and fields
    if (width < 5 * grip) return 'whole';
    if (startX !== null && offset <= grip) return 'start';
    return endX !== null && wide - offset <= grip ? 'end' : 'whole';
  };

export interface StripRowProps {
  readonly bed: BedStrip;
  readonly layout: StripLayout;
  readonly scale: StripScale;
  readonly months: readonly CalendarStretch[];
  readonly imagined: readonly Stretch[];
  readonly todayX: number | null;
  readonly day: DayNumber;
  readonly units: ChartUnits;
  readonly weaves: string;
  /** the planting the Tab key comes to, among those of all beds */
  readonly current: string | null;
  readonly selected: string | null;
  readonly moving: Moving;
  readonly onFocusPlanting: (plantingId: string) => void;
  readonly onKey: (event: KeyboardEvent, plantingId: string) => void;
  readonly onSelect: (plantingId: string) => void;
  readonly onOpenBed: (bedId: string) => void;
  /** its state in a word and mark */
  readonly state: ReactNode;
  /** what is said of what does not go together */
  readonly troubles: ReactNode;
  /** fields of the chosen planting, where it stands on this bed */
  readonly fields: ReactNode;
}

/** One bed: its name and value, its strip, and over it what can be pressed and dragged. */
export function StripRow(props: StripRowProps) {
  const { bed, layout, scale, units, moving, day } = props;
  const geometry = useMemo(() => bedStripGeometry(bed, layout, scale), [bed, layout, scale]);
  const grams = readyOn(bed, day);
  const lacking =
    bed.run === null ? words.notReckoned : geometry.known === null ? words.outside : null;
  const chosen = geometry.places.find(({ planting }) => planting.id === props.selected);
  const moved = geometry.places.find(({ planting }) => planting.id === moving.move?.plantingId);
  return (
    <li className="strip-row">
      <div className="strip-head">
        <h3>
          <button type="button" className="bed-open" onClick={() => props.onOpenBed(bed.bedId)}>
            {bed.name}
          </button>
        </h3>
        <span className="strip-value">{readyWords(grams, day, units)}</span>
        {props.state}
      </div>
      <div className="strip-stage">
        <StripDrawing
          name={bed.name}
          geometry={geometry}
          layout={layout}
          scale={scale}
          months={props.months}
          imagined={props.imagined}
          todayX={props.todayX}
          weaves={props.weaves}
          lacking={lacking}
        />
        {geometry.places.map((place) => {
          const { planting } = place;
          return (
            <button
              key={planting.id}
              type="button"
              className="strip-planting"
              data-planting={planting.id}
              aria-expanded={props.selected === planting.id}
              aria-label={plantingLabel({ ...planting, bed: bed.name }, units)}
              tabIndex={props.current === planting.id ? 0 : -1}
              style={{
                insetInlineStart: place.x,
                insetBlockStart: place.top,
                inlineSize: place.width,
                blockSize: place.height,
              }}
              onFocus={() => props.onFocusPlanting(planting.id)}
              onClick={() => props.onSelect(planting.id)}
              onKeyDown={(event) => props.onKey(event, planting.id)}
              {...moving.handlers(planting.id, partAt(place))}
            />
          );
        })}
        {chosen &&
          (['start', 'end'] as const).map((part) => {
            const x = part === 'start' ? chosen.startX : chosen.endX;
            if (x === null) return null;
            return (
              <button
                key={part}
                type="button"
                className={`strip-handle strip-handle-${part}`}
                aria-label={handleWords(part, chosen.planting.name)}
                style={{
                  insetInlineStart: Math.max(
                    0,
                    Math.min(layout.width - handle, part === 'start' ? x - handle : x),
                  ),
                  insetBlockStart: chosen.top,
                  blockSize: chosen.height,
                }}
                onKeyDown={(event) => moving.onKey(event, chosen.planting.id, part)}
                {...moving.handlers(chosen.planting.id, () => part)}
              />
            );
          })}
        {moved && moving.move && (
          <span
            className="strip-moving"
            style={{
              insetInlineStart: Math.max(0, Math.min(moved.x, layout.width - 200)),
              insetBlockStart: moved.top + moved.height,
            }}
          >
            {movingWords(moving.move.part, moved.planting, units)}
          </span>
        )}
      </div>
      {props.troubles}
      {props.fields}
    </li>
  );
}
