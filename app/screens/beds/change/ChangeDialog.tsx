import type { ReactNode } from 'react';
import { DateField } from '../../../controls/DateField';
import { Dialog } from '../../../controls/Dialog';
import { DialogEnd } from '../../../controls/DialogEnd';
import { dayFailureSentence } from '../../../words/messages';
import { useShown } from '../../shown';
import type { Refused } from './useBedChange';

/** A window that changes beds from a day on: what is asked, the day, and the two ways out. */
export function ChangeDialog(props: {
  readonly title: string;
  readonly wide?: boolean;
  readonly dayLabel: string;
  /** YYYY-MM-DD; no later than today */
  readonly day: string;
  readonly today: string;
  /** an emptied day is today */
  readonly onDay: (day: string) => void;
  /** asked after the day */
  readonly after?: ReactNode;
  readonly refused: Refused | null;
  /** what the main button says */
  readonly keep: string;
  readonly onKeep: () => void;
  readonly onClose: () => void;
  readonly children: ReactNode;
}) {
  const { today } = props;
  const possibleOn = props.refused?.possibleOn;
  const shown = useShown();
  return (
    <Dialog title={props.title} wide={props.wide ?? false} onClose={props.onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          props.onKeep();
        }}
      >
        {props.children}
        <DateField
          label={props.dayLabel}
          day={props.day}
          today={today}
          latest={today}
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(day) => props.onDay(day ?? today)}
        />
        {props.after}
        <DialogEnd
          refused={props.refused?.says ?? null}
          remedy={
            possibleOn
              ? {
                  label: `Take ${shown.dayWord(possibleOn)}`,
                  onTake: () => props.onDay(possibleOn),
                }
              : null
          }
          keep={props.keep}
          onCancel={props.onClose}
        />
      </form>
    </Dialog>
  );
}
