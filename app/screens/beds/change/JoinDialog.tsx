import { useState } from 'react';
import { useAnnounce } from '../../../controls/Announcer';
import { NameField } from '../../../controls/NameField';
import { textFromDay } from '../../../core/days';
import { failure } from '../../../core/result';
import { joinBeds } from '../../../document/bedChanges/joinBeds';
import type { Bed } from '../../../document/schema';
import { bedStepNames } from '../../../words/bedChangeWords';
import { listed } from '../../../words/chartFormat';
import { useShown } from '../../shown';
import { useGarden, useMowings } from '../../store';
import { useToday } from '../../useReadingContext';
import { ChangeDialog } from './ChangeDialog';
import { useBedChange, type Refused } from './useBedChange';

/** Neighbours made into one bed. */
export function JoinDialog(props: {
  readonly beds: readonly Bed[];
  readonly onClose: () => void;
  readonly onJoined: () => void;
}) {
  const { beds, onClose } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const openBed = useMowings((state) => state.openBed);
  const announce = useAnnounce();
  const keepChange = useBedChange();
  const [name, setName] = useState(beds[0]?.name ?? '');
  const [on, setOn] = useState(today);
  const [refused, setRefused] = useState<Refused | null>(null);
  const largest = [...beds].sort((one, other) => other.areaM2 - one.areaM2)[0];
  const differs = (
    [
      ['soil', beds.some((bed) => bed.texture !== largest?.texture)],
      ['watering', beds.some((bed) => bed.watering !== largest?.watering)],
      ['roof', beds.some((bed) => bed.roof !== largest?.roof)],
      ['slope', beds.some((bed) => bed.slope !== largest?.slope)],
    ] as const
  ).flatMap(([what, isSo]) => (isSo ? [what] : []));
  const whole = beds.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  const keep = () => {
    const ids = beds.map(({ id }) => id);
    const joined = joinBeds(garden, ids, on, name.trim(), today);
    const why = keepChange(
      bedStepNames.join(beds.map((bed) => bed.name)),
      name.trim() === ''
        ? failure({ kind: 'name', name: '' })
        : joined.ok
          ? { ok: true, value: joined.value.garden }
          : joined,
    );
    if (why !== null) return setRefused(why);
    announce(`${listed(beds.map((bed) => bed.name))} are one bed now. Undo parts them again.`);
    props.onJoined();
    onClose();
    if (joined.ok) openBed(joined.value.bedIds[0] ?? null);
  };
  return (
    <ChangeDialog
      title={`Join ${listed(beds.map((bed) => bed.name))}`}
      dayLabel="On which day?"
      day={on}
      today={today}
      onDay={(day) => {
        setOn(day);
        setRefused(null);
      }}
      refused={refused}
      keep="Join them"
      onKeep={keep}
      onClose={onClose}
    >
      <p>
        Each is reckoned by its own log, that day’s entries among it. The new bed, of{' '}
        {shown.estimate(whole, shown.units.area)}, starts with what they hold together, and the old
        ones are put away with their logs.
      </p>
      {differs.length > 0 && (
        <p className="small">
          They differ in {listed(differs)}: the new bed has that of {largest?.name}, the largest.
        </p>
      )}
      <NameField
        label="What is it called?"
        name={name}
        onName={(called) => {
          setName(called);
          setRefused(null);
        }}
      />
    </ChangeDialog>
  );
}
