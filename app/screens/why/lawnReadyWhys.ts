import type { ShownUnit } from '../../core/shownUnit';
import type { LawnOutlook } from '../../document/lawnOutlook';
import type { Lawn } from '../../document/schema';
import { growthCurves } from '../../tables/lawnGrowth';
import { droughtLine, oneMowingScatter, unloggedGrowth } from '../../tables/lawnGrowthWater';
import { yearlyYieldOf } from '../../tables/lawns';
import { countOf, estimateWithUnit, twoFigures } from '../../words/figures';
import { lawnReadyWhyTexts as texts } from '../../words/lawnReadyWhyTexts';
import { rangeOdds, rangeWords } from '../../words/ranges';
import type { FigureInText, Why } from '../../words/why';
import { rowSource } from './sourcesOf';

export type Grass = Pick<Lawn, 'grass' | 'kind'>;

export const growthSources = ({ grass, kind }: Grass): readonly string[] => [
  rowSource(texts.yearly, yearlyYieldOf(kind)),
  rowSource(texts.warmth, growthCurves[grass].best),
  rowSource(texts.scatter, oneMowingScatter),
];

/** What should stand there to be mown, and between what. */
export function readyFigures(
  { containers, freshKilograms, ratio, learntFrom, isSinceSupposed, usualDays }: LawnOutlook,
  lawn: Grass,
  container: { readonly name: string; readonly plural: string } | null,
  mass: ShownUnit,
): readonly FigureInText[] {
  const count = containers && container ? containers.count : null;
  const said = (of: 'low' | 'typical' | 'high'): string =>
    count && container
      ? countOf(count[of], container.name, container.plural)
      : estimateWithUnit(freshKilograms[of], mass);
  const why: Why = {
    of: texts.ready,
    formula: texts.readyFormula,
    inputs: [
      [texts.fresh, estimateWithUnit(freshKilograms.typical, mass)],
      [texts.times, twoFigures(ratio.typical)],
      [texts.mowings, String(learntFrom)],
    ],
    range: `${said('low')} to ${said('high')}, ${rangeOdds}`,
    sources: [
      ...growthSources(lawn),
      ...(isSinceSupposed
        ? [rowSource(texts.unlogged, unloggedGrowth), rowSource(texts.since, usualDays)]
        : []),
    ],
  };
  const between =
    count && container
      ? `${said('low').replace(/ \S+$/, '')} to ${said('high')}`
      : (rangeWords(freshKilograms, mass).between ?? '');
  return [
    { text: said('typical'), why },
    { text: between, why },
  ];
}

/** How much water the grass got, when that makes its clippings lean. */
export const droughtFigures = ({ waterShare }: LawnOutlook): readonly FigureInText[] =>
  waterShare === null
    ? []
    : [
        {
          text: `${twoFigures(waterShare * 100)} %`,
          why: {
            of: texts.drought,
            formula: texts.droughtFormula,
            inputs: [],
            range: null,
            sources: [rowSource(texts.droughtRow, droughtLine)],
          },
        },
      ];
