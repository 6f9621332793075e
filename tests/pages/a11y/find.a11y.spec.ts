// Any command by typing: by its key or its button, by ear, and back to where one was.
import type { Page } from '@playwright/test';
import { expect, test } from '../fixtures';
import { openReckoned, openSample } from '../journeys';
import { hear, listen } from './heard';
import { Person } from './keys';

const line = (garden: Page) => garden.getByRole('combobox', { name: /^A command, a place/ });
const marked = (garden: Page) => garden.locator('[role=option][aria-selected=true]');
/** What a reader is led to while the line keeps the focus. */
const active = (garden: Page) =>
  garden.evaluate(() => {
    const id = document.activeElement?.getAttribute('aria-activedescendant') ?? '';
    return document.getElementById(id)?.textContent ?? null;
  });

test('from a key to another place, and the list follows the typing', async ({ garden }) => {
  await openSample(garden);
  await garden.keyboard.press('F9');
  await expect(line(garden)).toBeFocused();
  await expect(garden.getByRole('listbox', { name: 'Found' })).toBeVisible();
  await expect(marked(garden)).toHaveText('This week');
  await garden.keyboard.press('ArrowDown');
  expect(await active(garden)).toBe('Beds');
  await garden.keyboard.press('ArrowUp');
  await garden.keyboard.press('ArrowUp');
  // round to the end of the list, which is brought into view
  await expect(marked(garden)).toBeInViewport();
  await expect(marked(garden)).not.toHaveText('This week');

  await listen(garden);
  await garden.keyboard.type('gat be');
  await expect(marked(garden)).toContainText('Gate bed');
  await hear(garden, /found/);
  await garden.keyboard.press('Enter');
  await expect(garden.getByRole('dialog')).toHaveCount(0);
  await expect(garden.getByRole('heading', { name: 'Gate bed', level: 1 })).toBeFocused();
});

test('what is written down on a bed is found with the name of the bed', async ({ garden }) => {
  await openReckoned(garden);
  await garden.keyboard.press('F9');
  await expect(line(garden)).toBeFocused();
  await garden.keyboard.type('rake far');
  await expect(marked(garden)).toContainText('Rake off: Far bed');
  await garden.keyboard.press('Enter');
  await expect(garden.getByRole('dialog', { name: 'Rake cover off Far bed' })).toBeVisible();
});

test('its button opens it, Escape gives the focus back, and nothing was done', async ({
  garden,
}) => {
  await openSample(garden);
  const person = new Person(garden);
  await person.tabTo('button', 'Find');
  await person.press('Enter');
  await expect(line(garden)).toBeFocused();
  await person.type('measure in feet');
  await expect(marked(garden)).toContainText('Measure in feet');
  await person.press('Escape');
  await expect(garden.getByRole('dialog')).toHaveCount(0);
  expect(await person.focused()).toMatchObject({ role: 'button', name: 'Find' });
  await expect(garden.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
});

test('what cannot be had says why, and stays where it is', async ({ garden }) => {
  await openSample(garden);
  await garden.keyboard.press('F9');
  await expect(line(garden)).toBeFocused();
  await garden.keyboard.type('und');
  await expect(marked(garden)).toContainText('not now: nothing to take back');
  await expect(marked(garden)).toHaveAttribute('aria-disabled', 'true');
  await listen(garden);
  await garden.keyboard.press('Enter');
  await hear(garden, 'Undo: not now, nothing to take back.');
  await expect(line(garden)).toBeFocused();
});

test('a setting, a command with a dialog, a row of the tables', async ({ garden }) => {
  await openSample(garden);
  const find = async (words: string) => {
    await garden.keyboard.press('F9');
    await expect(line(garden)).toBeFocused();
    await garden.keyboard.type(words);
    await garden.keyboard.press('Enter');
  };
  await find('feet');
  await expect(garden.getByText('Saturday, June 15, 2013', { exact: true })).toBeVisible();
  await find('save as');
  await expect(garden.getByRole('dialog').getByLabel('Name of the file')).toBeFocused();
  await garden.keyboard.press('Escape');
  await find('wheat straw');
  await expect(garden.getByRole('heading', { name: 'Tables', level: 1 })).toBeVisible();
  await expect(garden.locator('.row-name[aria-expanded=true]')).toBeFocused();
  // from the tables to another row of them
  await find('tomatoes');
  await expect(garden.locator('.row-name[aria-expanded=true]')).toHaveText('Tomatoes');
  await find('log a mow');
  await expect(garden.getByLabel('What came off?')).toBeFocused();
});

test('before any garden is open it finds what there is', async ({ garden }) => {
  await expect(garden.getByRole('button', { name: 'Look round Sorrel Lane' })).toBeVisible();
  await garden.keyboard.press('F9');
  await expect(line(garden)).toBeFocused();
  await garden.keyboard.type('save');
  await expect(marked(garden)).toContainText('not now: no garden is open');
  await garden.keyboard.press('Control+a');
  await garden.keyboard.type('how to read');
  await garden.keyboard.press('Enter');
  await expect(garden.getByRole('dialog', { name: 'How to read this' })).toBeVisible();
});
