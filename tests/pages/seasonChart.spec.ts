// The season chart of a bed as one uses it: nearer and farther, day by day with keys and pointer,
// and the same numbers read, heard and in the table.
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { openSampleAt, seasonsAreImagined } from './journeys';

const chart = (garden: Page) => garden.getByRole('figure', { name: 'Season of Gate bed' });
const day = (garden: Page) => garden.getByRole('slider', { name: 'Day in the season of Gate bed' });
const reading = (garden: Page) => chart(garden).locator('.chart-reading');
/** The days the drawing spans, as its upper panel says from when it adds up, and its calendar. */
const addedSince = (garden: Page, since: string) =>
  chart(garden).locator('svg').getByText(`added up since ${since}`);

async function openChart(garden: Page): Promise<void> {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  await seasonsAreImagined(garden);
  await expect(chart(garden)).toContainText('in 8 imagined seasons of 10');
}
test('nearer by month and fortnight, on and back, and out again to the season', async ({
  garden,
}) => {
  await openChart(garden);
  const zoom = (name: string) => chart(garden).getByRole('button', { name, exact: true });
  const labels = chart(garden).locator('svg .chart-tick');
  await expect(zoom('Season')).toHaveAttribute('aria-pressed', 'true');
  await expect(addedSince(garden, '1 January')).toBeVisible();
  await expect(labels).toHaveCount(12);
  await expect(zoom('Earlier')).toHaveCount(0);

  // 31 days about 15 June
  await zoom('Month').click();
  await expect(zoom('Month')).toHaveAttribute('aria-pressed', 'true');
  await expect(zoom('Season')).toHaveAttribute('aria-pressed', 'false');
  await expect(addedSince(garden, '31 May')).toBeVisible();

  await zoom('Fortnight').click();
  await expect(addedSince(garden, '8 June')).toBeVisible();
  await expect(labels).toHaveCount(14);
  await zoom('Earlier').click();
  await expect(addedSince(garden, '25 May')).toBeVisible();
  await expect(reading(garden)).toHaveText(/^Saturday 1 June 2013/);
  await zoom('Later').click();
  await zoom('Later').click();
  await expect(addedSince(garden, '22 June')).toBeVisible();
  // the days follow the keys past their edge, and end with the season
  await day(garden).press('End');
  await expect(reading(garden)).toHaveText(/^Tuesday 31 December 2013: imagined weather/);
  await expect(addedSince(garden, '18 December')).toBeVisible();
  await expect(zoom('Later')).toHaveAttribute('aria-disabled', 'true');
  await zoom('Season').click();
  await expect(addedSince(garden, '1 January')).toBeVisible();
  await expect(day(garden)).toHaveAttribute('aria-valuetext', '31 December');
});

test('a day is chosen by key and by pointer; what is heard is what the table has', async ({
  garden,
}) => {
  await openChart(garden);
  await chart(garden).getByRole('button', { name: 'Fortnight' }).click();
  const slider = day(garden);
  const heard = chart(garden).locator('[aria-live=polite]');
  await expect(reading(garden)).toHaveText(/^Saturday 15 June 2013: weather of the record/);
  await slider.press('ArrowLeft');
  await expect(slider).toHaveAttribute('aria-valuetext', '14 June');
  await expect(reading(garden)).toHaveText(/^Friday 14 June 2013.*state: over-fed/);
  await expect(heard).toHaveText(/^Friday 14 June 2013/);

  // could use, has got, six sources and what went; then grams, mg/kg and the range of most seasons
  await chart(garden).getByRole('button', { name: 'The same numbers as a table' }).click();
  const row = chart(garden).getByRole('row', { name: /^14 Jun/ });
  const cells = (await row.getByRole('cell').allInnerTexts()).slice(0, 11);
  const spoken = await heard.innerText();
  const value = (words: RegExp) => words.exec(spoken)?.slice(1);
  expect(value(/could use ([\d.]+)/)).toEqual([cells[0]]);
  expect(value(/has got ([\d.]+)/)).toEqual([cells[1]]);
  expect(value(/there at the start ([\d.]+)/)).toEqual([cells[2]]);
  expect(value(/the soil itself ([\d.]+)/)).toEqual([cells[3]]);
  expect(value(/the cover ([\d.]+)/)).toEqual([cells[4]]);
  expect(value(/supply ([\d.]+)/)).toEqual([cells[6]]);
  expect(value(/lost or held back ([\d.]+)/)).toEqual([cells[7]]);
  expect(value(/top 30 cm: ([\d.]+), ([\d.]+) milligrams/)).toEqual([cells[8], cells[9]]);
  expect(value(/of 10 from ([\d.]+) to ([\d.]+)/)).toEqual(cells[10]!.split('–'));

  // the pointer on another day reads that day, and says nothing of its own accord
  const box = (await slider.boundingBox())!;
  const ticks = chart(garden).locator('svg .chart-tick');
  const tick = async (at: number) => (await ticks.nth(at).boundingBox())!.x;
  // in the middle of the fortnight's second day, 9 June, on which a bag was laid (sampleMowings.ts)
  await garden.mouse.move(((await tick(1)) + (await tick(2))) / 2, box.y + 80);
  await expect(reading(garden)).toHaveText(/^Sunday 9 June 2013.*Clippings, 8 mm laid/);
  await expect(slider).toHaveAttribute('aria-valuetext', '9 June');
  await expect(heard).toHaveText('');
});

test('what a laboratory measured and what is enough stand in the drawing, days to come apart', async ({
  garden,
}) => {
  await openChart(garden);
  const drawing = chart(garden).locator('svg.chart-drawing');
  // sample: nitrate-N of 11 mg/kg on 28 May; enough for sweet potatoes from 20, ample from 25
  await expect(drawing.getByText('test 11 mg/kg')).toBeVisible();
  await expect(drawing.locator('.chart-test')).toHaveCount(1);
  await expect(drawing.getByText('imagined from here')).toBeVisible();
  const middle = async (name: string) => {
    const box = (await drawing.locator(name).first().boundingBox())!;
    return box.x + box.width / 2;
  };
  const [measured, today] = [await middle('.chart-test'), await middle('.chart-today')];
  // 18 days of 365 lie between them
  const width = (await drawing.locator('.chart-base').first().boundingBox())!.width;
  expect(today - measured).toBeCloseTo((width * 18) / 365, -1);
  await expect(drawing.locator('.chart-enough')).not.toHaveCount(0);
});
