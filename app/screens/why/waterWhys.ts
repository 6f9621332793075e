import type { Bed, Garden } from '../../document/schema';
import { cropById } from '../../document/cropValues';
import { coefficientRows } from '../../tables/coefficients';
import type { CoverSaved, WaterDue } from '../../core/season/waterNeeds';
import { standingPlantings } from '../../core/season/plantingAccount';
import type { BedResults } from '../../store/contract';
import { savedDoubt, waterForecastWords } from '../../words/waterWords';
import type { Why } from '../../words/why';
import type { Shown } from '../shown';
import { rowSource } from './sourcesOf';

/** How much is poured, and when. */
export function pourWhy(
  due: WaterDue,
  bed: Bed,
  results: BedResults | undefined,
  garden: Garden,
  shown: Shown,
): Why {
  const rows = results
    ? standingPlantings(results.input, due.day).flatMap(
        ({ crop }) => cropById(garden, crop.id) ?? [],
      )
    : [];
  return {
    of: 'How much to pour.',
    formula:
      'What roots are short of, back to half of what they find easily, + what the cover drinks first. It is due once they have used up all they find easily.',
    inputs: [
      ['Due', shown.day(due.day)],
      ['To pour', shown.estimate(due.pour, shown.units.rain)],
      ['On the whole bed', shown.estimate(due.pour * bed.areaM2, shown.units.volume)],
    ],
    range: null,
    sources: [
      waterForecastWords,
      ...rows.map((row) =>
        rowSource(
          `Of the water in the soil ${row.name.toLowerCase()} find easily`,
          row.depletionShare,
        ),
      ),
      rowSource('Drying under a cover', coefficientRows.coverEvaporationSaving),
    ],
  };
}

/** What a cover saved of the soil's water. */
export function savedWhy({ soil, caught, atHand }: CoverSaved, shown: Shown): Why {
  const depth = (millimetres: number) => shown.estimate(millimetres, shown.units.rain);
  return {
    of: 'What its cover saved.',
    formula:
      'What the soil gave off to the air this season with nothing laid − what it gave off as it is; both runs have the same weather.',
    inputs: [
      ['Less from the soil, likely', depth(soil.typical)],
      ['Caught and given back by the cover', depth(caught)],
      ['More at hand for roots today', depth(atHand)],
    ],
    range: `${depth(soil.low)} to ${depth(soil.high)}, by how much a cover slows drying`,
    sources: [
      savedDoubt,
      rowSource('Drying under a cover', coefficientRows.coverEvaporationSaving),
    ],
  };
}
