import { cropOf } from '../tables/crops';
import type { CropRow, Row } from '../tables/shapes';
import { rowOrMeasured } from './measuredRow';
import type { Garden } from './schema';

/** A crop as a garden grows it: a row of the tables, or one of its own that rests on one. */
export interface CropValues extends CropRow {
  /** of the table's row: for what is kept by crop elsewhere (frost, emergence, years it stands) */
  readonly tableId: string;
}

const own = (row: Row, value: number | undefined): Row =>
  value === undefined ? row : rowOrMeasured(row, value);

/**
 * A crop by the id a garden uses: one of its own, or a row of the tables; undefined when neither
 * has it. Own numbers stand in for the row's with the narrow range of a measurement; days to first
 * pick are kept within the days it stands, so that one own number does not contradict the row.
 */
export function cropById(garden: Pick<Garden, 'crops'>, id: string): CropValues | undefined {
  const mine = garden.crops?.find((one) => one.id === id);
  const row = cropOf(mine?.basedOn ?? id);
  if (!row) return undefined;
  if (!mine) return { ...row, tableId: row.id };
  const usualDays = own(row.usualDays, mine.usualDays);
  const pick = mine.firstHarvestDays ?? row.firstHarvestDays.typical;
  // held back by the days it stands, the table's number is still nobody's own
  const within = own(row.firstHarvestDays, Math.min(pick, usualDays.typical));
  return {
    ...row,
    id: mine.id,
    tableId: row.id,
    name: mine.name,
    uptake: own(row.uptake, mine.uptakeGramsPerM2),
    goodYield: own(row.goodYield, mine.goodYieldKilogramsPerM2),
    usualDays,
    firstHarvestDays:
      mine.firstHarvestDays === undefined
        ? { ...within, standing: row.firstHarvestDays.standing }
        : within,
    rootDepthCentimetres: own(row.rootDepthCentimetres, mine.rootDepthCentimetres),
  };
}

/** Its name; the id where there is no such crop. */
export const cropName = (garden: Pick<Garden, 'crops'>, id: string): string =>
  cropById(garden, id)?.name ?? id;
