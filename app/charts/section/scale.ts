import { nitrogenKinds, type SectionFacts, type SoilLayerFacts } from './facts';

/** How large things are drawn. One scale for plants, roots and soil; covers are drawn thicker. */
export interface SectionScale {
  /** px to a mm of soil, root and plant */
  readonly perMillimetre: number;
  /** px to a mm of cover */
  readonly coverPerMillimetre: number;
  /** g N per m2 that one dot stands for */
  readonly gramsPerDot: number;
  /** px of the tallest plant with the cover it stands on */
  readonly above: number;
  /** mm that each planting grows to in what is drawn: how much room one plant of it gets */
  readonly heights: ReadonlyMap<string, number>;
  /** mm of soil that are drawn: all that roots are in, not always all of the lower layer */
  readonly drawnDepth: number;
}

export interface SectionBox {
  /** px across the bed */
  readonly width: number;
  /** px at most, from the tallest tip to the lowest soil */
  readonly height: number;
  /** px that all cover may have at most */
  readonly mostCover: number;
  /** px of a square that holds five dots */
  readonly cell: number;
  /** dots of one kind in one layer that one would still count */
  readonly mostDots: number;
}

/** How many times thicker than the rest a cover may be drawn. */
const coverTimes = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20] as const;
const dotSteps = [0.2, 0.5, 1, 2, 5, 10, 20, 50, 100] as const;
/** Over a bare bed so much air is drawn [mm]. */
const leastAbove = 160;
/** 1 mm is never larger than this [px]: a bed of cress needs no magnifying glass */
const mostPerMillimetre = 0.42;

export const dotsIn = (grams: number, gramsPerDot: number): number =>
  Math.round(Math.max(0, grams) / gramsPerDot);

/** Dots stand in fives, each kind beginning a square of its own. */
const cellsOf = (layer: SoilLayerFacts, gramsPerDot: number): number =>
  nitrogenKinds.reduce(
    (sum, kind) => sum + Math.ceil(dotsIn(layer.nitrogen[kind], gramsPerDot) / 5),
    0,
  );

export const cellsAcross = (width: number, cell: number): number =>
  Math.max(1, Math.floor(width / cell));
export const cellsDown = (height: number, cell: number): number =>
  Math.max(1, Math.floor(height / cell));

const fits = (
  layer: SoilLayerFacts,
  gramsPerDot: number,
  { perMillimetre, drawnDepth }: Pick<SectionScale, 'perMillimetre' | 'drawnDepth'>,
  { width, cell, mostDots }: SectionBox,
): boolean =>
  nitrogenKinds.every((kind) => dotsIn(layer.nitrogen[kind], gramsPerDot) <= mostDots) &&
  cellsOf(layer, gramsPerDot) <=
    cellsAcross(width, cell) *
      cellsDown((Math.min(layer.to, drawnDepth) - layer.from) * perMillimetre, cell);

/** So much soil is always drawn, and so much under the deepest root [mm]. */
const leastDepth = 480;
const underRoots = 60;

/** Soil that nothing has rooted in yet needs no room: mm that are drawn of all of these. */
export const drawnDepthFor = (all: readonly SectionFacts[]): number =>
  Math.min(
    Math.max(...all.map(({ lower }) => lower.to)),
    Math.max(
      leastDepth,
      ...all.flatMap(({ plants }) => plants.map(({ rootDepth }) => rootDepth + underRoots)),
    ),
  );

/** px to a mm, so that the tallest and the deepest of all fit into the box. */
export function perMillimetreFor(all: readonly SectionFacts[], box: SectionBox): number {
  const tallest = Math.max(leastAbove, ...all.flatMap(({ plants }) => plants.map((p) => p.height)));
  return Math.min(mostPerMillimetre, (box.height - box.mostCover) / (tallest + drawnDepthFor(all)));
}

/** The smallest round amount at which the dots of all of these can be counted and find room. */
export const gramsPerDotFor = (
  all: readonly SectionFacts[],
  lengths: Pick<SectionScale, 'perMillimetre' | 'drawnDepth'>,
  box: SectionBox,
): number =>
  dotSteps.find((step) =>
    all.every(({ top, lower }) => fits(top, step, lengths, box) && fits(lower, step, lengths, box)),
  ) ?? Math.max(...dotSteps);

/**
 * One scale for several evenings of a bed, so that they can be compared.
 *
 * @param fixed what other beds share with these; else the largest that fits is taken
 */
export function sectionScale(
  all: readonly SectionFacts[],
  box: SectionBox,
  fixed: Partial<Pick<SectionScale, 'coverPerMillimetre' | 'gramsPerDot'>> = {},
): SectionScale {
  const perMillimetre = perMillimetreFor(all, box);
  const drawnDepth = drawnDepthFor(all);
  const deepestCover = Math.max(0, ...all.map(coverHeight));
  const times =
    coverTimes.findLast((one) => deepestCover * perMillimetre * one <= box.mostCover) ?? 1;
  const coverPerMillimetre = fixed.coverPerMillimetre ?? perMillimetre * times;
  return {
    perMillimetre,
    coverPerMillimetre,
    gramsPerDot: fixed.gramsPerDot ?? gramsPerDotFor(all, { perMillimetre, drawnDepth }, box),
    above: Math.max(
      leastAbove * perMillimetre,
      ...all.map(
        (facts) =>
          coverHeight(facts) * coverPerMillimetre +
          Math.max(0, ...facts.plants.map(({ height }) => height)) * perMillimetre,
      ),
    ),
    heights: heightsOf(all),
    drawnDepth,
  };
}

function heightsOf(all: readonly SectionFacts[]): ReadonlyMap<string, number> {
  const heights = new Map<string, number>();
  for (const { plants } of all)
    for (const { id, height } of plants) heights.set(id, Math.max(height, heights.get(id) ?? 0));
  return heights;
}

/** mm of all layers that lie there. */
export const coverHeight = ({ cover }: SectionFacts): number =>
  cover.reduce((sum, { depth }) => sum + depth, 0);
