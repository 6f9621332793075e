import type { Holding } from '../../core/season/ledger';
import type { LedgerPlace, LedgerStream, LedgerWay } from '../../core/season/ledgerStreams';
import { amount } from '../../words/chartFormat';
import type { ChartUnit } from '../../words/chartUnits';
import { placeHead } from '../../words/ledgerWords';
import { textWidth } from '../textWidth';
import { gramsOf, sinksOf, springsOf, type TurnLetter, type WayEnd } from './ends';
import { labelPlaces, type Block, type LabelPlace } from './labels';
import { levelsOf } from './levels';
import {
  isPlace,
  leastShown,
  placeKind,
  placesInColumns,
  throughput,
  type WayKind,
} from './places';
import { basin, leastWidth, streamShape, type Point, type StreamShape } from './streamShape';

export interface PlaceShape {
  readonly place: LedgerPlace;
  readonly kind: WayKind;
  readonly words: string;
  /** what it held and holds; '' where both are nothing */
  readonly amounts: string;
  readonly label: LabelPlace;
  readonly x: number;
  readonly top: number;
  readonly height: number;
  /** what was there, and what is there: outlines of a spring at its left and a pond at its right; '' for nothing */
  readonly spring: string;
  readonly pond: string;
}

/** Where a stream comes into the drawing or leaves it, in words. */
export interface EndShape {
  readonly key: string;
  readonly side: 'left' | 'right';
  readonly words: string;
  readonly gM2: number;
  readonly x: number;
  readonly y: number;
  readonly turn: TurnLetter | null;
}

export interface Waterway {
  readonly width: number;
  readonly height: number;
  readonly ground: number;
  readonly pxPerGram: number;
  /** streams of less than this are threads [g/m2] */
  readonly threadBelow: number;
  readonly places: readonly PlaceShape[];
  readonly streams: readonly StreamShape[];
  readonly ends: readonly EndShape[];
}

export const poolWidth = 16;
export const leastWaterwayWidth = 700;
/** how far what is there reaches from its place */
const basinReach = 30;
const leastColumn = 92;
/** a letter and the air around it */
const turnRoom = 22;

/**
 * The way of a bed's nitrogen as streams from left to right between places that lie as in the bed:
 * cover and plants on the ground, the rest under it. Each place is as tall as what was there and
 * came in, and so as what went on and is there; each stream is as wide as its grams at every
 * upright cut. What turns back within the bed goes under at the right and springs again at the left.
 */
export function waterway(way: LedgerWay, containerWidth: number, unit: ChartUnit): Waterway {
  const columns = placesInColumns(way);
  const places = columns.flat();
  const isShown = (end: LedgerStream['from'] | LedgerStream['to']): boolean =>
    !isPlace(end) || places.some(({ holding }) => holding === end);
  const streams = way.streams.filter(
    (one) => one.gM2 >= leastShown && isShown(one.from) && isShown(one.to),
  );
  const springs = springsOf(streams);
  const sinks = sinksOf(streams);
  const atLeft = [
    ...springs.high,
    ...places.flatMap(({ holding }) => springs.beside(holding)),
    ...springs.low,
  ];
  const atRight = [...sinks.high, ...sinks.beside, ...sinks.low];
  const levels = levelsOf(places, springs, sinks);
  const { pxPerGram } = levels;

  const wordsWidth = (ends: readonly WayEnd[]): number =>
    ends.reduce((most, end) => {
      const words = textWidth(`${end.words} ${amount(gramsOf(end), unit)}`);
      return Math.max(most, words + 14 + (end.turn === null ? 0 : turnRoom));
    }, 60);
  const leftEdge = wordsWidth(atLeft);
  const width = Math.max(
    leastWaterwayWidth,
    leftEdge + wordsWidth(atRight) + columns.length * leastColumn,
    Math.round(containerWidth),
  );
  const rightEdge = width - wordsWidth(atRight);
  const columnX = columnsBetween(columns, leftEdge, rightEdge);
  const columnOf = (holding: Holding): number =>
    columns.findIndex((column) => column.some((place) => place.holding === holding));
  const xOf = (holding: Holding): number => columnX[columnOf(holding)] ?? leftEdge;
  const sinkOf = (stream: LedgerStream): WayEnd | undefined =>
    atRight.find((sink) => sink.streams.includes(stream));
  const springOf = (stream: LedgerStream): WayEnd | undefined =>
    atLeft.find((spring) => spring.streams.includes(stream));

  // the ports of a place, from the top down in the order in which the other ends lie
  const inPort = new Map<LedgerStream, number>();
  const outPort = new Map<LedgerStream, number>();
  const sinkPort = new Map<LedgerStream, number>();
  const along = (
    list: readonly LedgerStream[],
    ports: Map<LedgerStream, number>,
    from: number,
  ): number =>
    list.reduce((y, stream) => {
      const tall = stream.gM2 * pxPerGram;
      ports.set(stream, y + tall / 2);
      return y + tall;
    }, from);
  const ordered = (
    list: readonly LedgerStream[],
    at: (stream: LedgerStream) => number,
  ): readonly LedgerStream[] => list.toSorted((one, other) => at(one) - at(other));
  const cameFrom = (stream: LedgerStream): number => {
    const spring = springOf(stream);
    return spring ? levels.end('left', spring.key) : levels.middle(stream.from as Holding);
  };
  const goesTo = (stream: LedgerStream): number => {
    const sink = sinkOf(stream);
    return sink ? levels.end('right', sink.key) : levels.middle(stream.to as Holding);
  };
  const shapes = places.map((place): Omit<PlaceShape, 'label'> => {
    const { holding } = place;
    const x = xOf(holding);
    const top = levels.top(holding);
    const coming = streams.filter(({ to }) => to === holding);
    const going = streams.filter(({ from }) => from === holding);
    const springTop = along(ordered(coming, cameFrom), inPort, top);
    const pondTop = along(ordered(going, goesTo), outPort, top);
    const tall = (gM2: number) => gM2 * pxPerGram;
    return {
      place,
      kind: placeKind[holding],
      words: placeHead(holding),
      amounts: heldWords(place, unit),
      x,
      top,
      height: tall(throughput(place)),
      spring:
        place.opening >= leastShown ? basin(x, springTop, tall(place.opening), -basinReach) : '',
      pond:
        place.end >= leastShown ? basin(x + poolWidth, pondTop, tall(place.end), basinReach) : '',
    };
  });
  for (const sink of atRight)
    along(sink.streams, sinkPort, levels.end('right', sink.key) - (gramsOf(sink) * pxPerGram) / 2);

  /** into a place: from the left edge, with a lane of its own above or beneath the others where it has one */
  const springCourse = (stream: LedgerStream): readonly Point[] => {
    const spring = springOf(stream);
    const y = inPort.get(stream);
    if (!spring || y === undefined || !isPlace(stream.to)) return [];
    const from = { x: leftEdge, y: levels.end('left', spring.key) };
    const before = columnX[columnOf(stream.to) - 1];
    const hasLane = springs.high.includes(spring) || springs.low.includes(spring);
    return [
      from,
      ...(hasLane && before !== undefined ? [{ x: before + poolWidth, y: from.y }] : []),
      { x: xOf(stream.to), y },
    ];
  };
  /** out of a place: to the right edge or to another place, level until the last stretch before it */
  const onwardCourse = (stream: LedgerStream): readonly Point[] => {
    const y = outPort.get(stream);
    if (y === undefined || !isPlace(stream.from)) return [];
    const x = xOf(stream.from) + poolWidth;
    const sink = sinkOf(stream);
    if (sink) {
      const next = columnX[columnOf(stream.from) + 1];
      const end = sinkPort.get(stream) ?? y;
      const rises = sinks.high.includes(sink) && next !== undefined;
      return [
        { x, y },
        ...(rises ? [{ x: Math.max(next, x + 60), y: end }] : []),
        { x: rightEdge, y: end },
      ];
    }
    const end = inPort.get(stream);
    if (end === undefined || !isPlace(stream.to)) return [];
    const before = (columnX[columnOf(stream.to) - 1] ?? 0) + poolWidth;
    return [{ x, y }, ...(before > x + 1 ? [{ x: before, y }] : []), { x: xOf(stream.to), y: end }];
  };
  const drawn = streams.flatMap((stream): StreamShape[] =>
    [springCourse(stream), onwardCourse(stream)]
      .filter((course) => course.length > 0)
      .map((course, part) =>
        streamShape(
          `${stream.from} > ${stream.to} ${part}`,
          stream,
          course,
          stream.gM2 * pxPerGram,
        ),
      ),
  );
  const endShape =
    (side: 'left' | 'right') =>
    (end: WayEnd): EndShape => ({
      key: end.key,
      side,
      words: end.words,
      gM2: gramsOf(end),
      x: side === 'left' ? leftEdge : rightEdge,
      y: levels.end(side, end.key),
      turn: end.turn,
    });
  const ends = [...atLeft.map(endShape('left')), ...atRight.map(endShape('right'))];
  const tallOf = (height: number): number => Math.max(height, leastWidth);
  const taken = [
    ...shapes.flatMap(({ x, top, height, spring, pond }): Block[] => [
      {
        left: x - (spring === '' ? 0 : basinReach),
        right: x + poolWidth + (pond === '' ? 0 : basinReach),
        top,
        bottom: top + tallOf(height),
      },
    ]),
    ...ends.map(({ side, y }): Block => ({
      left: side === 'left' ? 0 : rightEdge,
      right: side === 'left' ? leftEdge : width,
      top: y - 9,
      bottom: y + 9,
    })),
  ];
  const labels = labelPlaces(
    shapes.map(({ x, top, height, words, amounts }) => ({
      x,
      top,
      height,
      width: poolWidth,
      words: textWidth(words, true) + (amounts === '' ? 0 : 6 + textWidth(amounts)),
    })),
    drawn,
    taken,
    { width, height: levels.height },
  );
  return {
    width,
    height: levels.height,
    ground: levels.ground,
    pxPerGram,
    threadBelow: pxPerGram > 0 ? leastWidth / pxPerGram : 0,
    places: shapes.map((shape, index) => ({
      ...shape,
      label: labels[index] ?? { x: shape.x, y: shape.top - 7, leader: '' },
    })),
    // the thin ones lie on top
    streams: drawn.toSorted((one, other) => other.width - one.width),
    ends,
  };
}

/** "0.3 → 12"; of the soil's own store what it gained or gave. */
function heldWords(place: LedgerPlace, unit: ChartUnit): string {
  if (place.holding === 'in the soil itself') return amount(place.end - place.opening, unit);
  const [before, after] = [amount(place.opening, unit), amount(place.end, unit)];
  return before === amount(0, unit) && after === before ? '' : `${before} → ${after}`;
}

/** Left edges of the columns; the gap before what is ready is wider, for the falls into it, and the last, for the fan out of it. */
function columnsBetween(
  columns: readonly (readonly LedgerPlace[])[],
  leftEdge: number,
  rightEdge: number,
): readonly number[] {
  const weights = columns.map((column, index) =>
    column.some(({ holding }) => holding === 'ready in the soil') ? 1.7 : index === 0 ? 1 : 1.1,
  );
  const all = weights.reduce((sum, weight) => sum + weight, 1.5);
  const perWeight = (rightEdge - leftEdge - columns.length * poolWidth) / all;
  let x = leftEdge;
  return weights.map((weight) => {
    const at = x + weight * perWeight;
    x = at + poolWidth;
    return at;
  });
}
