// The whole Saturday without a pointer: every stop of the Tab key shows where it is.
import type { Page } from '@playwright/test';
import { hear, listen } from './a11y/heard';
import { expect, test } from './fixtures';
import { bedsAreReckoned, openReckoned, openSampleImagined, planIsMade } from './journeys';

interface Stop {
  readonly name: string;
  readonly isMarked: boolean;
  readonly isInSight: boolean;
}

/** Where the focus is: its words, whether a ring is drawn round it, whether any of it can be seen. */
const here = (garden: Page): Promise<Stop> =>
  garden.evaluate(() => {
    const one = document.activeElement as HTMLElement;
    const input = one as HTMLInputElement;
    const name =
      one.getAttribute('aria-label') ??
      (input.labels && input.labels.length > 0
        ? [...input.labels].map((label) => label.textContent).join(' ')
        : one.textContent);
    const ringed = (one.matches('.choice input') ? one.closest('label') : one) as HTMLElement;
    const style = getComputedStyle(ringed);
    // a part of a drawing is ringed by a frame in it
    const frame = one instanceof SVGElement ? one.querySelector(':scope > rect') : null;
    const stroke = frame && getComputedStyle(frame);
    const isFramed =
      stroke !== null && stroke.stroke !== 'none' && Number.parseFloat(stroke.strokeWidth) >= 2;
    const box = ringed.getBoundingClientRect();
    const at = document.elementFromPoint(
      Math.min(innerWidth - 1, Math.max(0, box.x + box.width / 2)),
      Math.min(innerHeight - 1, Math.max(0, box.y + box.height / 2)),
    );
    return {
      name: name.trim().replace(/\s+/g, ' '),
      isMarked:
        isFramed || (style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2),
      isInSight: at !== null && (ringed.contains(at) || at.contains(ringed)),
    };
  });

/** Presses Tab (or Shift+Tab) until the focus is on what is wanted; every stop on the way must show. */
async function tabTo(garden: Page, wanted: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab') {
  for (let press = 0; press < 160; press += 1) {
    await garden.keyboard.press(key);
    const stop = await here(garden);
    expect(stop, `focus on “${stop.name}”`).toMatchObject({ isMarked: true, isInSight: true });
    if (wanted.test(stop.name)) return;
  }
  throw new Error(`${wanted} was not reached by ${key}`);
}

test('from the first page to a laid mowing, by keyboard alone', async ({ garden }) => {
  await expect(garden.getByRole('button', { name: 'Look round Sorrel Lane' })).toBeVisible();
  await tabTo(garden, /^Look round Sorrel Lane$/);
  await garden.keyboard.press('Enter');
  await bedsAreReckoned(garden);
  await expect(garden.getByRole('heading', { level: 1 })).toBeFocused();
  // what comes to stand above pushes a stop out of sight while one looks
  await planIsMade(garden);

  await tabTo(garden, /^Lay some on Far bed$/);
  await garden.keyboard.press('Enter');
  await expect(garden.locator('.lay-row').getByLabel('How much?')).toBeFocused();
  await garden.keyboard.type('1 bag');
  await tabTo(garden, /^just cut/);
  await garden.keyboard.press('ArrowRight');
  await expect(garden.getByRole('radio', { name: /limp/ })).toBeChecked();
  // one is chosen of each question: Tab goes there, arrows move on
  await tabTo(garden, /^(laid on|hoed in|dug in)/);
  await garden.keyboard.press('ArrowDown');
  await garden.keyboard.press('ArrowUp');
  await garden.keyboard.press('ArrowDown');
  await expect(garden.locator('.lay-row').getByRole('radio', { name: 'dug in' })).toBeChecked();
  await tabTo(garden, /^Lay it$/);
  await listen(garden);
  await garden.keyboard.press('Space');
  await hear(garden, 'Laid on Far bed');

  await garden.keyboard.press('Control+z');
  await hear(garden, 'Undone: Lay 1 bag on Far bed.');
  await planIsMade(garden);

  await tabTo(garden, /^Beds$/, 'Shift+Tab');
  await garden.keyboard.press('Enter');
  await tabTo(garden, /^Gate bed$/);
  await garden.keyboard.press('Enter');
  await expect(garden.getByRole('heading', { name: 'Gate bed', level: 1 })).toBeFocused();

  // a day of the chart is chosen with the arrow keys and told
  await expect(garden.getByRole('slider', { name: /^Day in the season/ })).toBeVisible();
  await tabTo(garden, /^Day in the season/);
  const before = await garden
    .getByRole('slider', { name: /^Day in the season/ })
    .getAttribute('aria-valuetext');
  await garden.keyboard.press('ArrowLeft');
  await expect(garden.getByRole('slider', { name: /^Day in the season/ })).not.toHaveAttribute(
    'aria-valuetext',
    before ?? '',
  );

  await tabTo(garden, /^Water…$/);
  await garden.keyboard.press('Enter');
  const dialog = garden.getByRole('dialog', { name: 'Water given to Gate bed' });
  await expect(dialog.getByRole('textbox').first()).toBeFocused();
  await garden.keyboard.type('2 buckets');
  await garden.keyboard.press('Enter');
  await expect(dialog).toHaveCount(0);
  await expect(garden.getByRole('button', { name: 'Water…' })).toBeFocused();
  // two buckets of 10 L on 6 m2 are 3.3 mm: 1 L on 1 m2 is 1 mm
  await expect(garden.getByText('Watered 3.3 mm')).toBeVisible();
});

test('the file menu by arrow keys, closed by Escape', async ({ garden }) => {
  await openReckoned(garden);
  const button = garden.getByRole('button', { name: 'Garden file' });
  await button.focus();
  await garden.keyboard.press('Enter');
  await expect(garden.getByRole('button', { name: /New garden/ })).toBeFocused();
  await garden.keyboard.press('ArrowUp');
  await expect(garden.getByRole('button', { name: 'About Mowings' })).toBeFocused();
  await garden.keyboard.press('Enter');
  await expect(garden.getByRole('dialog', { name: 'About Mowings' })).toBeVisible();
  await garden.keyboard.press('Escape');
  await expect(button).toBeFocused();
  await garden.keyboard.press('Enter');
  await garden.keyboard.press('Escape');
  await expect(garden.getByRole('button', { name: /New garden/ })).toHaveCount(0);
  await expect(button).toBeFocused();
});

test('typing is taken back first, then the garden', async ({ garden }) => {
  await openReckoned(garden);
  await garden.getByRole('button', { name: 'back on the lawn' }).click();
  const line = garden.getByLabel('What came off?');
  await line.pressSequentially('2 bags');
  // unsent words belong to the field: the garden stays as it is
  await garden.keyboard.press('Control+z');
  await expect(garden.getByRole('button', { name: /^Undo: Leave the rest/ })).toBeVisible();
  await line.fill('');
  await garden.keyboard.press('Control+z');
  await expect(garden.getByRole('button', { name: /^Undo/ })).toBeDisabled();
});

test('letters alone do nothing but write', async ({ garden }) => {
  await openSampleImagined(garden);
  const line = garden.getByLabel('What came off?');
  await line.focus();
  await garden.keyboard.type('nospzy');
  await expect(line).toHaveValue('nospzy');
  await expect(garden.getByRole('dialog')).toHaveCount(0);
  await expect(garden.getByRole('button', { name: /^Undo/ })).toBeDisabled();
});

test('keys of the file commands in a dialog do nothing', async ({ garden }) => {
  await openReckoned(garden);
  await garden.getByRole('button', { name: 'Change the answer' }).click();
  await garden.keyboard.press('Control+o');
  await garden.keyboard.press('Control+Shift+S');
  await expect(garden.getByRole('dialog')).toHaveCount(1);
  await expect(garden.getByRole('dialog')).toContainText('Was weedkiller or feed put on');
});
