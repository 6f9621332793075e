import { useMemo } from 'react';
import { Scroller } from '../../charts/Scroller';
import { seasonStart } from '../../core/days';
import { weatherFrom, weatherRanks } from '../../document/weatherFrom';
import { rankWords } from '../../words/downloadWords';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { useToday } from '../useReadingContext';

/** Where the season's days so far are known from, the best first: that is the order in which they are taken. */
export function WeatherFromTable() {
  const garden = useGarden();
  const today = useToday();
  const { dayWord } = useShown();
  const first = seasonStart(today, garden.garden.seasonStartMonth);
  const counts = useMemo(() => weatherFrom(garden, first, today), [garden, first, today]);
  return (
    <Scroller className="table-scroll" label="Where this season’s weather is from">
      <table>
        <caption>
          Days from {dayWord(first)} to {dayWord(today)}, by where their weather is from. What
          stands higher is taken before what stands lower.
        </caption>
        <thead>
          <tr>
            <th scope="col">Known from</th>
            <th scope="col" className="number">
              Temperatures (days)
            </th>
            <th scope="col" className="number">
              Rain (days)
            </th>
          </tr>
        </thead>
        <tbody>
          {weatherRanks.map((rank) => (
            <tr key={rank}>
              <th scope="row">{rankWords[rank]}</th>
              <td className="number">{counts.temperatures[rank]}</td>
              <td className="number">{counts.rain[rank]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
