// As somebody new: a garden of one's own, four years of daily weather and a soil test into it.
import { readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { goTo, startOwnGarden } from './journeys';

// vega-datasets 3.2.1: Seattle from 2012 to 2015, 1461 days, none missing (its own README and the count of its lines)
const seattle = join(
  import.meta.dirname,
  '../../node_modules/vega-datasets/data/seattle-weather.csv',
);

async function choose(garden: Page, file: string) {
  const dialog = garden.getByRole('dialog', { name: 'Bring measured weather' });
  const chooser = garden.waitForEvent('filechooser');
  await dialog.getByRole('button', { name: 'Choose a weather file…' }).click();
  await (await chooser).setFiles(file);
  return dialog;
}
const openBring = async (garden: Page) => {
  await goTo(garden, 'Garden');
  await garden.getByRole('button', { name: 'Bring measured weather…' }).click();
};

test('four years of weather and a soil test: few steps, nothing before it is accepted, each undone in one', async ({
  garden,
}) => {
  await startOwnGarden(garden);
  await openBring(garden);
  const dialog = await choose(garden, seattle);
  await expect(dialog).toContainText('highest temperature: temp_max (by its heading), °C');
  await expect(dialog).toContainText('1,461 days from Sun 1 January 2012 to Thu 31 December 2015');
  await expect(dialog).toContainText('No gaps.');
  await expect(dialog.getByRole('row', { name: 'Mon 2 January 2012 2.8 10.6 10.9' })).toBeVisible();
  await expect(dialog).toContainText('1,461 new days would be added');
  await expect(garden.getByText(/There is no daily record/)).toBeVisible();
  await dialog.getByRole('button', { name: 'Bring these days in' }).click();
  await expect(garden.getByText('A daily record of 1461 days')).toBeVisible();

  await goTo(garden, 'Beds');
  await garden
    .getByRole('button', { name: /By the fence/ })
    .first()
    .click();
  await garden.getByRole('button', { name: 'Soil test…' }).click();
  const labSheet = garden.getByRole('dialog', { name: /A soil test of/ });
  await labSheet.getByLabel('Nitrate-N (mg/kg)').fill('14 ppm');
  await labSheet.getByLabel('Organic matter (%)').fill('3.2');
  await labSheet.getByRole('button', { name: 'Write it down' }).click();
  await expect(labSheet).toHaveCount(0);
  const undo = garden.getByRole('button', { name: /^Undo: Log a soil test of By the fence/ });
  await undo.click();
  await garden.getByRole('button', { name: /^Undo: Bring 1461 days of weather/ }).click();
  await goTo(garden, 'Garden');
  await expect(garden.getByText(/There is no daily record/)).toBeVisible();
});

test('columns of another tongue are picked, a gap and an impossible value are said', async ({
  garden,
  folder,
}) => {
  const file = join(folder, 'odd.csv');
  const lines = readFileSync(seattle, 'utf8').split('\n');
  lines[0] = 'wann,nass,oben,unten,wind,weather';
  // the fourth day goes, the sixth is made hotter than any place ever was
  lines.splice(4, 1);
  lines[5] = lines[5]!.replace('2012-01-06,2.5,4.4', '2012-01-06,2.5,84.4');
  await writeFile(file, lines.join('\n'));
  await startOwnGarden(garden);
  await openBring(garden);
  const dialog = await choose(garden, file);
  await expect(dialog).toContainText('not found: lowest temperature, highest temperature, rain');
  await dialog.getByRole('button', { name: 'Bring these days in' }).click();
  await expect(dialog.getByRole('alert')).toContainText('Pick their columns above.');
  await dialog.getByLabel('Lowest temperature').selectOption({ label: 'unten (5.0, …)' });
  await dialog.getByLabel('Highest temperature').selectOption({ label: 'oben (12.8, …)' });
  await dialog.getByRole('combobox', { name: 'Rain' }).selectOption({ label: 'nass (0.0, …)' });
  await expect(dialog).toContainText('lowest temperature: unten (as you said)');
  await expect(dialog).toContainText('Wed 4 January 2012: nothing');
  await expect(dialog).toContainText(
    /Fri 6 January 2012: highest temperature of 84.4 °C cannot be/,
  );
  await dialog.getByRole('button', { name: 'Cancel' }).click();
  await expect(garden.getByText(/There is no daily record/)).toBeVisible();
});
