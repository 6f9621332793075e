import { expect, test } from './fixtures';
import { openSampleAt } from './journeys';

test.beforeEach(({ garden }) => openSampleAt(garden, 'Garden'));

test('hay of unknown history is kept apart until beans have shown', async ({ garden }) => {
  await garden.getByRole('button', { name: 'Somebody offers something…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Somebody offers something' });
  await dialog.getByLabel('What is it?').selectOption({ label: 'Grass hay' });
  await dialog.getByLabel('How much?').fill('40 kg');
  await dialog.getByRole('button', { name: 'Weigh it up' }).click();
  await expect(dialog.getByRole('alert')).toContainText('Choose what they say was sprayed');
  await dialog.getByRole('radio', { name: /Nobody knows/ }).check();
  await dialog.getByRole('button', { name: 'Weigh it up' }).click();
  await expect(dialog.getByRole('heading', { name: 'Try it on beans first' })).toBeFocused();
  await expect(dialog.getByRole('row', { name: /Nitrogen in all/ })).toContainText(/about .* g/);
  await expect(dialog.getByText(/once beans have grown straight in it/).first()).toBeVisible();
  await dialog.getByRole('button', { name: 'Keep it apart until tested' }).click();
  await expect(dialog).toHaveCount(0);
  await expect(garden.getByText(/Grass hay: 40 kg/)).toBeVisible();
});

test('what a label forbids is left, and nothing is written down', async ({ garden }) => {
  await garden.getByRole('button', { name: 'Somebody offers something…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Somebody offers something' });
  await dialog.getByLabel('How much?').fill('3 bags');
  await dialog.getByRole('radio', { name: /label forbids/ }).check();
  await dialog.getByRole('button', { name: 'Weigh it up' }).click();
  await expect(dialog.getByRole('heading', { name: 'Leave it' })).toBeFocused();
  await dialog.getByRole('button', { name: 'Leave it' }).click();
  await expect(garden.getByText(/Grass hay: 3 bags/)).toHaveCount(0);
});
