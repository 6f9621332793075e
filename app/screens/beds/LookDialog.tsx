import { useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { Dialog } from '../../controls/Dialog';
import { textFromDay } from '../../core/days';
import type { Bed } from '../../document/schema';
import type { LookEvent } from '../../document/looks';
import { answerOf, lookOrder, lookQuestions } from '../../words/lookWords';
import { editFailureSentence } from '../../words/messages';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { EntryEnd } from './EntryEnd';
import { hasLegumeOn, readLook, type LookEntry } from './readLook';

/** What eyes, nose, a finger and a spade found on a bed. */
export function LookDialog(props: {
  readonly bed: Bed;
  /** null: a new one */
  readonly event: LookEvent | null;
  readonly onClose: () => void;
}) {
  const { bed, event, onClose } = props;
  const garden = useGarden();
  const today = textFromDay(useToday());
  const logEvent = useMowings((state) => state.logEvent);
  const editEvent = useMowings((state) => state.editEvent);
  const announce = useAnnounce();
  const [date, setDate] = useState(event?.date ?? today);
  const [entry, setEntry] = useState<LookEntry>(() =>
    Object.fromEntries(lookOrder.map((kind) => [kind, event ? answerOf(event, kind) : null])),
  );
  const [trouble, setTrouble] = useState<string | null>(null);
  // beans that are gone by that day have no roots to be dug, but what was once written is shown
  const asksNodules = hasLegumeOn(garden, bed.id, date) || entry.nodules != null;

  const keep = () => {
    const look = readLook(entry);
    if (!look)
      return setTrouble('Nothing is ticked yet. Say at least one thing that you saw or felt.');
    const looked = { kind: 'look and dig', bedId: bed.id, date, ...look } as const;
    const note = event?.note === undefined ? {} : { note: event.note };
    const result = event ? editEvent({ ...looked, ...note, id: event.id }) : logEvent(looked);
    if (!result.ok) return setTrouble(editFailureSentence(result.error));
    announce('Written down. The imagined seasons are weighed again.');
    onClose();
  };

  return (
    <Dialog title={`Look and dig: ${bed.name}`} onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(submit) => {
          submit.preventDefault();
          keep();
        }}
      >
        <p className="small soft">
          Answer what you looked for and leave the rest. Signs nudge the odds of this bed; they
          weigh far less than a laboratory’s test.
        </p>
        {lookOrder
          .filter((kind) => kind !== 'nodules' || asksNodules)
          .map((kind) => (
            <ChoiceRow
              key={kind}
              legend={lookQuestions[kind].question}
              choices={[
                { value: '', label: 'not looked' },
                ...lookQuestions[kind].answers.map(({ value, choice }) => ({
                  value,
                  label: choice,
                })),
              ]}
              value={entry[kind] ?? ''}
              onChoose={(value) => {
                setTrouble(null);
                setEntry((now) => ({ ...now, [kind]: value === '' ? null : value }));
              }}
            />
          ))}
        {asksNodules && (
          <p className="small soft">
            White inside, or none at all, means that the beans or peas of this bed gather no
            nitrogen of their own; the sums then feed them from the soil. Before they are some weeks
            old it tells nothing.
          </p>
        )}
        <EntryEnd
          date={date}
          today={today}
          onDate={setDate}
          isChange={event !== null}
          refused={trouble}
          onCancel={onClose}
        />
      </form>
    </Dialog>
  );
}
