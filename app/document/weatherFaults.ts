import type { Faults } from './faults';
import type { ExtraColumn, ExtraWeather, Garden } from './schema';

/** Dates rise, each once. */
function risingDays(
  list: string,
  rows: readonly (readonly [string, ...unknown[]])[],
  faults: Faults,
): void {
  let before = '';
  rows.forEach(([date], index) => {
    if (date === before) faults.broken(list, index, null, `${date} is there twice`);
    else if (date < before) {
      faults.broken(list, index, null, `${date} comes after ${before}; days must rise`);
    }
    before = date;
  });
  faults.day(list, 0, rows[0]?.[0]);
  faults.day(list, rows.length - 1, rows.at(-1)?.[0]);
}

function lowBelowHigh(
  list: string,
  rows: readonly (readonly [string, number | null, number | null, ...unknown[]])[],
  faults: Faults,
): void {
  rows.forEach(([date, low, high], index) => {
    if (low === null || high === null || low <= high) return;
    const both = `${String(low)} and ${String(high)}`;
    faults.broken(list, index, null, `the lowest of ${date} lies above its highest (${both})`);
  });
}

/** Beyond these no instrument on a farm reads. */
const extraLimits: Readonly<Record<ExtraColumn, readonly [number, number]>> = {
  'wind m/s at 2 m': [0, 60],
  'humidity %': [0, 100],
  'highest humidity %': [0, 100],
  'lowest humidity %': [0, 100],
  'dew point deg C': [-70, 40],
  'sunshine h': [0, 24],
  'radiation MJ/m2': [0, 45],
};

function extraFaults({ columns, days }: ExtraWeather, faults: Faults): void {
  const list = 'weather, extra, days';
  if (new Set(columns).size < columns.length) {
    faults.broken('weather, extra, columns', null, null, 'a column is named twice');
  }
  risingDays(list, days, faults);
  days.forEach(([, ...values], index) => {
    if (values.length !== columns.length) {
      const wanted = String(columns.length + 1);
      faults.broken(list, index, null, `a day and a value for each column are wanted (${wanted})`);
      return;
    }
    const low = values[columns.indexOf('lowest humidity %')] ?? null;
    const high = values[columns.indexOf('highest humidity %')] ?? null;
    if (low !== null && high !== null && low > high) {
      const both = `${String(low)} and ${String(high)} %`;
      faults.broken(list, index, null, `the lowest humidity lies above the highest (${both})`);
    }
    columns.forEach((column, at) => {
      const value = values[at] ?? null;
      const [least, most] = extraLimits[column];
      if (value !== null && (value < least || value > most)) {
        const bounds = `${String(least)} to ${String(most)}`;
        faults.broken(list, index, column, `${bounds} can be, not ${String(value)}`);
      }
    });
  });
}

/**
 * What cannot be in a garden's weather: days that do not rise, a lowest above its highest, a value
 * no instrument reads, months upside down. A day, a month or a year that is missing is no fault: it
 * is filled or imagined, and marked so.
 */
export function weatherFaults(garden: Garden, faults: Faults): void {
  risingDays('weather, days', garden.weather.days, faults);
  lowBelowHigh('weather, days', garden.weather.days, faults);
  lowBelowHigh('weather, thermometer', garden.weather.thermometer ?? [], faults);
  risingDays('weather, download, days', garden.weather.download?.days ?? [], faults);
  lowBelowHigh('weather, download, days', garden.weather.download?.days ?? [], faults);
  if (garden.weather.extra) extraFaults(garden.weather.extra, faults);
  risingDays('weather, thermometer', garden.weather.thermometer ?? [], faults);
  const { minimumCelsius, maximumCelsius } = garden.weather.normals;
  minimumCelsius.forEach((lowest, month) => {
    if (lowest > (maximumCelsius[month] ?? lowest)) {
      const both = `${String(lowest)} and ${String(maximumCelsius[month])}`;
      const what = `it lies above the highest (${both})`;
      faults.broken('weather, normals, minimumCelsius', month, null, what);
    }
  });
}
