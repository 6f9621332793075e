import type { AmountFailure, UnitSystem } from '../../amounts/amount';
import { measureText } from '../../amounts/measureText';
import { readMeasure } from '../../amounts/readMeasure';
import type { Trouble } from '../../controls/Field';
import type { ClimateAnswer, OwnBedAnswer, OwnGardenAnswers } from '../../store/contract';
import { climates } from '../../tables/climates';
import { amountFailureSentence } from '../../words/messages';
import { climateOfZone } from './climateOfZone';

/** What clippings are caught or carried in. */
export const holders = [
  { name: 'bag', plural: 'bags', litres: 45 },
  { name: 'box', plural: 'boxes', litres: 40 },
  { name: 'bucket', plural: 'buckets', litres: 10 },
  { name: 'barrow', plural: 'barrows', litres: 85 },
] as const;
export type HolderName = (typeof holders)[number]['name'];

/** A bed and what grows in it, as it stands on the page. */
export interface BedAnswer {
  readonly bedName: string;
  readonly bedArea: string;
  readonly cropId: string;
  readonly how: 'sown' | 'planted';
  readonly started: string;
}

/** A bed after the first: `key` tells it apart while others before it are left out. */
export interface FurtherBed extends BedAnswer {
  readonly key: number;
}

/** The answers as they stand on the page, words not yet read. */
export interface Answers extends BedAnswer {
  readonly gardenName: string;
  readonly units: UnitSystem;
  readonly lawnArea: string;
  readonly holder: HolderName;
  readonly bagSize: string;
  readonly further: readonly FurtherBed[];
  readonly climate: 'station' | 'typed';
  readonly stationId: string;
  readonly place: string;
  readonly latitude: string;
  readonly side: 'north' | 'south';
  readonly lowest: readonly string[];
  readonly highest: readonly string[];
  readonly rain: readonly string[];
}

/** What a bed is asked; a bed after the first has its `key` behind it. */
type BedKey = 'bedName' | 'bedArea';
export type AnswerKey =
  'lawnArea' | 'bagSize' | BedKey | `${BedKey} ${number}` | 'stationId' | 'latitude' | 'months';
export const keyOf = (key: BedKey, bed: FurtherBed | null): AnswerKey =>
  bed ? `${key} ${bed.key}` : key;

const twelve = (): string[] => Array.from({ length: 12 }, () => '');

const usualBag: Readonly<Record<UnitSystem, string>> = { metric: '45 L', us: '12 gal' };

/** The same measure said in the other units; what cannot be read stays as it was typed. */
function textIn(
  units: UnitSystem,
  from: UnitSystem,
  text: string,
  measure: 'area' | 'volume' | 'rain' | 'temperature',
): string {
  const reading = readMeasure(text, measure, { units: from, containers: [], bareNumber: true });
  // five figures there and four back: a bag of 60 L is not one of 59.999 on return
  return reading.ok
    ? measureText(Number(reading.value.value.toPrecision(4)), measure, units)
    : text;
}

/** All that is on the page, in other units: a number without a unit would become another amount. */
export function answersIn(units: UnitSystem, answers: Answers): Answers {
  const from = answers.units;
  if (units === from) return answers;
  const area = (text: string): string => textIn(units, from, text, 'area');
  // beside the months stand no units, so that only the number is shown
  const bare = (measure: 'rain' | 'temperature') => (text: string) => {
    const said = textIn(units, from, text, measure);
    return said === text ? text : said.replace(/^([-−]?[\d.,/ ]*\d).*$/, '$1');
  };
  return {
    ...answers,
    units,
    lawnArea: area(answers.lawnArea),
    bagSize:
      answers.bagSize === usualBag[from]
        ? usualBag[units]
        : textIn(units, from, answers.bagSize, 'volume'),
    bedArea: area(answers.bedArea),
    further: answers.further.map((bed) => ({ ...bed, bedArea: area(bed.bedArea) })),
    lowest: answers.lowest.map(bare('temperature')),
    highest: answers.highest.map(bare('temperature')),
    rain: answers.rain.map(bare('rain')),
  };
}

/** One bed more, begun as the last one was: what is planted on one day is asked once. */
export function oneBedMore(answers: Answers): Answers {
  const { further } = answers;
  const last = further.at(-1) ?? answers;
  const key = 1 + Math.max(0, ...further.map((bed) => bed.key));
  const { cropId, how, started } = last;
  const bed = { key, bedName: `Bed ${key + 1}`, bedArea: '', cropId, how, started };
  return { ...answers, further: [...further, bed] };
}

/**
 * A page with the usual values; only what nobody can know for the person is left open.
 *
 * @param timeZone of this computer, which suggests a climate where one suits the whole of it
 */
export function emptyAnswers(today: string, language: string, timeZone = ''): Answers {
  return {
    gardenName: 'My garden',
    units: /^en-US/i.test(language) ? 'us' : 'metric',
    lawnArea: '',
    holder: 'bag',
    bagSize: usualBag[/^en-US/i.test(language) ? 'us' : 'metric'],
    bedName: 'Bed 1',
    bedArea: '',
    cropId: 'tomato',
    how: 'planted',
    started: today,
    further: [],
    climate: 'station',
    stationId: climateOfZone(timeZone) ?? '',
    place: '',
    latitude: '',
    side: 'north',
    lowest: twelve(),
    highest: twelve(),
    rain: twelve(),
  };
}

/** A table of months read as numbers, or what is wrong with it. */
function readMonths(answers: Answers): { rows: number[][] } | Trouble {
  const rows = [answers.lowest, answers.highest, answers.rain].map((row, kind) =>
    row.map((text) => {
      const reading = readMeasure(text, kind === 2 ? 'rain' : 'temperature', {
        units: answers.units,
        containers: [],
        bareNumber: true,
      });
      return reading.ok ? reading.value.value : Number.NaN;
    }),
  );
  const missing = rows.flat().filter(Number.isNaN).length;
  if (missing > 0)
    return {
      sentence:
        missing === 1
          ? 'One of the 36 numbers is missing or cannot be read.'
          : `${missing} of the 36 numbers are missing or cannot be read.`,
    };
  const turned = rows[0]!.findIndex((low, month) => low > rows[1]![month]!);
  if (turned >= 0)
    return {
      sentence: `In month ${turned + 1} the lowest is above the highest. Are they the wrong way round?`,
    };
  return { rows };
}

function readClimate(
  answers: Answers,
  troubles: Partial<Record<AnswerKey, Trouble>>,
): ClimateAnswer | null {
  if (answers.climate === 'station') {
    if (climates.some((each) => each.id === answers.stationId))
      return { kind: 'station', stationId: answers.stationId };
    troubles.stationId = { sentence: 'Pick the place whose weather is most like yours.' };
    return null;
  }
  const degrees = Number(answers.latitude.trim().replace(',', '.').replace('°', ''));
  if (answers.latitude.trim() === '' || !(degrees >= 0 && degrees <= 66))
    troubles.latitude = {
      sentence: 'The latitude is a number of degrees from 0 to 66, as maps show it.',
      suggestion: '45',
    };
  const months = readMonths(answers);
  if ('sentence' in months) troubles.months = months;
  if (troubles.latitude || !('rows' in months)) return null;
  return {
    kind: 'typed',
    place: answers.place.trim() || 'own months',
    latitudeDegrees: answers.side === 'south' ? -degrees : degrees,
    minimumCelsius: months.rows[0]!,
    maximumCelsius: months.rows[1]!,
    rainMillimetres: months.rows[2]!,
    wetDays: null,
  };
}

/** Reads the whole page: the answers for the store, or what each field needs. */
export function readAnswers(answers: Answers): {
  readonly answers: OwnGardenAnswers | null;
  readonly troubles: Partial<Record<AnswerKey, Trouble>>;
} {
  const troubles: Partial<Record<AnswerKey, Trouble>> = {};
  const asTrouble = (failure: AmountFailure): Trouble => ({
    sentence: amountFailureSentence(failure),
    suggestion: failure.suggestion,
  });
  const measure = (key: AnswerKey, text: string): number => {
    const reading = readMeasure(text, key === 'bagSize' ? 'volume' : 'area', {
      units: answers.units,
      containers: [],
      bareNumber: true,
    });
    if (reading.ok) return reading.value.value;
    troubles[key] = asTrouble(reading.error);
    return Number.NaN;
  };
  const bedOf = (answer: BedAnswer, further: FurtherBed | null, at: number): OwnBedAnswer => {
    const name = answer.bedName.trim();
    if (name === '')
      troubles[keyOf('bedName', further)] = {
        sentence: 'A bed needs a name to be told apart.',
        suggestion: `Bed ${at}`,
      };
    const { cropId, started, how } = answer;
    return {
      bed: { name, areaM2: measure(keyOf('bedArea', further), answer.bedArea) },
      crop: { cropId, started, how },
    };
  };
  const lawnAreaM2 = measure('lawnArea', answers.lawnArea);
  const litres = measure('bagSize', answers.bagSize);
  const first = bedOf(answers, null, 1);
  const further = answers.further.map((bed, index) => bedOf(bed, bed, index + 2));
  const climate = readClimate(answers, troubles);
  if (Object.keys(troubles).length > 0 || climate === null) return { answers: null, troubles };
  const holder = holders.find((each) => each.name === answers.holder) ?? holders[0];
  return {
    troubles,
    answers: {
      gardenName: answers.gardenName.trim() || 'My garden',
      lawnAreaM2,
      container: { name: holder.name, plural: holder.plural, litres },
      ...first,
      ...(further.length > 0 && { further }),
      climate,
      shownUnits: answers.units,
    },
  };
}
