import type { DayNumber } from '../core/days';
import type {
  BedAnswer,
  BedQuestion,
  ProposalAnswer,
  ProposalQuestion,
} from '../core/season/bedAnswer';
import type { BedSeason } from '../core/season/input';
import type { Limits } from '../core/season/limits';
import type { NitrogenState } from '../core/season/verdict';

/** What the worker can be asked. Questions of one kind replace each other: the newest wins. */
export type Question =
  | { readonly kind: 'beds'; readonly beds: readonly BedQuestion[]; readonly limits: Limits }
  /** `proposal`: while it is being thought of; `check`: once, before it is taken */
  | {
      readonly kind: 'proposal' | 'check';
      readonly beds: readonly ProposalQuestion[];
      readonly limits: Limits;
    }
  /** the bed as it was known on each of its weeks, earliest first; `today` of each is its day */
  | { readonly kind: 'history'; readonly weeks: readonly BedSeason[]; readonly limits: Limits };

export type QuestionKind = Question['kind'];

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
}

/** Over the wire to the worker, and back. An error goes as its text, since not every engine clones one. */
export interface Asked {
  readonly id: number;
  readonly question: Question;
}
export type Replied =
  | { readonly id: number; readonly ok: true; readonly answer: Answers[QuestionKind] }
  | { readonly id: number; readonly ok: false; readonly reason: string };

/** How a question ended. `superseded`: a newer one of its kind was asked, its answer is of no use. */
export type Settled<Answer> =
  | { readonly state: 'answered'; readonly answer: Answer }
  | { readonly state: 'superseded' }
  | { readonly state: 'failed'; readonly reason: string };

export type QuestionOf<Kind extends QuestionKind> = Question & { readonly kind: Kind };

/** Where questions go: a worker, or this very thread. */
export interface Engine {
  /** never rejects */
  ask<Kind extends QuestionKind>(question: QuestionOf<Kind>): Promise<Settled<Answers[Kind]>>;
  /** settles what is open as superseded and lets the worker go */
  stop(): void;
}
