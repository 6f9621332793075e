import { useState } from 'react';
import { amountTrouble } from '../../controls/amountTrouble';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { Dialog } from '../../controls/Dialog';
import { DialogEnd } from '../../controls/DialogEnd';
import { NameField } from '../../controls/NameField';
import { QuantityField } from '../../controls/QuantityField';
import { readMeasure } from '../../amounts/readMeasure';
import type { Bed } from '../../document/schema';
import { editFailureSentence } from '../../words/messages';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { nameFor } from '../nameFor';

/** A new bed is asked for its name, its size and its past before it is there; the rest has a usual answer. */
export function AddBedDialog(props: {
  readonly onClose: () => void;
  readonly onAdded: (bedId: string, name: string) => void;
}) {
  const garden = useGarden();
  const shown = useShown();
  const addBed = useMowings((state) => state.addBed);
  const taken = garden.beds.map(({ name }) => name);
  const [name, setName] = useState('');
  const [size, setSize] = useState('');
  const [mulchYears, setMulchYears] = useState<Bed['mulchYears']>(null);
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const reading = readMeasure(size, 'area', {
    units: shown.system,
    containers: [],
    bareNumber: true,
  });
  const nameTrouble =
    name.trim() === ''
      ? { sentence: 'A bed needs a name.', suggestion: nameFor(taken, `Bed ${taken.length + 1}`) }
      : taken.includes(name.trim())
        ? {
            sentence: 'There is a bed of that name already.',
            suggestion: nameFor(taken, name.trim()),
          }
        : null;
  const add = () => {
    setAsked(true);
    if (nameTrouble || !reading.ok || mulchYears === null) return;
    const sides = reading.value.sides;
    const result = addBed({
      name: name.trim(),
      areaM2: reading.value.value,
      lengthMetres: sides ? Math.max(...sides) : null,
      widthMetres: sides ? Math.min(...sides) : null,
      steps: null,
      texture: 'loam',
      organicMatterPercent: null,
      mulchYears,
      watering: 'as logged',
      roof: 'open',
      knownSince: null,
    });
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    props.onAdded(result.value, name.trim());
    props.onClose();
  };
  return (
    <Dialog title="Add a bed" onClose={props.onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(submit) => {
          submit.preventDefault();
          add();
        }}
      >
        <NameField
          label="What is it called?"
          name={name}
          onName={setName}
          trouble={asked ? nameTrouble : null}
        />
        <QuantityField
          label={`How big? (${shown.units.area.symbol})`}
          hint={`Length times width will do: ${shown.system === 'us' ? '4 x 16 ft' : '1.2 x 5 m'}.`}
          text={size}
          onText={setSize}
          trouble={asked ? amountTrouble(reading) : null}
        />
        <ChoiceRow
          legend="Years of mulching or composting behind it"
          choices={[
            { value: 'none', label: 'none' },
            { value: 'a few', label: 'a few' },
            { value: 'many', label: 'many' },
          ]}
          value={mulchYears}
          onChoose={setMulchYears}
        />
        {asked && mulchYears === null && (
          <p role="alert" className="field-trouble">
            <span aria-hidden="true" className="field-trouble-mark" />
            Choose the nearest: it says how much the soil gives by itself.
          </p>
        )}
        <p className="small soft">
          It is taken for loam under open sky, watered as you write it down; change that in the bed
          itself.
        </p>
        <DialogEnd refused={refused} keep="Add it" onCancel={props.onClose} />
      </form>
    </Dialog>
  );
}
