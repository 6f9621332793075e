import { Fragment } from 'react';
import { amount, dayShort, degrees } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { keyWords, seasonLineWords } from '../../words/seasonChart';
import { Scroller } from '../Scroller';
import type { DayReading } from './reading';

/** A heading that breaks in one place only, where its two halves are nearest in length. */
function onTwoLines(heading: string): string {
  const words = heading.split(' ');
  const halves = words.slice(1).map((_word, index) => {
    const first = words.slice(0, index + 1).join('\u00a0');
    const second = words.slice(index + 1).join('\u00a0');
    return { lines: `${first} ${second}`, longest: Math.max(first.length, second.length) };
  });
  return halves.toSorted((one, other) => one.longest - other.longest)[0]?.lines ?? heading;
}

/** What is other than the week before, beneath its numbers: the state, the weather's kind, what was done. */
const newsOf = (reading: DayReading, before: DayReading | undefined): string =>
  [
    ...(reading.kind === before?.kind ? [] : [`weather ${reading.kind} from here on`]),
    ...(reading.state === (before?.state ?? null) || reading.state === null
      ? []
      : [`${reading.state} from here on`]),
    ...reading.happened,
  ].join('; ');

/** The numbers of the drawing, one row a week; beneath a week what was new in it. */
export function WeeksTable(props: {
  readonly id: string;
  readonly readings: readonly DayReading[];
  readonly units: ChartUnits;
  readonly since: string;
}) {
  const { readings, units } = props;
  const last = readings.at(-1);
  const bands = (last?.bands ?? []).filter((band) => band.grams >= 0.05);
  const hasLikely = readings.some(({ likely }) => likely !== null);
  const grams = (value: number) => amount(value, units.nitrogen);
  // all but the day's own, which stands beside both its lines
  const columns = 2 + bands.length + 2 + (hasLikely ? 3 : 2) + 3;
  const caption = `Nitrogen in ${units.nitrogen.long} of bed, added up ${props.since} to the evening of each day; rain in ${units.rain.long} of that week.`;
  return (
    <Scroller id={props.id} className="chart-table" label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col" rowSpan={2} className="chart-table-words">
              evening of
            </th>
            <th scope="colgroup" colSpan={2} className="chart-table-group">
              the crops
            </th>
            <th scope="colgroup" colSpan={bands.length + 2} className="chart-table-group">
              where it came from, and went
            </th>
            <th scope="colgroup" colSpan={hasLikely ? 3 : 2} className="chart-table-group">
              ready in the top {units.topSoil}
            </th>
            <th scope="colgroup" colSpan={3} className="chart-table-group">
              weather
            </th>
          </tr>
          <tr>
            <th scope="col">{seasonLineWords.demand}</th>
            <th scope="col">{seasonLineWords.got}</th>
            {bands.map((band) => (
              <th key={band.name} scope="col">
                {onTwoLines(seasonLineWords[band.name])}
              </th>
            ))}
            <th scope="col">{onTwoLines('all it gets')}</th>
            <th scope="col">{onTwoLines(seasonLineWords.gone)}</th>
            <th scope="col">{units.nitrogen.short}</th>
            <th scope="col">mg/kg</th>
            {hasLikely && <th scope="col">{onTwoLines(keyWords.likely)}</th>}
            <th scope="col">{onTwoLines('rain and watering')}</th>
            <th scope="col">air, {units.warmth.short}</th>
            <th scope="col">{`soil,\u00a0${units.warmth.short}`}</th>
          </tr>
        </thead>
        <tbody>
          {readings.map((reading, at) => {
            const news = newsOf(reading, readings[at - 1]);
            return (
              <Fragment key={reading.day}>
                <tr>
                  <th scope="row" rowSpan={news === '' ? 1 : 2}>
                    {dayShort(reading.day, units)}
                  </th>
                  <td>{grams(reading.demand)}</td>
                  <td>{grams(reading.got)}</td>
                  {bands.map(({ name }) => (
                    <td key={name}>
                      {grams(reading.bands.find((band) => band.name === name)?.grams ?? 0)}
                    </td>
                  ))}
                  <td>{grams(reading.supply)}</td>
                  <td>{grams(reading.gone)}</td>
                  <td>{grams(reading.readyTop)}</td>
                  <td>{Math.round(reading.nitrateMgPerKg)}</td>
                  {hasLikely && (
                    <td className="chart-table-range">
                      {reading.likely
                        ? `${grams(reading.likely.low)}–${grams(reading.likely.high)}`
                        : '–'}
                    </td>
                  )}
                  <td>{amount(reading.rain + reading.watered, units.rain)}</td>
                  <td className="chart-table-range">
                    {degrees(reading.airMinimum, units)} to {degrees(reading.airMaximum, units)}
                  </td>
                  <td>{degrees(reading.soil, units)}</td>
                </tr>
                {news !== '' && (
                  <tr className="chart-table-happened">
                    <td colSpan={columns}>{news}</td>
                  </tr>
                )}
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </Scroller>
  );
}
