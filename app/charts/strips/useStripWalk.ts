import { type KeyboardEvent, type RefObject, useEffect, useState } from 'react';

/** What of a strip can be come to by key. */
type Kind = 'name' | 'reading' | 'planting' | 'remark';

const kindOf = (item: HTMLElement): Kind => {
  if (item.matches('.bed-open')) return 'name';
  if (item.matches('.strip-planting')) return 'planting';
  return item.closest('.strip-value') ? 'reading' : 'remark';
};

/** what opens beneath a strip has stops of its own, and so have the ends of a chosen planting */
const apart = '.why-panel, .strip-fields, .strip-handle';
const folded = 'details:not([open]) > .more-body';

const rowsIn = (list: HTMLElement): readonly HTMLElement[] => [
  ...list.querySelectorAll<HTMLElement>('[data-bed]'),
];
const itemsIn = (within: HTMLElement): readonly HTMLElement[] =>
  [...within.querySelectorAll<HTMLElement>('button, summary, a[href]')].filter(
    (item) => item.closest(apart) === null,
  );
const inViewIn = (row: HTMLElement): readonly HTMLElement[] =>
  itemsIn(row).filter((item) => item.closest(folded) === null);
const rowOf = (item: Element): HTMLElement | null => item.closest<HTMLElement>('[data-bed]');

/** Of the next strip what is of the same kind, of its plantings the one that lies nearest; else its name. */
function alikeIn(row: HTMLElement, from: HTMLElement): HTMLElement | undefined {
  const kind = kindOf(from);
  const items = inViewIn(row);
  const far = (item: HTMLElement): number => Math.abs(item.offsetLeft - from.offsetLeft);
  const alike = items
    .filter((item) => kindOf(item) === kind)
    .toSorted((one, other) => (kind === 'planting' ? far(one) - far(other) : 0));
  return alike[0] ?? items[0];
}

/** What a key leads to from something of a strip; undefined: it leads nowhere, or is not one of ours. */
function wayOf(
  list: HTMLElement,
  from: HTMLElement,
  { key, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent,
): HTMLElement | undefined {
  if (altKey || metaKey || shiftKey) return undefined;
  const rows = rowsIn(list);
  const row = rowOf(from);
  if (!row) return undefined;
  const at = rows.indexOf(row);
  const inRow = inViewIn(row);
  const place = inRow.indexOf(from);
  const to = (next: HTMLElement | undefined) => next && alikeIn(next, from);
  switch (ctrlKey ? `Ctrl ${key}` : key) {
    case 'ArrowUp':
      return to(rows[at - 1]);
    case 'ArrowDown':
      return to(rows[at + 1]);
    case 'Ctrl Home':
      return to(rows[0]);
    case 'Ctrl End':
      return to(rows.at(-1));
    case 'ArrowLeft':
      return inRow[place - 1];
    case 'ArrowRight':
      return inRow[place + 1];
    case 'Home':
      return inRow[0];
    case 'End':
      return inRow.at(-1);
    default:
      return undefined;
  }
}

const walkKeys = ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Home', 'End'];

/** What the list of strips needs, to be one stop of the Tab key. */
export interface StripWalk {
  readonly onFocus: (event: { readonly target: EventTarget }) => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLElement>) => void;
}

/**
 * Makes all strips one stop of the Tab key, which comes to what had the focus last. From there arrow
 * keys go up and down from bed to bed and left and right along a strip, Home and End to its ends,
 * with Ctrl to the first and the last bed.
 *
 * What can be pressed is drawn in many places, some of it by whoever shows the strips, so the stop
 * is kept on what is there and not in what is drawn.
 *
 * @param list the strips, each a `data-bed`
 * @param onOther told when a key led to another bed, but not to its name, which says itself
 */
export function useStripWalk(
  list: RefObject<HTMLElement | null>,
  onOther: (bedId: string) => void,
): StripWalk {
  const [stop] = useState(() => stopOf(list));
  useEffect(() => stop.watch(), [stop]);
  return {
    onFocus: ({ target }) => stop.comeTo(target),
    onKeyDown: (event) => {
      if (event.defaultPrevented || !walkKeys.includes(event.key)) return;
      const { target, currentTarget } = event;
      if (!(target instanceof HTMLElement) || target.closest(apart)) return;
      const next = wayOf(currentTarget, target, event);
      if (!next) return;
      event.preventDefault();
      next.focus();
      const [row, before] = [rowOf(next), rowOf(target)];
      if (row && row !== before && kindOf(next) !== 'name') onOther(row.dataset['bed'] ?? '');
    },
  };
}

function stopOf(list: RefObject<HTMLElement | null>) {
  /** what Tab comes to, and the bed it is on, should it be gone */
  let current: HTMLElement | null = null;
  let bedId: string | undefined;

  const put = (): void => {
    const within = list.current;
    if (!within) return;
    const items = itemsIn(within);
    if (!current || !items.includes(current) || current.closest(folded)) {
      const own = rowsIn(within).find((row) => row.dataset['bed'] === bedId);
      current = (own && itemsIn(own)[0]) ?? items[0] ?? null;
    }
    for (const item of items) {
      const tabIndex = item === current ? 0 : -1;
      if (item.getAttribute('tabindex') !== String(tabIndex)) item.tabIndex = tabIndex;
    }
  };
  return {
    comeTo(target: EventTarget): void {
      if (!(target instanceof HTMLElement) || target.closest(apart)) return;
      current = target;
      bedId = rowOf(target)?.dataset['bed'];
      put();
    },
    watch(): () => void {
      put();
      const within = list.current;
      if (!within) return () => undefined;
      // a reading that is another changes its letters alone
      const watcher = new MutationObserver((changes) => {
        const isElement = (node: Node): boolean => node.nodeType === Node.ELEMENT_NODE;
        if (
          changes.some(
            ({ addedNodes, removedNodes }) =>
              [...addedNodes].some(isElement) || [...removedNodes].some(isElement),
          )
        )
          put();
      });
      watcher.observe(within, { childList: true, subtree: true });
      return () => watcher.disconnect();
    },
  };
}
