import { monthNames } from '../core/days';
import { cropOf } from '../tables/crops';

/** What one thing of a list is called. */
const singular: Readonly<Record<string, string>> = {
  lawns: 'lawn',
  containers: 'container',
  materials: 'material',
  stock: 'stock',
  beds: 'bed',
  retiredBeds: 'retired bed',
  plantings: 'planting',
  mowings: 'mowing',
  applications: 'layer',
  events: 'entry',
};

/** Fields as a person says them; others are named as the file does. */
const fields: Readonly<Record<string, string>> = {
  areaM2: 'area',
  lengthMetres: 'length',
  widthMetres: 'width',
  litres: 'how much it holds',
  kilograms: 'weight',
  weighed: 'what it weighed',
  millimetres: 'depth',
  heightMillimetres: 'height taken off',
  nitrogenPercent: 'nitrogen',
  carbonToNitrogen: 'carbon to nitrogen',
  moisturePercent: 'water',
  densityKgPerM3: 'density',
  organicMatterPercent: 'organic matter',
  nitrateMgPerKg: 'nitrate',
  depthCentimetres: 'depth of the sample',
  started: 'start',
  firstHarvest: 'first harvest',
  cleared: 'day it was cleared',
  date: 'day',
  knownSince: 'day it is known from',
  earlierAreas: 'size before',
  ground: 'what it was made of',
  retired: 'day it was retired',
  continues: 'planting it goes on from',
  today: 'today',
  latitudeDegrees: 'latitude',
  minimumCelsius: 'lowest temperature',
  maximumCelsius: 'highest temperature',
  rainMillimetres: 'rain',
  wetDays: 'wet days',
  normals: 'usual weather',
  share: 'share',
  seasonStartMonth: 'first month of the season',
};

type Raw = Readonly<Record<string, unknown>>;
const isRaw = (value: unknown): value is Raw => typeof value === 'object' && value !== null;
const partOf = (value: unknown, key: PropertyKey): unknown =>
  isRaw(value) && Object.hasOwn(value, key) ? value[key as string] : undefined;

const longestName = 40;
const quoted = (name: string): string =>
  `\u201C${name.length > longestName ? `${name.slice(0, longestName)}\u2026` : name}\u201D`;
const named = (item: unknown): string | null => {
  const name = partOf(item, 'name');
  return typeof name === 'string' && name.trim() !== '' ? quoted(name) : null;
};
const dated = (item: unknown, key: string): string => {
  const date = partOf(item, key);
  return typeof date === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(date) ? ` of ${date}` : '';
};

function bedName(document: unknown, item: unknown): string {
  const id = partOf(item, 'bedId');
  if (typeof id !== 'string') return '';
  const beds = [partOf(document, 'beds'), partOf(document, 'retiredBeds')].flat();
  const name = named(beds.find((bed) => partOf(bed, 'id') === id));
  return name === null ? '' : ` on ${name}`;
}

function ownCropName(document: unknown, id: string): string | undefined {
  const crops = partOf(document, 'crops');
  if (!Array.isArray(crops)) return undefined;
  const name = partOf(
    crops.find((crop) => partOf(crop, 'id') === id),
    'name',
  );
  return typeof name === 'string' ? name : undefined;
}

/** "bed 1 “Long bed”", "planting 2 “Tomato” on “Long bed”", "entry 5, harvest of 2021-06-18 on “Long bed”" */
function thingName(document: unknown, list: string, index: number): string {
  const items = partOf(document, list);
  const item: unknown = Array.isArray(items) ? items[index] : undefined;
  const start = `${singular[list] ?? list} ${String(index + 1)}`;
  switch (list) {
    case 'plantings': {
      const crop = partOf(item, 'cropId');
      const name =
        typeof crop === 'string' ? (cropOf(crop)?.name ?? ownCropName(document, crop)) : undefined;
      return `${start}${name === undefined ? '' : ` ${quoted(name)}`}${bedName(document, item)}`;
    }
    case 'events': {
      const kind = partOf(item, 'kind');
      const what = typeof kind === 'string' && kind.length <= 20 ? `, ${kind}` : '';
      return `${start}${what}${dated(item, 'date')}${bedName(document, item)}`;
    }
    case 'mowings':
    case 'applications':
      return `${start}${dated(item, 'date')}${bedName(document, item)}`;
    default: {
      const name = named(item);
      return name === null ? start : `${start} ${name}`;
    }
  }
}

/** A day of a list of days by its date, which is how it is found in the file. */
function dayName(document: unknown, path: readonly PropertyKey[]): string {
  const row = path.reduce<unknown>(partOf, document);
  const date: unknown = Array.isArray(row) ? row[0] : undefined;
  const number = Number(path.at(-1)) + 1;
  return typeof date === 'string' && date.length <= 10
    ? `weather of ${date}`
    : `day ${String(number)} of the weather`;
}

/**
 * Where in a garden something is, in words: which thing, by number and name or day, and which of
 * its fields. Works on any document, whole or broken: what it cannot name it counts.
 *
 * @param path keys and indexes from the top
 * @example "bed 1 “Long bed”, area"
 */
export function placeIn(document: unknown, path: readonly PropertyKey[]): string {
  const parts: string[] = [];
  let rest = [...path];
  const [list, index] = path;
  if (typeof list === 'string' && Object.hasOwn(singular, list) && typeof index === 'number') {
    parts.push(thingName(document, list, index));
    rest = rest.slice(2);
  } else if (list === 'weather' && path[1] !== 'normals') {
    const at = path.findIndex((step) => typeof step === 'number');
    if (at > 0) {
      parts.push(dayName(document, path.slice(0, at + 1)));
      rest = rest.slice(at + 1);
      // inside a day's row only the measure's own name helps
      if (typeof rest[0] === 'number') rest = [];
    }
  } else if (list === 'weather' && typeof path[3] === 'number') {
    parts.push(`usual weather of ${monthNames[path[3]] ?? String(path[3] + 1)}`);
    rest = [path[2] ?? ''];
  }
  for (const step of rest) {
    if (typeof step === 'number' && parts.length > 0) {
      parts[parts.length - 1] = `${parts.at(-1) ?? ''} ${String(step + 1)}`;
    } else parts.push(fields[String(step)] ?? String(step));
  }
  return parts.join(', ') || 'the file itself';
}
