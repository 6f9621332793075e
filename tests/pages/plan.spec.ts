// The week's plan: asked for, explained, laid, changed, and worked out anew.
import type { Page } from '@playwright/test';
import { hear, listen } from './a11y/heard';
import { expect, test } from './fixtures';
import { openSample } from './journeys';

const plan = (garden: Page) => garden.getByRole('region', { name: 'What to do this week' });
const line = (garden: Page, bed: string) =>
  plan(garden)
    .getByRole('listitem')
    .filter({ has: garden.getByRole('heading', { name: bed }) });

async function workItOut(garden: Page) {
  await plan(garden).getByRole('button', { name: 'Work out a plan' }).click();
  // the solver is loaded and every bed is run several times over
  await expect(plan(garden).getByRole('heading', { name: 'Lay today' })).toBeVisible({
    timeout: 45_000,
  });
}

test.beforeEach(({ garden }) => openSample(garden));

test('feeds the hungry bed, says why, and is written down as laid in one undoable step', async ({
  garden,
}) => {
  await listen(garden);
  await workItOut(garden);
  await hear(garden, /^The plan is there\. .*Far bed: \d+ .*buckets? of clippings of Back lawn/);
  const far = line(garden, 'Far bed');
  await expect(far).toContainText(/buckets? of clippings of Back lawn, about \d+ mm thick/);
  await expect(far).toContainText(/It is hungry \(short from 28 June\)/);
  await expect(plan(garden).getByText(/Front lawn, today: leave it all lying/)).toBeVisible();
  await far.getByRole('button', { name: 'Laid as planned: Far bed' }).click();
  await hear(garden, 'Laid on Far bed. Undo takes it back.');
  // made anew without what is laid now, and as it was once that is taken back
  await expect(far).toHaveCount(0, { timeout: 45_000 });
  await garden.keyboard.press('Control+z');
  await expect(far).toContainText('7 buckets of clippings', { timeout: 45_000 });
});

test('"nothing here" is kept to, and can be taken back', async ({ garden }) => {
  await workItOut(garden);
  await line(garden, 'Far bed').getByRole('button', { name: 'Nothing here: Far bed' }).click();
  await expect(line(garden, 'Far bed')).toHaveCount(0, { timeout: 45_000 });
  await plan(garden)
    .getByText(/other beds, and the coming weeks/)
    .click();
  await plan(garden).getByRole('button', { name: 'Count Far bed in again' }).click();
  await expect(line(garden, 'Far bed')).toHaveCount(1, { timeout: 45_000 });
});

test('an amount is changed in the form of the clippings in hand', async ({ garden }) => {
  await workItOut(garden);
  await line(garden, 'Far bed').getByRole('button', { name: 'Change the amount: Far bed' }).click();
  const amount = garden.locator('[data-bed="bed-far"] input[type=text]');
  await expect(amount).toHaveValue(/buckets$/);
  await expect(amount).toBeFocused();
});

test('the list to take outside is printed alone', async ({ garden }) => {
  await workItOut(garden);
  await garden.evaluate(() => {
    window.print = () => undefined;
  });
  await plan(garden).getByRole('button', { name: 'Print a list to take outside' }).click();
  await garden.emulateMedia({ media: 'print' });
  await expect(garden.getByRole('heading', { name: /^To take outside, / })).toBeVisible();
  await expect(garden.getByText(/Far bed: .* Laid: _/)).toBeVisible();
  await expect(garden.getByRole('heading', { name: 'What the beds say' })).toBeHidden();
  await expect(garden.getByRole('heading', { name: 'Lay today' })).toBeHidden();
  // once it is printed, the page is printed whole again
  await garden.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await expect(garden.getByRole('heading', { name: 'Lay today' })).toBeVisible();
});

test('it is stopped while it is worked at, and asked for again', async ({ garden }) => {
  // both presses in the page itself: on a fast machine the plan is there before the second one comes
  await plan(garden).evaluate((section) => {
    const press = (words: string) => {
      const found = [...section.querySelectorAll('button')].find(
        ({ textContent }) => textContent === words,
      );
      found?.click();
      return found !== undefined;
    };
    return new Promise<void>((stopped) => {
      new MutationObserver((_changes, watch) => {
        if (!press('Stop')) return;
        watch.disconnect();
        stopped();
      }).observe(section, { childList: true, subtree: true });
      press('Work out a plan');
    });
  });
  await expect(plan(garden).getByRole('button', { name: 'Work out a plan' })).toBeVisible();
  await workItOut(garden);
});
