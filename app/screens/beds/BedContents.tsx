import type { MouseEvent } from 'react';
import { seasonAccountTitle } from '../../words/seasonAccountWords';
import { showPart } from '../garden/wantedPart';

const parts: readonly (readonly [id: string, title: string])[] = [
  ['bed-season', 'Its season'],
  ['bed-sure', 'How sure that is'],
  ['bed-what-if', 'What if…'],
  ['bed-cover', 'Its cover'],
  ['bed-log', 'What was done'],
  ['bed-ledger', 'Its ledger'],
  ['bed-seasons', seasonAccountTitle],
  ['bed-minerals', 'Phosphorus and potassium'],
];

/**
 * The parts of a bed's long page by their headings.
 *
 * @param without  a part that is not there yet is not named
 */
export function BedContents(props: { readonly without: ReadonlySet<string> }) {
  const go = (event: MouseEvent, id: string): void => {
    // the address stays as it is: going back leads to where one was, not up and down a page
    event.preventDefault();
    showPart(id);
  };
  return (
    <nav className="bed-contents not-printed" aria-label="On this page">
      <ul>
        {parts
          .filter(([id]) => !props.without.has(id))
          .map(([id, title]) => (
            <li key={id}>
              <a href={`#${id}`} onClick={(event) => go(event, id)}>
                {title}
              </a>
            </li>
          ))}
      </ul>
    </nav>
  );
}
