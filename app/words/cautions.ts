import type { UnitSet } from '../amounts/unitSystem';
import type { ThresholdBasis } from '../core/season/limits';
import type { Caution } from '../core/season/verdict';
import { cautionSentence } from './cautionSentences';
import { insteadWords } from './insteadWords';
import { sourceLine } from './sourceLine';

export interface CautionWords {
  /** number and reason, one line */
  readonly says: string;
  /** what to do instead, one line; '' where there is nothing to say */
  readonly instead: string;
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
  instead: insteadWords(caution, basis.instead, units),
  source: sourceLine(basis),
});

/** When there is nothing to say against a layer or a bed. It is never called more than that. */
export const nothingHeldBack = 'No reason was found to hold it back.';
