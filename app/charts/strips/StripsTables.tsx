import type { DayNumber } from '../../core/days';
import { mgPerKgFromGramsPerM2 } from '../../core/units';
import { amount, amountWithUnit, dayShort } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { rangeOdds } from '../../words/ranges';
import { readyEnds, seasonPlaceWords as words } from '../../words/seasonPlaceWords';
import { ChartValues } from '../ChartSays';
import { Scroller } from '../Scroller';
import { calendarStretches } from '../season/calendar';
import type { DaySpan } from '../season/data';
import type { BedStrip } from './data';
import { rangeOn, readyOn } from './geometry';

const wholeEnds = (low: number, high: number): string =>
  low === high ? String(low) : `${String(low)} to ${String(high)}`;

function Ends({ ends }: { readonly ends: string }) {
  return <span className="strip-ends">{ends}</span>;
}

/**
 * The strips as numbers: each bed on the chosen day and at the end of every month, its name opening
 * what stands behind the chosen day's; and all that is on them.
 */
export function StripsTables(props: {
  readonly id: string;
  readonly beds: readonly BedStrip[];
  readonly span: DaySpan;
  readonly day: DayNumber;
  readonly units: ChartUnits;
}) {
  const { beds, span, day, units } = props;
  const ends = calendarStretches('season', span, units, 1).map(({ to }) => to);
  const written = (grams: number | null): string =>
    grams === null ? '–' : amount(grams, units.nitrogen);
  const hasRange = beds.some(({ range }) => typeof range === 'object');
  const ready = (bed: BedStrip, on: DayNumber) => {
    const range = rangeOn(bed, on);
    return (
      <>
        {written(readyOn(bed, on))}
        {range && <Ends ends={readyEnds(range, units)} />}
      </>
    );
  };
  const inSoil = (bed: BedStrip) => {
    const perKg = (grams: number): number =>
      Math.round(mgPerKgFromGramsPerM2(grams, bed.bulkDensityKgPerL, 30));
    const grams = readyOn(bed, day);
    const range = rangeOn(bed, day);
    return (
      <>
        {grams === null ? '–' : perKg(grams)}
        {range && <Ends ends={wholeEnds(perKg(range.low), perKg(range.high))} />}
      </>
    );
  };
  const short = (at: DayNumber | null): string => (at === null ? '–' : dayShort(at, units));
  const isIn = (from: DayNumber, to: DayNumber | null): boolean =>
    from <= span.to && (to === null || to > span.from);
  const things = beds.flatMap(({ bedId, name, plantings, layers }) => [
    ...plantings
      .filter(({ start, end }) => isIn(start, end))
      .map((planting) => ({ bedId, bed: name, day: planting.start, planting, layer: null })),
    ...layers
      .filter((layer) => isIn(layer.day, layer.day + 1))
      .map((layer) => ({ bedId, bed: name, day: layer.day, planting: null, layer })),
  ]);
  return (
    <div id={props.id} className="strip-tables">
      <ChartValues
        values={{ of: 'strips', beds, day }}
        written={beds
          .filter((bed) => readyOn(bed, day) !== null)
          .map(({ bedId, name }) => ({
            key: bedId,
            text: name,
            of: `ready on ${dayShort(day, units)}`,
          }))}
      >
        {(button) => (
          <Scroller className="chart-table" label={words.readyTable}>
            <table>
              <caption>
                {words.readyTable}, in {units.nitrogen.long} of bed, on the evening of each day
                {hasRange ? `, and below it where it lies ${rangeOdds}` : ''}.
              </caption>
              <thead>
                <tr>
                  <th scope="col" className="chart-table-words">
                    Bed
                  </th>
                  <th scope="col">{dayShort(day, units)}, chosen</th>
                  <th scope="col">mg/kg that day</th>
                  {ends.map((end) => (
                    <th key={end} scope="col">
                      {dayShort(end, units)}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {beds.map((bed) => (
                  <tr key={bed.bedId}>
                    <th scope="row">{button(bed.bedId) ?? bed.name}</th>
                    <td>{ready(bed, day)}</td>
                    <td>{inSoil(bed)}</td>
                    {ends.map((end) => (
                      <td key={end}>{ready(bed, end)}</td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroller>
        )}
      </ChartValues>
      <Scroller className="chart-table" label={words.plantingTable}>
        <table>
          <caption>{words.plantingTable}, in the order of days on each bed.</caption>
          <thead>
            <tr>
              <th scope="col" className="chart-table-words">
                Bed
              </th>
              <th scope="col" className="chart-table-words">
                What
              </th>
              <th scope="col">From</th>
              <th scope="col">Flower</th>
              <th scope="col">First pick</th>
              <th scope="col">To</th>
            </tr>
          </thead>
          <tbody>
            {things
              .toSorted(
                (one, other) =>
                  beds.findIndex(({ bedId }) => bedId === one.bedId) -
                    beds.findIndex(({ bedId }) => bedId === other.bedId) || one.day - other.day,
              )
              .map(({ bed, planting, layer }) =>
                planting ? (
                  <tr key={planting.id}>
                    <th scope="row">{bed}</th>
                    <td className="chart-table-words">
                      {planting.name}, {planting.sown ? 'sown' : 'planted'}
                    </td>
                    <td>{short(planting.start)}</td>
                    <td>{short(planting.flower)}</td>
                    <td>{short(planting.pick)}</td>
                    <td>
                      {planting.end !== null && !planting.isEndTyped && 'about '}
                      {short(planting.end)}
                    </td>
                  </tr>
                ) : (
                  layer && (
                    <tr key={layer.id}>
                      <th scope="row">{bed}</th>
                      <td className="chart-table-words">
                        {layer.name},{' '}
                        {layer.inSoil === true
                          ? 'dug or hoed in'
                          : `${amountWithUnit(layer.laidDepth, units.depth)} laid`}
                      </td>
                      <td>{short(layer.day)}</td>
                      <td>–</td>
                      <td>–</td>
                      <td>–</td>
                    </tr>
                  )
                ),
              )}
          </tbody>
        </table>
      </Scroller>
    </div>
  );
}
