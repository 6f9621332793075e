import { useId, useState } from 'react';
import { Dialog } from '../../controls/Dialog';
import { Tick } from '../../controls/Tick';
import type { StopCaution } from '../../store/contract';
import { CautionList } from '../CautionList';
import { useGarden } from '../store';

/** The deliberate second step: bed by bed every stop is named, and ticked before anything is laid. */
export function StopsDialog(props: {
  readonly stops: readonly StopCaution[];
  readonly onClose: () => void;
  readonly onPass: () => void;
}) {
  const garden = useGarden();
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const [hurried, setHurried] = useState(false);
  const saysId = useId();
  const bedIds = [...new Set(props.stops.map(({ bedId }) => bedId))];
  const nameOf = (bedId: string) => garden.beds.find(({ id }) => id === bedId)?.name ?? '';
  const left = bedIds.filter((bedId) => !ticked.includes(bedId));
  return (
    <Dialog
      title={
        bedIds.length === 1
          ? `Stop: better not on ${nameOf(bedIds[0] ?? '')}`
          : `Stop: better not on these ${bedIds.length} beds`
      }
      onClose={props.onClose}
      describedBy={bedIds.map((bedId) => `${saysId}-${bedId}`).join(' ')}
    >
      {bedIds.map((bedId) => {
        const stops = props.stops.filter((stop) => stop.bedId === bedId);
        return (
          <div key={bedId} className="stop-named">
            {bedIds.length > 1 && <h3>{nameOf(bedId)}</h3>}
            <div id={`${saysId}-${bedId}`}>
              <CautionList cautions={stops.map(({ caution }) => caution)} />
            </div>
            <Tick
              label={`I have read ${stops.length === 1 ? 'this stop' : `these ${stops.length} stops`}, and lay it on ${nameOf(bedId)} all the same.`}
              checked={ticked.includes(bedId)}
              onChange={(isTicked) =>
                setTicked((now) =>
                  isTicked ? [...now, bedId] : now.filter((each) => each !== bedId),
                )
              }
            />
          </div>
        );
      })}
      {hurried && left.length > 0 && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          Not ticked yet: {left.map(nameOf).join(', ')}.
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
          Lay it all the same
        </button>
      </div>
    </Dialog>
  );
}
