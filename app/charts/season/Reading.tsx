import type { ReactNode } from 'react';
import { amount, amountWithUnit, dayFull } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { dayKindWords, likelyHead, seasonLineWords } from '../../words/seasonChart';
import type { DayReading } from './reading';

function Value({ words, children }: { readonly words: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{words}</dt>
      <dd>{children}</dd>
    </div>
  );
}

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
        <Value words={seasonLineWords.demand}>{grams(reading.demand)}</Value>
        <Value words={seasonLineWords.got}>{grams(reading.got)}</Value>
        <Value words={`ready in the top ${units.topSoil}`}>
          {grams(reading.readyTop)} <small>({Math.round(reading.nitrateMgPerKg)} mg/kg)</small>
        </Value>
        {reading.likely && (
          <Value words={likelyHead}>
            {grams(reading.likely.low)}–{grams(reading.likely.high)}
          </Value>
        )}
        <Value words="rain that day">{amountWithUnit(reading.rain, units.rain)}</Value>
        {reading.watered > 0 && (
          <Value words="watered">{amountWithUnit(reading.watered, units.rain)}</Value>
        )}
      </dl>
      <dl>
        {reading.bands
          .filter((band) => band.grams >= 0.05)
          .map((band) => (
            <Value key={band.name} words={seasonLineWords[band.name]}>
              {grams(band.grams)}
            </Value>
          ))}
        <Value words={seasonLineWords.gone}>{grams(reading.gone)}</Value>
      </dl>
      <p className="chart-reading-happened">
        {reading.happened.length > 0 ? reading.happened.join('; ') : ' '}
      </p>
    </div>
  );
}
