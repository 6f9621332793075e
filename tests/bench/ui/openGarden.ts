import type { Browser, Page } from 'playwright';

/** The program with its garden open and every bed reckoned. */
export async function openGarden(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 860 },
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  await page.goto(address);
  await page.locator('.notice, .quiet').first().waitFor({ timeout: 180_000 });
  return page;
}

export type PlaceName = 'This week' | 'Beds' | 'Season' | 'Lawn' | 'Tables' | 'Garden';

export const place = (page: Page, name: PlaceName): Promise<void> =>
  page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name }).click();

export async function openBedPage(page: Page, bed: string): Promise<void> {
  await place(page, 'Beds');
  await page.getByRole('button', { name: bed, exact: true }).click();
  await page.getByRole('slider', { name: /^Day in the season/ }).waitFor({ timeout: 180_000 });
}
