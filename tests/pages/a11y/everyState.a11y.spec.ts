// Every place, dialog and state: axe in light, dark and a person's own contrast colours, sizes of
// targets, text spread out, and the window enlarged to 200 and 400 %.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from '../fixtures';
import { answerTo, respond } from '../../main/weather/madeService';
import {
  firstLine,
  goTo,
  openReckoned,
  openSample,
  openSampleAt,
  planIsMade,
  seasonsAreImagined,
  startOwnGarden,
  weekPlan,
} from '../journeys';
import { pastTheEdge, smallTargets, spreadText, unreadableText } from './inPage';
import { brokenWords, cutEntries, lostShapes } from './wholeWords';

const usual = { width: 1280, height: 860 };
/** 1280 px wide at 200 % and at 400 % */
const enlarged = [
  { percent: 200, width: 640, height: 430 },
  { percent: 400, width: 320, height: 256 },
] as const;
/** What changes with the colours alone; everything else is the same in every look. */
const colourRules = ['color-contrast', 'link-in-text-block'];

async function axeFindings(page: Page, rules: readonly string[] | 'all'): Promise<string[]> {
  // behind a question the page is shut off and was looked at before
  const isAsked = (await page.locator('dialog[open]').count()) > 0;
  // half a megabyte of source: brought into a page once
  const isThere = await page.evaluate(() => 'axe' in window);
  const axe = new AxeBuilder({ page, ...(isThere ? { axeSource: ';' } : {}) }).setLegacyMode(true);
  if (isAsked) axe.include('dialog[open]');
  // what is in order is not described, which takes as long again
  axe.options({ resultTypes: ['violations'], rules: { 'target-size': { enabled: true } } });
  if (rules !== 'all') axe.withRules([...rules]);
  const { violations } = await axe.analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(
      ({ target, failureSummary }) =>
        `${id}: ${target.join(' ')}: ${failureSummary?.split('\n').slice(1).join('; ').trim()}`,
    ),
  );
}

/** Looks at the page as it stands; goes on after a finding, so that one run tells them all. */
async function look(page: Page, state: string): Promise<void> {
  const none = (findings: readonly string[], how: string) =>
    expect.soft(findings, `${state}: ${how}`).toEqual([]);
  none(await axeFindings(page, 'all'), 'axe');
  await page.emulateMedia({ colorScheme: 'dark' });
  none(await axeFindings(page, colourRules), 'axe, dark');
  await page.emulateMedia({ forcedColors: 'active' });
  none(await axeFindings(page, colourRules), 'axe, contrast colours');
  none(await page.evaluate(lostShapes), 'shapes in contrast colours');
  await page.emulateMedia({ colorScheme: 'light', forcedColors: 'none' });

  for (const { percent, ...size } of [{ percent: 100, ...usual }, ...enlarged]) {
    await page.setViewportSize(size);
    // drawings follow the width a frame later
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))));
    none(await page.evaluate(pastTheEdge), `past the edge at ${percent} %`);
    none(await page.evaluate(smallTargets), `targets at ${percent} %`);
    none(await page.evaluate(unreadableText), `text at ${percent} %`);
    none(await page.evaluate(cutEntries), `entries at ${percent} %`);
    none(await page.evaluate(brokenWords), `words at ${percent} %`);
    await page.evaluate(spreadText, true);
    none(await page.evaluate(unreadableText), `text spread out, at ${percent} %`);
    await page.evaluate(spreadText, false);
  }
  await page.setViewportSize(usual);
}

/** The same once the question that was asked for is there: the code of most comes on demand. */
async function lookAtQuestion(page: Page, state: string): Promise<void> {
  await expect(page.getByRole('dialog')).toBeVisible();
  await look(page, state);
}

test.describe.configure({ timeout: 600_000 });

test('first run and the five answers', async ({ garden, folder }) => {
  await look(garden, 'first run');
  await garden.getByRole('button', { name: 'Start my garden' }).click();
  await look(garden, 'five answers');
  await garden.getByLabel('What do you call it?').fill('');
  await garden.getByRole('button', { name: 'Start this garden' }).click();
  await expect(garden.locator('[aria-invalid]')).toHaveCount(4);
  await look(garden, 'five answers, four of them missing');
  await garden.getByRole('radio', { name: 'I type them' }).check();
  await look(garden, 'months of one’s own, missing');
  await garden.getByRole('button', { name: 'Back' }).click();
  const broken = join(folder, 'broken.mowings');
  await writeFile(broken, '{"format": "mowings-garden", ');
  await garden.getByLabel('A garden file').setInputFiles(broken);
  await expect(garden.getByRole('alert')).toBeVisible();
  await look(garden, 'first run, a file refused');
});

test('finding by typing', async ({ garden }) => {
  await openSample(garden);
  await garden.keyboard.press('F9');
  await expect(garden.getByRole('listbox', { name: 'Found' })).toBeVisible();
  await look(garden, 'find, all there is');
  await garden.keyboard.type('zzz');
  await expect(garden.getByText('Nothing is called “zzz”')).toBeVisible();
  await look(garden, 'find, nothing found');
});

test('amounts set by hand, what if, and water, all filled', async ({ garden }) => {
  await openSample(garden);
  const plan = weekPlan(garden);
  await plan.getByRole('button', { name: 'Exactly this: Far bed' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Exactly this on Far bed' });
  await dialog.getByLabel('Clippings of Back lawn').fill('500 bags');
  await dialog.getByLabel('Compost').fill('1 bucket');
  await dialog.getByRole('button', { name: 'Keep to this' }).click();
  await look(garden, 'more than there is, set by hand');
  await dialog.getByLabel('Clippings of Back lawn').fill('3 buckets');
  await dialog.getByRole('button', { name: 'Keep to this' }).click();
  await expect(dialog).toHaveCount(0);
  await planIsMade(garden);
  await plan
    .getByRole('button', { name: /^3 buckets: why/ })
    .first()
    .click();
  const water = garden.getByRole('region', { name: 'Water', exact: true });
  await expect(water).toHaveAttribute('aria-busy', 'false', { timeout: 120_000 });
  await water.getByText('Every bed, what its cover saved').click();
  await look(garden, 'a plan with amounts set by hand, a why open; water bed by bed');
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Far bed', exact: true }).click();
  const whatIf = garden.getByRole('region', { name: 'What if…' });
  await whatIf.getByRole('button', { name: 'Try a layer' }).click();
  await whatIf.getByLabel('How much?').fill('4 buckets');
  await expect(whatIf.getByRole('table').getByRole('img')).toHaveCount(1, { timeout: 120_000 });
  await whatIf.getByRole('button', { name: /Most nitrate in the soil, as it is: why/ }).click();
  await look(garden, 'what if, with odds, a why open');
});

test('this week', async ({ garden }) => {
  await openSample(garden);
  await look(garden, 'this week');
  const line = garden.getByLabel('What came off?');
  await line.fill('2 bgas');
  await line.blur();
  await garden.getByText('Catch up on earlier mowings in one line').click();
  await garden
    .getByLabel('What was mown before, and where it went')
    .fill('on the tomatoes about a bag a week since 4 May');
  await garden.getByRole('button', { name: 'Lay it', exact: true }).click();
  await garden.getByRole('button', { name: 'Another bed' }).click();
  await look(garden, 'a mowing mistyped, earlier ones listed, a laying with nothing said');
  await line.fill('2 bags');
  for (const why of await garden.getByText('Why these figures').all()) await why.click();
  await firstLine(garden).getByLabel('On which bed?').selectOption('Gate bed (over-fed)');
  await firstLine(garden).getByLabel('How much?').fill('1 bag');
  await expect(garden.getByRole('group', { name: 'What it does to Gate bed' })).toBeVisible();
  // those of the plan's closed notes are opened with the plan
  const whys = garden.getByText('Why this line').filter({ visible: true });
  for (const why of await whys.all()) await why.click();
  await look(garden, 'a mowing typed, a stop shown, every why open');
  await garden.getByRole('button', { name: 'Lay it', exact: true }).click();
  // not to be had yet, but it says why when it is tried
  await garden
    .getByRole('dialog')
    .getByRole('button', { name: 'Lay it all the same' })
    .press('Enter');
  await lookAtQuestion(garden, 'the stop, hurried');
});

test('the plan of this week', async ({ garden }) => {
  await openSample(garden);
  const plan = garden.getByRole('region', { name: 'What to do this week' });
  for (const more of await plan.locator('summary').all()) await more.click();
  await look(garden, 'the plan, every why open');
});

test('a week gone on, something deleted', async ({ garden }) => {
  await openReckoned(garden);
  await garden.getByRole('button', { name: 'Go on a week' }).click();
  await expect(garden.getByRole('button', { name: 'Put the news away' })).toBeVisible();
  await garden
    .getByRole('button', { name: /^Delete the mowing/ })
    .first()
    .click();
  await expect(garden.getByRole('group', { name: 'Deleted' })).toBeVisible();
  await planIsMade(garden);
  await look(garden, 'news of a week, a deletion');
});

test('dialogs of this week', async ({ garden }) => {
  await openReckoned(garden);
  await garden.getByRole('button', { name: 'Change the answer' }).first().click();
  await garden.getByRole('radio', { name: 'Something was put on it' }).check();
  await garden.getByRole('radio', { name: 'Wait a number of days' }).check();
  await garden.getByRole('button', { name: 'Keep this answer' }).click();
  await look(garden, 'what was put on a lawn');
  await garden.keyboard.press('Escape');
  await garden
    .getByRole('button', { name: /^Change the mowing/ })
    .first()
    .click();
  await garden.getByRole('dialog').getByLabel('What came off?').fill('3 bgas');
  await look(garden, 'a mowing changed');
});

test('beds', async ({ garden }) => {
  await openSampleAt(garden, 'Beds');
  await seasonsAreImagined(garden);
  await look(garden, 'beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  await expect(garden.getByRole('slider', { name: /^Day in the season/ })).toBeVisible();
  await garden.getByRole('button', { name: 'Fortnight' }).click();
  await look(garden, 'a bed, a fortnight of it');
  await garden.getByRole('button', { name: 'The same numbers as a table' }).click();
  await garden.getByRole('button', { name: 'The same as a list' }).click();
  await garden
    .getByRole('button', { name: /^[\d.]+ times: why\?$/ })
    .first()
    .click();
  await expect(garden.getByRole('region', { name: 'From season to season' })).toBeVisible();
  await look(garden, 'a bed with its tables');
  await garden.getByRole('button', { name: 'Stop imagining' }).click();
  await look(garden, 'a bed, imagining stopped');
});

test('beds chosen, changed and on paper', async ({ garden }) => {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'Stop imagining' }).click();
  await garden.getByRole('button', { name: 'Choose several…' }).click();
  await garden.getByRole('checkbox', { name: 'Tick Gate bed' }).check();
  await garden.getByRole('checkbox', { name: 'Tick Kitchen bed' }).check();
  await look(garden, 'several beds chosen');
  for (const act of ['Lay on them…', 'Water…', 'Join into one…', 'Put away…', 'Copy a season…']) {
    await garden.getByRole('button', { name: act }).click();
    await lookAtQuestion(garden, `several beds, ${act}`);
    await garden.keyboard.press('Escape');
  }
  await garden.getByRole('button', { name: 'Their sheets…' }).click();
  await expect(garden.locator('.bed-sheet')).toHaveCount(2);
  await look(garden, 'sheets of two beds');
  await garden.getByRole('button', { name: 'Back' }).click();
  await garden.getByRole('button', { name: 'South wall', exact: true }).click();
  await garden.getByRole('button', { name: 'Another size…' }).click();
  await garden.getByRole('button', { name: 'Change its size' }).click();
  await look(garden, 'another size, none given');
  await garden.keyboard.press('Escape');
  await garden.getByRole('button', { name: 'Split in two…' }).click();
  await lookAtQuestion(garden, 'a bed about to be split');
  await garden.getByRole('button', { name: 'Split it' }).click();
  await garden.getByRole('button', { name: 'South wall as it was' }).click();
  await expect(garden.getByText(/Its ground is now South wall/)).toBeVisible();
  await look(garden, 'a bed that was split');
});

test('dialogs of a bed', async ({ garden }) => {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  const notes = garden.getByRole('group', { name: 'Write something down' }).getByRole('button');
  await expect(notes).toHaveCount(8);
  for (const note of await notes.all()) {
    await note.click();
    const dialog = garden.getByRole('dialog');
    // each with what it says about an entry that is missing
    await dialog.getByRole('button', { name: /^(Write it down|Lay it)$/ }).click();
    if ((await dialog.count()) === 0) await note.click();
    await lookAtQuestion(garden, `dialog of ${await note.textContent()}`);
    await garden.keyboard.press('Escape');
  }
  await garden
    .getByRole('button', { name: /^Change .*Clippings$/ })
    .first()
    .click();
  await lookAtQuestion(garden, 'a layer changed');
  await garden.keyboard.press('Escape');
  await garden.getByRole('button', { name: 'Rake off…' }).click();
  await garden.getByRole('button', { name: 'Write it down' }).click();
  await garden
    .getByRole('button', { name: /^Lay it on another bed/ })
    .first()
    .click();
  await garden.getByRole('dialog').getByLabel('Where does it go?').selectOption('South wall');
  await expect(garden.getByRole('group', { name: 'What it does to South wall' })).toBeVisible();
  await look(garden, 'what was raked off, on another bed');
  await garden.keyboard.press('Escape');
  await garden.getByRole('button', { name: 'Sow or plant something…' }).click();
  await garden.getByRole('radio', { name: 'I know the weight' }).check();
  await garden.getByRole('button', { name: 'Add it' }).click();
  await look(garden, 'a planting');
});

test('tables', async ({ garden }) => {
  await openSampleAt(garden, 'Tables');
  await look(garden, 'materials');
  await garden.getByRole('button', { name: 'Wheat straw', exact: true }).click();
  await garden.getByRole('button', { name: 'Make a row of my own from it' }).click();
  await garden.getByLabel('Nitrogen (% of dry weight)').fill('much');
  await garden.keyboard.press('Tab');
  await look(garden, 'a material of one’s own, a number not understood');
  await garden.getByRole('radio', { name: 'Crops' }).check();
  await garden.getByRole('button', { name: 'Tomatoes', exact: true }).click();
  await look(garden, 'a crop');
  await garden.getByRole('radio', { name: 'The sums' }).check();
  await look(garden, 'the numbers of the sums');
  await garden.getByRole('radio', { name: 'A mixture' }).check();
  await garden.getByText('The sum', { exact: true }).click();
  await garden.getByText('An exact aim', { exact: true }).click();
  await garden.getByLabel('Carbon to nitrogen (to 1)').fill('90');
  await look(garden, 'a mixture that cannot be');
});

test('season', async ({ garden }) => {
  await openSampleAt(garden, 'Season');
  await expect(garden.getByText(/^15 June: .* ready$/)).toHaveCount(9);
  await look(garden, 'season');
  await garden.getByRole('button', { name: 'The same numbers as a table' }).click();
  await garden.getByRole('button', { name: /^Tomatoes on South wall/ }).click();
  const fields = garden.getByRole('group', { name: 'Tomatoes', exact: true });
  await fields.getByLabel('Cleared').fill('some day');
  await fields.getByLabel('Cleared').press('Enter');
  await expect(fields.locator('[aria-invalid]')).toHaveCount(1);
  await look(garden, 'season, a planting’s fields with a day refused, its tables');
  await garden.getByLabel('Beds with this name or crop').fill('nothing of that name');
  await garden.getByRole('button', { name: 'Later' }).click();
  await look(garden, 'season, the next one, no bed found');
  await garden.getByLabel('Beds with this name or crop').fill('');
  await expect(garden.getByText(/, over 1,000 imagined seasons of each bed\.$/)).toBeVisible({
    timeout: 120_000,
  });
  await look(garden, 'season, the next one with its ranges and tables');
});

test('lawn', async ({ garden }) => {
  await openSampleAt(garden, 'Lawn');
  await look(garden, 'lawn');
  // each press renames the button
  for (let lawn = 0; lawn < 2; lawn++)
    await garden.getByRole('button', { name: 'The same numbers as a table' }).first().click();
  await garden.locator('.thing > summary').filter({ hasText: 'Back lawn' }).click();
  await garden.getByRole('button', { name: 'Delete Back lawn' }).click();
  await look(garden, 'lawn, its weeks as a table, a deletion refused');
  await garden.getByRole('button', { name: 'Mowings from a spreadsheet…' }).click();
  await garden
    .getByLabel('The cells')
    .fill('3/4/2013\tBack lawn\t2 bags\n2013-06-01\tBack lawn\tlots');
  await expect(garden.getByText('0 of 2 lines can be brought in; 2 cannot be read.')).toBeVisible();
  await look(garden, 'mowings pasted, none of them understood');
});

test('garden', async ({ garden, folder }) => {
  await openSampleAt(garden, 'Garden');
  await look(garden, 'garden');
  // one thing of each kind: a bag, a bed, a store
  for (const name of ['bag', 'Gate bed', 'Wheat straw'])
    await garden.locator('.thing > summary').filter({ hasText: name }).first().click();
  for (const more of ['The months in use', 'Take the months of another place'])
    await garden.getByText(more).click();
  await look(garden, 'garden, one of each open');
  for (const name of ['Heap', 'Chopped leaves'])
    await garden.locator('.thing > summary').filter({ hasText: name }).click();
  await expect(garden.getByText(/^To keep for/)).toBeVisible();
  await look(garden, 'garden, the books of heap and leaves');
  await garden.getByRole('button', { name: 'Somebody offers something…' }).click();
  const offer = garden.getByRole('dialog', { name: 'Somebody offers something' });
  await offer.getByRole('button', { name: 'Weigh it up' }).click();
  await look(garden, 'an offer, all of it missing');
  await offer.getByLabel('How much?').fill('40 kg');
  await offer.getByRole('radio', { name: /Nobody knows/ }).check();
  await offer.getByRole('button', { name: 'Weigh it up' }).click();
  await expect(offer.getByRole('heading', { name: 'Try it on beans first' })).toBeFocused();
  await offer.getByText('How the beans are used').click();
  await look(garden, 'an offer weighed up');
  await garden.keyboard.press('Escape');
  await garden.getByRole('button', { name: /^Weigh one bag/ }).click();
  await garden.getByRole('dialog').getByRole('textbox').first().fill('');
  await garden.getByRole('button', { name: 'Keep this weight' }).click();
  await look(garden, 'a bag weighed');
  await garden.keyboard.press('Escape');
  await garden.getByRole('button', { name: 'Add a bed…' }).click();
  await garden.getByRole('button', { name: 'Add it' }).click();
  await look(garden, 'a bed to be added, all of it missing');
  await garden.keyboard.press('Escape');
  await garden.getByRole('button', { name: 'Look at the thermometer…' }).click();
  await garden.getByRole('button', { name: 'Keep it' }).click();
  await look(garden, 'the thermometer, nothing read');
  await garden.keyboard.press('Escape');
  const record = join(folder, 'record.csv');
  await writeFile(record, 'date,low,high,rain\n01/02/2013,2,9,0\n02/02/2013,1,8,x\n');
  await garden.getByRole('button', { name: 'Bring measured weather…' }).click();
  await garden.getByLabel('A weather file').setInputFiles(record);
  await garden.getByRole('button', { name: 'Bring these days in' }).click();
  await expect(garden.getByRole('dialog').getByRole('alert')).toBeVisible();
  await look(garden, 'measured weather, a question left open');
  await garden.getByText('Which column is which').click();
  await look(garden, 'measured weather, its columns to be picked');
});

test('weather by place', async ({ garden, weather }) => {
  await startOwnGarden(garden);
  await goTo(garden, 'Garden');
  await garden.getByRole('button', { name: 'See what it would send…' }).click();
  const ask = garden.getByRole('button', { name: 'I agree: ask for these days' });
  await ask.click();
  await look(garden, 'weather by place, nothing agreed to');
  await garden.getByLabel('Longitude (degrees)').fill('74 W');
  weather.answerWith((response) => respond(response, '', 503));
  await ask.click();
  await expect(garden.getByRole('dialog').getByRole('alert')).toBeVisible();
  await look(garden, 'weather by place, turned down');
  weather.answerWith((response, url) => {
    const answer = answerTo(url);
    answer.daily['temperature_2m_max']![1] = 99;
    respond(response, answer);
  });
  await garden.getByRole('button', { name: 'Try again' }).click();
  await expect(garden.getByRole('button', { name: 'Take these days' })).toBeVisible();
  await look(garden, 'weather by place, what came');
  await garden.getByRole('button', { name: 'Take these days' }).click();
  await garden.getByText('Where this season’s weather is from').click();
  await garden.getByText('Where these lines come from').click();
  await look(garden, 'garden with downloaded weather, safety with its sources');
});

test('file', async ({ garden, folder }) => {
  await openSample(garden);
  await garden.keyboard.press('Control+s');
  await lookAtQuestion(garden, 'save as');
  await garden.getByLabel('Name of the file').fill('Plot');
  await garden.keyboard.press('Enter');
  await expect(garden.getByRole('dialog')).toHaveCount(0);
  await garden.keyboard.press('Control+Shift+S');
  await expect(garden.getByLabel('Name of the file')).toBeFocused();
  await garden.keyboard.press('Enter');
  await expect(garden.getByRole('alert')).toBeVisible();
  await look(garden, 'save as, the name taken');
  await garden.keyboard.press('Escape');
  await garden.getByRole('button', { name: 'back on the lawn' }).click();
  await garden.keyboard.press('Control+o');
  await lookAtQuestion(garden, 'unsaved changes');
  await garden.getByRole('button', { name: 'Don’t save' }).click();
  await expect(garden.getByRole('dialog', { name: 'Open a garden' })).toBeVisible();
  await look(garden, 'open');
  await garden.keyboard.press('Escape');
  await garden.keyboard.press('Control+s');
  await expect(garden.locator('.head-state')).toHaveText('Saved in Plot');
  const broken = join(folder, 'broken.mowings');
  await writeFile(broken, 'no garden');
  await garden.keyboard.press('Control+o');
  await garden.getByLabel('A garden file').setInputFiles(broken);
  await expect(garden.getByRole('alert')).toBeVisible();
  const menu = garden.getByRole('button', { name: 'Garden file' });
  await look(garden, 'a file refused, the garden still there');
  for (const name of ['How to read this', 'About Mowings']) {
    await menu.click();
    await garden.getByRole('button', { name }).click();
    await lookAtQuestion(garden, name);
    await garden.keyboard.press('Escape');
  }
  await menu.click();
  await look(garden, 'the menu');
});
