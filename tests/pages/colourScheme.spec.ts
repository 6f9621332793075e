// Light or dark by one's own choice: worn at once, kept over a start, never on paper.
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';

const paper = (page: Page) => page.evaluate(() => getComputedStyle(document.body).backgroundColor);

async function findAndGo(page: Page, words: string): Promise<void> {
  await page.keyboard.press('F9');
  await expect(page.getByRole('combobox', { name: /A command/ })).toBeFocused();
  await page.keyboard.type(words);
  await expect(page.getByRole('option', { name: /Light or dark/ })).toBeVisible();
  await page.keyboard.press('Enter');
}

test('dark is chosen by key, holds after a start, and leaves paper light', async ({
  garden,
  program,
}) => {
  await garden.emulateMedia({ colorScheme: 'light' });
  const light = await paper(garden);
  await findAndGo(garden, 'night');
  const question = garden.getByRole('dialog', { name: 'Light or dark' });
  await expect(question.getByRole('radio', { name: /As the computer has it/ })).toBeChecked();
  await question.getByRole('radio', { name: /^Dark/ }).press('Space');
  await expect.poll(() => paper(garden)).not.toBe(light);
  const dark = await paper(garden);
  await garden.keyboard.press('Escape');

  await program.restart();
  const again = program.page;
  await expect(again.locator('html')).toHaveAttribute('data-theme', 'dark');
  expect(await paper(again)).toBe(dark);
  await again.emulateMedia({ media: 'print' });
  expect(await again.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe(
    'light',
  );
  await again.emulateMedia({ media: 'screen', colorScheme: 'light' });

  await findAndGo(again, 'light or');
  const system = again.getByRole('radio', { name: /As the computer has it/ });
  await expect(again.getByRole('radio', { name: /^Dark/ })).toBeChecked();
  await system.press('Space');
  await expect.poll(() => paper(again)).toBe(light);
  // and the window goes on following the computer
  await again.emulateMedia({ colorScheme: 'dark' });
  await expect.poll(() => paper(again)).toBe(dark);
});
