import type { PlantingResult } from '../../core/season/result';
import { cropById } from '../../document/cropValues';
import { percent } from '../../words/chartFormat';
import type { FigureInText } from '../../words/why';
import { whyWords } from '../../words/why';
import type { BedWhyFacts } from './bedWhys';
import { rootsTake } from './notInSum';
import { rowSource } from './sourcesOf';

/** How well one planting is fed, and what of it comes from the air. */
export function plantingFigures(
  { garden, results, shown }: BedWhyFacts,
  run: PlantingResult,
): readonly FigureInText[] {
  const grams = (gramsPerM2: number) => shown.estimate(gramsPerM2, shown.units.nitrogenPerArea);
  const crop = results.input.plantings.find(({ id }) => id === run.id)?.crop;
  const row = crop && cropById(garden, crop.id);
  return [
    {
      text: `${percent(run.demandMet)} of what it could use`,
      why: {
        of: 'Share of what it could use that it gets.',
        formula:
          '(Taken from the soil, what is more than it can use left out, + gathered from the air) ÷ all it can use from first day to last.',
        inputs: [
          ['All it can use', grams(run.demand)],
          ['Taken from the soil', grams(run.uptake)],
          ['Of that more than it can use', grams(run.luxury)],
          ['Gathered from the air', grams(run.fixed)],
        ],
        range: null,
        sources: [
          whyWords.model,
          ...(row ? [rowSource(`${row.name}, in tops and crop at a good yield`, row.uptake)] : []),
          ...rootsTake(),
        ],
      },
    },
    {
      text: grams(run.fixed),
      why: {
        of: 'Gathered from the air by its roots.',
        formula:
          'Day by day: what it wants × its usual share from the air, less as nitrate in the soil rises.',
        inputs: [['All it can use', grams(run.demand)]],
        range: null,
        sources: [
          whyWords.model,
          ...(row?.legume
            ? [rowSource('Usual share from the air', row.legume.usualPercentFixed)]
            : []),
        ],
      },
    },
  ];
}
