import type { GrassHeight, PlanWeights } from '../core/plan/question';
import { row, single } from './row';
import type { Row } from './shapes';

const ours = (value: number, unit: string, place: string) =>
  single(value, unit, 'Assumed', place, 'assumed');

/** What the weekly plan weighs, all of it our own judgement. */
export const planningRows = {
  lowShare: ours(0.9, 'of need', 'a bed under nine tenths of its need is short'),
  highShare: ours(1.1, 'of need', 'a tenth over the need is enough'),
  supplyDiffers: ours(
    0.1,
    'of need',
    'weather and soil differ from the likely: a plan keeps to the middle of about right, not to its edge',
  ),
  excessUsual: ours(1, 'weight', 'a gram too much counts as a gram too little'),
  excessSensitive: ours(
    2,
    'weight',
    'flower, fruit and storage crops run to leaf on what others only waste',
  ),
  excessLegume: ours(3, 'weight', 'what legumes are given they do not fix'),
  groundGrams: ours(2, 'g N per m2 of bare ground', 'ground to be covered against nitrogen'),
  inHand: ours(
    0.3,
    'of what is short or bare',
    'a bed is fed and covered today rather than by layers that may not come: drought, holidays, rain',
  ),
  sureOfComing: ours(0.7, 'of the expected yield', 'grass that has not grown yet'),
  heapCarbonToNitrogen: row(
    25,
    27,
    30,
    'C:N',
    'CommonPractice',
    'a heap that warms and does not smell',
    'memory',
  ),
  slowHeapCarbonToNitrogen: row(
    35,
    40,
    50,
    'C:N',
    'Assumed',
    'a heap that rots without warming: well beyond what heats, short of what hardly rots',
    'assumed',
  ),
  heapShare: ours(0.5, 'of mowings', 'half of what is mown finds no bed and goes on the heap'),
  keptWeeks: ours(3, 'weeks', 'mowings that leaves are kept for, this week’s included'),
  keptMost: ours(0.5, 'of the leaves in store', 'the other half is for ground that lies bare'),
  spreadMillimetres: row(
    10,
    20,
    30,
    'mm',
    'CommonPractice',
    'clippings spread out to dry, turned once or twice',
    'memory',
  ),
} as const;

const usual = planningRows.excessUsual.typical;
const sensitive = planningRows.excessSensitive.typical;

/** The bare numbers, as core takes them. */
export const planWeights: PlanWeights = {
  lowShare: planningRows.lowShare.typical,
  highShare: planningRows.highShare.typical,
  supplyDiffers: planningRows.supplyDiffers.typical,
  excess: {
    legume: planningRows.excessLegume.typical,
    'tender storage': sensitive,
    storage: sensitive,
    fruit: sensitive,
    flower: sensitive,
    leaf: usual,
    head: usual,
    perennial: usual,
    cover: usual,
  },
  excessEmpty: usual,
  groundGrams: planningRows.groundGrams.typical,
  inHand: planningRows.inHand.typical,
  sureOfComing: planningRows.sureOfComing.typical,
  heapCarbonToNitrogen: planningRows.heapCarbonToNitrogen.typical,
  heapShare: planningRows.heapShare.typical,
  keptWeeks: planningRows.keptWeeks.typical,
  keptMost: planningRows.keptMost.typical,
  spreadMillimetres: planningRows.spreadMillimetres.typical,
};

const glance = (low: number, typical: number, high: number, place: string) =>
  row(low, typical, high, 'of the expected yield', 'Assumed', place, 'assumed');

/** What a glance at the grass before mowing says of the yield that was expected. */
export const grassHeightRows: Readonly<Record<GrassHeight, Row>> = {
  'hardly grown': glance(0.2, 0.4, 0.6, 'no higher than it was cut'),
  usual: glance(1, 1, 1, 'as expected'),
  ankle: glance(1.3, 1.6, 2.2, 'twice the height it is cut at'),
};
