// The lawn: what it grows, learnt from its mowings, and the same as a table.
import { expect, test } from './fixtures';
import { goTo, openSampleAt } from './journeys';

test('a lawn’s growth is told, drawn and listed, and moves when a mowing goes', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Lawn');
  const back = garden.getByRole('region', { name: 'Back lawn' });
  await expect(back.getByText(/^It grows fastest around .* bags a week\./)).toBeVisible();
  await expect(back.getByText(/^Learnt from 9 mowings/)).toBeVisible();
  await back.getByRole('button', { name: 'The same numbers as a table' }).click();
  // 2013 has 53 weeks that begin on 1 January or every seventh day after
  await expect(back.getByRole('row')).toHaveCount(1 + 53);
  await goTo(garden, 'This week');
  await garden
    .getByRole('button', { name: /^Delete the mowing/ })
    .first()
    .click();
  await goTo(garden, 'Lawn');
  await expect(back.getByText(/^Learnt from 8 mowings/)).toBeVisible();
});

test('mowings pasted from a spreadsheet are looked at first, and undone as one', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Lawn');
  await garden.getByRole('button', { name: 'Mowings from a spreadsheet…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Mowings from a spreadsheet' });
  await dialog
    .getByLabel('The cells')
    .fill(
      'Date\tLawn\tBags\n2013-06-02\tFront lawn\t1\n2013-06-09\tFront lawn\t1 1/2\n2013-06-10\tSide lawn\t2\n2013-06-15\tBack lawn\t3',
    );
  // sampleMowings.ts: Back lawn was mown on 15 June
  await expect(
    dialog.getByText('2 of 4 lines can be brought in; 1 is there already; 1 cannot be read.'),
  ).toBeVisible();
  await expect(dialog.getByText(/^There is no lawn called “Side lawn”/)).toBeVisible();
  await dialog.getByRole('button', { name: 'Bring in 2' }).click();
  // the line that was refused stays, under its headings, to be mended
  await expect(dialog).toContainText('Brought in: 2 mowings. Undo takes all of them back.');
  const cells = dialog.getByLabel('The cells');
  await expect(cells).toHaveValue('Date\tLawn\tBags\n2013-06-10\tSide lawn\t2');
  await dialog.getByRole('button', { name: 'Close' }).last().click();
  await expect(dialog).toHaveCount(0);
  const front = garden.getByRole('region', { name: 'Front lawn' });
  await expect(front.getByText(/^Learnt from 1 mowing/)).toBeVisible();
  await garden.keyboard.press('Control+z');
  await expect(front.getByText(/^Nothing is known of this lawn yet/)).toBeVisible();
});

test('how a lawn is kept is asked, shown and undone', async ({ garden }) => {
  await openSampleAt(garden, 'Lawn');
  const back = garden.locator('.thing').filter({ hasText: 'Back lawn' });
  await back.locator('summary').click();
  await expect(back.locator('summary')).toContainText('220 m², ordinary.');
  await back.getByRole('radio', { name: 'every ten days' }).check();
  await back.getByRole('radio', { name: 'full of clover' }).check();
  await expect(back.locator('summary')).toContainText('220 m², clover-rich, mown every ten days.');
  await garden.keyboard.press('Control+z');
  await garden.keyboard.press('Control+z');
  await expect(back.locator('summary')).toContainText('220 m², ordinary.');
  await back.getByRole('radio', { name: 'every two weeks' }).check();
  await back.getByRole('radio', { name: /^it varies/ }).check();
  await expect(back.locator('summary')).toContainText('220 m², ordinary.');
});

test('more that was put on a lawn stands beside what was, with its label’s words', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Lawn');
  const front = garden.locator('details').filter({ hasText: 'Front lawn' }).last();
  await front.locator('summary').first().click();
  await front.getByRole('button', { name: 'Something else was put on it' }).click();
  const asked = garden.getByRole('dialog', { name: 'What else was put on “Front lawn”?' });
  await asked.getByLabel('When?').fill('1 June');
  await asked.getByRole('radio', { name: 'Wait a number of days' }).check();
  await asked.getByLabel('How many days?').fill('some');
  await asked.getByLabel('Its words, if you have them').fill('Keep off food beds.');
  await asked.getByRole('button', { name: 'Keep this answer' }).click();
  await expect(asked.getByRole('alert')).toContainText('such as 28, or 4 weeks');
  await asked.getByLabel('How many days?').fill('4 weeks');
  await asked.getByRole('button', { name: 'Keep this answer' }).click();
  // the earlier one's label forbids, and goes on doing so
  await expect(front.getByText(/wait 28 days, till 29 June.*“Keep off food beds.”/)).toBeVisible();
  const earlier = front.getByRole('list', { name: 'Before that, which holds as well' });
  await expect(earlier).toContainText('the label forbids using clippings');
  await earlier.getByRole('button', { name: /^Take out: Treated on 4 May 2013/ }).click();
  await expect(earlier).toHaveCount(0);
  await garden.getByRole('button', { name: /^Undo/ }).click();
  await expect(earlier).toContainText('the label forbids using clippings');
});
