import { useEffect, useId, useRef, useState, type KeyboardEvent } from 'react';
import { Icon } from '../../controls/marks/Icon';
import { useCommandLines } from './commandLines';
import type { CommandName } from './commands';

/** Undo and redo stand beside the menu, with what they would do. */
const inMenu: ReadonlySet<CommandName> = new Set([
  'new',
  'open',
  'save',
  'save-as',
  'print',
  'find',
  'colour-scheme',
  'tour',
  'guide',
  'about',
]);

/** The commands with their keys; arrow keys move along the list, Escape closes it. */
export function FileMenu() {
  const [open, setOpen] = useState(false);
  const listId = useId();
  const holder = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);

  useEffect(() => {
    if (!open) return;
    holder.current?.querySelector<HTMLElement>('.menu-item')?.focus();
    const onOutside = (event: Event) => {
      if (event.target instanceof Node && !holder.current?.contains(event.target)) setOpen(false);
    };
    document.addEventListener('pointerdown', onOutside);
    document.addEventListener('focusin', onOutside);
    return () => {
      document.removeEventListener('pointerdown', onOutside);
      document.removeEventListener('focusin', onOutside);
    };
  }, [open]);

  const items = useCommandLines().filter(({ name }) => inMenu.has(name));

  const onKeyDown = (event: KeyboardEvent) => {
    if (!open) return;
    const entries = [...(holder.current?.querySelectorAll<HTMLElement>('.menu-item') ?? [])];
    const at = entries.findIndex((entry) => entry === document.activeElement);
    const to = (index: number) => entries[(index + entries.length) % entries.length]?.focus();
    if (event.key === 'Escape') {
      setOpen(false);
      button.current?.focus();
    } else if (event.key === 'ArrowDown') to(at + 1);
    else if (event.key === 'ArrowUp') to(at - 1);
    else if (event.key === 'Home') to(0);
    else if (event.key === 'End') to(-1);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (
    <div className="menu" ref={holder} onKeyDown={onKeyDown} role="presentation">
      <button
        ref={button}
        type="button"
        className="head-button"
        aria-expanded={open}
        aria-controls={listId}
        onClick={() => setOpen(!open)}
      >
        <Icon name="paper" /> <span>Garden file</span>
      </button>
      <ul id={listId} className="menu-list" hidden={!open}>
        {items.map((item) => (
          <li key={item.words}>
            <button
              type="button"
              className="menu-item"
              aria-disabled={item.notNow !== null}
              onClick={() => {
                if (item.notNow !== null) return;
                setOpen(false);
                button.current?.focus();
                item.run();
              }}
            >
              <span>
                {item.words}
                {item.notNow !== null && <span className="small"> ({item.notNow})</span>}
              </span>
              {item.keys && <span className="menu-keys">{item.keys}</span>}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
