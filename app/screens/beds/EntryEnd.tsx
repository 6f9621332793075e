import { DateField } from '../../controls/DateField';
import { DialogEnd } from '../../controls/DialogEnd';
import { dayFailureSentence } from '../../words/messages';
import { useShown } from '../shown';

/** The end of a dialog that writes something down which was done or seen: on which day, and the two ways out. */
export function EntryEnd(props: {
  readonly date: string;
  /** the latest it can have been */
  readonly today: string;
  readonly onDate: (date: string) => void;
  /** it was written down before, and is changed */
  readonly isChange: boolean;
  readonly refused: string | null;
  readonly onCancel: () => void;
}) {
  const { today } = props;
  const { dayField } = useShown();
  return (
    <>
      <DateField
        label="When?"
        day={props.date}
        today={today}
        latest={today}
        write={dayField}
        sentence={dayFailureSentence}
        onDay={(day) => props.onDate(day ?? today)}
      />
      <DialogEnd
        refused={props.refused}
        keep={props.isChange ? 'Keep the change' : 'Write it down'}
        onCancel={props.onCancel}
      />
    </>
  );
}
