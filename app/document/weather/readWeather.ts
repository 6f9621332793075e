import { failure, type Result } from '../../core/result';
import { readListLine, readMonthLine, readStation } from './readStation';
import { readTable } from './readTable';
import { textLines, weatherCharacterLimit } from './textLines';
import type { WeatherFailure, WeatherForm, WeatherOptions, WeatherReading } from './weatherTypes';

/** Lines that are looked at to tell the form. */
const lookedAt = 30;

/** Which layout a text has; anything that is not a station file is taken for a table of columns. */
export function formOf(text: string): WeatherForm {
  let [seen, list, months] = [0, 0, 0];
  for (const { text: line } of textLines(text)) {
    if (line === null || line.trim() === '') continue;
    if (/(?:^|,)"?STATION"?,/.test(line) && /"?DATE"?/.test(line) && /TMAX|TMIN|PRCP/.test(line)) {
      return 'daily summaries';
    }
    const asList = readListLine(line);
    if (asList !== null && asList !== 'header') list++;
    if (readMonthLine(line) !== null) months++;
    seen++;
    if (seen === lookedAt) break;
  }
  if (months > seen / 2) return 'station months';
  return list > seen / 2 ? 'station list' : 'columns';
}

/**
 * Reads weather that somebody measured: a table of days with any separator, decimal mark, order of
 * dates and units, or one of the three station forms of GHCN-Daily.
 *
 * Nothing is mended. What cannot be is refused with its line and the reason (`preview.refused`);
 * days that are missing are reported (`preview.gaps`); what the file does not say and its values do
 * not tell is asked (`preview.unclear`) and should be settled by `options` before anything is kept.
 *
 * @returns days rising, in deg C, mm, m/s at 2 m, %, h, MJ/m2
 * @validity texts up to 48 million characters and 2 million lines; work is linear in the text
 * @source layouts of GHCN-Daily: readme.txt of NOAA NCEI, section III
 */
export function readWeather(
  text: string,
  options: WeatherOptions = {},
): Result<WeatherReading, WeatherFailure> {
  if (text.length > weatherCharacterLimit) {
    return failure({ kind: 'too large', limit: weatherCharacterLimit, unit: 'characters' });
  }
  if (text.trim() === '') return failure({ kind: 'empty' });
  if (text.slice(0, 100_000).includes('\u0000')) return failure({ kind: 'not text' });
  const form = formOf(text);
  return form === 'columns' || form === 'daily summaries'
    ? readTable(text, form, options)
    : readStation(text, form, options);
}
