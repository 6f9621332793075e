import {
  type PointerEvent,
  type ReactNode,
  useCallback,
  useEffect,
  useId,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { DayNumber } from '../../core/days';
import { dayFull } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { dayKindWords } from '../../words/seasonChart';
import { toldKind, type DayOrigins } from '../season/origin';
import {
  bedPlace,
  bedsOnDay,
  movedBack,
  movingHint,
  movingWords,
  scaleWords,
  walkHint,
  seasonPlaceWords as words,
  type PlantingPart,
} from '../../words/seasonPlaceWords';
import { calendarStretches, type CalendarStretch } from '../season/calendar';
import type { DaySpan } from '../season/data';
import { imaginedStretches, type Stretch } from '../season/geometry';
import { TableButton } from '../TableButton';
import { useWidth } from '../useWidth';
import type { BedStrip, StripPlanting } from './data';
import { DayAxis } from './DayAxis';
import { DayRead } from './DayRead';
import { inOrder, rangeOn, readyOn } from './geometry';
import {
  mostAtFullHeight,
  stripExtremes,
  stripLayout,
  stripScale,
  type StripLayout,
} from './layout';
import { StripKey } from './StripKey';
import { StripRow } from './StripRow';
import { StripsTables } from './StripsTables';
import { usePlantingMove } from './usePlantingMove';
import { useStripWalk } from './useStripWalk';

export interface StripsChartProps {
  readonly span: DaySpan;
  readonly today: DayNumber;
  /** those that are shown */
  readonly beds: readonly BedStrip[];
  /** all there are: one scale, whatever is shown */
  readonly allBeds: readonly BedStrip[];
  readonly units: ChartUnits;
  /** where each day's weather is known from */
  readonly origins?: DayOrigins;
  readonly selected: string | null;
  readonly onSelect: (plantingId: string | null) => void;
  readonly onOpenBed: (bedId: string) => void;
  /** a planting as it would stand after a move */
  readonly moved: (plantingId: string, part: PlantingPart, by: number) => StripPlanting | null;
  /** a move that is meant */
  readonly onMove: (plantingId: string, part: PlantingPart, by: number) => void;
  readonly renderState: (bedId: string) => ReactNode;
  readonly renderTroubles: (bed: BedStrip, isFolded: boolean) => ReactNode;
  readonly renderFields: (plantingId: string) => ReactNode;
  /** what stands below the beds on the same days */
  readonly renderBelow: (days: StripDays) => ReactNode;
}

/** The days as they are drawn, for what stands on the same ones. */
export interface StripDays {
  readonly layout: StripLayout;
  readonly months: readonly CalendarStretch[];
  readonly imagined: readonly Stretch[];
  readonly todayX: number | null;
  readonly weaves: string;
}

/**
 * The season of all beds on one line of days: soil as thick as the nitrogen ready in it, what
 * stands and lies on it, and what does not go together. A day is chosen on the axis or by the
 * pointer; plantings are pressed for their fields, dragged, or moved by key.
 */
export function StripsChart(props: StripsChartProps) {
  const { span, today, beds, allBeds, units, selected } = props;
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box, 900);
  const [wantedDay, setDay] = useState<DayNumber>(today);
  const [isTable, showTable] = useState(false);
  const [spoken, speak] = useState('');
  const day = Math.max(span.from, Math.min(span.to, wantedDay));

  const isCompact = allBeds.length > mostAtFullHeight;
  const layout = useMemo(() => stripLayout(width, span, isCompact), [width, span, isCompact]);
  // as long as the thickest is the thickest, an edit draws only its own bed again
  const { most, deepest } = useMemo(() => stripExtremes(allBeds, span), [allBeds, span]);
  const scale = useMemo(
    () => stripScale({ most, deepest }, units.nitrogen, isCompact),
    [most, deepest, units, isCompact],
  );
  const months = useMemo(
    () => calendarStretches('season', span, units, layout.x(1) - layout.x(0)),
    [layout, span, units],
  );
  const { move, hands } = usePlantingMove(
    layout.x(1) - layout.x(0),
    ({ plantingId, part, by }) => props.onMove(plantingId, part, by),
    () => speak(movedBack),
  );
  const shown = useMemo(() => {
    const after = move && props.moved(move.plantingId, move.part, move.by);
    if (!after) return beds;
    return beds.map((bed) =>
      bed.plantings.some((planting) => planting.id === after.id)
        ? {
            ...bed,
            plantings: bed.plantings.map((planting) =>
              planting.id === after.id ? { ...after, heldFrom: planting.start } : planting,
            ),
          }
        : bed,
    );
    // eslint-disable-next-line react-hooks/exhaustive-deps -- what a move comes to follows from the beds
  }, [beds, move]);
  const order = useMemo(
    () => shown.flatMap(({ plantings }) => inOrder(plantings, span)),
    [shown, span],
  );

  const movedNow = move && order.find((planting) => planting.id === move.plantingId);
  const movedWords = movedNow && move ? movingWords(move.part, movedNow, units) : '';
  useEffect(() => {
    if (movedWords !== '') speak(`${movedWords}. ${movingHint}`);
  }, [movedWords]);

  const run = allBeds.find((bed) => bed.run !== null)?.run ?? null;
  const at = run ? day - run.firstDay : -1;
  const kind = run && at >= 0 && at < run.days ? toldKind(props.origins, day, run.kind[at]) : null;
  const imagined = useMemo(() => {
    const known = run && {
      from: Math.max(span.from, run.firstDay),
      to: Math.min(span.to, run.firstDay + run.days - 1),
    };
    return run && known && known.from <= known.to
      ? imaginedStretches(run, { span: known }, layout)
      : [];
  }, [run, span, layout]);
  const isTodayIn = today >= span.from && today <= span.to;
  const days = useMemo(
    (): StripDays => ({
      layout,
      months,
      imagined,
      todayX: isTodayIn ? layout.x(today + 0.5) : null,
      weaves: id,
    }),
    [layout, months, imagined, isTodayIn, today, id],
  );

  const choose = (wanted: DayNumber, how: 'key' | 'pointer') => {
    setDay(wanted);
    if (how === 'key')
      speak(
        bedsOnDay(
          beds.map((bed) => ({
            name: bed.name,
            grams: readyOn(bed, wanted),
            range: rangeOn(bed, wanted),
          })),
          units,
        ),
      );
  };
  const onPointer = (event: PointerEvent<HTMLElement>) => {
    if (move) return;
    const px = event.clientX - event.currentTarget.getBoundingClientRect().left;
    if (px >= layout.left && px <= layout.right) setDay(layout.dayAt(px));
  };
  // rows are drawn again when what they show is another, not when these are
  const latest = useRef({ selected, onSelect: props.onSelect });
  useLayoutEffect(() => {
    latest.current = { selected, onSelect: props.onSelect };
  });
  const list = useRef<HTMLUListElement>(null);
  const walk = useStripWalk(list, (bedId) => {
    const place = shown.findIndex((bed) => bed.bedId === bedId);
    const bed = shown[place];
    if (bed) speak(bedPlace(bed.name, place + 1, shown.length));
  });
  const onSelect = useCallback((plantingId: string) => {
    const now = latest.current;
    now.onSelect(plantingId === now.selected ? null : plantingId);
  }, []);
  const { renderBelow } = props;
  const below = useMemo(() => renderBelow(days), [renderBelow, days]);

  return (
    <figure className="chart strips" aria-labelledby={`${id}-name`}>
      <figcaption className="only-heard">
        <h2 id={`${id}-name`}>{words.chart}</h2>
      </figcaption>
      <p className="chart-reading">
        <strong>{dayFull(day, units)}</strong>
        {kind !== null && `, ${dayKindWords[kind]}`}. {scaleWords(units)}.
      </p>
      <div className="only-heard" aria-live="polite">
        {spoken}
      </div>
      <div className="strip-box" ref={box}>
        <DayAxis
          layout={layout}
          months={months}
          imagined={imagined}
          today={isTodayIn ? today : null}
          day={day}
          units={units}
          weaves={id}
          onDay={choose}
        />
        {/* oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- the axis above chooses the day for whoever has no pointer */}
        <div className="strip-rows" onPointerMove={onPointer} onPointerDown={onPointer}>
          <DayRead value={day}>
            <p className="only-heard" id={`${id}-walk`}>
              {walkHint}
            </p>
            {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- hears keys of the buttons within */}
            <ul
              ref={list}
              className="plain-list"
              aria-label={words.beds}
              aria-describedby={`${id}-walk`}
              onFocus={walk.onFocus}
              onKeyDown={walk.onKeyDown}
            >
              {shown.map((bed, place) => {
                const its = (plantingId: string | null | undefined): string | null =>
                  bed.plantings.some((planting) => planting.id === plantingId)
                    ? (plantingId ?? null)
                    : null;
                return (
                  <StripRow
                    key={bed.bedId}
                    bed={bed}
                    days={days}
                    scale={scale}
                    units={units}
                    place={place + 1}
                    of={shown.length}
                    selected={its(selected)}
                    move={its(move?.plantingId) === null ? null : move}
                    hands={hands}
                    onSelect={onSelect}
                    onOpenBed={props.onOpenBed}
                    renderState={props.renderState}
                    renderTroubles={props.renderTroubles}
                    renderFields={props.renderFields}
                  />
                );
              })}
            </ul>
            {below}
          </DayRead>
        </div>
      </div>
      <StripKey weaves={id} beds={shown} span={span} />
      <div className="chart-tools">
        <TableButton tableId={`${id}-table`} isShown={isTable} onShow={showTable} words={words} />
      </div>
      {isTable && (
        <StripsTables id={`${id}-table`} beds={beds} span={span} day={day} units={units} />
      )}
    </figure>
  );
}
