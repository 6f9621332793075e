// Nothing moves for whoever asked for stillness; and the pages do have motion that could.
import type { Page } from '@playwright/test';
import { expect, test } from '../fixtures';
import { openSample, openSampleAt, seasonsAreImagined } from '../journeys';
import { running } from './inPage';

/** Presses and points at what answers with motion, and tells everything that was seen moving. */
async function movementsOf(garden: Page): Promise<readonly string[]> {
  const seen = new Set<string>();
  const look = async () => {
    for (const each of await garden.evaluate(running)) seen.add(each);
  };
  for (const button of await garden.locator('main button:visible').all()) {
    await button.hover();
    await look();
  }
  for (const more of await garden.locator('main summary:visible').all()) {
    await more.press('Enter');
    await look();
  }
  return [...seen];
}

test('stillness is kept where it was asked for', async ({ garden }) => {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  await expect(garden.getByRole('slider')).toBeVisible();
  // the buttons of what is worth measuring come and go while seasons are imagined
  await seasonsAreImagined(garden);
  await garden.emulateMedia({ reducedMotion: 'no-preference' });
  expect(await movementsOf(garden)).not.toEqual([]);
  await garden.emulateMedia({ reducedMotion: 'reduce' });
  expect(await movementsOf(garden)).toEqual([]);
  await garden.getByRole('slider').press('PageDown');
  expect(await garden.evaluate(running)).toEqual([]);
  const smooth = await garden.evaluate(() =>
    [document.documentElement, ...document.querySelectorAll('main *')]
      .filter((element) => getComputedStyle(element).scrollBehavior === 'smooth')
      .map((element) => element.className),
  );
  expect(smooth).toEqual([]);
});

test('nothing moves by itself', async ({ garden }) => {
  await garden.emulateMedia({ reducedMotion: 'no-preference' });
  const still = async () =>
    garden.evaluate(() =>
      document
        .getAnimations()
        .filter(({ effect }) => effect?.getComputedTiming().endTime === Infinity),
    );
  expect(await still()).toEqual([]);
  await openSample(garden);
  expect(await still()).toEqual([]);
});
