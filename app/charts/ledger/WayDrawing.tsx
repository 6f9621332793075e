import {
  type KeyboardEvent,
  type PointerEvent,
  useEffect,
  useId,
  useMemo,
  useRef,
  useState,
} from 'react';
import { ChartSays } from '../ChartSays';
import type { LedgerWay } from '../../core/season/ledgerStreams';
import { amount } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { placeSentence, streamSentence, wayHowToRead } from '../../words/ledgerWords';
import { useWidth } from '../useWidth';
import { poolWidth, waterway, type EndShape, type Waterway } from './geometry';
import { isCameIn, throughput } from './places';
import type { StreamShape } from './streamShape';

const classOf = (kind: string): string => `way-${kind.replaceAll(' ', '-')}`;

/** One thing of the drawing that can be told of: a place or a stream, as a sentence. */
interface Told {
  readonly key: string;
  readonly says: string;
  /** where it is drawn [px from the left] */
  readonly x: number;
}

/** A finger, or a pointer that moves: one that rests while keys scroll the drawing under it points at nothing. */
const pointedAt = (tell: () => void) => ({
  onPointerDown: tell,
  onPointerMove: (event: PointerEvent) => {
    if (event.movementX !== 0 || event.movementY !== 0) tell();
  },
});

/** Everything in reading order: what comes in, then place by place what it holds and where that goes. */
function toldOf(way: LedgerWay, drawing: Waterway, units: ChartUnits): readonly Told[] {
  const had = (from: string): number => {
    const place = way.places.find(({ holding }) => holding === from);
    return place ? throughput(place) : way.ledger.totals.cameIn;
  };
  const streams = way.streams.filter((stream) =>
    drawing.streams.some((shape) => shape.stream === stream),
  );
  const middleX = (stream: (typeof streams)[number]): number => {
    const course = drawing.streams.find((shape) => shape.stream === stream)?.course ?? [];
    return ((course[0]?.x ?? 0) + (course.at(-1)?.x ?? 0)) / 2;
  };
  const told = (of: readonly (typeof streams)[number][]): readonly Told[] =>
    of.map((stream) => ({
      key: `${stream.from} > ${stream.to}`,
      says: streamSentence(stream, had(stream.from), units, way.ledger.totals.cameIn),
      x: middleX(stream),
    }));
  return [
    ...told(streams.filter(({ from }) => isCameIn(from))),
    ...drawing.places.flatMap(({ place, x }) => [
      { key: place.holding, says: placeSentence(place, units), x },
      ...told(streams.filter(({ from }) => from === place.holding)),
    ]),
  ];
}

/**
 * The way of a bed's nitrogen as a drawing with one stop of the Tab key: the arrow keys go from
 * place to place and stream to stream, and what each holds stands beneath in a sentence.
 */
export function WayDrawing(props: {
  readonly way: LedgerWay;
  readonly bedName: string;
  readonly units: ChartUnits;
}) {
  const { way, units } = props;
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box, 900);
  const drawing = useMemo(() => waterway(way, width, units.nitrogen), [way, width, units.nitrogen]);
  const told = useMemo(() => toldOf(way, drawing, units), [way, drawing, units]);
  const [at, setAt] = useState<number | null>(null);
  const [pointed, point] = useState<string | null>(null);
  const current = pointed ?? (at === null ? null : (told[at]?.key ?? null));
  const says = told.find(({ key }) => key === current)?.says;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const last = told.length - 1;
    const from = at ?? -1;
    const wanted = {
      ArrowRight: Math.min(last, from + 1),
      ArrowDown: Math.min(last, from + 1),
      ArrowLeft: Math.max(0, from - 1),
      ArrowUp: Math.max(0, from - 1),
      Home: 0,
      End: last,
    }[event.key];
    if (wanted === undefined) return;
    point(null);
    setAt(wanted);
    event.preventDefault();
  };
  // a drawing wider than its box follows what is told of by key
  const toldX = at === null ? undefined : told[at]?.x;
  useEffect(() => {
    const view = box.current;
    if (!view || toldX === undefined || view.scrollWidth <= view.clientWidth) return;
    view.scrollLeft = toldX - view.clientWidth / 2;
  }, [toldX]);
  const optionId = (index: number): string => `${id}-told-${index}`;
  return (
    <div className="way">
      <div ref={box} className="chart-scroll">
        <div
          className="way-reader"
          role="listbox"
          tabIndex={0}
          aria-label={`Streams and places of nitrogen in ${props.bedName}`}
          aria-activedescendant={at === null ? undefined : optionId(at)}
          onKeyDown={onKeyDown}
          onFocus={() => setAt(at ?? 0)}
          onPointerLeave={() => point(null)}
        >
          <svg
            className={`chart-drawing way-drawing ${current === null ? '' : 'way-told'}`}
            viewBox={`0 0 ${drawing.width} ${drawing.height}`}
            width={drawing.width}
            height={drawing.height}
            aria-hidden="true"
            focusable="false"
          >
            <Ground drawing={drawing} />
            {drawing.streams.map((shape) => (
              <Stream key={shape.key} shape={shape} current={current} onPoint={point} />
            ))}
            {drawing.places.map((shape) => (
              <g
                key={shape.place.holding}
                className={`way-place ${classOf(shape.kind)} ${current === shape.place.holding ? 'way-current' : ''}`}
                {...pointedAt(() => point(shape.place.holding))}
              >
                <path className="way-basin" d={shape.spring} />
                <path className="way-basin way-pond" d={shape.pond} />
                <rect
                  className="way-pool"
                  x={shape.x}
                  y={shape.top}
                  width={poolWidth}
                  height={Math.max(1.5, shape.height)}
                  rx="2"
                />
                <path className="way-leader" d={shape.label.leader} />
                <text
                  className="chart-label way-on-plot chart-on-plot"
                  x={shape.label.x}
                  y={shape.label.y}
                >
                  <tspan className="way-name">{shape.words}</tspan>
                  {shape.amounts !== '' && <tspan dx="6">{shape.amounts}</tspan>}
                </text>
              </g>
            ))}
            {drawing.ends.map((end) => (
              <End key={`${end.side} ${end.key}`} end={end} units={units} />
            ))}
          </svg>
          <div className="only-heard">
            {told.map(({ key, says: words }, index) => (
              <div key={key} id={optionId(index)} role="option" aria-selected={index === at}>
                {words}
              </div>
            ))}
          </div>
        </div>
      </div>
      {drawing.width > width + 1 && (
        <p className="scroll-hint small soft">It goes on to the right: swipe or scroll.</p>
      )}
      {says === undefined || current === null ? (
        <p className="way-says small soft">
          {wayHowToRead(
            drawing.threadBelow,
            units,
            drawing.ends.some(({ turn }) => turn !== null),
          )}
        </p>
      ) : (
        <ChartSays saying={{ of: 'way', key: current }} says={says} className="way-says" />
      )}
    </div>
  );
}

/** The bed behind the streams: air above, soil beneath, and the line between them. */
function Ground({ drawing }: { readonly drawing: Waterway }) {
  const { width, height, ground } = drawing;
  const waves = Math.ceil(width / 46);
  const line = Array.from(
    { length: waves },
    (_value, index) => `q11.5 ${index % 2 === 0 ? -2.5 : -1.5} 23 0 t23 0`,
  ).join(' ');
  return (
    <g>
      <path className="way-bed" d={`M0 ${ground} ${line} V${height} H0 Z`} />
      <path className="way-ground" d={`M0 ${ground} ${line}`} />
    </g>
  );
}

function Stream(props: {
  readonly shape: StreamShape;
  readonly current: string | null;
  readonly onPoint: (key: string) => void;
}) {
  const { shape } = props;
  const key = `${shape.stream.from} > ${shape.stream.to}`;
  return (
    <g
      className={`way-stream ${classOf(shape.kind)} ${props.current === key ? 'way-current' : ''}`}
      {...pointedAt(() => props.onPoint(key))}
    >
      {shape.thread === null ? (
        <>
          <path className="way-flow" d={shape.outline} />
          <path className="way-bank" d={shape.banks} />
          <path className="way-current-lines" d={shape.currents} />
        </>
      ) : (
        <>
          <path className="way-touch" d={shape.thread} />
          <path className="way-thread" d={shape.thread} />
        </>
      )}
    </g>
  );
}

function End({ end, units }: { readonly end: EndShape; readonly units: ChartUnits }) {
  const isLeft = end.side === 'left';
  const letterX = end.x + (isLeft ? -13 : 13);
  const wordsX = end.x + (isLeft ? -7 : 7) + (end.turn === null ? 0 : isLeft ? -18 : 18);
  return (
    <g>
      {end.turn !== null && (
        <>
          <circle className="way-turn" cx={letterX} cy={end.y} r="8" />
          <text className="way-turn-letter" x={letterX} y={end.y} dy="0.34em">
            {end.turn}
          </text>
        </>
      )}
      <text
        className={`chart-label way-on-plot ${isLeft ? 'chart-label-end' : ''}`}
        x={wordsX}
        y={end.y}
        dy="0.35em"
      >
        {end.words} <tspan className="way-name">{amount(end.gM2, units.nitrogen)}</tspan>
      </text>
    </g>
  );
}
