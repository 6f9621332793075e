import type { GardenEvent } from '../../../app/document/schema';
import {
  asked,
  bedId,
  calmDays,
  clippings,
  crop,
  later,
  store,
  stored,
  usualToday as today,
  watered,
  withDays,
  type Asked,
  type Made,
  type Told,
} from './asked';
import { pair, says, type Pairs } from './pair';

/* Rows about weather over a bed, what was seen on it, and what grows under glass. */

const straw = store('straw', 'straw-wheat');

const dryDays = calmDays('2013-01-01', today).map((row): typeof row =>
  row[0] > '2013-06-20' ? [row[0], row[1], row[2], 0] : row,
);

const drought = dryDays.map((row): typeof row =>
  row[0] > '2013-05-10' ? [row[0], row[1], row[2], 0] : row,
);

const rainOn = (days: readonly number[], millimetres: number) =>
  Object.fromEntries(days.map((ago) => [later(today, -ago), [null, null, millimetres] as const]));

/** A week of weather over straw and chard. */
const wetWeek = (
  made: { readonly days?: Parameters<typeof withDays>[1] } & Omit<Made, 'days'>,
  strawMillimetres = 30,
) =>
  asked({
    stock: [straw],
    plantings: [crop('chard', '2013-05-10', 'sown')],
    laid: [stored('straw', '2013-06-10', strawMillimetres)],
    ...made,
    days: withDays(dryDays, made.days ?? {}),
  });

const look = (date: string, seen: Partial<GardenEvent>): GardenEvent =>
  ({ id: 'look', date, kind: 'look and dig', bedId, ...seen }) as GardenEvent;

const looked = (date: string, seen: Partial<GardenEvent>) =>
  wetWeek({ events: [look(date, seen)] });

const underGlass = (roof: 'open' | 'glass or film', laidOn: string) =>
  asked({ bed: { roof }, laid: [clippings(laidOn, 5)] });

/** A dry month, then so much watering the day before straw is thought of. */
function driedOut(millimetres: number): Asked {
  return asked({
    stock: [straw],
    plantings: [crop('cabbage', '2013-04-15', 'planted')],
    days: drought,
    events: [watered(later(today, -1), millimetres)],
    thoughtOf: [stored('straw', today, 20)],
  });
}

/** Tomatoes fed past what they can use, in a fortnight of weather. */
const flowersIn = (days: Parameters<typeof withDays>[1]) =>
  asked({
    plantings: [crop('tomato', '2013-06-01', 'planted', { wanted: { kilogramsPerM2: 1 } })],
    days: withDays(calmDays('2013-01-01', today), days),
  });

const counts =
  (what: string) =>
  ({ cautions }: Told): boolean =>
    cautions.some(({ row, detail }) => row === 'room fruit' && Number(detail[what]) > 0);

/** Three days, of which the last is as hot or cold as is typed. */
const three = (
  of: (degrees: number) => readonly [number | null, number | null, null],
  sure: number,
  last: number,
) => ({
  [later(today, -6)]: of(sure),
  [later(today, -4)]: of(sure),
  [later(today, -2)]: of(last),
});

export const weatherPairs: Pairs = {
  'slug weather': [
    pair(
      'rain of yesterday in mm',
      (mm: number) => wetWeek({ days: rainOn([1], mm) }),
      25.1,
      24.9,
      {
        weight: 'note',
      },
    ),
  ],
  'slug rain': [
    pair(
      'rain of yesterday in mm',
      (mm: number) => wetWeek({ days: rainOn([1], mm) }),
      25.1,
      24.9,
      {
        sees: says('slug weather'),
      },
    ),
  ],
  'slug wet days': [
    pair(
      'rain of a fifth day in mm',
      (mm: number) => wetWeek({ days: { ...rainOn([1, 2, 3, 4], 2), ...rainOn([5], mm) } }),
      1,
      0.9,
      { sees: says('slug weather') },
    ),
  ],
  'slug night': [
    pair(
      'lowest of last night in deg C',
      (lowest: number) =>
        wetWeek({
          days: {
            ...Object.fromEntries(
              [1, 2, 3, 4, 5, 6].map((ago) => [
                later(today, -ago),
                [8, null, ago === 1 ? 40 : 0] as const,
              ]),
            ),
            [today]: [lowest, null, 0],
          },
        }),
      8.1,
      8,
      { sees: says('slug weather') },
    ),
  ],
  'slug young': [
    pair(
      'day of sowing',
      (started: string) =>
        wetWeek({ days: rainOn([1], 40), plantings: [crop('sweet_corn', started, 'sown')] }),
      '2013-05-23',
      '2013-05-22',
      { sees: says('slug weather') },
    ),
  ],
  'slug cover': [
    pair('straw in mm', (mm: number) => wetWeek({ days: rainOn([1], 40) }, mm), 1.41, 1.38, {
      sees: says('slug weather'),
    }),
  ],
  'slugs seen': [
    pair(
      'slugs under the board',
      (slugsUnderBoard: boolean) => looked(today, { slugsUnderBoard } as Partial<GardenEvent>),
      true,
      false,
      { weight: 'caution' },
    ),
  ],
  'sour mat': [
    pair(
      'smells sour',
      (smellsSour: boolean) => looked(today, { smellsSour } as Partial<GardenEvent>),
      true,
      false,
      { weight: 'caution' },
    ),
  ],
  'look holds': [
    pair(
      'day of the look',
      (date: string) => looked(date, { smellsSour: true } as Partial<GardenEvent>),
      later(today, -14),
      later(today, -15),
      { sees: says('sour mat') },
    ),
  ],
  'dry soil first': [pair('water in mm', driedOut, 14.8, 15.3, { weight: 'note' })],
  'dry layer': [pair('water in mm', driedOut, 14.8, 15.3, { sees: says('dry soil first') })],
  'fresh greens under glass': [
    pair(
      'roof',
      (roof: 'open' | 'glass or film') => underGlass(roof, '2013-06-25'),
      'glass or film',
      'open',
      { weight: 'caution' },
    ),
  ],
  'glass days': [
    pair(
      'day of the layer',
      (date: string) =>
        asked({
          bed: { roof: 'glass or film' },
          mowings: [],
          laid: [clippings('2013-05-20', 5, { date })],
        }),
      later(today, -29),
      later(today, -30),
      { sees: says('fresh greens under glass') },
    ),
  ],
  'frost over cover': [
    pair(
      'usual last frost',
      (lastSpringFrost: string) =>
        asked({
          today: '2013-04-15',
          stock: [straw],
          plantings: [crop('tomato', '2013-04-10', 'planted')],
          normals: { lastSpringFrost },
          laid: [stored('straw', '2013-04-12', 30)],
        }),
      '04-15',
      '04-14',
      { weight: 'note' },
    ),
  ],
  'killed by frost': [
    pair(
      'lowest of a night in deg C',
      (lowest: number) =>
        asked({
          plantings: [crop('tomato', '2013-05-20', 'planted')],
          days: withDays(calmDays('2013-01-01', today), { '2013-05-25': [lowest, null, null] }),
        }),
      -0.3,
      -0.2,
      { weight: 'note' },
    ),
  ],
  'hot day': [
    pair(
      'highest in deg C',
      (d: number) => flowersIn(three((high) => [null, high, null], 35, d)),
      32.1,
      32,
      {
        sees: counts('hotDays'),
      },
    ),
  ],
  'hot night': [
    pair(
      'lowest in deg C',
      (d: number) => flowersIn(three((low) => [low, null, null], 26, d)),
      24.1,
      24,
      {
        sees: counts('hotNights'),
      },
    ),
  ],
  'cold night': [
    pair(
      'lowest in deg C',
      (d: number) => flowersIn(three((low) => [low, null, null], 10, d)),
      12.9,
      13,
      {
        sees: counts('coldNights'),
      },
    ),
  ],
  'weather days': [
    pair(
      'highest of a third day in deg C',
      (d: number) => flowersIn(three((high) => [null, high, null], 35, d)),
      33,
      31,
      {
        sees: counts('hotDays'),
      },
    ),
  ],
};
