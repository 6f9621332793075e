import type { DayNumber } from '../core/days';
import type { BedAnswer } from '../core/season/bedAnswer';
import type { DrawsAnswer } from '../core/season/draws/runDraws';
import type { Caution, NitrogenState } from '../core/season/verdict';
import type { LayingDraft } from './actionsContract';

/**
 * A bed run at typical values: `input` (what the engine was given: areas, layers and plantings per
 * m2, normals, soil), `season`, `verdict`, `cautions` (bed-wide and per layer, strongest first).
 */
export type BedResults = BedAnswer;

export type WorkState = 'idle' | 'working' | 'ready' | 'failed';

/** A proposed laying: the bed with and without it. */
export interface Preview {
  readonly drafts: readonly LayingDraft[];
  readonly state: WorkState;
  readonly reason: string | null;
  /** one per bed that a draft touches; the last good answer stays while `working` */
  readonly beds: readonly PreviewBed[];
}

export interface PreviewBed {
  readonly bedId: string;
  readonly before: BedResults;
  readonly after: BedResults;
  /** of the proposed layers alone; a stop that was passed for this source this season is a caution */
  readonly cautions: readonly Caution[];
  /** ids of the proposed layers in `after`, in the order of the draft's parts */
  readonly layerIds: readonly string[];
  /** the bed without and with the layers in the same imagined seasons; missing until they are run */
  readonly draws?: { readonly before: DrawsAnswer; readonly after: DrawsAnswer };
}

/** A bed over its imagined seasons; odds and bands come with how they were got. */
export interface BedDraws {
  readonly answer: DrawsAnswer;
  /** `quick`: a hundred imagined seasons, while things change; `whole`: a thousand, once nothing does */
  readonly stage: 'quick' | 'whole';
  /** the garden or the day is another since: shown, and said to be of before */
  readonly isBehind: boolean;
}

/** What is being done about the imagined seasons of all beds. */
export interface DrawsWork {
  /** `idle`: nothing to run, or stopped; `ready`: all that was asked for has come */
  readonly state: WorkState;
  /** by `stopDraws`; until `resumeDraws` nothing is run any more */
  readonly isStopped: boolean;
  /** imagined seasons run, of all beds together, and how many it will be */
  readonly done: number;
  readonly of: number;
  /** why it failed, in the engine's words, for a "why" line */
  readonly reason: string | null;
}

/** The state of a bed week by week as it was known then. */
export interface StateHistory {
  readonly bedId: string;
  readonly state: WorkState;
  readonly weeks: readonly {
    readonly day: DayNumber;
    readonly nitrogen: NitrogenState;
    readonly ratio: number | null;
  }[];
}

export interface ResultsSlice {
  readonly work: WorkState;
  /** why it failed, in the engine's words, for a "why" line */
  readonly workReason: string | null;
  /** by bed id; of the last garden that was answered. Beds added since are missing */
  readonly bedResults: Readonly<Record<string, BedResults>>;
  readonly preview: Preview | null;
  readonly history: StateHistory | null;
  /** by bed id; a bed whose imagined seasons have not been run yet is missing */
  readonly draws: Readonly<Record<string, BedDraws>>;
  readonly drawsWork: DrawsWork;
  /** asks for the effect of a proposal, after a short pause in typing; empty: forget it */
  propose(drafts: readonly LayingDraft[]): void;
  /** computes the state history of a bed once; later calls with the same garden do nothing */
  wantHistory(bedId: string): void;
  /** ends the run under way and keeps what is there; no further ones until `resumeDraws` */
  stopDraws(): void;
  resumeDraws(): void;
}
