// What one meets first: the sample, and a garden of one's own from five answers.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from './fixtures';
import { Hands } from './hands';
import { bedsAreReckoned, goTo, openReckoned, planIsMade, startOwnGarden } from './journeys';

test('the sample shows its lesson without a word typed @once', async ({ garden }) => {
  await openReckoned(garden);
  await expect(garden.getByText('Saturday 15 June 2013', { exact: true })).toBeVisible();
  await expect(garden.getByText('sample, invented')).toBeVisible();

  // what the sample is made to show: the bed nearest the gate first and at a stop, then the hungry one farthest away
  const notices = garden.locator('.notice');
  await expect(notices.first().getByRole('heading')).toHaveText('Gate bed');
  await expect(notices.first().getByText('over-fed', { exact: true })).toBeVisible();
  await expect(notices.first().getByText('stop', { exact: true }).first()).toBeVisible();
  await expect(notices.nth(1).getByRole('heading')).toHaveText('Far bed');
  await expect(notices.nth(1).getByText('short', { exact: true })).toBeVisible();
  await expect(garden.getByRole('heading', { name: /3 bags, damp, from Back lawn/ })).toBeVisible();
  await expect(garden.getByText(/The days ahead are imagined/)).toBeVisible();
});

test('a week further on, and back again @once', async ({ garden }) => {
  await openReckoned(garden);
  await garden.getByRole('button', { name: 'Go on a week' }).click();
  await expect(garden.getByText('Saturday 22 June 2013', { exact: true })).toBeVisible();
  // vega-datasets, New York, June 2013: 3 mm on the 17th, 5 mm on the 18th
  const news = garden.getByRole('region', { name: 'What the week to 22 June brought' });
  await expect(news).toContainText(/Rain: 8\.\d mm on 2 days/);
  await garden.getByRole('button', { name: 'Undo: Go on a week' }).click();
  await expect(news).toHaveCount(0);
  await expect(garden.getByText('Saturday 15 June 2013', { exact: true })).toBeVisible();
  await garden.getByRole('button', { name: 'Redo: Go on a week' }).click();
  await expect(garden.getByText('Saturday 22 June 2013', { exact: true })).toBeVisible();
});

test('an own garden from five answers', async ({ garden, program }) => {
  await garden.getByRole('button', { name: 'Start my garden' }).click();
  await expect(garden.getByRole('heading', { level: 1 })).toHaveText('Your garden in five answers');

  // nothing answered: each open question says what it needs, and the first of them is focused
  await garden.getByRole('radio', { name: 'Metres, kilograms, litres' }).check();
  await garden.getByRole('button', { name: 'Start this garden' }).click();
  const lawn = garden.getByRole('region', { name: 'The lawn' }).getByRole('textbox');
  await expect(lawn).toBeFocused();
  await expect(lawn).toHaveAttribute('aria-invalid', 'true');
  await expect(garden.getByText(/Pick the place whose weather/)).toBeVisible();

  // a slip of the pen comes with a likely value to press
  await lawn.fill('20 x 10 meteres');
  const offer = garden.getByRole('region', { name: 'The lawn' }).getByRole('button');
  await expect(offer).toBeVisible();
  await offer.click();
  await expect(lawn).toBeFocused();
  await expect(lawn).not.toHaveAttribute('aria-invalid');
  await lawn.fill('20 x 10 m');

  await garden.getByRole('textbox', { name: 'How much does a full one hold? (L)' }).fill('50 L');
  const bed = garden.getByRole('region', { name: 'One bed' });
  await bed.getByLabel('What do you call it?').fill('By the fence');
  await bed.getByLabel('How big is it? (m²)').fill('1.2 x 4 m');
  await garden.getByLabel('Crop').selectOption('Climbing beans');
  await garden.getByLabel('When?').fill('3 weeks ago');
  await garden.getByLabel('When?').blur();
  await garden
    .getByLabel('Place with weather most like yours')
    .selectOption({ label: 'New York (Central Park)' });
  await expect(garden.getByText(/Means of 1991-2020/)).toBeVisible();
  await garden.getByRole('button', { name: 'Start this garden' }).click();

  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeVisible();
  await bedsAreReckoned(garden);
  const said = garden.getByRole('region', { name: 'What the beds say' });
  await expect(said.getByText('By the fence').first()).toBeVisible();
  await expect(garden.getByText(/No weather of this season is on record yet/)).toBeVisible();
  await goTo(garden, 'Lawn');
  await expect(garden.getByText('200 m², ordinary.')).toBeVisible();
  await goTo(garden, 'Garden');
  await expect(garden.getByText('4.8 m², loam.')).toBeVisible();
  await expect.poll(() => program.title()).toContain('My garden');
});

test('an own garden from typed months @once', async ({ garden }) => {
  await garden.getByRole('button', { name: 'Start my garden' }).click();
  await garden.getByRole('radio', { name: 'Feet, pounds, gallons' }).check();
  await garden.getByRole('region', { name: 'The lawn' }).getByRole('textbox').fill('1500');
  await garden.getByLabel('How big is it? (sq ft)').nth(1).fill('4 x 8 ft');
  await garden.getByRole('radio', { name: 'I type them' }).check();
  await garden.getByLabel('Latitude (degrees)').fill('45');
  // twelve numbers pasted into January fill the column
  await garden
    .getByLabel('January: Usual lowest of a day (°F)')
    .fill('25 27 33 40 49 58 64 62 54 43 35 28');
  await garden
    .getByLabel('January: Usual highest of a day (°F)')
    .fill('38 42 50 61 71 79 84 83 75 63 52 42');
  await garden.getByLabel('January: Rain of the month (in)').fill('3 3 4 4 4 4 4 4 4 4 3');
  await garden.getByRole('button', { name: 'Start this garden' }).click();
  await expect(garden.getByText('One of the 36 numbers is missing')).toBeVisible();
  await garden.getByLabel('December: Rain of the month (in)').fill('3');
  await garden.getByRole('button', { name: 'Start this garden' }).click();
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeVisible();
  await bedsAreReckoned(garden);
});

test('two beds of one’s own in less than three minutes: Enter after every answer @once', async ({
  garden,
}) => {
  const hands = new Hands(garden);
  await hands.read();
  await hands.press('Start my garden');
  const lawn = garden.getByRole('region', { name: 'The lawn' }).getByRole('textbox');
  await expect(lawn).toBeFocused();
  // the part on the climate comes by itself, and is read as well
  await expect(garden.getByLabel('Place with weather most like yours')).toBeVisible();
  await hands.read();
  await hands.answer('20 x 10 m', true);
  await hands.answer(''); // the usual bag
  const first = garden.getByRole('region', { name: 'One bed' });
  await expect(first.getByLabel('How big is it?')).toBeFocused();
  await hands.answer('1.2 x 4 m', true);
  await hands.answer('Climbing b');
  await expect(garden.getByLabel('Crop')).toHaveValue('snap_bean_pole');
  await hands.say('3 weeks ago');
  await hands.press('Another bed');
  const other = garden.getByRole('region', { name: 'Another bed' });
  await expect(other.getByLabel('How big is it?')).toBeFocused();
  await hands.answer('1 x 3 m', true);
  await hands.answer('Tom');
  await expect(other.getByLabel('Crop')).toHaveValue('tomato');
  await hands.answer('2 weeks ago');
  await expect(garden.getByLabel('Place with weather most like yours')).toBeFocused();
  await hands.answer('New Y');
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeVisible();
  await bedsAreReckoned(garden);
  // the first useful answer: what lies on which bed, and what to do
  await planIsMade(garden);
  const said = garden.getByRole('region', { name: 'What the beds say' });
  await expect(said.getByText('Bed 2').first()).toBeVisible();
  expect(hands.actions).toBe(11);
  // three minutes, when the plan stands
  expect(hands.seconds).toBeLessThan(180);
});

test('the sample and a garden of one’s own know nothing of each other @once', async ({
  garden,
  program,
}) => {
  const sampleNames = /Sorrel Lane|Gate bed|Squash hill|Far bed|Front lawn|sample, invented/;
  const everyPlace = async () => {
    const words: string[] = [];
    for (const place of ['Beds', 'Season', 'Lawn', 'Garden', 'This week'] as const) {
      await goTo(garden, place);
      await expect(garden.getByRole('heading', { name: place, level: 1 })).toBeVisible();
      await expect(garden.getByText('One moment…')).toHaveCount(0);
      words.push(await garden.locator('body').innerText());
    }
    return words.join('\n');
  };
  // something is done to the sample, and thrown away
  await openReckoned(garden);
  await expect(garden.getByText('sample, invented')).toBeVisible();
  await garden.getByRole('button', { name: 'back on the lawn' }).click();
  await garden.keyboard.press('Control+n');
  await garden.getByRole('button', { name: 'Don’t save' }).click();
  await startOwnGarden(garden);
  // nor is what was last said aloud of the sample's beds left behind
  await expect(garden.locator('[data-live="announcements"]')).not.toContainText(sampleNames);
  expect(await everyPlace()).not.toMatch(sampleNames);
  // nor can its steps be taken back into the own garden
  await garden.keyboard.press('Control+z');
  await expect(garden.getByText('sample, invented')).toHaveCount(0);

  await garden.keyboard.press('Control+s');
  await garden.getByLabel('Name of the file').fill('Mine');
  await garden.keyboard.press('Enter');
  await expect(garden.locator('.head-state')).toHaveText('Saved in Mine');
  // no key is heard while a question is still open
  await expect(garden.getByRole('dialog')).toHaveCount(0);
  const file = await readFile(join(program.gardensFolder, 'Mine.mowings'), 'utf8');
  expect(file).not.toMatch(sampleNames);
  expect(file).toContain('By the fence');
  expect(JSON.parse(file)).toMatchObject({ garden: { isSample: false }, beds: [{}] });

  // the sample opened again is as it always was, and belongs to no file
  await garden.keyboard.press('Control+n');
  await openReckoned(garden);
  await expect(garden.locator('.head-state')).toHaveText('No changes yet');
  await expect(garden.getByText('still in hand 3 bags')).toBeVisible();
  expect(await garden.locator('body').innerText()).not.toContain('By the fence');
  await garden.getByRole('button', { name: 'back on the lawn' }).click();
  await garden.keyboard.press('Control+s');
  await expect(garden.getByRole('dialog', { name: 'Save the garden as' })).toBeVisible();
  expect(await readFile(join(program.gardensFolder, 'Mine.mowings'), 'utf8')).toBe(file);
});
