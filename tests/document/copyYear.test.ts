import { expect, test } from 'vitest';
import { copyOf, plantingsYearLater, seasonsPlanted } from '../../app/document/bedChanges/copyYear';
import { tooSoonAfter } from '../../app/document/tooSoonAfter';
import type { Garden, Planting } from '../../app/document/schema';
import { families } from '../../app/tables/families';
import { exampleGarden } from './exampleGarden';

const bedId = exampleGarden().beds[0]!.id;
const planting = (id: string, cropId: string, started: string): Planting => ({
  id,
  bedId,
  cropId,
  share: 0.5,
  started,
  how: 'planted',
  firstHarvest: `${started.slice(0, 4)}-08-01`,
  cleared: `${started.slice(0, 4)}-10-01`,
  tops: 'left',
  wanted: 'usual',
  nodules: 'not looked',
});
const garden = (...plantings: Planting[]): Garden => ({ ...exampleGarden(), plantings });

test('a season’s plantings come a year later to the day, without their picks and clearings', () => {
  const from = planting('p1', 'tomato', '2020-02-29');
  const [row] = plantingsYearLater(garden(from), 2020);
  expect(row).toMatchObject({ started: '2021-02-28', bedId, isThere: false });
  expect(copyOf(row!, 'other bed')).toMatchObject({
    bedId: 'other bed',
    cropId: 'tomato',
    started: '2021-02-28',
    firstHarvest: null,
    cleared: null,
  });
});

test('what is there already is said, and what stays for years is not copied', () => {
  const rows = plantingsYearLater(
    garden(
      planting('p1', 'tomato', '2020-05-20'),
      planting('p2', 'tomato', '2021-05-25'),
      planting('p3', 'asparagus', '2020-04-20'),
    ),
    2020,
  );
  expect(rows.map(({ from, isThere }) => [from.id, isThere])).toEqual([['p1', true]]);
});

test('a family comes back too soon until its free seasons are over', () => {
  // ConnecticutRotation, in the table of families
  const free = families.Solanaceae.freeSeasons.typical;
  const before = garden(planting('p1', 'tomato', '2018-05-20'));
  const year = (years: number) => `${String(2018 + years)}-05-20`;
  expect(tooSoonAfter(before, 'potato', bedId, year(1))).toMatchObject({
    crop: 'Tomatoes',
    started: '2018-05-20',
  });
  expect(tooSoonAfter(before, 'potato', bedId, year(free))).not.toBeNull();
  expect(tooSoonAfter(before, 'potato', bedId, year(free + 1))).toBeNull();
  expect(tooSoonAfter(before, 'carrot', bedId, year(1))).toBeNull();
  expect(seasonsPlanted(before, '2021-01-01')).toEqual([2018]);
});

test('succession and neighbours of one season are no rotation', () => {
  const same = garden(planting('p1', 'tomato', '2018-05-20'));
  expect(tooSoonAfter(same, 'potato', bedId, '2018-07-20')).toBeNull();
});

test('what stood over a season’s turn was there until it was cleared', () => {
  const free = families.Amaryllidaceae.freeSeasons.typical;
  const garlic = { ...planting('p1', 'garlic', '2018-10-10'), firstHarvest: null };
  const before = garden({ ...garlic, cleared: '2019-07-10' });
  expect(tooSoonAfter(before, 'onion', bedId, '2019-08-01')).toMatchObject({ seasonsAway: -1 });
  expect(tooSoonAfter(before, 'onion', bedId, `${String(2019 + free)}-04-01`)).not.toBeNull();
  expect(tooSoonAfter(before, 'onion', bedId, `${String(2020 + free)}-04-01`)).toBeNull();
});

test('of a bed that was split off, what stood on the bed before counts', () => {
  const before = garden(planting('p1', 'tomato', '2018-05-20'));
  const [bed, ...others] = before.beds;
  const split: Garden = {
    ...before,
    beds: [
      { ...bed!, id: 'half', ground: { on: '2019-03-01', parts: [{ bedId, areaM2: 1 }] } },
      ...others,
    ],
    retiredBeds: [{ ...bed!, retired: '2019-03-01' }],
  };
  expect(tooSoonAfter(split, 'potato', 'half', '2019-05-20')).toMatchObject({
    started: '2018-05-20',
    seasonsAway: 0,
  });
});
