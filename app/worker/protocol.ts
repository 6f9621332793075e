import type { DayNumber } from '../core/days';
import type { PairedAnswer, PairedQuestion } from '../core/plan/pairedDraws';
import type {
  BedAnswer,
  BedQuestion,
  ProposalAnswer,
  ProposalQuestion,
} from '../core/season/bedAnswer';
import type { CarriedAnswer, CarriedQuestions } from '../core/season/draws/carriedRelease';
import type { NextSeasonRange } from '../core/season/draws/nextSeasonDraws';
import type { DrawsAnswer, DrawsQuestion } from '../core/season/draws/runDraws';
import type { BedSeason } from '../core/season/input';
import type { Limits } from '../core/season/limits';
import type { NextSeason } from '../core/season/nextSeason';
import type { NitrogenState } from '../core/season/verdict';
import type { WaterAnswer, WaterQuestion } from '../core/season/waterNeeds';

/** What the worker can be asked. Questions of one kind replace each other: the newest wins. */
export type Question =
  | { readonly kind: 'beds'; readonly beds: readonly BedQuestion[]; readonly limits: Limits }
  /**
   * `proposal`: while it is being thought of; `check`: once, before it is taken; `what if`: one bed
   * with this or with that; `ahead`: one bed with what the plan proposes
   */
  | {
      readonly kind: 'proposal' | 'check' | 'what if' | 'ahead';
      readonly beds: readonly ProposalQuestion[];
      readonly limits: Limits;
    }
  /** the bed as it was known on each of its weeks, earliest first; `today` of each is its day */
  | { readonly kind: 'history'; readonly weeks: readonly BedSeason[]; readonly limits: Limits }
  /** when beds are due for water, and what their covers saved */
  | { readonly kind: 'water'; readonly beds: readonly WaterQuestion[]; readonly limits: Limits }
  /** what a bed's seasons leave to the next ones */
  | { readonly kind: 'carried'; readonly carried: CarriedQuestions; readonly limits: Limits }
  /** beds through the season after this one; each run goes to its end */
  | { readonly kind: 'next season'; readonly beds: readonly BedSeason[]; readonly limits: Limits }
  /** the imagined seasons of beds, one bed after the other */
  | { readonly kind: 'draws'; readonly beds: readonly DrawsQuestion[]; readonly limits: Limits }
  /** the same, each gone on with through the season after this one */
  | {
      readonly kind: 'next season draws';
      readonly beds: readonly DrawsQuestion[];
      readonly limits: Limits;
    }
  /** beds without and with layers that are only proposed, in the same imagined seasons */
  | {
      readonly kind: 'proposal draws';
      readonly beds: readonly ProposalDrawsQuestion[];
      readonly limits: Limits;
    }
  /** a bed as it is against others of it, season by season */
  | { readonly kind: 'what if draws'; readonly paired: PairedQuestion; readonly limits: Limits }
  /** beds of the week's plan, each as it is against itself with its line laid */
  | {
      readonly kind: 'plan draws';
      readonly lines: readonly PairedQuestion[];
      readonly limits: Limits;
    };

export type QuestionKind = Question['kind'];

/** Long questions: answered in slices, so that they can be called off and told of while they run. */
const slicedKinds = [
  'draws',
  'next season draws',
  'proposal draws',
  'what if draws',
  'plan draws',
] as const;
export type SlicedKind = (typeof slicedKinds)[number];
export const isSliced = (kind: QuestionKind): kind is SlicedKind =>
  slicedKinds.some((sliced) => sliced === kind);

export interface ProposalDrawsQuestion {
  readonly before: DrawsQuestion;
  readonly after: DrawsQuestion;
}

export interface ProposalDrawsAnswer {
  readonly bedId: string;
  readonly before: DrawsAnswer;
  readonly after: DrawsAnswer;
}

export interface WeekState {
  readonly day: DayNumber;
  readonly nitrogen: NitrogenState;
  readonly ratio: number | null;
}

export interface Answers {
  readonly beds: readonly BedAnswer[];
  readonly proposal: readonly ProposalAnswer[];
  readonly check: readonly ProposalAnswer[];
  readonly history: readonly WeekState[];
  readonly water: readonly WaterAnswer[];
  readonly carried: readonly CarriedAnswer[];
  readonly 'next season': readonly NextSeason[];
  readonly draws: readonly DrawsAnswer[];
  readonly 'next season draws': readonly NextSeasonRange[];
  readonly 'what if': readonly ProposalAnswer[];
  readonly ahead: readonly ProposalAnswer[];
  readonly 'proposal draws': readonly ProposalDrawsAnswer[];
  readonly 'what if draws': PairedAnswer;
  /** in the order of `lines` */
  readonly 'plan draws': readonly PairedAnswer[];
}

/** How far a long question is. */
export interface Progress {
  /** imagined seasons run, of all its beds, and how many it will be; the second may grow */
  readonly done: number;
  readonly of: number;
  /** a bed that has just been finished */
  readonly bed?: DrawsAnswer;
  /** the same of a question about the next season */
  readonly nextSeason?: NextSeasonRange;
}

/** Over the wire to the worker, and back. An error goes as its text, since not every engine clones one. */
export type Asked =
  | { readonly id: number; readonly question: Question }
  /** a sliced question is of no use any more; no reply comes to it */
  | { readonly id: number; readonly stop: true }
  /** to be run while nothing is asked, so that code is fast by then; no reply comes to it */
  | { readonly id: number; readonly warm: QuestionOf<'draws'> };
export type Replied =
  | { readonly id: number; readonly progress: Progress }
  | { readonly id: number; readonly ok: true; readonly answer: Answers[QuestionKind] }
  | { readonly id: number; readonly ok: false; readonly reason: string };

/** How a question ended. `superseded`: a newer one of its kind was asked, its answer is of no use. */
export type Settled<Answer> =
  | { readonly state: 'answered'; readonly answer: Answer }
  | { readonly state: 'superseded' }
  | { readonly state: 'failed'; readonly reason: string };

export type QuestionOf<Kind extends QuestionKind> = Question & { readonly kind: Kind };

export interface AskOptions {
  /** told now and then of a sliced question, never after it has settled */
  readonly onProgress?: (progress: Progress) => void;
  /** aborted, it settles as superseded at once; a sliced question then ends within a slice */
  readonly signal?: AbortSignal;
}

/** Answers nothing: makes what will answer ready for it. */
export interface Warmable {
  /** starts what answers the screen, before anything is asked */
  begin(): void;
  warm(question: QuestionOf<'draws'>): void;
}

/** Where questions go: a worker, or this very thread. */
export interface Engine {
  /** never rejects */
  ask<Kind extends QuestionKind>(
    question: QuestionOf<Kind>,
    options?: AskOptions,
  ): Promise<Settled<Answers[Kind]>>;
  /** settles what is open as superseded and lets the worker go */
  stop(): void;
}
