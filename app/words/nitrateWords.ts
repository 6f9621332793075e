import type { NitrateFailure } from '../amounts/readNitrate';
import { assertNever } from '../core/result';

const takes = 'A soil laboratory gives ppm, mg/kg, lb per acre or kg per hectare.';

/** Why a soil test's nitrate was not taken, and what to type instead. */
export function nitrateFailureSentence(failure: NitrateFailure): string {
  switch (failure.kind) {
    case 'empty':
      return `Nothing is typed yet. ${takes}`;
    case 'too long':
      return `That is longer than ${failure.limit} characters. Keep the number here and put the rest in a note.`;
    case 'no number':
      return `No number stands at the start of that. ${takes}`;
    case 'no unit':
      return `A number alone does not say of what. ${takes}`;
    case 'unknown unit':
      return `\u201C${failure.word.slice(0, 40)}\u201D is no unit of a soil test here. ${takes}`;
    case 'negative':
      return 'Nitrate cannot be below nought. Leave the minus sign out.';
    case 'too large':
      return `That is more than ${failure.limit}, which no garden soil holds. Check the point and the unit.`;
    default:
      return assertNever(failure);
  }
}
