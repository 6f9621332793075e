import { useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { Dialog } from '../../controls/Dialog';
import { DialogEnd } from '../../controls/DialogEnd';
import { MeasureField } from '../../controls/MeasureField';
import { QuantityField } from '../../controls/QuantityField';
import { TextField } from '../../controls/TextField';
import { measureText } from '../../amounts/measureText';
import { readMeasure } from '../../amounts/readMeasure';
import { textFromDay } from '../../core/days';
import type { Container } from '../../document/schema';
import {
  amountFailureSentence,
  dayFailureSentence,
  editFailureSentence,
} from '../../words/messages';
import { wetnessChoices } from '../choices';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { nameFor } from '../nameFor';
import { Thing } from './Thing';

/** What clippings are caught and carried in; weighing one makes every sum better. */
export function ContainersPart() {
  const garden = useGarden();
  const shown = useShown();
  const addContainer = useMowings((state) => state.addContainer);
  const deleteContainer = useMowings((state) => state.deleteContainer);
  const announce = useAnnounce();
  const [added, setAdded] = useState<string | null>(null);
  const [weighing, setWeighing] = useState<Container | null>(null);
  return (
    <>
      {garden.containers.map((container) => (
        <Thing
          key={container.id}
          name={container.name}
          startsOpen={container.id === added}
          onDelete={() => deleteContainer(container.id)}
          summary={
            <>
              {shown.estimate(container.litres, shown.units.volume)}.{' '}
              {container.weighed
                ? `A full one weighed ${shown.estimate(container.weighed.kilograms, shown.units.mass)}, ${container.weighed.wetness}, on ${shown.dayWord(container.weighed.date)}.`
                : 'Not weighed yet.'}
            </>
          }
        >
          <ContainerFields container={container} />
          <div>
            <button type="button" className="button" onClick={() => setWeighing(container)}>
              Weigh one {container.name}…
            </button>
          </div>
        </Thing>
      ))}
      <div>
        <button
          type="button"
          className="button"
          onClick={() => {
            const name = nameFor(
              garden.containers.map((each) => each.name),
              'bucket',
            );
            const result = addContainer({
              name,
              plural: name === 'bucket' ? 'buckets' : `${name}s`,
              litres: 10,
              weighed: null,
            });
            if (result.ok) setAdded(result.value);
            announce(result.ok ? 'A container was added.' : editFailureSentence(result.error));
          }}
        >
          Add a bag or bucket
        </button>
      </div>
      {weighing && <WeighDialog container={weighing} onClose={() => setWeighing(null)} />}
    </>
  );
}

function ContainerFields({ container }: { readonly container: Container }) {
  const shown = useShown();
  const editContainer = useMowings((state) => state.editContainer);
  return (
    <div className="fields">
      <TextField
        label="One of them is a"
        value={container.name}
        onCommit={(name) => editContainer(container.id, { name })}
      />
      <TextField
        label="Two of them are two"
        value={container.plural}
        onCommit={(plural) => editContainer(container.id, { plural })}
      />
      <MeasureField
        label={`A full one holds (${shown.units.volume.symbol})`}
        measure="volume"
        units={shown.system}
        value={container.litres}
        onCommit={(litres) => editContainer(container.id, litres === null ? {} : { litres })}
      />
    </div>
  );
}

function WeighDialog(props: { readonly container: Container; readonly onClose: () => void }) {
  const { container, onClose } = props;
  const shown = useShown();
  const today = textFromDay(useToday());
  const weigh = useMowings((state) => state.weighContainer);
  const announce = useAnnounce();
  const [text, setText] = useState(
    container.weighed ? measureText(container.weighed.kilograms, 'weight', shown.system) : '',
  );
  const [wetness, setWetness] = useState(container.weighed?.wetness ?? 'damp');
  const [date, setDate] = useState(today);
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const reading = readMeasure(text, 'weight', {
    units: shown.system,
    containers: [],
    bareNumber: true,
  });
  const keep = () => {
    setAsked(true);
    if (!reading.ok) return;
    const result = weigh(container.id, { date, kilograms: reading.value.value, wetness });
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    const { mowings, layers, stocks } = result.value;
    const count = mowings + layers + stocks;
    announce(
      count === 0
        ? 'Kept. What you log from now on is reckoned with it.'
        : `Kept. ${count} amounts typed in ${container.plural} weigh something else now: ${mowings} mowings, ${layers} layers, ${stocks} stores. Undo takes it back.`,
    );
    onClose();
  };
  return (
    <Dialog title={`Weigh one ${container.name}`} onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <p>
          Fill one with clippings as you always do, stand on the bathroom scales with it and without
          it. Every amount typed in {container.plural} is reckoned anew, those of the past too;
          amounts typed by weight stay as they are.
        </p>
        <QuantityField
          label={`A full ${container.name} weighs (${shown.units.mass.symbol})`}
          text={text}
          onText={setText}
          trouble={
            asked && !reading.ok
              ? {
                  sentence: amountFailureSentence(reading.error),
                  suggestion: reading.error.suggestion,
                }
              : null
          }
        />
        <ChoiceRow
          legend="How wet were they?"
          choices={wetnessChoices}
          value={wetness}
          onChoose={setWetness}
        />
        <DateField
          label="Weighed when?"
          day={date}
          today={today}
          latest={today}
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(day) => setDate(day ?? today)}
        />
        <DialogEnd refused={refused} keep="Keep this weight" onCancel={onClose} />
      </form>
    </Dialog>
  );
}
