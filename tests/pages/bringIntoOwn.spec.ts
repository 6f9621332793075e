// As somebody new: a garden of one's own, four years of daily weather and a soil test into it.
import { readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { Hands } from './hands';
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
  await expect(garden.getByText('Your record has 1461 days')).toBeVisible();

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

test('somebody new has weather and a soil test in within five minutes', async ({ garden }) => {
  await startOwnGarden(garden);
  const hands = new Hands(garden);
  await hands.press('Garden');
  await expect(garden.getByRole('heading', { name: 'Garden', level: 1 })).toBeVisible();
  // the names of its parts, and the one of them that weather belongs to
  await hands.read(garden.getByRole('navigation', { name: 'Parts of the garden' }));
  await hands.read(garden.getByRole('region', { name: 'Place and units' }));
  await hands.press('Bring measured weather…');
  const bring = garden.getByRole('dialog', { name: 'Bring measured weather' });
  await hands.read(bring);
  await hands.pickFile(bring.getByRole('button', { name: 'Choose a weather file…' }), seattle);
  await expect(bring).toContainText('1,461 new days would be added');
  await hands.read(bring);
  await hands.press('Bring these days in');
  await expect(garden.getByText('Your record has 1461 days')).toBeVisible();

  await hands.press('Beds');
  await hands.read();
  await hands.pressOn(garden.getByRole('button', { name: /By the fence/ }).first());
  // the page is long; its head is read, which names its parts
  const contents = garden.getByRole('navigation', { name: 'On this page' });
  await expect(contents).toBeVisible();
  await hands.read(garden.locator('.page-head'));
  await hands.pressOn(contents.getByRole('link', { name: 'What was done' }));
  await hands.read(garden.getByRole('region', { name: 'What was done' }));
  await hands.press('Soil test…');
  const sheet = garden.getByRole('dialog', { name: /A soil test of/ });
  await hands.read(sheet);
  await hands.fill(sheet.getByLabel('Nitrate-N (mg/kg)'), '14 ppm');
  await hands.fill(sheet.getByLabel('Organic matter (%)'), '3.2');
  await hands.pressOn(sheet.getByRole('button', { name: 'Write it down' }));
  await expect(sheet).toHaveCount(0);
  await expect(garden.getByRole('button', { name: /^Undo: Log a soil test/ })).toBeVisible();
  expect(hands.actions).toBe(14);
  expect(hands.seconds).toBeLessThan(300);
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

test('a file of two stations asks which; what was refused can be read to the last line @once', async ({
  garden,
  folder,
}) => {
  const file = join(folder, 'two.csv');
  const lines = Array.from({ length: 30 }, (_, at) => {
    const day = `2012-01-${String(1 + (at >> 1)).padStart(2, '0')}`;
    // no day of the second was ever that hot
    return `"US${String(at % 2)}","${day}","${at % 2 === 0 ? '100' : '9900'}","20","42"`;
  });
  await writeFile(file, ['"STATION","DATE","TMAX","TMIN","PRCP"', ...lines].join('\n'));
  await startOwnGarden(garden);
  await openBring(garden);
  const dialog = await choose(garden, file);
  await expect(dialog.getByRole('alert')).toContainText('holds 2 stations: US0, US1.');
  await dialog.getByLabel('Which station').selectOption('US0');
  await expect(dialog).toContainText('15 new days would be added');
  await expect(dialog).toContainText('Nothing refused.');
  await dialog.getByLabel('Which station').selectOption('US1');
  await expect(dialog).toContainText('15 refused:');
  await dialog.getByText('The other refused lines').click();
  // line 1 names the columns, and every other line is the other station's
  const last = dialog.getByRole('listitem').last();
  await expect(last).toContainText(/^Line 31, .* highest temperature of 9900 °C cannot be/);
  await expect(dialog.getByRole('listitem')).toHaveCount(5);
  await dialog.getByLabel('Which station').selectOption('US0');
  await dialog.getByRole('button', { name: 'Bring these days in' }).click();
  await expect(garden.getByText('Your record has 15 days')).toBeVisible();
});
