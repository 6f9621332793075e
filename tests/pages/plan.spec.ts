// The week's plan: made by itself, explained, done or not done or done otherwise, and worked out anew.
import type { Page } from '@playwright/test';
import { hear, listen } from './a11y/heard';
import { expect, test } from './fixtures';
import { openSample, planIsMade, weekPlan } from './journeys';

const line = (garden: Page, bed: string) =>
  weekPlan(garden)
    .getByRole('listitem')
    .filter({ has: garden.getByRole('heading', { name: bed }) });

test.beforeEach(({ garden }) => openSample(garden));

test('a mowing of three bags is logged, shared out and accepted in four actions', async ({
  garden,
}) => {
  const plan = weekPlan(garden);
  await listen(garden);
  await garden.getByLabel('What came off?').click();
  await garden.keyboard.type('3 bags');
  await garden.keyboard.press('Enter');
  await hear(garden, 'Logged: 3 bags from Back lawn');
  // the plan answers by itself, and is what one looks at next
  await expect(plan.getByRole('heading', { name: 'What to do this week' })).toBeFocused();
  await planIsMade(garden);
  // two of one lawn and day are told apart
  for (const which of ['first', 'second'])
    await expect(plan.getByText(`Clippings of Back lawn (${which} mowing): `)).toBeVisible();
  await plan.getByRole('button', { name: 'I did all of this' }).click();
  await expect(
    plan.getByText(/^Laid on .*Far bed.* and the rest on Heap with [\d ]+ L of Chopped leaves/),
  ).toBeVisible();
  await planIsMade(garden);
  // every kilogram of both mowings of today ends somewhere, and it is told beside the plan
  await plan.getByText('Where the last week’s mowings went').click();
  const went = plan.getByRole('listitem').filter({ hasText: 'Today, Back lawn' });
  await expect(went).toHaveCount(2);
  await expect(went.filter({ hasText: 'Far bed' })).toContainText(
    /Far bed .* bags.*Heap, with Chopped leaves, .*bag/,
  );
  await expect(plan.getByText(/(bags?|buckets?) in hand/)).toHaveCount(0);
  await expect(garden.getByRole('button', { name: 'Undo: Do what the plan says' })).toBeVisible();
});

test('feeds the hungry bed, says why, and is written down as laid in one undoable step', async ({
  garden,
}) => {
  const far = line(garden, 'Far bed');
  await expect(far).toContainText(/buckets? of clippings of Back lawn, about [\d.]+ mm thick/);
  await expect(far).toContainText(/It is hungry \(short from \d+ June\)/);
  await expect(weekPlan(garden).getByText(/Front lawn, today: leave it all lying/)).toBeVisible();
  await listen(garden);
  await far.getByRole('button', { name: 'Laid as planned: Far bed' }).click();
  await hear(garden, 'Laid on Far bed. Undo takes it back.');
  // made anew without what is laid now, and as it was once that is taken back
  await planIsMade(garden);
  await expect(far).toHaveCount(0);
  await garden.keyboard.press('Control+z');
  await expect(far).toContainText('7 buckets of clippings', { timeout: 120_000 });
});

test('"nothing here" is kept to, is one step to undo, and can be taken back', async ({
  garden,
}) => {
  const far = line(garden, 'Far bed');
  await far.getByRole('button', { name: 'Nothing here: Far bed' }).click();
  await planIsMade(garden);
  await expect(far).toHaveCount(0);
  await garden.getByRole('button', { name: 'Undo: Lay nothing on Far bed' }).click();
  await planIsMade(garden);
  await expect(far).toHaveCount(1);

  await weekPlan(garden).getByRole('button', { name: 'I did none of it' }).click();
  await planIsMade(garden);
  await expect(far).toHaveCount(0);
  await weekPlan(garden)
    .getByText(/other beds, and the coming weeks/)
    .click();
  await weekPlan(garden).getByRole('button', { name: 'Count Far bed in again' }).click();
  await planIsMade(garden);
  await expect(far).toHaveCount(1);
});

test('“exactly this” is kept to, stands beside the plan, and can be taken back', async ({
  garden,
}) => {
  const far = line(garden, 'Far bed');
  await far.getByRole('button', { name: 'Exactly this: Far bed' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Exactly this on Far bed' });
  const grass = dialog.getByLabel('Clippings of Back lawn');
  // the plan's own amounts stand there; a line left empty is the plan's again
  await expect(grass).not.toHaveValue('');
  await expect(dialog.getByLabel('Compost')).not.toHaveValue('');
  await dialog.getByLabel('Compost').fill('');
  // more than there is says so, and changes nothing
  await grass.fill('500 bags');
  await dialog.getByRole('button', { name: 'Keep to this' }).click();
  await expect(
    dialog.getByText('That is more than there is: 13 1/2 buckets.', { exact: true }),
  ).toBeVisible();
  await grass.fill('3 buckets');
  await dialog.getByRole('button', { name: 'Keep to this' }).click();
  await expect(dialog).toHaveCount(0);
  await planIsMade(garden);
  await expect(far).toContainText('3 buckets of clippings of Back lawn');
  const free = weekPlan(garden).getByRole('button', { name: /^Let the plan choose: Far bed/ });
  await free.click();
  await planIsMade(garden);
  await expect(free).toHaveCount(0);
  await expect(far).not.toContainText('3 buckets of clippings of Back lawn');
});

test('what was laid otherwise is typed over the plan’s own amounts', async ({ garden }) => {
  await line(garden, 'Far bed').getByRole('button', { name: 'Something else: Far bed' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Something else than on Far bed' });
  const [grass, leaves] = [dialog.locator('.lay-row').first(), dialog.locator('.lay-row').nth(1)];
  await expect(grass.getByLabel('How much?', { exact: true })).toHaveValue('7 buckets');
  await leaves.getByRole('button', { name: 'Drop this line' }).click();
  await grass.getByLabel('On which bed?').selectOption('bed-squash');
  await grass.getByLabel('How much?', { exact: true }).fill('2 buckets');
  await dialog.getByRole('button', { name: 'Lay it', exact: true }).click();
  await expect(dialog).toHaveCount(0);
  await expect(garden.getByRole('button', { name: /^Undo: Lay .*on Squash hill$/ })).toBeVisible();
  await planIsMade(garden);
  // the bed that got nothing is left out this week, in the same step
  await expect(line(garden, 'Far bed')).toHaveCount(0);
  await garden.keyboard.press('Control+z');
  await planIsMade(garden);
  await expect(line(garden, 'Far bed')).toHaveCount(1);
});

test('the list to take outside is printed alone', async ({ garden }) => {
  await garden.evaluate(() => {
    window.print = () => undefined;
  });
  await weekPlan(garden).getByRole('button', { name: 'Print a list to take outside' }).click();
  await garden.emulateMedia({ media: 'print' });
  await expect(garden.getByRole('heading', { name: /^To take outside, / })).toBeVisible();
  await expect(
    garden.getByRole('row', { name: /Far bed: .* laid on\. Room to write what was done/ }).first(),
  ).toBeVisible();
  // the rest has its line too
  await expect(garden.getByRole('row', { name: /Put on Heap with .* the rest/ })).toBeVisible();
  await expect(garden.getByRole('heading', { name: 'What the beds say' })).toBeHidden();
  await expect(garden.getByRole('heading', { name: 'Lay today' })).toBeHidden();
  // once it is printed, the page is printed whole again
  await garden.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await expect(garden.getByRole('heading', { name: 'Lay today' })).toBeVisible();
});

test('it is stopped while it is worked at, and asked for again', async ({ garden }) => {
  // both presses in the page itself: on a fast machine the plan is there before the second one comes
  await weekPlan(garden).evaluate((section) => {
    const stop = () =>
      [...section.querySelectorAll('button')].find(({ textContent }) => textContent === 'Stop');
    return new Promise<void>((stopped) => {
      new MutationObserver((_changes, watch) => {
        const found = stop();
        if (!found) return;
        watch.disconnect();
        found.click();
        stopped();
      }).observe(section, { childList: true, subtree: true });
      section.querySelector<HTMLElement>('[aria-label="Nothing here: Far bed"]')?.click();
    });
  });
  const again = weekPlan(garden).getByRole('button', { name: 'Work it out anew' });
  await expect(again).toBeVisible();
  await expect(
    weekPlan(garden).getByText('This plan is of before your last change.'),
  ).toBeVisible();
  await again.click();
  await planIsMade(garden);
  await expect(line(garden, 'Far bed')).toHaveCount(0);
});
