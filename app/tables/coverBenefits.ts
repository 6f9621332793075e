import { row, single } from './row';
import type { Row } from './shapes';
import type { SourceKey } from './sources';

const ofBare = 'share of what bare soil evaporates';

/** Evaporation from wet soil under a settled cover, by its depth in mm. Transpiration is not touched. */
export const evaporationByDepth: readonly { readonly millimetres: number; readonly left: Row }[] = [
  { millimetres: 0, left: single(1, ofBare, 'Definition', 'bare', 'definition') },
  {
    millimetres: 20,
    left: row(
      0.48,
      0.6,
      0.8,
      ofBare,
      'Diaz2005',
      'between bare and 50 mm; 0.48 was read for stones',
      'assumed',
    ),
  },
  {
    millimetres: 50,
    left: row(
      0.17,
      0.4,
      0.6,
      ofBare,
      'CalPolyMulch',
      'abstract: 40 % in the first three days; straw, clippings and leaves alike; 17 % under stones elsewhere',
      'mixed',
    ),
  },
  {
    millimetres: 100,
    left: row(
      0.08,
      0.35,
      0.6,
      ofBare,
      'CalPolyMulch',
      'abstract: about 10 % moister than under 50 mm, 150 mm no better; number ours',
      'assumed',
    ),
  },
];

/**
 * What wet ground under a cover loses to the air, as a share of what bare ground loses: on the lines
 * between the depths of the table, and no less than at the deepest of them.
 *
 * @param millimetres depth that lies, 0 and more
 */
export function evaporationLeft(millimetres: number): number {
  const above = evaporationByDepth.findIndex((point) => point.millimetres >= millimetres);
  const deeper = evaporationByDepth[above];
  const shallower = evaporationByDepth[above - 1];
  if (!deeper) return evaporationByDepth.at(-1)?.left.typical ?? 1;
  if (!shallower) return deeper.left.typical;
  const way = (millimetres - shallower.millimetres) / (deeper.millimetres - shallower.millimetres);
  return shallower.left.typical + way * (deeper.left.typical - shallower.left.typical);
}

/** What a season under cover saves of watering; more is claimed for sparse and young crops. */
export const wateringSaved: Row = row(
  0.05,
  0.2,
  0.5,
  'share of watering',
  'Assumed',
  '10-30 % in dry places, less where it rains often; half is the gardeners’ upper claim',
  'assumed',
);

/** Rain that a dry cover of 50 mm keeps from the soil in one shower. */
export const showerHeldBack: Row = row(1, 2, 3, 'mm', 'Recalled', 'dry cover of 50 mm', 'memory');

/** How much cooler the summer mean of the soil is at 10 cm. */
export const summerCooling: Row = row(
  1,
  1.5,
  2,
  'deg C cooler',
  'ParkerLarson1962',
  'abstract: 1-2 deg C in the early season',
  'read',
);

/** Swing between day and night at 5-10 cm that 50 mm of loose straw takes off. */
export const swingTakenOff: Row = row(
  0.3,
  0.45,
  0.6,
  'share',
  'Recalled',
  '50 mm of loose straw',
  'memory',
);

export interface WeedDepth {
  readonly name: string;
  /** mm that advice names for keeping weeds down */
  readonly millimetres: Row;
}

const inches = (
  name: string,
  low: number,
  high: number,
  source: SourceKey,
  place: string,
): WeedDepth => ({
  name,
  millimetres:
    low === high
      ? single(low * 25.4, 'mm', source, place, 'read')
      : row(low * 25.4, ((low + high) / 2) * 25.4, high * 25.4, 'mm', source, place, 'derived'),
});

/** Depths that gardeners' advice prints, by material. */
export const weedDepths: readonly WeedDepth[] = [
  inches('clippings, one layer', 0.5, 0.75, 'Upham', 'half to three quarters of an inch, dried'),
  inches(
    'fresh clippings, one layer',
    0.25,
    0.25,
    'ColusaGarden2021',
    'a quarter of an inch, weekly',
  ),
  inches('dry clippings', 2, 2, 'NebraskaColumn', 'about two inches, dried first'),
  inches('dry clippings, second source', 2, 2, 'TwinCitiesLeaflet', 'two inches'),
  inches('straw or hay', 2, 4, 'Upham', 'thinner lets its own weed seed grow'),
  inches('straw, bark or chips', 2, 4, 'TwinCitiesLeaflet', 'columns stand apart in print'),
  inches('compost', 3, 4, 'TwinCitiesLeaflet', 'columns stand apart in print'),
  inches('dry leaves', 6, 6, 'TwinCitiesLeaflet', 'columns stand apart in print'),
  inches('fine stuff', 2, 2, 'UcPestNote7441', 'about two inches'),
  inches('coarse stuff', 4, 4, 'UcPestNote7441', 'up to four inches'),
  inches('any, by the size of its pieces', 1, 3, 'ColusaGarden2021', 'coarser is deeper'),
];

/** Dry matter that cut the number of small-seeded annual weeds in the field. */
export const weedMass: Row = row(
  0.5,
  0.75,
  1,
  'kg dry matter per m2',
  'Liebman2001',
  'chapter 5: 5-10 t/ha for a substantial cut; not enough in some years',
  'derived',
);

/** What a settled cover does to weeds, from the depth given on. */
export const weedControl = {
  'slows few': single(0, 'mm', 'Assumed', 'our reading of the advice and trials', 'assumed'),
  'stops small seeds while topped up': single(
    20,
    'mm',
    'Assumed',
    'our reading of the advice and trials',
    'assumed',
  ),
  'stops annuals': single(50, 'mm', 'Assumed', 'our reading of the advice and trials', 'assumed'),
  'no further gain': single(
    100,
    'mm',
    'CalPolyMulch',
    'abstract: 150 mm kept soil no moister than 100 mm; for weeds our reading',
    'assumed',
  ),
} as const;
