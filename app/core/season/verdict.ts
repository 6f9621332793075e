import type { DayNumber } from '../days';
import type { ExcessClass } from './input';

export const nitrogenStates = [
  'over-fed',
  'enough to the end',
  'enough for now',
  'short',
  'about right',
  'nothing planted',
] as const;
export type NitrogenState = (typeof nitrogenStates)[number];

export const coverStates = ['bare', 'thin', 'good', 'too deep'] as const;
export type CoverState = (typeof coverStates)[number];

/** What the state rests on; every number is g N per m2 of bed unless said otherwise. */
export interface BedVerdict {
  readonly state: NitrogenState;
  readonly coverState: CoverState;
  /** on hand + to come over total need; null when nothing is planted */
  readonly ratio: number | null;
  readonly need: number;
  readonly inCrop: number;
  readonly inReach: number;
  readonly expectedRelease: number;
  readonly expectedTieUp: number;
  /** nitrate-N of 0-30 cm [mg/kg, bed's own bulk density] */
  readonly nitrateMgPerKg: number;
  /** first day on which the crop would go short, or the day "enough for now" falls below its line */
  readonly turnsOn: DayNumber | null;
  /** share of what is still wanted that the forecast meets, 0-1 */
  readonly forecastMet: number;
  /** share of total need still open, 0-1 */
  readonly openShare: number;
  readonly dryFirst: boolean;
  /** was short earlier and nothing can be done about it now; first day, else null */
  readonly wasShortOn: DayNumber | null;
  /** room left for greens, g total N per m2; null for legumes and empty beds */
  readonly room: number | null;
  /** class whose line the ratio is held against; null for empty beds */
  readonly excessClass: ExcessClass | null;
  /** ratio past which the bed counts as over-fed; null for legumes, cover crops and empty beds */
  readonly overFedLine: number | null;
  /** nobody is short within weeks, and yet the forecast to clearing leaves a good part unmet; never of legumes */
  readonly wantsMoreLater: boolean;
  /** about right with less than its need: what it still wants it gets, or it wants little; else null */
  readonly lackIsPast: 'gets the rest' | 'wants little' | null;
  /** past the strong line of its class as well */
  readonly strongly: boolean;
  /** fruit: highest nitrate forecast round first flower [mg/kg]; else null */
  readonly flowerNitrate: number | null;
  /** total N of greens laid this season, with what compost and the like free of theirs [g per m2 of bed] */
  readonly laidThisSeason: number;
}

export type Weight = 'note' | 'caution' | 'stop';

export const cautionKinds = [
  'layer depth',
  'all cover',
  'too soon',
  'room',
  'over-feeding',
  'season total',
  'enough',
  'legume',
  'short',
  'tied up',
  'washing out',
  'seedlings',
  'cold soil',
  'seed fly',
  'slugs',
  'sour mat',
  'dry soil',
  'ammonia under glass',
  'frost',
  'frost kill',
  'runners',
  'seed heads',
  'compost phosphorus',
  'treated lawn',
  'treated source',
  'raw manure',
  'fouled',
  'salad nitrate',
  'share over one',
  'overdue',
  'outside validity',
  'safety',
] as const;
export type CautionKind = (typeof cautionKinds)[number];

/**
 * One caution. The sentence is made in `app/words` from these facts; `detail` carries what the
 * sentence needs besides number and threshold (a lawn's name, a crop id).
 */
export interface Caution {
  readonly kind: CautionKind;
  readonly weight: Weight;
  readonly number: number | null;
  readonly threshold: number | null;
  readonly unit: string;
  /** key of `app/tables/thresholds.ts` */
  readonly row: string;
  readonly date: DayNumber | null;
  readonly detail: Readonly<Record<string, string | number>>;
  /** application it concerns, else null */
  readonly layerId: string | null;
}
