import type { CropId } from './crops';
import { row, single } from './row';
import type { Row } from './shapes';

/**
 * What one state writes into law for vegetables: nitrogen a crop may be reckoned to need, with the
 * yield and content it was reckoned from, and what its residue is worth to the next crop. A demand
 * holds a reserve in the soil besides the crop's own nitrogen, so it is a check on the crop table
 * and no row of it.
 */
export interface OfficialRow {
  readonly name: string;
  readonly crops: readonly CropId[];
  /** kg fresh per m2 */
  readonly goodYield: Row | null;
  readonly removedPerKilogram: Row;
  readonly wholePlantPerKilogram: Row | null;
  /** g N per m2 that the next crop may be reckoned to find */
  readonly residueCredit: Row | null;
  readonly demand: Row | null;
}

const printed = (value: number, unit: string, place: string): Row =>
  single(value, unit, 'GermanOrdinance2017', place, 'read');

const orNull = (value: number | null, unit: string, place: string): Row | null =>
  value === null ? null : printed(value, unit, place);

const demands = 'annex 4 table 4';
const contents = 'annex 7 table 2';

const vegetable = (
  name: string,
  crops: readonly CropId[],
  goodYield: number | null,
  removedPerKilogram: number,
  wholePlantPerKilogram: number | null,
  residueCredit: number | null,
  demand: number | null,
): OfficialRow => ({
  name,
  crops,
  goodYield: orNull(goodYield, 'kg fresh per m2', demands),
  removedPerKilogram: printed(removedPerKilogram, 'g N per kg fresh', contents),
  wholePlantPerKilogram: orNull(wholePlantPerKilogram, 'g N per kg fresh', contents),
  residueCredit: orNull(residueCredit, 'g N per m2', demands),
  demand: orNull(demand, 'g N per m2', demands),
});

/** Columns: yield, content of what is picked, of the whole plant, residue credit, demand. */
export const officialRows: readonly OfficialRow[] = [
  vegetable('pole bean', ['snap_bean_pole'], 2.5, 2.5, null, 7, 10),
  vegetable('zucchini', ['zucchini'], 6.5, 1.6, null, 8.5, 25),
  vegetable('winter squash and pumpkin', ['winter_squash'], 4, 2.5, null, 5, 14),
  vegetable('Brussels sprouts', ['brussels_sprouts'], 2.5, 6.5, null, 13, 31),
  vegetable('leek', ['leek'], 6, 2.5, null, 5.5, 25),
  vegetable('parsley to its first cut', ['parsley'], 2.4, 4.5, null, 1, 16),
  vegetable('fresh dill', ['dill'], 2, 3, null, 0.5, 8.5),
  vegetable('celeriac', ['celeriac'], 6.5, 2.5, null, 4, 22),
  vegetable('parsnip', ['parsnip'], 4, 2.5, null, 5, 14),
  vegetable('turnip with leaves', ['turnip'], 6.5, 1.7, null, 1.5, 17),
  vegetable('Teltow turnip', [], null, 4.5, null, 3, null),
  vegetable('radish', ['radish'], 3, 2, null, 0.5, 11),
  vegetable('leaf lettuce', ['lettuce_leaf'], 3.5, 1.9, null, 1, 13),
  vegetable('bush bean', ['snap_bean_bush'], 1.2, 2.5, null, 4.5, 11),
  vegetable('cauliflower', ['cauliflower'], 3.5, 2.8, 3.14, 8, 30),
  vegetable('broccoli', ['broccoli'], 1.5, 4.5, 3.71, 10, 31),
  vegetable('kale', ['kale'], 4, 4.9, 4.62, 3.5, 20),
  vegetable('pickling cucumber', ['cucumber'], 8, 1.5, 1.71, 5, 21),
  vegetable('white cabbage', ['cabbage'], 7, 2, 2.42, 7.5, 26),
  vegetable('carrot', ['carrot'], 7, 1.3, 1.68, 3, 12.5),
  vegetable('head lettuce', ['lettuce_head'], 5, 1.8, null, 1, 15),
  vegetable('celery', ['celery'], 5, 2.5, null, 4, 23),
  vegetable('spinach', ['spinach'], 2.5, 4, null, 3, 19),
  vegetable('sweet corn', ['sweet_corn'], 2, 3.5, 3.17, 6, 16),
  vegetable('onion', ['onion'], 6, 1.8, 2.24, 3, 15.5),
  vegetable('beetroot', ['beet'], 6, 2.8, 2.7, 5, 25),
  vegetable('pea, shelled', ['pea'], 0.8, 10, 5.2, 6.5, 8.5),
  vegetable('strawberry', ['strawberry'], 1.4, 1.7, null, null, 12),
  vegetable('maincrop potato', ['potato'], 4.5, 3.5, null, null, 18),
  vegetable('kohlrabi', [], 4.5, 2.8, null, 3, 23),
  vegetable('chives', [], 3, 5, null, 1, 21),
  vegetable('rocket', [], 1.75, 4, null, 2, 15),
  vegetable('swede', [], null, 2.6, null, null, null),
  vegetable('root parsley', [], 4, 4.2, null, 4.5, 13),
  vegetable('romaine lettuce', [], 4.5, 2, null, 1, 14),
  vegetable('iceberg lettuce', [], 6, 1.4, null, 1.5, 17.5),
  vegetable('Chinese cabbage', ['pak_choi'], 7, 1.5, null, 4.5, 21),
  vegetable('savoy cabbage', [], 4, 3.5, null, 8, 28.5),
  vegetable('red cabbage', [], 6, 2.2, null, 6, 26),
  vegetable('bunched onion', [], 6.8, 2, null, 1.5, 21),
];

export const officialRowOf = (cropId: CropId): OfficialRow | undefined =>
  officialRows.find(({ crops }) => crops.includes(cropId));

const rule = (value: number, unit: string, place: string): Row =>
  printed(value, unit, `annex 4 ${place}`);

/** How the law moves a demand. */
export const demandRules = {
  perFifthOfYield: row(
    2,
    2,
    4,
    'g N per m2 for each 20 % of yield',
    'GermanOrdinance2017',
    'annex 4 table 5: 2; 4 for cabbages, leek, celeriac, sprouts, cucumber',
    'read',
  ),
  humusAboveFourPercent: rule(2, 'g N per m2 less', 'table 6'),
  afterClover: rule(2, 'g N per m2 less', 'table 7: ley or clover before'),
  afterWinterLegume: rule(4, 'g N per m2 less', 'table 7: winter-hardy legume dug in in spring'),
  afterFrostedLegume: rule(1, 'g N per m2 less', 'table 7: legume killed by frost'),
  afterOtherCover: rule(2, 'g N per m2 less', 'table 7: other cover crop dug in in spring'),
} as const;

const share = (percent: number): Row =>
  single(
    percent / 100,
    'share of nitrogen in the first year, at least',
    'GermanOrdinance2017',
    'annex 3: a rule for counting, not a measurement',
    'read',
  );

/** Share of the nitrogen that the first season must be charged with: a floor for what is ready and comes slowly. */
export const firstYearUse = {
  'green compost': share(3),
  'other compost': share(5),
  'spent mushroom compost': share(10),
  'cow and horse manure': share(25),
  'poultry manure': share(30),
  'poultry manure, dried': share(60),
  /** upper bound of a design: 7-15 % was measured in the first season under surface mulch */
  'clover-grass carried to a bed': single(
    0.3,
    'share of nitrogen in the first year, at least',
    'SaxonyTransferMulch',
    'a rule for counting',
    'read',
  ),
} as const;
