import type { ReadDay } from '../../document/weather/weatherTypes';
import { Scroller } from '../../charts/Scroller';
import { useShown } from '../shown';
import { WeatherHeads } from './WeatherHeads';

/** Days looked at from either end. */
const fromEachEnd = 2;

/** The first and the last days of what came, as the garden would hold them: whether columns and units are right is seen at a glance. */
export function FewDays({ days }: { readonly days: readonly ReadDay[] }) {
  const { units, dayField } = useShown();
  const few =
    days.length <= 2 * fromEachEnd
      ? days
      : [...days.slice(0, fromEachEnd), ...days.slice(-fromEachEnd)];
  const temperature = (celsius: number | undefined): string =>
    celsius === undefined
      ? 'missing'
      : (celsius / units.temperature.size + units.temperature.zero).toFixed(1);
  const digits = units.rain.size > 1 ? 2 : 1;
  return (
    <Scroller className="table-scroll" label="First and last days">
      <table>
        <caption>First and last days, as they would be kept</caption>
        <thead>
          <tr>
            <th scope="col">Day</th>
            <WeatherHeads />
          </tr>
        </thead>
        <tbody>
          {few.map(({ day, values: { lowest, highest, rain } }) => (
            <tr key={day}>
              <th scope="row">{dayField(day)}</th>
              <td className="number">{temperature(lowest)}</td>
              <td className="number">{temperature(highest)}</td>
              <td className="number">
                {rain === undefined ? 'missing' : (rain / units.rain.size).toFixed(digits)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
