import type { PlanAnswer } from '../core/plan/answer';

/** Names of what beds wait for because nobody has said yet what was put on it, each once. */
export const unaskedSources = ({ leftOut }: Pick<PlanAnswer, 'leftOut'>): readonly string[] => [
  ...new Set(
    leftOut.flatMap(({ reason }) =>
      reason.kind === 'caution' && reason.caution.row === 'not asked'
        ? [String(reason.caution.detail['source'])]
        : [],
    ),
  ),
];
