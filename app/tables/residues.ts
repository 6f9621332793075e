import type { Standing } from '../core/reference';
import type { CropId } from './crops';
import { row, single } from './row';
import type { Row } from './shapes';
import type { SourceKey } from './sources';

/** Nitrogen and C:N of what a crop leaves, as others measured it: a check on the crop table. */
export interface ResidueReading {
  readonly name: string;
  readonly crops: readonly CropId[];
  readonly nitrogenPercent: Row | null;
  readonly carbonToNitrogen: Row | null;
  readonly note?: string;
}

const nitrogen = (
  low: number,
  typical: number,
  high: number,
  source: SourceKey,
  standing: Standing,
  place: string,
): Row => row(low, typical, high, '% of dry matter', source, place, standing);

const ratio = (value: number, source: SourceKey, place: string): Row =>
  single(value, 'g C per g N', source, place, 'read');

const ratioRange = (low: number, high: number, source: SourceKey, place: string): Row =>
  row(low, (low + high) / 2, high, 'g C per g N', source, place, 'derived');

const reading = (
  name: string,
  crops: readonly CropId[],
  nitrogenPercent: Row | null,
  carbonToNitrogen: Row | null,
  note?: string,
): ResidueReading => ({
  name,
  crops,
  nitrogenPercent,
  carbonToNitrogen,
  ...(note === undefined ? {} : { note }),
});

/** Protein of leaves that people eat is an upper end for a whole residue: young, and no stems. */
export const residueReadings: readonly ResidueReading[] = [
  reading(
    'cereal straw',
    [],
    nitrogen(
      0.58,
      0.58,
      0.58,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
  ),
  reading(
    'grain-maize straw',
    ['sweet_corn'],
    nitrogen(
      1.05,
      1.05,
      1.05,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
  ),
  reading(
    'straw of beans, peas and lupins',
    ['dry_bean'],
    nitrogen(
      1.74,
      1.74,
      1.74,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
    'green tops hold far more',
  ),
  reading(
    'oilseed rape straw',
    [],
    nitrogen(
      0.81,
      0.81,
      0.81,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
  ),
  reading(
    'sunflower straw',
    ['sunflower'],
    nitrogen(
      1.16,
      1.16,
      1.16,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
  ),
  reading(
    'potato tops, late',
    ['potato'],
    nitrogen(
      1.33,
      1.33,
      1.33,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
    'green tops that are killed early hold far more',
  ),
  reading(
    'sugar-beet leaf',
    ['beet', 'chard'],
    nitrogen(
      2.22,
      2.22,
      2.22,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
  ),
  reading(
    'fodder-beet leaf',
    ['beet'],
    nitrogen(
      1.88,
      1.88,
      1.88,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
  ),
  reading(
    'red clover or alfalfa, fresh',
    ['red_clover', 'crimson_clover'],
    nitrogen(
      3.25,
      3.25,
      3.25,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
  ),
  reading(
    'clover-grass, fresh',
    [],
    nitrogen(2.9, 2.9, 2.9, 'GermanOrdinance2017', 'derived', 'annex 7, content over dry matter'),
    null,
  ),
  reading(
    'ryegrass, fresh',
    [],
    nitrogen(
      2.65,
      2.65,
      2.65,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
  ),
  reading(
    'cover-crop forage, fresh',
    [],
    nitrogen(
      2.87,
      2.87,
      2.87,
      'GermanOrdinance2017',
      'derived',
      'annex 7, content over dry matter',
    ),
    null,
  ),
  reading(
    'meadow grass, one to five cuts a year',
    [],
    nitrogen(1.38, 2.09, 2.8, 'GermanOrdinance2017', 'derived', 'annex 7, content over dry matter'),
    null,
    '1.38 with one cut, 1.82, 2.40, 2.70, 2.80 with five: a weekly lawn lies above',
  ),
  reading(
    'cauliflower leaves',
    ['cauliflower'],
    nitrogen(5.05, 5.05, 5.05, 'Ifct2017', 'derived', 'protein / 6.25 over dry matter'),
    null,
    'young outer leaves',
  ),
  reading(
    'kohlrabi leaves',
    [],
    nitrogen(3.62, 3.62, 3.62, 'Ifct2017', 'derived', 'protein / 6.25 over dry matter'),
    null,
  ),
  reading(
    'beet greens',
    ['beet', 'chard'],
    nitrogen(
      2.86,
      3.4,
      3.92,
      'UsdaSr26',
      'derived',
      'protein / 6.25 over dry matter; Indian tables lower',
    ),
    null,
  ),
  reading(
    'pumpkin leaves, tender',
    ['winter_squash', 'zucchini'],
    nitrogen(4.75, 4.75, 4.75, 'Ifct2017', 'derived', 'protein / 6.25 over dry matter'),
    null,
    'tips only: an old vine is poorer',
  ),
  reading(
    'radish leaves',
    ['radish'],
    nitrogen(4.03, 4.03, 4.03, 'Ifct2017', 'derived', 'protein / 6.25 over dry matter'),
    null,
  ),
  reading(
    'turnip greens',
    ['turnip'],
    nitrogen(2.32, 2.32, 2.32, 'UsdaSr26', 'derived', 'protein / 6.25 over dry matter'),
    null,
  ),
  reading(
    'sweet-potato leaves',
    ['sweet_potato'],
    nitrogen(3.02, 3.02, 3.02, 'UsdaSr26', 'derived', 'protein / 6.25 over dry matter'),
    null,
  ),
  reading(
    'winged-bean leaves',
    ['runner_bean', 'yardlong_cowpea'],
    nitrogen(4.04, 4.04, 4.04, 'UsdaSr26', 'derived', 'protein / 6.25 over dry matter'),
    null,
  ),
  reading(
    'basil herb',
    ['basil'],
    nitrogen(6.35, 6.35, 6.35, 'UsdaSr26', 'derived', 'protein / 6.25 over dry matter'),
    null,
    'tender leaf, three samples',
  ),
  reading(
    'parsley herb',
    ['parsley'],
    nitrogen(3.87, 3.87, 3.87, 'UsdaSr26', 'derived', 'protein / 6.25 over dry matter'),
    null,
  ),
  reading('potato tops, green', ['potato'], null, ratio(10, 'Bending1999', 'abstract')),
  reading(
    'Brussels sprout shoot',
    ['brussels_sprouts'],
    null,
    ratio(15, 'Bending1999', 'abstract'),
  ),
  reading('ryegrass root', ['winter_rye'], null, ratio(38, 'Bending1999', 'abstract')),
  reading('cereal straw, second source', [], null, ratio(91, 'Bending1999', 'abstract')),
  reading(
    'tomato vines at the end, woody',
    ['tomato'],
    nitrogen(1.36, 1.36, 1.36, 'TomatoWaste2022', 'derived', 'carbon 53 %'),
    ratio(39.1, 'TomatoWaste2022', 'carbon 53 %'),
  ),
  reading(
    'alfalfa mown in an orchard',
    [],
    null,
    ratio(10.8, 'Granatstein2017', 'alfalfa mown into the rows'),
  ),
  reading(
    'broad bean and pea, leafy, in autumn',
    ['pea', 'broad_bean'],
    nitrogen(
      4.2,
      4.5,
      4.9,
      'Andersen2020',
      'derived',
      'protein 264-304 g per kg dry matter / 6.25',
    ),
    null,
  ),
  reading(
    'velvet bean cover',
    [],
    nitrogen(2.34, 2.47, 2.6, 'TropicalCoverTrial', 'read', 'nitrogen of the cover'),
    null,
  ),
  reading(
    'jack bean cover',
    [],
    nitrogen(2.34, 2.37, 2.4, 'TropicalCoverTrial', 'read', 'nitrogen of the cover'),
    null,
  ),
  reading(
    'yard trimmings',
    [],
    nitrogen(0.8, 2.25, 3.7, 'Nartea2000', 'derived', 'range of the material'),
    ratioRange(11, 34, 'Nartea2000', 'range of the material'),
  ),
  reading(
    'grass-rich yard trimmings',
    [],
    nitrogen(3.21, 3.21, 3.21, 'Bary2005', 'read', 'abstract'),
    ratio(12, 'Bary2005', 'abstract'),
  ),
  reading(
    'autumn leaves of a mixing study',
    [],
    null,
    ratio(48, 'LeavesAndGrass', 'all leaves; two thirds 30, one third 22'),
  ),
  reading(
    'vetch-triticale transfer mulch',
    [],
    null,
    ratio(20, 'SaxonyTransferMulch', 'page on potatoes'),
  ),
  reading('clover transfer mulch', [], null, ratio(15, 'SaxonyTransferMulch', 'page on potatoes')),
];

/** Readings that speak for a crop. */
export const residueReadingsOf = (cropId: CropId): readonly ResidueReading[] =>
  residueReadings.filter(({ crops }) => crops.includes(cropId));

/** Nitrogen that residues bring to a bed. */
export const residueLoads = {
  cauliflower: row(
    9.5,
    11.75,
    14,
    'g N per m2',
    'Everaarts2000',
    'residue at harvest, middle of the range',
    'derived',
  ),
  'most of any vegetable': single(20, 'g N per m2', 'Agneessens2014', 'upper load', 'read'),
  'artichoke and cauliflower in turn': row(
    20.7,
    25.9,
    31.1,
    'g N per m2',
    'AkkalCorfini2021',
    'returned in the rotation, middle of the range',
    'derived',
  ),
} as const;
