// What the garden is made of: changed in the person's own units, weighed, deleted only when unused.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { hear, listen } from './a11y/heard';
import { expect, test } from './fixtures';
import { openSampleAt } from './journeys';

async function openGarden(garden: Page) {
  await openSampleAt(garden, 'Garden');
}
const thing = (garden: Page, name: string) =>
  garden
    .locator('.thing')
    .filter({ has: garden.locator('.thing-name', { hasText: new RegExp(`^${name}$`) }) });

test('weighing a bag changes past mowings typed in bags, in one step', async ({ garden }) => {
  await openGarden(garden);
  await thing(garden, 'bag').locator('> summary').click();
  await garden.getByRole('button', { name: 'Weigh one bag…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Weigh one bag' });
  await expect(dialog.getByLabel('A full bag weighs (kg)')).toHaveValue('11.3 kg');
  await dialog.getByLabel('A full bag weighs (kg)').fill('30 lb');
  await dialog.getByRole('radio', { name: /dry/ }).check();
  await listen(garden);
  await dialog.getByRole('button', { name: 'Keep this weight' }).click();
  // sampleMowings.ts: ten mowings, all in bags
  await hear(garden, 'weigh something else now: 10 mowings');
  await expect(thing(garden, 'bag')).toContainText('A full one weighed 14 kg');
  await garden.keyboard.press('Control+z');
  await expect(thing(garden, 'bag')).toContainText('A full one weighed 11 kg');
});

test('an area in feet is kept in metres', async ({ garden }) => {
  await openSampleAt(garden, 'Lawn');
  await thing(garden, 'Back lawn').locator('> summary').click();
  const area = thing(garden, 'Back lawn').getByLabel(/How big/);
  await expect(area).toHaveValue('220 m2');
  await area.fill('50 x 40 ft');
  await area.press('Enter');
  // 2000 sq ft x 0.09290304 m2
  await expect(area).toHaveValue('185.81 m2');
  await area.fill('big');
  await area.blur();
  await expect(area).toHaveAttribute('aria-invalid', 'true');
});

test('what is in use says by what, and stays', async ({ garden }) => {
  await openSampleAt(garden, 'Lawn');
  await thing(garden, 'Back lawn').locator('> summary').click();
  await garden.getByRole('button', { name: 'Delete Back lawn' }).click();
  await expect(thing(garden, 'Back lawn').getByRole('alert')).toContainText(
    /still used by 10 mowings/,
  );
});

test('a bed, a lawn and a store are added and taken away', async ({ garden }) => {
  await openGarden(garden);
  await garden.getByRole('button', { name: 'Add a bed…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Add a bed' });
  // nothing is there before name, size and past are said
  await dialog.getByRole('button', { name: 'Add it' }).click();
  await expect(dialog).toContainText('A bed needs a name.');
  await dialog.getByLabel('What is it called?').fill('Corner');
  await dialog.getByLabel(/How big/).fill('2 x 3 m');
  await dialog.getByRole('radio', { name: 'none' }).check();
  await dialog.getByRole('button', { name: 'Add it' }).click();
  await expect(dialog).toHaveCount(0);
  const corner = thing(garden, 'Corner');
  await expect(corner).toHaveAttribute('open', '');
  await expect(corner).toContainText('2 m by 3 m');
  await garden.getByRole('button', { name: 'Delete Corner' }).click();
  await expect(corner).toHaveCount(0);

  await garden.getByRole('button', { name: 'Add something kept' }).click();
  const straw = thing(garden, 'Straw');
  await straw.getByLabel('How much is there?').fill('2 bags');
  await straw.getByLabel('How much is there?').press('Enter');
  await expect(straw.locator('> summary')).toContainText('2 bags on 15 June');
});

test('name, climate and day of the garden', async ({ garden, program }) => {
  await openGarden(garden);
  await garden.getByLabel('Name of the garden').fill('Dock Lane');
  await garden.getByLabel('Name of the garden').press('Enter');
  await expect(garden.locator('.head-garden')).toHaveText('Dock Lane');
  await garden.getByText('Take the months of another place').click();
  await garden
    .getByLabel('Place with weather most like yours')
    .selectOption({ label: 'Calgary, Alberta, Canada' });
  await garden.getByRole('button', { name: 'Take these months' }).click();
  await expect(garden.getByText(/^Usual months: Calgary/)).toBeVisible();
  await expect.poll(() => program.title()).toContain('edited');
});

test('measured weather is understood, settled and brought in as one step', async ({
  garden,
  folder,
}) => {
  await openGarden(garden);
  await expect(garden.getByText('Your record has 532 days')).toBeVisible();
  const file = join(folder, 'station.csv');
  // every day of it can be read as day-month or month-day
  await writeFile(
    file,
    'date,tmin (C),tmax (C),rain (mm)\n01/02/2011,-4,3,0\n02/03/2011,-2,4,6.5\n03/04/2011,0,5,0\n',
  );
  await garden.getByRole('button', { name: 'Bring measured weather…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Bring measured weather' });
  const chooser = garden.waitForEvent('filechooser');
  await dialog.getByRole('button', { name: 'Choose a weather file…' }).click();
  await (await chooser).setFiles(file);
  // what it says is read aloud as well, a moment later
  const found = dialog.getByRole('paragraph').filter({ hasText: '3 days from' });
  await expect(found).toBeVisible();
  await dialog.getByRole('button', { name: 'Bring these days in' }).click();
  await expect(dialog.getByRole('alert')).toContainText('Answer what is asked above first.');
  await dialog.getByRole('radio', { name: 'day first' }).check();
  await expect(found).toContainText('3 days from Tue 1 February 2011 to Sun 3 April 2011');
  await dialog.getByRole('button', { name: 'Bring these days in' }).click();
  await expect(dialog).toHaveCount(0);
  await expect(garden.getByText('Your record has 535 days')).toBeVisible();
  await garden.keyboard.press('Control+z');
  await expect(garden.getByText('Your record has 532 days')).toBeVisible();
});

test('a look at the thermometer is kept, and checked', async ({ garden }) => {
  await openGarden(garden);
  await garden.getByRole('button', { name: 'Look at the thermometer…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'A look at the thermometer' });
  await dialog.getByLabel('Lowest (°C)').fill('70 F');
  await dialog.getByLabel('Highest (°C)').fill('10');
  await dialog.getByRole('button', { name: 'Keep it' }).click();
  await expect(dialog.getByRole('alert')).toContainText('the wrong way round');
  await dialog.getByLabel('Highest (°C)').fill('30');
  await dialog.getByRole('button', { name: 'Keep it' }).click();
  await expect(dialog).toHaveCount(0);
  await expect(garden.getByRole('button', { name: /^Undo: .*thermometer/i })).toBeVisible();
});

test('a temperature or a day that cannot be read is gone to, and nothing is kept in its stead @once', async ({
  garden,
}) => {
  await openGarden(garden);
  const open = garden.getByRole('button', { name: 'Look at the thermometer…' });
  await open.click();
  const dialog = garden.getByRole('dialog', { name: 'A look at the thermometer' });
  const [lowest, highest, when] = [
    dialog.getByLabel('Lowest (°C)'),
    dialog.getByLabel('Highest (°C)'),
    dialog.getByLabel('When?'),
  ];
  const keep = dialog.getByRole('button', { name: 'Keep it' });
  await lowest.fill('chilly');
  await highest.fill('21');
  await highest.blur();
  await keep.press('Enter');
  await expect(lowest).toBeFocused();
  await expect(lowest).toHaveValue('chilly');
  await lowest.fill('8');
  await when.fill('31 June');
  await when.blur();
  await keep.press('Enter');
  await expect(when).toBeFocused();
  await expect(when).toHaveValue('31 June');
  await when.fill('14 June');
  await when.blur();
  await keep.press('Enter');
  await expect(dialog).toHaveCount(0);

  // another day's reading is shown when that day is named, and one half of it is not wiped out
  await open.click();
  await expect(lowest).toHaveValue('');
  await highest.fill('23');
  await when.fill('14 June');
  await when.blur();
  await expect(lowest).toHaveValue('8 °C');
  await expect(highest).toHaveValue('23 °C');
});
