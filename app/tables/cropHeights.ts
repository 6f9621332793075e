import { type CropId } from './crops';
import { row } from './row';
import type { Row } from './shapes';

const printed = (
  low: number,
  typical: number,
  high: number,
  crop: string,
  standing: 'reported' | 'memory',
): Row => row(low, typical, high, 'm', 'Allen1998', `table 12, ${crop}`, standing);

const recalled = (low: number, typical: number, high: number, what = 'no source found'): Row =>
  row(low, typical, high, 'm', 'Recalled', what, 'memory');

/**
 * How tall crops grow. Only drawings use it: no sum reads a height. The typical value of printed ones is the mean of
 * the greatest heights there, field varieties mostly; gardens tie some up higher.
 */
export const cropHeights: Readonly<Record<CropId, Row>> = {
  snap_bean_bush: printed(0.3, 0.4, 0.6, 'beans, green', 'memory'),
  snap_bean_pole: recalled(1.5, 2, 2.5),
  runner_bean: recalled(1.8, 2.2, 3),
  yardlong_cowpea: recalled(1.5, 2, 3),
  dry_bean: printed(0.3, 0.4, 0.6, 'beans, dry', 'memory'),
  edamame: printed(0.5, 0.75, 1, 'soybeans, 0.5-1.0', 'memory'),
  pea: printed(0.4, 0.5, 1.8, 'peas, fresh', 'memory'),
  broad_bean: printed(0.6, 0.8, 1.2, 'faba bean', 'memory'),
  sweet_pea: recalled(1.2, 1.8, 2.4),
  kale: recalled(0.4, 0.6, 0.9),
  cabbage: printed(0.3, 0.4, 0.5, 'cabbage', 'reported'),
  broccoli: printed(0.3, 0.3, 0.7, 'broccoli', 'reported'),
  cauliflower: printed(0.3, 0.4, 0.6, 'cauliflower', 'reported'),
  brussels_sprouts: printed(0.4, 0.4, 0.9, 'Brussels sprouts', 'reported'),
  crimson_clover: recalled(0.3, 0.5, 0.7),
  red_clover: recalled(0.3, 0.5, 0.8),
  hairy_vetch: recalled(0.4, 0.6, 0.9),
  winter_rye: recalled(0.9, 1.3, 1.8),
  rye_vetch: recalled(0.8, 1.2, 1.6),
  cucumber: printed(0.3, 0.3, 2, 'cucumber, on the ground', 'memory'),
  zucchini: printed(0.3, 0.3, 0.8, 'squash, zucchini', 'memory'),
  winter_squash: printed(0.3, 0.4, 0.6, 'pumpkin, winter squash', 'memory'),
  melon: printed(0.3, 0.4, 0.5, 'sweet melons', 'memory'),
  watermelon: printed(0.3, 0.4, 0.5, 'watermelon', 'memory'),
  sunflower: printed(1.2, 2, 3, 'sunflower', 'memory'),
  zinnia: recalled(0.4, 0.7, 1),
  dahlia: recalled(0.6, 1, 1.5),
  nasturtium: recalled(0.2, 0.3, 0.5),
  tomato: recalled(0.6, 1.2, 1.8, 'tied to a stake; unstaked field plants are half as tall'),
  pepper: printed(0.5, 0.7, 0.9, 'sweet peppers', 'reported'),
  eggplant: printed(0.6, 0.8, 1, 'egg plant', 'reported'),
  okra: recalled(0.9, 1.3, 1.8),
  sweet_corn: printed(1.4, 1.5, 2.2, 'maize, sweet', 'memory'),
  basil: recalled(0.3, 0.45, 0.6),
  parsley: recalled(0.2, 0.3, 0.4),
  dill: recalled(0.5, 0.8, 1.1),
  lettuce_head: printed(0.2, 0.3, 0.3, 'lettuce', 'reported'),
  lettuce_leaf: printed(0.2, 0.3, 0.3, 'lettuce', 'reported'),
  spinach: printed(0.2, 0.3, 0.3, 'spinach', 'reported'),
  chard: recalled(0.3, 0.45, 0.6),
  pak_choi: recalled(0.2, 0.3, 0.4),
  celery: printed(0.4, 0.6, 0.7, 'celery', 'reported'),
  strawberry: printed(0.15, 0.2, 0.3, 'strawberries', 'memory'),
  asparagus: recalled(0.8, 1.2, 1.6, 'the fern, after picking'),
  rhubarb: recalled(0.5, 0.7, 1),
  radish: printed(0.15, 0.3, 0.3, 'radish', 'reported'),
  turnip: printed(0.3, 0.6, 0.6, 'turnip and rutabaga', 'memory'),
  beet: printed(0.3, 0.4, 0.4, 'beets, table', 'memory'),
  carrot: printed(0.25, 0.3, 0.4, 'carrots', 'reported'),
  parsnip: printed(0.3, 0.4, 0.6, 'parsnip', 'memory'),
  celeriac: recalled(0.3, 0.45, 0.6),
  potato: printed(0.5, 0.6, 0.8, 'potato', 'memory'),
  sweet_potato: printed(0.25, 0.4, 0.4, 'sweet potato', 'memory'),
  onion: printed(0.3, 0.4, 0.6, 'onions, dry', 'reported'),
  leek: recalled(0.4, 0.6, 0.8),
  garlic: printed(0.3, 0.3, 0.6, 'garlic', 'reported'),
};

/** Grown height of a crop [mm]; of one the tables do not have, a hand's breadth. */
export const grownMillimetres = (cropId: string): number =>
  Object.hasOwn(cropHeights, cropId) ? 1000 * cropHeights[cropId as CropId].typical : 100;
