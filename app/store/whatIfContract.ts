import type { PairedOdds } from '../core/plan/pairedDraws';
import type { ProposalAnswer } from '../core/season/bedAnswer';
import type { LayingDraft, WorkState } from './contract';

/** A layer that is only thought of; its day may lie ahead. */
export interface WhatIfDraft {
  /** tells it from the other alternatives of its bed */
  readonly key: string;
  readonly draft: LayingDraft;
}

/** Alternatives in the same imagined seasons as the bed as it is. */
export interface WhatIfDraws {
  /** `idle`: nothing to run, or stopped */
  readonly state: WorkState;
  readonly done: number;
  readonly of: number;
  /** why it failed, in the engine's words, for a "why" line */
  readonly reason: string | null;
  /** by key of the alternative; of `drafts` as they are now */
  readonly odds: Readonly<Record<string, PairedOdds>>;
  /** imagined seasons behind `odds`, and what they are worth once weighed */
  readonly count: number;
  readonly effectiveCount: number;
}

/** A bed with this or with that laid on it. In no file and in no history. */
export interface WhatIf {
  readonly bedId: string;
  readonly drafts: readonly WhatIfDraft[];
  readonly state: WorkState;
  readonly reason: string | null;
  /** by key; the last good answer stays while `working` */
  readonly likely: Readonly<Record<string, ProposalAnswer>>;
  readonly draws: WhatIfDraws;
}

export interface WhatIfSlice {
  /** null: no bed is being thought about */
  readonly whatIf: WhatIf | null;
  /** weighs these alternatives of a bed, after a short pause in typing; none: forgets them */
  weighWhatIf(bedId: string, drafts: readonly WhatIfDraft[]): void;
  /** stops the imagined seasons under way; the likely course stays */
  stopWhatIf(): void;
  /** runs the imagined seasons that were stopped, or did not come out */
  resumeWhatIf(): void;
}
