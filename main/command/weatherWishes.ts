import { dayFromText, type DayNumber } from '../../app/core/days';
import type { ColumnRole, WeatherOptions } from '../../app/document/weather/weatherTypes';

export interface WeatherWishes {
  readonly file: string;
  readonly into: string | null;
  readonly write: boolean;
  readonly options: WeatherOptions;
}

const roles: Readonly<Record<string, ColumnRole>> = {
  date: 'date',
  year: 'year',
  month: 'month',
  day: 'day',
  min: 'lowest',
  max: 'highest',
  rain: 'rain',
  wind: 'wind',
  humidity: 'humidity',
  'max-humidity': 'highest humidity',
  'min-humidity': 'lowest humidity',
  dew: 'dew point',
  sun: 'sunshine',
  radiation: 'radiation',
};

export const weatherUsage =
  'weather FILE [--into GARDEN [--write]] [--columns date=...,min=...,max=...,rain=...] ' +
  '[--temperature C|F|tenths] [--rain mm|in|tenths] [--dates ymd|dmy|mdy] [--station ID] ' +
  '[--from DAY] [--to DAY] [--wind-height METRES]';

/** A known word for each of the few answers an option takes. */
function oneOf<Answer>(
  word: string,
  option: string,
  answers: Readonly<Record<string, Answer>>,
): Answer | { readonly wrong: string } {
  const answer = Object.hasOwn(answers, word) ? answers[word] : undefined;
  return answer ?? { wrong: `"${option}" wants one of: ${Object.keys(answers).join(', ')}.` };
}

const isWrong = (value: unknown): value is { readonly wrong: string } =>
  typeof value === 'object' && value !== null && 'wrong' in value;

function columnsOf(word: string): NonNullable<WeatherOptions['columns']> | { wrong: string } {
  const columns: Partial<Record<ColumnRole, string>> = {};
  for (const part of word.split(',')) {
    const at = part.indexOf('=');
    const role = at < 0 ? undefined : roles[part.slice(0, at).trim()];
    const named = part.slice(at + 1).trim();
    if (role === undefined || named === '') {
      return {
        wrong: `"${part}" is not a column. Write for example "max=High" or "max=3"; there are: ${Object.keys(roles).join(', ')}.`,
      };
    }
    columns[role] = named;
  }
  return columns;
}

function dayOption(word: string, option: string): DayNumber | { wrong: string } {
  return dayFromText(word) ?? { wrong: `"${option}" wants a day such as 2013-04-01.` };
}

/** Reads the words after `weather`; a sentence when they make no sense. */
export function weatherWishes(words: readonly string[]): WeatherWishes | string {
  let file: string | null = null;
  let into: string | null = null;
  let write = false;
  let options: WeatherOptions = {};
  for (let at = 0; at < words.length; at++) {
    const word = words[at] ?? '';
    if (word === '--write') {
      write = true;
      continue;
    }
    if (!word.startsWith('--')) {
      if (file !== null) return `Only one weather file at a time: "${file}" or "${word}".`;
      file = word;
      continue;
    }
    const value = words[at + 1];
    const known = [
      '--into',
      '--columns',
      '--temperature',
      '--rain',
      '--dates',
      '--station',
      '--from',
      '--to',
      '--wind-height',
    ];
    if (!known.includes(word)) return `"${word}" is not known here. It goes: ${weatherUsage}`;
    if (value === undefined) return `"${word}" wants a word after it. It goes: ${weatherUsage}`;
    at++;
    if (word === '--into') {
      into = value;
      continue;
    }
    const read = optionOf(word, value);
    if (isWrong(read)) return read.wrong;
    options = { ...options, ...read };
  }
  if (file === null) return `Name the weather file. It goes: ${weatherUsage}`;
  if (write && into === null) return '"--write" wants the garden it is written to: --into GARDEN.';
  return { file, into, write, options };
}

function optionOf(word: string, value: string): Partial<WeatherOptions> | { wrong: string } {
  switch (word) {
    case '--columns': {
      const columns = columnsOf(value);
      return isWrong(columns) ? columns : { columns };
    }
    case '--temperature': {
      const temperature = oneOf(value, word, {
        C: 'C',
        F: 'F',
        tenths: 'tenths of C',
      } as const);
      return isWrong(temperature) ? temperature : { temperature };
    }
    case '--rain': {
      const rain = oneOf(value, word, { mm: 'mm', in: 'in', tenths: 'tenths of mm' } as const);
      return isWrong(rain) ? rain : { rain };
    }
    case '--dates': {
      const dates = oneOf(value, word, { ymd: 'ymd', dmy: 'dmy', mdy: 'mdy' } as const);
      return isWrong(dates) ? dates : { dates };
    }
    case '--from':
    case '--to': {
      const day = dayOption(value, word);
      return isWrong(day) ? day : word === '--from' ? { from: day } : { to: day };
    }
    case '--wind-height': {
      const windHeightMetres = Number(value);
      const isHeight = windHeightMetres >= 0.5 && windHeightMetres <= 100;
      return isHeight ? { windHeightMetres } : { wrong: `"${word}" wants metres from 0.5 to 100.` };
    }
    default:
      return { station: value };
  }
}
