import type { ShownUnit } from '../../core/shownUnit';
import type { MineralFigures, MineralLine, MineralSeason } from '../../document/mineralAccount';
import { minerals } from '../../document/mineralAccount';
import { estimate, estimateWithUnit } from '../../words/figures';
import { mineralLineWords, mineralNames } from '../../words/mineralWords';
import { rangeOdds } from '../../words/ranges';
import type { Why } from '../../words/why';
import { whyWords } from '../../words/why';
import { rowSource } from './sourcesOf';

const formulas: Readonly<Record<MineralLine['way'], string>> = {
  laid: 'Dry weight of every layer of it × its share of each.',
  'raked off':
    'Dry weight that lay there that evening × the share raked off × its share of each, as if both rotted in step with the rest.',
  picked: 'Weight picked (by the nitrogen that went with it) × what a kilogram of it has of each.',
  'tops taken away':
    'Dry weight of the tops (by the nitrogen that went with them) × their share of each.',
};

/** Both elements with both ends, in one line; null where nothing is uncertain. */
function between(figures: MineralFigures, unit: ShownUnit): string | null {
  const told = minerals.flatMap((mineral) => {
    const { low, high } = figures[mineral];
    return low === high
      ? []
      : [
          `${mineralNames[mineral].toLowerCase()} ${estimate(low, unit)} to ${estimateWithUnit(high, unit)}`,
        ];
  });
  return told.length === 0 ? null : `${told.join(', ')}, ${rangeOdds}`;
}

const inputsOf = (figures: MineralFigures, unit: ShownUnit): Why['inputs'] =>
  minerals.map((mineral) => [
    mineralNames[mineral],
    estimateWithUnit(figures[mineral].typical, unit),
  ]);

/** What stands behind a line of the account of phosphorus and potassium: one why for both. */
export const mineralWhy = (line: MineralLine, unit: ShownUnit): Why => ({
  of: `${mineralLineWords(line)}.`,
  formula: formulas[line.way],
  inputs: inputsOf(line.figures, unit),
  range: between(line.figures, unit),
  sources: minerals.map((mineral) => rowSource(mineralNames[mineral], line.contents[mineral])),
});

/** What stands behind what came in less what went out. */
export const mineralBalanceWhy = ({ balance }: MineralSeason, unit: ShownUnit): Why => ({
  of: 'In less out.',
  formula: 'The lines above it, drawn together and added up before they are rounded.',
  inputs: inputsOf(balance, unit),
  range: between(balance, unit),
  sources: [whyWords.balance],
});
