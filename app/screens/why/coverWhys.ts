import { at } from '../../core/season/seasonAccount';
import { coefficientRows } from '../../tables/coefficients';
import { evaporationByDepth } from '../../tables/coverBenefits';
import { percent } from '../../words/chartFormat';
import { materialFrom } from '../../document/materialValues';
import { figuresWith, whyWords, type FigureInText, type Why } from '../../words/why';
import type { MaterialRow } from '../../tables/shapes';
import type { BedWhyFacts } from './bedWhys';
import { rowSource } from './sourcesOf';

/** Ground hidden by what lies on it. */
export const hiddenWhy: Why = {
  of: 'Ground hidden.',
  formula: '1 − e^(−k × dry weight that lies on a square metre).',
  inputs: [],
  range: null,
  sources: [
    rowSource('k, how well a cover hides ground', coefficientRows.coverFractionPerKilogram),
  ],
};

/**
 * How much of a layer still lies there.
 *
 * @param dry its dry weight when laid, as it is written; null where many layers are meant
 */
export const layerLeftWhy = (dry: string | null): Why => ({
  of: 'What of it still lies there.',
  formula:
    'Dry weight today ÷ dry weight when laid: it rots by its kind, by the warmth of each day and by how wet it lies.',
  inputs: dry === null ? [] : [['Dry when laid', dry]],
  range: null,
  sources: [
    whyWords.model,
    rowSource('How fast greens on top rot, against dug in', coefficientRows.surfaceRateGreen),
  ],
});

/** What was laid on a bed, each material once. */
function laidRows({ garden, results }: BedWhyFacts): readonly MaterialRow[] {
  const rows = results.input.layers.flatMap(({ id }) => {
    const layer = garden.applications.find((one) => one.id === id);
    return layer ? [materialFrom(garden, layer.from).row] : [];
  });
  return [...new Map(rows.map((row) => [row.id, row])).values()];
}

/** How deep layers lay when they were laid. */
const laidDepthWhy = (facts: BedWhyFacts): Why => ({
  of: 'How deep it was laid.',
  formula: 'Volume, as loose as it was that day, ÷ area of the bed.',
  inputs: [],
  range: null,
  sources: laidRows(facts).map((row) =>
    rowSource(`Weight of ${row.name.toLowerCase()}, as laid`, row.densityKgPerM3),
  ),
});

/** How deep a layer lies today. */
const depthNowWhy = (facts: BedWhyFacts): Why => ({
  of: 'How deep it lies, settled.',
  formula:
    'Its dry weight when laid × what is left of it ÷ what a heap of it weighs dry once settled.',
  inputs: [],
  range: null,
  sources: [
    whyWords.model,
    ...laidRows(facts).map((row) =>
      rowSource(`Weight of ${row.name.toLowerCase()}, settled`, row.settledDensityKgPerM3),
    ),
  ],
});

/** What stands behind a column of the list of layers. */
export function layerColumnWhy(facts: BedWhyFacts, column: 'laid depth' | 'depth' | 'left'): Why {
  switch (column) {
    case 'laid depth':
      return laidDepthWhy(facts);
    case 'depth':
      return depthNowWhy(facts);
    case 'left':
      return layerLeftWhy(null);
  }
}

/** The figures of a layer's line: what is left of it, and how deep it lies. */
export const layerLineFigures = (facts: BedWhyFacts, says: string): readonly FigureInText[] => [
  ...figuresWith(says, '%').map((text) => ({ text, why: layerLeftWhy(null) })),
  ...figuresWith(says, facts.shown.chart.depth.short).map((text) => ({
    text,
    why: depthNowWhy(facts),
  })),
  ...figuresWith(says, 'as laid').map((text) => ({ text, why: laidDepthWhy(facts) })),
];

/** How fast wet ground dries under the cover against bare ground. */
export function dryingWhy({ results, shown }: BedWhyFacts): Why {
  const { season, input } = results;
  const deep = evaporationByDepth.filter(({ millimetres }) => millimetres > 0);
  return {
    of: 'How fast wet ground dries under it.',
    formula: 'Read off between measured depths, on straight lines; no less than at the deepest.',
    inputs: [
      ['It lies', shown.estimate(at(season.coverDepth, season, input.today), shown.units.depth)],
      ...deep.map(
        ({ millimetres, left }) =>
          [
            `Under ${shown.estimate(millimetres, shown.units.depth)}`,
            `${percent(left.typical)} (${percent(left.low)} to ${percent(left.high)})`,
          ] as const,
      ),
    ],
    range: null,
    sources: deep.map(({ millimetres, left }) =>
      rowSource(`Under ${shown.estimate(millimetres, shown.units.depth)}`, left),
    ),
  };
}
