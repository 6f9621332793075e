// Files from a gardener's side: broken, foreign and newer ones, replacing, work brought back.
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test, type Program } from './fixtures';
import { bedsAreReckoned, openReckoned, openSampleAt } from './journeys';

/** Opens a file of this computer, as each side lets a person do it. */
async function openFrom(garden: Page, program: Program, side: string, file: string) {
  if (side === 'bridge') {
    program.dialogAnswers.open.push(file);
    await garden.keyboard.press('Control+o');
    return;
  }
  await garden.keyboard.press('Control+o');
  const dialog = garden.getByRole('dialog', { name: 'Open a garden' });
  const chooser = garden.waitForEvent('filechooser');
  await dialog.getByRole('button', { name: 'Choose a file…' }).click();
  await (await chooser).setFiles(file);
}

const refused = [
  {
    what: 'a broken file',
    text: '{"format": "mowings-garden", "beds": [',
    says: /cut short or damaged/,
  },
  { what: 'a foreign file @once', text: '{"flowers": 3}', says: /is not a garden of Mowings/ },
  {
    what: 'a newer file @once',
    text: '{"format": "mowings-garden", "schemaVersion": 99}',
    says: /newer Mowings \(version 99/,
  },
];

for (const { what, text, says } of refused)
  test(`a file is refused with a sentence and changes nothing: ${what}`, async ({
    garden,
    program,
    side,
    folder,
  }) => {
    await openReckoned(garden);
    const file = join(folder, 'odd.mowings');
    await writeFile(file, text);
    await openFrom(garden, program, side, file);
    const alert = garden.getByRole('alert');
    await expect(alert).toContainText(says);
    await expect(alert).toContainText('Nothing was changed.');
    await expect(garden.getByText('Sorrel Lane').first()).toBeVisible();
    await alert.getByRole('button', { name: 'All right' }).click();
    await expect(alert).toHaveCount(0);
  });

test('a file with a value beyond belief says where @once', async ({
  garden,
  program,
  side,
  folder,
}) => {
  await openReckoned(garden);
  const whole = JSON.parse(
    await readFile(join(import.meta.dirname, '../../assets/gardens/sample.mowings'), 'utf8'),
  ) as { beds: { areaM2: number }[] };
  whole.beds[2]!.areaM2 = -4;
  const file = join(folder, 'odd.mowings');
  await writeFile(file, JSON.stringify(whole));
  await openFrom(garden, program, side, file);
  await expect(garden.getByRole('alert')).toContainText(/The garden cannot be opened: at .*area/);
});

test('changes are asked about before a garden is put away', async ({ garden, program, side }) => {
  await openReckoned(garden);
  await garden.getByRole('button', { name: 'back on the lawn' }).click();
  await garden.keyboard.press('Control+n');
  const dialog = garden.getByRole('dialog', { name: 'Save the changes to Sorrel Lane?' });
  await expect(dialog.getByRole('button', { name: 'Save', exact: true })).toBeFocused();
  await dialog.getByRole('button', { name: 'Cancel' }).click();
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeVisible();

  await garden.keyboard.press('Control+n');
  if (side === 'bridge')
    program.dialogAnswers.save.push(join(program.gardensFolder, 'Kept.mowings'));
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  if (side === 'service') {
    const saveAs = garden.getByRole('dialog', { name: 'Save the garden as' });
    await saveAs.getByLabel('Name of the file').fill('Kept');
    await saveAs.getByRole('button', { name: 'Save', exact: true }).click();
  }
  await expect(garden.getByRole('heading', { name: 'Where should the grass go?' })).toBeVisible();
  await expect(garden.getByRole('button', { name: 'Kept', exact: true })).toBeVisible();

  await openReckoned(garden);
  await garden.getByRole('button', { name: 'back on the lawn' }).click();
  await garden.keyboard.press('Control+n');
  await dialog.getByRole('button', { name: 'Don’t save' }).click();
  await expect(garden.getByRole('heading', { name: 'Where should the grass go?' })).toBeVisible();
});

test('replacing a file of that name is asked', async ({ garden, program, side }) => {
  test.skip(side === 'bridge', 'in Electron the system’s own dialog asks');
  await mkdir(program.gardensFolder, { recursive: true });
  await writeFile(join(program.gardensFolder, 'Taken.mowings'), 'another garden');
  await openReckoned(garden);
  await garden.keyboard.press('Control+Shift+S');
  const dialog = garden.getByRole('dialog', { name: 'Save the garden as' });
  const name = dialog.getByLabel('Name of the file');
  await expect(name).toBeFocused();
  await name.fill('');
  await garden.keyboard.press('Enter');
  await expect(dialog.getByText('A file needs a name.')).toBeVisible();
  await name.fill('Taken');
  await garden.keyboard.press('Enter');
  await expect(dialog.getByRole('alert')).toContainText('already there');
  expect(await readFile(join(program.gardensFolder, 'Taken.mowings'), 'utf8')).toBe(
    'another garden',
  );
  await dialog.getByRole('button', { name: 'Replace “Taken”' }).click();
  await expect(dialog).toHaveCount(0);
  expect(await readFile(join(program.gardensFolder, 'Taken.mowings'), 'utf8')).toContain(
    'mowings-garden',
  );
});

test('unsaved work is brought back when the program ended', async ({ garden, program }) => {
  await openReckoned(garden);
  await garden.getByRole('button', { name: 'back on the lawn' }).click();
  await expect(garden.locator('.head-state')).toHaveText('Changes kept, not yet in a file', {
    timeout: 120_000,
  });
  await program.restart();
  await expect(garden.locator('#place').getByText(/has been brought back/)).toBeVisible();
  await bedsAreReckoned(garden);
  await expect(garden.getByText('left on the lawn 3 bags')).toBeVisible();
  await garden.getByRole('button', { name: 'Close it and start another' }).click();
  await garden.getByRole('button', { name: 'Don’t save' }).click();
  // what was kept of it is thrown away in its turn; ended before that, it would be brought back
  await expect
    .poll(async () =>
      (await readdir(program.dataFolder)).filter((file) => file.startsWith('draft-')),
    )
    .toEqual([]);
  await program.restart();
  await expect(garden.getByRole('heading', { name: 'Where should the grass go?' })).toBeVisible();
});

test('units of the screen go into the file', async ({ garden, program, side }) => {
  await openSampleAt(garden, 'Garden');
  await garden.getByRole('radio', { name: 'feet, pounds, gallons' }).check();
  // Gate bed has 6 m2 of 10.764 sq ft each
  await expect(garden.getByText(/65 sq ft/).first()).toBeVisible();
  const file = join(program.gardensFolder, 'Feet.mowings');
  if (side === 'bridge') program.dialogAnswers.save.push(file);
  await garden.keyboard.press('Control+Shift+S');
  if (side === 'service') {
    await garden.getByLabel('Name of the file').fill('Feet');
    await garden.keyboard.press('Enter');
  }
  await expect(garden.locator('.head-state')).toHaveText('Saved in Feet');
  expect(JSON.parse(await readFile(file, 'utf8'))).toMatchObject({ garden: { shownUnits: 'us' } });
});
