import { join } from 'node:path';
import { dayFromText, textFromDay, type DayNumber } from '../../app/core/days';
import { answerBed, type BedAnswer } from '../../app/core/season/bedAnswer';
import { withOddsOfBed } from '../../app/core/season/cautions/cautions';
import { runDraws, sharedDraws, type DrawsAnswer } from '../../app/core/season/draws/runDraws';
import { bedQuestion } from '../../app/document/bedQuestion';
import { drawsQuestions } from '../../app/document/drawsQuestion';
import type { Bed, Garden } from '../../app/document/schema';
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
  /** imagined seasons of each bed; null: none */
  readonly draws: number | null;
}

/** More would take a long time and say no more. */
const mostDraws = 10_000;

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
  let draws: number | null = null;
  for (let at = 0; at < words.length; at++) {
    const word = words[at]!;
    if (word === '--json') json = true;
    else if (word === '--bed') {
      const name = words[++at];
      if (name === undefined) return '"--bed" wants the name of a bed after it.';
      bed = name;
    } else if (word === '--draws') {
      const count = words[++at] ?? '';
      draws = /^\d{1,5}$/.test(count) ? Number(count) : 0;
      if (draws < 1 || draws > mostDraws)
        return `"--draws" wants a whole number from 1 to ${String(mostDraws)} after it.`;
    } else if (word.startsWith('--'))
      return `"${word}" is not known here. There are --json, --bed NAME and --draws N.`;
    else if (file !== null) return `Only one garden at a time: "${file}" or "${word}".`;
    else file = word;
  }
  return { file, json, bed, draws };
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

interface Answered {
  readonly bed: Bed;
  /** its cautions hold those that need imagined seasons, where these were asked for */
  readonly answer: BedAnswer;
  readonly draws: DrawsAnswer | null;
}

function answersOf(
  garden: Garden,
  beds: readonly Bed[],
  today: DayNumber,
  count: number | null,
): Answered[] {
  const ids = beds.map(({ id }) => id);
  const questions = count === null ? [] : drawsQuestions(garden, ids, today, count);
  const [first] = questions;
  const shared = first && sharedDraws(first);
  return beds.map((bed, at) => {
    const asked = bedQuestion(garden, bed.id, today);
    const answer = answerBed(asked, limits);
    const question = questions[at];
    const draws = question ? runDraws(question, limits, undefined, shared) : null;
    if (draws === null) return { bed, answer, draws };
    const { input, season, verdict, cautions } = answer;
    const run = { input, result: season, verdict };
    return {
      bed,
      answer: { ...answer, cautions: withOddsOfBed(cautions, run, draws, asked.facts, limits) },
      draws,
    };
  });
}

/**
 * `ledger [FILE] [--json] [--bed NAME] [--draws N]`: each bed's states, ledger and cautions, and
 * what N imagined seasons make of it.
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
  const answers = answersOf(garden, beds, today, wishes.draws);
  if (wishes.json) {
    voice.answer(
      `${JSON.stringify({
        program: about,
        garden: garden.garden.name,
        today: textFromDay(today),
        beds: answers.map(({ bed, answer, draws }) => bedAsJson(garden, bed, answer, draws)),
      })}\n`,
    );
    return exitCodes.done;
  }
  voice.answer(
    [
      gardenAsText(garden, today),
      ...answers.map(({ bed, answer, draws }) => bedAsText(garden, bed, answer, draws)),
      ...footLines,
      '',
    ].join('\n'),
  );
  return exitCodes.done;
}
