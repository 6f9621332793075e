import { join } from 'node:path';
import { dayFromText, textFromDay, type DayNumber } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { bedQuestion } from '../../app/document/bedQuestion';
import type { Garden } from '../../app/document/schema';
import { limits } from '../../app/tables/thresholds';
import { footLines } from '../../app/words/safetyLines';
import { exitCodes } from './exitCodes';
import { fileSentence } from './fileSentence';
import { readGarden } from './gardenFile';
import { bedAsJson } from './ledgerJson';
import { bedAsText, gardenAsText } from './ledgerText';

export interface LedgerWishes {
  /** null: the sample garden */
  readonly file: string | null;
  readonly json: boolean;
  readonly bed: string | null;
}

/** Where answers and complaints go; two functions, so that tests can listen. */
export interface Voice {
  readonly answer: (text: string) => void;
  readonly complain: (sentence: string) => void;
}

/** Reads the words after `ledger`; a sentence when they make no sense. */
export function ledgerWishes(words: readonly string[]): LedgerWishes | string {
  let file: string | null = null;
  let json = false;
  let bed: string | null = null;
  for (let at = 0; at < words.length; at++) {
    const word = words[at]!;
    if (word === '--json') json = true;
    else if (word === '--bed') {
      const name = words[++at];
      if (name === undefined) return '"--bed" wants the name of a bed after it.';
      bed = name;
    } else if (word.startsWith('--'))
      return `"${word}" is not known here. There are --json and --bed NAME.`;
    else if (file !== null) return `Only one garden at a time: "${file}" or "${word}".`;
    else file = word;
  }
  return { file, json, bed };
}

/** The garden's own day, else the computer's civil day. */
export function dayOfGarden(garden: Garden, now: Date): DayNumber {
  const own = garden.garden.today;
  const two = (value: number): string => String(value).padStart(2, '0');
  const text = own ?? `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const day = dayFromText(text);
  if (day === null) throw new Error(`Not a day: ${text}`);
  return day;
}

/**
 * `ledger [FILE] [--json] [--bed NAME]`: each bed's states, ledger and cautions.
 *
 * @param folder the caller's folder, against which FILE is resolved
 * @param program the program's own folder, where the sample garden is
 * @returns the exit code
 */
export function ledger(
  words: readonly string[],
  folder: string,
  program: string,
  about: { readonly name: string; readonly version: string },
  voice: Voice,
): number {
  const wishes = ledgerWishes(words);
  if (typeof wishes === 'string') {
    voice.complain(wishes);
    return exitCodes.usage;
  }
  const read = readGarden(wishes.file ?? join(program, 'assets/gardens/sample.mowings'), folder);
  if (!read.ok) {
    voice.complain(fileSentence(read.error));
    return read.error.kind === 'refused' ? exitCodes.garden : exitCodes.file;
  }
  const garden = read.value;
  const wanted = wishes.bed?.trim().toLocaleLowerCase();
  const beds = garden.beds.filter(
    ({ name }) => wanted === undefined || name.toLocaleLowerCase() === wanted,
  );
  if (wanted !== undefined && beds.length === 0) {
    const names = garden.beds.map(({ name }) => name).join(', ');
    voice.complain(
      `"${garden.garden.name}" has no bed called "${wishes.bed}". Its beds are: ${names || 'none yet'}.`,
    );
    return exitCodes.bed;
  }
  const today = dayOfGarden(garden, new Date());
  const answers = beds.map((bed) => ({
    bed,
    answer: answerBed(bedQuestion(garden, bed.id, today), limits),
  }));
  if (wishes.json) {
    voice.answer(
      `${JSON.stringify({
        program: about,
        garden: garden.garden.name,
        today: textFromDay(today),
        beds: answers.map(({ bed, answer }) => bedAsJson(garden, bed, answer)),
      })}\n`,
    );
    return exitCodes.done;
  }
  voice.answer(
    [
      gardenAsText(garden, today),
      ...answers.map(({ bed, answer }) => bedAsText(garden, bed, answer)),
      ...footLines,
      '',
    ].join('\n'),
  );
  return exitCodes.done;
}
