import { seasonStart, textFromDay, type DayNumber } from '../core/days';
import type { BedSeason } from '../core/season/input';
import type { WaterQuestion } from '../core/season/waterNeeds';
import { evaporationByDepth } from '../tables/coverBenefits';
import type { Garden } from './schema';
import { layerInput } from './layerInput';
import { bedSeason } from './seasonInput';

/** Straw laid before somebody goes away: as deep as it holds down weeds and drying. */
const strawMillimetres = 50;
const strawId = 'straw-wheat';

/** How much less wet ground gives off under a cover of 50 mm: the row's ends, the other way round. */
const savingRange = (): { readonly low: number; readonly high: number } => {
  const row = evaporationByDepth.find(({ millimetres }) => millimetres === strawMillimetres)?.left;
  return row ? { low: 1 - row.high, high: 1 - row.low } : { low: 0, high: 1 };
};

/**
 * What is asked about the water of every bed.
 *
 * @param known their seasons by bed id, as far as there are any
 * @throws as `bedSeason`
 */
export function waterQuestions(
  garden: Garden,
  today: DayNumber,
  known: Readonly<Record<string, { readonly input: BedSeason }>> = {},
): WaterQuestion[] {
  const savedFrom = seasonStart(today, garden.garden.seasonStartMonth);
  return garden.beds.map((bed) => ({
    input: known[bed.id]?.input ?? bedSeason(garden, bed.id, today),
    savedFrom,
    saving: savingRange(),
    straw: layerInput(garden, bed, {
      id: 'straw before leaving',
      date: textFromDay(today),
      bedId: bed.id,
      from: { source: 'elsewhere', materialId: strawId },
      amount: {
        text: '',
        quantity: { kind: 'depth', millimetres: strawMillimetres },
        certainty: 'plain',
      },
      condition: 'crisp',
      wetness: 'dry',
      placement: 'laid',
      mixtureId: null,
      passedStops: [],
    }),
  }));
}
