import type { AmountFailure } from '../amounts/amount';
import type { Result } from '../core/result';
import { amountFailureSentence } from '../words/messages';
import type { Trouble } from './Field';

/** What is wrong with an amount that cannot be read, as its field says it; null where nothing is. */
export const amountTrouble = (reading: Result<unknown, AmountFailure>): Trouble | null =>
  reading.ok
    ? null
    : { sentence: amountFailureSentence(reading.error), suggestion: reading.error.suggestion };
