import type { SowingTrial } from '../core/crop/emergence';
import type { Standing } from '../core/reference';
import type { CropId } from './crops';
import { row, single } from './row';
import type { Row } from './shapes';
import type { SourceKey } from './sources';

/** Days to emergence at one steady warmth of the soil; null where none or 1 in 100 came up. */
export interface TrialRow {
  readonly celsius: number;
  readonly days: Row | null;
}

const none = null;

/** @param byCelsius days at each temperature tried, in rising order; warmth without a printed time is left out */
const tried = (
  vegetable: string,
  byCelsius: readonly (readonly [celsius: number, days: number | null])[],
  source: SourceKey = 'HarringtonMinges1954',
  standing: Standing = 'read',
): readonly TrialRow[] =>
  byCelsius.map(([celsius, days]) => ({
    celsius,
    days:
      days === null ? null : single(days, 'days', source, `${vegetable}, ${celsius} °C`, standing),
  }));

/**
 * Days at some temperatures from degree-days above a base, for a crop that was sown on many dates
 * and not at steady warmth.
 */
const byDegreeDays = (
  vegetable: string,
  baseCelsius: number,
  degreeDays: number,
  at: readonly number[],
): readonly TrialRow[] => [
  { celsius: baseCelsius, days: null },
  ...at.map((celsius) => ({
    celsius,
    days: single(
      degreeDays / (celsius - baseCelsius),
      'days',
      'Souza2017',
      `${vegetable}: abstract, ${degreeDays} degree-days above ${baseCelsius} °C to emergence`,
      'derived',
    ),
  })),
];

/** Days from sowing to emergence in moist soil, seed half an inch deep, by vegetable as printed. */
export const emergenceTrials = {
  asparagus: tried('asparagus', [
    [5, none],
    [10, 53],
    [15, 24],
    [20, 15],
    [25, 10],
    [30, 12],
    [35, 19],
    [40, none],
  ]),
  'snap bean': tried('snap bean', [
    [10, none],
    [15, 16],
    [20, 11],
    [25, 8],
    [30, 6],
    [35, 6],
    [40, none],
  ]),
  beet: tried('beet', [
    [0, none],
    [5, 42],
    [10, 17],
    [15, 10],
    [20, 6],
    [25, 5],
    [30, 5],
    [35, 5],
    [40, none],
  ]),
  cabbage: tried('cabbage', [
    [0, none],
    [10, 15],
    [15, 9],
    [20, 6],
    [25, 5],
    [30, 4],
    [35, none],
  ]),
  carrot: tried('carrot', [
    [0, none],
    [5, 51],
    [10, 17],
    [15, 10],
    [20, 7],
    [25, 6],
    [30, 6],
    [35, 9],
    [40, none],
  ]),
  cauliflower: tried('cauliflower', [
    [5, none],
    [10, 20],
    [15, 10],
    [20, 6],
    [25, 5],
    [30, 5],
    [35, none],
  ]),
  celery: tried('celery', [
    [0, none],
    [5, 41],
    [10, 16],
    [15, 12],
    [20, 7],
    [30, none],
  ]),
  cucumber: tried('cucumber', [
    [10, none],
    [15, 13],
    [20, 6],
    [25, 4],
    [30, 3],
    [35, 3],
  ]),
  eggplant: tried('eggplant', [
    [15, none],
    [20, 13],
    [25, 8],
    [30, 5],
    [35, none],
  ]),
  lettuce: tried('lettuce', [
    [0, 49],
    [5, 15],
    [10, 7],
    [15, 4],
    [20, 3],
    [25, 2],
    [30, 3],
    [35, none],
  ]),
  melon: tried('melon', [
    [15, none],
    [20, 8],
    [25, 4],
    [30, 3],
    [35, none],
  ]),
  okra: tried('okra', [
    [10, none],
    [15, 27],
    [20, 17],
    [25, 13],
    [30, 7],
    [35, 6],
    [40, 7],
  ]),
  onion: tried('onion', [
    [0, 136],
    [5, 31],
    [10, 13],
    [15, 7],
    [20, 5],
    [25, 4],
    [30, 4],
    [35, 13],
  ]),
  parsley: tried('parsley', [
    [5, none],
    [10, 29],
    [15, 17],
    [20, 14],
    [25, 13],
    [30, 12],
    [35, none],
  ]),
  parsnip: tried('parsnip', [
    [0, 172],
    [5, 57],
    [10, 27],
    [15, 19],
    [20, 14],
    [25, 15],
    [30, 32],
    [35, none],
  ]),
  pea: tried('pea', [
    [0, none],
    [5, 36],
    [10, 14],
    [15, 9],
    [20, 8],
    [25, 6],
    [30, 6],
    [35, none],
  ]),
  pepper: tried('pepper', [
    [10, none],
    [15, 25],
    [20, 13],
    [25, 8],
    [30, 8],
    [35, 9],
    [40, none],
  ]),
  radish: tried('radish', [
    [0, none],
    [5, 29],
    [10, 11],
    [15, 6],
    [20, 4],
    [25, 4],
    [30, 3],
    [35, none],
  ]),
  spinach: tried('spinach', [
    [0, 63],
    [5, 23],
    [10, 12],
    [15, 7],
    [20, 6],
    [25, 5],
    [30, 6],
    [35, none],
  ]),
  'sweet corn': tried('sweet corn', [
    [5, none],
    [10, 22],
    [15, 12],
    [20, 7],
    [25, 4],
    [30, 4],
    [35, 3],
  ]),
  tomato: tried('tomato', [
    [5, none],
    [10, 43],
    [15, 14],
    [20, 8],
    [25, 6],
    [30, 6],
    [35, 9],
    [40, none],
  ]),
  turnip: tried('turnip', [
    [0, none],
    [10, 5],
    [15, 3],
    [20, 2],
    [25, 1],
    [30, 1],
    [35, 1],
    [40, 3],
  ]),
  watermelon: tried('watermelon', [
    [10, none],
    [20, 12],
    [25, 5],
    [30, 4],
    [35, 3],
    [40, none],
  ]),
  squash: byDegreeDays('squash', 12, 88.2, [20, 25, 30, 35]),
  cowpea: tried(
    'cowpea',
    [
      [10, 14],
      [15, 10],
      [20, 8],
      [25, 7],
    ],
    'SeedCompanyTable',
    'reported',
  ),
} as const satisfies Record<string, readonly TrialRow[]>;

export type EmergenceName = keyof typeof emergenceTrials;

export interface CropEmergence {
  readonly trials: EmergenceName;
  /** the trials are those of a relative: nobody we read tried the crop itself (assumed) */
  readonly isRelative: boolean;
}

const own = (trials: EmergenceName): CropEmergence => ({ trials, isRelative: false });
const like = (trials: EmergenceName): CropEmergence => ({ trials, isRelative: true });

/** Whose trials a sown crop goes by. Crops without are not foretold: no relative was tried. */
export const cropEmergence: Readonly<Partial<Record<CropId, CropEmergence>>> = {
  snap_bean_bush: own('snap bean'),
  snap_bean_pole: own('snap bean'),
  dry_bean: own('snap bean'),
  runner_bean: like('snap bean'),
  edamame: like('snap bean'),
  yardlong_cowpea: own('cowpea'),
  pea: own('pea'),
  broad_bean: like('pea'),
  lettuce_head: own('lettuce'),
  lettuce_leaf: own('lettuce'),
  spinach: own('spinach'),
  beet: own('beet'),
  chard: like('beet'),
  cabbage: own('cabbage'),
  kale: like('cabbage'),
  broccoli: like('cabbage'),
  brussels_sprouts: like('cabbage'),
  pak_choi: like('cabbage'),
  cauliflower: own('cauliflower'),
  radish: own('radish'),
  turnip: own('turnip'),
  carrot: own('carrot'),
  parsnip: own('parsnip'),
  parsley: own('parsley'),
  celery: own('celery'),
  celeriac: like('celery'),
  onion: own('onion'),
  leek: like('onion'),
  tomato: own('tomato'),
  pepper: own('pepper'),
  eggplant: own('eggplant'),
  cucumber: own('cucumber'),
  zucchini: own('squash'),
  winter_squash: own('squash'),
  melon: own('melon'),
  watermelon: own('watermelon'),
  sweet_corn: own('sweet corn'),
  okra: own('okra'),
};

/** What the engine takes: the trials of a crop as numbers, or undefined where there are none. */
export function sowingTrialsOf(id: string): readonly SowingTrial[] | undefined {
  const found = (cropEmergence as Readonly<Record<string, CropEmergence | undefined>>)[id];
  return found && trialsOf(found.trials);
}

export const trialsOf = (name: EmergenceName): readonly SowingTrial[] =>
  emergenceTrials[name].map(({ celsius, days }) => ({ celsius, days: days?.typical ?? null }));

/**
 * How many times the days of the line between trials a sowing may take: each printed time with one
 * on both sides was foretold from those two alone, and nine in ten took between low and high.
 */
export const emergenceSpread: Row = row(
  0.75,
  1,
  1.22,
  'times',
  'HarringtonMinges1954',
  '84 printed times over ours, each foretold without itself; 5 and 95 % points, middle 0.98 taken as 1',
  'derived',
);
