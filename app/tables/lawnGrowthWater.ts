import type { LawnGround } from '../core/lawn/lawnWater';
import { totalAvailableWater } from '../core/soil/evapotranspiration';
import { row, single } from './row';
import type { Row } from './shapes';
import { soils, type TextureName } from './soils';

interface TurfRows {
  readonly cropCoefficient: Row;
  readonly depletionShare: Row;
  readonly rootDepthCentimetres: Row;
}

const turf = (coefficient: number, depletion: number, kind: string): TurfRows => ({
  cropCoefficient: single(
    coefficient,
    'share of ET0',
    'Allen1998',
    `table 12, turf grass, ${kind} season, middle`,
    'read',
  ),
  depletionShare: single(
    depletion,
    'share of available water',
    'Allen1998',
    `table 22, turf grass, ${kind} season`,
    'read',
  ),
  rootDepthCentimetres: row(
    30,
    50,
    100,
    'cm',
    'Allen1998',
    'table 22, turf grass: 0.5-1.0 m; lawns cut short root less deep, so its low end is the middle here and 30 cm the low one',
    'derived',
    { drawnPer: 'garden' },
  ),
});

/** How turf drinks (FAO-56). */
export const turfRows: Readonly<Record<'cool' | 'warm', TurfRows>> = {
  cool: turf(0.95, 0.4, 'cool'),
  warm: turf(0.85, 0.5, 'warm'),
};

/** What a lawn on a soil can draw on, at likely values. */
export function lawnGroundOf(grass: 'cool' | 'warm', texture: TextureName): LawnGround {
  const { cropCoefficient, depletionShare, rootDepthCentimetres } = turfRows[grass];
  const { fieldCapacity, wiltingPoint } = soils[texture];
  return {
    available: totalAvailableWater(
      fieldCapacity.typical,
      wiltingPoint.typical,
      rootDepthCentimetres.typical * 10,
    ),
    depletionShare: depletionShare.typical,
    cropCoefficient: cropCoefficient.typical,
  };
}

/** Dry matter of warm-season grass against cool-season grass of the same care, in a year. */
export const warmSeasonYield: Row = row(
  0.8,
  1.3,
  2,
  'factor on the yearly yield',
  'Springer2008',
  'abstract: fed bermudagrass 10.6 g/m2 a day over 97 days; how it spreads to a year and to other care is ours',
  'assumed',
  { drawnPer: 'garden' },
);

/**
 * How far one mowing lies from what the warmth and water of its days lead to expect, as the factor
 * between which 9 in 10 lie: the height it was cut at, what lay in the corners, shade, feeding.
 */
export const oneMowingScatter: Row = row(
  0.55,
  1,
  1.8,
  'factor on one mowing',
  'Assumed',
  'weekly clippings of one lawn against a smooth curve',
  'assumed',
  { drawnPer: 'mowing' },
);

/** Years after which nearly two thirds of what collecting costs a lawn have shown. */
export const yearsUntilCollectingShows: Row = row(
  1,
  3,
  10,
  'years',
  'Assumed',
  'trials of one to three years show a third; simulations go on rising for decades',
  'assumed',
  { drawnPer: 'garden' },
);

/**
 * Share of its wanted water that a lawn got over the two weeks before a mowing, below which its
 * clippings are those of a lean, drought-stressed lawn.
 */
export const droughtLine: Row = row(
  0.3,
  0.5,
  0.7,
  'share of wanted water',
  'Assumed',
  'where grass stops growing and begins to brown; two weeks, as dry matter peaks one to two weeks after rain (Wray 1974)',
  'assumed',
  { drawnPer: 'garden' },
);
/** Days before a mowing that the line looks at. */
export const droughtDays = 14;

/**
 * Growth since the last mowing that was written down, in days of fastest growth, past which the lawn
 * must have been mown meanwhile and nobody wrote it down: four weeks of June.
 */
export const unloggedGrowth: Row = row(
  21,
  28,
  42,
  'days of fastest growth',
  'Assumed',
  'three to six weeks of the fastest growth: grass left so long is a meadow no mower takes',
  'assumed',
  { drawnPer: 'garden' },
);
/** Days since such a lawn was mown: as people mow in the months of growth. */
export const usualMowingDays: Row = row(
  5,
  7,
  14,
  'days',
  'Assumed',
  'common practice: about once a week while the grass grows',
  'assumed',
  { drawnPer: 'mowing' },
);
