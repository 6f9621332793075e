import type { MixtureFailure } from '../core/cover/mix';
import { assertNever } from '../core/result';

/** The one catalogue of failures in words: every kind has a sentence, and a forgotten kind does not compile. */
export { amountFailureSentence, dayFailureSentence } from './amountMessages';
export {
  faultPhrase,
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
  | { readonly kind: 'goes-on' }
  | { readonly kind: 'no-more-record' }
  | { readonly kind: 'label-forbids'; readonly source: string };

/** What was not changed, why, and what to do; the garden is as it was. */
export function editFailureSentence(failure: EditTrouble): string {
  switch (failure.kind) {
    case 'no-garden':
      return 'No garden is open. Open one or start one first.';
    case 'missing':
      return `The ${failure.what} is no longer in the garden. Nothing was changed.`;
    case 'broken':
      return `That cannot be kept: at ${failure.where}: ${failure.what}. Nothing was changed.`;
    case 'in-use':
      return `It is still used by ${failure.by}. Delete or change those first. Nothing was changed.`;
    case 'goes-on':
      return 'It stood there before the bed was split or joined. Say when it was cleared instead. Nothing was changed.';
    case 'no-more-record':
      return 'The record that came with this garden has no further days. Nothing was changed.';
    case 'label-forbids':
      return `The label of what was put on ${failure.source} forbids using its clippings, on the heap as well. Leave them on the lawn. Nothing was changed.`;
    default:
      return assertNever(failure);
  }
}

/** Why a mixture has no answer. `names` are the parts in the order they were given. */
export function mixtureFailureSentence(failure: MixtureFailure, names: readonly string[]): string {
  const part = 'share' in failure ? (names[failure.share] ?? 'the wanted mixture') : '';
  switch (failure.kind) {
    case 'empty-mixture':
      return 'There is nothing in the mixture yet. Say how much of at least one material.';
    case 'not-a-mass':
      return `The amount of ${part} is not a weight. Type how much there is.`;
    case 'not-a-fraction':
      return `Water, carbon and nitrogen of ${part} must lie between 0 and 100 per cent. Check its row.`;
    case 'no-nitrogen':
      return 'There is no nitrogen in this mixture, so it has no ratio. Add something green.';
    case 'out-of-reach':
      return 'No amount of the second material brings the mixture there. Choose a goal between the two, or another material.';
    default:
      return assertNever(failure);
  }
}
