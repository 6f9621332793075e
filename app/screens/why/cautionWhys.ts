import type { Caution } from '../../core/season/verdict';
import type { UnitSet } from '../../amounts/unitSystem';
import { basisOf } from '../../tables/thresholds';
import { cautionWords } from '../../words/cautions';
import type { FigureInText } from '../../words/why';
import { cautionFigure } from '../cautionFigure';
import { linesOfCaution } from '../linesOfCaution';

/** The figure a caution's sentence turns on, where it has one: against which line, and where that comes from. */
export function cautionFigures(caution: Caution, units: UnitSet): readonly FigureInText[] {
  const { number, threshold, unit } = caution;
  if (number === null || unit === '') return [];
  const { why, source } = cautionWords(caution, basisOf(caution), units);
  const said = (value: number) => cautionFigure(value, unit, units);
  const lines = linesOfCaution(caution);
  return [
    {
      text: said(number),
      why: {
        of: 'What this remark rests on.',
        formula: why || 'Reckoned by the sums of the bed, and held against the line.',
        inputs: [
          ['Here it is', said(number)],
          ...(lines.length > 0
            ? lines.map(({ weight, at }) => [`The line of a ${weight}`, said(at)] as const)
            : threshold === null
              ? []
              : [['The line', said(threshold)] as const]),
        ],
        range: null,
        sources: [source],
      },
    },
  ];
}

/** Grams per area that a sentence may name beside the figure it turns on. */
const besides = {
  room: 'Room for nitrogen of greens',
  fixedBefore: 'Fixed without the layer',
  fixedAfter: 'Fixed with it',
} as const;

function figureBesides(
  figure: FigureInText,
  key: keyof typeof besides,
  { detail }: Caution,
  units: UnitSet,
): readonly FigureInText[] {
  const value = detail[key];
  if (typeof value !== 'number') return [];
  const text = cautionFigure(value, 'g/m2', units);
  const { why } = figure;
  return [{ text, why: { ...why, inputs: [...why.inputs, [besides[key], text]] } }];
}

/** The same, and its lines and what it names besides: all rest on the same. */
export function figuresAndLines(caution: Caution, units: UnitSet): readonly FigureInText[] {
  const figures = cautionFigures(caution, units);
  return figures.flatMap((figure) => [
    figure,
    ...linesOfCaution(caution).map(({ at }) => ({
      ...figure,
      text: cautionFigure(at, caution.unit, units),
    })),
    ...(Object.keys(besides) as (keyof typeof besides)[]).flatMap((key) =>
      figureBesides(figure, key, caution, units),
    ),
  ]);
}
