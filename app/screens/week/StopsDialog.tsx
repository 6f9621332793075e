import { useId, useState } from 'react';
import { Dialog } from '../../controls/Dialog';
import { Tick } from '../../controls/Tick';
import type { Caution } from '../../core/season/verdict';
import { CautionList } from '../CautionList';

/** A bed or a heap, and what stands against putting something on it. */
export interface StoppedPlace {
  readonly id: string;
  readonly name: string;
  readonly stops: readonly Caution[];
}

/** The deliberate second step: place by place every stop is named, and ticked before it is done. */
export function StopsDialog(props: {
  readonly places: readonly StoppedPlace[];
  /** what is done in spite of it: "lay it" */
  readonly act?: 'lay it' | 'put it';
  readonly onClose: () => void;
  readonly onPass: () => void;
}) {
  const { places, act = 'lay it' } = props;
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const [hurried, setHurried] = useState(false);
  const saysId = useId();
  const left = places.filter(({ id }) => !ticked.includes(id));
  return (
    <Dialog
      title={
        places.length === 1
          ? `Stop: better not on ${places[0]?.name ?? ''}`
          : `Stop: better not on these ${places.length} beds`
      }
      onClose={props.onClose}
      describedBy={places.map(({ id }) => `${saysId}-${id}`).join(' ')}
    >
      {places.map(({ id, name, stops }) => (
        <div key={id} className="stop-named">
          {places.length > 1 && <h3>{name}</h3>}
          <div id={`${saysId}-${id}`}>
            <CautionList cautions={stops} />
          </div>
          <Tick
            label={`I have read ${stops.length === 1 ? 'this stop' : `these ${stops.length} stops`}, and ${act} on ${name} all the same.`}
            checked={ticked.includes(id)}
            onChange={(isTicked) =>
              setTicked((now) => (isTicked ? [...now, id] : now.filter((each) => each !== id)))
            }
          />
        </div>
      ))}
      {hurried && left.length > 0 && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          Not ticked yet: {left.map(({ name }) => name).join(', ')}.
        </p>
      )}
      <div className="button-row">
        <button type="button" className="button-main" data-focus-first onClick={props.onClose}>
          Go back and change it
        </button>
        <button
          type="button"
          className="button-stop"
          aria-disabled={left.length > 0 || undefined}
          onClick={() => (left.length > 0 ? setHurried(true) : props.onPass())}
        >
          {act === 'lay it' ? 'Lay it' : 'Put it there'} all the same
        </button>
      </div>
    </Dialog>
  );
}
