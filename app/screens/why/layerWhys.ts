import { materialFrom } from '../../document/materialValues';
import type { Application, Bed, Garden } from '../../document/schema';
import { percent } from '../../words/chartFormat';
import type { FigureInText } from '../../words/why';
import type { Shown } from '../shown';
import type { Lying } from '../week/layRows';
import { layerLeftWhy } from './coverWhys';
import { rowSource } from './sourcesOf';

/** A layer as the log tells it. */
export interface LayerFacts {
  readonly garden: Garden;
  /** as large as it was that day */
  readonly bed: Bed;
  readonly layer: Pick<Application, 'from' | 'placement'>;
  readonly lies: Lying;
  /** share of its dry weight that lies there today; null: dug in, or not known */
  readonly left: number | null;
  readonly shown: Shown;
}

/** What a layer weighs, how thick it lay, its nitrogen, and how much of it is left. */
export function layerFigures(facts: LayerFacts): readonly FigureInText[] {
  const { garden, bed, layer, lies, left, shown } = facts;
  const { units } = shown;
  const { row } = materialFrom(garden, layer.from);
  const fresh = shown.estimate(lies.freshKilograms, units.mass);
  const dry = shown.estimate(lies.dryKilograms, units.mass);
  const depth = shown.estimate(lies.millimetres, units.depth);
  const nitrogen = shown.estimate(lies.nitrogenGramsPerM2, units.nitrogenPerArea);
  return [
    {
      text: `about ${fresh}, ${depth} as laid, ${nitrogen} of nitrogen`,
      why: {
        of: 'What was laid.',
        formula:
          'Weight: its amount × what a litre of it weighs, or as you weighed one, as wet as it was. Thickness: volume ÷ area of the bed. Nitrogen: dry weight × its share of nitrogen ÷ area of the bed.',
        inputs: [
          ['As it was laid', fresh],
          ['Dry, that is', dry],
          ['The bed', shown.estimate(bed.areaM2, units.area)],
        ],
        range: null,
        sources: [
          rowSource(`Weight of ${row.name.toLowerCase()}`, row.densityKgPerM3),
          rowSource('Water in it', row.moisturePercent),
          rowSource('Nitrogen, of dry weight', row.nitrogenPercent),
        ],
      },
    },
    ...(left === null
      ? []
      : [
          {
            text: `${percent(left)} of its dry weight`,
            why: layerLeftWhy(dry),
          },
        ]),
  ];
}
