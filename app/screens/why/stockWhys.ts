import type { HeapAccount } from '../../document/heapAccount';
import type { MaterialValues } from '../../document/materialValues';
import { heapRows } from '../../tables/heap';
import { rangeOdds, rangeWords } from '../../words/ranges';
import type { StockLine } from '../../words/stockWords';
import type { FigureInText } from '../../words/why';
import type { Shown } from '../shown';
import { rowSource } from './sourcesOf';

const asLogged =
  'From what you wrote down. What each mowing weighs has its own why under “Mowings so far”.';
const names = { clippings: 'Clippings, dry', leaves: 'Leaves, dry', 'raked off': 'Raked off, dry' };

/** What was put on a heap since it was written down: its dry weight and nitrogen. */
export function putOnFigures(
  texts: readonly string[],
  { entries }: HeapAccount,
  { estimate, units }: Pick<Shown, 'estimate' | 'units'>,
): readonly FigureInText[] {
  return texts.map((text): FigureInText => ({
    text,
    why: {
      of: 'Put on the heap.',
      formula: 'What of each mowing and raking went there, dry, × its share of nitrogen.',
      inputs: (['clippings', 'leaves', 'raked off'] as const).flatMap((kind) => {
        const of = entries.filter(({ what }) => what === kind);
        const kilograms = of.reduce((sum, { dryKilograms }) => sum + dryKilograms, 0);
        return of.length === 0 ? [] : [[names[kind], estimate(kilograms, units.mass)] as const];
      }),
      range: null,
      sources: [asLogged],
    },
  }));
}

/** What a heap should have shrunk to, and what was taken off it. */
export function shrunkFigures(
  texts: readonly string[],
  { start, putOn, left, takenDryKilograms }: HeapAccount,
  { estimate, units }: Pick<Shown, 'estimate' | 'units'>,
): readonly FigureInText[] {
  const dry = rangeWords(left.dryKilograms, units.mass).between;
  const nitrogen = rangeWords(left.nitrogenGrams, units.nitrogen).between;
  return [
    ...texts.map((text): FigureInText => ({
      text,
      why: {
        of: 'What is left of the heap.',
        formula:
          'What was there + each thing put on × (1 − the share that is lost in the end × (1 − e to the power of − its days ÷ days of loss)).',
        inputs: [
          ['Was there, dry', estimate(start.dryKilograms, units.mass)],
          ['Nitrogen in that', estimate(start.nitrogenGrams, units.nitrogen)],
          ['Put on since, dry', estimate(putOn.dryKilograms, units.mass)],
          ['Nitrogen put on', estimate(putOn.nitrogenGrams, units.nitrogen)],
        ],
        range:
          dry === null || nitrogen === null
            ? null
            : `${dry} dry, with ${nitrogen} of nitrogen, ${rangeOdds}`,
        sources: [
          rowSource('Dry weight lost in the end', heapRows.dryLost),
          rowSource('Nitrogen lost in the end', heapRows.nitrogenLost),
          rowSource('Days of loss', heapRows.lossDays),
        ],
      },
    })),
    {
      text: `${estimate(takenDryKilograms, units.mass)} of it`,
      why: {
        of: 'Taken off and laid.',
        formula: 'Dry weight of all layers laid from it, added up.',
        inputs: [],
        range: null,
        sources: ['From the layers you wrote down.'],
      },
    },
  ];
}

/** What a store was given and gave, as its books have it. */
export function storeFigures(
  texts: readonly string[],
  { start, added, laid, isDry }: StockLine,
  { row }: Pick<MaterialValues, 'row'>,
): readonly FigureInText[] {
  return texts.map((text): FigureInText => ({
    text,
    why: {
      of: 'The books of the store.',
      formula: `What was there + added − taken out, by dry weight${isDry ? '' : ', told in the measure you gave it in'}.`,
      inputs: [
        ['Was there', start],
        ...(added === null ? [] : [['Added', added] as const]),
        ...(laid === null ? [] : [['Taken out', laid] as const]),
      ],
      range: null,
      sources: [
        'From what you wrote down.',
        rowSource('Weighs, loose', row.densityKgPerM3),
        rowSource('Water in it', row.moisturePercent),
      ],
    },
  }));
}
