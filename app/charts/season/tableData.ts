import { textFromDay } from '../../core/days';
import type { ChartUnit } from '../../words/chartUnits';
import { seasonLineWords } from '../../words/seasonChart';
import type { TableData } from '../export/tableData';
import type { DaySpan, SeasonChartData } from './data';
import { readDay } from './reading';
import { seasonSeries } from './series';

/** Every number of a bed's season, a row a day, in the units that are read. */
export function seasonTable(data: SeasonChartData, span: DaySpan): TableData {
  const { units, plantings } = data;
  const series = seasonSeries(
    data.result,
    span,
    data.bulkDensityKgPerL,
    plantings.filter(({ isCoverCrop }) => isCoverCrop).map(({ id }) => id),
  );
  const nitrogen = units.nitrogen.short;
  const shown = (inside: number, unit: ChartUnit) => inside * unit.perInside;
  const warmth = (celsius: number) => celsius * units.warmth.perInside + units.warmth.zero;
  const names = series.bands.map(({ name }) => name);
  const head = [
    'day',
    'weather',
    `${seasonLineWords.demand} [${nitrogen}]`,
    `${seasonLineWords.got} [${nitrogen}]`,
    ...names.map((name) => `${seasonLineWords[name]} [${nitrogen}]`),
    `all it gets [${nitrogen}]`,
    `${seasonLineWords.gone} [${nitrogen}]`,
    `ready in the top ${units.topSoil} [${nitrogen}]`,
    `ready in the top ${units.topSoil} [mg/kg]`,
    `ready, 10 % of seasons below [${nitrogen}]`,
    `ready, 10 % of seasons above [${nitrogen}]`,
    `rain [${units.rain.short}]`,
    `watered [${units.rain.short}]`,
    `coldest air [${units.warmth.short}]`,
    `warmest air [${units.warmth.short}]`,
    `soil [${units.warmth.short}]`,
    'state',
    'what happened',
  ];
  const rows = Array.from({ length: span.to - span.from + 1 }, (_value, index) => {
    const reading = readDay(data, series, span.from + index);
    const grams = (inside: number) => shown(inside, units.nitrogen);
    return [
      textFromDay(reading.day),
      reading.kind,
      grams(reading.demand),
      grams(reading.got),
      ...reading.bands.map((band) => grams(band.grams)),
      grams(reading.supply),
      grams(reading.gone),
      grams(reading.readyTop),
      reading.nitrateMgPerKg,
      reading.likely && grams(reading.likely.low),
      reading.likely && grams(reading.likely.high),
      shown(reading.rain, units.rain),
      shown(reading.watered, units.rain),
      warmth(reading.airMinimum),
      warmth(reading.airMaximum),
      warmth(reading.soil),
      reading.state,
      reading.happened.join('; '),
    ];
  });
  return { head, rows };
}
