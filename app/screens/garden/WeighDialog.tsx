import { useState } from 'react';
import { amountTrouble } from '../../controls/amountTrouble';
import { useAnnounce } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { Dialog } from '../../controls/Dialog';
import { DialogEnd } from '../../controls/DialogEnd';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { measureText } from '../../amounts/measureText';
import { readMeasure } from '../../amounts/readMeasure';
import { textFromDay } from '../../core/days';
import type { LikelyRange } from '../../core/lawn/clippings';
import { bagHolds } from '../../document/bagHolds';
import type { Container } from '../../document/schema';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { rangeOdds } from '../../words/ranges';
import { wetnessChoices } from '../choices';
import { materialGroups } from '../lists';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';

/** A full one on the scales: what stood in the tables for its weight is replaced by it, in the past too. */
export function WeighDialog(props: {
  readonly container: Container;
  readonly onClose: () => void;
}) {
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
  const [of, setOf] = useState(container.weighed?.of ?? '');
  const garden = useGarden();
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const reading = readMeasure(text, 'weight', {
    units: shown.system,
    containers: [],
    bareNumber: true,
  });
  const kilograms = reading.ok && reading.value.value > 0 ? reading.value.value : null;
  const holds =
    kilograms === null
      ? null
      : bagHolds(garden, container, {
          date,
          kilograms,
          wetness,
          ...(of === '' ? {} : { of }),
        });
  const range = ({ low, high }: LikelyRange): string =>
    `${shown.estimate(low, shown.units.mass)} to ${shown.estimate(high, shown.units.mass)}`;
  const keep = () => {
    setAsked(true);
    if (!reading.ok) return;
    const result = weigh(container.id, {
      date,
      kilograms: reading.value.value,
      wetness,
      ...(of === '' ? {} : { of }),
    });
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
          Fill one as you always do, stand on the bathroom scales with it and without it. Every
          amount of that stuff typed in {container.plural} is reckoned anew, those of the past too;
          amounts typed by weight stay as they are.
        </p>
        <QuantityField
          label={`A full ${container.name} weighs (${shown.units.mass.symbol})`}
          hint="With it less without it: 83.2 - 71.9."
          text={text}
          onText={setText}
          echo={
            holds &&
            `Dry, a full one holds ${range(holds.weighed)}, ${rangeOdds}. By the tables alone it would be ${range(holds.byTable)}.`
          }
          trouble={asked ? amountTrouble(reading) : null}
        />
        <PickOne
          label="What was in it?"
          value={of}
          groups={[
            { label: null, options: [{ value: '', label: 'Clippings of a lawn' }] },
            ...materialGroups(garden),
          ]}
          onPick={setOf}
        />
        <ChoiceRow
          legend="How wet was it?"
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
