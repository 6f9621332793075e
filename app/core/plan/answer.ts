import type { DayNumber } from '../days';
import type { Condition, Placement } from '../season/input';
import type { Caution, CoverState, NitrogenState } from '../season/verdict';
import type { PlanMeasure, PlanRole, PlanSourceRef } from './question';

/** An amount of one source. Sums of litres, kilograms and grams add up exactly over where it goes. */
export interface PlanAmount {
  readonly litres: number;
  /** in the gardener's own bucket, in halves; null: litres */
  readonly counted: { readonly containerId: string; readonly count: number } | null;
  readonly freshKilograms: number;
  readonly dryKilograms: number;
  readonly nitrogenGrams: number;
}

/** One material on one bed on one day. */
export interface PlanLayer {
  /** id under which it was run by the full model */
  readonly layerId: string;
  readonly sourceId: string;
  readonly ref: PlanSourceRef;
  readonly day: DayNumber;
  readonly condition: Condition;
  readonly placement: Placement;
  readonly amount: PlanAmount;
  /** as laid */
  readonly depthMillimetres: number;
  readonly isPinned: boolean;
}

/**
 * What a bed wants and gets to the clearing of what grows there, g N per m2, and how its ground is
 * covered, by the full model. `supply` is the numerator of the ratio behind the bed's state.
 */
export interface BedStanding {
  readonly state: NitrogenState;
  readonly coverState: CoverState;
  /** null: nothing planted */
  readonly ratio: number | null;
  readonly need: number;
  readonly supply: number;
  /** share of the ground that is hidden on the evening of the plan's first day 0-1 */
  readonly covered: number;
  /** share of what is still wanted that the forecast meets 0-1 */
  readonly forecastMet: number;
  /** first day on which the crop goes short; null when it does not within four weeks */
  readonly shortOn: DayNumber | null;
  /** greens the bed has room for, g total N per m2; null for legumes and empty beds */
  readonly room: number | null;
  /** nitrogen that legumes will have fixed by their end; 0 without legumes */
  readonly fixed: number;
  /** model 11, g N: nitrogen part and ground part, area included */
  readonly distance: Distance;
}

export interface Distance {
  readonly nitrogen: number;
  readonly ground: number;
}

/** Why a bed gets something. */
export type PlanReason =
  /** hungry: short now or before clearing */
  | 'hungry'
  /** its ground is bare or thin */
  | 'bare ground'
  | 'hungry and bare'
  /** browns hold back some of what it has too much of */
  | 'too much'
  /** the gardener said so */
  | 'pinned';

/** What keeps a bed from getting more this week. */
export type PlanLimit =
  /** the layer would pass its caution line [mm] */
  | { readonly kind: 'layer depth'; readonly millimetres: number }
  | { readonly kind: 'all cover'; readonly millimetres: number }
  /** the crop has enough then: room in g total N per m2 before the plan */
  | { readonly kind: 'room'; readonly grams: number }
  /** total N laid in the season [g/m2] */
  | { readonly kind: 'season total'; readonly grams: number }
  /** legumes would fix that share less */
  | { readonly kind: 'legume'; readonly share: number }
  /** nitrogen with nobody to take it [g/m2] */
  | { readonly kind: 'empty bed'; readonly grams: number }
  /** a caution that more would raise */
  | { readonly kind: 'caution'; readonly caution: Caution }
  /** all there is has gone */
  | { readonly kind: 'all used'; readonly sourceId: string }
  /** the rest is kept to be mixed with the coming weeks' grass [L] */
  | { readonly kind: 'kept to mix'; readonly sourceId: string; readonly litres: number }
  /** more would do more good elsewhere or in a later week */
  | { readonly kind: 'better elsewhere' }
  | { readonly kind: 'pinned' };

/** One thing that would make the answer another, worked out by the full model. */
export type PlanTurn =
  /** worked into the top: the crop gets that much more, g N per m2 by clearing */
  | { readonly kind: 'hoed in'; readonly supplyGain: number }
  /** a soil test with more nitrate than this in 0-30 cm would make it none [mg/kg] */
  | { readonly kind: 'nitrate test'; readonly mgPerKg: number };

/** Imagined seasons in which a bed ends nearer to what it wants with a line's layers than without. */
export interface PlanOdds {
  /** whole seasons, 0 to `of`; what is neither is as good as alike */
  readonly better: number;
  readonly worse: number;
  readonly of: number;
}

export interface PlanLine {
  readonly bedId: string;
  readonly layers: readonly PlanLayer[];
  /** reckoned after the plan is shown; null until then */
  readonly odds: PlanOdds | null;
  readonly why: {
    readonly reason: PlanReason;
    readonly before: BedStanding;
    /** with this week's layers alone */
    readonly after: BedStanding;
    /** with this week's and the coming weeks' layers */
    readonly afterAll: BedStanding;
    /** supply after this week's layers as the programme reckoned it, g N per m2: compare `after.supply` */
    readonly programmeSupply: number;
    /** distance the line takes away, g N: its worth */
    readonly worth: number;
    readonly limit: PlanLimit;
    readonly turns: readonly PlanTurn[];
  };
  /** what speaks against the layers all the same: notes, and more only where pinned */
  readonly cautions: readonly Caution[];
}

/** Why a bed gets nothing this week. */
export type LeftOutReason =
  /** something stops greens and browns alike, or the only thing on hand */
  | { readonly kind: 'caution'; readonly caution: Caution }
  | { readonly kind: 'pinned' }
  /** enough nitrogen, ground covered */
  | { readonly kind: 'enough' }
  /** enough nitrogen; what lies bare wants browns, and there are none to spare */
  | { readonly kind: 'only browns' }
  /** it would gain, but three beds are enough for a day; worth in g N */
  | { readonly kind: 'beds a day'; readonly worth: number }
  | { readonly kind: 'better elsewhere' }
  | { readonly kind: 'nothing on hand' };

export interface BedLeftOut {
  readonly bedId: string;
  readonly reason: LeftOutReason;
  /** first day on which that changes, where it is known */
  readonly from: DayNumber | null;
  readonly standing: BedStanding;
}

/** One place for what is left of a source. */
export type RestPlace =
  /** spread thinly where it was mown, or not collected at all */
  | { readonly to: 'lawn'; readonly millimetres: number }
  | {
      readonly to: 'heap';
      readonly stockId: string | null;
      /** to go with it, for a heap of that C:N; null: no leaves known */
      readonly leaves: {
        readonly sourceId: string | null;
        readonly litres: number;
        readonly bags: number | null;
        /** there are so many on hand */
        readonly litresOnHand: number;
        readonly carbonToNitrogen: number;
      } | null;
    }
  /** spread out until it rustles, then kept; not while it is soaked */
  | { readonly to: 'dry and store'; readonly millimetresSpread: number };

export interface RestChoice {
  readonly place: RestPlace;
  /** why it cannot be now; null: it can */
  readonly not: 'already collected' | 'soaked' | 'no heap' | 'treated' | null;
}

/** Where all of a source goes: laid this week + rest = there was, to the last gram. */
export interface SourceAccount {
  readonly sourceId: string;
  readonly ref: PlanSourceRef;
  readonly role: PlanRole;
  readonly was: PlanAmount;
  readonly laid: PlanAmount;
  readonly rest: PlanAmount;
  /** of the rest, leaves kept to be mixed with the coming weeks' grass; null: nothing is kept back */
  readonly kept: PlanAmount | null;
  /** greens: best first, of those possible the first is proposed; empty for browns, which keep */
  readonly choices: readonly RestChoice[];
  readonly heldBack: Caution | null;
}

/** What is expected to be laid in a coming week; recomputed when that week is there. */
export interface ComingLayer {
  readonly day: DayNumber;
  readonly bedId: string;
  readonly sourceId: string;
  readonly ref: PlanSourceRef;
  readonly amount: PlanAmount;
  readonly depthMillimetres: number;
}

/** The whole garden's distance, g N, by the full model; the smaller the better. */
export interface PlanEffects {
  readonly doNothing: Distance;
  /** this week's layers */
  readonly plan: Distance;
  /** this week's and the coming weeks' */
  readonly planToEnd: Distance;
  /** everything cut this week on the nearest bed it may go on; the cautions it would raise */
  readonly allOnNearest: Distance & {
    readonly bedId: string | null;
    readonly cautions: readonly Caution[];
  };
}

/** Something that makes an over-fed bed better; each with what it buys. */
export type MendMove =
  | {
      readonly kind: 'rake and carry';
      readonly fromBedId: string;
      /** null: to the heap */
      readonly toBedId: string | null;
      /** share of all that lies there, the layer laid last */
      readonly share: number;
      readonly laidOn: DayNumber;
      readonly dryKilograms: number;
      readonly nitrogenGrams: number;
      readonly from: { readonly before: BedStanding; readonly after: BedStanding };
      readonly to: { readonly before: BedStanding; readonly after: BedStanding } | null;
      /** distance taken away, g N */
      readonly worth: number;
    }
  | {
      readonly kind: 'hungry neighbour';
      readonly bedId: string;
      /** nitrogen in reach or to come beyond what the crop can use, for another to take [g/m2] */
      readonly surplus: number;
    }
  | {
      readonly kind: 'browns from now on';
      readonly bedId: string;
      readonly coverState: CoverState;
      /** what a layer of browns on hand would buy today; null: none to spare, or the plan lays some */
      readonly buys: {
        readonly sourceId: string;
        readonly ref: PlanSourceRef;
        readonly amount: PlanAmount;
        readonly depthMillimetres: number;
        readonly before: BedStanding;
        readonly after: BedStanding;
        /** distance taken away, g N */
        readonly worth: number;
      } | null;
    };

/** What to collect of the next mowing. */
export interface MowAdvice {
  readonly lawnId: string;
  readonly mowsOn: DayNumber;
  readonly expectedLitres: {
    readonly low: number;
    readonly typical: number;
    readonly high: number;
  };
  readonly bag: PlanMeasure | null;
  /** to collect: whole bags, or litres where there is no bag; 0: leave it lying */
  readonly collect: PlanAmount & { readonly bags: number | null };
  readonly why:
    | { readonly kind: 'held back'; readonly caution: Caution }
    /** beds that will take it */
    | { readonly kind: 'beds'; readonly bedIds: readonly string[] }
    | { readonly kind: 'no bed wants it' }
    /** what is cut and waiting is enough */
    | { readonly kind: 'enough waiting' }
    | { readonly kind: 'nothing expected' };
  /** distance that one bag (10 L without a bag) more would take away, g N */
  readonly worthOfOneMore: number;
}

/** What stops the solver, or the plan. */
export type PlanTrouble =
  | { readonly kind: 'no beds' }
  /** nothing is cut, expected or in store */
  | { readonly kind: 'nothing to lay' }
  /** pins ask for more of a source than there is [L] */
  | {
      readonly kind: 'pinned too much';
      readonly sourceId: string;
      readonly asked: number;
      readonly there: number;
    }
  | { readonly kind: 'pinned unknown'; readonly bedId: string; readonly sourceId: string | null }
  | { readonly kind: 'no solution' }
  | { readonly kind: 'took too long'; readonly seconds: number }
  | { readonly kind: 'solver failed'; readonly reason: string };

export interface PlanAnswer {
  readonly today: DayNumber;
  /** this week's, nearest bed first */
  readonly lines: readonly PlanLine[];
  /** all other beds, nearest first */
  readonly leftOut: readonly BedLeftOut[];
  readonly sources: readonly SourceAccount[];
  readonly coming: readonly ComingLayer[];
  readonly effects: PlanEffects;
  readonly mends: readonly MendMove[];
  readonly mow: readonly MowAdvice[];
  readonly how:
    /** objective of the programme before rounding, and of the same amounts in buckets, g N */
    | { readonly kind: 'solved'; readonly objective: number; readonly rounded: number }
    /** thinnest layer to the hungriest bed first, because of this */
    | { readonly kind: 'simple rule'; readonly because: PlanTrouble };
}
