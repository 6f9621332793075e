import type { BedSeason } from '../../core/season/input';
import { measuredMatter } from '../../document/measuredMatter';
import type { Bed, Garden } from '../../document/schema';
import { bulkDensityRow, organicMatterRow } from '../../tables/soils';
import type { FigureInText } from '../../words/why';
import { rowSource } from './sourcesOf';

/** What stands behind the two figures of a bed's soil, as they stand in its sentence. */
export function soilFigures(
  events: Garden['events'],
  bed: Bed,
  soil: BedSeason['soil'],
  matter: string,
  weight: string,
): readonly FigureInText[] {
  const tested = measuredMatter({ events }, bed);
  const isTested = tested !== null;
  return [
    {
      text: matter,
      why: {
        of: 'Organic matter.',
        formula: isTested
          ? 'As the laboratory found it.'
          : 'Taken from the years of mulch or compost behind the bed, for want of a test.',
        inputs: [
          [
            isTested ? 'Tested' : 'Years of mulch or compost',
            isTested ? matter : (bed.mulchYears ?? 'not said'),
          ],
        ],
        range: null,
        sources: [rowSource('Organic matter', organicMatterRow(tested, bed.mulchYears))],
      },
    },
    {
      text: weight,
      why: {
        of: 'What the soil weighs, dry.',
        formula: 'As usual for garden soil, or less where organic matter makes it lighter.',
        inputs: [
          ['How it feels', bed.texture],
          ['Organic matter', matter],
        ],
        range: null,
        sources: [rowSource('Weight', bulkDensityRow(bed.texture, soil.organicMatterPercent))],
      },
    },
  ];
}
