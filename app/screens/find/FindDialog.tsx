import '../../style/screens/find.css';
import { useId, useState, type KeyboardEvent, type SyntheticEvent } from 'react';
import { useAnnounce, useHeardAtRest } from '../../controls/Announcer';
import { Dialog } from '../../controls/Dialog';
import { foundSentence } from '../../words/findWords';
import { useMowings } from '../store';
import { findingGroups, useFindings, type Finding } from './findings';
import { matchWords } from './matchWords';

/** Rows of tables are many: they are named once something is typed. */
const typedAtLeast = 2;
const most = 40;

/**
 * Finds any command, place, bed, setting or row by typing the beginnings of its words. The list
 * follows the typing; arrow keys go along it while the line keeps the focus, Enter does what is
 * marked, Escape goes back to where one was.
 */
export function FindDialog() {
  const showDialog = useMowings((state) => state.showDialog);
  const announce = useAnnounce();
  const findings = useFindings();
  const [typed, setTyped] = useState('');
  const [marked, setMarked] = useState(0);
  const listId = useId();

  const hasRows = typed.trim().length >= typedAtLeast;
  const { things, isNear } = matchWords(
    findings.filter(({ whenTyped }) => hasRows || !whenTyped),
    typed,
  );
  // of one group together, the group of the best first; without typing in the usual order
  const groups = [...findingGroups];
  if (typed.trim() !== '') {
    const place = (group: Finding['group']) => things.findIndex((one) => one.group === group);
    groups.sort((one, other) => place(one) - place(other));
  }
  const shown = groups
    .flatMap((group) => things.filter((one) => one.group === group))
    .slice(0, most);
  const at = Math.min(marked, shown.length - 1);
  const chosen = shown[at];
  const found = foundSentence({ count: shown.length, typed, isNear, all: things.length });
  useHeardAtRest(typed === '' ? '' : found, 'found');

  const mark = (to: number) => {
    const next = shown.length === 0 ? 0 : (to + shown.length) % shown.length;
    setMarked(next);
    document.getElementById(`${listId}-${next}`)?.scrollIntoView({ block: 'nearest' });
  };
  const choose = (finding: Finding | undefined) => {
    if (!finding) return;
    if (finding.notNow !== null) return announce(`${finding.words}: not now, ${finding.notNow}.`);
    showDialog(null);
    finding.run();
  };
  const page = 6;
  const moves: Readonly<Record<string, number>> = {
    ArrowDown: at + 1,
    ArrowUp: at - 1,
    PageDown: Math.min(at + page, shown.length - 1),
    PageUp: Math.max(at - page, 0),
  };
  /** Which of the list somebody points at. */
  const placeUnder = ({ target }: SyntheticEvent): number | null => {
    const id = target instanceof Element ? target.closest('[role=option]')?.id : undefined;
    return id === undefined ? null : Number(id.slice(listId.length + 1));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const to = moves[event.key];
    if (to !== undefined) mark(to);
    else if (event.key === 'Enter') choose(chosen);
    else return;
    event.preventDefault();
  };

  return (
    <Dialog title="Find" onClose={() => showDialog(null)}>
      <div
        className="find"
        role="presentation"
        onKeyDown={onKeyDown}
        // the line keeps the focus, also of whoever points
        onPointerDown={(event) => placeUnder(event) !== null && event.preventDefault()}
        onPointerMove={(event) => setMarked((now) => placeUnder(event) ?? now)}
        onClick={(event) => {
          const place = placeUnder(event);
          if (place !== null) choose(shown[place]);
        }}
      >
        <label className="find-line">
          <span>A command, a place, a bed, a crop or a material</span>
          <input
            type="text"
            role="combobox"
            autoComplete="off"
            spellCheck={false}
            maxLength={80}
            aria-expanded={shown.length > 0}
            aria-controls={listId}
            aria-autocomplete="list"
            aria-activedescendant={chosen ? `${listId}-${at}` : undefined}
            aria-describedby={`${listId}-found`}
            data-settled={typed}
            value={typed}
            onChange={(event) => {
              setTyped(event.target.value);
              setMarked(0);
            }}
          />
        </label>
        <p id={`${listId}-found`} className="small soft">
          {found}
        </p>
        <div id={listId} role="listbox" aria-label="Found" className="find-list">
          {groups.map((group) => {
            const own = shown.flatMap((one, place) =>
              one.group === group ? [{ one, place }] : [],
            );
            if (own.length === 0) return null;
            return (
              <div key={group} role="group" aria-label={group} className="find-group">
                <p className="find-group-name" aria-hidden="true">
                  {group}
                </p>
                {own.map(({ one, place }) => (
                  <div
                    key={one.id}
                    id={`${listId}-${place}`}
                    role="option"
                    aria-selected={place === at}
                    aria-disabled={one.notNow !== null}
                    tabIndex={-1}
                    className="find-one"
                  >
                    <span className="find-words">{one.words}</span>
                    {one.notNow !== null ? (
                      <span className="find-note">not now: {one.notNow}</span>
                    ) : (
                      one.note !== '' && <span className="find-note">{one.note}</span>
                    )}
                    {one.keys !== '' && <kbd className="find-keys">{one.keys}</kbd>}
                  </div>
                ))}
              </div>
            );
          })}
        </div>
      </div>
    </Dialog>
  );
}
