import type { HostError } from '../host/contract';
import { hostSentence } from './messages';

export const takeAwayKinds = ['svg', 'png', 'csv'] as const;
export type TakeAwayKind = (typeof takeAwayKinds)[number];

/** The choices of a chart's menu. */
export const takeAwayWords = {
  menu: 'Keep a copy',
  svg: 'Drawing, sharp at any size (SVG)',
  png: 'Picture (PNG)',
  csv: 'Numbers, for a spreadsheet (CSV)',
  working: 'Writing it…',
  noPicture:
    'This computer could not draw the picture. Take the drawing instead: most programs open it.',
  replace: 'Replace it',
  both: 'Keep both',
  leave: 'Leave it',
} as const;

/** Where it went. */
export const takenSentence = (name: string, folder: string): string =>
  folder === '' ? `Written as “${name}”.` : `Written as “${name}” in ${folder}.`;

/** A file of that name is there; nothing was written over it. */
export const takenNameSentence = (name: string): string =>
  `“${name}” is already there, from before.`;

/** Why it was not written. */
export const notTakenSentence = (error: HostError): string => hostSentence('take away', error);

/** "Season of Gate bed 2013-06-15": the name of the file without its ending, in the order of days. */
export const takenName = (what: string, date: string): string => `${what} ${date}`;

/** "Season of Gate bed, Saturday 15 June 2013": what stands above the drawing. */
export const takenTitle = (what: string, day: string): string => `${what}, ${day}`;

/** The same name once more: "Season of Gate bed 2013-06-15 (2)". */
export const nameAgain = (name: string, times: number): string => `${name} (${times})`;
