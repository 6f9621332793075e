import { useState } from 'react';
import { countOf } from '../../words/figures';
import { useMowings } from '../store';
import { whenThere } from '../whenThere';
import type { UsedPlace } from './usedWhere';

/** A garden of sixty beds may use straw on all of them. */
const firstShown = 8;

const bring = (element: HTMLElement): void => {
  element.scrollIntoView({ block: 'center' });
  element.focus({ preventScroll: true });
};

/** Where a row of the tables is in use: each a way to go there, to the latest entry of a bed. */
export function GoToUses(props: {
  readonly places: readonly UsedPlace[];
  /** what an entry of a bed is called */
  readonly entry: readonly [one: string, many: string];
}) {
  const { places, entry } = props;
  const [all, setAll] = useState(false);
  const goTo = useMowings((state) => state.goTo);
  const openBed = useMowings((state) => state.openBed);
  if (places.length === 0) return null;
  const go = (place: UsedPlace): void => {
    switch (place.at) {
      case 'bed':
        openBed(place.bedId);
        goTo('beds');
        return whenThere(`[id="entry-${place.entries[0] ?? ''}"]`, bring);
      case 'store':
        goTo('garden');
        return whenThere(`[id="thing-${place.id}"]`, (element) => {
          if (element instanceof HTMLDetailsElement) element.open = true;
          bring(element.querySelector('summary') ?? element);
        });
      case 'mowings':
        openBed(null);
        goTo('this week');
        return whenThere('#past', bring);
    }
  };
  const listed = all ? places : places.slice(0, firstShown);
  return (
    <div className="button-row not-printed" role="group" aria-label="Go to where it is used">
      {listed.map((place) => (
        <button
          key={place.at === 'bed' ? place.bedId : place.at === 'store' ? place.id : place.at}
          type="button"
          className="button-small"
          onClick={() => go(place)}
        >
          {place.at === 'mowings'
            ? countOf(place.count, 'mowing', 'mowings')
            : place.at === 'store'
              ? `${place.name}, kept`
              : `${place.name}, ${countOf(place.entries.length, ...entry)}`}
        </button>
      ))}
      {places.length > firstShown && (
        <button
          type="button"
          className="button-small"
          aria-expanded={all}
          onClick={() => setAll(!all)}
        >
          {all ? 'Fewer' : `${places.length - firstShown} more`}
        </button>
      )}
    </div>
  );
}
