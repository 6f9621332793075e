import type { MarkPlace, SectionData, SectionMark } from '../../charts/section/data';
import type { CoverLayerShown } from '../../charts/cover/data';
import type { UnitSet } from '../../amounts/unitSystem';
import type { DayNumber } from '../../core/days';
import { plantsOnDay } from '../../core/season/plantStage';
import { lastDayOf } from '../../core/season/seasonAccount';
import type { Caution, CautionKind } from '../../core/season/verdict';
import { cropById, cropName } from '../../document/cropValues';
import type { Application, Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { grownMillimetres } from '../../tables/cropHeights';
import { limits } from '../../tables/thresholds';
import { cautionSentence } from '../../words/cautionSentences';
import { layersShown } from './chartData';
import { habitOf } from './plantHabits';

/** Where a caution is to be seen in a bed; those that are nowhere in it stand in words alone. */
const placeOfCaution: Readonly<Partial<Record<CautionKind, MarkPlace>>> = {
  'layer depth': 'cover',
  'all cover': 'cover',
  'too soon': 'cover',
  'sour mat': 'cover',
  'ammonia under glass': 'cover',
  runners: 'cover',
  'seed heads': 'cover',
  slugs: 'cover',
  seedlings: 'cover',
  'cold soil': 'soil',
  'dry soil': 'soil',
  'seed fly': 'soil',
  'tied up': 'soil',
  'washing out': 'soil',
  frost: 'plants',
  'frost kill': 'plants',
  'over-feeding': 'plants',
  legume: 'plants',
  short: 'plants',
  'salad nitrate': 'plants',
  overdue: 'plants',
};

const marksOf = (cautions: readonly Caution[], units: UnitSet): readonly SectionMark[] =>
  cautions.flatMap((caution): SectionMark[] => {
    const place = placeOfCaution[caution.kind];
    return place ? [{ place, weight: caution.weight, says: cautionSentence(caution, units) }] : [];
  });

export interface SectionOf {
  readonly garden: Garden;
  /** the run drawn: the bed as it is, or with a layer that is only thought of */
  readonly results: BedResults;
  /** of layers that are only thought of */
  readonly proposed?: readonly Application[];
  readonly day: DayNumber;
  /** marks stand for today's cautions, so on a later day there are none */
  readonly units: UnitSet | null;
}

/** Everything the section of a bed shows on an evening of a run. */
export function sectionData({ garden, results, proposed, day, units }: SectionOf): SectionData {
  const { input, season, cautions } = results;
  // one's own crop grows as the row of the tables it rests on
  const rowOf = (cropId: string): string => cropById(garden, cropId)?.tableId ?? cropId;
  const grown = (cropId: string): number => grownMillimetres(rowOf(cropId));
  const layers: readonly CoverLayerShown[] = layersShown(garden, results, day, proposed);
  return {
    result: season,
    day,
    layers,
    plants: plantsOnDay({ input, result: season }, day, limits, grown).map(
      ({ planting, stage, height, rootDepth }) => ({
        id: planting.id,
        name: cropName(garden, planting.crop.id),
        habit: habitOf(rowOf(planting.crop.id)),
        stage,
        share: planting.share,
        height,
        grown: grown(planting.crop.id),
        rootDepth,
      }),
    ),
    marks: units ? marksOf(cautions, units) : [],
  };
}

/** So far ahead a section looks [days]; at the season's end as far as the run goes. */
export const daysAhead = 28;
export const dayAhead = ({ season }: BedResults): DayNumber =>
  Math.min(season.today + daysAhead, lastDayOf(season));
