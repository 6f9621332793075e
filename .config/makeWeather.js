import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Writes assets/weather/new-york.json from the daily New York rows of the npm package
 * vega-datasets (weather.csv). Run by hand after the package changes; a test compares both.
 *
 *     node .config/makeWeather.js
 */
const root = join(import.meta.dirname, '..');

/** @param {string} csv @param {string} location */
export function columnsOf(csv, location) {
  const [header, ...lines] = csv.trim().split('\n');
  const names = (header ?? '').split(',');
  const column = (/** @type {string} */ name) => names.indexOf(name);
  const rows = lines
    .map((line) => line.split(','))
    .filter((cells) => cells[column('location')] === location);
  const numbers = (/** @type {string} */ name) => rows.map((cells) => Number(cells[column(name)]));
  return {
    days: rows.map((cells) => cells[column('date')] ?? ''),
    minimumCelsius: numbers('temp_min'),
    maximumCelsius: numbers('temp_max'),
    rainMillimetres: numbers('precipitation'),
  };
}

/** @param {string} csv */
export function newYorkJson(csv) {
  const { days, ...columns } = columnsOf(csv, 'New York');
  const record = {
    name: 'new-york',
    place: 'New York',
    credit:
      'Weather measured by NOAA (US), as collected in the open data package vega-datasets (weather.csv).',
    firstDay: days[0],
    ...columns,
  };
  const lines = Object.entries(record).map(
    ([key, value]) => `  ${JSON.stringify(key)}: ${JSON.stringify(value)}`,
  );
  return `{\n${lines.join(',\n')}\n}\n`;
}

if (process.argv[1] === import.meta.filename) {
  const csv = readFileSync(join(root, 'node_modules/vega-datasets/data/weather.csv'), 'utf8');
  writeFileSync(join(root, 'assets/weather/new-york.json'), newYorkJson(csv));
}
