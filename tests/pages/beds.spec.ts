// A bed opened: its figures, and everything that can be written down, changed and taken back on it.
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { goTo, openSampleAt, seasonsAreImagined } from './journeys';

async function openBed(garden: Page, name: string) {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name, exact: true }).click();
  await expect(garden.getByRole('heading', { name, level: 1 })).toBeFocused();
  await expect(garden.getByRole('slider', { name: /^Day in the season/ })).toBeVisible();
}
const log = (garden: Page) => garden.getByRole('region', { name: 'What was done' });

test('beds from the gate outwards, both states in words', async ({ garden }) => {
  await openSampleAt(garden, 'Beds');
  const names = garden.locator('.bed-entry h2');
  await expect(names).toHaveCount(9);
  await expect(names.first()).toHaveText('Gate bed');
  await expect(names.last()).toHaveText('Far bed');
  const gate = garden.getByRole('article', { name: 'Gate bed' });
  await expect(gate.getByText('over-fed', { exact: true })).toBeVisible();
  await expect(gate.getByText('good', { exact: true })).toBeVisible();
  await expect(gate).toContainText('past 1.5 is the stop: it grows tops in place of roots.');
  await expect(garden.getByRole('article', { name: 'Far bed' })).toContainText('bare');
});

test('a bed’s page names its parts and leads to every one of them', async ({ garden }) => {
  await openBed(garden, 'Gate bed');
  const contents = garden.getByRole('navigation', { name: 'On this page' });
  await expect(contents.getByRole('link', { name: 'How sure that is' })).toBeVisible();
  const titles = await contents.getByRole('link').allTextContents();
  expect(titles.length).toBeGreaterThan(6);
  for (const name of titles) {
    await contents.getByRole('link', { name }).press('Enter');
    const heading = garden.getByRole('heading', { level: 2, name });
    await expect(heading).toBeFocused();
    await expect(heading).toBeInViewport();
  }
});

test('a bed shows season, cover and a ledger that balances', async ({ garden }) => {
  await openBed(garden, 'Gate bed');
  await expect(garden.getByRole('figure', { name: 'Season of Gate bed' })).toBeVisible();
  await expect(garden.getByRole('figure', { name: /Cover on Gate bed/ })).toBeVisible();
  await expect(garden.getByText(/come out the same: no gram is missing/)).toBeVisible();
  // sampleMowings.ts: six layings, six and a half bags in all
  await expect(log(garden).locator('.log-entry', { hasText: 'Clippings' })).toHaveCount(6);
});

test('rain, water, harvest, tests, raking and digging are written down and undone', async ({
  garden,
}) => {
  await openBed(garden, 'South wall');
  const write = async (
    button: string,
    fill: (dialog: ReturnType<Page['getByRole']>) => Promise<void>,
  ) => {
    await garden.getByRole('button', { name: `${button}…`, exact: true }).click();
    const dialog = garden.getByRole('dialog');
    await fill(dialog);
    await dialog.getByRole('button', { name: 'Write it down' }).click();
    await expect(dialog).toHaveCount(0);
  };
  await write('Water', async (dialog) => dialog.getByRole('textbox').first().fill('54 L'));
  // 54 L on 5.4 m2 are 10 mm: 1 L on 1 m2 is 1 mm
  await expect(log(garden)).toContainText('Watered 10 mm');
  await write('Rain', async (dialog) => dialog.getByRole('textbox').first().fill('half an inch'));
  await expect(log(garden)).toContainText('Rain gauge, whole garden: 13 mm');
  await write('Harvest', async (dialog) => {
    await dialog.getByLabel('What was picked?').selectOption({ index: 0 });
    await dialog.getByLabel('How much? (kg)').fill('2 lb');
  });
  await expect(log(garden)).toContainText('Picked 0.91 kg');
  await write('Soil test', async (dialog) => {
    await dialog.getByLabel(/Nitrate-N/).fill('14 ppm');
  });
  await expect(log(garden)).toContainText('Soil test: nitrate-N 14 mg/kg');
  await write('Rake off', async (dialog) => dialog.getByRole('radio', { name: 'half' }).check());
  await expect(log(garden)).toContainText('Raked off 50 % of the cover');
  await write('Dig in', async (dialog) => dialog.getByRole('radio', { name: 'a quarter' }).check());
  await expect(log(garden)).toContainText('Dug in 25 % of the cover');

  for (let step = 0; step < 6; step += 1) await garden.keyboard.press('Control+z');
  await expect(log(garden)).not.toContainText('Watered');
  await expect(garden.getByRole('button', { name: /^Undo/ })).toBeDisabled();
});

test('what was seen and dug weighs the odds, is changed, and taken back', async ({ garden }) => {
  await openBed(garden, 'Bean row, grass half');
  await seasonsAreImagined(garden);
  const sure = garden.getByRole('region', { name: 'How sure that is' });
  await expect(sure).toContainText('Gathered from the air by its roots');
  await expect(sure).not.toContainText('they rest on');

  await garden.getByRole('button', { name: 'Look and dig…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Look and dig: Bean row, grass half' });
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await expect(dialog.getByRole('alert')).toContainText('Nothing is ticked yet');
  const answer = (question: string, name: string) =>
    dialog.getByRole('radiogroup', { name: question }).getByRole('radio', { name }).check();
  await answer('Lower leaves', 'yellow');
  await answer('Soil a finger deep', 'dry');
  await answer('Soil that shows through the cover', 'all of it');
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await expect(log(garden)).toContainText(
    'Looked and dug: lower leaves yellow, all the soil shows, dry a finger deep',
  );
  await expect(log(garden)).toContainText('thirst before it is hunger');
  await expect(sure).toContainText('they rest on about');

  await garden.getByRole('button', { name: /^Change [Tt]oday: a look$/ }).click();
  await expect(
    dialog.getByRole('radiogroup', { name: 'Lower leaves' }).getByRole('radio', { name: 'yellow' }),
  ).toBeChecked();
  await answer('Root nodules, cut open', 'white inside');
  await dialog.getByRole('button', { name: 'Keep the change' }).click();
  await expect(log(garden)).toContainText('nodules white inside');
  // no nodule works: these beans gather nothing from the air
  await expect(sure).not.toContainText('Gathered from the air');

  await garden.getByRole('button', { name: /^Delete [Tt]oday: a look$/ }).click();
  await expect(log(garden)).not.toContainText('Looked and dug');
  await expect(sure).not.toContainText('they rest on');
  for (let step = 0; step < 3; step += 1) await garden.keyboard.press('Control+z');
  await expect(garden.getByRole('button', { name: /^Undo/ })).toBeDisabled();
});

test('odds, ranges and what to measure; imagining is stopped and gone on with', async ({
  garden,
}) => {
  await openBed(garden, 'Gate bed');
  await seasonsAreImagined(garden);
  const state = garden.getByRole('region', { name: 'How it stands' });
  await expect(state).toContainText(/Over-fed in (all|nearly all|\d of 10) imagined seasons/);
  const season = garden.getByRole('figure', { name: 'Season of Gate bed' });
  await expect(season).toContainText('in 8 imagined seasons of 10');
  await expect(season).toContainText('8 seasons of 10');
  await garden.getByRole('button', { name: 'The same numbers as a table' }).click();
  await expect(garden.getByRole('columnheader', { name: '8 seasons of 10' })).toBeVisible();
  const sure = garden.getByRole('region', { name: 'How sure that is' });
  await expect(sure).toContainText(/In hand and to come[^:]*times/);
  await expect(sure.getByText('Hangs most on').first()).toBeVisible();
  await sure.getByRole('button', { name: 'Write down a nitrate test…' }).click();
  await expect(garden.getByRole('dialog', { name: 'A soil test of Gate bed' })).toBeVisible();
  await garden.keyboard.press('Escape');

  await garden.getByRole('button', { name: 'Stop imagining' }).click();
  await expect(garden.getByText(/^Imagining is stopped/)).toBeVisible();
  await garden.getByRole('button', { name: 'Water…' }).click();
  await garden.getByRole('dialog').getByRole('textbox').first().fill('10 mm');
  await garden.getByRole('button', { name: 'Write it down' }).click();
  await expect(state).toContainText('from before the last change');
  await garden.getByRole('button', { name: 'Go on imagining' }).click();
  await expect(state).not.toContainText('from before the last change');
  await seasonsAreImagined(garden);
});

test('a soil test beyond belief is asked about', async ({ garden }) => {
  await openBed(garden, 'South wall');
  await garden.getByRole('button', { name: 'Soil test…' }).click();
  const dialog = garden.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await expect(dialog).toContainText('Give at least one of the numbers.');
  await dialog.getByLabel(/Nitrate-N/).fill('4000');
  await expect(dialog).toContainText('which no garden soil holds');
  // the whole nitrate is 62.005 / 14.007 times its nitrogen (atomic masses)
  await dialog.getByLabel(/Nitrate-N/).fill('62 mg/kg NO3');
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await expect(log(garden)).toContainText('Soil test: nitrate-N 14 mg/kg');
});

test('a layer is changed, and the season answers', async ({ garden }) => {
  await openBed(garden, 'Gate bed');
  const applied = garden.getByRole('row', { name: /^laid on/ }).first();
  const before = await applied.textContent();
  await garden.getByRole('button', { name: 'Change Sunday 9 June: Clippings' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Change a layer' });
  await expect(dialog.getByLabel('How much?')).toHaveValue('1 bag');
  await dialog.getByLabel('How much?').fill('2 bags');
  await dialog.getByRole('button', { name: 'Keep the change' }).click();
  await expect(applied).not.toHaveText(before ?? '');
  await garden.getByRole('button', { name: 'Undo: Change a layer on Gate bed' }).click();
  await expect(applied).toHaveText(before ?? '');
});

test('something is sown, changed and deleted', async ({ garden }) => {
  await openBed(garden, 'Kitchen bed');
  await garden.getByRole('button', { name: 'Sow or plant something…' }).click();
  const dialog = garden.getByRole('dialog');
  await dialog.getByLabel('Crop').selectOption('Bush beans');
  await dialog.getByLabel('When?').fill('yesterday');
  await dialog.getByRole('button', { name: 'Add it' }).click();
  const plantings = garden.getByRole('region', { name: 'In the ground' });
  await expect(plantings).toContainText('Bush beans sown Friday 14 June 2013');
  await garden.getByRole('button', { name: 'Change Bush beans' }).click();
  await dialog.getByRole('radio', { name: 'I know the weight' }).check();
  await dialog.getByLabel(/Pick wanted from one m²/).fill('1.5 kg');
  await dialog.getByLabel('How much of the bed?').selectOption('half');
  await dialog.getByRole('button', { name: 'Keep the change' }).click();
  await expect(plantings).toContainText('on 50 % of the bed');
  await garden.getByRole('button', { name: 'Delete Bush beans' }).click();
  await expect(plantings).not.toContainText('Bush beans');
});

test('straw from the store is laid with its effect in view', async ({ garden }) => {
  await openBed(garden, 'Far bed');
  await garden.getByRole('button', { name: 'Lay something…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Lay something on Far bed' });
  await dialog.getByLabel('What', { exact: true }).selectOption({ label: 'Wheat straw, in store' });
  await dialog.getByLabel('How much?').fill('6 kg');
  const cover = dialog.getByRole('row', { name: /Cover today/ });
  await expect(cover).toContainText(/bare.*(good|thin)/);
  await dialog.getByRole('button', { name: 'Lay it', exact: true }).click();
  await expect(dialog).toHaveCount(0);
  await expect(log(garden)).toContainText('Wheat straw, 6 kg, laid on');
});

test('the top layer is raked off, told, and laid on another bed', async ({ garden }) => {
  await openBed(garden, 'Gate bed');
  await garden.getByRole('button', { name: 'Rake off…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Rake cover off Gate bed' });
  // sampleMowings.ts: the last of six layers was laid on 9 June
  await expect(
    dialog.getByRole('radio', { name: /the top layer Clippings of 9 June/ }),
  ).toBeChecked();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await expect(log(garden)).toContainText(
    /Off came about [\d.]+ kg of dry weight with \d+ g of nitrogen/,
  );
  await garden.getByRole('button', { name: /^Lay it on another bed/ }).click();
  const carry = garden.getByRole('dialog', { name: 'What came off Gate bed' });
  await carry.getByLabel('Where does it go?').selectOption('Far bed');
  await carry.getByRole('radio', { name: /hoed in/ }).check();
  await expect(carry.getByRole('group', { name: 'What it does to Far bed' })).toBeVisible();
  await carry.getByRole('button', { name: 'Lay it' }).click();
  await expect(carry).toHaveCount(0);
  await expect(log(garden)).toContainText('Laid on Far bed.');
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Far bed', exact: true }).click();
  await expect(log(garden).locator('.log-entry', { hasText: 'Clippings' })).toHaveCount(1);
});

test('what is raked off goes on the heap, and into its books', async ({ garden }) => {
  await openBed(garden, 'Gate bed');
  await garden.getByRole('button', { name: 'Rake off…' }).click();
  await garden.getByRole('dialog').getByRole('button', { name: 'Write it down' }).click();
  await garden.getByRole('button', { name: /^Lay it on another bed/ }).click();
  const carry = garden.getByRole('dialog', { name: 'What came off Gate bed' });
  await carry.getByLabel('Where does it go?').selectOption('Heap');
  await carry.getByRole('button', { name: 'Put it there' }).click();
  await expect(carry).toHaveCount(0);
  await expect(log(garden)).toContainText(/put on the heap: about [\d.]+ kg as it lay/);
  await goTo(garden, 'Garden');
  await garden.locator('summary', { hasText: /^Heap/ }).click();
  await expect(garden.getByText(/^Put on it since, raked off beds once/)).toBeVisible();
});

test('imagined seasons are dots to be counted, past a line that is moved by key, press and number', async ({
  garden,
}) => {
  await openBed(garden, 'Gate bed');
  await seasonsAreImagined(garden);
  const dots = garden.getByRole('figure', { name: 'Imagined seasons, to be counted' });
  const line = dots.getByRole('slider', { name: 'The line over the dots' });
  const typed = dots.getByLabel('The line stands at (times)');
  const says = dots.locator('.chart-reading');
  /** What is said, and the open dots that can be counted. */
  const isCounted = async (at: string) => {
    const open = await dots.locator('.dots-past').count();
    await expect(says).toHaveText(
      open === 20
        ? new RegExp(`^All 20 dots lie past ${at}`)
        : new RegExp(`^${open === 0 ? 'None' : open} of 20 dots lies? past ${at}`),
    );
    return open;
  };
  await expect(dots.locator('.dots-dot')).toHaveCount(20);
  // sweet potatoes have too much past 1.2 (threshold table)
  await expect(typed).toHaveValue('1.2');
  await expect(says).toContainText('where it has too much');
  const before = await isCounted('1.2 times');

  await line.press('PageUp');
  await line.press('ArrowRight');
  await expect(line).toHaveAttribute('aria-valuetext', '1.8 times');
  expect(await isCounted('1.8 times')).toBeLessThanOrEqual(before);
  await typed.fill('three');
  await expect(dots.getByRole('alert')).toBeVisible();
  await typed.fill('3,5');
  await typed.press('Enter');
  await expect(line).toHaveAttribute('aria-valuenow', '3.5');
  const some = await isCounted('3.5 times');
  expect(some).toBeLessThan(before);
  await line.press('Home');
  expect(await isCounted('0 times')).toBe(20);
  // pressed a little to the right of the last dot, none is past it
  const last = (await dots.locator('.dots-dot').last().boundingBox())!;
  await garden.mouse.click(last.x + last.width + 6, last.y + last.height / 2);
  await expect(says).toHaveText(/^None of 20/);
  await dots.getByRole('button', { name: 'The dots as a list' }).click();
  await expect(dots.getByRole('listitem')).toHaveCount(20);
});

test('Back of the window goes from a bed to the beds, and Forward to the bed', async ({
  garden,
}) => {
  await openBed(garden, 'Gate bed');
  await garden.goBack();
  await expect(garden.getByRole('heading', { name: 'Beds', level: 1 })).toBeVisible();
  await garden.goBack();
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeVisible();
  await garden.goForward();
  await garden.goForward();
  await expect(garden.getByRole('heading', { name: 'Gate bed', level: 1 })).toBeVisible();
});

test('"Add or change beds" lands on that part of the garden', async ({ garden }) => {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'Add or change beds' }).click();
  const heading = garden.getByRole('heading', { name: 'Beds and plantings' });
  await expect(heading).toBeFocused();
  await expect(heading).toBeInViewport();
});

test('narrow: file menu, drawings and words stay inside the window', async ({ garden }) => {
  await garden.setViewportSize({ width: 360, height: 740 });
  await openBed(garden, 'Gate bed');
  const season = garden.getByRole('figure', { name: 'Season of Gate bed' });
  await expect(season.getByText('could use', { exact: true }).first()).toBeVisible();
  const inside = await garden.evaluate(
    () =>
      [...document.querySelectorAll('.season-chart svg text, .cover-chart svg text')]
        .map((text) => text.getBoundingClientRect())
        .filter(({ left, right }) => left < -0.5 || right > innerWidth + 0.5).length,
  );
  expect(inside).toBe(0);
  await garden.getByRole('button', { name: /Garden file/ }).click();
  const list = await garden.locator('.menu-list').boundingBox();
  expect(list?.x).toBeGreaterThanOrEqual(0);
  expect((list?.x ?? 0) + (list?.width ?? 0)).toBeLessThanOrEqual(360);
});

test('a bed on paper: its name, words and drawings, nothing to fill in or press', async ({
  garden,
}) => {
  await openBed(garden, 'Gate bed');
  // the width of A4 within margins of 15 mm, at 96 px to the inch
  await garden.setViewportSize({ width: 680, height: 1000 });
  await garden.emulateMedia({ media: 'print' });
  await expect(garden.getByRole('heading', { name: 'Gate bed', level: 1 })).toBeVisible();
  for (const role of ['textbox', 'combobox', 'radio'] as const)
    await expect(garden.getByRole(role)).toHaveCount(0);
  // figures and names that are pressed on the screen are words on paper
  const pressed = garden.locator('button:not(.figure-why, .in-words, .row-name)');
  await expect(pressed.filter({ visible: true })).toHaveCount(0);
  await expect(garden.getByText('loam, 2.6 % organic matter by test')).toBeVisible();
  const cut = await garden.evaluate(
    () =>
      [...document.querySelectorAll('main svg, main p, main td')].filter(
        (one) => one.checkVisibility() && one.getBoundingClientRect().right > innerWidth + 1,
      ).length,
  );
  expect(cut).toBe(0);
});

test('a day that is none is gone to before a soil test is kept under another @once', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'South wall', exact: true }).click();
  const entries = garden.locator('.log-entry');
  await expect(entries).not.toHaveCount(0);
  const before = await entries.count();
  await garden.getByRole('button', { name: 'Soil test…' }).click();
  const dialog = garden.getByRole('dialog', { name: /A soil test of/ });
  await dialog.getByLabel('Organic matter (%)').fill('3');
  const when = dialog.getByLabel('When?');
  await when.fill('31 June');
  await when.blur();
  await dialog.getByRole('button', { name: 'Write it down' }).press('Enter');
  await expect(when).toBeFocused();
  await expect(when).toHaveValue('31 June');
  await dialog.getByRole('button', { name: /^Use/ }).click();
  await dialog.getByRole('button', { name: 'Write it down' }).press('Enter');
  await expect(dialog).toHaveCount(0);
  await expect(entries).toHaveCount(before + 1);
});
