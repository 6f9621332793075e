import type { DayNumber } from '../../../app/core/days';
import { dayOf } from '../../../app/core/days';
import type { BedSeason, LayerInput, PlantingInput } from '../../../app/core/season/input';
import { cropInput } from '../../../app/document/plantingInput';
import { bundledRecord } from '../../../app/tables/bundledRecords';
import { type CropId, crops } from '../../../app/tables/crops';
import { type MaterialId, materials } from '../../../app/tables/materials';
import { soils } from '../../../app/tables/soils';
import { bareBed, newYorkNormals, normalDegreeDays } from './handMadeBed';

const record = bundledRecord('new-york')!;
const firstDay = dayOf('2013-01-01');
const lastDay = dayOf('2013-12-31');
const year = (series: readonly number[]): Float64Array => {
  const from = firstDay - dayOf(record.firstDay);
  return Float64Array.from(series.slice(from, from + lastDay - firstDay + 1));
};

/** An unwatered bed under the measured weather of New York in 2013: loam of the table, 3 % organic matter. */
export function newYorkBed(over: Partial<BedSeason> = {}): BedSeason {
  return bareBed({
    firstDay,
    lastDay,
    weather: {
      minimumCelsius: year(record.minimumCelsius),
      maximumCelsius: year(record.maximumCelsius),
      rainMillimetres: year(record.rainMillimetres),
      kind: new Uint8Array(lastDay - firstDay + 1),
    },
    soil: {
      fieldCapacity: soils.loam.fieldCapacity.typical,
      wiltingPoint: soils.loam.wiltingPoint.typical,
      bulkDensityKgPerL: 1.3,
      organicMatterPercent: 3,
      startingMineralTop: null,
    },
    ...over,
  });
}

/** A crop of the table over the whole bed for its usual days; `good` is the table's good yield. */
export function grown(
  id: CropId,
  start: string,
  wanted: 'usual' | 'good',
  over: Partial<PlantingInput> = {},
): PlantingInput {
  const row = crops[id];
  const pick = wanted === 'good' ? { kilogramsPerM2: row.goodYield.typical } : wanted;
  const how = row.clock === 'sowing' ? 'sown' : 'planted';
  const crop = cropInput(row, { wanted: pick, how }, newYorkBed().soil);
  const startDay = dayOf(start);
  const usualEndDay = startDay + crop.usualDays;
  return {
    id,
    crop,
    share: 1,
    startDay,
    sown: how === 'sown',
    firstHarvestDay: startDay + crop.firstHarvestDays,
    usualEndDay,
    clearingDay: usualEndDay,
    cleared: true,
    topsFate: 'taken away',
    normalDegreeDays: normalDegreeDays(newYorkNormals, startDay, crop.usualDays, crop.baseCelsius),
    nodulesSeen: null,
    ...over,
  };
}

/** A material of the table laid so many mm deep, at its likely values. */
export function laid(
  id: MaterialId,
  day: DayNumber,
  millimetres: number,
  over: Partial<LayerInput> = {},
): LayerInput {
  const row = materials[id];
  const freshKgPerM2 = (row.densityKgPerM3.typical * millimetres) / 1000;
  const dryKgPerM2 = freshKgPerM2 * (1 - row.moisturePercent.typical / 100);
  const nitrogen = 10 * dryKgPerM2 * row.nitrogenPercent.typical;
  return {
    id: `${id} ${day}`,
    day,
    materialId: id,
    materialClass: row.materialClass,
    isGreens: row.isGreens,
    placement: 'laid',
    condition: row.isGreens ? 'just cut' : 'crisp',
    freshKgPerM2,
    dryKgPerM2,
    nitrogen,
    carbon: nitrogen * row.carbonToNitrogen.typical,
    laidDepth: millimetres,
    settledDensityKgPerM3: row.settledDensityKgPerM3.typical,
    mineralShare: 0,
    slowShare: 0,
    ...over,
  };
}
