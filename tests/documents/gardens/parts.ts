import { bundledRecord } from '../../../app/tables/bundledRecords';
import { climateOf, climateStanding } from '../../../app/tables/climates';
import { dayOf, textFromDay } from '../../../app/core/days';
import {
  fileUnits,
  formatName,
  schemaVersion,
  type Amount,
  type Application,
  type Bed,
  type Garden,
  type Planting,
  type WeatherRow,
} from '../../../app/document/schema';

export const typed = (text: string, quantity: Amount['quantity']): Amount => ({
  text,
  quantity,
  certainty: 'plain',
});

/** Days of the New York record from one day to another, both included. */
export function newYorkDays(first: string, last: string): WeatherRow[] {
  const record = bundledRecord('new-york');
  if (!record) throw new Error('The New York record is missing');
  const start = dayOf(record.firstDay);
  const rows: WeatherRow[] = [];
  for (let day = dayOf(first); day <= dayOf(last); day += 1) {
    const [lowest, highest, rain] = [
      record.minimumCelsius[day - start],
      record.maximumCelsius[day - start],
      record.rainMillimetres[day - start],
    ];
    if (lowest === undefined || highest === undefined || rain === undefined) {
      throw new Error(`The New York record has no ${textFromDay(day)}`);
    }
    rows.push([textFromDay(day), lowest, highest, rain]);
  }
  return rows;
}

/** The published monthly means of New York, as a garden file holds them. */
export function newYorkNormals(): Garden['weather']['normals'] {
  const climate = climateOf('new-york-central-park');
  if (!climate) throw new Error('The climate of New York is missing');
  return {
    place: climate.name,
    standing: climateStanding(climate),
    minimumCelsius: [...climate.minimumCelsius],
    maximumCelsius: [...climate.maximumCelsius],
    rainMillimetres: [...climate.rainMillimetres],
    wetDays: [...climate.wetDays],
    lastSpringFrost: climate.lastSpringFrost,
    firstAutumnFrost: climate.firstAutumnFrost,
  };
}

export const emptyGarden = (
  garden: Pick<Garden['garden'], 'name' | 'today'> & Partial<Garden['garden']>,
  weather: Pick<Garden['weather'], 'days'> & Partial<Garden['weather']>,
): Garden => ({
  format: formatName,
  schemaVersion,
  units: { ...fileUnits },
  garden: {
    isSample: false,
    latitudeDegrees: 40.8,
    place: 'New York',
    seasonStartMonth: 1,
    shownUnits: 'metric',
    dogs: false,
    ownWell: false,
    ...garden,
  },
  lawns: [],
  containers: [],
  materials: [],
  stock: [],
  beds: [],
  plantings: [],
  mowings: [],
  applications: [],
  events: [],
  weather: { normals: newYorkNormals(), bundledRecord: null, ...weather },
});

export const bed = (part: Pick<Bed, 'id' | 'name' | 'areaM2' | 'texture'> & Partial<Bed>): Bed => ({
  lengthMetres: null,
  widthMetres: null,
  steps: null,
  organicMatterPercent: 3,
  mulchYears: null,
  watering: 'as logged',
  roof: 'open',
  knownSince: null,
  ...part,
});

export const planting = (
  part: Pick<Planting, 'id' | 'bedId' | 'cropId' | 'started' | 'how'> & Partial<Planting>,
): Planting => ({
  share: 1,
  firstHarvest: null,
  cleared: null,
  tops: 'left',
  wanted: 'usual',
  nodules: 'not looked',
  ...part,
});

export const application = (
  part: Pick<Application, 'id' | 'date' | 'bedId' | 'from' | 'amount'> & Partial<Application>,
): Application => ({
  condition: 'just cut',
  wetness: 'dry',
  placement: 'laid',
  mixtureId: null,
  passedStops: [],
  ...part,
});
