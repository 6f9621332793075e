// Nothing moves for whoever asked for stillness; and the pages do have motion that could.
import type { Page } from '@playwright/test';
import { expect, test } from '../fixtures';
import { goTo, openSample, openSampleAt, planIsMade, seasonsAreImagined } from '../journeys';
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
  await expect(garden.getByRole('slider', { name: /^Day in the season/ })).toBeVisible();
  // the buttons of what is worth measuring come and go while seasons are imagined
  await seasonsAreImagined(garden);
  await garden.emulateMedia({ reducedMotion: 'no-preference' });
  expect(await movementsOf(garden)).not.toEqual([]);
  await garden.emulateMedia({ reducedMotion: 'reduce' });
  expect(await movementsOf(garden)).toEqual([]);
  await garden.getByRole('slider', { name: /^Day in the season/ }).press('PageDown');
  expect(await garden.evaluate(running)).toEqual([]);
  const smooth = await garden.evaluate(() =>
    [document.documentElement, ...document.querySelectorAll('main *')]
      .filter((element) => getComputedStyle(element).scrollBehavior === 'smooth')
      .map((element) => element.className),
  );
  expect(smooth).toEqual([]);
});

test('in every place, with a question open and on the tour nothing moves', async ({ garden }) => {
  await openSample(garden);
  /** Two pictures of the window, one after the other, are the same: nothing runs by script either. */
  const isStill = async () => {
    await expect(async () => {
      const before = await garden.screenshot();
      expect((await garden.screenshot()).equals(before)).toBe(true);
    }).toPass();
    expect(await garden.evaluate(running)).toEqual([]);
  };
  for (const place of ['This week', 'Season', 'Lawn', 'Tables', 'Garden', 'Beds'] as const) {
    await goTo(garden, place);
    await expect(garden.getByRole('heading', { name: place, level: 1 })).toBeVisible();
    await expect(garden.getByText('One moment…')).toHaveCount(0);
    expect(await movementsOf(garden), place).toEqual([]);
    // what is pressed may start something that is reckoned, and told as it goes
    if (place === 'Beds') await seasonsAreImagined(garden);
    await isStill();
  }
  await garden.keyboard.press('F9');
  await expect(garden.getByRole('listbox', { name: 'Found' })).toBeVisible();
  await isStill();
  await garden.keyboard.press('Escape');
  await garden.getByRole('button', { name: 'Garden file' }).click();
  await garden.getByRole('button', { name: 'Short tour' }).click();
  await expect(garden.getByRole('heading', { name: /stop 1 of/ })).toBeFocused();
  await garden.getByRole('button', { name: 'Next stop' }).click();
  await expect(garden.getByRole('heading', { name: /stop 2 of/ })).toBeFocused();
  await planIsMade(garden);
  await isStill();
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
