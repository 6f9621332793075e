import { Disclosure } from '../controls/Disclosure';
import { useMowings } from './store';

/** Said wherever figures stand, when the sums behind them did not come out. */
export function WorkTrouble() {
  const work = useMowings((state) => state.work);
  const reason = useMowings((state) => state.workReason);
  if (work !== 'failed') return null;
  return (
    <div className="field-trouble">
      <p role="alert">
        <span aria-hidden="true" className="field-trouble-mark" />
        The sums did not come out, so what is shown may be old or missing. Everything you wrote down
        is kept. Undo the last change: if it was the cause, the sums come back.
      </p>
      <TroubleReason reason={reason} />
    </div>
  );
}

/** The engine's own words, for whoever reports the mistake; never in the sentence itself. */
export function TroubleReason({ reason }: { readonly reason: string | null }) {
  if (!reason) return null;
  return (
    <Disclosure summary="What the program says of it" quiet>
      <p className="small">{reason}</p>
    </Disclosure>
  );
}
