import { QuantityField } from '../../controls/QuantityField';
import type { EventEntry, ReadEvent } from './readEvent';

/** The numbers of a laboratory's report, in the units it printed. */
export function SoilTestFields(props: {
  readonly entry: EventEntry;
  readonly troubles: ReadEvent['troubles'];
  readonly onChange: (changes: Partial<EventEntry>) => void;
}) {
  const { entry, troubles, onChange } = props;
  return (
    <>
      <div className="fields">
        <QuantityField
          label="Nitrate-N (mg/kg)"
          hint="As it is printed: 14, 14 ppm, 35 lb/acre, 78 kg/ha, 62 mg/kg NO3. Empty: not tested."
          text={entry.nitrate}
          onText={(nitrate) => onChange({ nitrate })}
          trouble={troubles.nitrate ?? null}
        />
        <QuantityField
          label="Organic matter (%)"
          hint="Empty: not tested."
          text={entry.organicMatter}
          onText={(organicMatter) => onChange({ organicMatter })}
          trouble={troubles.organicMatter ?? null}
        />
        <QuantityField
          label="How deep was it taken?"
          hint="12 in or 30 cm is usual. Best from 10 to 15 places, two or three weeks after a layer."
          text={entry.depth}
          onText={(depth) => onChange({ depth })}
          trouble={troubles.depth ?? null}
        />
      </div>
      <p className="small soft">
        Organic matter goes into the sums. Nitrate weighs the imagined seasons: those that came near
        it count most in the odds and ranges. The likely course begins with it where it was taken in
        the weeks before the sums do.
      </p>
    </>
  );
}
