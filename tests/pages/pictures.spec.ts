// The places as they are looked at, each held against the picture that was committed: `npm run
// pictures`. That nothing is cut off in any state is walked in a11y/everyState.a11y.spec.ts.
import type { Page } from '@playwright/test';
import { pastTheEdge } from './a11y/inPage';
import { expect, test } from './fixtures';
import {
  firstLine,
  goTo,
  openReckoned,
  openSample,
  openSampleAt,
  seasonsAreImagined,
} from './journeys';

const areTaken = process.env['MOWINGS_PICTURES'] === '1';

async function stopTyped(garden: Page) {
  await openSample(garden);
  await firstLine(garden).getByLabel('On which bed?').selectOption('Gate bed (over-fed)');
  await firstLine(garden).getByLabel('How much?').fill('1 bag');
  await expect(firstLine(garden).getByText('stop', { exact: true }).first()).toBeVisible();
}
async function hungryBedTyped(garden: Page) {
  await openSample(garden);
  await garden.getByRole('button', { name: 'Lay some on Far bed' }).click();
  await firstLine(garden).getByLabel('How much?').fill('1 1/2 bags');
  await expect(garden.getByRole('row', { name: /Share of what it could use/ })).toBeVisible();
}
async function bedOpen(garden: Page) {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  await expect(garden.getByRole('slider', { name: /^Day in the season/ })).toBeVisible();
  await seasonsAreImagined(garden);
}

/** Parts of a place that have pictures of their own are left out of the picture of one. */
const leaveOnly = (garden: Page, part: string): Promise<void> =>
  garden.evaluate((wanted) => {
    for (const other of document.querySelectorAll<HTMLElement>('.page > *'))
      if (!other.matches(wanted) && !other.querySelector(wanted)) other.style.display = 'none';
  }, part);

async function whatIfFilled(garden: Page) {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'Far bed', exact: true }).click();
  const whatIf = garden.getByRole('region', { name: 'What if…' });
  await whatIf.getByRole('button', { name: 'Try a layer' }).click();
  await whatIf.getByLabel('How much?').fill('4 buckets');
  await expect(whatIf.getByRole('table').getByRole('img')).toHaveCount(1, { timeout: 120_000 });
  // the part alone: what stands above it has pictures of its own
  await leaveOnly(garden, '.what-if');
}
async function waterOpen(garden: Page) {
  await openSample(garden);
  const water = garden.getByRole('region', { name: 'Water', exact: true });
  await expect(water).toHaveAttribute('aria-busy', 'false', { timeout: 120_000 });
  await water.getByText('Every bed, what its cover saved').click();
  await expect(water.getByText('Gate bed')).toBeVisible();
  await leaveOnly(garden, '[aria-labelledby="water"]');
}

interface Picture {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly dark?: boolean;
  readonly onPaper?: boolean;
  readonly enter: (garden: Page) => Promise<void>;
}

const firstPage = async (garden: Page) => {
  await expect(garden.getByRole('heading', { level: 1 })).toBeVisible();
};
const allBeds = async (garden: Page) => {
  await openSampleAt(garden, 'Beds');
  await seasonsAreImagined(garden);
};
const season = async (garden: Page) => {
  await openSampleAt(garden, 'Season');
  await expect(garden.getByText(/^15 June: .* ready$/)).toHaveCount(9);
  // the lawns come after the beds, one after the other
  await expect(garden.getByText(/^Reckoning what .* grows…$/)).toHaveCount(0, { timeout: 120_000 });
};
const place = (name: 'Garden' | 'Lawn' | 'Tables') => async (garden: Page) => {
  await openSample(garden);
  await goTo(garden, name);
  await expect(garden.getByRole('heading', { name, level: 1 })).toBeVisible();
};

const mixture = async (garden: Page) => {
  await place('Tables')(garden);
  await garden.getByRole('radio', { name: 'A mixture' }).check();
  await expect(garden.getByText(/^It comes to/)).toBeVisible();
};
/** What a garden of one's own is asked; the turf of the head, which goes by the computer's day, is left out. */
const ownAsked = async (garden: Page) => {
  await garden.getByRole('button', { name: 'Start my garden' }).click();
  await garden.getByLabel('When?').fill('2026-05-01');
  await garden.getByRole('region', { name: 'The lawn' }).getByRole('textbox').focus();
  await garden.evaluate(() => {
    document.querySelector<HTMLElement>('header')!.style.visibility = 'hidden';
  });
};
/** One of the dialogs: all have one head and one foot. */
const layerChanged = async (garden: Page) => {
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  await garden
    .getByRole('button', { name: /^Change .*Clippings$/ })
    .first()
    .click();
  await expect(garden.getByRole('dialog')).toBeVisible();
};
const looks = [
  { look: '', width: 1280 },
  { look: '-dark', width: 1280, dark: true },
  { look: '-320-wide', width: 320 },
  { look: '-paper', width: 800, onPaper: true },
] as const;
/** A place in each of the four looks, or in three where nobody prints it. */
const inEachLook = (
  name: string,
  height: number,
  enter: Picture['enter'],
  isPrinted = true,
): readonly Picture[] =>
  looks
    .filter(({ look }) => isPrinted || look !== '-paper')
    .map(({ look, ...one }) => ({ name: name + look, height, enter, ...one }));

const pictures: readonly Picture[] = [
  {
    name: 'first-run',
    width: 1280,
    height: 860,
    enter: firstPage,
  },
  { name: 'this-week', width: 1280, height: 1500, enter: hungryBedTyped },
  { name: 'this-week-plan', width: 1280, height: 1500, enter: openSample },
  { name: 'this-week-dark', width: 1280, height: 1500, dark: true, enter: hungryBedTyped },
  // 1280 wide at 200 % is 640 wide
  { name: 'this-week-200-percent', width: 640, height: 1500, enter: hungryBedTyped },
  { name: 'this-week-320-wide', width: 320, height: 1500, enter: hungryBedTyped },
  {
    name: 'stop',
    width: 1280,
    height: 860,
    enter: async (garden) => {
      await stopTyped(garden);
      await garden.getByRole('button', { name: 'Lay it', exact: true }).click();
      await expect(garden.getByRole('dialog')).toBeVisible();
    },
  },
  {
    name: 'beds',
    width: 1280,
    height: 1500,
    enter: allBeds,
  },
  { name: 'bed', width: 1280, height: 2100, enter: bedOpen },
  { name: 'bed-dark', width: 1280, height: 2100, dark: true, enter: bedOpen },
  { name: 'season', width: 1280, height: 1500, enter: season },
  {
    name: 'garden',
    width: 1280,
    height: 1500,
    enter: place('Garden'),
  },
  { name: 'first-run-dark', width: 1280, height: 860, dark: true, enter: firstPage },
  { name: 'first-run-320-wide', width: 320, height: 1500, enter: firstPage },
  { name: 'this-week-paper', width: 800, height: 1500, onPaper: true, enter: hungryBedTyped },
  { name: 'what-if', width: 1280, height: 1300, enter: whatIfFilled },
  { name: 'what-if-dark', width: 1280, height: 1300, dark: true, enter: whatIfFilled },
  { name: 'what-if-320-wide', width: 320, height: 1500, enter: whatIfFilled },
  { name: 'water', width: 1280, height: 1300, enter: waterOpen },
  { name: 'water-dark', width: 1280, height: 1300, dark: true, enter: waterOpen },
  { name: 'water-320-wide', width: 320, height: 1500, enter: waterOpen },
  { name: 'beds-dark', width: 1280, height: 1500, dark: true, enter: allBeds },
  { name: 'beds-320-wide', width: 320, height: 1500, enter: allBeds },
  { name: 'beds-paper', width: 800, height: 1500, onPaper: true, enter: allBeds },
  { name: 'bed-320-wide', width: 320, height: 2100, enter: bedOpen },
  { name: 'bed-paper', width: 800, height: 2100, onPaper: true, enter: bedOpen },
  { name: 'season-dark', width: 1280, height: 1500, dark: true, enter: season },
  { name: 'season-320-wide', width: 320, height: 1500, enter: season },
  { name: 'season-paper', width: 800, height: 1500, onPaper: true, enter: season },
  { name: 'lawn', width: 1280, height: 1500, enter: place('Lawn') },
  { name: 'lawn-dark', width: 1280, height: 1500, dark: true, enter: place('Lawn') },
  { name: 'lawn-320-wide', width: 320, height: 1500, enter: place('Lawn') },
  { name: 'lawn-paper', width: 800, height: 1500, onPaper: true, enter: place('Lawn') },
  { name: 'tables', width: 1280, height: 1200, enter: place('Tables') },
  { name: 'tables-dark', width: 1280, height: 1200, dark: true, enter: place('Tables') },
  { name: 'tables-320-wide', width: 320, height: 1200, enter: place('Tables') },
  { name: 'tables-paper', width: 800, height: 1200, onPaper: true, enter: place('Tables') },
  { name: 'garden-dark', width: 1280, height: 1500, dark: true, enter: place('Garden') },
  { name: 'garden-320-wide', width: 320, height: 1500, enter: place('Garden') },
  { name: 'garden-paper', width: 800, height: 1500, onPaper: true, enter: place('Garden') },
  { name: 'first-run-paper', width: 800, height: 860, onPaper: true, enter: firstPage },
  { name: 'what-if-paper', width: 800, height: 1300, onPaper: true, enter: whatIfFilled },
  { name: 'water-paper', width: 800, height: 1300, onPaper: true, enter: waterOpen },
  ...inEachLook('mixture', 1200, mixture),
  ...inEachLook('own-garden', 1700, ownAsked, false),
  ...inEachLook('dialog', 900, layerChanged, false),
];

for (const { name, width, height, dark, onPaper, enter } of areTaken ? pictures : [])
  test(`${name}, ${width} wide, fits`, async ({ garden }) => {
    await garden.setViewportSize({ width, height });
    await garden.emulateMedia({ colorScheme: dark ? 'dark' : 'light' });
    await enter(garden);
    if (onPaper) await garden.emulateMedia({ media: 'print' });
    expect(await garden.evaluate(pastTheEdge)).toEqual([]);
    // what is typed in may have brought its field into sight: the picture begins at the head
    await garden.evaluate(() => scrollTo(0, 0));
    await garden.evaluate(() => document.fonts.ready);
    await expect(garden).toHaveScreenshot(`${name}.png`, { timeout: 120_000 });
  });

test('on paper: what the beds say, no fields and no buttons', async ({ garden }) => {
  await openReckoned(garden);
  await garden.emulateMedia({ media: 'print' });
  await expect(garden.getByRole('heading', { name: 'Gate bed' })).toBeVisible();
  await expect(
    garden.getByText('Kitchen bed', { exact: true }).filter({ visible: true }).first(),
  ).toBeVisible();
  await expect(garden.getByText(/All figures are estimates/).filter({ visible: true })).toHaveCount(
    1,
  );
  await expect(garden.getByRole('textbox')).toHaveCount(0);
  await expect(garden.getByRole('button', { name: /Log this mowing|Lay it|Undo/ })).toHaveCount(0);
});

// The list itself: a place without one of its looks is found here, whether pictures are taken or not.
test('every place has its picture in light, dark, narrow and on paper', () => {
  const has = new Set(pictures.map(({ name }) => name));
  const places = [
    'first-run',
    'this-week',
    'what-if',
    'water',
    'beds',
    'bed',
    'season',
    'lawn',
    'tables',
    'mixture',
    'garden',
  ];
  const missing = places.flatMap((name) =>
    looks.map(({ look }) => name + look).filter((wanted) => !has.has(wanted)),
  );
  expect(missing).toEqual([]);
  // no two write one file
  expect(has.size).toBe(pictures.length);
});
