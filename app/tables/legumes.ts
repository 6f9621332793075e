import type { Standing } from '../core/reference';
import type { CropId } from './crops';
import { row, single } from './row';
import type { Row } from './shapes';
import type { SourceKey } from './sources';

/** What is known of legumes beyond the share they take from the air, which the crop rows carry. */
const unit = 'g N per m2';

const amount = (
  low: number,
  typical: number,
  high: number,
  source: SourceKey,
  standing: Standing,
  place: string,
): Row => row(low, typical, high, unit, source, place, standing);

/** Nitrogen fixed by a whole crop, as others found it: a check on what the season works out. */
export const fixedAmounts = {
  snap_bean_bush: amount(0, 4, 7.5, 'Peoples2021', 'derived', 'share of a crop of 12.5 g/m2'),
  snap_bean_pole: amount(1.5, 7, 12, 'Recalled', 'memory', 'no measurement found'),
  runner_bean: amount(1.5, 7.5, 13, 'Recalled', 'memory', 'no measurement found'),
  dry_bean: amount(0, 6, 12.5, 'Peoples1995', 'mixed', '0-125 kg/ha; 90 and 140-163 elsewhere'),
  yardlong_cowpea: amount(3, 8, 15, 'Recalled', 'memory', 'no measurement found'),
  pea: amount(
    3,
    10,
    25,
    'Jensen1986',
    'mixed',
    '100-250 kg/ha dry peas, 17-244 elsewhere; picked green less',
  ),
  broad_bean: amount(
    5,
    18,
    33,
    'Turpin2002',
    'mixed',
    '209-275 kg/ha whole plant; 53-330 and 15-171 elsewhere',
  ),
  edamame: amount(
    2,
    9,
    20,
    'SalvagiottiDobermann2006',
    'mixed',
    'most often 61-151 kg/ha, 0-337 in all',
  ),
  sweet_pea: amount(1.5, 5, 9, 'Recalled', 'memory', 'no measurement found'),
  crimson_clover: amount(4, 9.5, 15, 'Recalled', 'memory', 'no measurement found'),
  red_clover: amount(
    6,
    15,
    28,
    'Jennings',
    'mixed',
    '112-224 kg/ha a year in thick stands; typical and range recalled',
  ),
  hairy_vetch: amount(
    6,
    11.4,
    17,
    'Poffenbarger2015',
    'derived',
    '63 % of 181 kg/ha; range recalled',
  ),
} as const satisfies Partial<Record<CropId, Row>>;

/** Mineral nitrogen at sowing, or given, at which a season's fixation stops. */
export const seasonLimits = {
  pea: single(
    38,
    unit,
    'Voisin2002',
    'abstract: share falls in a line to nothing at 380 kg/ha',
    'read',
  ),
  'bush bean': single(
    11.2,
    unit,
    'RuarkWest',
    '100 lb per acre stopped it; marked-nitrogen results preliminary',
    'read',
  ),
} as const;

/** Nitrate in the ploughed layer above which pea nodules do not begin. */
export const noduleStartLimit: Row = single(
  5.6,
  'g nitrate-N per m2, 0-30 cm',
  'Voisin2002',
  'abstract: no start unless below 56 kg/ha',
  'read',
);

/** Most that peas fix in a day, about the time of flat pods. */
export const peaPeakPerDay: Row = row(
  0.7,
  0.85,
  1,
  'g N per m2 and day',
  'Jensen1986',
  'abstract: 10 kg/ha; 7 in Voisin and others 2002',
  'derived',
);

/** Broad beans mind nitrate less: points of the share lost for each g of nitrate-N down to 1.8 m. */
export const broadBeanLoss: Row = single(
  2.5,
  'points of % from the air per g N per m2',
  'Turpin2002',
  'abstract: 88 to 69 % from 11 to 86 kg/ha',
  'derived',
);

/** Nitrogen of legume residue that came back as extra mineral nitrogen for the next crop. */
export const residueReachingNextCrop: Row = row(
  0.17,
  0.28,
  0.39,
  'share of residue nitrogen',
  'Grdc2018',
  '28 +- 11 % in dryland grain rotations; young garden residue may give more',
  'read',
);

/** Share of a legume's nitrogen below ground, by how it was looked for. */
export const belowGround = {
  'roots and nodules found': row(
    0.07,
    0.09,
    0.11,
    'share of plant N',
    'PortugalRoots2015',
    'abstract: 7-11 %',
    'derived',
  ),
  'with what they shed': single(
    0.24,
    'share of plant N',
    'PortugalRoots2015',
    'cites 14 % roots and 10 % shed',
    'reported',
  ),
  'found of what is there': row(
    0.33,
    0.44,
    0.55,
    'share of nitrogen below ground',
    'McNeillUnkovich2024',
    'abstract: washed roots hold 33-55 %',
    'derived',
  ),
} as const;

/** What others tell the next crop to reckon with. They disagree, and some count what is not new. */
export const nextCropCredits = {
  'legume sod': single(11.2, unit, 'VermontNitrogen', '100 lb per acre', 'read'),
  'good alfalfa': row(9, 11.2, 13.5, unit, 'NebraskaLegumes', '80-120 lb per acre', 'derived'),
  'dry beans': single(
    4.5,
    unit,
    'NebraskaLegumes',
    '40 lb per acre; our account of the season is lower',
    'read',
  ),
  'annual pulses': single(
    4.5,
    unit,
    'SouthDakotaCredits2013',
    '40 lb per acre: less tied up than by cereal straw, not nitrogen added',
    'read',
  ),
  'dry peas': row(
    1.2,
    2.5,
    2.8,
    unit,
    'Beckie1997',
    'abstracts: 12, 27 and 28 kg/ha; benefit 25',
    'read',
  ),
  'pulses in dry country': row(
    1.5,
    3.5,
    5.5,
    unit,
    'Grdc2018',
    '35 +- 20 kg/ha in 16 trials',
    'read',
  ),
  'cowpea dug in before carrots': row(
    1.8,
    2.5,
    3.2,
    unit,
    'Akologo2023',
    'abstract: 18-32 kg/ha',
    'derived',
  ),
  'legume cover crop': row(5.6, 8.4, 11.2, unit, 'NrcsS27', '50-100 lb per acre', 'derived'),
  'short autumn cover of beans or peas': single(
    0,
    unit,
    'Andersen2020',
    'abstract: none found in the next maize',
    'read',
  ),
  'beans and peas picked green': single(2.2, unit, 'Recalled', '20 lb per acre', 'memory'),
} as const;

/** Legumes that share their nodule bacteria; where one of a group grew before, no inoculant is needed. */
export const noduleGroups: readonly (readonly CropId[])[] = [
  ['snap_bean_bush', 'snap_bean_pole', 'dry_bean', 'runner_bean'],
  ['pea', 'broad_bean', 'sweet_pea', 'hairy_vetch', 'rye_vetch'],
  ['crimson_clover', 'red_clover'],
  ['yardlong_cowpea'],
  ['edamame'],
];

/** How well the groups are known. */
export const noduleGroupsStanding: Standing = 'memory';
