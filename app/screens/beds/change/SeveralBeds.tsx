import { useEffect, useId, useRef, useState } from 'react';
import type { Bed } from '../../../document/schema';
import { PlantingDialog } from '../PlantingDialog';
import { JoinDialog } from './JoinDialog';
import { LaySeveral } from './LaySeveral';
import { RetireDialog } from './RetireDialog';
import { WaterSeveral } from './WaterSeveral';

type Open = 'lay' | 'plant' | 'water' | 'join' | 'retire';

/** What is done to all chosen beds at once, each as one step. */
export function SeveralBeds(props: {
  readonly beds: readonly Bed[];
  readonly ofAll: number;
  /** only some of them are listed */
  readonly isPart: boolean;
  readonly onAll: () => void;
  readonly onDone: () => void;
  readonly onSheets: () => void;
}) {
  const { beds } = props;
  const [open, setOpen] = useState<Open | null>(null);
  const close = () => setOpen(null);
  const saysId = useId();
  const box = useRef<HTMLDivElement>(null);
  // the button that led here is gone: one is where it led to, and hears what is to be done
  useEffect(() => box.current?.focus(), []);
  const [first, ...others] = beds;
  const button = (act: Open, words: string, least = 1) => (
    <button
      type="button"
      className="button"
      disabled={beds.length < least}
      onClick={() => setOpen(act)}
    >
      {words}
    </button>
  );
  return (
    <div
      ref={box}
      tabIndex={-1}
      className="several-beds not-printed"
      role="group"
      aria-label="For the beds you tick"
      aria-describedby={saysId}
    >
      <p role="status" id={saysId}>
        {beds.length === 0
          ? 'Tick the beds it is for.'
          : `${beds.length} of ${props.ofAll} beds ticked.`}
      </p>
      <div className="button-row">
        {button('lay', 'Lay on them…')}
        {button('plant', 'Sow or plant…')}
        {button('water', 'Water…')}
        {button('join', 'Join into one…', 2)}
        {button('retire', 'Put away…')}
        <button
          type="button"
          className="button"
          disabled={beds.length === 0}
          onClick={props.onSheets}
        >
          Their sheets…
        </button>
        <button type="button" className="button-small" onClick={props.onAll}>
          {beds.length === props.ofAll
            ? 'Tick none'
            : props.isPart
              ? 'Tick those listed'
              : 'Tick all'}
        </button>
        <button type="button" className="button-small" onClick={props.onDone}>
          Done
        </button>
      </div>
      {open === 'lay' && <LaySeveral beds={beds} onClose={close} />}
      {open === 'plant' && first && (
        <PlantingDialog
          bedId={first.id}
          alsoOn={others.map(({ id }) => id)}
          planting={null}
          onClose={close}
        />
      )}
      {open === 'water' && <WaterSeveral beds={beds} onClose={close} />}
      {open === 'join' && <JoinDialog beds={beds} onClose={close} onJoined={props.onDone} />}
      {open === 'retire' && <RetireDialog beds={beds} onClose={close} onRetired={props.onDone} />}
    </div>
  );
}
