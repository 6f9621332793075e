import sampleText from '../../assets/gardens/sample.mowings?raw';
import type { SectionData } from '../../app/charts/section/data';
import { type DayNumber, dayOf } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { bedQuestion } from '../../app/document/bedQuestion';
import { parseGarden } from '../../app/document/parse';
import { sectionData } from '../../app/screens/beds/sectionData';
import type { BedResults } from '../../app/store/contract';
import { limits } from '../../app/tables/thresholds';
import { unitsOf } from '../../app/amounts/unitSystem';

export interface SectionBed {
  readonly name: string;
  readonly results: BedResults;
  readonly on: (day: DayNumber) => SectionData;
}

/** The beds of the sample garden as the program draws them. */
export function sectionBeds(): readonly SectionBed[] {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  const garden = parsed.value;
  const today = dayOf(garden.garden.today ?? '2013-06-15');
  return garden.beds.map((bed) => {
    const results = answerBed(bedQuestion(garden, bed.id, today), limits);
    return {
      name: bed.name,
      results,
      on: (day) => sectionData({ garden, results, day, units: unitsOf('metric') }),
    };
  });
}
