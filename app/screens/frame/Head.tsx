import { Icon } from '../../controls/marks/Icon';
import { todayOf } from '../../store/selectors';
import { useMowings } from '../store';
import { useCommands } from './commands';
import { FileMenu } from './FileMenu';
import { placesNow } from './placesNow';
import { SaveState } from './SaveState';
import { seasonOfYear } from './seasonOfYear';
import { Sprout } from './Sprout';

/** The head of the window: whose garden, what can be taken back, where one is. */
export function Head() {
  const garden = useMowings((state) => state.garden);
  const undoes = useMowings((state) => state.past.at(-1)?.label);
  const redoes = useMowings((state) => state.future[0]?.label);
  const place = useMowings((state) => state.place);
  const goTo = useMowings((state) => state.goTo);
  const openBed = useMowings((state) => state.openBed);
  const season = useMowings((state) =>
    seasonOfYear(todayOf(state), state.garden?.garden.latitudeDegrees ?? 50),
  );
  const commands = useCommands();
  return (
    <header className="head" data-season={season}>
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
                className={`head-button${undoes || redoes ? ' head-undo' : ''}`}
                aria-disabled={undoes === undefined}
                aria-keyshortcuts="Control+Z"
                onClick={commands.undo}
                aria-label={undoes ? `Undo: ${undoes}` : undefined}
                title={undoes ? `Undo: ${undoes} (Ctrl Z)` : 'Ctrl Z'}
              >
                <Icon name="back" />{' '}
                <span className="head-words">Undo{undoes ? `: ${undoes}` : ''}</span>
                <span className="head-short">Undo</span>
              </button>
              <button
                type="button"
                className="head-button"
                aria-disabled={redoes === undefined}
                aria-keyshortcuts="Control+Y"
                onClick={commands.redo}
                aria-label={redoes ? `Redo: ${redoes}` : undefined}
                title={redoes ? `Redo: ${redoes} (Ctrl Y)` : 'Ctrl Y'}
              >
                <Icon name="again" /> <span className="head-words">Redo</span>
              </button>
            </>
          )}
          <button
            type="button"
            className="head-button"
            aria-haspopup="dialog"
            aria-keyshortcuts="F9"
            onClick={commands.find}
            title="F9"
          >
            <Icon name="lens" /> <span>Find</span>
          </button>
          <FileMenu />
        </div>
      </div>
      <div className="head-soil">
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
                    {place === each.place && <Sprout season={season} />}
                    <Icon name={each.icon} />
                    <span className="place-words">{each.words}</span>
                  </button>
                </li>
              ))}
            </ul>
          </nav>
        )}
      </div>
    </header>
  );
}
