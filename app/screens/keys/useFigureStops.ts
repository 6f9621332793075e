import { type RefObject, useEffect, useState } from 'react';

/** A figure that opens what stands behind it. */
const figure = '.figure-why';
/** Figures that stand together: those of one table, and those of one drawing's key. */
const together = (one: Element): Element | null =>
  one.closest('table') ?? one.closest('[data-figures]');

/** Groups that what is in an element, itself with it, belongs to. */
function groupsIn(element: Element): ReadonlySet<Element> {
  const figures = [...element.querySelectorAll(figure)];
  if (element.matches(figure)) figures.push(element);
  return new Set(figures.map(together).filter((group) => group !== null));
}

const figuresOf = (group: Element): readonly HTMLElement[] =>
  [...group.querySelectorAll<HTMLElement>(figure)].filter((one) => together(one) === group);

/** Whether it is a figure from which arrow keys lead to others. */
export function isAmongFigures(element: Element): boolean {
  const group = element.matches(figure) ? together(element) : null;
  return group !== null && figuresOf(group).length > 1;
}

/** Of the nearest line above or below that has figures, the one in the column that lies nearest. */
function inNextLine(
  figures: readonly HTMLElement[],
  from: HTMLElement,
  by: 1 | -1,
): HTMLElement | undefined {
  const line = from.closest('tr');
  const beyond = by > 0 ? figures : figures.toReversed();
  const next = beyond.slice(beyond.indexOf(from) + 1).find((one) => one.closest('tr') !== line);
  if (!line || !next) return line ? undefined : beyond[beyond.indexOf(from) + 1];
  const column = (one: HTMLElement): number =>
    one.closest<HTMLTableCellElement>('td, th')?.cellIndex ?? 0;
  const far = (one: HTMLElement): number => Math.abs(column(one) - column(from));
  return figures
    .filter((one) => one.closest('tr') === next.closest('tr'))
    .toSorted((one, other) => far(one) - far(other))[0];
}

/** Where a key leads from a figure among others; undefined: nowhere, or it is not one of ours. */
export function wayFrom(from: HTMLElement, key: string): HTMLElement | undefined {
  const group = together(from);
  if (!group) return undefined;
  const figures = figuresOf(group);
  const at = figures.indexOf(from);
  switch (key) {
    case 'ArrowRight':
      return figures[at + 1];
    case 'ArrowLeft':
      return figures[at - 1];
    case 'ArrowDown':
      return inNextLine(figures, from, 1);
    case 'ArrowUp':
      return inNextLine(figures, from, -1);
    case 'Home':
      return figures[0];
    case 'End':
      return figures.at(-1);
    default:
      return undefined;
  }
}

/** What keeps the figures of a page that stand together one stop of the Tab key. */
export interface FigureStops {
  /** told when a figure has come to have the focus: Tab comes back to it */
  comeTo(element: Element): void;
  /** sets the stops anew, for what is on the page now or for these groups of it */
  put(groups?: ReadonlySet<Element>): void;
}

function figureStops(page: RefObject<HTMLElement | null>, hintId: string): FigureStops {
  const stops = new WeakMap<Element, HTMLElement>();
  const putGroup = (group: Element): void => {
    const figures = figuresOf(group);
    const before = stops.get(group);
    const stop = before && figures.includes(before) ? before : figures[0];
    if (!stop) return;
    stops.set(group, stop);
    const isInside = group.contains(document.activeElement);
    for (const one of figures) {
      const tabIndex = one === stop ? 0 : -1;
      if (one.getAttribute('tabindex') !== String(tabIndex)) one.tabIndex = tabIndex;
      if (one === stop && !isInside && figures.length > 1)
        one.setAttribute('aria-describedby', hintId);
      else if (!isInside || one !== document.activeElement) one.removeAttribute('aria-describedby');
    }
  };
  return {
    comeTo(element) {
      const group = element.matches(figure) ? together(element) : null;
      if (!group || !(element instanceof HTMLElement)) return;
      stops.set(group, element);
      putGroup(group);
    },
    put(groups = page.current ? groupsIn(page.current) : new Set()) {
      for (const group of groups) putGroup(group);
    },
  };
}

/**
 * Makes figures that stand together one stop of the Tab key, which comes to the one that had the
 * focus last. Kept on what is there and not in what is drawn, which is drawn in many places.
 *
 * @param hintId what is read out where one comes to them: how one gets to the others
 */
export function useFigureStops(page: RefObject<HTMLElement | null>, hintId: string): FigureStops {
  const [stops] = useState(() => figureStops(page, hintId));
  useEffect(() => {
    stops.put();
    if (!page.current) return undefined;
    let frame = 0;
    const changed = new Set<Element>();
    const isElement = (node: Node): node is Element => node.nodeType === Node.ELEMENT_NODE;
    // a figure that is another changes its letters alone; pages are large, so the rest is let be
    const watcher = new MutationObserver((changes) => {
      for (const { addedNodes, removedNodes, target } of changes) {
        for (const node of addedNodes)
          if (isElement(node)) for (const group of groupsIn(node)) changed.add(group);
        const left = isElement(target) && [...removedNodes].some(isElement) && together(target);
        if (left) changed.add(left);
      }
      if (changed.size === 0) return;
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(() => {
        stops.put(changed);
        changed.clear();
      });
    });
    watcher.observe(page.current, { childList: true, subtree: true });
    return () => {
      watcher.disconnect();
      cancelAnimationFrame(frame);
    };
  }, [page, stops]);
  return stops;
}
