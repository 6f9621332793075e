import { dayOfYear, textFromDay, type DayNumber } from '../core/days';
import { dayKinds, type SeasonWeather } from '../core/season/input';
import { penmanMonteith, type Humidity, type Sun } from '../core/soil/penmanMonteith';
import { likelyGaps } from '../tables/weatherGaps';
import type { ExtraColumn, Garden } from './schema';

type DayValues = Readonly<Partial<Record<ExtraColumn, number>>>;

/** The surest measure of the air's moisture that a day has. */
function humidityOf(day: DayValues): Humidity | null {
  const dewPoint = day['dew point deg C'];
  if (dewPoint !== undefined) return { kind: 'dew point', celsius: dewPoint };
  const [lowestPercent, highestPercent] = [day['lowest humidity %'], day['highest humidity %']];
  if (lowestPercent !== undefined && highestPercent !== undefined) {
    return { kind: 'relative', lowestPercent, highestPercent };
  }
  const percent = day['humidity %'];
  return percent === undefined ? null : { kind: 'mean relative', percent };
}

function sunOf(day: DayValues): Sun | null {
  const megajoules = day['radiation MJ/m2'];
  if (megajoules !== undefined) return { kind: 'radiation', megajoules };
  const hours = day['sunshine h'];
  return hours === undefined ? null : { kind: 'hours', hours };
}

const imagined = dayKinds.indexOf('imagined');

/**
 * Reference evapotranspiration of the days whose moisture or light was measured [mm], by
 * `penmanMonteith`; NaN on all others, which go by their temperatures alone (Hargreaves).
 *
 * Wind by itself is not enough: a record of temperatures and wind, such as the one that comes with
 * the program, says nothing of how dry the air was, and the vapour pressure of the coldest moment
 * (FAO-56 eq. 48) that would stand in for it is as much a guess as temperatures alone. On a day
 * that is reckoned, wind that is missing is taken as 2 m/s, moisture as that of eq. 48, light from
 * the day's span of temperature, inland. Height above the sea is nought where the garden does not
 * say: a thousand metres change the answer by less than 4 %.
 *
 * @returns null when there is no such day: nothing changes then
 */
export function measuredEvaporation(
  garden: Garden,
  weather: SeasonWeather,
  firstDay: DayNumber,
): Float64Array | null {
  const { extra } = garden.weather;
  if (!extra) return null;
  const rows = new Map(extra.days.map(([date, ...values]) => [date, values]));
  const { latitudeDegrees, elevationMetres = 0 } = garden.garden;
  const gaps = likelyGaps('inland');
  let found = false;
  const series = weather.minimumCelsius.map((minimumCelsius, index) => {
    const maximumCelsius = weather.maximumCelsius[index];
    const day = firstDay + index;
    const row = rows.get(textFromDay(day));
    if (!row || maximumCelsius === undefined || weather.kind[index] === imagined) return NaN;
    const values: DayValues = Object.fromEntries(
      extra.columns.flatMap((column, at) => {
        const value = row[at] ?? null;
        return value === null ? [] : [[column, value]];
      }),
    );
    const [humidity, sun] = [humidityOf(values), sunOf(values)];
    if (humidity === null && sun === null) return NaN;
    found = true;
    const wind = values['wind m/s at 2 m'];
    return penmanMonteith(
      {
        minimumCelsius,
        maximumCelsius,
        latitudeDegrees,
        dayOfYear: dayOfYear(day),
        elevationMetres,
        humidity,
        wind: wind === undefined ? null : { metresPerSecond: wind, heightMetres: 2 },
        sun,
      },
      gaps,
    );
  });
  return found ? series : null;
}
