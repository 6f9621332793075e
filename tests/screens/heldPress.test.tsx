// @vitest-environment happy-dom
// What is wrong with an entry comes and goes below it when it is left, and must not move the button
// that is being pressed: between press and release a click would be lost.
import { act } from 'react';
import { expect, test, vi } from 'vitest';
import { Field, type Trouble } from '../../app/controls/Field';
import { exampleGarden } from '../document/exampleGarden';
import { storeWith } from '../store/surroundings';
import { drawnPage } from './drawnPage';

const page = drawnPage();
const wrong: Trouble = { sentence: 'That is no day.', suggestion: '8 June' };

async function show(trouble: Trouble | null): Promise<void> {
  const { store } = await storeWith(exampleGarden());
  await page.draw(
    store,
    <Field label="When?" trouble={trouble}>
      {(links) => <input {...links} />}
    </Field>,
  );
}
const sentence = () => page.place.querySelector('.field-trouble')?.textContent ?? null;
const isMarked = () => page.place.querySelector('input')!.hasAttribute('aria-invalid');
const pointer = (name: string): Promise<void> =>
  act(async () => {
    document.body.dispatchEvent(new Event(name, { bubbles: true }));
    if (name !== 'pointerdown') await vi.waitFor(() => new Promise((go) => setTimeout(go, 0)));
  });

test('without a press it is there at once, and goes at once', async () => {
  await show(wrong);
  expect(sentence()).toContain('That is no day.');
  await show(null);
  expect(sentence()).toBeNull();
});

test.each(['pointerup', 'pointercancel', 'keydown'])(
  'while something is pressed it waits till %s, marked for readers meanwhile',
  async (end) => {
    await show(null);
    await pointer('pointerdown');
    await show(wrong);
    expect(sentence()).toBeNull();
    expect(isMarked()).toBe(true);
    await pointer(end);
    expect(sentence()).toContain('That is no day.');
    // and what was wrong stays till the next release, too
    await pointer('pointerdown');
    await show(null);
    expect(sentence()).toContain('That is no day.');
    await pointer(end);
    expect(sentence()).toBeNull();
  },
);
