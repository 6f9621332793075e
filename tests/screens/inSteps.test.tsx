// @vitest-environment happy-dom
// A place with many beds stands with what a window holds; the rest follows, and fields come when opened.
import { act } from 'react';
import { expect, test } from 'vitest';
import { success } from '../../app/core/result';
import { Beds } from '../../app/screens/beds/Beds';
import { Thing } from '../../app/screens/garden/Thing';
import { bigGarden } from '../bench/bigGarden';
import { storeWith } from '../store/surroundings';
import { drawnPage } from './drawnPage';

const page = drawnPage();

test('of thirty beds a dozen come first, and then all in the same order', async () => {
  const one = await storeWith(bigGarden({ beds: 30, years: 1, seed: 4 }));
  // what comes with the page comes in one piece; what follows is put into a list that stands
  const followed: Node[] = [];
  const watch = new MutationObserver((changes) => {
    for (const { target, addedNodes } of changes)
      if (target instanceof HTMLUListElement && target.matches('.bed-list'))
        followed.push(...addedNodes);
  });
  watch.observe(page.place, { childList: true, subtree: true });
  await page.draw(one.store, <Beds />);
  await act(async () => undefined);
  watch.disconnect();
  const names = [...page.place.querySelectorAll('.bed-entry h2')].map(
    ({ textContent }) => textContent,
  );
  expect(names).toEqual(Array.from({ length: 30 }, (_, at) => `Bed ${at + 1}`));
  expect(followed).toEqual([...page.place.querySelectorAll('.bed-list > li')].slice(12));
});

test('a thing has its fields once it is opened, by a press or from elsewhere, and keeps them', async () => {
  const one = await storeWith(bigGarden({ beds: 1, years: 1, seed: 4 }));
  const thing = (name: string, startsOpen = false) => (
    <Thing name={name} summary="" startsOpen={startsOpen} onDelete={() => success(null)}>
      <input aria-label={`Field of ${name}`} />
    </Thing>
  );
  await page.draw(
    one.store,
    <>
      {thing('pressed')}
      {thing('brought')}
      {thing('added', true)}
    </>,
  );
  const fields = () =>
    [...page.place.querySelectorAll('input')].map((field) => field.getAttribute('aria-label'));
  expect(fields()).toEqual(['Field of added']);
  const [pressed, brought] = [...page.place.querySelectorAll('details')];
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
