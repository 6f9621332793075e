import type { Page } from '@playwright/test';
import { papers } from '../../app/screens/print/papers';
import { expect, test } from './fixtures';
import { bedsAreReckoned, goTo, openReckoned } from './journeys';

/** Pages of a document as Chromium writes it: each has one object of that type. */
const pagesOf = (pdf: Buffer): number =>
  pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0;

/** Texts that reach over the edges of a paper as wide as the window, in the layout of print. */
const overTheEdge = (garden: Page): Promise<readonly string[]> =>
  garden.evaluate(() => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (!node.textContent?.trim() || node.parentElement?.closest('.only-heard')) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const box of range.getClientRects())
        if (box.width > 1 && (box.right > window.innerWidth + 1.5 || box.left < -1.5))
          found.push(node.textContent.trim());
    }
    return found;
  });

test.beforeEach(async ({ garden }) => {
  await garden.addInitScript(() => {
    window.print = () => void document.documentElement.setAttribute('data-printed', 'yes');
  });
  await garden.reload();
  await openReckoned(garden);
});

const prints = (garden: Page) =>
  expect(garden.locator('html')).toHaveAttribute('data-printed', 'yes');

for (const { name, width, height } of papers) {
  // what the shell does for printing does not hang on the paper
  const sides = name === 'A4' ? '' : ' @once';
  test(`every place stays within ${name}, and says nothing against printing it${sides}`, async ({
    garden,
  }) => {
    const screen = garden.viewportSize()!;
    for (const place of ['This week', 'Beds', 'Lawn', 'Tables', 'Garden'] as const) {
      await garden.setViewportSize(screen);
      await goTo(garden, place);
      await expect(garden.getByRole('heading', { name: place, level: 1 })).toBeVisible();
      await garden.locator('html').evaluate((html) => html.removeAttribute('data-printed'));
      await garden.keyboard.press('Control+p');
      await prints(garden);
      await garden.setViewportSize({ width: Math.floor(width), height: Math.floor(height) });
      await garden.emulateMedia({ media: 'print' });
      expect(await overTheEdge(garden), place).toEqual([]);
      await garden.emulateMedia({ media: null });
    }
  });

  test(`each bed has one sheet of ${name}, and no text beyond it${sides}`, async ({ garden }) => {
    await goTo(garden, 'Beds');
    await bedsAreReckonedHere(garden);
    await garden.getByRole('button', { name: 'Sheets for paper…' }).click();
    await expect(garden.locator('.bed-sheet')).toHaveCount(9);
    await garden.keyboard.press('Control+p');
    await prints(garden);
    expect(pagesOf(await garden.pdf({ format: name as 'A4' | 'Letter' }))).toBe(9);
    await garden.setViewportSize({ width: Math.floor(width), height: Math.floor(height) });
    await garden.emulateMedia({ media: 'print' });
    expect(await overTheEdge(garden)).toEqual([]);
    const sheets = await garden
      .locator('.bed-sheet')
      .evaluateAll((all) => all.map((one) => [one.clientHeight, one.scrollHeight] as const));
    for (const [room, used] of sheets) {
      expect(room).toBeLessThanOrEqual(height);
      expect(used).toBeLessThanOrEqual(room + 1);
    }
  });
}

const bedsAreReckonedHere = (garden: Page) =>
  expect(garden.locator('.bed-entry dl')).toHaveCount(9);

test('what is said on the screen is said on paper: figures and names that are buttons @once', async ({
  garden,
}) => {
  await bedsAreReckoned(garden);
  await goTo(garden, 'Tables');
  await garden.emulateMedia({ media: 'print' });
  await expect(garden.locator('.row-name').first()).toBeVisible();
  await garden.emulateMedia({ media: null });
  await goTo(garden, 'Beds');
  await bedsAreReckonedHere(garden);
  await garden.emulateMedia({ media: 'print' });
  await expect(garden.locator('.figure-why').first()).toBeVisible();
  await expect(garden.getByRole('button', { name: 'Choose several…' })).toBeHidden();
});

test('what would be cut off is named before it is printed', async ({ garden }) => {
  await goTo(garden, 'Garden');
  const part = garden.locator('section.section').filter({ has: garden.locator('#garden-beds') });
  await part.evaluate((section) => {
    const wide = document.createElement('p');
    wide.textContent = 'wide '.repeat(100);
    wide.style.whiteSpace = 'nowrap';
    section.append(wide);
  });
  await garden.keyboard.press('Control+p');
  const dialog = garden.getByRole('dialog', { name: 'Not all of it fits on the paper' });
  await expect(dialog.getByRole('listitem')).toHaveText(['Beds and plantings']);
  // it was looked at and put back
  await expect(garden.locator('html')).not.toHaveAttribute('style', /inline-size/);
  await dialog.getByRole('button', { name: 'Print all the same' }).click();
  await prints(garden);
  await expect(dialog).toHaveCount(0);
});
