import { useState } from 'react';
import { useAnnounce } from '../../../controls/Announcer';
import { QuantityField } from '../../../controls/QuantityField';
import { dayOf, textFromDay } from '../../../core/days';
import { soilOf } from '../../../document/seasonInput';
import type { Bed } from '../../../document/schema';
import { bedStepNames } from '../../../words/bedChangeWords';
import { editFailureSentence } from '../../../words/messages';
import { noLabMinerals, readEvent } from '../readEvent';
import { useShown } from '../../shown';
import { useGarden, useMowings } from '../../store';
import { useReadingContext, useToday } from '../../useReadingContext';
import { ChangeDialog } from './ChangeDialog';

/** The same watering of several beds, each by its own size, as one step. */
export function WaterSeveral(props: {
  readonly beds: readonly Bed[];
  readonly onClose: () => void;
}) {
  const { beds, onClose } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const context = useReadingContext();
  const edit = useMowings((state) => state.edit);
  const announce = useAnnounce();
  const [amount, setAmount] = useState('');
  const [date, setDate] = useState(today);
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const entry = {
    date,
    amount,
    plantingId: '',
    nitrate: '',
    organicMatter: '',
    minerals: noLabMinerals,
    depth: '',
    share: 1,
  };
  const read = beds.map((bed) => ({
    bed,
    read: readEvent(
      'water',
      entry,
      bed,
      context,
      soilOf(garden, bed, dayOf(today), dayOf(today)).bulkDensityKgPerL,
    ),
  }));
  const depths = read.flatMap(({ read: { event } }) =>
    event?.kind === 'water' ? [event.millimetres] : [],
  );
  const keep = () => {
    setAsked(true);
    if (depths.length < beds.length) return;
    const result = edit(bedStepNames.waterSame(beds.length), (draft) => {
      const taken = new Set(draft.events.map(({ id }) => id));
      let number = taken.size;
      for (const { read: each } of read) {
        if (!each.event) continue;
        do number += 1;
        while (taken.has(`event-${String(number)}`));
        draft.events.push({ ...each.event, id: `event-${String(number)}` });
      }
    });
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    announce(`Written down for ${beds.length} beds. Undo takes all of it back.`);
    onClose();
  };
  const [least, most] = [Math.min(...depths), Math.max(...depths)];
  const depthWords = (millimetres: number) => shown.estimate(millimetres, shown.units.rain);
  return (
    <ChangeDialog
      title={`Water given to each of ${beds.length} beds`}
      dayLabel="When?"
      day={date}
      today={today}
      onDay={setDate}
      refused={refused === null ? null : { says: refused, possibleOn: null }}
      keep="Write it down"
      onKeep={keep}
      onClose={onClose}
    >
      <QuantityField
        label={`How much on each? (${shown.units.rain.symbol}, ${shown.units.volume.symbol} or cans)`}
        hint={shown.system === 'us' ? '1/2 in, 5 gal, 2 cans' : '10 mm, 20 L, 2 cans'}
        echo={
          depths.length < beds.length
            ? undefined
            : depthWords(least) === depthWords(most)
              ? `${depthWords(most)} on each bed.`
              : `${depthWords(least)} on the biggest bed, ${depthWords(most)} on the smallest.`
        }
        text={amount}
        onText={setAmount}
        trouble={asked ? (read[0]?.read.troubles.amount ?? null) : null}
      />
    </ChangeDialog>
  );
}
