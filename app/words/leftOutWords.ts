import type { LeftOut } from '../document/leftOut';

/** What is passed over in a bed's sums, why, and what to do where that was not meant. */
export function leftOutSentence(
  one: LeftOut,
  bedName: string,
  dayWord: (day: number) => string,
): string {
  switch (one.kind) {
    case 'test of the same day':
      return `Two soil tests of “${bedName}” are of ${dayWord(one.day)}: the one written down last counts. Delete the other, or change its day.`;
    case 'before it was known': {
      const entries = one.count === 1 ? 'One entry of' : `${String(one.count)} entries of`;
      return `${entries} “${bedName}” from before ${dayWord(one.since)} stay out of its sums, which begin on that day. Give “Known since” an earlier day, or none.`;
    }
    case 'not known yet':
      return `“${bedName}” is known from ${dayWord(one.since)} on, a day to come: till then its sums begin with its first entries. Change “Known since” if it was not meant.`;
  }
}
