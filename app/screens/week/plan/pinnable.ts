import type { PlanAnswer, SourceAccount } from '../../../core/plan/answer';

/** What can be laid today by hand: cut and waiting, or in store, and not held back. */
export const pinnable = ({ sources }: Pick<PlanAnswer, 'sources'>): readonly SourceAccount[] =>
  sources.filter(
    ({ ref, was, heldBack }) =>
      ref.source !== 'coming' && was.litres > 0 && heldBack?.weight !== 'stop',
  );
