import type { CropId } from './crops';
import { row, single } from './row';
import type { Row } from './shapes';

export interface CropTiming {
  readonly crop: CropId;
  readonly what: string;
  readonly when: Row;
}

const timing = (crop: CropId, what: string, when: Row): CropTiming => ({ crop, what, when });

/** Stages of single crops that were read beside the days of the crop table. */
export const cropTimings = {
  tomatoFlowerFromSowing: timing(
    'tomato',
    'first flower, from sowing',
    row(35, 38, 42, 'days', 'TomatoPhysiology', 'the crop row counts from setting out', 'read'),
  ),
  broadBeanUp: timing(
    'broad_bean',
    'seedlings up, base about 0',
    single(208, 'degree-days', 'McDonald1994', 'abstract', 'read'),
  ),
  broadBeanFlower: timing(
    'broad_bean',
    'first flower, from seedlings up',
    row(43, 58, 73, 'days', 'McDonald1994', 'abstract: earliest and latest lines', 'read'),
  ),
  sweetPotatoRoots: timing(
    'sweet_potato',
    'storage roots begin, from planting slips',
    row(28, 35, 56, 'days', 'SweetPotatoKey', 'from week 4; most by week 7', 'read'),
  ),
  potatoTubers: timing(
    'potato',
    'tubers begin, from planting',
    row(21, 32, 42, 'days', 'NebraskaPotato', 'three to six weeks', 'read'),
  ),
  onionBulbWarmth: timing(
    'onion',
    'bulbs begin, with days of at least 13.75 hours',
    single(600, 'degree-days', 'Lancaster1996', 'abstract', 'read'),
  ),
  onionBulbDays: timing(
    'onion',
    'day length for bulbs, with the warmth',
    single(13.75, 'hours', 'Lancaster1996', 'abstract', 'read'),
  ),
  onionBulbGrowth: timing(
    'onion',
    'bulb growth',
    row(11, 35, 46, 'days', 'Lancaster1996', 'abstract', 'read'),
  ),
  broccoliBuds: timing(
    'broccoli',
    'buds begin, from setting out',
    row(21, 25, 28, 'days', 'SeedPages', 'seed firm', 'reported'),
  ),
  cauliflowerReady: timing(
    'cauliflower',
    'ready, from setting out',
    row(67, 82, 106, 'days', 'Wurr1990', 'May plantings 77-94, July plantings 67-106', 'read'),
  ),
  edamameHarvest: timing(
    'edamame',
    'pods ready, after flower, base 0',
    row(
      1250,
      1250,
      1380,
      'degree-days',
      'Sugimoto2018',
      'from 1250; yellow at 1380; one late kind',
      'read',
    ),
  ),
  soybeanPeak: timing(
    'edamame',
    'most uptake in a day',
    single(
      0.43,
      'g N per m2 and day',
      'EdamameNitrogen2023',
      'introduction, grain soybeans',
      'read',
    ),
  ),
  sunflowerUp: timing(
    'sunflower',
    'seedlings up, base 6.7',
    single(97, 'degree-days', 'Manitoba2014', 'stage VE, oil kinds', 'read'),
  ),
  sunflowerBud: timing(
    'sunflower',
    'bud seen, base 6.7',
    single(569, 'degree-days', 'Manitoba2014', 'stage R1, oil kinds', 'read'),
  ),
  sunflowerFlower: timing(
    'sunflower',
    'first flower, base 6.7',
    single(883, 'degree-days', 'Manitoba2014', 'stage R5.1, oil kinds', 'read'),
  ),
  sunflowerFaded: timing(
    'sunflower',
    'flower over, base 6.7',
    single(1040, 'degree-days', 'Manitoba2014', 'stage R6, oil kinds', 'read'),
  ),
  sunflowerRipe: timing(
    'sunflower',
    'ripe, base 6.7',
    single(1276, 'degree-days', 'Manitoba2014', 'stage R9, oil kinds', 'read'),
  ),
  squashSlowStart: timing(
    'winter_squash',
    'uptake stays slow until, from sowing',
    single(56, 'days', 'Tetsukabuto2007', 'harvest at 98', 'read'),
  ),
  watermelonPeak: timing(
    'watermelon',
    'most uptake, from setting out',
    row(45, 52, 60, 'days', 'Grangeiro2004', 'between 45 and 60', 'derived'),
  ),
  sweetCornEars: timing(
    'sweet_corn',
    'ears ready, after silk',
    single(30, 'days', 'SeedPages', 'growing guide', 'reported'),
  ),
  zucchiniSpread: timing(
    'zucchini',
    'flower earlier or later by place, up to',
    single(20, 'days', 'SquashHeatUnits', 'abstract: Georgia, two years', 'read'),
  ),
} as const satisfies Record<string, CropTiming>;
