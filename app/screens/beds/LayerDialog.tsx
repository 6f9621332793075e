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
import type { Application, Bed } from '../../document/schema';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { conditionChoices, placementChoices, wetnessChoices } from '../choices';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';

/** Changing a layer after it was laid: the season answers at once when it is kept. */
export function LayerDialog(props: {
  readonly bed: Bed;
  readonly layer: Application;
  readonly onClose: () => void;
}) {
  const { layer, onClose } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const context = useReadingContext();
  const editApplication = useMowings((state) => state.editApplication);
  const [text, setText] = useState(layer.amount.text);
  const [bedId, setBedId] = useState(layer.bedId);
  const [date, setDate] = useState(layer.date);
  const [condition, setCondition] = useState(layer.condition);
  const [wetness, setWetness] = useState(layer.wetness);
  const [placement, setPlacement] = useState(layer.placement);
  const [refused, setRefused] = useState<string | null>(null);
  const isSame = text === layer.amount.text;
  const reading = readAmount(text, 'layer', context);
  const { from } = layer;
  const mowing =
    from.source === 'mowing' ? garden.mowings.find(({ id }) => id === from.mowingId) : undefined;
  const keep = () => {
    if (!isSame && !reading.ok) return;
    const amount = isSame || !reading.ok ? layer.amount : reading.value.amount;
    const result = editApplication(layer.id, {
      amount,
      bedId,
      date,
      condition,
      wetness,
      placement,
    });
    if (result.ok) onClose();
    else setRefused(editFailureSentence(result.error));
  };
  return (
    <Dialog title="Change a layer" onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <QuantityField
          label="How much?"
          text={text}
          settled={layer.amount.text}
          onText={setText}
          trouble={isSame ? null : amountTrouble(reading)}
        />
        <PickOne
          label="On which bed?"
          value={bedId}
          groups={[
            {
              label: null,
              options: garden.beds.map(({ id, name }) => ({ value: id, label: name })),
            },
          ]}
          onPick={setBedId}
        />
        <DateField
          label="Laid when?"
          day={date}
          today={today}
          latest={today}
          earliest={mowing?.date}
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(day) => setDate(day ?? layer.date)}
        />
        <ChoiceRow
          legend="In what state?"
          choices={conditionChoices}
          value={condition}
          onChoose={setCondition}
        />
        {!mowing && (
          <ChoiceRow
            legend="How wet was it?"
            choices={wetnessChoices}
            value={wetness}
            onChoose={setWetness}
          />
        )}
        <ChoiceRow
          legend="How?"
          choices={placementChoices}
          value={placement}
          onChoose={setPlacement}
        />
        <DialogEnd refused={refused} keep="Keep the change" onCancel={onClose} />
      </form>
    </Dialog>
  );
}
