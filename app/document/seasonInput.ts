import { dayFromParts, dayOf, seasonEnd, seasonStart, yearOf, type DayNumber } from '../core/days';
import { seasonWeather } from '../core/season/ahead';
import type {
  BedEvent,
  BedSeason,
  PlantingInput,
  SeasonWeather,
  SoilProperties,
} from '../core/season/input';
import { gramsPerM2FromMgPerKg } from '../core/units';
import { typicalCoefficients } from '../tables/coefficients';
import { typicalWeatherSpread } from '../tables/imaginedWeather';
import { curveNumberOf } from '../tables/runoffRows';
import { bulkDensityRow, organicMatterRow, soils } from '../tables/soils';
import { anyBed, areaOn } from './bedPast';
import { doneBeforeMade, firstDayMade, groundInputs, type LayingOut } from './groundInput';
import { knownThen } from './knownThen';
import { laidOutOnce } from './laidOut';
import { layerInput } from './layerInput';
import { looksOf, nodulesKnown } from './looks';
import { measuredEvaporation } from './measuredEvaporation';
import { ofBed } from './ofBed';
import { plantingInput } from './plantingInput';
import type { Application, Bed, Garden, GardenEvent } from './schema';
import { normalsOf, recordOf } from './weatherRecord';

export { normalsOf, recordOf } from './weatherRecord';

export interface SeasonOptions {
  /** layers that are only thought of, on any bed */
  readonly extraApplications?: readonly Application[];
  /** last day whose recorded weather may be used; `today` unless said otherwise, never later */
  readonly weatherUpTo?: DayNumber;
  /** run to the end of the season after the one that holds `today` */
  readonly throughNextSeason?: boolean;
  /** leave out what was done or found after `today`: the bed as it was known then */
  readonly knownThen?: boolean;
  /** the run ends with `today`: a bed that was retired on the morning after */
  readonly endsToday?: boolean;
}

/** The typical run has one fixed seed, so that the same garden gives the same answer everywhere. */
export const typicalSeed = 1;
/** A bed is run from at least this long before its first planting. */
const leadDays = 42;
/** ... but not from before the season before: what stands longer is taken as it was then. */
const longestLeadDays = 366;

/**
 * First day of the season of the bed's first entry: a layer, or a planting that was cleared since.
 * What they left behind is in the bed to this day. Infinity where there is none by `today`.
 */
function firstSeasonLogged(
  garden: Garden,
  bedId: string,
  today: DayNumber,
  seasonStartMonth: number,
): DayNumber {
  const days = [
    ...ofBed(garden.applications, bedId).map(({ date }) => dayOf(date)),
    ...ofBed(garden.plantings, bedId)
      .filter((one) => one.cleared !== null && dayOf(one.cleared) <= today)
      .map(({ started }) => dayOf(started)),
  ];
  const first = days.reduce((earliest, day) => Math.min(earliest, day), Infinity);
  return first <= today ? seasonStart(first, seasonStartMonth) : Infinity;
}
/** A soil test counts as the start when it was taken at most this long before. */
const testCountsDays = 60;

type SoilTest = Extract<GardenEvent, { kind: 'soil test' }>;

function latestTest(
  garden: Garden,
  bed: Bed,
  from: DayNumber,
  to: DayNumber,
  key: 'nitrateMgPerKg' | 'organicMatterPercent',
): { readonly value: number; readonly depthCentimetres: number } | null {
  const tests = ofBed(garden.events, bed.id).filter(
    (event): event is SoilTest => event.kind === 'soil test' && event[key] !== null,
  );
  let found: { day: DayNumber; value: number; depthCentimetres: number } | null = null;
  for (const test of tests) {
    const day = dayOf(test.date);
    const value = test[key];
    if (value === null || day < from || day > to) continue;
    const { depthCentimetres } = test;
    if (!found || day >= found.day) found = { day, value, depthCentimetres };
  }
  return found;
}

/** The layer that every nitrate number is of [cm]. */
const topCentimetres = 30;

/**
 * Nitrate-N of 0-30 cm from a test [g/m2]. A test to 30 cm or deeper is the mean of all it went
 * through; below one that went less deep the usual start stands, layer by layer (assumed).
 */
function startingNitrate(
  test: { readonly value: number; readonly depthCentimetres: number },
  bulkDensityKgPerL: number,
  usualGramsPerM2: number,
): number {
  const depth = Math.min(topCentimetres, test.depthCentimetres);
  return (
    gramsPerM2FromMgPerKg(test.value, bulkDensityKgPerL, depth) +
    (usualGramsPerM2 * (topCentimetres - depth)) / topCentimetres
  );
}

/** Weight of a litre of a bed's soil as it is known on a day [kg/L]. */
export const bulkDensityOf = (garden: Garden, bed: Bed, today: DayNumber): number =>
  soilOf(garden, bed, today, today).bulkDensityKgPerL;

/**
 * A bed's soil. Organic matter: the latest test up to today, else the bed's own number, else the
 * the years it was mulched or composted. Starting nitrate: a test within sixty days before the first day; of
 * two on one day the later entry counts.
 */
export function soilOf(
  garden: Garden,
  bed: Bed,
  firstDay: DayNumber,
  today: DayNumber,
): SoilProperties {
  const tested =
    latestTest(garden, bed, -Infinity, today, 'organicMatterPercent')?.value ??
    bed.organicMatterPercent;
  const organicMatterPercent = organicMatterRow(tested, bed.mulchYears).typical;
  const bulkDensityKgPerL = bulkDensityRow(bed.texture, organicMatterPercent).typical;
  const nitrate = latestTest(garden, bed, firstDay - testCountsDays, firstDay, 'nitrateMgPerKg');
  const usual = typicalCoefficients().startingMineralTop;
  return {
    fieldCapacity: soils[bed.texture].fieldCapacity.typical,
    wiltingPoint: soils[bed.texture].wiltingPoint.typical,
    bulkDensityKgPerL,
    organicMatterPercent,
    startingMineralTop: nitrate && startingNitrate(nitrate, bulkDensityKgPerL, usual),
  };
}

/** What was done on a bed, in the order it was written down. */
export function bedEvents(garden: Garden, bed: Bed): BedEvent[] {
  return ofBed(garden.events, bed.id).flatMap((event): BedEvent[] => {
    const day = dayOf(event.date);
    switch (event.kind) {
      case 'water':
        return [{ kind: 'water', day, depth: event.millimetres }];
      case 'dig cover in':
        return [{ kind: 'dig cover in', day, share: event.share }];
      case 'rake off':
        return [{ kind: 'rake off', day, share: event.share }];
      case 'harvest': {
        const kilogramsPerM2 = event.kilograms / areaOn(bed, event.date);
        return [{ kind: 'harvest', day, plantingId: event.plantingId, kilogramsPerM2 }];
      }
      case 'soil test':
      case 'look and dig':
      case 'nothing laid':
        return [];
    }
  });
}

/** Of each first day there are beds for, today's weather and that of a week ago. */
const weathers = laidOutOnce<SeasonWeather>(64);

/**
 * Rain does not reach a bed under glass or film, nor does the wind or the light that was measured
 * outside: what dries there goes by the temperatures alone.
 */
export function underRoof({ minimumCelsius, maximumCelsius, kind }: SeasonWeather): SeasonWeather {
  const rainMillimetres = new Float64Array(minimumCelsius.length);
  return { minimumCelsius, maximumCelsius, rainMillimetres, kind };
}

/**
 * Garden and tables as the engine takes one bed: everything per m2 of that bed, in inside units, at
 * likely values.
 *
 * A bed that was split off or joined starts on that day, out of the ground it was made of, which is
 * run by its own log up to the evening before; what was written down for the ground that day came first. Any other starts on the day from which the gardener knows the bed, where one is given; else with the
 * season of the bed's first layer or of its first planting that was cleared, so that each season
 * starts from the end of the one before; or six weeks before the earliest planting that stands in
 * the season of `today` where that is sooner (at most a year before that season). It ends with the
 * season that holds `today`. What lies outside is left out; the weather after `today` is imagined.
 *
 * @throws when the garden has no such bed, or points at something missing: `parseGarden` and the
 *   store let no such garden in
 */
export function bedSeason(
  whole: Garden,
  bedId: string,
  today: DayNumber,
  options: SeasonOptions = {},
): BedSeason {
  const garden = options.knownThen ? knownThen(whole, today) : whole;
  const bed = anyBed(garden, bedId);
  if (!bed) throw new Error(`No bed ${bedId}`);
  const { seasonStartMonth, latitudeDegrees, elevationMetres } = garden.garden;
  const seasonFirst = seasonStart(today, seasonStartMonth);
  const thisEnd = seasonEnd(today, seasonStartMonth);
  const lastDay = options.endsToday
    ? today
    : options.throughNextSeason
      ? seasonEnd(thisEnd + 1, seasonStartMonth)
      : thisEnd;
  const normals = normalsOf(garden);
  const upTo = Math.min(today, options.weatherUpTo ?? today);
  const record = recordOf(garden, upTo);

  const surroundings = (soil: SoilProperties, from: DayNumber) => ({
    today,
    firstDay: from,
    lastDay,
    seasonStartMonth,
    record,
    normals,
    soil,
    crops: garden.crops,
  });
  const roughSoil = soilOf(garden, bed, seasonFirst, today);
  const looks = looksOf(garden, bedId);
  const own = ofBed(garden.plantings, bedId).map((planting) => ({
    ...planting,
    nodules: nodulesKnown(planting, looks, today, garden),
  }));
  const standing = (planting: PlantingInput, from: DayNumber): boolean =>
    planting.startDay <= lastDay && (planting.clearingDay === null || planting.clearingDay > from);
  const earliest = own
    .map((planting) => plantingInput(planting, surroundings(roughSoil, seasonFirst)))
    .filter((planting) => standing(planting, seasonFirst))
    .map(({ startDay, seasons }) => seasons?.at(-1)?.startDay ?? startDay)
    .reduce((first, day) => Math.min(first, day), Infinity);
  const madeOn = bed.ground ? firstDayMade(bed.ground.on, today, seasonStartMonth) : null;
  const firstDay =
    madeOn ??
    (bed.knownSince !== null && dayOf(bed.knownSince) <= today
      ? dayOf(bed.knownSince)
      : Math.min(
          firstSeasonLogged(garden, bedId, today, seasonStartMonth),
          Math.max(seasonFirst - longestLeadDays, Math.min(seasonFirst, earliest - leadDays)),
        ));

  const soil = soilOf(garden, bed, firstDay, today);
  const seasonStarts: DayNumber[] = [];
  for (let year = yearOf(firstDay); year <= yearOf(lastDay); year++) {
    const start = dayFromParts(year, seasonStartMonth, 1);
    if (start > firstDay && start <= lastDay) seasonStarts.push(start);
  }
  const weather = weathers(
    garden,
    [firstDay, lastDay, today, upTo, latitudeDegrees, elevationMetres].join(),
    () => {
      const recorded = seasonWeather(
        record,
        normals,
        firstDay,
        lastDay,
        today,
        typicalSeed,
        typicalWeatherSpread(latitudeDegrees),
        latitudeDegrees < 0,
      );
      const evaporation = measuredEvaporation(garden, recorded, firstDay);
      return evaporation ? { ...recorded, referenceEvapotranspiration: evaporation } : recorded;
    },
  );
  const curveNumber = bed.roof === 'open' ? curveNumberOf(bed.texture, bed.slope) : null;
  const isWithin = ({ day }: { readonly day: DayNumber }): boolean =>
    day >= firstDay && day <= lastDay;
  const onFirst = madeOn === null ? null : dayOf(bed.ground!.on);
  /** what was done on the morning it was made, where its run begins a day later */
  const notBefore = <Entry extends { readonly day: DayNumber }>(entry: Entry): Entry =>
    onFirst !== null && entry.day >= onFirst && entry.day < firstDay
      ? { ...entry, day: firstDay }
      : entry;
  const layingOut: LayingOut = { runOf: bedSeason, layerOf: layerInput, eventsOf: bedEvents };
  const inherited = bed.ground ? doneBeforeMade(garden, bed, firstDay, own, layingOut) : null;
  return {
    bedId,
    areaM2: bed.areaM2,
    latitudeDegrees,
    firstDay,
    lastDay,
    today,
    seasonStarts,
    weather: bed.roof === 'open' ? weather : underRoof(weather),
    normals,
    soil,
    keptMoist: bed.watering === 'kept moist',
    ...(curveNumber === null ? {} : { runoffCurveNumber: curveNumber }),
    plantings: own
      .map((planting) => plantingInput(planting, surroundings(soil, firstDay)))
      .filter((planting) => standing(planting, firstDay)),
    layers: [
      ...(inherited?.layers ?? []),
      ...[...ofBed(garden.applications, bedId), ...ofBed(options.extraApplications ?? [], bedId)]
        .map((application) => notBefore(layerInput(garden, bed, application)))
        .filter(isWithin),
    ],
    events: [
      ...(inherited?.events ?? []),
      ...bedEvents(garden, bed).map(notBefore).filter(isWithin),
    ],
    coefficients: typicalCoefficients(),
    ...(bed.ground && { ground: groundInputs(garden, bed, firstDay, own, layingOut) }),
  };
}
