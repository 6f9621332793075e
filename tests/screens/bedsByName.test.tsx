// @vitest-environment happy-dom
// A long list of beds is looked through by the names of beds and of what stands on them.
import { act } from 'react';
import { expect, test } from 'vitest';
import type { Garden } from '../../app/document/schema';
import { Beds } from '../../app/screens/beds/Beds';
import { bigGarden } from '../bench/bigGarden';
import { storeWith } from '../store/surroundings';
import { drawnPage } from './drawnPage';

const page = drawnPage();

async function show(garden: Garden): Promise<void> {
  const { store } = await storeWith(garden);
  await page.draw(store, <Beds />);
}
const field = () => page.place.querySelector<HTMLInputElement>('[role=searchbox]');
const type = (text: string): Promise<void> =>
  act(async () => {
    const write = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!;
    write.call(field(), text);
    field()!.dispatchEvent(new Event('input', { bubbles: true }));
  });
const names = (): readonly string[] =>
  [...page.place.querySelectorAll('article h2')].map(({ textContent }) => textContent ?? '');
const press = (words: string): Promise<void> =>
  act(async () => {
    const button = [...page.place.querySelectorAll('button')].find(
      ({ textContent }) => textContent === words,
    );
    if (!button) throw new Error(`No button ${words}`);
    button.click();
  });

test('a dozen beds are seen without looking for them, more have a field', async () => {
  await show(bigGarden({ beds: 12, years: 1, seed: 3 }));
  expect(names()).toHaveLength(12);
  expect(field()).toBeNull();
  await page.leave();
  await show(bigGarden({ beds: 25, years: 1, seed: 3 }));
  expect(field()).not.toBeNull();
});

test('by name and by crop, in the order of the walk; emptied, all are there again', async () => {
  await show(bigGarden({ beds: 25, years: 1, seed: 3 }));
  const all = names();
  expect(all).toHaveLength(25);
  await type('bed 17');
  expect(names()).toEqual(['Bed 17']);
  expect(page.place.textContent).toContain('1 of 25 beds.');
  await type('tomato');
  const tomatoes = names();
  expect(tomatoes.length).toBeGreaterThan(1);
  expect(tomatoes.length).toBeLessThan(25);
  expect(tomatoes).toEqual(all.filter((name) => tomatoes.includes(name)));
  await type('');
  expect(names()).toEqual(all);
});

test('what is listed can be ticked together, and stays ticked while others are looked for', async () => {
  await show(bigGarden({ beds: 25, years: 1, seed: 3 }));
  await press('Choose several…');
  await type('bed 17');
  await press('Tick those listed');
  await type('bed 18');
  await press('Tick those listed');
  expect(page.place.textContent).toContain('2 of 25 beds ticked.');
});
