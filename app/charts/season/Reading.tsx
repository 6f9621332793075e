import { amount, amountWithUnit, dayFull } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { dayKindWords, seasonLineWords } from '../../words/seasonChart';
import type { DayReading } from './reading';

/** All values of the chosen day as words and numbers, above the drawing where they cover nothing. */
export function Reading(props: { readonly reading: DayReading; readonly units: ChartUnits }) {
  const { reading, units } = props;
  const grams = (value: number) => amount(value, units.nitrogen);
  return (
    <div className="chart-reading">
      <p className="chart-reading-day">
        <strong>{dayFull(reading.day, units)}</strong>
        <span>
          {dayKindWords[reading.kind]}
          {reading.state !== null && `; state: ${reading.state}`}
        </span>
      </p>
      <dl>
        <div>
          <dt>{seasonLineWords.demand}</dt>
          <dd>{grams(reading.demand)}</dd>
        </div>
        <div>
          <dt>{seasonLineWords.got}</dt>
          <dd>{grams(reading.got)}</dd>
        </div>
        {reading.bands
          .filter((band) => band.grams >= 0.05)
          .map((band) => (
            <div key={band.name}>
              <dt>{seasonLineWords[band.name]}</dt>
              <dd>{grams(band.grams)}</dd>
            </div>
          ))}
        <div>
          <dt>{seasonLineWords.gone}</dt>
          <dd>{grams(reading.gone)}</dd>
        </div>
        <div>
          <dt>ready in the soil</dt>
          <dd>
            {grams(reading.readyTop)} <small>({Math.round(reading.nitrateMgPerKg)} mg/kg)</small>
          </dd>
        </div>
        <div>
          <dt>rain</dt>
          <dd>{amountWithUnit(reading.rain, units.rain)}</dd>
        </div>
        {reading.watered > 0 && (
          <div>
            <dt>watered</dt>
            <dd>{amountWithUnit(reading.watered, units.rain)}</dd>
          </div>
        )}
      </dl>
      <p className="chart-reading-happened">
        {reading.happened.length > 0 ? reading.happened.join('; ') : ' '}
      </p>
    </div>
  );
}
