import { memo, type ReactNode, useContext, useMemo } from 'react';
import type { DayNumber } from '../../core/days';
import type { ChartUnits } from '../../words/chartUnits';
import {
  bedPlace,
  movingWords,
  plantingLabel,
  readyWords,
  seasonPlaceWords as words,
} from '../../words/seasonPlaceWords';
import { ChartSays } from '../ChartSays';
import type { BedStrip } from './data';
import { DayCross } from './DayCross';
import { DayRead } from './DayRead';
import { bedStripGeometry, rangeOn, readyOn, type PlantingPlace } from './geometry';
import { PlantingHandle } from './PlantingHandle';
import type { StripScale } from './layout';
import { StripDrawing } from './StripDrawing';
import type { StripDays } from './StripsChart';
import type { PlantingHands, PlantingMove } from './usePlantingMove';

/** so near an end a press takes hold of the end [px] */
const grip = 9;

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
  readonly days: StripDays;
  readonly scale: StripScale;
  readonly units: ChartUnits;
  /** the how manyth bed it is, of how many that are shown */
  readonly place: number;
  readonly of: number;
  /** of its plantings the one whose fields are open, and the one being moved */
  readonly selected: string | null;
  readonly move: PlantingMove | null;
  readonly hands: PlantingHands;
  readonly onSelect: (plantingId: string) => void;
  readonly onOpenBed: (bedId: string) => void;
  /** its state in a word and mark */
  readonly renderState: (bedId: string) => ReactNode;
  /** what is said of what does not go together */
  readonly renderTroubles: (bed: BedStrip, isFolded: boolean) => ReactNode;
  /** fields of the chosen planting */
  readonly renderFields: (plantingId: string) => ReactNode;
}

/** One bed: its name and value, its strip, and over it what can be pressed and dragged. */
export const StripRow = memo(function StripRow(props: StripRowProps) {
  const { bed, days, scale, units, hands } = props;
  const { layout } = days;
  const geometry = useMemo(() => bedStripGeometry(bed, layout, scale), [bed, layout, scale]);
  const lacking =
    bed.run === null ? words.notReckoned : geometry.known === null ? words.outside : null;
  const chosen = geometry.places.find(({ planting }) => planting.id === props.selected);
  const moved = geometry.places.find(({ planting }) => planting.id === props.move?.plantingId);
  return (
    <li className={layout.isCompact ? 'strip-row strip-row-low' : 'strip-row'} data-bed={bed.bedId}>
      <div className="strip-head">
        <h3>
          <button
            type="button"
            className="bed-open"
            aria-label={bedPlace(bed.name, props.place, props.of)}
            onClick={() => props.onOpenBed(bed.bedId)}
          >
            {bed.name}
          </button>
        </h3>
        <ReadyValue bed={bed} units={units} />
        {props.renderState(bed.bedId)}
        {layout.isCompact && props.renderTroubles(bed, true)}
      </div>
      <div className="strip-stage">
        <StripDrawing
          name={bed.name}
          geometry={geometry}
          layout={layout}
          scale={scale}
          months={days.months}
          imagined={days.imagined}
          todayX={days.todayX}
          weaves={days.weaves}
          lacking={lacking}
          selected={props.selected}
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
              style={{
                insetInlineStart: place.x,
                insetBlockStart: place.top,
                inlineSize: place.width,
                blockSize: place.height,
              }}
              onClick={() => props.onSelect(planting.id)}
              onKeyDown={(event) => hands.onKey(event, planting.id, 'whole')}
              {...hands.on(planting.id, partAt(place))}
            />
          );
        })}
        <DayCross layout={layout} geometry={geometry} />
        {chosen &&
          (['start', 'end'] as const).map((part) => (
            <PlantingHandle
              key={part}
              place={chosen}
              part={part}
              width={layout.width}
              hands={hands}
            />
          ))}
        {moved && props.move && (
          <span
            className="strip-moving"
            style={{
              insetInlineStart: Math.max(0, Math.min(moved.x, layout.width - 200)),
              insetBlockStart: moved.top + moved.height,
            }}
          >
            {movingWords(props.move.part, moved.planting, units)}
          </span>
        )}
      </div>
      {!layout.isCompact && props.renderTroubles(bed, false)}
      {props.selected !== null && props.renderFields(props.selected)}
    </li>
  );
});

const rangeSaid = (bed: BedStrip, day: DayNumber) =>
  typeof bed.range === 'string' ? bed.range : rangeOn(bed, day);

/** What lies ready on the day that is read. */
function ReadyValue(props: { readonly bed: BedStrip; readonly units: ChartUnits }) {
  const day = useContext(DayRead);
  return (
    <ChartSays
      saying={{ of: 'strip', bed: props.bed, day }}
      says={readyWords(
        readyOn(props.bed, day),
        day,
        props.units,
        props.bed.run !== null,
        rangeSaid(props.bed, day),
      )}
      className="strip-value"
    />
  );
}
