// What one meets first: the sample, and a garden of one's own from five answers.
import { expect, test } from './fixtures';
import { bedsAreReckoned, goTo, openSample } from './journeys';

test('the sample shows its lesson without a word typed', async ({ garden }) => {
  await openSample(garden);
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

test('a week further on, and back again', async ({ garden }) => {
  await openSample(garden);
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

test('an own garden from typed months', async ({ garden }) => {
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
