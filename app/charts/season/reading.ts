import type { DayNumber } from '../../core/days';
import { gramsPerM2FromMgPerKg } from '../../core/units';
import type { NitrogenState } from '../../core/season/verdict';
import { amount, amountSpoken, amountWithUnit, dayFull, degrees } from '../../words/chartFormat';
import {
  dayKindWords,
  seasonLineWords,
  seasonPanelWords,
  stageSentences,
} from '../../words/seasonChart';
import type { PlantingOnChart, SeasonChartData } from './data';
import { likelyOn } from './likely';
import { toldKind, type ToldKind } from './origin';
import type { BandName, SeasonSeries } from './series';

/** Everything the chart knows of one evening; grams in g/m2, added up since the first day shown. */
export interface DayReading {
  readonly day: DayNumber;
  /** how its weather is known */
  readonly kind: ToldKind;
  readonly demand: number;
  readonly got: number;
  readonly bands: readonly { readonly name: BandName; readonly grams: number }[];
  readonly supply: number;
  readonly gone: number;
  readonly readyTop: number;
  readonly nitrateMgPerKg: number;
  /** the ends between which readyTop lies in 8 imagined seasons of 10; null: not known */
  readonly likely: { readonly low: number; readonly high: number } | null;
  /** null: not known then, or still to come */
  readonly state: NitrogenState | null;
  readonly rain: number;
  readonly watered: number;
  /** °C: the coldest and warmest air since then, and the soil of that day */
  readonly airMinimum: number;
  readonly airMaximum: number;
  readonly soil: number;
  /** what was done or happened on the days since `since` (the day itself by default) */
  readonly happened: readonly string[];
}

/** One evening of a bed's season as its values are told. */
export interface SeasonDay {
  readonly reading: DayReading;
  /** first day shown: from its morning on everything is added up */
  readonly from: DayNumber;
  readonly plantings: readonly PlantingOnChart[];
}

/** The state that was known on a day: today's own, or the latest weekly entry; null before the first and after today. */
export function stateOn(
  data: Pick<SeasonChartData, 'history' | 'verdict' | 'result'>,
  day: DayNumber,
): NitrogenState | null {
  if (day === data.result.today) return data.verdict.state;
  if (day > data.result.today) return null;
  return (data.history ?? []).findLast((entry) => entry.day <= day)?.state ?? null;
}

function happenings(data: SeasonChartData, from: DayNumber, to: DayNumber): readonly string[] {
  const words: { day: DayNumber; text: string }[] = [];
  const add = (day: DayNumber | null, text: string) => {
    if (day !== null && day >= from && day <= to) words.push({ day, text });
  };
  for (const layer of data.layers)
    add(
      layer.day,
      layer.inSoil === true
        ? `${layer.name}, dug or hoed in`
        : `${layer.name}, ${amountWithUnit(layer.laidDepth, data.units.depth)} laid`,
    );
  for (const planting of data.plantings) {
    const run = data.result.plantings.find((candidate) => candidate.id === planting.id);
    if (!run) continue;
    add(run.startDay, `${planting.name}: ${planting.sown ? 'sown' : 'planted'}`);
    add(planting.flowerDay, `${planting.name}: ${stageSentences.flower}`);
    add(planting.firstHarvestDay, `${planting.name}: ${stageSentences.pick}`);
    add(run.clearingDay, `${planting.name}: ${stageSentences.cleared}`);
  }
  for (const test of data.tests ?? [])
    add(test.day, `${seasonPanelWords.test}: ${Math.round(test.mgPerKg)} mg/kg`);
  return words.toSorted((a, b) => a.day - b.day).map(({ text }) => text);
}

/** Reads the chart on one day of its view. Rain and happenings may be gathered since an earlier day. */
export function readDay(
  data: SeasonChartData,
  series: SeasonSeries,
  day: DayNumber,
  since: DayNumber = day,
): DayReading {
  const edge = day - series.span.from + 1;
  const inRun = (on: DayNumber) => on - data.result.firstDay;
  const at = (values: Float64Array) => values[edge] ?? 0;
  const likely = likelyOn(data.likely ?? [], day);
  const gramsOf = (mgPerKg: number): number =>
    gramsPerM2FromMgPerKg(mgPerKg, data.bulkDensityKgPerL, 30);
  const days = (values: Float64Array) => values.subarray(inRun(since), inRun(day) + 1);
  const gathered = (values: Float64Array): number =>
    days(values).reduce((sum, value) => sum + value, 0);
  return {
    day,
    kind: toldKind(data.origins, day, data.result.kind[inRun(day)]),
    demand: at(series.demand),
    got: at(series.got),
    bands: series.bands.map((band) => ({ name: band.name, grams: at(band.grams) })),
    supply: at(series.supply),
    gone: at(series.gone),
    readyTop: at(series.readyTop),
    nitrateMgPerKg: at(series.nitrateMgPerKg),
    likely: likely && { low: gramsOf(likely.low), high: gramsOf(likely.high) },
    state: stateOn(data, day),
    rain: gathered(data.result.rain),
    watered: gathered(data.result.watered),
    airMinimum: days(data.result.airMinimum).reduce((least, one) => Math.min(least, one), Infinity),
    airMaximum: days(data.result.airMaximum).reduce((most, one) => Math.max(most, one), -Infinity),
    soil: data.result.soilTemperature[inRun(day)] ?? 0,
    happened: happenings(data, since, day),
  };
}

/** One reading as a sentence to be read aloud. */
export function spokenReading(data: SeasonChartData, reading: DayReading): string {
  const { nitrogen, rain } = data.units;
  const parts = [`${dayFull(reading.day, data.units)}, ${dayKindWords[reading.kind]}`];
  if (reading.state !== null) parts.push(`state ${reading.state}`);
  parts.push(
    `could use ${amountSpoken(reading.demand, nitrogen)}`,
    `has got ${amount(reading.got, nitrogen)}`,
    `supply ${amount(reading.supply, nitrogen)}`,
  );
  for (const band of reading.bands)
    if (band.grams >= 0.05)
      parts.push(`${seasonLineWords[band.name]} ${amount(band.grams, nitrogen)}`);
  if (reading.gone >= 0.05) parts.push(`lost or held back ${amount(reading.gone, nitrogen)}`);
  parts.push(
    `ready in the soil, top ${data.units.topSoil}: ${amount(reading.readyTop, nitrogen)}, ${Math.round(reading.nitrateMgPerKg)} milligrams per kilogram`,
  );
  if (reading.likely)
    parts.push(
      `in 8 imagined seasons of 10 from ${amount(reading.likely.low, nitrogen)} to ${amount(reading.likely.high, nitrogen)}`,
    );
  if (reading.rain > 0) parts.push(`rain ${amountSpoken(reading.rain, rain)}`);
  parts.push(
    `air ${degrees(reading.airMinimum, data.units)} to ${degrees(reading.airMaximum, data.units)}, soil ${degrees(reading.soil, data.units)} ${data.units.warmth.long}`,
  );
  if (reading.watered > 0) parts.push(`watered ${amountSpoken(reading.watered, rain)}`);
  return `${[...parts, ...reading.happened].join('; ')}.`;
}

/** The chart's numbers at the end of each week shown, and on its last day: the table beside the drawing. */
export function weeklyReadings(data: SeasonChartData, series: SeasonSeries): readonly DayReading[] {
  const { from, to } = series.span;
  const readings: DayReading[] = [];
  for (let start = from; start <= to; start += 7)
    readings.push(readDay(data, series, Math.min(start + 6, to), start));
  return readings;
}
