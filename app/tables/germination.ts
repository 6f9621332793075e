import type { Standing } from '../core/reference';
import type { CropId } from './crops';
import { row, single } from './row';
import type { Row } from './shapes';
import type { SourceKey } from './sources';

export interface GerminationRow {
  /** coldest soil a seed still comes up in */
  readonly coldest: Row;
  /** soil it comes up best in */
  readonly best: Row;
}

const unit = 'deg C of soil';

const cited = (
  low: number,
  typical: number,
  high: number,
  source: SourceKey,
  standing: Standing,
  place: string,
): Row => row(low, typical, high, unit, source, place, standing);

/** Printed for the crop in degrees Fahrenheit, without a range. */
const listed = (celsius: number): Row =>
  single(celsius, unit, 'FloridaGermination', 'soil temperature for germination', 'reported');

const fromTrial = (low: number, typical: number, high: number): Row =>
  cited(low, typical, high, 'HarringtonMinges1954', 'derived', 'chosen between temperatures tried');

const likeRelative = (low: number, typical: number, high: number, relative: string): Row =>
  cited(low, typical, high, 'FloridaGermination', 'derived', `as ${relative}`);

const recalled = (low: number, typical: number, high: number): Row =>
  cited(low, typical, high, 'Recalled', 'memory', 'no source found');

/** Soil warmth for sown crops; crops set as plants, sets, roots or tubers have no row. */
export const germination = {
  snap_bean_bush: { coldest: listed(15.6), best: listed(29.4) },
  snap_bean_pole: { coldest: listed(15.6), best: listed(29.4) },
  runner_bean: { coldest: recalled(10, 12, 15), best: recalled(18, 22, 27) },
  yardlong_cowpea: { coldest: recalled(16, 18, 20), best: recalled(25, 30, 35) },
  dry_bean: { coldest: listed(15.6), best: listed(29.4) },
  edamame: { coldest: recalled(10, 13, 16), best: recalled(25, 28, 32) },
  pea: { coldest: listed(4.4), best: listed(24) },
  broad_bean: { coldest: recalled(2, 4, 7), best: recalled(13, 18, 22) },
  lettuce_head: { coldest: listed(0), best: listed(24) },
  lettuce_leaf: { coldest: listed(0), best: listed(24) },
  spinach: { coldest: listed(0), best: listed(21) },
  chard: { coldest: listed(4.4), best: listed(29.4) },
  kale: {
    coldest: likeRelative(4.4, 4.4, 4.4, 'cabbage'),
    best: likeRelative(29.4, 29.4, 29.4, 'cabbage'),
  },
  cabbage: { coldest: listed(4.4), best: listed(29.4) },
  broccoli: { coldest: listed(4.4), best: listed(29.4) },
  cauliflower: { coldest: listed(4.4), best: listed(26.7) },
  brussels_sprouts: { coldest: listed(4.4), best: listed(29.4) },
  pak_choi: { coldest: recalled(4.4, 4.4, 4.4), best: recalled(29.4, 29.4, 29.4) },
  radish: { coldest: listed(4.4), best: listed(26.7) },
  turnip: { coldest: listed(4.4), best: listed(26.7) },
  beet: { coldest: listed(4.4), best: listed(29.4) },
  carrot: { coldest: listed(4.4), best: listed(26.7) },
  parsnip: { coldest: fromTrial(0, 2, 5), best: listed(21) },
  celery: { coldest: fromTrial(4.4, 7, 10), best: listed(21) },
  celeriac: {
    coldest: likeRelative(4.4, 7, 10, 'celery'),
    best: likeRelative(21, 21, 21, 'celery'),
  },
  onion: { coldest: listed(0), best: listed(26.7) },
  leek: { coldest: recalled(1, 4, 7), best: recalled(18, 22, 25) },
  potato: { coldest: recalled(5, 7, 10), best: recalled(15, 18, 21) },
  tomato: { coldest: listed(10), best: listed(26.7) },
  pepper: { coldest: listed(15.6), best: listed(29.4) },
  eggplant: { coldest: fromTrial(15, 18, 20), best: fromTrial(25, 29, 32) },
  cucumber: { coldest: listed(15.6), best: listed(35) },
  zucchini: { coldest: listed(18.3), best: listed(35) },
  winter_squash: { coldest: listed(18.3), best: listed(35) },
  melon: { coldest: fromTrial(15, 18, 20), best: fromTrial(25, 30, 35) },
  watermelon: { coldest: fromTrial(15, 18, 20), best: fromTrial(25, 30, 35) },
  sweet_corn: { coldest: listed(10), best: listed(29.4) },
  okra: { coldest: listed(15.6), best: listed(35) },
  asparagus: { coldest: listed(10), best: listed(24) },
  basil: { coldest: recalled(15, 16, 18), best: recalled(21, 24, 29) },
  parsley: { coldest: listed(4.4), best: listed(25) },
  dill: { coldest: recalled(5, 8, 10), best: recalled(15, 20, 21) },
  sunflower: { coldest: recalled(6, 8, 10), best: recalled(20, 24, 27) },
  zinnia: {
    coldest: cited(15, 18, 21, 'Mf1079', 'mixed', '75 F in 5-7 days; range recalled'),
    best: cited(23, 24, 27, 'Mf1079', 'mixed', '75 F in 5-7 days; range recalled'),
  },
  sweet_pea: { coldest: recalled(5, 7, 10), best: recalled(13, 15, 18) },
  nasturtium: {
    coldest: cited(
      10,
      12,
      15,
      'SeedPages',
      'mixed',
      '13-18 deg C, 7-10 days; the coldest recalled',
    ),
    best: cited(13, 16, 18, 'SeedPages', 'mixed', '13-18 deg C, 7-10 days; the coldest recalled'),
  },
  crimson_clover: { coldest: recalled(3, 5, 8), best: recalled(13, 18, 22) },
  red_clover: { coldest: recalled(3, 5, 8), best: recalled(13, 18, 22) },
  hairy_vetch: { coldest: recalled(3, 5, 8), best: recalled(13, 17, 22) },
  winter_rye: { coldest: recalled(1, 2, 4), best: recalled(15, 20, 25) },
  rye_vetch: { coldest: recalled(2, 4, 6), best: recalled(13, 18, 22) },
} as const satisfies Partial<Record<CropId, GerminationRow>>;
