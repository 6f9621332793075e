import type { growthTold } from '../../charts/lawn/growthTold';
import type { LawnOutlook } from '../../document/lawnOutlook';
import type { ShownUnit } from '../../core/shownUnit';
import { clippingsMinerals, leavingClippings } from '../../tables/lawns';
import { lawnWhyTexts as texts } from '../../words/lawnWhyTexts';
import { growthText, type GrowthUnit } from '../../words/lawnChartWords';
import { estimateWithUnit, twoFigures } from '../../words/figures';
import { rangeOdds, rangeWords } from '../../words/ranges';
import type { FigureInText, Why } from '../../words/why';
import { growthSources, type Grass } from './lawnReadyWhys';
import { rowSource } from './sourcesOf';

/** How fast a lawn grows in its best week, and what is still to come, in the unit of its drawing. */
export function growthFigures(
  { ratio, learntFrom }: Pick<LawnOutlook, 'ratio' | 'learntFrom'>,
  lawn: Grass,
  { best, rest }: ReturnType<typeof growthTold>,
  unit: GrowthUnit,
): readonly FigureInText[] {
  const text = (amount: number) => growthText(amount, unit);
  const common = {
    formula: texts.weekFormula,
    inputs: [
      [texts.times, twoFigures(ratio.typical)],
      [texts.mowings, String(learntFrom)],
    ],
    sources: growthSources(lawn),
  } as const;
  return [
    ...(best === null
      ? []
      : [
          {
            text: text(best.typical),
            why: {
              ...common,
              of: texts.bestWeek,
              inputs: [[texts.usualWeek, text(best.usual)] as const, ...common.inputs],
              range: `${text(best.low)} to ${text(best.high)}, ${rangeOdds}`,
            },
          },
        ]),
    {
      text: text(rest),
      why: { ...common, of: texts.rest, formula: texts.restFormula, range: null },
    },
  ];
}

/** What stands behind a column of a lawn's weeks. */
export function lawnColumnWhy(
  column: 'expected' | 'likely' | 'usual' | 'mown',
  lawn: Grass,
  { learntFrom }: Pick<LawnOutlook, 'learntFrom'>,
): Why {
  if (column === 'mown')
    return {
      of: texts.mown,
      formula: texts.mownFormula,
      inputs: [],
      range: null,
      sources: [texts.books],
    };
  return {
    of: { expected: texts.week, likely: texts.likelyWeek, usual: texts.usualWeekAlone }[column],
    formula: {
      expected: texts.weekFormula,
      likely: texts.likelyFormula,
      usual: texts.usualFormula,
    }[column],
    inputs: column === 'usual' ? [] : [[texts.mowings, String(learntFrom)]],
    range: null,
    sources: growthSources(lawn),
  };
}

/** How a lawn compares with its kind. */
export function ratioFigures({ ratio, learntFrom }: LawnOutlook, lawn: Grass): FigureInText[] {
  const why: Why = {
    of: texts.ratio,
    formula: texts.ratioFormula,
    inputs: [[texts.mowings, String(learntFrom)]],
    range: `${twoFigures(ratio.low)} to ${twoFigures(ratio.high)}, ${rangeOdds}`,
    sources: growthSources(lawn),
  };
  return [
    { text: twoFigures(ratio.typical), why },
    { text: `${twoFigures(ratio.low)} to ${twoFigures(ratio.high)}`, why },
  ];
}

/** What was carried off each square metre. */
export function takenFigures(
  { taken }: LawnOutlook,
  lawn: Grass,
  perArea: ShownUnit,
): readonly FigureInText[] {
  // nothing was carried off: there is no figure to open
  if (taken.nitrogen.high === 0) return [];
  const { likely, between } = rangeWords(taken.nitrogen, perArea);
  const nitrogen: Why = {
    of: texts.taken,
    formula: texts.takenFormula,
    inputs: [],
    range: between,
    sources: growthSources(lawn),
  };
  const mineral = (
    of: string,
    row: Parameters<typeof rowSource>[1],
    grams: number,
  ): FigureInText => ({
    text: estimateWithUnit(grams, perArea),
    why: {
      of,
      formula: texts.mineralFormula,
      inputs: [],
      range: null,
      sources: [rowSource(of, row)],
    },
  });
  return [
    { text: likely, why: nitrogen },
    ...(between === null ? [] : [{ text: between, why: nitrogen }]),
    mineral(texts.phosphorus, clippingsMinerals.phosphorusPercent, taken.phosphorus.typical),
    mineral(texts.potassium, clippingsMinerals.potassiumPercent, taken.potassium.typical),
  ];
}

/** What carrying clippings off costs, and what leaving them saves. */
export function costFigures({ cost }: LawnOutlook): readonly FigureInText[] {
  const { collectedShare, yieldLost, feedSavedAtFirst, feedSavedInTheLongRun } = cost;
  const percent = (share: number): string => `${twoFigures(share * 100)} %`;
  const lost: Why = {
    of: texts.lost,
    formula: texts.lostFormula,
    inputs: [[texts.collected, percent(collectedShare)]],
    range: `${percent(yieldLost.low)} to ${percent(yieldLost.high)}`,
    sources: [rowSource(texts.raised, leavingClippings.yieldRaised)],
  };
  const saved = (text: string, row: Parameters<typeof rowSource>[1]): FigureInText => ({
    text,
    why: {
      of: texts.saved,
      formula: texts.savedFormula,
      inputs: [],
      range: null,
      sources: [rowSource(texts.saved, row)],
    },
  });
  return [
    ...(collectedShare < 0.05
      ? []
      : [
          {
            text: percent(collectedShare),
            why: {
              of: texts.collected,
              formula: texts.collectedFormula,
              inputs: [],
              range: null,
              sources: [texts.books],
            },
          },
          { text: percent(yieldLost.typical), why: lost },
          {
            text: `${twoFigures(yieldLost.low * 100)} to ${percent(yieldLost.high)}`,
            why: lost,
          },
        ]),
    saved(percent(feedSavedAtFirst), leavingClippings.feedSavedAtFirst),
    saved(percent(feedSavedInTheLongRun.typical), leavingClippings.feedSavedInTheLongRun),
  ];
}
