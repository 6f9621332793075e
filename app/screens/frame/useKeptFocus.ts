import { useEffect } from 'react';

/** Where focus may land: what can be used, or a heading that says where one is. */
const landings =
  'h1, h2, h3, h4, button, input, select, textarea, summary, a[href], [tabindex="0"]';

/** An element that held the focused thing, and which of its children that was. */
interface Step {
  readonly holder: Element;
  readonly index: number;
}

const trailOf = (element: Element): readonly Step[] => {
  const steps: Step[] = [];
  for (let child = element; child.parentElement; child = child.parentElement)
    steps.push({
      holder: child.parentElement,
      index: [...child.parentElement.children].indexOf(child),
    });
  return steps;
};

const isLanding = (element: Element): element is HTMLElement =>
  element instanceof HTMLElement &&
  element.matches(landings) &&
  // a figure tells; whoever took something away wants what can be done next
  !element.matches(':disabled, [type=file], .figure-why') &&
  element.checkVisibility();

const firstIn = (element: Element | undefined): HTMLElement | undefined =>
  element && [element, ...element.querySelectorAll(landings)].find(isLanding);

/**
 * The place nearest to something that is gone: what now stands where it stood, what stood before
 * it, and so on outwards. After one button of a row its neighbour before it comes first, so that
 * "Delete" does not slide under the finger. Of a page that was changed as a whole, and for what
 * stood beside the page, its heading.
 */
export function nearestLanding(steps: readonly Step[]): HTMLElement | undefined {
  const [own] = steps;
  for (const step of steps) {
    const { holder, index } = step;
    if (!holder.isConnected) continue;
    const page = holder.id === 'place' ? holder : holder.querySelector('#place');
    if (page) return firstIn(page.querySelector('h1') ?? page);
    const after = holder.children[index];
    const before = holder.children[index - 1];
    for (const near of step === own ? [before, after] : [after, before]) {
      const found = firstIn(near);
      if (found) return found;
    }
  }
  return undefined;
}

/**
 * Whoever works by keyboard must not be thrown back to the top of the page because the button just
 * pressed went away with what it deleted: focus goes to the nearest thing that is left.
 */
export function useKeptFocus(): void {
  useEffect(() => {
    let focused: Element | null = null;
    let steps: readonly Step[] = [];
    let frame = 0;
    const isLost = () =>
      focused !== null &&
      (!focused.isConnected || focused.matches(':disabled')) &&
      (document.activeElement === document.body || document.activeElement === null);
    const restore = () => {
      if (!isLost()) return;
      const modal = [...document.querySelectorAll('dialog[open]')].at(-1);
      const landing = nearestLanding(
        modal ? steps.filter(({ holder }) => modal.contains(holder)) : steps,
      );
      focused = null;
      if (!landing) return;
      if (landing.matches('h1, h2, h3, h4')) landing.tabIndex = -1;
      landing.focus();
    };
    const onFocusIn = (event: FocusEvent) => {
      focused = event.target instanceof Element ? event.target : null;
      steps = focused ? trailOf(focused) : [];
    };
    const onFocusOut = (event: FocusEvent) => {
      if (event.relatedTarget !== null || !document.hasFocus()) return;
      const left = event.target;
      // left on purpose, by a press on an empty place: nothing is to be brought back later
      setTimeout(() => {
        if (focused === left && !isLost() && document.activeElement === document.body)
          focused = null;
      });
    };
    const observer = new MutationObserver(() => {
      if (focused?.isConnected && !focused.matches(':disabled')) {
        steps = trailOf(focused);
        return;
      }
      // whoever took the thing away may put the focus somewhere better first
      cancelAnimationFrame(frame);
      if (isLost()) frame = requestAnimationFrame(restore);
    });
    observer.observe(document.body, {
      childList: true,
      subtree: true,
      attributeFilter: ['disabled'],
    });
    document.addEventListener('focusin', onFocusIn);
    document.addEventListener('focusout', onFocusOut);
    return () => {
      observer.disconnect();
      cancelAnimationFrame(frame);
      document.removeEventListener('focusin', onFocusIn);
      document.removeEventListener('focusout', onFocusOut);
    };
  }, []);
}
