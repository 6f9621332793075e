import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { papers } from '../../app/screens/print/papers';
import { expect, test } from './fixtures';
import { bedsAreReckoned, goTo, openReckoned } from './journeys';
import { greyContrast, readPaper, type PrintedPaper } from './onPaper';

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

/** `@page` of the styles: 15 mm on all sides, in points. */
const margin = (15 * 72) / 25.4;
/** Letters on paper are no smaller than this [pt]; the heading of a place is so tall unless all was scaled. */
const smallest = 8;
const heading = 20;
const sheetHeading = 14;
/** WCAG 2, text of this size. */
const leastContrast = 4.5;

/** Held against the document itself: no letter over the margins, none made smaller, all of it dark enough in grey. */
function isWhole({ width, height, texts, inks }: PrintedPaper, what: string, tallest = heading) {
  expect(texts.length, what).toBeGreaterThan(20);
  const over = texts.filter(
    ({ left, right, top, bottom }) =>
      left < margin - 1.5 ||
      right > width - margin + 1.5 ||
      bottom < margin - 6 ||
      top > height - margin + 6,
  );
  expect(over, what).toEqual([]);
  const sizes = texts.map(({ size }) => size);
  expect(Math.min(...sizes), what).toBeGreaterThanOrEqual(smallest);
  expect(Math.max(...sizes), what).toBeCloseTo(tallest, 0);
  for (const { rgb, sample } of inks.values())
    expect(greyContrast(rgb), `${what}: ${sample}`).toBeGreaterThanOrEqual(leastContrast);
}

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
    for (const place of ['This week', 'Beds', 'Season', 'Lawn', 'Tables', 'Garden'] as const) {
      await garden.setViewportSize(screen);
      await goTo(garden, place);
      await expect(garden.getByRole('heading', { name: place, level: 1 })).toBeVisible();
      // its heading is there before its code
      await expect(garden.getByText('One moment…')).toHaveCount(0);
      await garden.locator('html').evaluate((html) => html.removeAttribute('data-printed'));
      await garden.keyboard.press('Control+p');
      await prints(garden);
      isWhole(await readPaper(await garden.pdf({ format: name as 'A4' | 'Letter' })), place);
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
    const paper = await readPaper(await garden.pdf({ format: name as 'A4' | 'Letter' }));
    expect(paper.pages).toBe(9);
    isWhole(paper, 'bed sheets', sheetHeading);
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

test('a bed’s page is printed without a question, its season whole on one sheet @once', async ({
  garden,
}) => {
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'South wall', exact: true }).click();
  // two plantings, each on a row of its own
  const season = garden.getByRole('region', { name: 'Its season' });
  await expect(season.locator('svg.chart-drawing').first()).toBeVisible();
  await garden.keyboard.press('Control+p');
  await prints(garden);
  await expect(garden.getByRole('dialog')).toHaveCount(0);
});

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

test('what is folded for want of room on the screen is said on paper @once', async ({
  garden,
  program,
  folder,
}) => {
  // from more beds than a dozen on (app/charts/strips/layout.ts): the sample with some more of them
  const text = await readFile(
    join(import.meta.dirname, '../../assets/gardens/sample.mowings'),
    'utf8',
  );
  const many = JSON.parse(text) as { garden: { isSample: boolean }; beds: { id: string }[] };
  many.garden.isSample = false;
  const first = many.beds[0]!;
  for (let more = 0; more < 6; more += 1)
    many.beds.push({ ...first, id: `more-${String(more)}`, name: `More ${String(more)}` } as never);
  const file = join(folder, 'many.mowings');
  await writeFile(file, JSON.stringify(many));
  await program.restart(file);
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeVisible();
  await goTo(garden, 'Season');
  const remark = garden
    .locator('.strip-troubles')
    .filter({ hasText: 'Sweet corn after its own family' });
  const fold = garden.locator('summary').filter({ hasText: /remarks? on Far bed/ });
  await expect(fold).toBeVisible();
  await expect(remark).toBeHidden();
  await garden.emulateMedia({ media: 'print' });
  await expect(remark).toBeVisible();
  await expect(fold).toBeHidden();
});
