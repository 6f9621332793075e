import { useState } from 'react';
import { amountTrouble } from '../../controls/amountTrouble';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { Dialog } from '../../controls/Dialog';
import { DialogEnd } from '../../controls/DialogEnd';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { readAmount } from '../../amounts/readAmount';
import { textFromDay } from '../../core/days';
import { dryStores } from '../../document/dryStores';
import type { Garden, Mowing } from '../../document/schema';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { lawnKindChoices, wetnessChoices } from '../choices';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';

/** What a choice of the list means; leaves that went with it stay where the heap is the same. */
function restNamed(garden: Garden, was: Mowing['rest'], to: string): Mowing['rest'] {
  if (to === 'undecided' || to === 'lawn') return { to };
  if (dryStores(garden).some(({ id }) => id === to)) return { to: 'store', stockId: to };
  return was.to === 'heap' && was.stockId === to ? was : { to: 'heap', stockId: to };
}

/** Changing a mowing after the fact; its layers keep their own amounts. */
export function MowingDialog(props: { readonly mowing: Mowing; readonly onClose: () => void }) {
  const { mowing, onClose } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const context = useReadingContext();
  const editMowing = useMowings((state) => state.editMowing);
  const [text, setText] = useState(mowing.amount.text);
  const [lawnId, setLawnId] = useState(mowing.lawnId);
  const [date, setDate] = useState(mowing.date);
  const [wetness, setWetness] = useState(mowing.wetness);
  const [kind, setKind] = useState(mowing.kind);
  const [rest, setRest] = useState(mowing.rest);
  const [refused, setRefused] = useState<string | null>(null);
  const lawn = garden.lawns.find(({ id }) => id === lawnId);
  // words that were kept from another time may read differently now: only new words are read anew
  const isSame = text === mowing.amount.text;
  const reading = readAmount(text, 'mowing', { ...context, lawnId });
  const trouble = isSame ? null : amountTrouble(reading);
  const keep = () => {
    if (!isSame && !reading.ok) return;
    const amount = isSame || !reading.ok ? mowing.amount : reading.value.amount;
    const result = editMowing(
      mowing.id,
      { amount, lawnId, date, wetness, kind },
      rest === mowing.rest ? undefined : rest,
    );
    if (result.ok) return onClose();
    setRefused(
      result.error.kind === 'held-back'
        ? 'What was put on that lawn holds its clippings back from the heap. Take the rest in hand first; then the heap asks about it.'
        : editFailureSentence(result.error),
    );
  };
  return (
    <Dialog title="Change a mowing" onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <QuantityField
          label="What came off?"
          text={text}
          onText={setText}
          trouble={trouble}
          wide
          settled={mowing.amount.text}
        />
        <PickOne
          label="From which lawn?"
          value={lawnId}
          groups={[
            {
              label: null,
              options: garden.lawns.map(({ id, name }) => ({ value: id, label: name })),
            },
          ]}
          onPick={setLawnId}
        />
        <DateField
          label="When?"
          day={date}
          today={today}
          latest={today}
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(day) => setDate(day ?? mowing.date)}
        />
        <ChoiceRow
          legend="How wet was it?"
          choices={wetnessChoices}
          value={wetness}
          onChoose={setWetness}
        />
        <ChoiceRow
          legend="What sort of grass?"
          choices={lawnKindChoices}
          value={kind ?? lawn?.kind ?? 'ordinary'}
          onChoose={(next) => setKind(next === lawn?.kind ? null : next)}
        />
        <PickOne
          label="What was not laid went"
          value={rest.to === 'heap' || rest.to === 'store' ? rest.stockId : rest.to}
          groups={[
            {
              label: null,
              options: [
                { value: 'undecided', label: 'nowhere yet: it is still in hand' },
                { value: 'lawn', label: 'back on the lawn' },
                ...garden.stock
                  .filter(({ role }) => role === 'heap')
                  .map(({ id, name }) => ({ value: id, label: `on ${name}` })),
                ...dryStores(garden).map(({ id, name }) => ({
                  value: id,
                  label: `dried, in ${name}`,
                })),
              ],
            },
          ]}
          onPick={(to) => setRest(restNamed(garden, mowing.rest, to))}
        />
        <DialogEnd refused={refused} keep="Keep the change" onCancel={onClose} />
      </form>
    </Dialog>
  );
}
