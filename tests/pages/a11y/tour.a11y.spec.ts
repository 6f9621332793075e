// The tour comes when it is asked for, leads through the garden that is open, and is left at any time.
import { expect, test } from '../fixtures';
import { goTo, openSample } from '../journeys';
import { tourStops } from '../../../app/words/tourWords';
import { focusFindings, smallTargets } from './inPage';
import { Person } from './keys';

test('from stop to stop by keyboard, each read from its heading and marked on the page', async ({
  garden,
}) => {
  const person = new Person(garden);
  await person.tabTo('button', 'Be shown round');
  await person.press('Enter');
  for (const [at, stop] of tourStops.entries()) {
    const name = `${stop.title} stop ${at + 1} of ${tourStops.length}`;
    await expect.poll(() => person.focused()).toMatchObject({ role: 'heading', name });
    await expect(garden.locator('[data-tour-here]')).toBeInViewport();
    if (at === tourStops.length - 1) break;
    await person.tabTo('button', 'Next stop');
    await person.press('Enter');
  }
  await person.tabTo('button', 'That was all');
  await person.press('Enter');
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeFocused();
  await expect(garden.locator('.tour, [data-tour-here]')).toHaveCount(0);
  // nothing of the garden was changed by it
  await expect(garden.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
});

test('is never shown unasked, is left by Escape, and starts again from the menu', async ({
  garden,
}) => {
  await openSample(garden);
  await expect(garden.locator('.tour')).toHaveCount(0);
  const start = async () => {
    await garden.getByRole('button', { name: 'Garden file' }).click();
    await garden.getByRole('button', { name: 'Short tour' }).click();
    await expect(garden.getByRole('heading', { name: /stop 1 of/ })).toBeFocused();
  };
  await start();
  await garden.keyboard.press('Escape');
  await expect(garden.locator('.tour')).toHaveCount(0);
  await goTo(garden, 'Beds');
  await goTo(garden, 'This week');
  await expect(garden.locator('.tour')).toHaveCount(0);
  await start();
  await garden.getByRole('button', { name: 'Next stop' }).click();
  await expect(garden.getByRole('heading', { name: /stop 2 of/ })).toBeFocused();
});

test('ends with the garden it leads through', async ({ garden }) => {
  await garden.getByRole('button', { name: 'Be shown round' }).click();
  await expect(garden.getByRole('heading', { name: /stop 1 of/ })).toBeFocused();
  await garden.keyboard.press('Control+n');
  await garden.getByRole('button', { name: 'Look round Sorrel Lane' }).click();
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeFocused();
  await expect(garden.locator('.tour')).toHaveCount(0);
});

for (const [width, height] of [
  [1280, 860],
  [320, 256],
] as const)
  test(`hides nothing that is focused behind it, ${width} x ${height}`, async ({ garden }) => {
    await garden.setViewportSize({ width, height });
    await garden.getByRole('button', { name: 'Be shown round' }).click();
    await expect(garden.getByRole('heading', { name: /stop 1 of/ })).toBeFocused();
    expect(await garden.evaluate(smallTargets)).toEqual([]);
    await garden.getByRole('heading', { name: 'This week', level: 1 }).focus();
    const findings: string[] = [];
    for (let press = 0; press < 25; press++) {
      await garden.keyboard.press('Tab');
      findings.push(...(await garden.evaluate(focusFindings)));
    }
    expect(findings).toEqual([]);
  });
