import { dayOf, textFromDay } from '../core/days';
import type { Treatment } from '../document/schema';
import type { Shown } from './shown';

/** What is known of what was put on a lawn or a thing brought in, in one line. */
export function treatedWords(treatment: Treatment, shown: Shown): string {
  switch (treatment.answer) {
    case 'not asked':
      return 'Nobody has said yet whether weedkiller, lawn feed or the like was put on it.';
    case 'nothing':
      return 'No weedkiller, feed or the like was put on it.';
    case 'unknown':
      return treatment.beanTestPassed
        ? `Whether weedkiller or feed was put on it is not known; a bean-pot test passed on ${shown.dayWord(treatment.beanTestPassed)}.`
        : 'Whether weedkiller or feed was put on it is not known: not on beds you eat from.';
    case 'treated': {
      const what = treatment.product || 'something';
      const when = treatment.date
        ? ` on ${shown.dayWord(treatment.date)} ${treatment.date.slice(0, 4)}`
        : '';
      const says =
        treatment.label === 'forbids'
          ? 'the label forbids using clippings: leave them lying.'
          : treatment.label === 'interval'
            ? `the label says to wait ${treatment.intervalDays ?? 0} days${waitedOut(treatment, shown)}.`
            : `no label tells what to do with clippings${treatment.beanTestPassed ? `; a bean-pot test passed on ${shown.dayWord(treatment.beanTestPassed)}` : ''}.`;
      return `Treated${when} (${what}): ${says}`;
    }
  }
}

/** ", till 1 June", where the day it was put on is known. */
const waitedOut = ({ date, intervalDays }: Treatment, shown: Shown): string =>
  date && intervalDays
    ? `, till ${shown.dayWord(textFromDay(dayOf(date) + Math.ceil(intervalDays)))}`
    : '';

/** What the label says in its own words, where they were typed: a whole paragraph at most. */
export const labelInItsWords = ({ labelWords }: Treatment): string | null =>
  labelWords ? `The label’s words: “${labelWords}”` : null;
