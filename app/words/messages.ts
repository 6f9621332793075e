import { assertNever } from '../core/result';

/** The one catalogue of failures in words: every kind has a sentence, and a forgotten kind does not compile. */
export { amountFailureSentence, dayFailureSentence } from './amountMessages';
export {
  fileMessageSentence,
  hostSentence,
  parseSentence,
  type FileNews,
  type HostTask,
} from './fileMessages';

/** Why a change was not made, as the store says it. */
export type EditTrouble =
  | { readonly kind: 'no-garden' }
  | { readonly kind: 'missing'; readonly what: string }
  | { readonly kind: 'broken'; readonly where: string; readonly what: string }
  | { readonly kind: 'in-use'; readonly by: string }
  | { readonly kind: 'no-more-record' };

/** What was not changed, why, and what to do; the garden is as it was. */
export function editFailureSentence(failure: EditTrouble): string {
  switch (failure.kind) {
    case 'no-garden':
      return 'No garden is open. Open one or start one first.';
    case 'missing':
      return `The ${failure.what} is no longer in the garden. Nothing was changed.`;
    case 'broken':
      return `That cannot be kept: at ${failure.where}, ${failure.what}. Nothing was changed.`;
    case 'in-use':
      return `It is still used by ${failure.by}. Delete or change those first. Nothing was changed.`;
    case 'no-more-record':
      return 'The record that came with this garden has no further days. Nothing was changed.';
    default:
      return assertNever(failure);
  }
}
