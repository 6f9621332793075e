import type { PlanAmount, RestChoice } from '../../core/plan/answer';
import { dryingRows } from '../../tables/heap';
import { planningRows } from '../../tables/planning';
import { countOf, estimateWithUnit, twoFigures } from '../../words/figures';
import type { PlanNames } from '../../words/planWords';
import { leafWords, type LeavesForJune, type LeavesSum } from '../../words/planSays';
import { planWhyTexts as texts } from '../../words/planWhyTexts';
import type { FigureInText, Why } from '../../words/why';
import { figure } from './planWhys';
import { rowSource } from './sourcesOf';

/** What goes with the rest to its home. */
export function restFigures(
  { place }: RestChoice,
  names: PlanNames,
  goesLitres: number | null = null,
): readonly FigureInText[] {
  const { units } = names;
  if (place.to === 'dry and store')
    return [
      figure(estimateWithUnit(place.millimetresSpread, units.depth), {
        of: texts.spread,
        formula: texts.spreadFormula,
        inputs: [],
        range: null,
        sources: [
          rowSource(texts.spread, planningRows.spreadMillimetres),
          rowSource(texts.lost, dryingRows.dryLost),
        ],
      }),
    ];
  if (place.to === 'lawn' || !place.leaves) return [];
  const { litres, bags, litresOnHand, carbonToNitrogen } = place.leaves;
  const why: Why = {
    of: texts.leaves,
    formula: texts.leavesFormula,
    inputs: [
      [texts.wanted, twoFigures(carbonToNitrogen)],
      [texts.onHand, estimateWithUnit(litresOnHand, units.volume)],
    ],
    range: null,
    sources: [rowSource(texts.heap, planningRows.heapCarbonToNitrogen)],
  };
  if (goesLitres !== null)
    return [goesLitres, litres].map((each) => figure(estimateWithUnit(each, units.volume), why));
  return [
    figure(
      bags === null ? estimateWithUnit(litres, units.volume) : countOf(bags, 'bag', 'bags'),
      why,
    ),
    figure(estimateWithUnit(litresOnHand, units.volume), { ...why, of: texts.onHand }),
  ];
}

/** Leaves of a store: there, laid, on the heap today, kept; the last with why any are held back. */
export const leavesFigures = (
  sum: LeavesSum,
  kept: PlanAmount,
  { units }: PlanNames,
): readonly FigureInText[] => [
  ...(sum.kept === sum.there
    ? []
    : ([
        [sum.there, texts.leavesThere],
        [sum.laid, texts.leavesLaid],
        [sum.heap, texts.leavesFormula],
      ] as const)
  ).map(([text, formula]) =>
    figure(text, {
      of: texts.leavesSum,
      formula,
      inputs: [],
      range: null,
      sources: [rowSource(texts.heap, planningRows.heapCarbonToNitrogen)],
    }),
  ),
  figure(sum.kept, {
    of: texts.kept,
    formula: texts.keptFormula,
    inputs: [
      [texts.weeks, String(planningRows.keptWeeks.typical)],
      [texts.heldForHeap, estimateWithUnit(kept.litres, units.volume)],
    ],
    range: null,
    sources: [
      rowSource(texts.heap, planningRows.heapCarbonToNitrogen),
      rowSource(texts.heapShare, planningRows.heapShare),
      rowSource(texts.keptMost, planningRows.keptMost),
      rowSource(texts.weeks, planningRows.keptWeeks),
    ],
  }),
];

/** Leaves that next early summer's grass would want. */
export function juneFigures(
  june: Omit<LeavesForJune, 'month'>,
  names: Pick<PlanNames, 'units'>,
): readonly FigureInText[] {
  const grass = estimateWithUnit(june.clippingsLitres, names.units.volume);
  const why: Why = {
    of: texts.leaves,
    formula: texts.leavesFormula,
    inputs: [
      [texts.grass, grass],
      [texts.onHand, leafWords(june, june.onHandLitres, names)],
    ],
    range: null,
    sources: [rowSource(texts.heap, planningRows.heapCarbonToNitrogen)],
  };
  return [
    figure(leafWords(june, june.leavesLitres, names), why),
    figure(grass, {
      ...why,
      of: texts.grass,
      formula: texts.expectedFormula,
      sources: [texts.growth],
    }),
    figure(leafWords(june, june.onHandLitres, names), { ...why, of: texts.onHand }),
  ];
}
