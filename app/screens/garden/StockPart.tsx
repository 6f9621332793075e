import { useState } from 'react';
import { amountTrouble } from '../../controls/amountTrouble';
import { useAnnounce } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { Disclosure } from '../../controls/Disclosure';
import { DateField } from '../../controls/DateField';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { TextField } from '../../controls/TextField';
import { readAmount } from '../../amounts/readAmount';
import { textFromDay } from '../../core/days';
import { materialById } from '../../document/materialValues';
import { sourceHazards, type Stock } from '../../document/schema';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { stockSentence } from '../../words/stockWords';
import { materialGroups } from '../lists';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { TreatmentLine } from '../TreatmentLine';
import { useReadingContext, useToday } from '../useReadingContext';
import { nameFor } from '../nameFor';
import { SourceTicks } from './SourceTicks';
import { OfferDialog } from './OfferDialog';
import { StockBooks } from './StockBooks';
import { stockLine } from './stockLine';
import { Thing } from './Thing';

/** What is on the heap, and what was brought in or kept: leaves, straw, compost. */
export function StockPart() {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const addStock = useMowings((state) => state.addStock);
  const deleteStock = useMowings((state) => state.deleteStock);
  const announce = useAnnounce();
  const [added, setAdded] = useState<string | null>(null);
  const [isOffered, setIsOffered] = useState(false);
  const add = (role: Stock['role']) => {
    const usual = role === 'heap' ? 'Heap' : 'Straw';
    const name = nameFor(
      garden.stock.map((each) => each.name),
      usual,
    );
    const result = addStock({
      name,
      materialId: role === 'heap' ? 'compost-garden' : 'straw-wheat',
      role,
      amount: null,
      date: textFromDay(today),
      treatment: { answer: 'not asked' },
    });
    if (result.ok) setAdded(result.value);
    announce(result.ok ? `Added: ${name}.` : editFailureSentence(result.error));
  };
  return (
    <>
      {garden.stock.map((stock) => (
        <Thing
          key={stock.id}
          of={stock.id}
          name={stock.name}
          startsOpen={stock.id === added}
          startsFocused={stock.id === added}
          onDelete={() => deleteStock(stock.id)}
          summary={stockSentence(stockLine(garden, stock, shown))}
        >
          <StockFields stock={stock} />
        </Thing>
      ))}
      <div className="button-row">
        <button type="button" className="button" onClick={() => add('store')}>
          Add something kept
        </button>
        <button type="button" className="button" onClick={() => add('heap')}>
          Add a heap
        </button>
        <button
          data-doing="offer"
          type="button"
          className="button"
          onClick={() => setIsOffered(true)}
        >
          Somebody offers something…
        </button>
      </div>
      {isOffered && <OfferDialog onClose={() => setIsOffered(false)} />}
    </>
  );
}

function StockFields({ stock }: { readonly stock: Stock }) {
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const editStock = useMowings((state) => state.editStock);
  const showDialog = useMowings((state) => state.showDialog);
  const change = (changes: Partial<Stock>) => editStock(stock.id, changes);
  const material = materialById(garden, stock.materialId);
  const ticked = stock.hazards ?? [];
  return (
    <>
      <div className="fields">
        <TextField label="Name" value={stock.name} onCommit={(name) => change({ name })} />
        <PickOne
          label="What is it?"
          value={stock.materialId}
          groups={materialGroups(garden)}
          onPick={(materialId) => change({ materialId })}
        />
        <StockAmount stock={stock} />
        <DateField
          label="Seen on"
          hint="The day that amount was there."
          day={stock.date}
          today={today}
          latest={today}
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(date) => change(date === null ? {} : { date })}
        />
      </div>
      <ChoiceRow
        legend="It is"
        choices={[
          { value: 'heap', label: 'a heap', hint: 'takes what is not laid' },
          { value: 'store', label: 'a store', hint: 'kept or brought in' },
        ]}
        value={stock.role}
        onChoose={(role) => change({ role })}
      />
      <StockBooks stock={stock} />
      <Disclosure summary="What may be wrong with it" quiet open={ticked.length > 0}>
        <SourceTicks
          asked={sourceHazards}
          ticked={ticked}
          onChange={(hazards) => change({ hazards })}
        />
      </Disclosure>
      {material.row.mayCarryWeedkiller && (
        <TreatmentLine
          name={stock.name}
          treatment={stock.treatment}
          onAsk={() => showDialog({ kind: 'treatment', stockId: stock.id })}
        />
      )}
    </>
  );
}

/** How much was there; the words typed are kept. */
function StockAmount({ stock }: { readonly stock: Stock }) {
  const context = useReadingContext();
  const editStock = useMowings((state) => state.editStock);
  const kept = stock.amount?.text ?? '';
  const [draft, setDraft] = useState<string | null>(null);
  const text = draft ?? kept;
  const reading = readAmount(text, 'stock', context);
  const isNew = text.trim() !== kept;
  const trouble = isNew && text.trim() !== '' ? amountTrouble(reading) : null;
  const settle = () => {
    if (!isNew) return setDraft(null);
    if (text.trim() === '') editStock(stock.id, { amount: null });
    else if (reading.ok) editStock(stock.id, { amount: reading.value.amount });
    else return;
    setDraft(null);
  };
  return (
    <QuantityField
      label="How much is there?"
      hint="3 bags, 300 L, 18 kg; empty for none."
      text={text}
      settled={kept}
      onText={setDraft}
      onEnd={settle}
      onEnter={settle}
      trouble={trouble}
    />
  );
}
