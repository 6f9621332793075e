import { useState } from 'react';
import { useAnnounce } from '../../../controls/Announcer';
import { textFromDay } from '../../../core/days';
import { retireBeds } from '../../../document/bedChanges/retireBeds';
import type { Bed } from '../../../document/schema';
import { bedStepNames } from '../../../words/bedChangeWords';
import { listed } from '../../../words/chartFormat';
import { useGarden, useMowings } from '../../store';
import { useToday } from '../../useReadingContext';
import { ChangeDialog } from './ChangeDialog';
import { useBedChange, type Refused } from './useBedChange';

/** Beds put away: out of plans and lists, with their logs kept. */
export function RetireDialog(props: {
  readonly beds: readonly Bed[];
  readonly onClose: () => void;
  readonly onRetired: () => void;
}) {
  const { beds, onClose } = props;
  const garden = useGarden();
  const today = textFromDay(useToday());
  const openBed = useMowings((state) => state.openBed);
  const announce = useAnnounce();
  const keepChange = useBedChange();
  const [on, setOn] = useState(today);
  const [refused, setRefused] = useState<Refused | null>(null);
  const names = listed(beds.map(({ name }) => name));
  const keep = () => {
    const ids = beds.map(({ id }) => id);
    const why = keepChange(
      bedStepNames.retire(beds.map(({ name }) => name)),
      retireBeds(garden, ids, on, today),
    );
    if (why !== null) return setRefused(why);
    announce(`Put away: ${names}. Undo brings ${beds.length === 1 ? 'it' : 'them'} back.`);
    props.onRetired();
    onClose();
    openBed(null);
  };
  return (
    <ChangeDialog
      title={`Put ${names} away`}
      dayLabel="From when?"
      day={on}
      today={today}
      onDay={(day) => {
        setOn(day);
        setRefused(null);
      }}
      refused={refused}
      keep={beds.length === 1 ? 'Put it away' : `Put these ${String(beds.length)} away`}
      onKeep={keep}
      onClose={onClose}
    >
      <p>
        {beds.length === 1 ? 'It is' : 'They are'} no longer planned for, watered or listed. The log
        is kept and can be read under Beds, and {beds.length === 1 ? 'it' : 'each'} can be brought
        back.
      </p>
    </ChangeDialog>
  );
}
