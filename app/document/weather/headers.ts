import type { ColumnRole, RainUnit, TemperatureUnit } from './weatherTypes';

/** Unit a header names, as a factor to the inside unit; temperatures are told apart elsewhere. */
export interface NamedUnit {
  readonly text: string;
  readonly factor: number;
}

export interface HeaderMeaning {
  readonly role: ColumnRole;
  readonly temperature: TemperatureUnit | null;
  readonly rain: RainUnit | null;
  /** for everything but temperatures and rain */
  readonly unit: NamedUnit | null;
}

const wordsOf = (header: string): string[] =>
  header
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replace(/\u00B2/g, '2')
    .split(/[^a-z0-9/\u00B0"]+/)
    .filter((word) => word !== '');

const oneOf = (words: readonly string[], wanted: readonly string[]): boolean =>
  words.some((word) => wanted.includes(word));

const ends = {
  highest: ['max', 'maximum', 'high', 'highest', 'hi', 'maxi', 'mx'],
  lowest: ['min', 'minimum', 'low', 'lowest', 'lo', 'mini', 'mn'],
};
const rainWords = [
  'rain',
  'rainfall',
  'precip',
  'precipitation',
  'prcp',
  'prec',
  'pcp',
  'ppt',
  'rr',
  'prectotcorr',
  'rainmm',
];
/** A column about these is never taken for a temperature or rain. */
const otherThings = [
  'gust',
  'direction',
  'dir',
  'pressure',
  'slp',
  'cloud',
  'hours',
  'probability',
  'chance',
  'quality',
  'flag',
  'attributes',
  'source',
  'soil',
  'ground',
  'feels',
  'apparent',
  'chill',
  'index',
  'normal',
  'snow',
  'snowfall',
  'cumulative',
  'time',
  'evaporation',
  'evapotranspiration',
  'et0',
  'et',
];

function roleOf(words: readonly string[]): ColumnRole | null {
  const isHighest = oneOf(words, ends.highest);
  const isLowest = oneOf(words, ends.lowest);
  if (oneOf(words, ['date', 'datum', 'datetime', 'timestamp', 'valid'])) return 'date';
  if (words.length === 1) {
    const [word] = words;
    if (word === 'time') return 'date';
    if (word === 'year' || word === 'yyyy' || word === 'yr') return 'year';
    if (word === 'month' || word === 'mm' || word === 'mo') return 'month';
    if (word === 'day' || word === 'dd' || word === 'dom') return 'day';
  }
  const isHumidity = oneOf(words, ['humidity', 'rh', 'hum', 'rhum', 'relhum']);
  if (isHumidity) return isHighest ? 'highest humidity' : isLowest ? 'lowest humidity' : 'humidity';
  if (oneOf(words, ['rhmax', 'rhmx'])) return 'highest humidity';
  if (oneOf(words, ['rhmin', 'rhmn'])) return 'lowest humidity';
  if (oneOf(words, ['dew', 'dewpoint', 'tdew', 'dewp', 'dwpt'])) {
    return isHighest || isLowest ? null : 'dew point';
  }
  if (oneOf(words, ['radiation', 'srad', 'solar', 'insolation', 'shortwave', 'rad'])) {
    return 'radiation';
  }
  if (oneOf(words, ['sunshine', 'sun', 'sunhours'])) return 'sunshine';
  if (oneOf(words, otherThings)) return null;
  if (oneOf(words, ['wind', 'windspeed', 'wspd', 'u2', 'wnd'])) {
    return isHighest || isLowest ? null : 'wind';
  }
  if (oneOf(words, rainWords)) return isHighest || isLowest ? null : 'rain';
  if (oneOf(words, ['tmax', 'tx', 'tempmax', 'maxtemp', 'maxt', 'tmx', 'txk'])) return 'highest';
  if (oneOf(words, ['tmin', 'tn', 'tempmin', 'mintemp', 'mint', 'tmn', 'tnk'])) return 'lowest';
  if (isHighest !== isLowest) return isHighest ? 'highest' : 'lowest';
  return null;
}

const unitPart = (header: string, words: readonly string[]): string => {
  const bracket = /[([{]([^)\]}]*)[)\]}]/.exec(header)?.[1];
  if (bracket !== undefined) return bracket.trim().toLowerCase();
  const comma = /,\s*([^,]{1,12})$/.exec(header)?.[1];
  return (comma ?? words.at(-1) ?? '').trim().toLowerCase();
};

function temperatureUnitOf(part: string): TemperatureUnit | null {
  if (/^(?:tenths|0[.,]1|1\/10)/.test(part)) return 'tenths of C';
  if (/^(?:\u00B0|deg(?:rees?)?\.?)?\s*(?:c|celsius|centigrade)$/.test(part)) return 'C';
  if (/^(?:\u00B0|deg(?:rees?)?\.?)?\s*(?:f|fahrenheit)$/.test(part)) return 'F';
  return null;
}

function rainUnitOf(part: string): RainUnit | null {
  if (/^(?:tenths|0[.,]1|1\/10)/.test(part)) return 'tenths of mm';
  if (/^(?:mm|millimet(?:re|er)s?|l\/m2|kg\/m2)(?:\/d(?:ay)?)?$/.test(part)) return 'mm';
  if (/^(?:in|inch|inches|")$/.test(part)) return 'in';
  return null;
}

const windUnits: readonly (readonly [RegExp, number])[] = [
  [/^m\/?s(?:ec)?$|^mps$/, 1],
  [/^km\/?h$|^kph$|^kmh$/, 1 / 3.6],
  [/^mph$|^mi\/h$|^mp\/h$/, 0.44704],
  [/^kn(?:ots?)?$|^kts?$/, 1852 / 3600],
];
const sunUnits: readonly (readonly [RegExp, number])[] = [
  [/^h(?:r|rs|ours?)?$/, 1],
  [/^min(?:utes?)?$/, 1 / 60],
  [/^s(?:ec(?:onds?)?)?$/, 1 / 3600],
];
const radiationUnits: readonly (readonly [RegExp, number])[] = [
  [/^mj(?:\/m2|\s*m-2)?(?:\/d(?:ay)?)?$/, 1],
  [/^w(?:\/m2|\s*m-2)$/, 0.0864],
  [/^kwh?(?:\/m2|\s*m-2)(?:\/d(?:ay)?)?$/, 3.6],
  [/^j\/cm2$/, 0.01],
];

const namedUnit = (
  part: string,
  units: readonly (readonly [RegExp, number])[],
): NamedUnit | null => {
  const found = units.find(([pattern]) => pattern.test(part));
  return found ? { text: part, factor: found[1] } : null;
};

const isTemperature = (role: ColumnRole): boolean =>
  role === 'lowest' || role === 'highest' || role === 'dew point';

/** The units a header names for its role. */
export function unitsIn(header: string, role: ColumnRole): Omit<HeaderMeaning, 'role'> {
  const part = unitPart(header, wordsOf(header)).replace(/\u00B2/g, '2');
  return {
    temperature: isTemperature(role) ? temperatureUnitOf(part) : null,
    rain: role === 'rain' ? rainUnitOf(part) : null,
    unit:
      role === 'wind'
        ? namedUnit(part, windUnits)
        : role === 'sunshine'
          ? namedUnit(part, sunUnits)
          : role === 'radiation'
            ? namedUnit(part, radiationUnits)
            : null,
  };
}

/** What a header says its column holds, or null when it is nothing we use. */
export function headerMeaning(header: string): HeaderMeaning | null {
  if (header.length > 80) return null;
  const role = roleOf(wordsOf(header));
  return role === null ? null : { role, ...unitsIn(header, role) };
}

/** mph in m/s (a definition). */
export const metresPerSecondPerMilePerHour = 0.44704;
