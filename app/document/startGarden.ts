import { climateOf, rainPerWetDay } from '../tables/climates';
import { normalsOfClimate } from './normalsOfClimate';
import { fileUnits, formatName, schemaVersion, type Garden } from './schema';
import { daysInMonth } from '../core/season/smoothNormals';

export type ClimateAnswer =
  | { readonly kind: 'station'; readonly stationId: string }
  | {
      readonly kind: 'typed';
      readonly place: string;
      readonly latitudeDegrees: number;
      readonly minimumCelsius: readonly number[];
      readonly maximumCelsius: readonly number[];
      readonly rainMillimetres: readonly number[];
      /** null: worked out from the rain of the month */
      readonly wetDays: readonly number[] | null;
    };

/** A bed and what grows in it. */
export interface OwnBedAnswer {
  readonly bed: { readonly name: string; readonly areaM2: number };
  readonly crop: {
    readonly cropId: string;
    /** YYYY-MM-DD */
    readonly started: string;
    readonly how: 'sown' | 'planted';
  };
}

/** The five answers of the guided start (the names have usual values to start from). */
export interface OwnGardenAnswers extends OwnBedAnswer {
  readonly gardenName: string;
  readonly lawnAreaM2: number;
  readonly container: { readonly name: string; readonly plural: string; readonly litres: number };
  /** beds after the first */
  readonly further?: readonly OwnBedAnswer[];
  readonly climate: ClimateAnswer;
  readonly shownUnits: 'metric' | 'us';
}

type Weather = Garden['weather'];

/** Wet days where only the rain is known; a month cannot have more wet days than days. */
const wetDaysFromRain = (rainMillimetres: readonly number[]): number[] =>
  rainMillimetres.map((rain, month) =>
    Math.min(daysInMonth(2001, month + 1), Math.round((rain / rainPerWetDay.typical) * 10) / 10),
  );

function weatherFrom(answer: ClimateAnswer): {
  weather: Weather;
  latitudeDegrees: number;
  place: string;
} | null {
  if (answer.kind === 'typed') {
    const normals: Weather['normals'] = {
      place: answer.place,
      standing: `Typed by the gardener; ${answer.wetDays ? 'wet days typed' : 'wet days estimated from the rain'}; no frost dates.`,
      minimumCelsius: [...answer.minimumCelsius],
      maximumCelsius: [...answer.maximumCelsius],
      rainMillimetres: [...answer.rainMillimetres],
      wetDays: answer.wetDays ? [...answer.wetDays] : wetDaysFromRain(answer.rainMillimetres),
      lastSpringFrost: null,
      firstAutumnFrost: null,
    };
    const { latitudeDegrees, place } = answer;
    return { weather: { normals, bundledRecord: null, days: [] }, latitudeDegrees, place };
  }
  const climate = climateOf(answer.stationId);
  if (!climate) return null;
  const normals = normalsOfClimate(climate);
  return {
    weather: { normals, bundledRecord: null, days: [] },
    latitudeDegrees: climate.latitudeDegrees,
    place: normals.place,
  };
}

/**
 * A garden from the five answers of the guided start. Everything not asked takes the usual value:
 * loam, organic matter not known, not watered, an ordinary lawn about which nothing was asked yet,
 * an empty heap. It has no recorded weather: until some is brought, its days are imagined.
 *
 * @param today first day of the heap's book, YYYY-MM-DD
 * @returns null when there is no station of that id
 */
export function ownGarden(answers: OwnGardenAnswers, today: string): Garden | null {
  const climate = weatherFrom(answers.climate);
  if (!climate) return null;
  const { weather, latitudeDegrees, place } = climate;
  const { container } = answers;
  const beds = [answers, ...(answers.further ?? [])];
  return {
    format: formatName,
    schemaVersion,
    units: { ...fileUnits },
    garden: {
      name: answers.gardenName,
      isSample: false,
      latitudeDegrees,
      place,
      today: null,
      seasonStartMonth: latitudeDegrees < 0 ? 7 : 1,
      shownUnits: answers.shownUnits,
      dogs: false,
      ownWell: false,
    },
    lawns: [
      {
        id: 'lawn-1',
        name: 'Lawn',
        areaM2: answers.lawnAreaM2,
        grass: 'cool',
        kind: 'ordinary',
        creepingGrass: false,
        seedHeadsSeen: null,
        fouledByPets: false,
        treatment: { answer: 'not asked' },
      },
    ],
    containers: [{ id: 'container-1', ...container, weighed: null }],
    materials: [],
    stock: [
      {
        id: 'stock-1',
        name: 'Heap',
        materialId: 'compost-garden',
        role: 'heap',
        amount: null,
        date: today,
        treatment: { answer: 'nothing' },
      },
    ],
    beds: beds.map(({ bed }, index) => ({
      id: `bed-${index + 1}`,
      ...bed,
      lengthMetres: null,
      widthMetres: null,
      steps: null,
      texture: 'loam',
      organicMatterPercent: null,
      mulchYears: null,
      watering: 'as logged',
      roof: 'open',
      knownSince: null,
    })),
    plantings: beds.map(({ crop }, index) => ({
      id: `planting-${index + 1}`,
      bedId: `bed-${index + 1}`,
      cropId: crop.cropId,
      share: 1,
      started: crop.started,
      how: crop.how,
      firstHarvest: null,
      cleared: null,
      tops: 'taken away',
      wanted: 'usual',
      nodules: 'not looked',
    })),
    mowings: [],
    applications: [],
    events: [],
    weather,
  };
}
