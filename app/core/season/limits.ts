import type { Cited, Standing } from '../reference';
import type { Weight } from './verdict';

/** Lines that are weighed: a number and the weights it reaches as it grows. */
export const lineIds = [
  'over-fed tender storage',
  'over-fed storage',
  'over-fed fruit',
  'over-fed flower',
  'over-fed leaf',
  'over-fed head',
  'over-fed perennial',
  'nitrate at flowering',
  'over-feeding odds',
  'layer just cut',
  'layer limp',
  'layer crisp',
  'all cover',
  'room tender storage',
  'room storage',
  'room fruit',
  'room flower',
  'room leaf',
  'room head',
  'room perennial',
  'season total',
  'greens on an empty bed',
  'legume loss',
  'tied up',
  'washing out at clearing',
  'washing out in an empty bed',
  'leaf nitrate',
  'compost depth',
  'share of the bed',
] as const;
export type LineId = (typeof lineIds)[number];

/** Single numbers of rules: one side of a condition, a window, a margin. */
export const numberIds = [
  // states
  'enough to the end',
  'leaving enough to the end',
  'leaving over-fed',
  'leaving enough for now',
  'forecast meets',
  'little open',
  'flower window before',
  'flower window after',
  'bulking from',
  'over-feeding all but sure',
  'over-feeding least rise',
  'over-feeding rise',
  'short look-ahead',
  'short share',
  'short least need',
  'short least open',
  'leaving short',
  'leaving short share',
  'out of reach',
  'was short share',
  'was short lost',
  'dry soil',
  'cover bare',
  'cover thin',
  'cover too deep',
  'room aim',
  'room share',
  'room season limit',
  // cautions
  'enough margin',
  'too soon wetness',
  'too soon left',
  'legume first layer',
  'legume least fixed',
  'hand high sown',
  'hand high sown slow',
  'hand high planted',
  'stems clear until',
  'sown soon',
  'empty bed days',
  'rain due',
  'rain due window',
  'nitrate before rain',
  'warm soil window',
  'seed fly days',
  'seed fly soil',
  'seed fly wet',
  'slug rain',
  'slug wet days',
  'slug night',
  'slug young',
  'slug cover',
  'look holds',
  'dry layer',
  'glass days',
  'seed head days',
  'hay seed depth',
  'hot day',
  'hot night',
  'cold night',
  'weather days',
  'salad days',
  'manure splashed',
  'manure off the ground',
  'manure margin',
  'least green C:N',
  'most green C:N',
  'least mature C:N',
  'most mature C:N',
  // treated sources
  'silent mowings',
  'silent days',
] as const;
export type NumberId = (typeof numberIds)[number];

/** Rules without a number: a fact that is so or not. */
export const factIds = [
  'short of nitrogen',
  'greens on enough for now',
  'greens on enough to the end',
  'greens past enough',
  'greens too soon',
  'cover over seedlings',
  'stems',
  'cold soil',
  'seed fly',
  'slug weather',
  'slugs seen',
  'sour mat',
  'dry soil first',
  'fresh greens under glass',
  'frost over cover',
  'killed by frost',
  'creeping grass',
  'seed heads',
  'hay seeds',
  'hay seeds thin',
  'not asked',
  'label forbids',
  'label interval',
  'label silent',
  'label silent sensitive',
  'unknown lawn',
  'unknown lawn flowers',
  'unknown source',
  'unknown source flowers',
  'unknown source sensitive',
  'treated source',
  'greens before a salad',
  'raw manure',
  'raw manure close',
  'manure burn',
  'overdue',
  'outside what was tested',
  'rain on nitrate',
  // safety
  'fouled grass',
  'dog poison',
  'poisonous plants',
  'painted wood',
  'roadside',
  'old house',
  'mouldy',
  'walnut',
  'diseased tops',
  'bought in',
  'own well',
] as const;
export type FactId = (typeof factIds)[number];

export type RowId = LineId | NumberId | FactId;

/** Numbers past which a weight holds; Infinity where the row has no such weight. */
export interface Lines {
  readonly note: number;
  readonly caution: number;
  readonly stop: number;
}

/** The bare numbers of the threshold table, as core uses them. Plain data: it may cross to a worker. */
export interface Limits {
  readonly lines: Readonly<Record<LineId, Lines>>;
  readonly numbers: Readonly<Record<NumberId, number>>;
  readonly facts: Readonly<Record<FactId, Weight>>;
}

/** What a gardener can do instead, put into words in `app/words`. */
export const insteadKeys = [
  'stop greens',
  'rake and carry',
  'split the layer',
  'loosen or thin',
  'let it dry',
  'other bed',
  'wait',
  'straw on legumes',
  'feed',
  'water first',
  'wait for the soil',
  'sow or cover',
  'browns only',
  'keep off stems',
  'pull back',
  'let air in',
  'air the glass',
  'uncover at night',
  'crisp or hot heap',
  'leave on the lawn',
  'answer the question',
  'pot test',
  'wait for the date',
  'compost it',
  'compost manure',
  'thicker or straw',
  'pull seedlings',
  'test first',
  'clear or date',
  'weigh or test',
  'pick late',
  'leave out',
  'nothing',
] as const;
export type InsteadKey = (typeof insteadKeys)[number];

/** One number of a threshold row with where it comes from. `judged`: nobody measured it, we set it. */
export interface ThresholdCell extends Cited {
  readonly judged: boolean;
}

/** One row of the table that drives states and cautions. */
export interface ThresholdRow {
  readonly id: RowId;
  /** a few words for a list of all thresholds */
  readonly about: string;
  readonly note: ThresholdCell | null;
  readonly caution: ThresholdCell | null;
  readonly stop: ThresholdCell | null;
  /** the number of a rule that is not weighed */
  readonly number: ThresholdCell | null;
  /** of a row without a number: its weight and basis */
  readonly fact:
    | (Pick<ThresholdCell, 'source' | 'place' | 'standing' | 'judged'> & {
        readonly weight: Weight;
      })
    | null;
  readonly instead: InsteadKey;
}

/** Where a caution's line comes from and what to do instead, in plain data for `app/words`. */
export interface ThresholdBasis {
  /** author and year, as shown in a line */
  readonly source: string;
  readonly place: string;
  readonly standing: Standing;
  readonly judged: boolean;
  readonly instead: InsteadKey;
}

export interface Weighed {
  readonly weight: Weight;
  /** the line that was passed */
  readonly threshold: number;
}

// A depth computed from mass and density must not miss its line by rounding.
const rounding = 1e-6;

/**
 * The heaviest line a number is past, or null. A note and a caution hold above their line; a stop
 * from its line on when `stopFrom` is set (an inch of fresh clippings is a stop, not an inch and more).
 */
export function weigh(number: number, lines: Lines, stopFrom = false): Weighed | null {
  if (stopFrom ? number >= lines.stop - rounding : number > lines.stop + rounding)
    return { weight: 'stop', threshold: lines.stop };
  if (number > lines.caution + rounding) return { weight: 'caution', threshold: lines.caution };
  if (number > lines.note + rounding) return { weight: 'note', threshold: lines.note };
  return null;
}

export const weightRank: Readonly<Record<Weight, number>> = { note: 1, caution: 2, stop: 3 };
