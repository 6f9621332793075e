import { Fragment } from 'react';
import { amount, dayShort, degrees } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { keyWords, seasonLineWords, bandMeaning } from '../../words/seasonChart';
import { Scroller } from '../Scroller';
import { ChartValues, type ChartValue } from '../ChartSays';
import type { KeyName } from './keyRows';
import type { DayReading, SeasonDay } from './reading';

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

/** The columns that have numbers, as they are headed. */
const columnsOf = (
  bands: DayReading['bands'],
  hasLikely: boolean,
  units: ChartUnits,
): readonly ChartValue[] => {
  const column = (key: KeyName | 'all it gets', heading: string, of = 'the column') => ({
    key,
    text: onTwoLines(heading),
    of,
  });
  return [
    column('demand', seasonLineWords.demand),
    column('got', seasonLineWords.got),
    ...bands.map(({ name }) => column(name, seasonLineWords[name])),
    column('all it gets', 'all it gets'),
    column('gone', seasonLineWords.gone),
    column('ready', units.nitrogen.short, `the column, ready in the top ${units.topSoil}`),
    ...(hasLikely ? [column('likely', keyWords.likely)] : []),
    column('rain of the day', 'rain and watering'),
    column('air warmth', `air, ${units.warmth.short}`),
    column('soil warmth', `soil,\u00a0${units.warmth.short}`),
  ];
};

/**
 * The numbers of the drawing, one row a week; beneath a week what was new in it. The head of a
 * column opens how its numbers are made.
 */
export function WeeksTable(props: {
  readonly id: string;
  readonly readings: readonly DayReading[];
  readonly units: ChartUnits;
  readonly since: string;
  /** what the columns are of, with a day that has them all */
  readonly day: SeasonDay;
}) {
  const { readings, units } = props;
  const last = readings.at(-1);
  const bands = (last?.bands ?? []).filter((band) => band.grams >= 0.05);
  const hasLikely = readings.some(({ likely }) => likely !== null);
  const grams = (value: number) => amount(value, units.nitrogen);
  const columns = columnsOf(bands, hasLikely, units);
  const title = `Nitrogen in ${units.nitrogen.long} of bed, added up ${props.since} to the evening of each day; rain in ${units.rain.long} of that week.`;
  // the name of what scrolls stays as it is when the ranges come
  const caption = hasLikely ? `${title} ${keyWords.likely}: ${bandMeaning}` : title;
  return (
    <ChartValues values={{ of: 'season weeks', day: props.day }} written={columns}>
      {(button) => (
        <Scroller id={props.id} className="chart-table" label={title}>
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
                {columns.map(({ key, text }) => (
                  <Fragment key={key}>
                    <th scope="col">{button(key) ?? text}</th>
                    {/* the same in a laboratory's unit */}
                    {key === 'ready' && <th scope="col">mg/kg</th>}
                  </Fragment>
                ))}
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
                        <td colSpan={columns.length + 1}>{news}</td>
                      </tr>
                    )}
                  </Fragment>
                );
              })}
            </tbody>
          </table>
        </Scroller>
      )}
    </ChartValues>
  );
}
