import { memo, useDeferredValue, useMemo, useRef, useState, type FormEvent } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { QuantityField } from '../../controls/QuantityField';
import { mowingDoubt } from '../../document/mowingDoubt';
import {
  alreadyLoggedSentence,
  alreadyLoggedWords,
  mowingDoubtSentence,
} from '../../words/lawnWords';
import type { Mowing } from '../../document/schema';
import { editFailureSentence } from '../../words/messages';
import { logWords, mowingTakenWords } from '../../words/weekWords';
import { amountWords } from '../amountWords';
import { useDesk } from '../desk';
import { WeightWord } from '../StateWords';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';
import { MowingDetails } from './MowingDetails';
import { emptyEntry, isChanged, readEntry, type MowingEntry } from './mowingEntry';
import { MowingFigures } from './MowingFigures';

const Figures = memo(MowingFigures);
const Doubted = memo(Doubt);

/** One line for what came off the lawn; what it holds shows at once. */
export function LogMowing({ onLogged }: { readonly onLogged: (mowingId: string) => void }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const logMowing = useMowings((state) => state.logMowing);
  const goTo = useMowings((state) => state.goTo);
  const announce = useAnnounce();
  const [entry, setEntry, clear] = useDesk<MowingEntry>('mowing', () => emptyEntry);
  const [left, setLeft] = useState(false);
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const form = useRef<HTMLFormElement>(null);

  const [usualLawn] = garden.lawns;
  const usualId = usualLawn?.id ?? '';
  const read = useMemo(
    () => readEntry(entry, context, today, { lawnId: usualId, wetness: 'damp' }),
    [entry, context, today, usualId],
  );
  // letters do not wait for the draws of what they say
  const weighed = useDeferredValue(read.mowing);
  if (!usualLawn)
    return (
      <p>
        {logWords.noLawn}{' '}
        <button type="button" className="button-small" onClick={() => goTo('lawn')}>
          {logWords.addLawn}
        </button>
      </p>
    );

  const lawn = garden.lawns.find(({ id }) => id === read.lawnId) ?? usualLawn;
  // the answer is what the page is for: what is usual stays one line until there is something to log
  const isOpen = asked || entry.text.trim() !== '' || isChanged(entry);
  const change = (changes: Partial<MowingEntry>) => setEntry((now) => ({ ...now, ...changes }));

  const submit = (event: FormEvent) => {
    event.preventDefault();
    setLeft(true);
    if (!read.mowing) {
      form.current?.querySelector('input')?.focus();
      return;
    }
    const result = logMowing(read.mowing);
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    setRefused(null);
    setLeft(false);
    setAsked(false);
    clear();
    const words = amountWords(read.mowing.amount, garden, context, shown);
    announce(`Logged: ${words} from ${lawn.name}. The plan follows.`);
    onLogged(result.value);
  };

  return (
    <form ref={form} className="form" onSubmit={submit} noValidate>
      <div className="log-line">
        <QuantityField
          label="What came off?"
          hint={
            shown.system === 'us'
              ? 'As you would say it: 2 bags · 12 gal · 14 lb, soaked · 2400 sq ft, 1 in off'
              : 'As you would say it: 2 bags · 45 L · 6 kg, soaked · 220 m2, 2 cm off'
          }
          text={entry.text}
          wide
          onText={(text) => {
            change({ text });
            // emptied to be typed anew: nobody is missing an answer yet
            if (text.trim() === '') setLeft(false);
          }}
          onEnd={() => setLeft(entry.text.trim() !== '')}
          trouble={left && entry.text.trim() !== '' ? read.trouble : null}
          echo={
            read.isBare && read.mowing
              ? `Taken as ${amountWords(read.mowing.amount, garden, context, shown)}.`
              : undefined
          }
        />
        <button type="submit" className="button-main log-button">
          Log this mowing
        </button>
      </div>
      {left && entry.text.trim() === '' && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          Type how much came off first; a guess such as “about 2 bags” will do.
        </p>
      )}
      {isOpen ? (
        <MowingDetails entry={entry} read={read} lawn={lawn} change={change} focusOnShow={asked} />
      ) : (
        <p className="log-usual small">
          {mowingTakenWords(lawn.name, read.wetness, shown.dayNear(read.date, today))}{' '}
          <button type="button" className="button-small" onClick={() => setAsked(true)}>
            {logWords.change}
          </button>
        </p>
      )}
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
      {weighed && <Figures mowing={weighed} isTyped />}
      {weighed && <Already mowing={weighed} onSame={clear} />}
      {weighed && <Doubted mowing={weighed} />}
    </form>
  );
}

/** Says what is logged of the lawn on that day already: the same mowing is easily logged twice. */
function Already(props: {
  readonly mowing: Omit<Mowing, 'id' | 'rest'>;
  readonly onSame: () => void;
}) {
  const { lawnId, date } = props.mowing;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const logged = garden.mowings.filter((one) => one.lawnId === lawnId && one.date === date);
  if (logged.length === 0) return null;
  const lawn = garden.lawns.find(({ id }) => id === lawnId)?.name ?? '';
  const amounts = logged.map(({ amount }) => amountWords(amount, garden, context, shown));
  return (
    <p className="caution caution-note" role="status">
      <span>
        <WeightWord weight="note" />{' '}
        {alreadyLoggedSentence(amounts, lawn, shown.dayNear(date, today))}{' '}
        {alreadyLoggedWords.another}{' '}
        <button type="button" className="button-small" onClick={props.onSame}>
          {alreadyLoggedWords.same}
        </button>
      </span>
    </p>
  );
}

/** Asks back where a mowing is more than the lawn seems able to give; it can be kept all the same. */
function Doubt({ mowing }: { readonly mowing: Omit<Mowing, 'id' | 'rest'> }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const doubt = useMemo(
    () => mowingDoubt(garden, { ...mowing, id: 'entry', rest: { to: 'undecided' } }),
    [garden, mowing],
  );
  if (!doubt) return null;
  return (
    <p className="caution caution-caution" role="status">
      <span>
        <WeightWord weight="caution" />{' '}
        {mowingDoubtSentence(doubt, shown.dayNear(doubt.since, today))}
      </span>
    </p>
  );
}
