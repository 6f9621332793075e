import { area, line } from 'd3-shape';
import type { DayNumber } from '../../core/days';
import { dayKinds } from '../../core/season/input';
import type { DaySpan, LayerOnChart } from '../season/data';
import type { Panel } from '../season/layout';
import { readyTopOf } from '../season/series';
import { plantingBars, type PlantingBar } from '../season/strips';
import { seasonPlaceWords } from '../../words/seasonPlaceWords';
import { textWidth } from '../textWidth';
import type { BedStrip, StripPlanting, StripTrouble } from './data';
import { knownSpan, type StripLayout, type StripScale } from './layout';

/** A stretch of soil all of one kind: weather that was, or weather that is imagined. */
export interface SoilPiece {
  readonly isImagined: boolean;
  readonly from: DayNumber;
  readonly to: DayNumber;
  /** closed outline */
  readonly path: string;
}

export interface StripLayer {
  readonly layer: LayerOnChart;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where a planting is pressed: its whole lane, at least as wide as a finger. */
export interface PlantingPlace {
  readonly planting: StripPlanting;
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly height: number;
  /** its two ends in px, where they lie in view */
  readonly startX: number | null;
  readonly endX: number | null;
}

/** Where words or a mark lie, so that no upright line is drawn through them. */
export interface WordsBox {
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly bottom: number;
}

export interface BedStripGeometry {
  readonly height: number;
  /** lower end of what is drawn on days */
  readonly foot: number;
  readonly words: readonly WordsBox[];
  /** the surface of the soil; thickness is measured downwards from it */
  readonly surface: number;
  readonly soil: readonly SoilPiece[];
  /** thickness in px at each edge of the days known: the morning of the first, then every evening */
  readonly thickness: Float64Array;
  readonly known: DaySpan | null;
  /** lower edges of the soil where it is thin and where it is thick; null: no range is told */
  readonly likely: { readonly path: string; readonly edges: string } | null;
  readonly bars: readonly PlantingBar[];
  readonly places: readonly PlantingPlace[];
  readonly layers: readonly StripLayer[];
  readonly crowded: readonly { readonly x: number; readonly width: number; readonly y: number }[];
  readonly troubles: readonly (StripTrouble & { readonly x: number; readonly y: number })[];
}

/** room for a name and a stem under it, and a target of 24 px */
const laneHeights = { usual: 33, compact: 29 } as const;
const troubleRow = 18;
const between = 4;
const leastTarget = 24;

const inView = ({ start, end }: StripPlanting, span: DaySpan): boolean =>
  start <= span.to && (end === null || end > span.from);

const orderOf = ({ heldFrom, start }: StripPlanting): DayNumber => heldFrom ?? start;

/** The plantings of a view in the order they come into the ground. */
export const inOrder = (
  plantings: readonly StripPlanting[],
  span: DaySpan,
): readonly StripPlanting[] =>
  plantings
    .filter((planting) => inView(planting, span))
    .toSorted((one, other) => orderOf(one) - orderOf(other) || (one.id < other.id ? -1 : 1));

/** Plantings in as few lanes as hold them side by side, each with room for its name. */
function lanesOf(
  plantings: readonly StripPlanting[],
  layout: StripLayout,
): readonly { readonly planting: StripPlanting; readonly lane: number }[] {
  const lanes: { readonly left: number; readonly right: number }[][] = [];
  return inOrder(plantings, layout.span).map((planting) => {
    const from = layout.x(Math.max(planting.start, layout.span.from));
    const to = layout.x(Math.min(planting.end ?? layout.span.to + 1, layout.span.to + 1));
    // a name too long for what is left is moved to the left of its start
    const words = textWidth(planting.name, true) + 14;
    const left = Math.max(0, Math.min(from, layout.width - words, layout.right - leastTarget));
    const right = Math.max(to, left + words, from + leastTarget) + between;
    const isFree = (lane: readonly { readonly left: number; readonly right: number }[]) =>
      lane.every((one) => right <= one.left || one.right <= left);
    const found = lanes.findIndex(isFree);
    const lane = found < 0 ? lanes.length : found;
    (lanes[lane] ??= []).push({ left, right });
    return { planting, lane };
  });
}

function soilPieces(
  { run }: BedStrip,
  known: DaySpan,
  thickness: Float64Array,
  surface: number,
  layout: StripLayout,
): readonly SoilPiece[] {
  if (!run) return [];
  const imagined = dayKinds.indexOf('imagined');
  const isImagined = (day: DayNumber): boolean => run.kind[day - run.firstDay] === imagined;
  const pieces: SoilPiece[] = [];
  for (let from = known.from; from <= known.to;) {
    let to = from;
    while (to < known.to && isImagined(to + 1) === isImagined(from)) to += 1;
    const first = from - known.from;
    const edges = Array.from({ length: to - from + 2 }, (_value, index) => first + index);
    pieces.push({
      isImagined: isImagined(from),
      from,
      to,
      path:
        area<number>()
          .x((edge) => layout.x(known.from + edge))
          .y0(surface)
          .y1((edge) => surface + (thickness[edge] ?? 0))(edges) ?? '',
    });
    from = to + 1;
  }
  return pieces;
}

function rangeShape(
  bed: BedStrip,
  known: DaySpan,
  surface: number,
  { x }: StripLayout,
  { pxPerGram }: StripScale,
): BedStripGeometry['likely'] {
  const ends: { readonly x: number; readonly low: number; readonly high: number }[] = [];
  for (let day = known.from - 1; day <= known.to; day++) {
    const range = rangeOn(bed, day);
    if (range)
      ends.push({
        x: x(day + 1),
        low: surface + range.low * pxPerGram,
        high: surface + range.high * pxPerGram,
      });
  }
  if (ends.length === 0) return null;
  type End = (typeof ends)[number];
  const edge = (at: (end: End) => number): string =>
    line<End>()
      .x((end) => end.x)
      .y(at)(ends) ?? '';
  return {
    path:
      area<End>()
        .x((end) => end.x)
        .y0(({ low }) => low)
        .y1(({ high }) => high)(ends) ?? '',
    edges: `${edge(({ low }) => low)}${edge(({ high }) => high)}`,
  };
}

/** The lanes of a bed that hold nothing but a word. */
const leastLanes = 1;

/**
 * One bed as a cut through its season: plantings above, layers on the surface, and below it the
 * soil, as thick as the nitrogen that lies ready in it. Pure, so that every length can be held
 * against the data.
 */
export function bedStripGeometry(
  bed: BedStrip,
  layout: StripLayout,
  scale: StripScale,
): BedStripGeometry {
  const { span } = layout;
  const laneHeight = laneHeights[layout.isCompact ? 'compact' : 'usual'];
  const crowded = bed.crowded.filter(({ from, to }) => from <= span.to && to >= span.from);
  const troubles = bed.troubles.filter(({ day }) => day >= span.from && day <= span.to);
  const top = crowded.length + troubles.length > 0 ? troubleRow : 2;
  const laid = lanesOf(bed.plantings, layout);
  const lanes = laid.reduce((most, { lane }) => Math.max(most, lane + 1), leastLanes);
  const panels: readonly Panel[] = laid.map(({ lane }) => ({
    top: top + lane * laneHeight,
    bottom: top + (lane + 1) * laneHeight,
  }));
  const surface = top + lanes * laneHeight + scale.layerHeight;
  const bars = plantingBars(
    {
      plantings: laid.map(({ planting }) => ({
        id: planting.id,
        name: planting.name,
        sown: planting.sown,
        flowerDay: planting.flower,
        firstHarvestDay: planting.pick,
      })),
      result: {
        plantings: laid.map(({ planting: { id, start, end } }) => ({
          id,
          startDay: start,
          clearingDay: end,
        })),
      },
    },
    span,
    { x: layout.x, width: layout.width, plantings: panels },
  );
  const known = knownSpan(bed.run, span);
  const marked = troubles.map((trouble) => ({
    ...trouble,
    x: Math.max(8, Math.min(layout.width - 8, layout.x(trouble.day + 0.5))),
    y: 1,
  }));
  const whole = surface + scale.soilHeight + 6;
  const over = (from: number, words: string, y: number, isStrong: boolean): WordsBox => ({
    from: from - 4,
    to: from + textWidth(words, isStrong) + 4,
    top: y,
    bottom: y + 19,
  });
  const thickness =
    bed.run && known
      ? readyTopOf(bed.run, known).map((grams) => grams * scale.pxPerGram)
      : new Float64Array();
  const within = (day: DayNumber): number | null =>
    day >= span.from && day <= span.to + 1 ? layout.x(day) : null;
  return {
    height: whole,
    foot: whole - 4,
    words: [
      ...bars.map(({ nameX, name, top: row }) => over(nameX, name, row - 1, true)),
      ...marked.map(({ x }) => ({ from: x - 9, to: x + 9, top: 0, bottom: troubleRow })),
      ...(bars.length === 0
        ? [over(layout.left + 5, seasonPlaceWords.nothingPlanted, 7, false)]
        : []),
      ...(known === null
        ? [
            over(
              layout.left + 5,
              bed.run === null ? seasonPlaceWords.notReckoned : seasonPlaceWords.outside,
              surface + 5,
              false,
            ),
          ]
        : []),
    ],
    surface,
    known,
    thickness,
    likely: known ? rangeShape(bed, known, surface, layout, scale) : null,
    soil: known ? soilPieces(bed, known, thickness, surface, layout) : [],
    bars,
    places: bars.flatMap((bar, index) => {
      const planting = laid[index]?.planting;
      if (!planting) return [];
      const width = Math.max(leastTarget, bar.width);
      return [
        {
          planting,
          x: Math.min(bar.x, layout.width - width),
          width,
          top: bar.top,
          height: bar.bottom - bar.top,
          startX: within(planting.start),
          endX: planting.end === null ? null : within(planting.end),
        },
      ];
    }),
    layers: bed.layers
      .filter(({ day }) => day >= span.from && day <= span.to)
      .map((layer) => {
        const width = Math.max(5, Math.min(10, layout.x(1) - layout.x(0)));
        const height =
          layer.inSoil === true ? 7 : Math.max(3, layer.laidDepth * scale.pxPerMillimetre);
        return {
          layer,
          x: layout.x(layer.day + 0.5) - width / 2,
          y: layer.inSoil === true ? surface + 1 : surface - height,
          width,
          height,
        };
      }),
    crowded: crowded.map(({ from, to }) => {
      const x = layout.x(Math.max(from, span.from));
      return { x, width: layout.x(Math.min(to, span.to) + 1) - x, y: 12 };
    }),
    troubles: marked,
  };
}

/** What is left of an upright line from the top to the foot of a strip where it leaves out words. */
export function uprightPieces(
  x: number,
  { words, foot }: Pick<BedStripGeometry, 'words' | 'foot'>,
): readonly { readonly top: number; readonly bottom: number }[] {
  const pieces: { top: number; bottom: number }[] = [];
  let top = 0;
  for (const word of words
    .filter(({ from, to }) => x > from && x < to)
    .toSorted((one, other) => one.top - other.top)) {
    if (word.top > top) pieces.push({ top, bottom: word.top });
    top = Math.max(top, word.bottom);
  }
  if (top < foot) pieces.push({ top, bottom: foot });
  return pieces;
}

/** Where it lies 8 times in 10 on the evening of a day [g/m2]; null where that is not told. */
export function rangeOn(
  { range }: Pick<BedStrip, 'range'>,
  day: DayNumber,
): { readonly low: number; readonly high: number } | null {
  if (typeof range !== 'object') return null;
  const at = day - range.firstDay + 1;
  const [low, high] = [range.low[at], range.high[at]];
  return low === undefined || high === undefined ? null : { low, high };
}

/** What lies ready on the evening of a day [g/m2]; null where there are no sums for it. */
export function readyOn({ run }: Pick<BedStrip, 'run'>, day: DayNumber): number | null {
  const at = run ? day - run.firstDay : -1;
  return run && at >= 0 && at < run.days ? (run.pools.mineralTop[at] ?? null) : null;
}
