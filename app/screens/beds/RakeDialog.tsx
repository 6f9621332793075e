import { useState } from 'react';
import { useAnnounce, useHeardAtRest } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { Dialog } from '../../controls/Dialog';
import { dayOf, textFromDay } from '../../core/days';
import type { Bed } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { percent } from '../../words/chartFormat';
import { editFailureSentence } from '../../words/messages';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { stuffName } from './chartData';
import { EntryEnd } from './EntryEnd';
import { dryLyingBefore, topLayer, type Raking } from './raking';

const shares = [
  { value: '0.25', label: 'a quarter' },
  { value: '0.5', label: 'half' },
  { value: '0.75', label: 'three quarters' },
  { value: '1', label: 'all of it' },
] as const;

/** Taking cover off a bed: the layer laid last, or a share of all of it. */
export function RakeDialog(props: {
  readonly bed: Bed;
  readonly results: BedResults;
  /** null: a new one */
  readonly event: Raking | null;
  readonly onClose: () => void;
  readonly onRaked: (eventId: string) => void;
}) {
  const { bed, results, event, onClose } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const logEvent = useMowings((state) => state.logEvent);
  const editEvent = useMowings((state) => state.editEvent);
  const announce = useAnnounce();
  const [date, setDate] = useState(event?.date ?? today);
  // the run that holds an older raking no longer shows what lay on top before it
  const top = event ? null : topLayer(garden, results, dayOf(date));
  const [wanted, setWanted] = useState<string>(event ? String(event.share) : 'top');
  const isTop = wanted === 'top' && top !== null;
  const share = isTop ? top.share : wanted === 'top' ? 1 : Number(wanted);
  const [refused, setRefused] = useState<string | null>(null);
  const lies = event ? null : dryLyingBefore(results, dayOf(date)) * bed.areaM2;
  const choices = [
    ...(top
      ? [
          {
            value: 'top',
            label: 'the top layer',
            hint: `${stuffName(top.material)} of ${shown.dayWord(top.laidOn)}, ${percent(top.share)} of it all`,
          },
        ]
      : []),
    ...shares,
    ...(shares.some(({ value }) => value === String(share)) || isTop
      ? []
      : [{ value: String(share), label: percent(share) }]),
  ];
  const amount =
    lies === null
      ? ''
      : lies > 0.005
        ? `That is about ${shown.estimate(lies * share, shown.units.mass)} of dry weight, of ${shown.estimate(lies, shown.units.mass)} that lies there.`
        : 'By the sums nothing lies there any more.';
  useHeardAtRest(amount, 'raking');
  const keep = () => {
    const raking = { kind: 'rake off', bedId: bed.id, date, share } as const;
    const result = event ? editEvent(changed(event, { date, share })) : logEvent(raking);
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    announce('Written down. The season is reckoned again.');
    props.onRaked(event?.id ?? (result.value as string));
    onClose();
  };
  return (
    <Dialog title={`Rake cover off ${bed.name}`} onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(submit) => {
          submit.preventDefault();
          keep();
        }}
      >
        <ChoiceRow
          legend="How much of the cover?"
          choices={choices}
          value={isTop ? 'top' : String(share)}
          onChoose={setWanted}
        />
        {lies !== null && (
          <p>
            {amount}{' '}
            <span className="soft">
              The sums take this share of everything that lies there, from the oldest layer to the
              newest, as if it had been stirred.
            </span>
          </p>
        )}
        <EntryEnd
          date={date}
          today={today}
          onDate={setDate}
          isChange={event !== null}
          refused={refused}
          onCancel={onClose}
        />
      </form>
    </Dialog>
  );
}

/** A raking with another day or share; what of it went on a heap is then another amount, and is said anew. */
function changed(event: Raking, { date, share }: Pick<Raking, 'date' | 'share'>): Raking {
  const { toHeap, ...rest } = event;
  const isSame = event.share === share && event.date === date;
  return { ...rest, date, share, ...(isSame && toHeap && { toHeap }) };
}
