import { expect, test } from 'vitest';
import {
  copyOf,
  plantingsYearLater,
  seasonsPlanted,
  tooSoonAfter,
} from '../../app/document/bedChanges/copyYear';
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
