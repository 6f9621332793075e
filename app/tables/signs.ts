import type { LookKind, SignCoefficients, Slope } from '../core/season/draws/signs';
import { coefficientRows } from './coefficients';
import { row, single } from './row';
import type { Row } from './shapes';

const times = (low: number, typical: number, high: number, why: string): Row =>
  row(low, typical, high, 'times as likely', 'Assumed', why, 'assumed', { drawnPer: 'nothing' });

const end = (value: number, unit: string, why: string): Row =>
  single(value, unit, 'Assumed', why, 'assumed');

/**
 * How much what a gardener sees, smells and feels says of a bed. All of it is our own judgement:
 * no trial was found that counts such signs against measurements.
 */
export const signRows = {
  timesLikelier: {
    nodules: times(1.5, 2, 3, 'pink inside tells a working nodule, not how many there are'),
    leaves: times(1.5, 2, 3, 'cold, drought, age and variety colour leaves as well'),
    smellsSour: times(1.2, 1.5, 2, 'a wet mat smells before it is thick'),
    moistFingerDeep: times(1.5, 2, 3, 'a finger reaches a quarter of the layer it speaks for'),
    slugsUnderBoard: times(1.1, 1.3, 1.5, 'slugs come and go with the neighbours'),
    soilSeen: times(1.5, 2, 3, 'patches hide as much as they show'),
  } satisfies Record<LookKind, Row>,
  daysApart: end(14, 'days', 'two looks within a fortnight tell one story'),
  daysShown: end(14, 'days', 'leaves and nodules show what the last fortnight brought'),
  leastNeed: end(0.05, 'g N per m2', 'a seedling or a crop past its end shows nothing'),
  paleLeaves: {
    from: end(0.5, 'share of need met', 'half of what is wanted: lower leaves give theirs up'),
    to: end(0.9, 'share of need met', 'the line of the state "short"'),
  },
  busyNodules: {
    from: end(0.2, 'of the usual share fixed', 'next to nothing fixed'),
    to: end(0.8, 'of the usual share fixed', 'nearly all that is usual'),
  },
  moist: {
    from: end(0.3, 'share of available water', 'crumbles and feels dry'),
    to: end(0.7, 'share of available water', 'feels cool and holds together'),
  },
  hidden: {
    from: end(0.2, 'share of ground', 'a few stalks on bare soil'),
    to: end(0.9, 'share of ground', 'nothing shows unless it is parted'),
  },
  sourMat: {
    from: end(0.4, 'kg dry matter per m2', 'about 8 mm of just cut grass'),
    to: end(1.5, 'kg dry matter per m2', 'about an inch of grass that has sunk together'),
  },
} as const;

const slope = ({ from, to }: { readonly from: Row; readonly to: Row }): Slope => ({
  from: from.typical,
  to: to.typical,
});

/** The rows at their typical values, as the draws take them. Lush leaves go by the luxury rows. */
export const signCoefficients: SignCoefficients = {
  timesLikelier: Object.fromEntries(
    Object.entries(signRows.timesLikelier).map(([kind, { typical }]) => [kind, typical]),
  ) as Record<LookKind, number>,
  daysApart: signRows.daysApart.typical,
  daysShown: signRows.daysShown.typical,
  leastNeed: signRows.leastNeed.typical,
  paleLeaves: slope(signRows.paleLeaves),
  busyNodules: slope(signRows.busyNodules),
  moist: slope(signRows.moist),
  hidden: slope(signRows.hidden),
  sourMat: slope(signRows.sourMat),
  lushLeaves: slope({ from: coefficientRows.luxuryStart, to: coefficientRows.luxuryFull }),
};
