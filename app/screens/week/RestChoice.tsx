import type { Mowing, Stock } from '../../document/schema';
import { editFailureSentence } from '../../words/messages';
import { useState } from 'react';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { textFromDay } from '../../core/days';
import type { New } from '../../store/contract';

/** Where what is not laid goes: back on the lawn, or on a heap. */
export function RestChoice(props: {
  readonly mowing: Mowing;
  readonly words: string;
  readonly onChosen: (announcement: string) => void;
}) {
  const { mowing } = props;
  const garden = useGarden();
  const today = useToday();
  const restOf = useMowings((state) => state.restOf);
  const addStock = useMowings((state) => state.addStock);
  const [refused, setRefused] = useState<string | null>(null);
  const heaps = garden.stock.filter(({ role }) => role === 'heap');

  const put = (rest: Mowing['rest'], words: string) => {
    const result = restOf(mowing.id, rest);
    setRefused(result.ok ? null : editFailureSentence(result.error));
    if (result.ok) props.onChosen(words);
  };
  const startHeap = () => {
    const heap: New<Stock> = {
      name: 'Heap',
      materialId: 'compost-garden',
      role: 'heap',
      amount: null,
      date: mowing.date < textFromDay(today) ? mowing.date : textFromDay(today),
      treatment: { answer: 'not asked' },
    };
    const result = addStock(heap);
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    put({ to: 'heap', stockId: result.value }, 'A heap was started and the rest put on it.');
  };

  return (
    <section className="rest not-printed" aria-label={`${props.words}: where it goes`}>
      <p>
        <strong>{props.words}</strong> goes
      </p>
      <div className="button-row">
        <button
          type="button"
          className="button"
          onClick={() => put({ to: 'lawn' }, 'The rest stays on the lawn.')}
        >
          back on the lawn
        </button>
        {heaps.map((heap) => (
          <button
            key={heap.id}
            type="button"
            className="button"
            onClick={() => put({ to: 'heap', stockId: heap.id }, `The rest goes on ${heap.name}.`)}
          >
            on {heap.name}
          </button>
        ))}
        {heaps.length === 0 && (
          <button type="button" className="button" onClick={startHeap}>
            on a heap
          </button>
        )}
      </div>
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
    </section>
  );
}
