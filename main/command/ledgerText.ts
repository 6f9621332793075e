import { textFromDay } from '../../app/core/days';
import { bedLedger, type LedgerLine } from '../../app/core/season/ledger';
import type { Garden } from '../../app/document/schema';
import { cautionWords } from '../../app/words/cautions';
import { accountAmount, amount, dayFull, dayShort } from '../../app/words/chartFormat';
import { chartUnits } from '../../app/words/chartUnits';
import { balanceWords, cameInWords, holdingWords, wentOutWords } from '../../app/words/ledgerWords';
import { coverStateWords, nitrogenStateWords } from '../../app/words/states';
import { unitsOf } from '../../app/amounts/unitSystem';
import { basisOf } from '../../app/tables/thresholds';
import type { BedRun } from './bedRuns';

const width = 62;

const heading = (text: string): string => `  ${text}`;
const column = (label: string, value: string): string => {
  const room = Math.max(1, width - 4 - label.length - value.length);
  return `    ${label}${' '.repeat(room)}${value}`;
};

/** One bed for reading in a terminal: both states, the season's ledger up to today, the cautions. */
export function bedAsText(garden: Garden, run: BedRun): string {
  const { bed, result, verdict } = run;
  const units = chartUnits(garden.garden.shownUnits);
  const ledger = bedLedger(result, result.firstDay, result.today);
  const grams = (value: number): string => accountAmount(value, units.nitrogen);
  const lines = <Key extends string>(
    list: readonly LedgerLine<Key>[],
    words: Readonly<Record<Key, string>>,
  ): string[] =>
    list
      .filter(({ gM2 }) => Math.abs(gM2) > 1e-9)
      .map(({ key, gM2 }) => column(words[key], grams(gM2)));

  const state = nitrogenStateWords(verdict.state, verdict.strongly);
  const ratio =
    verdict.ratio === null
      ? ''
      : `; on hand and to come: ${amount(verdict.ratio, { short: '', long: '', perInside: 1, decimals: 1 })} times what the plants can use`;
  const out = [
    bed.name,
    heading(`Nitrogen: ${state}${ratio}`),
    heading(`Cover: ${coverStateWords(verdict.coverState)}`),
    '',
    heading(
      `Ledger from ${dayShort(result.firstDay, units)} to ${dayShort(result.today, units)}, ${units.nitrogen.long}`,
    ),
    heading('There at the start'),
    ...lines(ledger.opening, holdingWords),
    heading('Came in'),
    ...lines(ledger.cameIn, cameInWords),
    heading('Went out'),
    ...lines(ledger.wentOut, wentOutWords),
    heading('On hand'),
    ...lines(ledger.onHand, holdingWords),
    column('start + in', grams(ledger.totals.opening + ledger.totals.cameIn)),
    column('out + on hand', grams(ledger.totals.wentOut + ledger.totals.onHand)),
    heading(balanceWords(ledger.difference)),
    '',
  ];
  if (run.cautions.length === 0) out.push(heading('No reason found to hold anything back.'));
  for (const caution of run.cautions) {
    const words = cautionWords(caution, basisOf(caution), unitsOf(garden.garden.shownUnits));
    out.push(heading(`${caution.weight}: ${words.says}`));
    if (words.instead) out.push(`      Instead: ${words.instead}`);
    out.push(`      From: ${words.source}`);
  }
  return `${out.join('\n')}\n`;
}

/** What stands above the beds. */
export function gardenAsText(garden: Garden, today: number): string {
  const units = chartUnits(garden.garden.shownUnits);
  const sample = garden.garden.isSample ? ' (an invented sample garden)' : '';
  return `${garden.garden.name}${sample}, ${dayFull(today, units)} [${textFromDay(today)}]\n\n`;
}
