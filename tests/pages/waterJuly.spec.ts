// Water on This week: in the hot July of the record, how many cans.
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { openReckoned } from './journeys';

const water = (garden: Page) => garden.getByRole('region', { name: 'Water', exact: true });
const isReckoned = (garden: Page) =>
  expect(water(garden)).toHaveAttribute('aria-busy', 'false', { timeout: 120_000 });

async function goOnTo(garden: Page, days: readonly string[]) {
  for (const day of days) {
    await garden.getByRole('button', { name: 'Go on a week', exact: true }).click();
    await expect(garden.locator('.lead').getByText(day)).toBeVisible();
    await isReckoned(garden);
  }
}

test.beforeEach(({ garden }) => openReckoned(garden));

test('in a hot July beds are due, in cans; what is watered is written down and can be undone', async ({
  garden,
}) => {
  await goOnTo(garden, ['22 June', '29 June', '6 July', '13 July', '20 July']);
  const due = water(garden).getByRole('listitem').filter({ hasText: 'South wall: due today' });
  await expect(due.first()).toContainText(/ mm, \d+ cans of 10 L/);
  await water(garden).getByText('Every bed, what its cover saved').click();
  await expect(
    water(garden).getByText(/South wall: water it to the full before you leave/),
  ).toBeVisible();
  await water(garden).getByRole('button', { name: 'Watered so much: South wall' }).click();
  await expect(due).toHaveCount(0, { timeout: 120_000 });
  await garden.keyboard.press('Control+z');
  await expect(due.first()).toBeVisible({ timeout: 120_000 });
});
