// Water on This week while it is wet: one line, and every bed on request.
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { openReckoned } from './journeys';

const water = (garden: Page) => garden.getByRole('region', { name: 'Water', exact: true });
const isReckoned = (garden: Page) =>
  expect(water(garden)).toHaveAttribute('aria-busy', 'false', { timeout: 120_000 });

test.beforeEach(({ garden }) => openReckoned(garden));

test('in a wet June one line says that nothing is due; every bed is told on request', async ({
  garden,
}) => {
  await isReckoned(garden);
  await expect(water(garden).getByText(/^No bed is due for water within a week\./)).toBeVisible();
  await expect(water(garden).getByText('Gate bed')).toBeHidden();
  await water(garden).getByText('Every bed, what its cover saved').click();
  await expect(water(garden).getByText('Gate bed')).toBeVisible();
  await expect(
    water(garden)
      .getByText(/The soil under what you laid gave off roughly/)
      .first(),
  ).toBeVisible();
  await expect(water(garden).getByText(/^No bed needs water before 29 June/)).toBeVisible();
});
