import { seasonStart, type DayNumber } from '../core/days';
import type { BedSeason } from '../core/season/input';
import type { WaterQuestion } from '../core/season/waterNeeds';
import { evaporationByDepth } from '../tables/coverBenefits';
import { dryLayer } from './dryLayer';
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
    straw: layerInput(
      garden,
      bed,
      dryLayer(
        'straw before leaving',
        bed.id,
        today,
        { source: 'elsewhere', materialId: strawId },
        strawMillimetres,
      ),
    ),
  }));
}
