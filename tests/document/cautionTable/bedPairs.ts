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
  withDays,
  type Asked,
  type Made,
} from './asked';
import { pair, says, type Pairs } from './pair';

/* Rows about a bed as it stands: hungry, holding back, losing; young plants, cold soil, compost. */

const straw = store('straw', 'straw-wheat');

const tomatoes = crop('tomato', '2013-05-20', 'planted');

/** A bed known since the middle of June, with so much nitrate in it then. */
const known = (mgPerKg: number, made: Made): Asked =>
  asked({
    bed: { knownSince: '2013-06-15', ...made.bed },
    ...made,
    events: [soilTest('2013-06-15', mgPerKg), ...(made.events ?? [])],
  });

const strawDug = (millimetres: number) =>
  asked({
    stock: [straw],
    plantings: [tomatoes],
    laid: [stored('straw', '2013-06-20', millimetres, { placement: 'dug' })],
  });

const chardTo = (cleared: string) => (mgPerKg: number) =>
  known(mgPerKg, { plantings: [crop('chard', '2013-05-10', 'sown', { cleared })] });

/** A rich bed before so much rain as July usually has. */
const beforeRain = (mgPerKg: number) => (millimetres: number) => {
  const { garden, thoughtOf } = known(mgPerKg, { plantings: [tomatoes] });
  const rainMillimetres = garden.weather.normals.rainMillimetres.map((usual, month) =>
    month === 6 ? millimetres : usual,
  );
  const normals = { ...garden.weather.normals, rainMillimetres };
  return { garden: { ...garden, weather: { ...garden.weather, normals } }, thoughtOf };
};

/** Straw on what was sown or set out on a day. */
const strawOver = (cropId: string, how: 'sown' | 'planted') => (started: string) =>
  asked({
    stock: [straw],
    plantings: [crop(cropId, started, how)],
    thoughtOf: [stored('straw', today, 20)],
  });

const april = '2013-04-15';

/** Straw laid on a day of spring before beans, thought of in the middle of April. */
const beforeBeans = (date: string, started = '2013-05-20') =>
  asked({
    today: april,
    stock: [straw],
    plantings: [crop('snap_bean_bush', started, 'sown')],
    thoughtOf: [stored('straw', date, 20)],
  });

/** Clippings of a day on a bed where corn is sown in May, with so many mm of watering. */
const greensBeforeCorn = (date: string, started: string, millimetres = 20) =>
  asked({
    today: april,
    plantings: [crop('sweet_corn', started, 'sown')],
    mowings: [],
    events: [watered(later(april, -1), millimetres)],
    thoughtOf: [clippings(april, 5, { date })],
  });

export const bedPairs: Pairs = {
  'short of nitrogen': [
    pair(
      'nitrate in mg/kg',
      (mgPerKg: number) =>
        known(mgPerKg, {
          bed: { knownSince: '2013-06-15', organicMatterPercent: 1 },
          plantings: [crop('cabbage', '2013-06-01', 'planted')],
        }),
      3.4,
      3.5,
      { weight: 'caution' },
    ),
  ],
  'tied up': [pair('straw dug in, in mm', strawDug, 0.85, 0.83, { weight: 'caution' })],
  'washing out at clearing': [
    pair('nitrate in mg/kg', chardTo('2013-07-20'), 9.21, 8.96, { weight: 'caution' }),
  ],
  'washing out in an empty bed': [
    pair('nitrate in mg/kg', (mgPerKg: number) => known(mgPerKg, {}), 11.09, 10.89, {
      weight: 'caution',
    }),
  ],
  'empty bed days': [
    pair(
      'day of the next sowing',
      (started: string) => known(20, { plantings: [crop('chard', started, 'sown')] }),
      later(today, 22),
      later(today, 21),
      { sees: says('washing out in an empty bed') },
    ),
  ],
  'rain on nitrate': [
    pair('usual rain of July in mm', beforeRain(60), 140, 136, { weight: 'caution' }),
  ],
  'rain due': [
    pair('usual rain of July in mm', beforeRain(60), 140, 136, { sees: says('rain on nitrate') }),
  ],
  'rain due window': [
    pair('usual rain of July in mm', beforeRain(60), 140, 136, { sees: says('rain on nitrate') }),
  ],
  'nitrate before rain': [
    pair('nitrate in mg/kg', (mgPerKg: number) => beforeRain(mgPerKg)(500), 29.3, 28.7, {
      sees: says('rain on nitrate'),
    }),
  ],
  'cover over seedlings': [
    pair('day of sowing', strawOver('beet', 'sown'), '2013-05-29', '2013-05-28', {
      weight: 'caution',
    }),
    // what is planted with a store below the ground comes up through it; the rest does not
    ...(
      [
        ['leek', 'garlic'],
        ['leek', 'onion'],
        ['sweet_potato', 'potato'],
        ['zinnia', 'dahlia'],
        ['strawberry', 'asparagus'],
        ['strawberry', 'rhubarb'],
      ] as const
    ).map(([smothered, lifts]) =>
      pair(
        'crop set out today',
        (cropId: string) => strawOver(cropId, 'planted')(today),
        smothered,
        lifts,
        {
          weight: 'caution',
        },
      ),
    ),
    ...['onion', 'asparagus'].map((cropId) =>
      pair(
        `how ${cropId} is begun today`,
        (how: 'sown' | 'planted') => strawOver(cropId, how)(today),
        'sown',
        'planted',
        { weight: 'caution' },
      ),
    ),
  ],
  'hand high sown': [
    pair('day of sowing', strawOver('sweet_corn', 'sown'), '2013-06-14', '2013-06-13', {
      sees: says('cover over seedlings'),
    }),
  ],
  'hand high sown slow': [
    pair('day of sowing', strawOver('carrot', 'sown'), '2013-05-16', '2013-05-15', {
      sees: says('cover over seedlings'),
    }),
  ],
  'hand high planted': [
    pair('day of planting', strawOver('cabbage', 'planted'), '2013-06-29', '2013-06-28', {
      sees: says('cover over seedlings'),
    }),
  ],
  stems: [
    pair('day of planting', strawOver('cabbage', 'planted'), '2013-06-26', '2013-06-25', {
      weight: 'note',
    }),
  ],
  'stems clear until': [
    pair('day of sowing', strawOver('sweet_corn', 'sown'), '2013-06-01', '2013-05-31', {
      sees: says('stems'),
    }),
  ],
  'sown soon': [
    pair('day of sowing', strawOver('chard', 'sown'), later(today, 7), later(today, 8), {
      sees: says('stems'),
    }),
  ],
  'cold soil': [
    pair('day of the straw', (date: string) => beforeBeans(date), '2013-05-14', '2013-05-15', {
      weight: 'caution',
    }),
  ],
  'warm soil window': [
    pair(
      'day of sowing',
      (started: string) => beforeBeans(april, started),
      later(april, 28),
      later(april, 29),
      { sees: says('cold soil') },
    ),
  ],
  'seed fly': [
    pair(
      'day of sowing',
      (started: string) => greensBeforeCorn(april, started),
      later(april, 21),
      later(april, 22),
      { weight: 'caution' },
    ),
  ],
  'seed fly days': [
    pair(
      'day of sowing',
      (started: string) => greensBeforeCorn(april, started),
      later(april, 21),
      later(april, 22),
      { sees: says('seed fly') },
    ),
  ],
  'seed fly soil': [
    pair(
      'day of the clippings',
      (date: string) =>
        asked({
          today: april,
          plantings: [crop('sweet_corn', '2013-05-25', 'sown')],
          bed: { watering: 'kept moist' },
          thoughtOf: [clippings(april, 5, { date })],
        }),
      '2013-05-14',
      '2013-05-15',
      { sees: says('seed fly') },
    ),
  ],
  'seed fly wet': [
    pair(
      'rain of a day in mm',
      (millimetres: number) =>
        asked({
          today: april,
          days: withDays(
            calmDays('2013-01-01', april).map((row): typeof row =>
              row[0] > '2013-03-01' ? [row[0], row[1], row[2], 0] : row,
            ),
            { [later(april, -7)]: [null, null, millimetres] },
          ),
          plantings: [crop('sweet_corn', '2013-05-01', 'sown')],
          thoughtOf: [clippings(april, 5)],
        }),
      15.26,
      14.86,
      { sees: says('seed fly') },
    ),
  ],
  'compost depth': [
    pair(
      'depth in mm',
      (mm: number) =>
        asked({
          stock: [store('compost', 'compost-garden')],
          laid: [stored('compost', '2013-04-10', mm)],
        }),
      10.1,
      10,
      { weight: 'note' },
    ),
  ],
  'share of the bed': [
    pair(
      'share of the second crop',
      (share: number) =>
        asked({
          plantings: [crop('chard', '2013-05-10', 'sown', { share: 0.5 }), { ...tomatoes, share }],
        }),
      0.51,
      0.5,
      { weight: 'note' },
    ),
  ],
  overdue: [
    pair(
      'day of sowing',
      (started: string) => asked({ plantings: [crop('radish', started, 'sown')] }),
      later(today, -39),
      later(today, -38),
      { weight: 'note' },
    ),
  ],
};
