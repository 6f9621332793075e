import {
  sourceHazards,
  type Lawn,
  type SourceHazard,
  type Treatment,
} from '../../../app/document/schema';
import {
  asked,
  clippings,
  crop,
  later,
  mowing,
  soilTest,
  store,
  stored,
  usualToday as today,
  type Asked,
} from './asked';
import { pair, says, type Pairs } from './pair';

/* Rows about where a layer came from: lawns, hay, manure, and what should not be in it. */

const lettuce = crop('lettuce_leaf', '2013-06-01', 'sown');
const zinnias = crop('zinnia', '2013-05-20', 'sown');
const beans = crop('snap_bean_bush', '2013-05-25', 'sown');
const spinach = crop('spinach', '2013-06-01', 'sown');

/** Clippings from a lawn of that kind, on a crop. */
const fromLawn = (lawn: Partial<Lawn>, plantings = [spinach], mowings: readonly string[] = []) =>
  asked({
    lawn,
    plantings,
    mowings: mowings.map((date) => mowing(date)),
    thoughtOf: [clippings(today, 5)],
  });
const treatedLawn = (treatment: Treatment, ...rest: [(typeof zinnias)[]?, string[]?]) =>
  fromLawn({ treatment }, ...rest);
const silent = (date: string): Treatment => ({ answer: 'treated', date, label: 'silent' });
const four = ['2013-06-03', '2013-06-10', '2013-06-17', '2013-06-24'];

/** Hay of which that is known, on a crop. */
const hay = (treatment: Treatment, plantings = [spinach]) =>
  asked({
    stock: [store('hay', 'hay-grass', { treatment })],
    plantings,
    thoughtOf: [stored('hay', today, 10)],
  });

/** Manure on a day before the first pick of a crop. */
const manured = (cropId: string, date: string) =>
  asked({
    today: '2013-06-30',
    stock: [store('manure', 'manure-cow-farmyard')],
    plantings: [
      crop(cropId, '2013-03-25', 'planted', { firstHarvest: '2013-06-28', cleared: '2013-07-30' }),
    ],
    laid: [stored('manure', date, 5, { placement: 'dug' })],
  });

/** Hay so many millimetres deep, nothing said against it. */
const hayOf = (millimetres: number) =>
  asked({ stock: [store('hay', 'hay-grass')], thoughtOf: [stored('hay', today, millimetres)] });
const thick = (materialId: string) =>
  asked({ stock: [store('browns', materialId)], thoughtOf: [stored('browns', today, 60)] });

/** Something on a bed where cabbages stand. */
const onCabbage = (placement: 'laid' | 'dug') => (materialId: string) =>
  asked({
    stock: [store('droppings', materialId)],
    plantings: [crop('cabbage', '2013-04-20', 'planted')],
    thoughtOf: [stored('droppings', today, 3, { placement })],
  });
const burns = { weight: 'caution' } as const;

/** Straw of which one thing is known. */
const kept = (hazard: SourceHazard) =>
  asked({
    stock: [store('straw', 'straw-wheat', { hazards: [hazard] })],
    thoughtOf: [stored('straw', today, 10)],
  });
const otherThan = (hazard: SourceHazard): SourceHazard =>
  hazard === 'mouldy' ? 'roadside' : 'mouldy';

const answers = (of: (treatment: Treatment) => Asked, weight: 'caution' | 'stop' = 'stop') =>
  pair(
    'what was put on it',
    (answer: Treatment['answer']) => of({ answer }),
    'unknown',
    'nothing',
    {
      weight,
    },
  );

export const sourcePairs: Pairs = {
  'not asked': [
    pair(
      'what was put on it',
      (answer: Treatment['answer']) => treatedLawn({ answer }),
      'not asked',
      'nothing',
      { weight: 'stop' },
    ),
    pair(
      'what was put on it',
      (answer: Treatment['answer']) => hay({ answer }),
      'not asked',
      'nothing',
      { weight: 'stop' },
    ),
  ],
  'label forbids': [
    pair(
      'the label',
      (label: 'forbids' | 'silent') =>
        treatedLawn({ answer: 'treated', date: '2013-03-01', label }, [spinach], four),
      'forbids',
      'silent',
      { weight: 'stop' },
    ),
  ],
  'label interval': [
    pair(
      'days of the interval',
      (intervalDays: number) =>
        treatedLawn({
          answer: 'treated',
          date: later(today, -30),
          label: 'interval',
          intervalDays,
        }),
      31,
      30,
      { weight: 'stop' },
    ),
  ],
  'label silent': [
    pair(
      'day of the treatment',
      (date: string) => treatedLawn(silent(date), [spinach], four),
      later(today, -41),
      later(today, -42),
      { weight: 'stop' },
    ),
  ],
  'silent days': [
    pair(
      'day of the treatment',
      (date: string) => treatedLawn(silent(date), [spinach], four),
      later(today, -41),
      later(today, -42),
      { sees: says('label silent') },
    ),
  ],
  'silent mowings': [
    // a mowing on the very day of the treatment is not one since
    pair(
      'day of the first mowing',
      (date: string) =>
        asked({
          lawn: { treatment: silent('2013-05-10') },
          plantings: [spinach],
          mowings: [mowing(date, { id: 'first' }), ...four.slice(1).map((one) => mowing(one))],
          thoughtOf: [clippings(today, 5)],
        }),
      '2013-05-10',
      '2013-05-11',
      { sees: says('label silent') },
    ),
  ],
  'label silent sensitive': [
    pair(
      'the crop',
      (cropId: string) =>
        treatedLawn(silent('2013-04-10'), [crop('one', '2013-05-25', 'sown', { cropId })], four),
      'snap_bean_bush',
      'sweet_corn',
      { weight: 'stop' },
    ),
  ],
  'unknown lawn': [answers((treatment) => treatedLawn(treatment))],
  'unknown lawn flowers': [answers((treatment) => treatedLawn(treatment, [zinnias]), 'caution')],
  'unknown source': [answers((treatment) => hay(treatment))],
  'unknown source flowers': [answers((treatment) => hay(treatment, [zinnias]), 'caution')],
  'unknown source sensitive': [answers((treatment) => hay(treatment, [beans]))],
  'treated source': [
    pair(
      'what was put on it',
      (answer: Treatment['answer']) => hay({ answer }),
      'treated',
      'nothing',
      { weight: 'stop' },
    ),
  ],
  'raw manure': [
    pair(
      'day of the manure',
      (date: string) => manured('tomato', date),
      later('2013-06-28', -89),
      later('2013-06-28', -90),
      {
        sees: ({ cautions }) =>
          cautions.some(({ kind, weight }) => kind === 'raw manure' && weight === 'stop'),
      },
    ),
  ],
  'raw manure close': [
    pair(
      'day of the manure',
      (date: string) => manured('tomato', date),
      later('2013-06-28', -96),
      later('2013-06-28', -97),
      {
        sees: ({ cautions }) =>
          cautions.some(({ kind, weight }) => kind === 'raw manure' && weight === 'caution'),
      },
    ),
  ],
  'manure splashed': [
    pair(
      'day of the manure',
      (date: string) => manured('lettuce_head', date),
      later('2013-06-28', -126),
      later('2013-06-28', -127),
      { weight: 'caution' },
    ),
    pair(
      'day of the manure',
      (date: string) => manured('lettuce_head', date),
      later('2013-06-28', -119),
      later('2013-06-28', -120),
      { weight: 'stop' },
    ),
  ],
  'manure off the ground': [
    pair(
      'day of the manure',
      (date: string) => manured('tomato', date),
      later('2013-06-28', -96),
      later('2013-06-28', -97),
      { weight: 'caution' },
    ),
    pair(
      'day of the manure',
      (date: string) => manured('tomato', date),
      later('2013-06-28', -89),
      later('2013-06-28', -90),
      { weight: 'stop' },
    ),
  ],
  'manure margin': [
    pair(
      'day of the manure',
      (date: string) => manured('tomato', date),
      later('2013-06-28', -96),
      later('2013-06-28', -97),
      {
        sees: ({ cautions }) => cautions.some(({ kind }) => kind === 'raw manure'),
      },
    ),
  ],
  'creeping grass': [
    pair('creeping grass', (creepingGrass: boolean) => fromLawn({ creepingGrass }), true, false, {
      weight: 'caution',
    }),
  ],
  'seed heads': [
    pair('kind of lawn', (kind: Lawn['kind']) => fromLawn({ kind }), 'seed-headed', 'ordinary', {
      weight: 'caution',
    }),
  ],
  'seed head days': [
    pair(
      'day on which seed heads were seen',
      (seedHeadsSeen: string) => fromLawn({ seedHeadsSeen }),
      later(today, -14),
      later(today, -15),
      { sees: says('seed heads') },
    ),
  ],
  'hay seeds': [
    pair('what is laid', thick, 'hay-legume', 'straw-wheat', { weight: 'note' }),
    pair('what is laid', thick, 'hay-grass', 'leaves-mixed-shredded', { weight: 'note' }),
  ],
  'hay seeds thin': [
    pair('depth of the hay in mm', hayOf, 49, 50, { weight: 'caution' }),
    pair(
      'how it is laid',
      (placement: 'dug' | 'hoed' | 'laid') =>
        asked({
          stock: [store('hay', 'hay-grass')],
          thoughtOf: [stored('hay', today, 60, { placement })],
        }),
      'hoed',
      'laid',
      { weight: 'caution' },
    ),
  ],
  'hay seed depth': [
    // two stores laid on one day are one cover
    pair(
      'depth in mm of the other hay',
      (millimetres: number) =>
        asked({
          stock: [store('hay', 'hay-grass'), store('clover', 'hay-legume')],
          thoughtOf: [stored('hay', today, 30), stored('clover', today, millimetres)],
        }),
      19,
      20,
      { sees: says('hay seeds thin') },
    ),
  ],
  'manure burn': [
    pair('what is laid', onCabbage('laid'), 'manure-hen-fresh', 'compost-poultry', burns),
    pair('what is dug in', onCabbage('dug'), 'manure-broiler-litter', 'manure-horse-straw', burns),
    pair(
      'day of clearing',
      (cleared: string) =>
        asked({
          stock: [store('droppings', 'manure-hen-fresh')],
          plantings: [crop('cabbage', '2013-04-20', 'planted', { cleared })],
          thoughtOf: [stored('droppings', today, 3)],
        }),
      later(today, 1),
      today,
      burns,
    ),
  ],
  'fouled grass': [
    pair(
      'fouled by pets',
      (fouledByPets: boolean) => fromLawn({ fouledByPets }, [lettuce]),
      true,
      false,
      { weight: 'stop' },
    ),
  ],
  'dog poison': [
    pair(
      'dogs',
      (dogs: boolean) =>
        asked({
          place: { dogs },
          stock: [store('hulls', 'cocoa-hulls')],
          thoughtOf: [stored('hulls', today, 10)],
        }),
      true,
      false,
      { weight: 'stop' },
    ),
  ],
  ...Object.fromEntries(
    sourceHazards.map((hazard) => [
      hazard,
      [
        pair('what may be wrong with it', kept, hazard, otherThan(hazard), {
          sees: says(hazard),
        }),
      ],
    ]),
  ),
  'own well': [
    pair(
      'a well of one’s own',
      (ownWell: boolean) =>
        asked({
          place: { ownWell },
          bed: { knownSince: '2013-06-15' },
          events: [soilTest('2013-06-15', 20)],
        }),
      true,
      false,
      { weight: 'caution' },
    ),
  ],
};
