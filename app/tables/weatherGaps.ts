import type { WeatherGaps } from '../core/soil/penmanMonteith';
import { row } from './row';
import type { Row } from './shapes';

/** Wind at 2 m where nobody measured it. */
export const usualWind: Row = row(
  1,
  2,
  3,
  'm/s',
  'Allen1998',
  'Example 20: 2 m/s; 1 and 3 m/s change the answer by -7 and +6 %',
  'read',
  { drawnPer: 'nothing' },
);

const share = 'share of the radiation above the air per root of a degree';

/** Radiation where neither sun nor radiation was measured, by how far the sea is. */
export const radiationPerRootDegree = {
  inland: row(0.14, 0.16, 0.18, share, 'Allen1998', 'equation 50, inland; range ours', 'mixed', {
    drawnPer: 'nothing',
  }),
  coast: row(0.17, 0.19, 0.21, share, 'Allen1998', 'equation 50, near the sea', 'memory', {
    drawnPer: 'nothing',
  }),
} as const;

/** What stands in for missing measurements, at likely values. */
export const likelyGaps = (place: keyof typeof radiationPerRootDegree): WeatherGaps => ({
  wind: usualWind.typical,
  radiationPerRootDegree: radiationPerRootDegree[place].typical,
});
