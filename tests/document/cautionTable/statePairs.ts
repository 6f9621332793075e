import {
  asked,
  calmDays,
  clippings,
  crop,
  later,
  soilTest,
  store,
  stored,
  usualToday as today,
  watered,
  type Asked,
  type Told,
} from './asked';
import { pair, type Pair, type Pairs } from './pair';

/* Rows of the states of a bed: over-fed by class, enough, short, cover, room. */

const since = '2013-05-15';
const isState =
  (state: Told['verdict']['state']) =>
  ({ verdict }: Told): boolean =>
    verdict.state === state;
const isStrongly = ({ verdict }: Told): boolean => verdict.strongly;

/** A bed known since May, with so much nitrate in it then. */
const known = (mgPerKg: number, made: Parameters<typeof asked>[0]): Asked =>
  asked({
    bed: { knownSince: since },
    ...made,
    events: [soilTest(since, mgPerKg), ...(made.events ?? [])],
  });

/** A rich bed under a crop of which so many kg per m2 are wanted. */
const wanted =
  (cropId: string, started: string, how: 'sown' | 'planted', mgPerKg = 25) =>
  (kilogramsPerM2: number): Asked =>
    known(mgPerKg, { plantings: [crop(cropId, started, how, { wanted: { kilogramsPerM2 } })] });

const overFed = (
  of: (kilogramsPerM2: number) => Asked,
  steps: readonly (readonly [past: number, within: number])[],
): readonly Pair[] =>
  steps.map(([past, within], at) =>
    pair('pick in kg per m2', of, past, within, {
      sees: at === 0 ? isState('over-fed') : isStrongly,
    }),
  );

/** Tomatoes that flower 25 days after they were set out, on 10 June, and so much nitrate in May. */
const flowering = (mgPerKg: number): Asked =>
  known(mgPerKg, {
    plantings: [crop('tomato', '2013-05-16', 'planted', { wanted: { kilogramsPerM2: 0.7 } })],
  });
const nitrateSeen =
  (low: number, high = Infinity) =>
  ({ verdict }: Told): boolean =>
    (verdict.flowerNitrate ?? 0) > low && (verdict.flowerNitrate ?? 0) <= high;

/** A chard that lost nitrogen to a great watering on the last day, so many mm. */
const washed =
  (cropId: string, started: string, kilogramsPerM2: number, mgPerKg: number) =>
  (millimetres: number) =>
    known(mgPerKg, {
      plantings: [crop(cropId, started, 'planted', { wanted: { kilogramsPerM2 } })],
      events: [watered(today, millimetres)],
    });

const hungry = (mgPerKg: number): Asked =>
  known(mgPerKg, {
    bed: { knownSince: since, organicMatterPercent: 1 },
    plantings: [crop('cabbage', '2013-06-10', 'planted')],
  });

const manure = store('manure', 'manure-hen-fresh');
const dugIn = (date: string, millimetres: number) =>
  stored('manure', date, millimetres, { placement: 'dug' });

/** A hungry bed that got some manure the day before yesterday. */
const fedSince = (mgPerKg: number) => (millimetres: number) =>
  known(mgPerKg, {
    bed: { knownSince: since, organicMatterPercent: 1 },
    stock: [manure],
    plantings: [crop('cabbage', '2013-06-10', 'planted')],
    laid: [dugIn(later(today, -2), millimetres)],
  });

/** A bed with so much nitrate in May, and a good deal of manure since. */
const recovered = (mgPerKg: number) =>
  known(mgPerKg, {
    bed: { knownSince: since, organicMatterPercent: 1 },
    stock: [manure],
    plantings: [crop('lettuce_head', '2013-05-16', 'planted', { wanted: 'heavy' })],
    laid: [dugIn('2013-06-27', 3)],
  });

const hidden = (millimetres: number): Asked =>
  asked({ stock: [store('straw', 'straw-wheat')], laid: [stored('straw', today, millimetres)] });

export const statePairs: Pairs = {
  'over-fed tender storage': overFed(wanted('sweet_potato', '2013-05-25', 'planted'), [
    [2.875, 2.925],
    [2.186, 2.236],
  ]),
  'over-fed storage': overFed(wanted('beet', '2013-05-20', 'sown'), [
    [1.724, 1.759],
    [1.31, 1.34],
  ]),
  'over-fed fruit': overFed(wanted('tomato', '2013-05-20', 'planted', 40), [
    [5.26, 5.37],
    [3.785, 3.865],
  ]),
  'over-fed flower': overFed(wanted('zinnia', '2013-05-20', 'sown'), [
    [1.137, 1.167],
    [0.706, 0.722],
  ]),
  'over-fed leaf': overFed(wanted('chard', '2013-05-20', 'planted'), [[1.764, 1.804]]),
  'over-fed head': overFed(wanted('cabbage', '2013-05-20', 'planted'), [[1.31, 1.335]]),
  'over-fed perennial': overFed(wanted('strawberry', '2012-09-01', 'planted'), [
    [1.648, 1.683],
    [1.513, 1.543],
  ]),
  'nitrate at flowering': [
    pair('nitrate in mg/kg', flowering, 18.35, 17.85, { sees: isState('over-fed') }),
    pair('nitrate in mg/kg', flowering, 30.08, 29.38, { sees: isStrongly }),
  ],
  'flower window before': [
    pair(
      'day of a great watering',
      (date: string) =>
        known(40, {
          plantings: [crop('tomato', '2013-05-20', 'planted')],
          events: [watered(date, 900)],
        }),
      later('2013-05-20', 12),
      later('2013-05-20', 11),
      { sees: nitrateSeen(20) },
    ),
  ],
  'flower window after': [
    pair(
      'day of the manure',
      (date: string) =>
        known(2, {
          stock: [store('manure', 'manure-hen-fresh')],
          plantings: [crop('tomato', '2013-05-20', 'planted')],
          laid: [stored('manure', date, 40, { placement: 'dug' })],
        }),
      later('2013-05-20', 25 + 42),
      later('2013-05-20', 25 + 43),
      { sees: nitrateSeen(20) },
    ),
  ],
  'enough to the end': [
    pair('pick in kg per m2', wanted('chard', '2013-05-20', 'planted', 12), 2.111, 2.151, {
      sees: isState('enough to the end'),
    }),
  ],
  'leaving enough to the end': [
    pair('water in mm', washed('chard', '2013-05-20', 2.05, 12), 19, 20.5, {
      sees: isState('enough to the end'),
    }),
  ],
  'leaving over-fed': [
    pair('water in mm', washed('sweet_potato', '2013-05-25', 2, 12), 97, 100, {
      sees: isState('over-fed'),
    }),
  ],
  'leaving enough for now': [
    pair('water in mm', washed('cabbage', '2013-06-10', 8, 45), 67.2, 70.2, {
      sees: isState('enough for now'),
    }),
  ],
  'forecast meets': [
    pair('pick in kg per m2', wanted('chard', '2013-05-20', 'planted', 12), 2.151, 2.111, {
      sees: ({ verdict }) => verdict.wantsMoreLater || verdict.state === 'short',
    }),
  ],
  'little open': [
    pair(
      'day of clearing',
      (cleared: string) =>
        known(5, { plantings: [crop('cabbage', '2013-04-20', 'planted', { cleared })] }),
      '2013-07-05',
      '2013-07-04',
      { sees: ({ verdict }) => (verdict.room ?? 0) > 0 },
    ),
  ],
  'short look-ahead': [pair('nitrate in mg/kg', hungry, 5.98, 6.08, { sees: isState('short') })],
  'short share': [pair('nitrate in mg/kg', hungry, 5.98, 6.08, { sees: isState('short') })],
  'out of reach': [pair('nitrate in mg/kg', hungry, 5.98, 6.08, { sees: isState('short') })],
  'short least need': [
    pair(
      'share of the bed',
      (share: number) =>
        known(0, {
          bed: { knownSince: since, organicMatterPercent: 0.1 },
          plantings: [crop('cabbage', '2013-06-10', 'planted', { share })],
        }),
      0.07,
      0.0675,
      { sees: isState('short') },
    ),
  ],
  'short least open': [
    pair(
      'day of clearing',
      (cleared: string) =>
        known(0, {
          bed: { knownSince: since, organicMatterPercent: 1 },
          plantings: [crop('cabbage', '2013-05-16', 'planted', { cleared })],
        }),
      '2013-07-08',
      '2013-07-07',
      { sees: isState('short') },
    ),
  ],
  'leaving short': [pair('manure in mm', fedSince(2), 0.314, 0.324, { sees: isState('short') })],
  'leaving short share': [
    pair('manure in mm', fedSince(2), 0.314, 0.324, { sees: isState('short') }),
  ],
  'was short share': [
    pair('nitrate in mg/kg', recovered, 6.16, 6.33, {
      sees: ({ verdict }) => verdict.wasShortOn !== null,
    }),
  ],
  'was short lost': [
    pair('nitrate in mg/kg', recovered, 6.16, 6.33, {
      sees: ({ verdict }) => verdict.wasShortOn !== null,
    }),
  ],
  'dry soil': [
    pair(
      'water in mm',
      (millimetres: number) =>
        asked({
          days: calmDays('2013-01-01', today).map(([date, low, high]) => [date, low, high, 0]),
          plantings: [crop('tomato', '2013-05-20', 'planted')],
          events: [watered('2013-06-30', millimetres)],
        }),
      4.4,
      4.7,
      { sees: ({ verdict }) => verdict.dryFirst },
    ),
  ],
  'cover bare': [
    pair('straw in mm', hidden, 1.3, 1.35, {
      sees: ({ verdict }) => verdict.coverState === 'bare',
    }),
  ],
  'cover thin': [
    pair('straw in mm', hidden, 4.4, 4.5, {
      sees: ({ verdict }) => verdict.coverState === 'thin' || verdict.coverState === 'bare',
    }),
  ],
  'cover too deep': [
    pair('straw in mm', hidden, 100.2, 100, {
      sees: ({ verdict }) => verdict.coverState === 'too deep',
    }),
  ],
  'room aim': [
    pair('pick in kg per m2', wanted('chard', '2013-05-20', 'planted', 12), 2.27, 2.23, {
      sees: ({ verdict }) => (verdict.room ?? 0) > 0,
    }),
  ],
  'room share': [
    pair('pick in kg per m2', wanted('chard', '2013-05-20', 'planted', 12), 2.922, 2.892, {
      sees: ({ verdict }) => (verdict.room ?? 0) > 10,
    }),
  ],
  'room season limit': [
    pair(
      'depth in mm of the second layer',
      (millimetres: number) =>
        asked({
          plantings: [crop('cabbage', '2013-06-10', 'planted', { wanted: { kilogramsPerM2: 20 } })],
          laid: [clippings('2013-06-12', 20), clippings('2013-06-25', millimetres)],
        }),
      61,
      62,
      { sees: ({ verdict }) => (verdict.room ?? 0) > 0 },
    ),
  ],
};
