// @vitest-environment happy-dom
// A place with many beds stands with what a window holds; the rest follows, and fields come when opened.
import { act, type ReactNode } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Announcer } from '../../app/controls/Announcer';
import { success } from '../../app/core/result';
import { Beds } from '../../app/screens/beds/Beds';
import { DeskProvider } from '../../app/screens/desk';
import { Thing } from '../../app/screens/garden/Thing';
import { StoreProvider } from '../../app/screens/store';
import { bigGarden } from '../bench/bigGarden';
import { storeWith, type TestStore } from '../store/surroundings';

let root: Root;
let place: HTMLElement;
beforeEach(() => {
  vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true);
  place = document.createElement('div');
  document.body.append(place);
  root = createRoot(place);
});
afterEach(async () => {
  await act(async () => root.unmount());
  place.remove();
  vi.unstubAllGlobals();
});

const within = ({ store }: TestStore, page: ReactNode) => (
  <StoreProvider store={store}>
    <Announcer>
      <DeskProvider>{page}</DeskProvider>
    </Announcer>
  </StoreProvider>
);

test('of thirty beds a dozen come first, and then all in the same order', async () => {
  const one = await storeWith(bigGarden({ beds: 30, years: 1, seed: 4 }));
  // what comes with the page comes in one piece; what follows is put into a list that stands
  const followed: Node[] = [];
  const watch = new MutationObserver((changes) => {
    for (const { target, addedNodes } of changes)
      if (target instanceof HTMLUListElement && target.matches('.bed-list'))
        followed.push(...addedNodes);
  });
  watch.observe(place, { childList: true, subtree: true });
  await act(async () => root.render(within(one, <Beds />)));
  await act(async () => undefined);
  watch.disconnect();
  const names = [...place.querySelectorAll('.bed-entry h2')].map(({ textContent }) => textContent);
  expect(names).toEqual(Array.from({ length: 30 }, (_, at) => `Bed ${at + 1}`));
  expect(followed).toEqual([...place.querySelectorAll('.bed-list > li')].slice(12));
});

test('a thing has its fields once it is opened, by a press or from elsewhere, and keeps them', async () => {
  const one = await storeWith(bigGarden({ beds: 1, years: 1, seed: 4 }));
  const thing = (name: string, startsOpen = false) => (
    <Thing name={name} summary="" startsOpen={startsOpen} onDelete={() => success(null)}>
      <input aria-label={`Field of ${name}`} />
    </Thing>
  );
  await act(async () =>
    root.render(
      within(
        one,
        <>
          {thing('pressed')}
          {thing('brought')}
          {thing('added', true)}
        </>,
      ),
    ),
  );
  const fields = () =>
    [...place.querySelectorAll('input')].map((field) => field.getAttribute('aria-label'));
  expect(fields()).toEqual(['Field of added']);
  const [pressed, brought] = [...place.querySelectorAll('details')];
  await act(async () => pressed!.querySelector('summary')!.click());
  expect(fields()).toContain('Field of pressed');
  await act(async () => {
    brought!.open = true;
    brought!.dispatchEvent(new Event('toggle'));
  });
  expect(fields()).toContain('Field of brought');
  await act(async () => {
    brought!.open = false;
    brought!.dispatchEvent(new Event('toggle'));
  });
  expect(fields()).toHaveLength(3);
});
