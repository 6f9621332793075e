import { dayFromParts, partsFromDay, textFromDay, type DayNumber } from '../../../app/core/days';
import { normal, seeded, type Random } from '../../../app/core/random';
import { seasonWeather } from '../../../app/core/season/ahead';
import {
  fileUnits,
  formatName,
  schemaVersion,
  type Application,
  type Bed,
  type Garden,
  type Mowing,
  type Planting,
  type WeatherRow,
} from '../../../app/document/schema';
import { normalsOf } from '../../../app/document/weatherRecord';
import { cropOf } from '../../../app/tables/crops';
import { climateOf, climateStanding } from '../../../app/tables/climates';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';

/** A made-up garden on a day of its season, and the weather that nobody in it knows. */
export interface PlanGarden {
  /** as it is known on `today`: its record ends there */
  readonly garden: Garden;
  readonly today: DayNumber;
  /** the whole season's weather, what really comes included */
  readonly truth: readonly WeatherRow[];
  /** what each lawn really gives against what was expected of it, week by week */
  readonly yieldFactor: (lawn: number, week: number) => number;
}

const climates = [
  'new-york-central-park',
  'columbus-ohio',
  'seattle-washington',
  'toronto-ontario',
  'heathrow',
  'de-bilt',
  'stuttgart',
  'bordeaux',
] as const;

type Crop = readonly [cropId: string, how: Planting['how'], month: number, day: number];
const cropsToChoose: readonly Crop[] = [
  ['tomato', 'planted', 5, 18],
  ['pepper', 'planted', 5, 25],
  ['zucchini', 'planted', 5, 22],
  ['sweet_corn', 'sown', 5, 12],
  ['snap_bean_pole', 'sown', 5, 14],
  ['snap_bean_bush', 'sown', 5, 10],
  ['pea', 'sown', 3, 28],
  ['potato', 'planted', 4, 18],
  ['sweet_potato', 'planted', 6, 1],
  ['carrot', 'sown', 4, 20],
  ['beet', 'sown', 4, 25],
  ['onion', 'planted', 4, 10],
  ['cabbage', 'planted', 4, 28],
  ['broccoli', 'planted', 4, 25],
  ['kale', 'planted', 5, 5],
  ['chard', 'sown', 4, 28],
  ['lettuce_leaf', 'planted', 4, 20],
  ['zinnia', 'sown', 5, 15],
  ['sunflower', 'sown', 5, 8],
  ['dahlia', 'planted', 5, 15],
];

/** Lawns are so many times as large as all beds together: more grass than the beds want is usual. */
const lawnToBeds = { least: 3, most: 30 } as const;

const textures = ['sandy loam', 'loam', 'silt loam', 'clay loam'] as const;
const year = 2013;
/** Days for which a crop still stands when it has given what it had. */
const daysAfterEnd = 7;

const pick = <Item>(items: readonly Item[], random: Random): Item =>
  items[Math.floor(random() * items.length)]!;
const between = (low: number, high: number, random: Random): number =>
  low + (high - low) * random();
const inSteps = (value: number, step: number): number => Math.round(value / step) * step;

/** Weather that comes: imagined by a seed of its own, each month warmer or colder, wetter or drier. */
function truthOf(garden: Garden, seed: number): WeatherRow[] {
  const random = seeded(seed);
  const first = dayFromParts(year, 1, 1);
  const last = dayFromParts(year, 12, 31);
  const { latitudeDegrees } = garden.garden;
  const days = seasonWeather(
    [],
    normalsOf(garden),
    first,
    last,
    first - 1,
    seed + 100_000,
    typicalWeatherSpread(latitudeDegrees),
    latitudeDegrees < 0,
  );
  const months = Array.from({ length: 12 }, () => ({
    warmer: 1.2 * normal(random),
    wetter: Math.exp(0.4 * normal(random)),
  }));
  return Array.from(days.minimumCelsius, (lowest, index): WeatherRow => {
    const { warmer, wetter } = months[partsFromDay(first + index).month - 1]!;
    return [
      textFromDay(first + index),
      lowest + warmer,
      days.maximumCelsius[index]! + warmer,
      days.rainMillimetres[index]! * wetter,
    ];
  });
}

function bedOf(at: number, random: Random): Bed {
  return {
    id: `bed-${at}`,
    name: `Bed ${at + 1}`,
    areaM2: inSteps(between(2, 12, random), 0.5),
    lengthMetres: null,
    widthMetres: null,
    steps: Math.round(between(4, 60, random)),
    texture: pick(textures, random),
    organicMatterPercent: inSteps(between(1.8, 5, random), 0.1),
    mulchYears: null,
    watering: random() < 0.4 ? 'kept moist' : 'as logged',
    roof: 'open',
    knownSince: null,
  };
}

/** Clippings laid earlier in the season: none, a little, or far too much. */
function earlierLayers(
  beds: readonly Bed[],
  lawnId: string,
  today: DayNumber,
  random: Random,
): { mowings: Mowing[]; applications: Application[] } {
  const mowings: Mowing[] = [];
  const applications: Application[] = [];
  for (const bed of beds) {
    const times = random() < 0.5 ? 0 : Math.floor(between(1, 5, random));
    for (let time = 1; time <= times; time++) {
      const date = textFromDay(today - 7 * time - Math.floor(between(0, 5, random)));
      const litres = inSteps(bed.areaM2 * between(4, 14, random), 5);
      const amount = {
        text: `${litres} L`,
        quantity: { kind: 'volume', litres },
        certainty: 'plain',
      } as const;
      const id = `mowing-${bed.id}-${time}`;
      mowings.push({
        id,
        date,
        lawnId,
        amount,
        wetness: 'dry',
        kind: null,
        rest: { to: 'lawn' },
      });
      applications.push({
        id: `layer-${bed.id}-${time}`,
        date,
        bedId: bed.id,
        from: { source: 'mowing', mowingId: id },
        amount,
        condition: 'just cut',
        wetness: 'dry',
        placement: 'laid',
        mixtureId: null,
        passedStops: [],
      });
    }
  }
  return { mowings, applications };
}

/**
 * Garden number `seed`: two to seven beds of mixed soils and crops, some overfed already, some never
 * mulched, one or two lawns, together three to thirty times as large, leaves or straw or none, a day between the first of May and mid July.
 * The same number always gives the same garden.
 */
export function planGarden(seed: number): PlanGarden {
  const random = seeded(seed);
  const climate = climateOf(pick(climates, random));
  if (!climate) throw new Error('A climate is missing');
  const today = dayFromParts(year, 5, 1) + Math.floor(between(0, 76, random));
  const beds = Array.from({ length: 2 + Math.floor(random() * 6) }, (_unused, at) =>
    bedOf(at, random),
  );
  const plantings = beds.flatMap((bed): Planting[] => {
    if (random() < 0.08) return [];
    const [cropId, how, month, day] = pick(cropsToChoose, random);
    const started = dayFromParts(year, month, day) + Math.floor(between(-5, 10, random));
    const standing = cropOf(cropId)?.usualDays.typical ?? 0;
    return [
      {
        id: `planting-${bed.id}`,
        bedId: bed.id,
        cropId,
        share: 1,
        started: textFromDay(started),
        how,
        firstHarvest: null,
        cleared: textFromDay(started + Math.ceil(standing) + daysAfterEnd),
        tops: 'taken away',
        wanted: pick(['poor', 'usual', 'usual', 'heavy'], random),
        nodules: 'not looked',
      },
    ];
  });
  const count = random() < 0.7 ? 1 : 2;
  const bedsM2 = beds.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  const lawnsM2 =
    bedsM2 * Math.exp(between(Math.log(lawnToBeds.least), Math.log(lawnToBeds.most), random));
  const lawns = Array.from({ length: count }, (_unused, at) => ({
    id: `lawn-${at}`,
    name: `Lawn ${at + 1}`,
    areaM2: inSteps(lawnsM2 / count, 0.5),
    grass: 'cool' as const,
    kind: pick(['ordinary', 'ordinary', 'fed', 'lean'] as const, random),
    creepingGrass: false,
    seedHeadsSeen: null,
    fouledByPets: false,
    treatment: { answer: 'nothing' as const },
  }));
  const stores = [
    ['leaves', 'leaves-mixed-shredded'],
    ['straw', 'straw-wheat'],
  ] as const;
  const normals = {
    place: climate.name,
    standing: climateStanding(climate).slice(0, 200),
    minimumCelsius: [...climate.minimumCelsius],
    maximumCelsius: [...climate.maximumCelsius],
    rainMillimetres: [...climate.rainMillimetres],
    wetDays: [...climate.wetDays],
    lastSpringFrost: climate.lastSpringFrost,
    firstAutumnFrost: climate.firstAutumnFrost,
  };
  const base: Garden = {
    format: formatName,
    schemaVersion,
    units: { ...fileUnits },
    garden: {
      name: `Garden ${seed}`,
      isSample: false,
      latitudeDegrees: climate.latitudeDegrees,
      place: climate.name,
      today: textFromDay(today),
      seasonStartMonth: 1,
      shownUnits: 'metric',
      dogs: false,
      ownWell: false,
    },
    lawns,
    containers: [{ id: 'bucket', name: 'bucket', plural: 'buckets', litres: 10, weighed: null }],
    materials: [],
    stock: stores
      .filter(() => random() < 0.5)
      .map(([id, materialId]) => {
        const litres = inSteps(between(50, 500, random), 10);
        return {
          id,
          name: id,
          materialId,
          role: 'store' as const,
          amount: {
            text: `${litres} L`,
            quantity: { kind: 'volume' as const, litres },
            certainty: 'plain' as const,
          },
          date: textFromDay(dayFromParts(year, 1, 1)),
          treatment: { answer: 'nothing' as const },
        };
      }),
    beds,
    plantings,
    ...earlierLayers(beds, 'lawn-0', today, random),
    events: [],
    weather: { normals, bundledRecord: null, days: [] },
  };
  const truth = truthOf(base, seed);
  const factors = Array.from({ length: 80 }, () => Math.exp(0.25 * normal(random)));
  return {
    garden: knownUpTo(base, truth, today),
    today,
    truth,
    yieldFactor: (lawn, week) => factors[(lawn * 40 + week) % factors.length]!,
  };
}

/** A garden on a day, with the weather that has come by then. */
export const knownUpTo = (
  garden: Garden,
  truth: readonly WeatherRow[],
  today: DayNumber,
): Garden => {
  const date = textFromDay(today);
  return {
    ...garden,
    garden: { ...garden.garden, today: date },
    weather: { ...garden.weather, days: truth.filter(([day]) => day <= date) },
  };
};
