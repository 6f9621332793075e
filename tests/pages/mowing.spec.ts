// A Saturday: a mowing is logged, laid, warned about, taken back, saved and opened again.
import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { hear, listen } from './a11y/heard';
import { expect, test } from './fixtures';
import {
  bedsAreReckoned,
  firstLine,
  goTo,
  openReckoned,
  openSample,
  openSampleAt,
} from './journeys';

test('logs a mowing in one line, with its figures at once', async ({ garden }) => {
  await openReckoned(garden);
  const line = garden.getByLabel('What came off?');

  // a wrong entry: a sentence beside the field, tied to it, and a likely value to press
  await line.fill('2 bgas');
  await line.blur();
  await expect(line).toHaveAttribute('aria-invalid', 'true');
  const sentence = garden.locator(
    `[id="${await line.getAttribute('aria-describedby').then((ids) => ids?.split(' ').at(-1))}"]`,
  );
  await expect(sentence).toContainText('bgas');
  await sentence.getByRole('button').click();
  await expect(line).toHaveValue('2 bags');
  await expect(line).not.toHaveAttribute('aria-invalid');

  await line.fill('about 6 kg, soaked, on 14 June');
  await expect(garden.getByRole('radio', { name: /soaked/ })).toBeChecked();
  await expect(garden.getByRole('textbox', { name: 'When?', exact: true })).toHaveValue(
    'Fri 14 June 2013',
  );
  const figures = garden.getByRole('region', { name: 'Mown again?' }).locator('.figure');
  await expect(figures).toHaveCount(3);
  await expect(figures.nth(0)).toContainText('about 6 kg');
  await expect(figures.nth(2)).toContainText(/likely \d+ to \d+ g/);
  await garden.getByRole('region', { name: 'Mown again?' }).getByText('Why these figures').click();
  await expect(
    garden
      .getByRole('region', { name: 'Mown again?' })
      .getByRole('row', { name: /Nitrogen, of dry weight/ }),
  ).toContainText('Rynk');

  await listen(garden);
  await garden.getByRole('button', { name: 'Log this mowing' }).click();
  await hear(garden, 'Logged: about 6 kg from Back lawn');
  const heading = garden.getByRole('heading', { name: 'about 6 kg, soaked, from Back lawn' });
  await expect(heading).toBeVisible();
  await garden.keyboard.press('Control+z');
  await expect(heading).toHaveCount(0);
});

test('lays it on a hungry bed, sees both states before and after', async ({ garden }) => {
  await openSample(garden);
  await garden.getByRole('button', { name: 'Lay some on Far bed' }).click();
  const line = firstLine(garden);
  const amount = line.getByLabel('How much?');
  await expect(amount).toBeFocused();
  // what is advised stands there already, and typing takes its place
  await expect(amount).toHaveValue(/bag/);
  await garden.keyboard.type('1 1/2 bags');
  await expect(amount).toHaveValue('1 1/2 bags');
  const effect = line.getByRole('group', { name: 'What it does to Far bed' });
  const share = effect.getByRole('row', { name: /Share of what it could use/ });
  await line.getByRole('radio', { name: 'laid on' }).check();
  await expect(effect.getByRole('row', { name: /Cover today/ })).toContainText(/bare.*(thin|good)/);
  const laidOn = await share.getByRole('cell').nth(1).textContent();
  await line.getByRole('radio', { name: /hoed in/ }).check();
  await expect(share.getByRole('cell').nth(1)).not.toHaveText(laidOn ?? '');
  // why the corn is given it so: hoed in the same grass gives the corn more than laid on top
  const hoedIn = await share.getByRole('cell').nth(1).textContent();
  expect(Number.parseInt(hoedIn ?? '', 10)).toBeGreaterThan(Number.parseInt(laidOn ?? '', 10));

  await listen(garden);
  await garden.getByRole('button', { name: 'Lay it', exact: true }).click();
  await hear(garden, 'Laid on Far bed');
  await expect(garden.getByText('Still in hand: 1 1/2 bags')).toBeVisible();
  await garden.getByRole('button', { name: 'on Heap' }).click();
  await expect(garden.getByRole('article', { name: 'Today, Back lawn' })).toContainText(
    /Far bed 1 1\/2 bags.*Heap 1 1\/2 bags/,
  );
});

test('a stop takes a second step, and can be undone @once', async ({ garden }) => {
  await openReckoned(garden);
  const line = firstLine(garden);
  await line.getByLabel('On which bed?').selectOption({ label: 'Gate bed (over-fed)' });
  await line.getByLabel('How much?').fill('1 bag');
  await expect(line.getByText('stop', { exact: true }).first()).toBeVisible();
  const lay = garden.getByRole('button', { name: 'Lay it', exact: true });
  await lay.click();

  const dialog = garden.getByRole('dialog', { name: 'Stop: better not on Gate bed' });
  await expect(dialog).toBeVisible();
  await expect(dialog.getByRole('button', { name: 'Go back and change it' })).toBeFocused();
  await garden.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(lay).toBeFocused();

  await lay.click();
  // pressing the second button alone lays nothing: the stops have to be ticked by name
  await dialog.getByRole('button', { name: 'Lay it all the same' }).click({ force: true });
  await expect(dialog.getByText('Not ticked yet: Gate bed.')).toBeVisible();
  await dialog.getByRole('checkbox').check();
  await dialog.getByRole('button', { name: 'Lay it all the same' }).click();
  await expect(garden.getByRole('button', { name: /^Undo: Lay .* on Gate bed$/ })).toBeVisible();
  await expect(garden.getByText('Still in hand: 2 bags')).toBeVisible();

  await garden.keyboard.press('Control+z');
  await expect(garden.getByText('Still in hand: 2 bags')).toHaveCount(0);
  await garden.keyboard.press('Control+Shift+z');
  await expect(garden.getByText('Still in hand: 2 bags')).toBeVisible();
  await garden.keyboard.press('Control+z');
  await garden.keyboard.press('Control+y');
  await expect(garden.getByText('Still in hand: 2 bags')).toBeVisible();

  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  await expect(garden.getByText('Laid in spite of a stop.')).toBeVisible();
  await garden.getByRole('button', { name: 'Delete today: Clippings' }).click();
  await expect(garden.getByText('Laid in spite of a stop.')).toHaveCount(0);
});

test('what was put on a lawn is asked before its first use @once', async ({ garden }) => {
  await openSampleAt(garden, 'Lawn');
  await garden.getByRole('button', { name: 'Add a lawn' }).click();
  await goTo(garden, 'This week');
  await garden.getByLabel('What came off?').fill('2 bags');
  await garden.getByRole('radio', { name: 'Lawn', exact: true }).check();
  await garden.getByRole('button', { name: 'Log this mowing' }).click();
  const sheet = garden.getByRole('article', { name: '2 bags, damp, from Lawn' });
  await sheet.getByLabel('On which bed?').selectOption('Squash hill (about right)');
  await sheet.getByLabel('How much?').fill('half a bag');
  await sheet.getByRole('button', { name: 'Lay it', exact: true }).click();
  const dialog = garden.getByRole('dialog', { name: 'Was weedkiller or feed put on “Lawn”?' });
  await dialog.getByRole('radio', { name: /I don’t know/ }).check();
  await dialog.getByRole('button', { name: 'Keep this answer' }).click();
  // of unknown treatment: not on what is eaten
  await expect(sheet.getByText('stop', { exact: true }).first()).toBeVisible();
});

test('treated grass stops at the card and before the heap; the lawn is free @once', async ({
  garden,
}) => {
  await openReckoned(garden);
  // what is taken as usual is told in a line, and the answers come with it
  await expect(garden.getByText('From Back lawn, damp, today.')).toBeVisible();
  await garden.getByRole('region', { name: 'Mown again?' }).getByText('Change').click();
  await expect(garden.getByRole('radio', { name: 'Back lawn', exact: true })).toBeFocused();
  await garden.getByRole('radio', { name: 'Front lawn', exact: true }).check();
  const line = garden.getByLabel('What came off?');
  await line.fill('2');
  await expect(garden.getByText('Taken as 2 bags.')).toBeVisible();
  await garden.getByRole('button', { name: 'Log this mowing' }).click();
  const sheet = garden.getByRole('article', { name: '2 bags, damp, from Front lawn' });
  // sampleGarden.ts: its label keeps clippings off beds and heaps
  await expect(sheet.locator('.caution-stop').first()).toContainText('the label forbids mulch');
  await expect(sheet.getByText(/Not on the heap/)).toBeVisible();
  await expect(sheet.getByRole('button', { name: 'on Heap' })).toHaveCount(0);

  // of a lawn nobody knows about it takes a second step, and the heap is marked
  await sheet.getByRole('button', { name: 'Change the answer' }).click();
  const question = garden.getByRole('dialog', { name: /Was weedkiller or feed put on/ });
  await question.getByRole('radio', { name: /I don’t know/ }).check();
  await question.getByRole('button', { name: 'Keep this answer' }).click();
  await sheet.getByRole('button', { name: 'on Heap' }).click();
  const stop = garden.getByRole('dialog', { name: 'Stop: better not on Heap' });
  await expect(stop.getByRole('button', { name: 'Go back and change it' })).toBeFocused();
  await garden.keyboard.press('Escape');
  await sheet.getByRole('button', { name: 'back on the lawn' }).click();
  await expect(garden.getByRole('article', { name: 'Today, Front lawn' })).toContainText(
    'left on the lawn 2 bags',
  );
});

test('a deletion shows with the way back beside it; a bed with layers asks first @once', async ({
  garden,
}) => {
  await openReckoned(garden);
  await garden.getByRole('button', { name: 'Delete the mowing of Today, Back lawn' }).click();
  const notice = garden.getByRole('group', { name: 'Deleted' });
  await expect(notice).toContainText('Deleted: a mowing of Back lawn.');
  await notice.getByRole('button', { name: 'Undo this' }).click();
  await expect(notice).toHaveCount(0);
  await expect(garden.getByRole('article', { name: 'Today, Back lawn' })).toBeVisible();

  await goTo(garden, 'Garden');
  await garden.getByText('Gate bed', { exact: true }).click();
  await garden.getByRole('button', { name: 'Delete Gate bed' }).click();
  await expect(garden.getByText(/With it go \d+ layers/)).toBeVisible();
  await garden.getByRole('button', { name: 'Delete Gate bed all the same' }).click();
  await expect(notice).toContainText('Deleted: Gate bed.');
  await goTo(garden, 'This week');
  const past = garden.getByRole('region', { name: 'Mowings so far' });
  await expect(past.getByText(/Gate bed, a bed since deleted/).first()).toBeVisible();
});

test('earlier mowings in one line @once', async ({ garden }) => {
  await openReckoned(garden);
  await garden.getByText('Catch up on earlier mowings in one line').click();
  await garden
    .getByLabel('What was mown before, and where it went')
    .fill('on the tomatoes about a bag a week since 4 May');
  await expect(garden.getByText(/This makes/)).toContainText('7 mowings');
  await expect(garden.getByLabel('Where it went').last()).toHaveValue(/.+/);
  await garden.getByRole('button', { name: 'Keep these 7' }).click();
  await expect(garden.getByRole('button', { name: 'Undo: Add 7 earlier mowings' })).toBeVisible();
});

test('saves to a file, opens it again with everything in it', async ({ garden, program, side }) => {
  await openReckoned(garden);
  await garden.getByLabel('What came off?').fill('45 L');
  await garden.getByRole('button', { name: 'Log this mowing' }).click();
  const file = join(program.gardensFolder, 'June.mowings');
  await listen(garden);
  if (side === 'bridge') program.dialogAnswers.save.push(file);
  await garden.keyboard.press('Control+Shift+S');
  if (side === 'service') {
    const dialog = garden.getByRole('dialog', { name: 'Save the garden as' });
    await expect(dialog).toContainText(program.gardensFolder);
    await dialog.getByLabel('Name of the file').fill('June');
    await dialog.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(dialog).toHaveCount(0);
  }
  await hear(garden, 'Saved as “June”.');
  expect(await readdir(program.gardensFolder)).toEqual(['June.mowings']);
  expect(JSON.parse(await readFile(file, 'utf8'))).toMatchObject({ format: 'mowings-garden' });

  // changed after the save: Ctrl+S goes to the same file without a question
  await garden.getByRole('button', { name: 'back on the lawn' }).first().click();
  await garden.keyboard.press('Control+s');
  await expect(garden.locator('.head-state')).toHaveText('Saved in June');
  expect(await readFile(file, 'utf8')).toContain('45 L');

  await program.restart();
  await garden.getByRole('button', { name: 'June', exact: true }).click();
  await bedsAreReckoned(garden);
  await expect(garden.getByRole('article', { name: 'Today, Back lawn' }).first()).toContainText(
    '45 L, damp',
  );
});
