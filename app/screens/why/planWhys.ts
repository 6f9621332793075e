import type { LineId } from '../../core/season/limits';
import type {
  BedStanding,
  Distance,
  MendMove,
  MowAdvice,
  PlanAmount,
  PlanEffects,
  PlanLayer,
  PlanLimit,
  PlanLine,
  PlanTurn,
} from '../../core/plan/answer';
import { coefficientRows } from '../../tables/coefficients';
import { planningRows } from '../../tables/planning';
import { percent } from '../../words/chartFormat';
import { estimateWithUnit, twoFigures } from '../../words/figures';
import {
  mowAmountWords,
  planAmountWords,
  inHandWords,
  type PlanNames,
} from '../../words/planWords';
import { distanceWords } from '../../words/planWorth';
import { planWhyTexts as texts } from '../../words/planWhyTexts';
import type { FigureInText, Why } from '../../words/why';
import { whyWords } from '../../words/why';
import { soilGives } from './notInSum';
import { lineSource, rowSource } from './sourcesOf';

/** A figure and its why. */
export const figure = (text: string, why: Why): FigureInText => ({ text, why });

const perArea = (grams: number, { units }: PlanNames): string =>
  estimateWithUnit(grams, units.nitrogenPerArea);

/** An amount of the plan: how it came to be so much, and what it weighs. */
export function amountFigure(amount: PlanAmount, formula: string, names: PlanNames): FigureInText {
  const { units } = names;
  return figure(planAmountWords(amount, names), {
    of: texts.amount,
    formula,
    inputs: [
      [texts.volume, estimateWithUnit(amount.litres, units.volume)],
      [texts.fresh, estimateWithUnit(amount.freshKilograms, units.mass)],
      [texts.dry, estimateWithUnit(amount.dryKilograms, units.mass)],
      [texts.nitrogen, estimateWithUnit(amount.nitrogenGrams, units.nitrogen)],
    ],
    range: null,
    sources: [
      whyWords.model,
      rowSource(texts.lowShare, planningRows.lowShare),
      rowSource(texts.highShare, planningRows.highShare),
    ],
  });
}

/** How much of what, and how thick. */
export const layerFigures = (layer: PlanLayer, names: PlanNames): readonly FigureInText[] => {
  const { amount, depthMillimetres, isPinned } = layer;
  return [
    amountFigure(amount, isPinned ? texts.pinned : texts.solved, names),
    figure(estimateWithUnit(depthMillimetres, names.units.depth), {
      of: texts.depth,
      formula: texts.depthFormula,
      inputs: [[texts.volume, estimateWithUnit(amount.litres, names.units.volume)]],
      range: null,
      sources: [texts.volumeMeasured],
    }),
  ];
};

/** Share of what a bed can use that is there and to come. */
function shareWhy(standing: BedStanding, names: PlanNames): Why {
  return {
    of: texts.share,
    formula: texts.shareFormula,
    inputs: [
      [texts.supply, perArea(standing.supply, names)],
      [texts.need, perArea(standing.need, names)],
    ],
    range: null,
    sources: [
      whyWords.model,
      ...soilGives(null),
      rowSource(texts.onTop, coefficientRows.surfaceRateGreen),
    ],
  };
}

function groundWhy(covered: number): Why {
  return {
    of: texts.ground,
    formula: texts.groundFormula,
    inputs: [[texts.hidden, percent(covered)]],
    range: null,
    sources: [rowSource(texts.hiding, coefficientRows.coverFractionPerKilogram)],
  };
}

const shareFigure = (standing: BedStanding, names: PlanNames): FigureInText =>
  figure(inHandWords(standing), shareWhy(standing, names));

const groundFigure = ({ covered }: BedStanding): FigureInText =>
  figure(percent(covered), groundWhy(covered));

/** Figures of why a bed gets something, in the order in which the sentence has them. */
export const lineFigures = ({ why }: PlanLine, names: PlanNames): readonly FigureInText[] => {
  const { before, after, reason } = why;
  const shares = [shareFigure(before, names), shareFigure(after, names)];
  const ground = [groundFigure(after), groundFigure(before)];
  const isFed = before.need > 0 && after.supply > before.supply;
  if (reason === 'too much') return shares;
  if (!isFed) return ground;
  return reason === 'hungry and bare'
    ? [...shares, ...ground]
    : reason === 'bare ground'
      ? ground
      : shares;
};

const lineOfLimit: Readonly<Partial<Record<PlanLimit['kind'], LineId>>> = {
  'layer depth': 'layer just cut',
  'all cover': 'all cover',
  'season total': 'season total',
  legume: 'legume loss',
};

/** The number that keeps a bed from more. */
export function limitFigures(limit: PlanLimit, names: PlanNames): readonly FigureInText[] {
  const { units } = names;
  const line = lineOfLimit[limit.kind];
  const why: Why = {
    of: texts.limit,
    formula: limit.kind === 'room' ? texts.roomFormula : texts.limitFormula,
    inputs: [],
    range: null,
    sources: line ? [lineSource(texts.theLine, line)] : [whyWords.model],
  };
  switch (limit.kind) {
    case 'layer depth':
    case 'all cover':
      return [figure(estimateWithUnit(limit.millimetres, units.depth), why)];
    case 'room':
    case 'season total':
      return [figure(perArea(limit.grams, names), why)];
    case 'legume':
      return [figure(percent(limit.share), why)];
    default:
      return [];
  }
}

export function turnFigures(turn: PlanTurn, names: PlanNames): readonly FigureInText[] {
  return turn.kind === 'hoed in'
    ? [
        figure(perArea(turn.supplyGain, names), {
          of: texts.hoed,
          formula: texts.hoedFormula,
          inputs: [],
          range: null,
          sources: [whyWords.model, rowSource(texts.hoedRow, coefficientRows.hoedRate)],
        }),
      ]
    : [
        figure(twoFigures(turn.mgPerKg), {
          of: texts.test,
          formula: texts.testFormula,
          inputs: [],
          range: null,
          sources: [whyWords.model, rowSource(texts.lowShare, planningRows.lowShare)],
        }),
      ];
}

/** What to collect, what is expected, and between what. */
export function mowFigures(advice: MowAdvice, names: PlanNames): readonly FigureInText[] {
  const { low, typical, high } = advice.expectedLitres;
  const much = (litres: number): string => mowAmountWords(advice, litres, names);
  const expected: Why = {
    of: texts.expected,
    formula: texts.expectedFormula,
    inputs: [
      [texts.likely, much(typical)],
      [texts.volume, estimateWithUnit(typical, names.units.volume)],
    ],
    range: `${much(low)} to ${much(high)}`,
    sources: [texts.growth, rowSource(texts.sure, planningRows.sureOfComing)],
  };
  const { collect } = advice;
  return [
    ...(collect.litres > 0
      ? [
          figure(much(collect.litres), {
            ...amountFigure(collect, texts.collectFormula, names).why,
            of: texts.collect,
          }),
        ]
      : []),
    ...(advice.why.kind === 'held back' || advice.why.kind === 'nothing expected'
      ? []
      : [typical, low, high].map((litres) => figure(much(litres), expected))),
  ];
}

function distanceWhy(
  distance: Distance,
  formula: string,
  { units }: Pick<PlanNames, 'units'>,
): Why {
  return {
    of: texts.distance,
    formula,
    inputs: [
      [texts.nitrogenPart, estimateWithUnit(distance.nitrogen, units.nitrogen)],
      [texts.groundPart, estimateWithUnit(distance.ground, units.nitrogen)],
    ],
    range: null,
    sources: [
      whyWords.model,
      rowSource(texts.lowShare, planningRows.lowShare),
      rowSource(texts.highShare, planningRows.highShare),
      rowSource(texts.excess, planningRows.excessSensitive),
      rowSource(texts.bare, planningRows.groundGrams),
    ],
  };
}

/** What one bag more is worth. */
export const worthFigures = (
  { worthOfOneMore }: MowAdvice,
  names: PlanNames,
): readonly FigureInText[] => [
  figure(estimateWithUnit(10, names.units.volume), {
    of: texts.another,
    formula: texts.anotherFormula,
    inputs: [],
    range: null,
    sources: [whyWords.balance],
  }),
  figure(estimateWithUnit(worthOfOneMore, names.units.nitrogen), {
    of: texts.worth,
    formula: texts.worthFormula,
    inputs: [],
    range: null,
    sources: [whyWords.model, rowSource(texts.bare, planningRows.groundGrams)],
  }),
];

export const effectFigures = (effects: PlanEffects, names: PlanNames): readonly FigureInText[] =>
  [effects.doNothing, effects.plan, effects.planToEnd, effects.allOnNearest].map((distance) =>
    figure(distanceWords(distance, names), distanceWhy(distance, texts.distanceFormula, names)),
  );

/** What moving or browns would change. */
export function mendFigures(move: MendMove, names: PlanNames): readonly FigureInText[] {
  const { units } = names;
  switch (move.kind) {
    case 'rake and carry': {
      const moved = (text: string): FigureInText =>
        figure(text, {
          of: texts.moved,
          formula: texts.movedFormula,
          inputs: [[texts.lying, percent(move.share)]],
          range: null,
          sources: [whyWords.model, rowSource(texts.onTop, coefficientRows.surfaceRateGreen)],
        });
      return [
        moved(estimateWithUnit(move.dryKilograms, units.mass)),
        moved(estimateWithUnit(move.nitrogenGrams, units.nitrogen)),
        shareFigure(move.from.before, names),
        shareFigure(move.from.after, names),
        ...(move.to ? [shareFigure(move.to.before, names), shareFigure(move.to.after, names)] : []),
      ];
    }
    case 'hungry neighbour':
      return [
        figure(perArea(move.surplus, names), {
          of: texts.surplus,
          formula: texts.surplusFormula,
          inputs: [],
          range: null,
          sources: [whyWords.model, rowSource(texts.highShare, planningRows.highShare)],
        }),
      ];
    case 'browns from now on':
      return move.buys
        ? [
            amountFigure(move.buys.amount, texts.brownsFormula, names),
            shareFigure(move.buys.before, names),
            shareFigure(move.buys.after, names),
          ]
        : [];
  }
}
