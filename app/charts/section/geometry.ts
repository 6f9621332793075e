import type { LyingLayer } from '../cover/geometry';
import type { PlantShown } from './data';
import { type Band, type Dot, placeDots } from './dots';
import type { SectionFacts, SoilLayerFacts } from './facts';
import { drawPlant, type PlantPaths, spreads } from './plants/draw';
import { drawRoots } from './plants/roots';
import { coverHeight, type SectionScale } from './scale';

/** Where the cut of a bed lies in the drawing [px]. */
export interface SectionFrame {
  readonly left: number;
  readonly right: number;
  /** the highest tip of all that is drawn to this scale */
  readonly top: number;
  /** width of the gauges of water, inside the bed's right end */
  readonly gauge: number;
  /** a square that holds five dots */
  readonly cell: number;
  /** the least room of one plant across */
  readonly leastPlant: number;
}

export interface PlantDrawing {
  readonly plant: PlantShown;
  /** the part of the bed that is its own */
  readonly left: number;
  readonly right: number;
  readonly feet: readonly number[];
  /** px of the tips and of what it stands on */
  readonly top: number;
  readonly base: number;
  /** one for each foot */
  readonly paths: readonly PlantPaths[];
  readonly seeds: readonly { readonly x: number; readonly y: number }[];
  readonly roots: string;
  /** px of the deepest root */
  readonly rootEnd: number;
}

export interface LayerDrawing {
  readonly lying: LyingLayer;
  readonly top: number;
  readonly bottom: number;
  readonly path: string;
}

export interface SoilDrawing extends Band {
  readonly facts: SoilLayerFacts;
  readonly dots: readonly Dot[];
  /** px of the water's level in the gauge */
  readonly level: number;
}

export interface SectionGeometry {
  readonly left: number;
  readonly right: number;
  readonly surface: number;
  readonly bottom: number;
  /** the lower layer is deeper than is drawn */
  readonly goesOn: boolean;
  /** what plants stand on */
  readonly coverTop: number;
  /** where ground is hidden, from left to right */
  readonly spans: readonly (readonly [number, number])[];
  readonly plants: readonly PlantDrawing[];
  /** from the soil up */
  readonly cover: readonly LayerDrawing[];
  readonly soil: readonly [SoilDrawing, SoilDrawing];
}

/** Seed lies half an inch deep in the trials that tell when it is up [mm]. */
const seedMillimetres = 12.7;
const mostPlants = 14;

// edges run a little uneven, as on a spade's cut, but never by more than a third of a layer
const unevenness = (x: number, seed: number): number =>
  0.6 * Math.sin(x / 17 + seed * 1.7) + 0.4 * Math.sin(x / 7 + seed * 3.1);
const rounded = (value: number): number => Math.round(value * 10) / 10;

/**
 * Where the ground is hidden: the width less as many equal gaps as there are places, each round one
 * of them, the gaps together as wide as the ground that shows.
 */
export function hiddenSpans(
  left: number,
  right: number,
  hidden: number,
  places: number,
): readonly (readonly [number, number])[] {
  const width = right - left;
  const pitch = width / places;
  const gap = pitch * (1 - Math.min(1, hidden));
  if (hidden <= 0) return [];
  if (gap < 1) return [[left, right]];
  return Array.from({ length: places + 1 }, (_unused, at): readonly [number, number] => [
    at === 0 ? left : left + pitch * (at - 0.5) + gap / 2,
    at === places ? right : left + pitch * (at + 0.5) - gap / 2,
  ]);
}

function layerPath(
  spans: readonly (readonly [number, number])[],
  { left, right }: Pick<SectionFrame, 'left' | 'right'>,
  bottom: number,
  top: number,
  seed: number,
): string {
  const most = Math.min(1.6, (bottom - top) / 3);
  return spans
    .map(([from, to]) => {
      const steps = Math.max(2, Math.round((to - from) / 11));
      const xs = Array.from(
        { length: steps + 1 },
        (_unused, at) => from + ((to - from) * at) / steps,
      );
      // a cover thins out round a gap, and ends with the bed
      const inset = Math.min((to - from) * 0.08, (bottom - top) * 0.35, 4);
      const first = from === left ? from : from + inset;
      const last = to === right ? to : to - inset;
      const edge = (y: number, shift: number) => (x: number) =>
        `${rounded(x)} ${rounded(y + most * unevenness(x, shift))}`;
      const low = xs.map(edge(bottom, seed));
      const high = xs
        .map((x) => Math.min(last, Math.max(first, x)))
        .map(edge(top, seed + 1))
        .toReversed();
      return `M${[...low, ...high].join('L')}Z`;
    })
    .join('');
}

interface Stand {
  readonly plant: PlantShown;
  readonly left: number;
  readonly right: number;
  readonly feet: readonly number[];
}

/** Where plants stand: each planting on its share of the bed, evenly, as far apart as the tallest drawn need. */
function stands(
  plants: readonly PlantShown[],
  { left, right, leastPlant }: SectionFrame,
  { perMillimetre, heights }: SectionScale,
): readonly Stand[] {
  const shares = plants.reduce((sum, { share }) => sum + share, 0);
  const perShare = (right - left) / Math.max(1, shares);
  let from = left;
  return plants.map((plant) => {
    const width = plant.share * perShare;
    const grows = Math.max(plant.height, heights.get(plant.id) ?? 0);
    const room = Math.max(leastPlant, grows * perMillimetre * spreads[plant.habit]);
    const count = Math.max(1, Math.min(mostPlants, Math.floor(width / room)));
    const feet = Array.from(
      { length: count },
      (_unused, at) => from + (width * (at + 0.5)) / count,
    );
    const stand = { plant, left: from, right: from + width, feet };
    from += width;
    return stand;
  });
}

function plantDrawing(
  { plant, left, right, feet }: Stand,
  base: number,
  surface: number,
  { perMillimetre }: SectionScale,
): PlantDrawing {
  const room = (right - left) / feet.length;
  const height = plant.height * perMillimetre;
  const width = Math.min(room * 0.98, Math.max(8, height * spreads[plant.habit]));
  const depth = plant.rootDepth * perMillimetre;
  const seedY = surface + Math.max(4, seedMillimetres * perMillimetre);
  const isSeed = plant.stage === 'seed';
  return {
    plant,
    left,
    right,
    feet,
    top: base - height,
    base,
    paths: feet.map((x) =>
      drawPlant(plant.habit, plant.stage, x, plant.stage === 'resting' ? surface : base, {
        under: plant.stage === 'resting' ? 0 : surface - base,
        height,
        width,
        grown: plant.grown > 0 ? Math.min(1, plant.height / plant.grown) : 1,
        isFlowering: plant.stage === 'flowering',
        isBearing: plant.stage === 'bearing',
      }),
    ),
    seeds: isSeed ? feet.flatMap((x) => [-4, 4].map((dx) => ({ x: x + dx, y: seedY }))) : [],
    roots: isSeed
      ? ''
      : feet
          .map((x) =>
            drawRoots(plant.habit, x, surface, depth, Math.min(room * 0.46, depth * 0.75)),
          )
          .join(''),
    rootEnd: surface + depth,
  };
}

/** Everything of a bed on one evening, to scale: lengths from the model, and nothing but lengths from the model. */
export function sectionGeometry(
  facts: SectionFacts,
  scale: SectionScale,
  frame: SectionFrame,
): SectionGeometry {
  const { left, right, gauge, cell } = frame;
  const surface = frame.top + scale.above;
  const coverTop = surface - coverHeight(facts) * scale.coverPerMillimetre;
  const standing = stands(facts.plants, frame, scale);
  const feet = standing.reduce((sum, stand) => sum + stand.feet.length, 0);
  const planted = standing.reduce((sum, stand) => sum + stand.right - stand.left, 0);
  const places = feet > 0 ? Math.max(1, Math.round((feet * (right - left)) / planted)) : 5;
  const spans = hiddenSpans(left, right, facts.cover.length > 0 ? facts.hidden : 0, places);

  let under = surface;
  const cover = facts.cover.map((lying, at): LayerDrawing => {
    const top = under - lying.depth * scale.coverPerMillimetre;
    const shape = { lying, bottom: under, top, path: layerPath(spans, frame, under, top, at) };
    under = top;
    return shape;
  });
  const soilOf = (layer: SoilLayerFacts): SoilDrawing => {
    const top = surface + layer.from * scale.perMillimetre;
    const bottom = surface + Math.min(layer.to, scale.drawnDepth) * scale.perMillimetre;
    const band = { left: left + 3, right: right - gauge - 3, top: top + 1, bottom: bottom - 1 };
    return {
      facts: layer,
      dots: placeDots(layer, band, scale.gramsPerDot, cell),
      level: bottom - (bottom - top) * layer.water,
      left,
      right,
      top,
      bottom,
    };
  };
  return {
    left,
    right,
    surface,
    bottom: surface + scale.drawnDepth * scale.perMillimetre,
    goesOn: facts.lower.to > scale.drawnDepth,
    coverTop,
    spans,
    plants: standing.map((stand) => plantDrawing(stand, coverTop, surface, scale)),
    cover,
    soil: [soilOf(facts.top), soilOf(facts.lower)],
  };
}
