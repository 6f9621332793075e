// The cut through a bed: every part says what it is, by pointer, by key and by touch.
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { goTo, openSample, openSampleAt } from './journeys';

async function openSection(garden: Page): Promise<void> {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  await expect(panel(garden, 'Today')).toBeVisible();
  await expect(panel(garden, 'In four weeks')).toBeVisible();
}
const panel = (garden: Page, when: string) =>
  garden.getByRole('listbox', { name: new RegExp(`^Gate bed, ${when}`) });
const tip = (garden: Page) => garden.locator('.section-tip');

/** A part's name and what it says, as the tip tells them. */
const saysOf = async (part: ReturnType<Page['getByRole']>) => {
  const heard = (await part.getAttribute('aria-label')) ?? '';
  const cut = heard.indexOf(': ');
  return { name: heard.slice(0, cut), says: heard.slice(cut + 2) };
};

async function tells(garden: Page, part: ReturnType<Page['getByRole']>): Promise<void> {
  const { name, says } = await saysOf(part);
  expect(name).not.toBe('');
  await expect(tip(garden)).toHaveCount(1);
  await expect(tip(garden).locator('strong')).toHaveText(name);
  await expect(tip(garden).locator('p')).toHaveText(says);
}

test('arrow keys walk from part to part, the tip goes along, Escape puts it away', async ({
  garden,
}) => {
  await openSection(garden);
  const parts = panel(garden, 'Today').getByRole('option');
  const count = await parts.count();
  // plant, six layers, soil and water at the least
  expect(count).toBeGreaterThan(8);
  await expect(tip(garden)).toHaveCount(0);
  // one stop of the Tab key for all of them
  await expect(garden.locator('.section-panels [data-part][tabindex="0"]')).toHaveCount(1);
  await parts.first().focus();
  await tells(garden, parts.first());
  await garden.keyboard.press('ArrowDown');
  await expect(parts.nth(1)).toBeFocused();
  await tells(garden, parts.nth(1));
  await garden.keyboard.press('ArrowUp');
  await expect(parts.first()).toBeFocused();
  await garden.keyboard.press('End');
  await expect(parts.last()).toBeFocused();
  await tells(garden, parts.last());
  // past the end there is nothing
  await garden.keyboard.press('ArrowDown');
  await expect(parts.last()).toBeFocused();
  await garden.keyboard.press('Home');
  await expect(parts.first()).toBeFocused();

  // beside it the same part as it will be
  const { name } = await saysOf(parts.first());
  await garden.keyboard.press('ArrowRight');
  const later = panel(garden, 'In four weeks').getByRole('option').first();
  await expect(later).toBeFocused();
  expect((await saysOf(later)).name).toBe(name);
  await tells(garden, later);
  await garden.keyboard.press('ArrowLeft');
  await expect(parts.first()).toBeFocused();

  await garden.keyboard.press('Escape');
  await expect(tip(garden)).toHaveCount(0);
  await expect(parts.first()).toBeFocused();
  await garden.keyboard.press('ArrowDown');
  await tells(garden, parts.nth(1));
  // Tab leaves them all, and takes the tip along
  await garden.keyboard.press('Tab');
  await expect(garden.locator('[data-part]:focus')).toHaveCount(0);
  await expect(tip(garden)).toHaveCount(0);
});

test('under the pointer a part says what it is; the tip can be pointed at', async ({ garden }) => {
  await openSection(garden);
  const soil = panel(garden, 'Today').getByRole('option', { name: /soil/i }).first();
  await soil.hover();
  await tells(garden, soil);
  await tip(garden).hover();
  await tells(garden, soil);
  await garden.getByRole('heading', { level: 1 }).hover();
  await expect(tip(garden)).toHaveCount(0);
  // what is heard is no other than what is seen
  await soil.hover();
  await tells(garden, soil);
  await garden.keyboard.press('Escape');
  await expect(tip(garden)).toHaveCount(0);
});

test.describe('by touch', () => {
  test.use({ hasTouch: true });
  test('a tap tells and stays, a tap elsewhere puts it away', async ({ garden }) => {
    await openSection(garden);
    const soil = panel(garden, 'Today').getByRole('option', { name: /soil/i }).first();
    await soil.tap();
    await expect(soil).toBeFocused();
    await tells(garden, soil);
    const other = panel(garden, 'In four weeks').getByRole('option', { name: /soil/i }).first();
    // beside the roots, which lie over the middle of it
    await other.tap({ position: { x: 12, y: 60 } });
    await expect(other).toBeFocused();
    await tells(garden, other);
    await garden.getByRole('heading', { level: 1 }).tap();
    await expect(tip(garden)).toHaveCount(0);
  });
});

test('in four weeks as it stands, with the week’s plan, and with a layer that is tried', async ({
  garden,
}) => {
  await openSample(garden);
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Far bed', exact: true }).click();
  const section = garden.getByRole('figure', { name: 'Section of Far bed' });
  const course = (name: string) =>
    section
      .getByRole('group', { name: 'In four weeks', exact: true })
      .getByRole('button', { name, exact: true });
  const ahead = (words: string) =>
    section.getByRole('listbox', { name: `Far bed, In four weeks, 13 July, ${words}:` });
  const layers = (of: ReturnType<typeof ahead>) =>
    of.getByRole('option', { name: /^(?:Clippings|Own garden compost), 15 June/ });

  // nothing lies there now; the plan lays greens and compost, and that is what is shown first
  const planned = ahead('with this week’s plan');
  await expect(planned).toBeVisible();
  await expect(course('With this week’s plan')).toHaveAttribute('aria-pressed', 'true');
  await expect(layers(planned)).toHaveCount(2);
  await course('As it stands').click();
  const stands = ahead('as it stands');
  await expect(stands).toBeVisible();
  await expect(layers(stands)).toHaveCount(0);
  await expect(section.getByText(/^Sweet corn .* no cover;/)).toHaveCount(2);

  const whatIf = garden.getByRole('region', { name: 'What if…' });
  await whatIf.getByRole('button', { name: 'Try a layer' }).click();
  await whatIf.getByLabel('What', { exact: true }).selectOption({ label: 'Wheat straw, in store' });
  await whatIf.getByLabel('How much?').fill('6 kg');
  await course('With alternative 1').click();
  const tried = ahead('with alternative 1 of “What if…”');
  await expect(tried).toBeVisible();
  await expect(tried.getByRole('option', { name: /^Wheat straw/ })).toHaveCount(1);
  await expect(layers(tried)).toHaveCount(0);
});
