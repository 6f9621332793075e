import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { openSampleAt } from './journeys';

const undo = (garden: Page, step: string) =>
  expect(garden.getByRole('button', { name: `Undo: ${step}` }).first()).toBeVisible();

test.beforeEach(async ({ garden }) => {
  await openSampleAt(garden, 'Beds');
});

test('a bed is split by share, with its plants on one part, and undo makes it whole', async ({
  garden,
}) => {
  await garden.getByRole('button', { name: 'South wall' }).click();
  await garden.getByRole('button', { name: 'Split in two…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Split South wall' });
  await dialog.getByLabel('How much is the first part?').fill('a third');
  // a third of 5.4 m2
  await expect(dialog).toContainText('1.8 m² and 3.6 m².');
  await dialog.getByLabel('The second').fill('South wall, far end');
  await dialog
    .getByRole('radiogroup', { name: /^Basil/ })
    .getByRole('radio', { name: 'on South wall, far end' })
    .check();
  await dialog.getByRole('button', { name: 'Split it' }).click();
  await expect(garden.getByRole('heading', { name: 'South wall', level: 1 })).toBeVisible();
  await expect(garden.getByText(/^Made on Saturday 15 June 2013 of 1\.8 m² of/)).toBeVisible();
  await undo(garden, 'Split South wall');
  await garden.getByRole('button', { name: 'South wall as it was' }).click();
  await expect(
    garden.getByText(/Its ground is now South wall and South wall, far end/),
  ).toBeVisible();
  await expect(garden.locator('.log-entry')).not.toHaveCount(0);
  await garden.keyboard.press('Control+z');
  await expect(garden.getByText(/put away/)).toHaveCount(0);
  await garden.getByRole('button', { name: 'All beds' }).click();
  await expect(garden.getByRole('heading', { name: 'South wall, far end' })).toHaveCount(0);
});

test('where later entries stand in the way of a split, the day that can be taken is one press away', async ({
  garden,
}) => {
  await garden.getByRole('button', { name: 'South wall' }).click();
  await garden.getByRole('button', { name: 'Split in two…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Split South wall' });
  await dialog.getByLabel('On which day?').fill('1 May');
  await dialog.getByLabel('On which day?').blur();
  await dialog.getByRole('button', { name: 'Split it' }).click();
  // sampleMowings.ts: it got grass on 9 June
  await expect(dialog.getByRole('alert')).toContainText('on 9 June');
  await dialog.getByRole('button', { name: 'Take 9 June' }).click();
  await dialog.getByRole('button', { name: 'Split it' }).click();
  await expect(dialog).toHaveCount(0);
  await garden.getByRole('button', { name: 'South wall as it was' }).click();
  await expect(garden.getByText(/^To the evening of Saturday 8 June 2013/)).toBeVisible();
  await expect(garden.getByRole('row', { name: /^left in all/ })).toBeVisible();
});

test('another size holds from its day on, and says what leaves with the ground', async ({
  garden,
}) => {
  await garden.getByRole('button', { name: 'Gate bed' }).click();
  await garden.getByRole('button', { name: 'Another size…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Another size for Gate bed' });
  await dialog.getByLabel(/^New size/).fill('1 x 4 m');
  await expect(dialog).toContainText(
    /About .* of nitrogen ready in the soil leaves with the ground/,
  );
  await dialog.getByRole('button', { name: 'Change its size' }).click();
  await expect(dialog).toHaveCount(0);
  await undo(garden, 'Change the size of Gate bed');
  await expect(garden.getByText('6 m² until 15 June.')).toBeVisible();
});

test('a bed put away is gone from the list, can be read, and comes back', async ({ garden }) => {
  await garden.getByRole('button', { name: 'Choose several…' }).click();
  await garden.getByRole('checkbox', { name: 'Tick Gate bed' }).check();
  await garden.getByRole('button', { name: 'Put away…' }).click();
  await garden
    .getByRole('dialog', { name: 'Put Gate bed away' })
    .getByRole('button', { name: 'Put it away' })
    .click();
  await expect(garden.getByRole('heading', { name: 'Gate bed' })).toHaveCount(0);
  await garden.getByText('Beds put away (1)').click();
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  await expect(garden.locator('.log-entry').first()).toContainText('Clippings');
  await garden.getByRole('button', { name: 'Bring it back' }).click();
  await expect(garden.getByRole('heading', { name: 'How it stands' })).toBeVisible();
  await undo(garden, 'Bring Gate bed back');
});

test('several beds are watered, planted and joined, each in one step', async ({ garden }) => {
  await garden.getByRole('button', { name: 'Choose several…' }).click();
  await garden.getByRole('checkbox', { name: 'Tick Squash hill' }).check();
  await garden.getByRole('checkbox', { name: 'Tick Resting bed' }).check();
  await expect(garden.getByText('2 of 9 beds ticked.')).toBeVisible();
  await garden.getByRole('button', { name: 'Water…' }).click();
  const water = garden.getByRole('dialog', { name: 'Water given to each of 2 beds' });
  await water.getByRole('textbox', { name: /^How much on each/ }).fill('10 mm');
  await expect(water).toContainText('10 mm on each bed.');
  await water.getByRole('button', { name: 'Write it down' }).click();
  await undo(garden, 'Water 2 beds');
  await garden.keyboard.press('Control+z');

  await garden.getByRole('button', { name: 'Sow or plant…' }).click();
  const plant = garden.getByRole('dialog', { name: 'Sow or plant on 2 beds' });
  await plant.getByLabel('Crop').selectOption('Carrots');
  await plant.getByRole('button', { name: 'Add it' }).click();
  await undo(garden, 'Plant carrots on 2 beds');
  await garden.keyboard.press('Control+z');

  await garden.getByRole('button', { name: 'Join into one…' }).click();
  const join = garden.getByRole('dialog', { name: 'Join Squash hill and Resting bed' });
  await join.getByLabel('What is it called?').fill('Hill and rest');
  await join.getByRole('button', { name: 'Join them' }).click();
  await expect(garden.getByRole('heading', { name: 'Hill and rest', level: 1 })).toBeVisible();
  await expect(garden.getByRole('heading', { name: 'How it stands' })).toBeVisible();
  await undo(garden, 'Join Squash hill and Resting bed');
});

test('the same is laid on several beds, looked at bed by bed', async ({ garden }) => {
  await garden.getByRole('button', { name: 'Choose several…' }).click();
  await garden.getByRole('checkbox', { name: 'Tick Far bed' }).check();
  await garden.getByRole('checkbox', { name: 'Tick Resting bed' }).check();
  await garden.getByRole('button', { name: 'Lay on them…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Lay on 2 beds' });
  await dialog.getByLabel('What', { exact: true }).selectOption({ label: 'Wheat straw, in store' });
  await dialog.getByLabel('How much on each bed?').fill('20 L');
  await dialog.getByRole('button', { name: 'Look at it bed by bed' }).click();
  await expect(dialog.locator('.lay-row')).toHaveCount(2);
  await dialog.getByRole('button', { name: 'Lay on these 2' }).click();
  await expect(dialog).toHaveCount(0);
  await undo(garden, 'Lay on 2 beds');
});

test('a season is copied a year on, with what its families want said before', async ({
  garden,
}) => {
  await garden.getByRole('button', { name: 'Copy a season…' }).click();
  const dialog = garden.getByRole('dialog', {
    name: 'Copy a season’s plantings to the year after',
  });
  await dialog.getByLabel('Season').selectOption('2013');
  const tomato = dialog.locator('.copy-row').filter({ hasText: 'Tomatoes' }).first();
  await expect(tomato).toContainText('18 May 2014');
  await expect(tomato).toContainText(/The nightshade family is best away for 3 seasons/);
  await tomato.getByLabel('Bed for tomatoes').selectOption('Resting bed');
  await expect(tomato).not.toContainText('nightshade family');
  const rows = await dialog.locator('.copy-row input:checked').count();
  expect(rows).toBeGreaterThan(2);
  await dialog.getByRole('button', { name: `Copy ${rows}` }).click();
  await expect(dialog).toHaveCount(0);
  await undo(garden, `Copy ${rows} plantings of 2013`);
});
