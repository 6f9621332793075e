import { QuantityField } from '../../controls/QuantityField';
import { Disclosure } from '../../controls/Disclosure';
import type { EventEntry, LabMinerals, ReadEvent } from './readEvent';

const mineralFields: readonly {
  readonly key: keyof LabMinerals;
  readonly label: string;
  readonly hint?: string;
}[] = [
  { key: 'phosphorus', label: 'Phosphorus', hint: 'With its unit: 42 ppm, 18 mg P2O5/100 g.' },
  {
    key: 'phosphorusRating',
    label: 'Phosphorus, as the lab rates it',
    hint: 'Low, medium, C, optimum.',
  },
  { key: 'potassium', label: 'Potassium', hint: 'With its unit: 160 ppm.' },
  {
    key: 'potassiumRating',
    label: 'Potassium, as the lab rates it',
    hint: 'Low, medium, C, optimum.',
  },
  {
    key: 'extractant',
    label: 'Method (extractant)',
    hint: 'As the report names it: Olsen, Mehlich-3, CAL, Bray-1.',
  },
];

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
      <Disclosure
        summary="Phosphorus and potassium"
        open={Object.values(entry.minerals).some((text) => text !== '')}
      >
        <div className="fields">
          {mineralFields.map(({ key, label, hint }) => (
            <QuantityField
              key={key}
              label={label}
              hint={hint}
              text={entry.minerals[key]}
              onText={(text) => onChange({ minerals: { ...entry.minerals, [key]: text } })}
              trouble={
                key === 'phosphorusRating' || key === 'potassiumRating'
                  ? null
                  : (troubles[key] ?? null)
              }
            />
          ))}
        </div>
        <p className="small soft">
          Kept word for word beside what the bed took in and gave. Nothing is reckoned from them:
          what to do about them, the laboratory’s own sheet says.
        </p>
      </Disclosure>
      <p className="small soft">
        Organic matter goes into the sums. Nitrate tells which of the imagined seasons to believe:
        odds and ranges follow it. The likely line is reckoned from your log alone, unless the test
        is from the weeks before this bed’s first day here.
      </p>
    </>
  );
}
