import { celsiusFromFahrenheit, millimetresPerInch } from '../../core/conversions';
import { monthOf, type DayNumber } from '../../core/days';
import type { MonthlyNormals } from '../../core/season/input';
import type { HowKnown, RainUnit, TemperatureUnit, Unclear } from './weatherTypes';

/** One line's values as they stand in the file. */
export interface RawDay {
  readonly day: DayNumber;
  readonly lowest: number | null;
  readonly highest: number | null;
  readonly rain: number | null;
}

export interface RawScale {
  readonly days: readonly RawDay[];
  /** a temperature, a rain had a decimal */
  readonly temperatureDecimals: boolean;
  readonly rainDecimals: boolean;
}

export interface Scale {
  readonly temperature: TemperatureUnit;
  readonly temperatureHow: HowKnown;
  readonly rain: RainUnit;
  readonly rainHow: HowKnown;
  readonly unclear: readonly Unclear[];
}

export const celsiusOf = (value: number, unit: TemperatureUnit): number =>
  unit === 'C' ? value : unit === 'F' ? celsiusFromFahrenheit(value) : value / 10;

export const millimetresOf = (value: number, unit: RainUnit): number =>
  unit === 'mm' ? value : unit === 'in' ? value * millimetresPerInch : value / 10;

/** A few slips of the pen decide nothing. */
const shareOfSlips = 0.01;
/** In so many days some would lie beyond 60 in Fahrenheit or tenths, wherever one gardens. */
const daysThatTell = 200;
/** The usual weather decides when one reading lies this much nearer than the next, deg C. */
const nearerCelsius = 4;
/** Rain is told apart when the amounts of a reading lie within this factor of the usual ones. */
const rainFactor = 4;
/** More rain in a day than this in inches has been measured nowhere outside the tropics. */
const mostInches = 20;
const unitsOfTemperature: readonly TemperatureUnit[] = ['C', 'F', 'tenths of C'];
const temperatureBounds: Readonly<Record<TemperatureUnit, readonly [number, number]>> = {
  C: [-70, 60],
  F: [-94, 140],
  'tenths of C': [-700, 600],
};

function sharedOut(values: readonly number[], [low, high]: readonly [number, number]): number {
  if (values.length === 0) return 0;
  return values.filter((value) => value < low || value > high).length / values.length;
}

/** Mean distance of the days from the usual ones [deg C], each reading by itself. */
function distance(
  days: readonly RawDay[],
  normals: MonthlyNormals,
  unit: TemperatureUnit,
): number | null {
  let [sum, count] = [0, 0];
  for (const { day, lowest, highest } of days) {
    const month = monthOf(day) - 1;
    const usual = [
      [lowest, normals.minimumCelsius[month]],
      [highest, normals.maximumCelsius[month]],
    ] as const;
    for (const [value, normal] of usual) {
      if (value === null || normal === undefined) continue;
      sum += Math.abs(celsiusOf(value, unit) - normal);
      count++;
    }
  }
  return count > 0 ? sum / count : null;
}

function temperatureUnitOf(
  raw: RawScale,
  normals: MonthlyNormals | undefined,
): { unit: TemperatureUnit; how: HowKnown; isClear: boolean } {
  const values = raw.days.flatMap(({ lowest, highest }) =>
    [lowest, highest].filter((value) => value !== null),
  );
  if (values.length === 0) return { unit: 'C', how: 'guessed', isClear: true };
  const can = unitsOfTemperature.filter(
    (unit) =>
      sharedOut(values, temperatureBounds[unit]) <= shareOfSlips &&
      (unit !== 'tenths of C' || !(raw.temperatureDecimals || raw.rainDecimals)),
  );
  const [only, second] = can;
  if (only === undefined) return { unit: 'C', how: 'guessed', isClear: true };
  if (second === undefined) return { unit: only, how: 'by its values', isClear: true };
  if (normals) {
    const near = can
      .map((unit) => ({ unit, off: distance(raw.days, normals, unit) ?? Infinity }))
      .sort((one, other) => one.off - other.off);
    const [best, next] = near;
    if (best && next && next.off - best.off >= nearerCelsius) {
      return { unit: best.unit, how: 'by the usual weather', isClear: true };
    }
  }
  // whole degrees of a year stay under 60 in Celsius alone
  const isLong = raw.days.length >= daysThatTell;
  return { unit: only, how: 'by its values', isClear: isLong && only === 'C' };
}

function rainUnitOf(
  raw: RawScale,
  temperature: TemperatureUnit,
  hasTemperatures: boolean,
  normals: MonthlyNormals | undefined,
): { unit: RainUnit; how: HowKnown; isClear: boolean } {
  const rains = raw.days.flatMap(({ rain }) => (rain === null || rain < 0 ? [] : [rain]));
  const canBeInches = sharedOut(rains, [0, mostInches]) <= shareOfSlips;
  if (hasTemperatures) {
    if (temperature === 'tenths of C') {
      return { unit: 'tenths of mm', how: 'by its values', isClear: true };
    }
    if (temperature === 'C') return { unit: 'mm', how: 'by its values', isClear: true };
    if (!canBeInches) return { unit: 'mm', how: 'by its values', isClear: true };
    if (raw.rainDecimals) return { unit: 'in', how: 'by its values', isClear: true };
  }
  const can: RainUnit[] = ['mm'];
  if (canBeInches) can.push('in');
  if (!raw.rainDecimals) can.push('tenths of mm');
  if (can.length > 1 && normals && rains.length > 0) {
    let usual = 0;
    for (const { day, rain } of raw.days) {
      if (rain !== null) usual += (normals.rainMillimetres[monthOf(day) - 1] ?? 0) / 30.4;
    }
    const fell = rains.reduce((sum, rain) => sum + rain, 0);
    const fits = can.filter((unit) => {
      const times = millimetresOf(fell, unit) / usual;
      return times >= 1 / rainFactor && times <= rainFactor;
    });
    const [best, next] = fits;
    if (best !== undefined && next === undefined) {
      return { unit: best, how: 'by the usual weather', isClear: true };
    }
  }
  const unit: RainUnit = hasTemperatures && canBeInches ? 'in' : 'mm';
  return { unit, how: 'guessed', isClear: can.length === 1 };
}

/**
 * Units of a table that does not name them.
 *
 * Temperatures: a reading that puts more than one value in a hundred beyond the weather of the
 * earth is out; so are tenths where any value has a decimal. Of several that are left, the one that
 * lies at least 4 C nearer to the garden's usual weather; else Celsius, doubtful in a short table.
 * Rain goes with the temperatures: tenths with tenths, mm with Celsius, inches with Fahrenheit
 * where no amount is too large for them.
 *
 * @param said units named by the person or in the headers; never doubted
 */
export function scaleOf(
  raw: RawScale,
  said: {
    readonly temperature: { readonly unit: TemperatureUnit; readonly how: HowKnown } | null;
    readonly rain: { readonly unit: RainUnit; readonly how: HowKnown } | null;
  },
  normals: MonthlyNormals | undefined,
): Scale {
  const hasTemperatures = raw.days.some(
    ({ lowest, highest }) => lowest !== null || highest !== null,
  );
  const temperature = said.temperature
    ? { ...said.temperature, isClear: true }
    : temperatureUnitOf(raw, normals);
  const rain = said.rain
    ? { ...said.rain, isClear: true }
    : rainUnitOf(raw, temperature.unit, hasTemperatures, normals);
  const hasRain = raw.days.some((day) => day.rain !== null);
  return {
    temperature: temperature.unit,
    temperatureHow: temperature.how,
    rain: rain.unit,
    rainHow: rain.how,
    unclear: [
      ...(temperature.isClear
        ? []
        : [{ kind: 'temperature unit' as const, taken: temperature.unit }]),
      ...(rain.isClear || !hasRain ? [] : [{ kind: 'rain unit' as const, taken: rain.unit }]),
    ],
  };
}
