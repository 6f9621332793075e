import type { UnitSet } from '../amounts/unitSystem';
import type { ThresholdBasis } from '../core/season/limits';
import type { Caution } from '../core/season/verdict';
import { cautionSentence } from './cautionSentences';
import { cautionReason } from './cautionReasons';
import { insteadWords } from './insteadWords';
import { sourceLine } from './sourceLine';

export interface CautionWords {
  /** number and reason, one line */
  readonly says: string;
  /** what to do instead, one line; '' where there is nothing to say */
  readonly instead: string;
  /** the reason in plain words, where the line itself has no room for it; '' elsewhere */
  readonly why: string;
  /** where the line comes from and how it stands */
  readonly source: string;
}

/**
 * A caution in words.
 *
 * @param basis the caution's row of the threshold table (`basisOf` in `app/tables/thresholds.ts`)
 */
export const cautionWords = (
  caution: Caution,
  basis: ThresholdBasis,
  units: UnitSet,
): CautionWords => ({
  says: cautionSentence(caution, units),
  why: cautionReason(caution),
  instead: insteadWords(caution, basis.instead, units),
  source: sourceLine(basis),
});

/** When there is nothing to say against a layer. It is never called more than that. */
export const nothingHeldBack = 'No reason was found to hold it back.';

/** When a bed as it is gives no reason for a caution: nothing is being laid that could be held back. */
export const nothingToRemark = 'Nothing was found that asks for a caution today.';
