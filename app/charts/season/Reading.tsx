import { dayFull } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { dayKindWords } from '../../words/seasonChart';
import type { DayReading } from './reading';

/** The chosen day, its weather, its state and what was done on it; its values stand in the key. */
export function Reading(props: { readonly reading: DayReading; readonly units: ChartUnits }) {
  const { reading, units } = props;
  const told = [
    dayKindWords[reading.kind],
    ...(reading.state === null ? [] : [`state: ${reading.state}`]),
    ...reading.happened,
  ];
  return (
    <p className="chart-reading">
      <strong>{dayFull(reading.day, units)}</strong>: {told.join('; ')}
    </p>
  );
}
