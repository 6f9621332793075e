import { useState } from 'react';
import { Dialog } from '../../controls/Dialog';
import { Tick } from '../../controls/Tick';
import type { StopCaution } from '../../store/contract';
import { OneCaution } from '../CautionList';
import { useGarden } from '../store';

/** The deliberate second step: every stop is named and has to be ticked before anything is laid. */
export function StopsDialog(props: {
  readonly stops: readonly StopCaution[];
  readonly onClose: () => void;
  readonly onPass: () => void;
}) {
  const garden = useGarden();
  const [ticked, setTicked] = useState<readonly number[]>([]);
  const [hurried, setHurried] = useState(false);
  const nameOf = (bedId: string) => garden.beds.find(({ id }) => id === bedId)?.name ?? '';
  const left = props.stops.length - ticked.length;
  return (
    <Dialog
      title={props.stops.length === 1 ? 'Stop: better not' : `${props.stops.length} stops`}
      onClose={props.onClose}
    >
      {props.stops.map(({ bedId, caution }, index) => (
        <div key={`${bedId} ${caution.kind} ${caution.layerId}`} className="stop-named">
          <h3>{nameOf(bedId)}</h3>
          <OneCaution caution={caution} bedId={bedId} />
          <Tick
            label={`I have read this, and lay it on ${nameOf(bedId)} all the same.`}
            checked={ticked.includes(index)}
            onChange={(isTicked) =>
              setTicked((now) =>
                isTicked ? [...now, index] : now.filter((each) => each !== index),
              )
            }
          />
        </div>
      ))}
      {hurried && left > 0 && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {left === 1 ? 'One stop is' : `${left} stops are`} not ticked yet.
        </p>
      )}
      <div className="button-row">
        <button type="button" className="button-main" autoFocus onClick={props.onClose}>
          Go back and change it
        </button>
        <button
          type="button"
          className="button-stop"
          aria-disabled={left > 0 || undefined}
          onClick={() => (left > 0 ? setHurried(true) : props.onPass())}
        >
          Lay it all the same
        </button>
      </div>
    </Dialog>
  );
}
