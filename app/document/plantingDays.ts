import { dayOf, type DayNumber } from '../core/days';
import type { SoilProperties } from '../core/season/input';
import { staysForYears } from '../tables/crops';
import { cropById } from './cropValues';
import { cropInput } from './plantingInput';
import type { Garden, Planting } from './schema';

/** When a planting does what: typed days first, else the crop row's. */
export interface PlantingDays {
  readonly start: DayNumber;
  readonly flower: DayNumber | null;
  readonly pick: DayNumber | null;
  /** day it leaves the bed; null while nobody says: past its end and not cleared, or standing for years */
  readonly end: DayNumber | null;
  /** by the crop row: when it should end; null for what stands for years */
  readonly usualEnd: DayNumber | null;
}

/**
 * The days of a planting by the calendar alone, without weather: cheap, and there at once while the
 * sums of a change are still on their way. As `plantingInput` has them, for what does not stand for years;
 * of what does only the typed days.
 *
 * @throws when the tables have no such crop: `parseGarden` and the store let no such garden in
 */
export function plantingDays(
  garden: Pick<Garden, 'crops'>,
  planting: Planting,
  soil: SoilProperties,
  today: DayNumber,
): PlantingDays {
  const row = cropById(garden, planting.cropId);
  if (!row) throw new Error(`No crop ${planting.cropId} in the tables`);
  const start = dayOf(planting.started);
  const typedEnd = planting.cleared === null ? null : dayOf(planting.cleared);
  const typedPick = planting.firstHarvest === null ? null : dayOf(planting.firstHarvest);
  if (staysForYears(row.tableId))
    return { start, flower: null, pick: typedPick, end: typedEnd, usualEnd: null };
  const crop = cropInput(row, planting, soil);
  const usualEnd = start + crop.usualDays;
  const end = typedEnd ?? (usualEnd > today ? usualEnd : null);
  const isPicked = crop.excessClass !== 'cover';
  return {
    start,
    flower: crop.flowerDays === null ? null : start + crop.flowerDays,
    pick: isPicked ? Math.min(typedPick ?? start + crop.firstHarvestDays, end ?? usualEnd) : null,
    end,
    usualEnd,
  };
}
