import { row, single } from './row';
import type { Row } from './shapes';

/** Nitrogen below ground as a share of the whole plant. */
export const rootShares = {
  usual: row(
    0.1,
    0.15,
    0.2,
    'share of plant N',
    'Recalled',
    'add 10-20 per cent to the tops',
    'memory',
  ),
  legume: row(
    0.07,
    0.2,
    0.35,
    'share of plant N',
    'Assumed',
    'recovered roots 7-11 per cent, with what they shed 24 per cent',
    'mixed',
  ),
} as const;

/** What a gardener means by a pick, as a share of the good yield of the table. */
export const wantedShares = {
  poor: row(0.3, 0.45, 0.6, 'share of good yield', 'Assumed', 'a poor pick', 'assumed', {
    drawnPer: 'crop',
  }),
  usual: row(0.6, 0.7, 0.85, 'share of good yield', 'Assumed', 'the usual pick', 'assumed', {
    drawnPer: 'crop',
  }),
  heavy: single(1, 'share of good yield', 'Definition', 'the good yield itself', 'definition'),
} as const satisfies Record<string, Row>;

/** Above the good yield need rises more slowly than yield: as (wanted / good) to this power. */
export const needAboveGoodYield: Row = row(
  0.5,
  0.7,
  1,
  'power',
  'Assumed',
  'need above the good yield',
  'assumed',
  { drawnPer: 'crop' },
);
