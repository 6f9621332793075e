import { useMowings } from './store';

/** Said wherever figures stand, when the sums behind them did not come out. */
export function WorkTrouble() {
  const work = useMowings((state) => state.work);
  const reason = useMowings((state) => state.workReason);
  if (work !== 'failed') return null;
  return (
    <p role="alert" className="field-trouble">
      <span aria-hidden="true" className="field-trouble-mark" />
      The sums did not come out ({reason}). What is shown may be old or missing; everything you
      wrote down is kept. Undo the last change, and they come back if it was the cause.
    </p>
  );
}
