import { row } from './row';
import type { Row } from './shapes';

/**
 * Days from sowing to setting out. A crop row counts its days from one of the two; a planting that
 * began the other way has so many days fewer or more to its end.
 */
export const nurseryDays: Row = row(
  21,
  28,
  45,
  'days',
  'Assumed',
  'trays are set out at three to six weeks',
  'assumed',
  { drawnPer: 'crop' },
);
