import type { Bed, Garden } from '../../document/schema';
import { cropById } from '../../document/cropValues';
import { coefficientRows } from '../../tables/coefficients';
import type { CoverSaved, WaterDue } from '../../core/season/waterNeeds';
import { standingPlantings } from '../../core/season/plantingAccount';
import type { BedResults } from '../../store/contract';
import {
  cansWords,
  savedDoubt,
  savedRange,
  waterForecastWords,
  type Can,
} from '../../words/waterWords';
import type { FigureInText, Why } from '../../words/why';
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

/** How much to pour, as a depth and in cans: the two figures of a sentence, one why. */
export const pourFigures = (
  millimetres: number,
  bed: Bed,
  can: Can,
  shown: Shown,
  why: Why,
): readonly FigureInText[] => [
  { text: shown.estimate(millimetres, shown.units.rain), why },
  { text: cansWords(millimetres * bed.areaM2, can), why },
];

/** What to pour before leaving a bed to itself. */
export const awayWhy = (millimetres: number, bed: Bed, shown: Shown): Why => ({
  of: 'How much to pour before you leave.',
  formula:
    'What the soil can still take up where roots are, + what the cover drinks first. It is as full as it gets then.',
  inputs: [
    ['To pour', shown.estimate(millimetres, shown.units.rain)],
    ['On the whole bed', shown.estimate(millimetres * bed.areaM2, shown.units.volume)],
  ],
  range: null,
  sources: [
    waterForecastWords,
    rowSource('Drying under a cover', coefficientRows.coverEvaporationSaving),
  ],
});

/** The figures of what a cover saved, as they stand in its sentences. */
export function savedFigures(saved: CoverSaved, shown: Shown): readonly FigureInText[] {
  const why = savedWhy(saved, shown);
  const depth = (millimetres: number) => shown.estimate(Math.abs(millimetres), shown.units.rain);
  return [
    depth(saved.soil.typical),
    savedRange(saved, shown.units),
    `caught ${depth(saved.caught)}`,
    `${depth(saved.atHand)} ${saved.atHand > 0 ? 'more' : 'less'} at hand`,
  ].map((text) => ({ text, why }));
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
