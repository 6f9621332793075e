import { Fragment, useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { dayOf, textFromDay } from '../../core/days';
import type { Caution } from '../../core/season/verdict';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import type { Mowing, Stock } from '../../document/schema';
import type { New, RestWish } from '../../store/contract';
import { mowingAccount, unaskedSource } from '../../store/selectors';
import { editFailureSentence } from '../../words/messages';
import { goneWords, restChoiceWords } from '../../words/weekWords';
import { useGarden, useMowings } from '../store';
import { useShown } from '../shown';
import { useToday } from '../useReadingContext';
import { heapByHand } from './plan/planRests';
import { stopsDialog, treatmentQuestion } from '../places';

/** A heap to be; it is begun only when something goes on it. */
const newHeap = 'new heap';

type Question =
  | { readonly kind: 'treatment'; readonly of: { lawnId: string } | { stockId: string } }
  | { readonly kind: 'stop'; readonly heapId: string; readonly stop: Caution };

/** Where what is not laid goes: back on the lawn, which asks nothing, or on a heap. */
export function RestChoice(props: {
  readonly mowing: Mowing;
  readonly words: string;
  /** it was so long ago that it is asked as what was done; drying comes too late */
  readonly isPast?: boolean;
  /** says that it went on a bed, where that is asked here too */
  readonly onBed?: () => void;
  readonly onChosen: (announcement: string) => void;
}) {
  const { mowing, isPast = false } = props;
  const goes = isPast ? 'went' : 'goes';
  const garden = useGarden();
  const today = useToday();
  const { estimate, units } = useShown();
  const answer = useMowings((state) => (state.plan.isBehind ? null : state.plan.answer));
  const restOf = useMowings((state) => state.restOf);
  const addStock = useMowings((state) => state.addStock);
  const announce = useAnnounce();
  const [refused, setRefused] = useState<string | null>(null);
  const [question, setQuestion] = useState<Question | null>(null);
  const heaps = garden.stock.filter(({ role }) => role === 'heap');
  const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
  const held = lawn ? lawnHeldBack(garden, lawn, dayOf(mowing.date)) : null;
  const isForbidden = held?.row === 'label forbids';
  const heapName = (id: string) => heaps.find((heap) => heap.id === id)?.name ?? 'a heap';

  const put = (rest: RestWish, words: string, option?: 'in spite of a stop') => {
    const result = restOf(mowing.id, rest, option);
    if (result.ok) {
      setRefused(null);
      props.onChosen(words);
    } else if (result.error.kind === 'held-back') {
      if (rest.to === 'heap')
        setQuestion({ kind: 'stop', heapId: rest.stockId, stop: result.error.stop });
    } else setRefused(editFailureSentence(result.error));
  };
  const startHeap = (): string | null => {
    const heap: New<Stock> = {
      name: 'Heap',
      materialId: 'compost-garden',
      role: 'heap',
      amount: null,
      date: mowing.date < textFromDay(today) ? mowing.date : textFromDay(today),
      treatment: { answer: 'not asked' },
    };
    const result = addStock(heap);
    if (!result.ok) setRefused(editFailureSentence(result.error));
    return result.ok ? result.value : null;
  };
  const withLeaves = answer
    ? heapByHand(answer, mowing.id, mowingAccount(garden, mowing).leftDryKilograms)
    : null;
  const leavesOn = (heapId: string): string | null => {
    const leaves = withLeaves?.stockId === heapId ? withLeaves.leaves : undefined;
    const store = garden.stock.find(({ id }) => id === leaves?.stockId);
    if (!leaves || !store || leaves.amount.quantity.kind !== 'volume') return null;
    return restChoiceWords.withLeaves(
      heapName(heapId),
      estimate(leaves.amount.quantity.litres, units.volume),
      store.name,
    );
  };
  const onHeap = (heapId: string, option?: 'in spite of a stop', rest: RestWish | null = null) => {
    const source = unaskedSource(garden, { source: 'mowing', mowingId: mowing.id });
    if (source) return setQuestion({ kind: 'treatment', of: source });
    // no heap is begun for clippings that may not go there
    if (heapId === newHeap && held?.weight === 'stop' && option === undefined)
      return setQuestion({ kind: 'stop', heapId, stop: held });
    const stockId = heapId === newHeap ? startHeap() : heapId;
    if (stockId === null) return;
    const words =
      heapId === newHeap ? restChoiceWords.newHeap : restChoiceWords.onHeap(heapName(heapId));
    put(rest ?? { to: 'heap', stockId }, words, option);
  };

  const onDried = () => {
    const source = unaskedSource(garden, { source: 'mowing', mowingId: mowing.id });
    if (source) return setQuestion({ kind: 'treatment', of: source });
    if (mowing.wetness === 'soaked') return setRefused(restChoiceWords.soaked);
    put({ to: 'dry' }, restChoiceWords.dried);
  };

  return (
    <section className="rest not-printed" aria-label={`${props.words}: where it ${goes}`}>
      <p>
        <strong>{props.words}</strong> {goes}
      </p>
      <div className="button-row">
        <button
          type="button"
          className="button"
          onClick={() => put({ to: 'lawn' }, restChoiceWords.onLawn)}
        >
          {isPast ? goneWords.left : 'back on the lawn'}
        </button>
        {!isForbidden &&
          heaps.map((heap) => (
            <Fragment key={heap.id}>
              <button type="button" className="button" onClick={() => onHeap(heap.id)}>
                on {heap.name}
              </button>
              {leavesOn(heap.id) && (
                <button
                  type="button"
                  className="button"
                  onClick={() => onHeap(heap.id, undefined, withLeaves)}
                >
                  {leavesOn(heap.id)}
                </button>
              )}
            </Fragment>
          ))}
        {props.onBed && !isForbidden && (
          <button type="button" className="button" onClick={props.onBed}>
            {goneWords.onBed}
          </button>
        )}
        {held?.weight !== 'stop' && !isPast && (
          <button type="button" className="button" onClick={onDried}>
            dried and kept
          </button>
        )}
        {!isForbidden && heaps.length === 0 && (
          <button type="button" className="button" onClick={() => onHeap(newHeap)}>
            on a heap
          </button>
        )}
      </div>
      {isForbidden && <p className="small">{restChoiceWords.forbidden}</p>}
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
      {question?.kind === 'treatment' && (
        <treatmentQuestion.Part
          of={question.of}
          onClose={() => setQuestion(null)}
          onAnswered={() => {
            setQuestion(null);
            announce('Answer kept. Now choose once more where it goes.');
          }}
        />
      )}
      {question?.kind === 'stop' && (
        <stopsDialog.Part
          places={[
            { id: question.heapId, name: heapName(question.heapId), stops: [question.stop] },
          ]}
          act="put it"
          onClose={() => setQuestion(null)}
          onPass={() => {
            const { heapId } = question;
            setQuestion(null);
            onHeap(heapId, 'in spite of a stop');
          }}
        />
      )}
    </section>
  );
}
