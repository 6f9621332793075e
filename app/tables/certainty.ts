import type { Certainty } from '../core/lawn/quantity';
import { row, single } from './row';
import type { Row } from './shapes';

const factor = 'factor on the amount';

/** How far an amount may be from what was said, by how it was said; the middle never moves. */
export const certaintyFactors: Readonly<Record<Certainty, Row>> = {
  plain: single(1, factor, 'Definition', 'said without a doubt', 'definition'),
  about: row(0.8, 1, 1.25, factor, 'Assumed', 'said with "about"', 'assumed', {
    drawnPer: 'mowing',
  }),
  'not sure': row(0.6, 1, 1.65, factor, 'Assumed', 'said with "not sure"', 'assumed', {
    drawnPer: 'mowing',
  }),
};

/** How full a container called full is, against the one that was weighed. */
export const fullness: Row = row(
  0.85,
  1,
  1.15,
  factor,
  'Assumed',
  'one full bag against another of the same mower',
  'assumed',
  { drawnPer: 'mowing' },
);
