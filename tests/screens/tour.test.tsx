// @vitest-environment happy-dom
// What a stop of the tour speaks of is marked as long as one stands there, whatever is drawn anew.
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { StoreProvider } from '../../app/screens/store';
import { Tour } from '../../app/screens/tour/Tour';
import type { MowingsState } from '../../app/store/contract';
import { tourStops } from '../../app/words/tourWords';
import { exampleGarden } from '../document/exampleGarden';

const sections = ['plan', 'notices', 'log'];
const page = (title: string, named: readonly string[]): string =>
  `<div class="page"><h1 tabindex="-1">${title}</h1>${named
    .map((name) => `<section aria-labelledby="${name}"><h2 id="${name}">${name}</h2></section>`)
    .join('')}</div>`;

let root: Root;
let main: HTMLElement;
const store = createStore<MowingsState>(
  (write) =>
    ({
      garden: exampleGarden(),
      tourStop: 0,
      openBed: () => undefined,
      goTo: () => undefined,
      goOnTour: (tourStop: number | null) => write({ tourStop }),
    }) as unknown as MowingsState,
);
const drawn = (): Promise<void> =>
  act(async () => {
    for (let frame = 0; frame < 3; frame++)
      await new Promise((resolve) => requestAnimationFrame(resolve));
  });
const marked = (): string[] =>
  [...document.querySelectorAll('[data-tour-here]')].map(
    (one) => one.getAttribute('aria-labelledby') ?? one.textContent,
  );
const stand = async (tourStop: number | null): Promise<void> => {
  await act(async () => store.setState({ tourStop }));
  await drawn();
};
const log = tourStops.findIndex(({ at }) => at.includes('log'));
const beds = tourStops.findIndex(({ place }) => place === 'beds');

beforeEach(async () => {
  vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true);
  document.body.innerHTML = `<main>${page('This week', sections)}</main><aside></aside>`;
  main = document.querySelector('main')!;
  root = createRoot(document.querySelector('aside')!);
  await act(async () =>
    root.render(
      <StoreProvider store={store}>
        <Tour />
      </StoreProvider>,
    ),
  );
});
afterEach(async () => {
  await act(async () => root.unmount());
  vi.unstubAllGlobals();
});

test('the part of the stop one stands at is marked, and no other', async () => {
  await stand(log);
  expect(marked()).toEqual(['log']);
  await stand(0);
  expect(marked()).toEqual(['plan']);
  await stand(null);
  expect(marked()).toEqual([]);
});

test('a part that is drawn anew is marked again', async () => {
  await stand(log);
  const old = document.querySelector('[aria-labelledby="log"]')!;
  const young = old.cloneNode(true) as HTMLElement;
  young.removeAttribute('data-tour-here');
  old.replaceWith(young);
  await drawn();
  expect(marked()).toEqual(['log']);
  expect(young.hasAttribute('data-tour-here')).toBe(true);

  young.removeAttribute('data-tour-here');
  await drawn();
  expect(marked()).toEqual(['log']);
});

test('an element that becomes another part gives the mark up to the one that is meant', async () => {
  await stand(log);
  const [plan, , last] = [...document.querySelectorAll('section')];
  plan!.setAttribute('aria-labelledby', 'log');
  last!.setAttribute('aria-labelledby', 'plan');
  await drawn();
  expect(plan!.hasAttribute('data-tour-here')).toBe(true);
  expect(marked()).toEqual(['log']);
});

test('a place whose code comes late takes the mark over from the word that it is coming', async () => {
  await stand(beds);
  main.innerHTML = page('One moment', []);
  await drawn();
  expect(marked()).toEqual(['One moment']);
  main.innerHTML = page('Beds', []);
  await drawn();
  expect(marked()).toEqual(['Beds']);
});

test('the stop is read at once, its part marked and brought into sight when it comes', async () => {
  main.innerHTML = page('This week', []);
  await stand(log);
  expect(marked()).toEqual([]);
  expect(document.activeElement?.id).toBe('tour-stop');
  const broughtTo = vi.spyOn(HTMLElement.prototype, 'scrollIntoView');
  main.innerHTML = page('This week', sections);
  await drawn();
  expect(marked()).toEqual(['log']);
  main.innerHTML = page('This week', sections);
  await drawn();
  expect(marked()).toEqual(['log']);
  // whoever has scrolled on is not pulled back by a drawing
  expect(broughtTo).toHaveBeenCalledTimes(1);
});

test('left before its part came, it marks nothing more', async () => {
  main.innerHTML = page('This week', []);
  await stand(log);
  await stand(null);
  main.innerHTML = page('This week', sections);
  await drawn();
  expect(marked()).toEqual([]);
});
