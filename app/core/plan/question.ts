import type { DayNumber } from '../days';
import type { BedQuestion } from '../season/bedAnswer';
import type { LayerFacts } from '../season/cautions/facts';
import type { Condition, ExcessClass, LayerInput } from '../season/input';
import type { Limits } from '../season/limits';
import type { Caution } from '../season/verdict';

/** Where something that could be laid comes from. */
export type PlanSourceRef =
  /** cut and waiting */
  | { readonly source: 'mowing'; readonly mowingId: string }
  /** expected of a lawn on a day to come, or today before it is mown */
  | { readonly source: 'coming'; readonly lawnId: string; readonly day: DayNumber }
  | { readonly source: 'stock'; readonly stockId: string };

/** What amounts are counted in: the gardener's bucket. Null where the garden has none: litres. */
export interface PlanMeasure {
  readonly containerId: string;
  readonly litres: number;
}

/** A layer that is one millimetre deep: a litre on each square metre. Everything in it is per m2 of bed. */
export type LayerOfOneMillimetre = Omit<LayerInput, 'id' | 'day' | 'placement'>;

/** `feed`: compost, manure and meals, for hungry beds alone and only today: they keep. */
export type PlanRole = 'greens' | 'browns' | 'feed';

/** Something that could be laid, and how much of it there is. */
export interface PlanSource {
  /** `mowing M`, `coming LAWN DAY`, `stock S`: unique in a question, what pins point at */
  readonly id: string;
  readonly ref: PlanSourceRef;
  readonly role: PlanRole;
  /** the one day on which it can be laid; null: any day of the plan */
  readonly day: DayNumber | null;
  /** the lawn it was or will be mown from */
  readonly lawnId: string | null;
  readonly litres: number;
  readonly condition: Condition;
  readonly oneMillimetre: LayerOfOneMillimetre;
  readonly facts: LayerFacts;
  /** amounts are whole multiples of this: half a bucket, or 5 L [L] */
  readonly stepLitres: number;
  readonly measure: PlanMeasure | null;
  /** soaked grass cannot be wilted or dried until it has dried off */
  readonly isSoaked: boolean;
  /** what keeps it from all beds that are eaten from */
  readonly heldBack: Caution | null;
}

export interface PlanBed {
  readonly bedId: string;
  readonly question: BedQuestion;
  /** walk from the gate [steps]; null: not said, and taken as the mean of those that are */
  readonly steps: number | null;
  /** something was laid there today already: that walk counts among the day's */
  readonly isWalkedToday?: boolean;
}

/** How high the grass stands at a glance, before it is mown. */
export const grassHeights = ['hardly grown', 'usual', 'ankle'] as const;
export type GrassHeight = (typeof grassHeights)[number];

/** A lawn and when it is mown next. */
export interface PlanLawn {
  readonly lawnId: string;
  readonly areaM2: number;
  /** the next mowing: today where nothing cut today lies waiting */
  readonly mowsOn: DayNumber;
  /** source of that mowing in `sources`; null where nothing is expected */
  readonly sourceId: string | null;
  /** expected of it with its range, glance included [L] */
  readonly expectedLitres: {
    readonly low: number;
    readonly typical: number;
    readonly high: number;
  };
  /** what the lawn's clippings are collected in */
  readonly bag: PlanMeasure | null;
  readonly heldBack: Caution | null;
}

/** "None here" (`litres` 0, `sourceId` null: of anything), "exactly this". This week's layers only. */
export interface PlanPin {
  readonly bedId: string;
  /** null: every source */
  readonly sourceId: string | null;
  readonly litres: number;
}

/** What the person asked for. */
export interface PlanWishes {
  readonly pins: readonly PlanPin[];
  /** beds to walk to this week; null: as many as it takes */
  readonly bedsADay: number | null;
  /** by lawn id; absent: usual */
  readonly heights: Readonly<Record<string, GrassHeight>>;
}

export const usualWishes: PlanWishes = { pins: [], bedsADay: 3, heights: {} };

/** How a bed's distance from what is wanted is weighed. Rows with standing: `app/tables/planning.ts`. */
export interface PlanWeights {
  /** supply under this share of the need is too little, over the other too much */
  readonly lowShare: number;
  readonly highShare: number;
  /** share of the need by which a supply may turn out lower or higher than the likely */
  readonly supplyDiffers: number;
  /** what a gram too much counts against a gram too little */
  readonly excess: Readonly<Record<ExcessClass, number>>;
  readonly excessEmpty: number;
  /** g N that a square metre of bare ground counts as */
  readonly groundGrams: number;
  /** how much what is short, and bare, counts as if nothing came after today 0-1 */
  readonly inHand: number;
  /** of what lawns are expected to give on later days, counted on 0-1 */
  readonly sureOfComing: number;
  readonly heapCarbonToNitrogen: number;
  /** share of the mowings of so many weeks that is to be mixed with leaves on the heap 0-1 */
  readonly heapShare: number;
  readonly keptWeeks: number;
  /** and the most of a store of leaves that is kept for it 0-1 */
  readonly keptMost: number;
  /** depth at which clippings are spread out to dry [mm] */
  readonly spreadMillimetres: number;
}

/** Everything the weekly plan is made from. Plain data: it may cross to a worker. */
export interface PlanQuestion {
  readonly today: DayNumber;
  /** days on which something may be laid: today, then once a week; rising */
  readonly days: readonly DayNumber[];
  readonly beds: readonly PlanBed[];
  readonly sources: readonly PlanSource[];
  readonly lawns: readonly PlanLawn[];
  /** there is a heap to take what is left */
  readonly heapStockId: string | null;
  /** a bag to count leaves in [L], for the heap */
  readonly leafBagLitres: number | null;
  readonly wishes: PlanWishes;
  readonly limits: Limits;
  readonly weights: PlanWeights;
}
