import { dayOfYear, type DayNumber } from '../days';
import { hargreavesReferenceEvapotranspiration } from '../soil/evapotranspiration';
import { temperatureFactor } from '../soil/temperature';
import { topDepth, waterSizes, type WaterSizes } from '../soil/water';
import { sameDayEventOrder, sameDayOrder } from './sameDay';
import type { BedEvent, BedSeason, LayerInput, SeasonWeather } from './input';

/** What follows from the weather alone, by day of the run. */
export interface WeatherPlan {
  /** [mm] */
  readonly rain: Float64Array;
  /** reference evapotranspiration [mm] */
  readonly evapotranspiration: Float64Array;
  /** mean air temperature [deg C] and what it does to decay on top */
  readonly mean: Float64Array;
  readonly airFactor: Float64Array;
}

/** The layer below 0-30 cm as one season's roots make it. */
export interface LowerLayer {
  /** [mm] */
  readonly depth: number;
  readonly sizes: WaterSizes;
}

/** What follows from the input and does not change from day to day. */
export interface RunPlan extends WeatherPlan {
  /** depth of the lower layer in the first season of the run [mm] */
  readonly lowerDepth: number;
  readonly sizes: WaterSizes;
  /** rain of a normal year [mm] */
  readonly rainOfYear: number;
  /** 1 on days with entries or a season's start: on all others the three below need no look */
  readonly isBusy: Uint8Array;
  /**
   * by day: places of the plantings that may stand on it or stood the day before lie from here to
   * before there; the log of years has many others
   */
  readonly plantsFrom: Uint16Array;
  readonly plantsTo: Uint16Array;
  /** by day of the run, in the order of a day */
  readonly events: ReadonlyMap<number, readonly BedEvent[]>;
  readonly layers: ReadonlyMap<number, readonly LayerInput[]>;
  readonly seasonStarts: ReadonlySet<number>;
  /** the lower layer from each of these mornings on */
  readonly lowerLayers: ReadonlyMap<number, LowerLayer>;
  /** ids of plantings whose picks were logged */
  readonly pickedPlantings: ReadonlySet<string>;
  /** the same by season of plants that stay for years, as `seasonName` names it */
  readonly pickedSeasons: ReadonlySet<string>;
}

/**
 * Depth of the lower layer [mm] in the season that begins on a day of the run: at least 30 cm, to
 * the deepest root of what stands in it on any day (model 6), and in a bed's first no less than its
 * ground was reckoned to, so that nothing of it is left behind.
 *
 * @param from first day of the season, or of the run
 */
export function lowerDepthFor(input: BedSeason, from: DayNumber = input.firstDay): number {
  const next = input.seasonStarts.filter((day) => day > from);
  const to = Math.min(input.lastDay, ...next.map((day) => day - 1));
  let depth = topDepth;
  for (const { crop, startDay, standsSince, clearingDay } of input.plantings)
    if ((standsSince ?? startDay) <= to && (clearingDay === null || clearingDay >= from))
      depth = Math.max(depth, crop.fullRootDepth - topDepth);
  if (from === input.firstDay)
    for (const ground of input.ground ?? [])
      depth = Math.max(depth, lowerDepthFor(ground.input, ground.input.seasonStarts.at(-1)));
  return depth;
}

/** A planting's season in `pickedSeasons`. */
export const seasonName = (plantingId: string, season: number): string =>
  `${season} of ${plantingId}`;

function pickedSeasons({ plantings, events }: BedSeason): Set<string> {
  const picked = new Set<string>();
  for (const event of events) {
    if (event.kind !== 'harvest') continue;
    const seasons = plantings.find(({ id }) => id === event.plantingId)?.seasons ?? [];
    const at = seasons.findLastIndex(({ seasonDay }) => seasonDay <= event.day);
    if (at >= 0) picked.add(seasonName(event.plantingId, at));
  }
  return picked;
}

export function weatherPlan(
  weather: SeasonWeather,
  firstDay: number,
  latitudeDegrees: number,
): WeatherPlan {
  const low = weather.minimumCelsius;
  const high = weather.maximumCelsius;
  const mean = low.map((coldest, index) => (coldest + high[index]!) / 2);
  const given = weather.referenceEvapotranspiration;
  return {
    rain: weather.rainMillimetres,
    evapotranspiration: low.map((coldest, index) => {
      const reckoned = given?.[index] ?? Number.NaN;
      return Number.isNaN(reckoned)
        ? hargreavesReferenceEvapotranspiration(
            coldest,
            high[index]!,
            latitudeDegrees,
            dayOfYear(firstDay + index),
          )
        : reckoned;
    }),
    mean,
    airFactor: mean.map(temperatureFactor),
  };
}

function byDay<Entry extends { readonly day: number }>(
  entries: readonly Entry[],
  firstDay: number,
  order: (one: Entry, other: Entry) => number,
): Map<number, Entry[]> {
  const days = new Map<number, Entry[]>();
  for (const entry of entries) {
    const index = entry.day - firstDay;
    const known = days.get(index);
    if (known) known.push(entry);
    else days.set(index, [entry]);
  }
  for (const list of days.values()) list.sort(order);
  return days;
}

/** Where among a bed's plantings those of each day lie: in most logs side by side. */
function plantsByDay({
  firstDay,
  lastDay,
  plantings,
}: BedSeason): Pick<RunPlan, 'plantsFrom' | 'plantsTo'> {
  const days = lastDay - firstDay + 1;
  const plantsFrom = new Uint16Array(days).fill(plantings.length);
  const plantsTo = new Uint16Array(days);
  plantings.forEach(({ startDay, standsSince, clearingDay }, at) => {
    const first = Math.max(0, (standsSince ?? startDay) - firstDay);
    const last = Math.min(days - 1, (clearingDay ?? lastDay) + 1 - firstDay);
    for (let index = first; index <= last; index++) {
      plantsFrom[index] = Math.min(plantsFrom[index]!, at);
      plantsTo[index] = at + 1;
    }
  });
  return { plantsFrom, plantsTo };
}

/** @param shared the plan of the input's weather, where it is at hand */
export function runPlan(
  input: BedSeason,
  lowerDepth: number,
  shared: WeatherPlan = weatherPlan(input.weather, input.firstDay, input.latitudeDegrees),
): RunPlan {
  const events = byDay(input.events, input.firstDay, sameDayEventOrder);
  const layers = byDay(input.layers, input.firstDay, sameDayOrder);
  const seasonStarts = new Set(input.seasonStarts.map((day) => day - input.firstDay));
  const isBusy = new Uint8Array(input.lastDay - input.firstDay + 1);
  for (const days of [events.keys(), layers.keys(), seasonStarts])
    for (const index of days) isBusy[index] = 1;
  return {
    // one by one: plans spread together from different weathers would be of different shapes
    rain: shared.rain,
    evapotranspiration: shared.evapotranspiration,
    mean: shared.mean,
    airFactor: shared.airFactor,
    lowerDepth,
    sizes: waterSizes(input.soil, lowerDepth),
    rainOfYear: input.normals.rainMillimetres.reduce((sum, month) => sum + month, 0),
    isBusy,
    ...plantsByDay(input),
    events,
    layers,
    seasonStarts,
    lowerLayers: new Map(
      input.seasonStarts.map((day): [number, LowerLayer] => {
        const depth = lowerDepthFor(input, day);
        return [day - input.firstDay, { depth, sizes: waterSizes(input.soil, depth) }];
      }),
    ),
    pickedPlantings: new Set(
      input.events.flatMap((event) => (event.kind === 'harvest' ? [event.plantingId] : [])),
    ),
    pickedSeasons: pickedSeasons(input),
  };
}
