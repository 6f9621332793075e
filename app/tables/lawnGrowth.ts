import type { GrowthCurve } from '../core/lawn/growth';
import { row } from './row';
import type { Row } from './shapes';

interface GrowthRows {
  readonly best: Row;
  readonly spread: Row;
  readonly slowsInHeat: boolean;
}

/** Growth of grass on the day's mean temperature: best temperature and how fast it falls off. */
export const growthCurves: Readonly<Record<'cool' | 'warm', GrowthRows>> = {
  cool: {
    best: row(
      18,
      20,
      21,
      'deg C',
      'GelernterStowell2005',
      'best temperature of cool-season turf, 68 F; 18 C is used for annual meadow grass',
      'read',
      { drawnPer: 'garden' },
    ),
    spread: row(
      4.5,
      5.5,
      6.5,
      'deg C',
      'GelernterStowell2005',
      'the term for variance; range assumed',
      'memory',
      { drawnPer: 'garden' },
    ),
    slowsInHeat: true,
  },
  warm: {
    best: row(
      29,
      31,
      33,
      'deg C',
      'GelernterStowell2005',
      'best temperature of warm-season turf, 88 F; range assumed',
      'read',
      { drawnPer: 'garden' },
    ),
    spread: row(
      6,
      7,
      8,
      'deg C',
      'GelernterStowell2005',
      'the term for variance; range assumed',
      'memory',
      { drawnPer: 'garden' },
    ),
    slowsInHeat: false,
  },
};

/** The curve at likely values. */
export function growthCurveOf(grass: 'cool' | 'warm'): GrowthCurve {
  const { best, spread, slowsInHeat } = growthCurves[grass];
  return { bestCelsius: best.typical, spreadCelsius: spread.typical, slowsInHeat };
}

/** The curves at the ends of the rows that let grass grow most, for what a lawn can have grown. */
export function favourableCurves(grass: 'cool' | 'warm'): readonly GrowthCurve[] {
  const { best, spread, slowsInHeat } = growthCurves[grass];
  return [best.low, best.typical, best.high].flatMap((bestCelsius) =>
    [spread.typical, spread.high].map((spreadCelsius) => ({
      bestCelsius,
      spreadCelsius,
      slowsInHeat,
    })),
  );
}
