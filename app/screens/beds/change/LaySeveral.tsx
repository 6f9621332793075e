import { useState } from 'react';
import { Dialog } from '../../../controls/Dialog';
import { DialogEnd } from '../../../controls/DialogEnd';
import { PickOne } from '../../../controls/PickOne';
import { QuantityField } from '../../../controls/QuantityField';
import type { Bed } from '../../../document/schema';
import { useShown } from '../../shown';
import { useGarden } from '../../store';
import { useToday } from '../../useReadingContext';
import { LayForm } from '../../week/LayForm';
import { newRow, type LayRow } from '../../week/layRows';
import { whatGroups } from '../../week/sources';

/** The same stuff on several beds: said once, then looked at bed by bed before it is laid. */
export function LaySeveral(props: { readonly beds: readonly Bed[]; readonly onClose: () => void }) {
  const { beds, onClose } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const [what, setWhat] = useState('');
  const [amount, setAmount] = useState('');
  const [refused, setRefused] = useState<string | null>(null);
  const [rows, setRows] = useState<readonly LayRow[] | null>(null);
  const goOn = () => {
    if (what === '') return setRefused('Choose what is laid.');
    if (amount.trim() === '') return setRefused('Say how much goes on each bed.');
    setRows(beds.map(({ id }) => ({ ...newRow(what, id), amount })));
  };
  return (
    <Dialog title={`Lay on ${beds.length} beds`} wide onClose={onClose}>
      {rows ? (
        <LayForm what={null} bedId={null} filled={rows} onLaid={onClose} onCancel={onClose} />
      ) : (
        <form
          className="form"
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            goOn();
          }}
        >
          <PickOne
            label="What"
            value={what}
            groups={whatGroups(garden, today, (date) => shown.dayNear(date, today))}
            onPick={(picked) => {
              setRefused(null);
              setWhat(picked);
            }}
          />
          <QuantityField
            label="How much on each bed?"
            hint={shown.system === 'us' ? '1 bag, 5 gal, 1/2 in' : '1 bag, 20 L, 1 cm'}
            text={amount}
            onText={(text) => {
              setRefused(null);
              setAmount(text);
            }}
          />
          <DialogEnd refused={refused} keep="Look at it bed by bed" onCancel={onClose} />
        </form>
      )}
    </Dialog>
  );
}
