import type { ExcessClass } from '../../../app/core/season/input';
import type { Application, WeatherRow } from '../../../app/document/schema';
import {
  asked,
  calmDays,
  clippings,
  crop,
  later,
  mowing,
  soilTest,
  store,
  stored,
  usualToday as today,
  watered,
  type Asked,
} from './asked';
import { pair, says, type Pair, type Pairs } from './pair';

/* Rows about a layer that is thought of: its depth, what lies under it, what the bed can still use. */

const straw = store('straw', 'straw-wheat');
const ladder = ['note', 'caution', 'stop'] as const;

const depths = (
  steps: readonly (readonly [past: number, within: number])[],
  of: (millimetres: number) => Asked,
): readonly Pair[] =>
  steps.map(([past, within], at) => pair('depth in mm', of, past, within, { weight: ladder[at]! }));

const fresh = (condition: Application['condition']) => (millimetres: number) =>
  asked({ thoughtOf: [clippings(today, millimetres, { condition })] });

/** A crop of each class, as it stands in July, and how it came into the bed. */
const ofClass: Readonly<
  Record<Exclude<ExcessClass, 'legume' | 'cover'>, readonly [string, string, 'sown' | 'planted']>
> = {
  'tender storage': ['sweet_potato', '2013-05-25', 'planted'],
  storage: ['beet', '2013-05-10', 'sown'],
  fruit: ['tomato', '2013-05-25', 'planted'],
  flower: ['zinnia', '2013-05-15', 'sown'],
  leaf: ['chard', '2013-04-20', 'sown'],
  head: ['cabbage', '2013-05-10', 'planted'],
  perennial: ['strawberry', '2012-09-01', 'planted'],
};

/** A thin layer on a bed with a crop of a class, by the crop's pick in kg per m2. */
const room = (
  excessClass: keyof typeof ofClass,
  steps: readonly (readonly [past: number, within: number])[],
): readonly Pair[] =>
  steps.map(([past, within], at) =>
    pair(
      'pick in kg per m2',
      (kilogramsPerM2: number) => {
        const [id, started, how] = ofClass[excessClass];
        return asked({
          plantings: [crop(id, started, how, { wanted: { kilogramsPerM2 } })],
          thoughtOf: [clippings(today, 5)],
        });
      },
      past,
      within,
      { weight: ladder[at]! },
    ),
  );

/** Manure meal by meal: what was laid in the season before the layer thought of, in mm of clippings. */
const seasonTotal = (cropId: string | null) => (millimetres: number) =>
  asked({
    plantings:
      cropId === null ? [] : [crop(cropId, '2013-03-20', 'sown', { cleared: '2013-10-20' })],
    laid: ['2013-04-10', '2013-04-24', '2013-05-08', '2013-05-22'].map((date) =>
      clippings(date, date === '2013-04-10' ? millimetres : 10),
    ),
    thoughtOf: [clippings(today, 1)],
  });

const beans = (changes: Parameters<typeof crop>[3] = {}) =>
  crop('snap_bean_bush', '2013-05-25', 'sown', changes);

/** A layer on a crop that is wanted in so many kg per m2. */
const enough = (cropId: string, millimetres: number) => (kilogramsPerM2: number) =>
  asked({
    plantings: [
      crop(cropId, cropId === 'chard' ? '2013-04-20' : '2013-05-25', 'planted', {
        wanted: { kilogramsPerM2 },
      }),
    ],
    thoughtOf: [clippings(today, millimetres)],
  });

const may = '2013-05-10';
const spring = '2013-04-01';
const dry = calmDays('2013-01-01', spring).map(([date, low, high, rain]): WeatherRow => [
  date,
  low,
  high,
  date > '2013-03-10' ? 0 : rain,
]);

/** Greens on greens of three days before, after so many mm of watering. */
const soaked = (millimetres: number) =>
  asked({
    today: spring,
    days: dry,
    laid: [clippings(later(spring, -12), 50)],
    events: [watered(spring, millimetres)],
    thoughtOf: [clippings(spring, 5)],
  });

/** Nitrogen of the lot that holds its carbon at 45 % of dry matter near a line of C:N. */
const cOverN =
  (stockId: string, materialId: string, near: number) =>
  (carbonToNitrogen: number): Asked =>
    asked({
      stock: [store(stockId, materialId)],
      thoughtOf: [stored(stockId, today, 5, { carbonToNitrogen, nitrogenPercent: 45 / near })],
    });

const outside = says('outside what was tested');

export const layerPairs: Pairs = {
  'layer just cut': depths(
    [
      [8.1, 8],
      [13.1, 13],
      [25, 24.9],
    ],
    fresh('just cut'),
  ),
  'layer limp': depths(
    [
      [20.1, 20],
      [40.1, 40],
      [75.1, 75],
    ],
    fresh('limp'),
  ),
  'layer crisp': depths(
    [
      [40.1, 40],
      [75.1, 75],
      [150.1, 150],
    ],
    (millimetres) => asked({ stock: [straw], thoughtOf: [stored('straw', today, millimetres)] }),
  ),
  'all cover': [
    pair(
      'depth in mm of the straw that lies there',
      (millimetres: number) =>
        asked({
          stock: [straw],
          laid: [stored('straw', later(today, -1), millimetres)],
          thoughtOf: [stored('straw', today, 5)],
        }),
      100,
      90,
      { weight: 'caution' },
    ),
    pair(
      'depth in mm of the straw that lies there',
      (millimetres: number) =>
        asked({
          stock: [straw],
          laid: [stored('straw', later(today, -1), millimetres)],
          thoughtOf: [stored('straw', today, 5)],
        }),
      150,
      140,
      { weight: 'stop' },
    ),
  ],
  'room tender storage': room('tender storage', [
    [1.98, 2.02],
    [1.81, 1.85],
    [1.449, 1.479],
  ]),
  'room storage': room('storage', [
    [0.981, 0.998],
    [0.83, 0.845],
    [0.634, 0.646],
  ]),
  'room fruit': room('fruit', [
    [2.857, 2.907],
    [2.413, 2.463],
    [1.741, 1.781],
  ]),
  'room flower': room('flower', [
    [0.695, 0.708],
    [0.588, 0.599],
    [0.3825, 0.3895],
  ]),
  'room leaf': room('leaf', [
    [1.823, 1.858],
    [1.337, 1.362],
    [1.002, 1.022],
  ]),
  'room head': room('head', [
    [1.21, 1.233],
    [0.887, 0.903],
    [0.665, 0.678],
  ]),
  'room perennial': room('perennial', [
    [1.162, 1.182],
    [1.065, 1.085],
    [0.751, 0.765],
  ]),
  'season total': [
    pair('depth in mm of the first layer', seasonTotal('chard'), 11.9, 11.7, { weight: 'note' }),
    pair('depth in mm of the first layer', seasonTotal('chard'), 14.2, 14.05, {
      weight: 'caution',
    }),
    pair('depth in mm of the first layer', seasonTotal('chard'), 16.6, 16.4, { weight: 'stop' }),
    // on a cover crop, which has no other line
    pair('depth in mm of the first layer', seasonTotal('winter_rye'), 11.9, 11.7, {
      weight: 'note',
    }),
    pair('depth in mm of the first layer', seasonTotal('winter_rye'), 16.6, 16.4, {
      weight: 'stop',
    }),
    // on an empty bed it stays a caution
    pair('depth in mm of the first layer', seasonTotal(null), 14.2, 14.05, { weight: 'caution' }),
  ],
  'greens on an empty bed': [
    pair('depth in mm', (mm: number) => asked({ thoughtOf: [clippings(today, mm)] }), 71.3, 69.3, {
      weight: 'caution',
    }),
  ],
  'legume loss': [
    pair(
      'depth in mm',
      (mm: number) => asked({ plantings: [beans()], thoughtOf: [clippings(today, mm)] }),
      3.671,
      3.581,
      { weight: 'note' },
    ),
    pair(
      'depth in mm',
      (mm: number) =>
        asked({
          plantings: [beans()],
          laid: [clippings('2013-06-20', 1)],
          thoughtOf: [clippings(today, mm)],
        }),
      43.6,
      42.6,
      { weight: 'caution' },
    ),
  ],
  // deeper than a thin first layer weighs what it costs, and no less
  'legume first layer': [
    pair(
      'depth in mm',
      (mm: number) =>
        asked({
          plantings: [beans({ started: '2013-05-25' })],
          thoughtOf: [clippings('2013-06-25', mm)],
          today: '2013-06-25',
        }),
      8.1,
      8,
      {
        sees: ({ cautions }) =>
          cautions.some(({ kind, detail }) => kind === 'legume' && detail['welcome'] === 0),
      },
    ),
  ],
  'legume least fixed': [
    pair(
      'share of the bed',
      (share: number) =>
        asked({ plantings: [beans({ share })], thoughtOf: [clippings(today, 20)] }),
      0.4188,
      0.4138,
      { sees: ({ cautions }) => cautions.some(({ kind }) => kind === 'legume') },
    ),
  ],
  'enough margin': [
    pair('pick in kg per m2', enough('sweet_potato', 20), 1.873, 1.893, {
      sees: says('greens past enough'),
    }),
  ],
  'greens on enough for now': [
    pair(
      'nitrate in mg/kg',
      (mgPerKg: number) =>
        asked({
          bed: { knownSince: '2013-06-20' },
          plantings: [crop('cabbage', '2013-06-15', 'planted', { wanted: 'heavy' })],
          events: [soilTest('2013-06-20', mgPerKg)],
          thoughtOf: [clippings(today, 3)],
        }),
      23.6,
      23.2,
      { weight: 'caution' },
    ),
  ],
  'greens on enough to the end': [
    pair('pick in kg per m2', enough('chard', 5), 1.515, 1.54, { weight: 'caution' }),
  ],
  'greens past enough': [
    pair('depth in mm', (mm: number) => enough('sweet_potato', mm)(1.81), 3.95, 3.65, {
      weight: 'stop',
    }),
  ],
  'greens too soon': [pair('water in mm', soaked, 5.5, 5.3, { weight: 'caution' })],
  'too soon wetness': [pair('water in mm', soaked, 5.5, 5.3, { sees: says('greens too soon') })],
  'too soon left': [
    pair(
      'day of the earlier layer',
      (date: string) =>
        asked({
          today: may,
          stock: [straw],
          laid: [stored('straw', '2013-02-20', 80), clippings('2013-03-01', 10, { date })],
          events: [watered(may, 20)],
          thoughtOf: [clippings(may, 5)],
        }),
      '2013-03-14',
      '2013-03-13',
      { sees: says('greens too soon') },
    ),
  ],
  'greens before a salad': [
    pair(
      'day of clearing',
      (cleared: string) =>
        asked({
          plantings: [crop('lettuce_head', '2013-06-01', 'planted', { cleared })],
          thoughtOf: [clippings(today, 5)],
        }),
      later(today, 28),
      later(today, 29),
      { weight: 'note' },
    ),
  ],
  'salad days': [
    pair(
      'day of the layer',
      (date: string) =>
        asked({
          plantings: [crop('lettuce_leaf', '2013-05-01', 'sown', { cleared: '2013-07-20' })],
          mowings: [mowing('2013-06-15')],
          thoughtOf: [clippings('2013-06-15', 5, { date })],
        }),
      '2013-06-22',
      '2013-06-21',
      { sees: says('greens before a salad') },
    ),
  ],
  'leaf nitrate': [
    pair(
      'nitrate in mg/kg',
      (mgPerKg: number) =>
        asked({
          bed: { knownSince: '2013-06-20' },
          plantings: [crop('chard', '2013-04-20', 'sown')],
          events: [soilTest('2013-06-20', mgPerKg)],
        }),
      29,
      28.3,
      { weight: 'caution' },
    ),
  ],
  'outside what was tested': [
    pair('C:N', cOverN('straw', 'straw-wheat', 150), 151, 149, { weight: 'note' }),
  ],
  'least green C:N': [pair('C:N', cOverN('weeds', 'weeds-green', 8), 7.9, 8, { sees: outside })],
  'most green C:N': [pair('C:N', cOverN('weeds', 'weeds-green', 40), 40.1, 40, { sees: outside })],
  'least mature C:N': [
    pair('C:N', cOverN('straw', 'straw-wheat', 10), 9.9, 10.1, { sees: outside }),
  ],
  'most mature C:N': [
    pair('C:N', cOverN('straw', 'straw-wheat', 150), 150.1, 150, { sees: outside }),
  ],
};
