import type { PastedKind, PastedRefusal } from '../amounts/readPasted';
import { assertNever } from '../core/result';
import { amountFailureSentence, dayFailureSentence } from './amountMessages';
import { listed } from './chartFormat';

/** Why a pasted line was left out, and what would mend it. */
export function pastedRefusalSentence(
  refusal: PastedRefusal,
  day: (day: number) => string,
): string {
  switch (refusal.kind) {
    case 'day':
      return dayFailureSentence(refusal.failure);
    case 'ahead':
      return `${day(refusal.day)} lies ahead. Only what has been can be brought in.`;
    case 'long ago':
      return `${day(refusal.day)} lies before 1900. Check the year.`;
    case 'amount':
      return amountFailureSentence(refusal.failure);
    case 'unknown lawn':
      return `There is no lawn called “${refusal.name}”. Known: ${listed(refusal.known)}.`;
    case 'which lawn':
      return `It does not say which lawn. Add a column with ${listed(refusal.known)}.`;
    case 'unknown wetness':
      return `“${refusal.text}” is not said of clippings here. Write soaked, damp or dry, or leave it empty.`;
    case 'two numbers':
      return 'There are several numbers besides the day. Put a line above that names the columns, such as Date and Rain.';
    case 'too few columns':
      return 'It needs a day and an amount, in cells of their own.';
    default:
      return assertNever(refusal);
  }
}

export const pastedWords: Readonly<
  Record<
    PastedKind,
    { readonly title: string; readonly hint: string; readonly noun: [string, string] }
  >
> = {
  mowings: {
    title: 'Mowings from a spreadsheet',
    hint: 'One mowing a line: day, lawn, how much, and if you like soaked, damp or dry. Copy the cells and paste them here. Where it went is asked afterwards, on This week.',
    noun: ['mowing', 'mowings'],
  },
  rain: {
    title: 'Rain from a spreadsheet',
    hint: 'One reading of the gauge a line: day and how much. Copy the cells and paste them here.',
    noun: ['reading', 'readings'],
  },
};

/** "3 of 5 lines can be brought in; 1 is there already; 1 cannot be read." */
export function pastedSummary(counts: {
  readonly lines: number;
  readonly new: number;
  readonly known: number;
  readonly refused: number;
  readonly leftOut: number;
}): string {
  const are = (count: number): string => (count === 1 ? 'is' : 'are');
  return [
    `${String(counts.new)} of ${String(counts.lines)} lines can be brought in`,
    counts.known > 0 ? `${String(counts.known)} ${are(counts.known)} there already` : '',
    counts.refused > 0 ? `${String(counts.refused)} cannot be read` : '',
    counts.leftOut > 0 ? `${String(counts.leftOut)} more were not looked at: paste them next` : '',
  ]
    .filter(Boolean)
    .join('; ')
    .concat('.');
}

/** Of what stays in the field when the rest was brought in. */
export function pastedLeftSentence(refused: number, leftOut: number): string {
  const them = refused === 1 ? 'it' : 'them';
  return [
    refused > 0
      ? `${refused === 1 ? 'The line' : `The ${String(refused)} lines`} that could not be read ${refused === 1 ? 'is' : 'are'} still here: mend ${them}, or leave ${them}.`
      : '',
    leftOut > 0 ? `The ${String(leftOut)} lines not looked at before come next.` : '',
  ]
    .filter(Boolean)
    .join(' ');
}
