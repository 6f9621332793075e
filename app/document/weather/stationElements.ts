import type { ColumnRole, Measure } from './weatherTypes';

/** One element of GHCN-Daily that is used: what it measures and what its whole numbers count. */
interface StationElement {
  readonly measure: Measure;
  /** from the file's whole number to the inside unit */
  readonly factor: number;
  readonly unit: string;
}

/**
 * Elements of GHCN-Daily that are used, in the units of its readme (section III): tenths of deg C
 * and of mm, tenths of m/s, per cent, minutes. Averages of temperature, snow and totals over several
 * days are left alone.
 */
export const stationElements: ReadonlyMap<string, StationElement> = new Map(
  Object.entries({
    TMIN: { measure: 'lowest', factor: 0.1, unit: 'tenths of \u00B0C' },
    TMAX: { measure: 'highest', factor: 0.1, unit: 'tenths of \u00B0C' },
    PRCP: { measure: 'rain', factor: 0.1, unit: 'tenths of mm' },
    AWND: { measure: 'wind', factor: 0.1, unit: 'tenths of m/s' },
    ADPT: { measure: 'dew point', factor: 0.1, unit: 'tenths of \u00B0C' },
    RHAV: { measure: 'humidity', factor: 1, unit: '%' },
    RHMX: { measure: 'highest humidity', factor: 1, unit: '%' },
    RHMN: { measure: 'lowest humidity', factor: 1, unit: '%' },
    TSUN: { measure: 'sunshine', factor: 1 / 60, unit: 'minutes' },
  } satisfies Record<string, StationElement>),
);

/** Rain collected over several days: the days it fell on are not dry, and not known. */
export const severalDayRain = 'MDPR';

/** The same elements as headers of the form with one line a day. */
export const elementRoles: ReadonlyMap<string, ColumnRole> = new Map<string, ColumnRole>([
  ['DATE', 'date'],
  ...[...stationElements].map(([name, { measure }]): [string, ColumnRole] => [name, measure]),
]);

/** A missing value of the station files. */
export const missingValue = -9999;

/** "measurement, quality, source, time" of an attributes cell; a value counts only if quality is blank. */
export function measurementFlags(cell: string): { readonly quality: string } {
  return { quality: (cell.split(',', 3)[1] ?? '').trim() };
}
