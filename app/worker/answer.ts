import { assertNever } from '../core/result';
import { answerBed, answerProposal } from '../core/season/bedAnswer';
import { answerCarried } from '../core/season/draws/carriedRelease';
import { nextSeason } from '../core/season/nextSeason';
import { runSeason } from '../core/season/season';
import { bedVerdict } from '../core/season/state';
import { waterNeeds } from '../core/season/waterNeeds';
import type { NitrogenState } from '../core/season/verdict';
import type { Answers, Question, QuestionOf, SlicedKind } from './protocol';

/** A question that is answered on the spot. */
export type ShortQuestion = Exclude<Question, { readonly kind: SlicedKind }>;

function history({ weeks, limits }: QuestionOf<'history'>): Answers['history'] {
  let previous: NitrogenState | null = null;
  return weeks.map((input) => {
    const verdict = bedVerdict(input, runSeason(input), input.today, limits, previous);
    previous = verdict.state;
    return { day: input.today, nitrogen: verdict.state, ratio: verdict.ratio };
  });
}

/** Answers a question, in whatever thread. Throws on a broken promise of ours. */
export function answer(question: ShortQuestion): Answers[ShortQuestion['kind']] {
  switch (question.kind) {
    case 'beds':
      return question.beds.map((bed) => answerBed(bed, question.limits));
    case 'proposal':
    case 'check':
    case 'what if':
    case 'ahead':
      return question.beds.map((bed) => answerProposal(bed, question.limits));
    case 'history':
      return history(question);
    case 'water':
      return question.beds.map(waterNeeds);
    case 'carried':
      return answerCarried(question.carried);
    case 'next season':
      return question.beds.map(nextSeason);
    default:
      return assertNever(question);
  }
}

export const reasonOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);
