import type { WeatherSpread } from '../core/season/imagine';
import { row, single } from './row';
import type { Row } from './shapes';

/** Standard deviations of daily temperatures, January first [low, typical, high by our own widening]. */
const spreadRow = (typical: number, month: string, which: string): Row =>
  row(
    typical * 0.6,
    typical,
    typical * 1.2,
    'deg C',
    'NoaaNormals',
    `${month}, standard deviation of the daily ${which}`,
    'derived',
    { note: 'Measured at New York, Central Park; borrowed elsewhere. Range assumed.' },
  );

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const maximumSpread = [5.6, 5.5, 5.5, 5.3, 4.8, 4.0, 3.4, 3.3, 3.6, 4.1, 4.7, 5.2];
const minimumSpread = [5.4, 5.0, 4.4, 3.6, 3.2, 2.9, 2.6, 2.6, 3.3, 3.7, 4.2, 4.7];

/**
 * What imagined weather needs besides the monthly normals. The day-to-day numbers were worked out
 * from the 2012-2015 records of New York and Seattle (1461 days each; temperatures as departures
 * from a three-wave yearly curve over the month's spread; wet days from 1 mm).
 */
export const imaginedWeatherRows = {
  maximumSpreadCelsius: maximumSpread.map((value, index) =>
    spreadRow(value, months[index] ?? '', 'maximum'),
  ),
  minimumSpreadCelsius: minimumSpread.map((value, index) =>
    spreadRow(value, months[index] ?? '', 'minimum'),
  ),
  persistence: row(
    0.54,
    0.64,
    0.69,
    '1',
    'NoaaDaily',
    'lag-1 correlation of departures',
    'derived',
  ),
  togetherness: row(
    0.55,
    0.65,
    0.75,
    '1',
    'NoaaDaily',
    'correlation of the departures of minimum and maximum',
    'derived',
  ),
  wetAfterDry: row(
    0.6,
    0.75,
    0.84,
    '1',
    'NoaaDaily',
    'chance of a wet day after a dry one over the chance of any wet day',
    'derived',
    { note: 'New York 0.84, Seattle 0.60' },
  ),
  amountShape: row(
    0.7,
    0.8,
    0.9,
    '1',
    'NoaaDaily',
    'Weibull shape whose spread over mean is that of wet-day rain above 1 mm',
    'derived',
    { note: 'spread over mean 1.36 in New York, 1.17 in Seattle' },
  ),
  wetDayMillimetres: single(1, 'mm', 'Definition', 'a wet day has at least 1 mm', 'definition'),
} as const;

/** The typical spreads for a garden; south of the equator the months are turned by half a year. */
export function typicalWeatherSpread(latitudeDegrees: number): WeatherSpread {
  const turned = (rows: readonly Row[]): number[] => {
    const values = rows.map((item) => item.typical);
    return latitudeDegrees < 0 ? [...values.slice(6), ...values.slice(0, 6)] : values;
  };
  return {
    minimumSpreadCelsius: turned(imaginedWeatherRows.minimumSpreadCelsius),
    maximumSpreadCelsius: turned(imaginedWeatherRows.maximumSpreadCelsius),
    persistence: imaginedWeatherRows.persistence.typical,
    togetherness: imaginedWeatherRows.togetherness.typical,
    wetAfterDry: imaginedWeatherRows.wetAfterDry.typical,
    amountShape: imaginedWeatherRows.amountShape.typical,
    wetDayMillimetres: imaginedWeatherRows.wetDayMillimetres.typical,
  };
}
