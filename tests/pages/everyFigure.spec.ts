// Every figure of the places opens what stands behind it. What does not stands here by name, with
// the reason; a figure that somebody adds without its why is found.
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { openSampleAt, openSampleImagined, seasonsAreImagined } from './journeys';

/** Where figures need no button of their own, and why. */
const answered: Readonly<Record<string, string>> = {
  'button, label, select, input, .field-hint': 'what is pressed, typed or given as an example',
  '.why-panel': 'it is the why',
  '.caution':
    'has “Why this line” beneath it; on the page of safety “Where these lines come from” beneath all',
  '.figures': 'has “Why these figures” beneath it',
  svg: 'marks and scale of a drawing; values in a key beside it have buttons over them',
  '.section-key': 'the scale of a drawing: how much one dot stands for',
  '.way-says.soft': 'how a drawing is read, as long as no stream of it is chosen',
  'p.chart-reading': 'names the day, and what was done on it, which the log opens',
  '.chart-table td':
    'the head of its column or line opens how it is made; how deep a layer lay opens in the log',
  '.cited': 'a row of the tables: its cell says range, source and standing',
  '.mix-amount .field-echo': 'the answer beneath has it again, and opens it',
  '.thing > summary': 'what the person gave; the books of a store open in its own lines beneath',
  '.mix-answer table': 'what goes into the sum above it, whose why has the sources part by part',
  'h2, h3': 'names a mowing by the words it was logged in',
  '.past .shares': 'the weight of the whole beside them opens the why of its parts',
  '.ledger-table td:last-child': 'the figure before it, on the whole bed: one why for both',
  '.rest': 'the words the mowing was logged in; its kilograms are under “Mowings so far”',
  caption: 'says in which unit the figures of the table are',
  '.only-heard, .only-printed': 'stands elsewhere on the page',
};

/** Sentences whose figures are no result: what the person gave, or one that never changes. */
const given: readonly (readonly [says: RegExp, reason: string])[] = [
  [/made from the usual months of|^Usual months: /, 'the source of the normal months, in full'],
  [/^From the gate outwards/, 'the scale of the drawings'],
  [/^[\d.,]+ m², \d+ steps from the gate$/, 'size and way as the person gave them'],
  [/^[\d.,]+ m²(?:\. |, put away )/, 'size as the person gave it'],
  [
    /, on \d+ % of the bed\. From first day to last it gets$/,
    'its share of the bed as the person gave it',
  ],
  [/^\w+ \d+ \w+ \d{4} [^\d]*, [\d.]+ (?:L|kg), laid on\.$/, 'an amount as the person said it'],
  [/^Leave the amount empty that you want to know/, 'examples of what can be typed'],
  [/^On \d+ \w+ the top \d+ cm will hold\s+in 8 imagined seasons/, 'the layer, by its name'],
  [/ Soil test: (?:nitrate-N|organic matter) /, 'as the laboratory gave it'],
  [/^Have a laboratory measure nitrate in the top 30 cm/, 'an advice that never changes'],
];

/** Every figure with a unit in the page's own words that nothing answers for, with its sentence. */
const bare = (garden: Page): Promise<string[]> =>
  garden.evaluate((selectors) => {
    const unit = String.raw`(?:g\/m²|kg|g|mm|cm|m²|L|%|times|bags?|buckets?|cans?|mg\/kg)`;
    const figure = new RegExp(String.raw`\d[\d.,/ ]*\s?${unit}(?![\w²/])`);
    const odds = '8 times in 10';
    const texts = document.createTreeWalker(
      document.getElementById('place')!,
      NodeFilter.SHOW_TEXT,
    );
    const found = new Set<string>();
    while (texts.nextNode()) {
      const element = texts.currentNode.parentElement;
      // how often a range holds is what “likely” means
      const says = texts.currentNode.textContent?.replace(odds, '') ?? '';
      if (!element || !figure.test(says)) continue;
      if (element.closest(selectors)) continue;
      const block = element.closest('p, li, dd, td, th, dt, figcaption, summary') ?? element;
      // beside a figure that opens, an amount as the person said it: "Gate bed 1 bag (15 kg)"
      const words = [...block.childNodes]
        .filter(
          (node) =>
            node.nodeType === Node.TEXT_NODE || !(node as Element).matches?.('.figure-held'),
        )
        .map((node) => node.textContent)
        .join('');
      found.add(words.trim() === '' ? block.textContent : words.trim());
    }
    return [...found];
  }, Object.keys(answered).join(', '));

const openAll = (garden: Page): Promise<void> =>
  garden.evaluate(() => {
    for (const part of document.querySelectorAll<HTMLDetailsElement>('#place details'))
      part.open = true;
  });

/** As a person said an amount, beside its own weight that opens. */
const asSaid = /^(?:.* )?(?:\d+ )?(?:\d\/\d )?\d* ?(?:bags?|buckets?)(?:,|\s*\(|$)/;

const left = (sentences: readonly string[]): string[] =>
  sentences.filter((says) => !given.some(([known]) => known.test(says)));

test('This week, where one without its why would be found', async ({ garden }) => {
  await openSampleImagined(garden);
  await openAll(garden);
  await expect(garden.getByText(/^Reckoning when each bed/)).toHaveCount(0);
  await expect(garden.locator('#place .figure-why').first()).toBeVisible();
  expect(left(await bare(garden)).filter((says) => !asSaid.test(says))).toEqual([]);

  await garden.evaluate(() => {
    const p = document.createElement('p');
    p.textContent = 'In all it comes to 12.5 g/m² of nitrogen.';
    document.getElementById('place')!.append(p);
  });
  expect(left(await bare(garden))).toContain('In all it comes to 12.5 g/m² of nitrogen.');
});

test('Beds and the page of a bed', async ({ garden }) => {
  await openSampleAt(garden, 'Beds');
  await seasonsAreImagined(garden);
  expect(left(await bare(garden))).toEqual([]);
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  await seasonsAreImagined(garden);
  await expect(garden.getByRole('region', { name: 'From season to season' })).toHaveAttribute(
    'aria-busy',
    'false',
  );
  await openAll(garden);
  expect(left(await bare(garden)).filter((says) => !asSaid.test(says))).toEqual([]);
  // the key of the season: every value that is drawn has its button over it, and follows the day
  const season = garden.getByRole('figure', { name: 'Season of Gate bed' });
  const drawnValues = season.locator('.chart-key-buttons .figure-why');
  await expect(drawnValues).toHaveCount(
    await season
      .locator('svg .chart-label-strong.chart-label-end')
      .evaluateAll((texts) => texts.filter((text) => /\d/.test(text.textContent)).length),
  );
  await season.getByRole('slider').press('Home');
  await season.getByRole('button', { name: /mg\/kg\), ready: why\?$/ }).press('Enter');
  const ready = season.getByRole('group', { name: /^Ready in the top/ });
  await expect(ready).toContainText('Tuesday 1 January 2013');
  await season.getByRole('slider').press('ArrowRight');
  await expect(ready).toContainText('Wednesday 2 January 2013');
  // columns of the tables, parts of the section and streams of the ledger have theirs
  await season.getByRole('button', { name: 'The same numbers as a table' }).press('Enter');
  const heads = season.getByRole('columnheader').getByRole('button');
  await expect(heads.filter({ hasText: /^has\s+got$/ })).toBeVisible();
  await season.getByRole('button', { name: 'all it gets, the column: why?' }).press('Enter');
  await expect(season.getByRole('group', { name: 'All it gets.' })).toBeVisible();
  // the account opens its figures line by line
  const ledger = garden.getByRole('region', { name: 'Its ledger' });
  const line = ledger.getByRole('row', { name: /^washed out below the roots/ });
  await line.getByRole('button').first().click();
  await expect(ledger.getByText('Washed out below the roots.', { exact: true })).toBeVisible();
  await expect(ledger.getByText(/Day by day and layer by layer/)).toBeVisible();
  await garden.keyboard.press('Escape');
  await expect(ledger.getByText(/Day by day and layer by layer/)).toHaveCount(0);
});

test('Season, whatever day is read', async ({ garden }) => {
  await openSampleAt(garden, 'Season');
  await expect(garden.getByText(/^15 June: .* ready$/)).toHaveCount(9);
  await expect(garden.getByText(/^Reckoning what/)).toHaveCount(0);
  // a pointer over the strips would choose the day
  await garden.mouse.move(0, 0);
  await garden.getByRole('button', { name: 'The same numbers as a table' }).press('Enter');
  await openAll(garden);
  expect(left(await bare(garden))).toEqual([]);
  // the reading of a bed follows the day, and so does what stands behind it
  const day = garden.getByRole('slider', { name: 'Day shown' });
  await day.press('PageDown');
  const reading = garden.getByRole('button', { name: /^8 June: .* ready, Gate bed: why\?$/ });
  await reading.press('Enter');
  const why = garden.getByRole('group', { name: /^Ready in the top/ });
  await expect(why).toContainText('Saturday 8 June 2013');
  await day.press('PageDown');
  await expect(why).toContainText('Saturday 1 June 2013');
});

test('Lawn, its charts with their tables', async ({ garden }) => {
  await openSampleAt(garden, 'Lawn');
  const tables = garden.getByRole('button', { name: 'The same numbers as a table' });
  await expect(tables).toHaveCount(2);
  await tables.first().click();
  await tables.click();
  await openAll(garden);
  expect(left(await bare(garden))).toEqual([]);
  const back = garden.getByRole('region', { name: 'Back lawn' });
  await back
    .getByRole('button', { name: /^[\d ./]+ bags?: why\?$/ })
    .first()
    .click();
  await expect(back.getByRole('group', { name: /^What it grows in its best week/ })).toBeVisible();
});

test('Garden, all that opens', async ({ garden }) => {
  await openSampleAt(garden, 'Garden');
  await openAll(garden);
  await expect(garden.getByText(/^To keep for/)).toBeVisible();
  expect(left(await bare(garden)).filter((says) => !asSaid.test(says))).toEqual([]);
});

test('Tables, a row open, and a mixture', async ({ garden }) => {
  await openSampleAt(garden, 'Tables');
  for (const [leaf, row] of [
    ['Materials', 'Wheat straw'],
    ['Crops', 'Tomatoes'],
  ] as const) {
    await garden.getByRole('radio', { name: leaf }).check();
    await garden.getByRole('button', { name: row, exact: true }).click();
    await expect(
      garden.getByRole('button', { name: 'Make a row of my own from it' }),
    ).toBeVisible();
    expect(left(await bare(garden)), leaf).toEqual([]);
  }
  await garden.getByRole('radio', { name: 'The sums' }).check();
  await expect(garden.getByRole('group', { name: /^Soil and water: each number/ })).toBeVisible();
  expect(left(await bare(garden)), 'The sums').toEqual([]);
  await garden.getByRole('radio', { name: 'A mixture' }).check();
  await expect(garden.getByText(/^It comes to/)).toBeVisible();
  await openAll(garden);
  expect(left(await bare(garden)), 'A mixture').toEqual([]);
});

test('a bed that was put away', async ({ garden }) => {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'South wall' }).click();
  await garden.getByRole('button', { name: 'Split in two…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Split South wall' });
  await dialog.getByLabel('How much is the first part?').fill('a third');
  await dialog.getByLabel('The second').fill('South wall, far end');
  await dialog.getByRole('button', { name: 'Split it' }).click();
  await garden.getByRole('button', { name: 'South wall as it was' }).click();
  await expect(garden.getByText(/Its ground is now South wall/)).toBeVisible();
  await openAll(garden);
  expect(left(await bare(garden)).filter((says) => !asSaid.test(says))).toEqual([]);
  const minerals = garden.getByRole('region', { name: 'Phosphorus and potassium' });
  await minerals
    .getByRole('row', { name: /^Clippings laid/ })
    .getByRole('button')
    .click();
  await expect(minerals.getByText(/its share of each/)).toBeVisible();
});
