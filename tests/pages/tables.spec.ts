// The tables: found, opened, set right by a laboratory's numbers; and a mixture put together.
import { hear, listen } from './a11y/heard';
import { expect, test } from './fixtures';
import { goTo, openSampleAt } from './journeys';

test('a laboratory’s numbers in place of a row, used wherever the row was', async ({ garden }) => {
  await openSampleAt(garden, 'Tables');
  await listen(garden);
  await garden.getByLabel('Find a material').fill('wheat');
  await hear(garden, ' materials');
  await garden.getByRole('button', { name: 'Wheat straw', exact: true }).click();
  await garden.getByRole('button', { name: 'Make a row of my own from it' }).click();
  await expect(garden.getByRole('button', { name: 'My wheat straw', exact: true })).toBeFocused();
  await garden.getByLabel('Nitrogen (% of dry weight)').fill('9 g/kg');
  await garden.keyboard.press('Tab');
  await expect(garden.getByLabel('Nitrogen (% of dry weight)')).toHaveValue('0.9');
  const own = garden.getByRole('row').filter({ hasText: 'My wheat straw' }).first();
  await expect(own).toContainText('0.9');
  await expect(own).toContainText('yours');
  await garden.getByLabel(/^A loose bucket of it weighs/).fill('500 g');
  await garden.keyboard.press('Tab');
  await expect(garden.getByLabel(/^A loose bucket of it weighs/)).toHaveValue('0.5 kg');
  await garden.getByLabel('Carbon to nitrogen (to 1)').fill('lots');
  await garden.keyboard.press('Tab');
  await expect(garden.getByText('Carbon to nitrogen begins with a number.')).toBeVisible();
  await garden.getByRole('button', { name: 'Use “20 to 1”' }).click();
  await garden.keyboard.press('Tab');
  // straw with 0.9 % nitrogen and 20 to 1 would hold 18 % carbon
  await expect(garden.getByText(/do not fit together/)).toBeVisible();
  await garden.getByRole('button', { name: 'Use it wherever the table’s row is used' }).click();
  await hear(garden, 'My wheat straw now stands in');
  await garden.getByRole('button', { name: 'Delete My wheat straw' }).click();
  await expect(garden.getByText(/It is still used by/)).toBeVisible();
});

test('a laboratory’s numbers of clippings, counted for a lawn’s mowings', async ({ garden }) => {
  await openSampleAt(garden, 'Tables');
  await garden.getByLabel('Find a material').fill('ordinary');
  await garden.getByRole('button', { name: 'Clippings, ordinary lawn' }).click();
  await garden.getByRole('button', { name: 'Make a row of my own from it' }).click();
  await garden.getByLabel('Nitrogen (% of dry weight)').fill('4½');
  await garden.keyboard.press('Tab');
  await expect(garden.getByText('Not used in this garden.')).toBeVisible();
  const counted = garden.getByRole('group', { name: 'Whose clippings are counted by it?' });
  await counted.getByRole('checkbox', { name: 'Back lawn' }).check();
  await expect(
    garden.getByText(/^Rests on clippings, ordinary lawn. Used by \d+ mowings/),
  ).toBeVisible();
  await garden.getByRole('button', { name: 'Delete My clippings, ordinary lawn' }).click();
  await expect(garden.getByText(/It is still used by 1 lawn/)).toBeVisible();
  await goTo(garden, 'Lawn');
  await expect(garden.getByText(/ordinary, counted by My clippings, ordinary lawn/)).toBeVisible();
  await garden.getByRole('button', { name: /^Undo/ }).click();
  await expect(garden.getByText(/counted by My clippings/)).toHaveCount(0);
});

test('a crop of one’s own can be sown', async ({ garden }) => {
  await openSampleAt(garden, 'Tables');
  await garden.getByRole('radio', { name: 'Crops' }).check();
  await garden.getByLabel('Find a crop').fill('toma');
  await garden.getByRole('button', { name: 'Tomatoes', exact: true }).click();
  await garden.getByRole('button', { name: 'Make a row of my own from it' }).click();
  await garden.getByLabel('Days to the first pick').fill('7 weeks');
  await garden.keyboard.press('Tab');
  await expect(garden.getByLabel('Days to the first pick')).toHaveValue('49');
  await garden.getByLabel('Roots reach down').fill('0.4 m');
  await garden.keyboard.press('Tab');
  await garden.getByLabel('Nitrogen it takes up (g/m²)').fill('12½ g/m2');
  await garden.keyboard.press('Tab');
  const own = garden.getByRole('row').filter({ hasText: 'My tomatoes' }).first();
  await expect(own).toContainText('36 to 44'); // 40 cm, a tenth to either side
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Kitchen bed', exact: true }).click();
  await garden.getByRole('button', { name: 'Sow or plant something…' }).click();
  const dialog = garden.getByRole('dialog');
  await dialog.getByLabel('Crop').selectOption('My tomatoes');
  await dialog.getByRole('button', { name: 'Add it' }).click();
  await expect(dialog).toHaveCount(0);
  await expect(garden.getByText('My tomatoes').first()).toBeVisible();
});

test('the numbers of the sums, each with where it is from and how well it is known', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Tables');
  await garden.getByRole('radio', { name: 'The sums' }).check();
  const ofSoil = garden.getByRole('group', { name: /^Soil and water: each number/ });
  const release = ofSoil.getByRole('row', { name: /^Release from the soil’s humus/ });
  await expect(release).toContainText('(0.00003, 0.0001) per day at 15 °C in moist soil');
  await expect(release).toContainText('Hartz TK and others 2000');
  await expect(release).toContainText('Of a loam; clay and lime lie at the low end');
  await expect(ofSoil.getByText(/Our own judgement/).first()).toBeVisible();
});

test('a heap asked for in one sentence says how much, and what cannot be met', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Tables');
  await garden.getByRole('radio', { name: 'A mixture' }).check();
  // 27 is the likely value of planningRows.heapCarbonToNitrogen
  await expect(garden.getByText(/^It comes to 27 of carbon to 1 of nitrogen/)).toBeVisible();
  await expect(garden.getByText(/bags? of autumn leaves, chopped/)).toBeVisible();
  await expect(garden.getByRole('img', { name: /^On a heap a metre each way/ })).toBeVisible();
  await garden.getByLabel('For a heap that').selectOption('just rots, cool and slow');
  await expect(garden.getByText(/^It comes to 40 of carbon to 1 of nitrogen/)).toBeVisible();
  await expect(garden.getByText(/our own estimate, nothing we read/)).toBeVisible();
  await garden.getByText('An exact aim', { exact: true }).click();
  await garden.getByLabel('Carbon to nitrogen (to 1)').fill('90');
  await expect(garden.getByText(/^No amount of autumn leaves, chopped gets there/)).toBeVisible();
  await garden.getByLabel('Carbon to nitrogen (to 1)').fill('25');
  await garden.getByLabel('Water (% of weight)').fill('30');
  await expect(garden.getByText(/^It is too wet by/)).toBeVisible();
  // asked for a part that is of no use, it says so, and a thing alone is told to be alone
  await garden.getByLabel('Carbon to nitrogen (to 1)').fill('');
  await garden.getByLabel('Water (% of weight)').fill('90');
  await expect(
    garden.getByText('None of autumn leaves, chopped is taken: it comes out as wished without it.'),
  ).toBeVisible();
  await garden.getByLabel('Water (% of weight)').fill('30');
  await garden.getByLabel('Carbon to nitrogen (to 1)').fill('25');
  await garden.getByLabel('How much of clippings, ordinary lawn').fill('');
  await expect(garden.getByText('There is nothing in the mixture yet.')).toBeVisible();
  // what was typed is still there after a walk through the window
  await goTo(garden, 'Beds');
  await goTo(garden, 'Tables');
  await expect(garden.getByLabel('Water (% of weight)')).toHaveValue('30');
});

test('from what uses a row to the very entry', async ({ garden }) => {
  await openSampleAt(garden, 'Tables');
  await garden.getByLabel('Find a material').fill('wheat');
  await garden.getByRole('button', { name: 'Wheat straw', exact: true }).click();
  const uses = garden.getByRole('group', { name: 'Go to where it is used' });
  await uses.getByRole('button', { name: /^Wheat straw, kept/ }).click();
  // the store stands open on the Garden page, the keys on its name
  await expect(
    garden.locator('.thing[open] > summary').filter({ hasText: 'Wheat straw' }),
  ).toBeFocused();

  await goTo(garden, 'Tables');
  await uses
    .getByRole('button', { name: /, \d+ layers?$/ })
    .first()
    .click();
  await expect(garden.locator('.log-entry:focus')).toContainText(/wheat straw/i);

  await goTo(garden, 'Tables');
  await garden.getByRole('radio', { name: 'Crops' }).check();
  await garden.getByLabel('Find a crop').fill('toma');
  await garden.getByRole('button', { name: 'Tomatoes', exact: true }).click();
  await uses.getByRole('button', { name: 'South wall, 1 planting' }).click();
  await expect(garden.locator('.log-entry:focus')).toContainText('Tomatoes');
});

test('a row looked for in the whole window is shown, whatever the table was narrowed to', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Tables');
  await garden.getByRole('searchbox', { name: 'Find a material' }).fill('browns');
  await expect(garden.getByRole('button', { name: 'Wheat straw' })).toBeVisible();
  await expect(garden.getByRole('button', { name: 'Blood meal' })).toHaveCount(0);
  await garden.getByRole('button', { name: 'Find' }).click();
  await garden.getByRole('dialog').getByRole('combobox').fill('blood meal');
  await garden.keyboard.press('Enter');
  await expect(garden.getByRole('button', { name: 'Blood meal', expanded: true })).toBeVisible();
  await expect(garden.getByRole('searchbox', { name: 'Find a material' })).toHaveValue('');
});
