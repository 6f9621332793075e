import '../../style/screens/find.css';
import { useEffect, useRef } from 'react';
import { tourStops } from '../../words/tourWords';
import { afterNextDrawing } from '../afterNextDrawing';
import { useMowings, useMowingsStore } from '../store';
import { whenThere } from '../whenThere';
import { keepMarked } from './keepMarked';

/** On the part of the page that a stop speaks of, for as long as it does. */
const sign = 'data-tour-here';

/**
 * The short tour: a note at the foot of the window that goes from part to part of the garden that is
 * open, while everything on the page can be used as always. It comes only when asked for, ends
 * whenever one likes, and changes nothing.
 */
export function Tour() {
  const store = useMowingsStore();
  const at = useMowings((state) => state.tourStop);
  const hasGarden = useMowings((state) => state.garden !== null);
  const heading = useRef<HTMLHeadingElement>(null);
  const stop = at === null || !hasGarden ? undefined : tourStops[at];

  useEffect(() => {
    if (!stop) return undefined;
    const { openBed, goTo } = store.getState();
    openBed(null);
    goTo(stop.place);
    const part = stop.at === '' ? 'main .page h1' : `main ${stop.at}`;
    const block = stop.at === '' ? 'nearest' : 'start';
    let unmark: (() => void) | null = null;
    const callOff = afterNextDrawing(() => {
      unmark = keepMarked(part, sign, (found) => found.scrollIntoView({ block }));
      heading.current?.focus({ preventScroll: true });
    });
    return () => {
      callOff();
      unmark?.();
    };
  }, [stop, store]);

  if (!stop || at === null) return null;
  const go = (to: number | null) => store.getState().goOnTour(to);
  const leave = () => {
    go(null);
    whenThere('main .page h1', (top) => top.focus({ preventScroll: true }));
  };
  const isLast = at === tourStops.length - 1;
  return (
    <section className="tour not-printed" aria-labelledby="tour-stop">
      <div
        className="tour-note"
        role="presentation"
        onKeyDown={(event) => {
          if (event.key === 'Escape') leave();
        }}
      >
        <div className="tour-words">
          <h2 id="tour-stop" ref={heading} tabIndex={-1}>
            {stop.title}
            <span className="tour-count">
              {' '}
              stop {at + 1} of {tourStops.length}
            </span>
          </h2>
          {stop.says.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
        <div className="button-row">
          {at > 0 && (
            <button type="button" className="button-small" onClick={() => go(at - 1)}>
              Back
            </button>
          )}
          {!isLast && (
            <button type="button" className="button-small tour-next" onClick={() => go(at + 1)}>
              Next stop
            </button>
          )}
          <button type="button" className="button-small" onClick={leave}>
            {isLast ? 'That was all' : 'Leave the tour'}
          </button>
        </div>
      </div>
    </section>
  );
}
