import type { LedgerLine } from '../../core/season/ledger';
import type { CarriedOver, SeasonAccount } from '../../core/season/seasonAccounts';
import { coefficientRows } from '../../tables/coefficients';
import { accountAmount } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { cameInWords, holdingWords, wentOutWords } from '../../words/ledgerWords';
import {
  leftInAll,
  leftWords,
  seasonLine,
  seasonLineNames,
  carriedWords,
  seasonLines,
  type SeasonLine,
} from '../../words/seasonAccountWords';
import type { Why } from '../../words/why';
import { whyWords } from '../../words/why';
import { airTakes, soilGives } from './notInSum';
import { rowSource } from './sourcesOf';

/** less than this is told as nothing [g/m2] */
const leastShown = 0.005;

/** What stands behind a sum in the account of a season. */
export function seasonLineWhy(
  name: SeasonLine | 'left in all',
  season: SeasonAccount,
  units: ChartUnits,
): Why {
  const { ledger, isOver } = season;
  const grams = (gM2: number) => `${accountAmount(gM2, units.nitrogen)} ${units.nitrogen.short}`;
  const lines = <Key extends string>(
    list: readonly LedgerLine<Key>[],
    words: Readonly<Record<Key, string>>,
  ) =>
    list
      .filter(({ gM2 }) => Math.abs(gM2) >= leastShown)
      .map(({ key, gM2 }) => [words[key], grams(gM2)] as const);
  const standing = isOver
    ? 'Reckoned day by day from what was written down and the weather that was.'
    : whyWords.model;
  const common = { range: null, sources: [standing, whyWords.balance] };
  switch (name) {
    case 'opening':
      return {
        of: 'There at the start.',
        formula: 'All that the bed held on the season’s first morning, its own store apart.',
        inputs: lines(ledger.opening, holdingWords),
        ...common,
      };
    case 'cameIn':
      return {
        of: 'Came in.',
        formula: 'All that crossed the bed’s edge inwards.',
        inputs: lines(ledger.cameIn, cameInWords),
        ...common,
      };
    case 'wentOut':
      return {
        of: 'Went out.',
        formula: 'All that crossed the bed’s edge outwards.',
        inputs: lines(ledger.wentOut, wentOutWords),
        range: null,
        sources: [...common.sources, ...airTakes()],
      };
    case 'soilGave':
      return {
        of: 'Given by the soil itself.',
        formula: 'What the soil’s own store released − what of compost became soil.',
        inputs: [['On balance', grams(seasonLine('soilGave', ledger))]],
        range: null,
        sources: [...common.sources, ...soilGives(null)],
      };
    case 'left in all':
      return {
        of: `${leftWords.sum.charAt(0).toUpperCase()}${leftWords.sum.slice(1)}.`,
        formula: 'There at the start + came in + given by the soil − went out.',
        inputs: [
          ...seasonLineNames.map(
            (key) => [seasonLines[key], grams(seasonLine(key, ledger))] as const,
          ),
          [leftWords.sum, grams(leftInAll(ledger))],
        ],
        ...common,
      };
  }
}

type CarriedName = keyof CarriedOver;

const carriedFormulas: Readonly<Record<CarriedName, string>> = {
  ready: 'Nitrogen ready in the whole soil on the last evening, roots or none.',
  inCover: 'All nitrogen in what still lies on top, rotten or not, and what is free in it.',
  inSoilResidue: 'All nitrogen in what was dug in, in roots and stubble, and in what rots them.',
  inCompost: 'Of compost, manure and meals what will still come free, slowly.',
  youngHumus: 'What rotted things left behind as new humus, which gives for years.',
  inCrop: 'What stands in plants that stay over winter.',
};

/** What stands behind a part of what a season leaves. */
export function carriedWhy(name: CarriedName, season: SeasonAccount, units: ChartUnits): Why {
  const grams = accountAmount(season.carriedOver[name], units.nitrogen);
  const all = accountAmount(leftInAll(season.ledger), units.nitrogen);
  return {
    of: `${carriedWords[name].charAt(0).toUpperCase()}${carriedWords[name].slice(1)}.`,
    formula: carriedFormulas[name],
    inputs: [
      ['On the last evening', `${grams} ${units.nitrogen.short}`],
      [leftWords.sum, `${all} ${units.nitrogen.short}`],
    ],
    range: null,
    sources: [
      season.isOver
        ? 'Reckoned day by day from what was written down and the weather that was.'
        : whyWords.model,
      ...(name === 'youngHumus'
        ? [rowSource('Of young humus comes free', coefficientRows.youngHumusRate)]
        : name === 'inCompost'
          ? [rowSource('Of compost comes free', coefficientRows.slowRate)]
          : []),
    ],
  };
}
