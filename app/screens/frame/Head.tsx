import type { PlaceInWindow } from '../../store/contract';
import { useMowings } from '../store';
import { useCommands } from './commands';
import { FileMenu } from './FileMenu';
import { SaveState } from './SaveState';

const placesNow: readonly { readonly place: PlaceInWindow; readonly words: string }[] = [
  { place: 'this week', words: 'This week' },
  { place: 'beds', words: 'Beds' },
  { place: 'garden', words: 'Garden' },
];

/** The head of the window: whose garden, what can be taken back, where one is. */
export function Head() {
  const garden = useMowings((state) => state.garden);
  const undoes = useMowings((state) => state.past.at(-1)?.label);
  const redoes = useMowings((state) => state.future[0]?.label);
  const place = useMowings((state) => state.place);
  const goTo = useMowings((state) => state.goTo);
  const openBed = useMowings((state) => state.openBed);
  const commands = useCommands();
  return (
    <header className="head">
      <div className="head-row">
        <p className="head-name">
          <span className="head-program">Mowings</span>
          {garden && <span className="head-garden">{garden.garden.name}</span>}
          {garden?.garden.isSample && <span className="head-tag">sample, invented</span>}
        </p>
        <div className="head-tools">
          {garden && (
            <>
              <SaveState />
              <button
                type="button"
                className="head-button"
                aria-disabled={undoes === undefined}
                aria-keyshortcuts="Control+Z"
                onClick={commands.undo}
                title="Ctrl Z"
              >
                <span aria-hidden="true">↶</span> <span>Undo{undoes ? `: ${undoes}` : ''}</span>
              </button>
              <button
                type="button"
                className="head-button"
                aria-disabled={redoes === undefined}
                aria-keyshortcuts="Control+Y"
                onClick={commands.redo}
                title="Ctrl Y"
              >
                <span aria-hidden="true">↷</span> <span>Redo{redoes ? `: ${redoes}` : ''}</span>
              </button>
            </>
          )}
          <FileMenu />
        </div>
      </div>
      {garden && (
        <nav aria-label="Places">
          <ul className="places">
            {placesNow.map((each) => (
              <li key={each.place}>
                <button
                  type="button"
                  className="place"
                  aria-current={place === each.place ? 'page' : undefined}
                  onClick={() => {
                    openBed(null);
                    goTo(each.place);
                  }}
                >
                  {each.words}
                </button>
              </li>
            ))}
          </ul>
        </nav>
      )}
    </header>
  );
}
