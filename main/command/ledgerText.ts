import { seasonStart } from '../../app/core/days';
import { bedLedger, type LedgerLine } from '../../app/core/season/ledger';
import { unitsOf } from '../../app/amounts/unitSystem';
import type { BedAnswer } from '../../app/core/season/bedAnswer';
import type { DrawsAnswer } from '../../app/core/season/draws/runDraws';
import type { Bed, Garden } from '../../app/document/schema';
import { leftOutOf } from '../../app/document/leftOut';
import { bedSeasonAccounts } from '../../app/document/seasonsAccount';
import { weatherKnown } from '../../app/document/weatherKnown';
import { basisOf } from '../../app/tables/thresholds';
import { cautionWords, nothingHeldBack } from '../../app/words/cautions';
import { accountAmount, dayFull, dayShort } from '../../app/words/chartFormat';
import { chartUnits } from '../../app/words/chartUnits';
import {
  likelyPercent,
  likelyTimes,
  restingWords,
  stateOddsWords,
} from '../../app/words/imaginedWords';
import { balanceWords, cameInWords, holdingWords, wentOutWords } from '../../app/words/ledgerWords';
import {
  carriedNames,
  carriedWords,
  expectedWords,
  seasonWord,
} from '../../app/words/seasonAccountWords';
import { leftOutSentence } from '../../app/words/leftOutWords';
import { weatherKnownSentence } from '../../app/words/weatherMessages';
import {
  coverSentence,
  coverStateWords,
  nitrogenStateWords,
  stateSentence,
} from '../../app/words/states';

const width = 62;

const column = (label: string, value: string): string => {
  const room = Math.max(1, width - 4 - label.length - value.length);
  return `    ${label}${' '.repeat(room)}${value}`;
};

/** One bed for reading in a terminal: both states, the season's ledger up to today, the cautions. */
export function bedAsText(
  garden: Garden,
  bed: Bed,
  answer: BedAnswer,
  draws: DrawsAnswer | null,
): string {
  const { season: result, verdict } = answer;
  const units = chartUnits(garden.garden.shownUnits);
  const screenUnits = unitsOf(garden.garden.shownUnits);
  const { seasonStartMonth } = garden.garden;
  const seasons = bedSeasonAccounts(garden, answer.input, result);
  const from = Math.max(result.firstDay, seasonStart(result.today, seasonStartMonth));
  const ledger = bedLedger(result, from, result.today);
  const grams = (value: number): string => accountAmount(value, units.nitrogen);
  const lines = <Key extends string>(
    list: readonly LedgerLine<Key>[],
    words: Readonly<Record<Key, string>>,
  ): string[] =>
    list
      .filter(({ gM2 }) => Math.abs(gM2) > 1e-9)
      .map(({ key, gM2 }) => column(words[key], grams(gM2)));
  const day = (value: number): string => dayShort(value, units);
  const out = [
    `${bed.name}: ${nitrogenStateWords(verdict.state, verdict.strongly)}, cover ${coverStateWords(verdict.coverState)}`,
    ...folded(stateSentence(verdict, screenUnits, { today: result.today }), '  '),
    ...folded(coverSentence(verdict), '  '),
    ...leftOutOf(garden, bed.id, result.today).flatMap((one) =>
      folded(leftOutSentence(one, bed.name, day), '  '),
    ),
    ...(draws ? imagined(draws, answer) : []),
    '',
    `  ${day(from)} to ${day(result.today)}, ${units.nitrogen.long} of nitrogen`,
    '  There at the start',
    ...lines(ledger.opening, holdingWords),
    '  Came in',
    ...lines(ledger.cameIn, cameInWords),
    '  Went out',
    ...lines(ledger.wentOut, wentOutWords),
    '  On hand',
    ...lines(ledger.onHand, holdingWords),
    column('start and in', grams(ledger.totals.opening + ledger.totals.cameIn)),
    column('out and on hand', grams(ledger.totals.wentOut + ledger.totals.onHand)),
    `  ${balanceWords(ledger.difference)}`,
    '',
    ...seasons
      .filter(({ isOver }) => isOver)
      .slice(-1)
      .flatMap((season) => [
        `  Left by the season of ${seasonWord(season.year, seasonStartMonth)} for the next`,
        ...carriedNames
          .filter((key) => season.carriedOver[key] > 1e-9)
          .map((key) => column(carriedWords[key], grams(season.carriedOver[key]))),
        ...(season.expectedNextSeason
          ? folded(
              expectedWords(season.expectedNextSeason, season.year, seasonStartMonth, units),
              '  ',
            )
          : []),
        '',
      ]),
  ];
  if (answer.cautions.length === 0) out.push(`  ${nothingHeldBack}`);
  for (const caution of answer.cautions) {
    const words = cautionWords(caution, basisOf(caution), screenUnits);
    out.push(...folded(`${caution.weight.toUpperCase()}  ${words.says}`, '  '));
    if (words.instead) out.push(...folded(`Instead: ${words.instead}`, '    '));
    out.push(...folded(`Where this comes from: ${words.source}`, '    '));
  }
  return `${out.join('\n')}\n`;
}

/** What the imagined seasons of a bed say: odds, ends, what they are worth. */
function imagined(draws: DrawsAnswer, { verdict }: BedAnswer): string[] {
  const { ratio, needMet } = draws;
  const ends = ratio
    ? `In 8 of 10: ${likelyTimes(ratio)} what ${verdict.excessClass === 'legume' ? 'it asks of the soil' : 'can be used'}, and ${likelyPercent(needMet)} of the need met.`
    : '';
  return [`${stateOddsWords(draws.states, verdict.state)}.`, ends, restingWords(draws)]
    .filter((line) => line !== '')
    .flatMap((line) => folded(line, '  '));
}

/** Breaks a sentence at spaces so that a terminal of 80 columns holds it. */
export function folded(text: string, indent: string): string[] {
  const out: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && indent.length + line.length + 1 + word.length > 78) {
      out.push(indent + line);
      line = `  ${word}`;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return line === '' ? out : [...out, indent + line];
}

/** What stands above the beds. */
export function gardenAsText(garden: Garden, today: number): string {
  const units = chartUnits(garden.garden.shownUnits);
  const sample = garden.garden.isSample ? ', an invented sample garden' : '';
  const weather = weatherKnownSentence(weatherKnown(garden, today), garden.weather.normals.place);
  const lines = weather === null ? [] : folded(weather, '');
  return `${garden.garden.name}${sample}. ${dayFull(today, units)}\n${lines.map((line) => `${line}\n`).join('')}`;
}
