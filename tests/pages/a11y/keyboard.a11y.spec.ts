// Without a pointer: every stop of the Tab key in its order, seen, and nothing lost on the way.
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from '../fixtures';
import {
  goTo,
  openReckoned,
  openSample,
  openSampleAt,
  openSampleImagined,
  planIsMade,
  seasonsAreImagined,
} from '../journeys';
import { hear, listen } from './heard';
import { Person, type Focused } from './keys';
import { orderLines, walkByTab } from './tabWalk';

const recorded = join(import.meta.dirname, 'tabOrder.txt');

/** Places of the window with what is open in them, in the order one meets them. */
const places: readonly (readonly [name: string, enter: (garden: Page) => Promise<unknown>])[] = [
  ['First run', (garden) => garden.getByRole('button', { name: 'Start my garden' }).waitFor()],
  ['Five answers', (garden) => garden.getByRole('button', { name: 'Start my garden' }).click()],
  [
    'This week',
    async (garden) => {
      await garden.getByRole('button', { name: 'Back' }).click();
      // a caution of the odds lifts a quiet bed among the others
      await openSampleImagined(garden);
      await garden.getByText('Why these figures').first().click();
    },
  ],
  ['Beds', (garden) => goTo(garden, 'Beds')],
  [
    'A bed, with its tables',
    async (garden) => {
      await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
      await garden.getByRole('button', { name: 'The same numbers as a table' }).click();
      await garden.getByRole('button', { name: 'The same as a list' }).click();
      // what is worth measuring has buttons, and comes with the imagined seasons
      await seasonsAreImagined(garden);
    },
  ],
  [
    'Season, a planting chosen, with its tables',
    async (garden) => {
      await goTo(garden, 'Season');
      await garden.getByRole('button', { name: 'The same numbers as a table' }).click();
      await garden.getByRole('button', { name: /^Tomatoes on South wall/ }).click();
      await garden.getByRole('group', { name: 'Tomatoes', exact: true }).waitFor();
    },
  ],
  [
    'Garden, a bed open',
    async (garden) => {
      await goTo(garden, 'Garden');
      await garden.getByText('The months in use').click();
      await garden.locator('summary', { hasText: 'Gate bed' }).click();
    },
  ],
  [
    'Lawn, its weeks as a table, a lawn open',
    async (garden) => {
      await goTo(garden, 'Lawn');
      await garden.getByRole('button', { name: 'The same numbers as a table' }).first().click();
      await garden.locator('.thing > summary').filter({ hasText: 'Back lawn' }).click();
      await garden.getByRole('button', { name: 'Delete Back lawn' }).waitFor();
    },
  ],
  [
    'Tables, some materials found, one open',
    async (garden) => {
      await goTo(garden, 'Tables');
      await garden.getByLabel('Find a material').fill('straw');
      await garden.getByRole('button', { name: 'Wheat straw', exact: true }).click();
      await garden.getByRole('button', { name: 'Make a row of my own from it' }).waitFor();
    },
  ],
  [
    'Tables, a mixture',
    async (garden) => {
      await garden.getByRole('radio', { name: 'A mixture' }).check();
      await garden.getByText(/^It comes to/).waitFor();
    },
  ],
];

const nameless = (stops: readonly Focused[]) => stops.filter(({ name }) => name === '');

test('Tab goes through every place as one reads it', async ({ garden }, info) => {
  const sections: string[] = [];
  for (const [name, enter] of places) {
    await enter(garden);
    const { stops, findings } = await walkByTab(garden);
    expect.soft(findings, name).toEqual([]);
    expect.soft(nameless(stops), `${name}: stops without a name`).toEqual([]);
    sections.push([`# ${name}`, ...orderLines(stops)].join('\n'));
  }
  const order = `${sections.join('\n\n')}\n`;
  // `npm run test:pages -- a11y/keyboard --update-snapshots` writes it anew, and the diff shows what changed
  if (info.config.updateSnapshots === 'all' || info.config.updateSnapshots === 'changed')
    await writeFile(recorded, order);
  expect(order, 'tabOrder.txt; if the new order is meant, run with --update-snapshots').toBe(
    await readFile(recorded, 'utf8'),
  );
});

for (const [how, media, size] of [
  ['in contrast colours', { forcedColors: 'active' }, { width: 1280, height: 860 }],
  ['at 400 %', {}, { width: 320, height: 256 }],
] as const)
  test(`what is focused is seen, ${how}`, async ({ garden }) => {
    await garden.emulateMedia(media);
    await garden.setViewportSize(size);
    for (const [name, enter] of places) {
      await enter(garden);
      const { stops, findings } = await walkByTab(garden);
      expect.soft(findings, name).toEqual([]);
      // a table that scrolls only here is a stop only here, and says what it is
      expect.soft(nameless(stops), `${name}: stops without a name`).toEqual([]);
    }
  });

for (const size of [
  { width: 1280, height: 600 },
  { width: 320, height: 256 },
])
  test(`a notice at the foot of the window covers nothing that is focused, ${size.width} px wide`, async ({
    garden,
  }) => {
    await openSample(garden);
    await garden.setViewportSize(size);
    await garden
      .getByRole('button', { name: /^Delete the mowing/ })
      .first()
      .press('Enter');
    await expect(garden.getByRole('group', { name: 'Deleted' })).toBeVisible();
    await planIsMade(garden);
    const { findings, stops } = await walkByTab(garden);
    expect(findings).toEqual([]);
    expect(stops.map(({ name }) => name)).toContain('Undo this');
    const person = new Person(garden);
    await garden.getByRole('button', { name: 'Undo this' }).press('Enter');
    await expect.poll(() => person.focused()).toMatchObject({ role: 'heading', name: 'This week' });
  });

test('a long text in a dialog is read on by keys at 400 %', async ({ garden }) => {
  await garden.setViewportSize({ width: 320, height: 256 });
  const person = new Person(garden);
  await person.tabTo('button', 'Garden file');
  await person.press('Enter');
  await person.tabTo('button', 'How to read this');
  await person.press('Enter');
  await expect
    .poll(() => person.focused())
    .toMatchObject({ role: 'heading', name: 'How to read this' });
  await person.press('End');
  const last = garden.getByRole('dialog').locator('p').last();
  await expect(last).toBeInViewport({ ratio: 0.5 });
});

test('focus comes back to what opened a question', async ({ garden }) => {
  await openSample(garden);
  const person = new Person(garden);
  const comesBack = async (role: string, name: string | RegExp) => {
    const opener = await person.tabTo(role, name);
    await person.press('Enter');
    await expect(garden.getByRole('dialog'), opener.name).toHaveCount(1);
    expect((await person.dialog()).name, opener.name).not.toBe('');
    await person.press('Escape');
    await expect(garden.getByRole('dialog'), opener.name).toHaveCount(0);
    expect(await person.focused()).toEqual(opener);
  };
  await comesBack('button', 'Change the answer');
  await comesBack('button', /^Change the mowing/);

  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).press('Enter');
  for (const name of ['Lay something…', 'Water…', 'Rain…', 'Harvest…', 'Soil test…', 'Rake off…'])
    await comesBack('button', name);
  await comesBack('button', /^Change .*Clippings$/);
  await comesBack('button', 'Sow or plant something…');
  await comesBack('button', 'Change Sweet potatoes');

  await goTo(garden, 'Garden');
  await person.tabTo('DisclosureTriangle', /^bag/);
  await person.press('Enter');
  await comesBack('button', /^Weigh one bag/);

  // kept, not called off: back to the button as well
  await garden.getByRole('button', { name: /^Weigh one bag/ }).press('Enter');
  await person.press('Control+A');
  await person.type('12 kg');
  await person.press('Enter');
  await expect(garden.getByRole('dialog')).toHaveCount(0);
  expect((await person.focused()).name).toMatch(/^Weigh one bag/);
});

test('a first save gives back the field one was in, and what was being typed', async ({
  garden,
}) => {
  await openSample(garden);
  const person = new Person(garden);
  await person.tabTo('textbox', 'What came off?');
  await person.type('2 ba');
  await person.press('Control+s');
  await expect.poll(async () => (await person.focused()).name).toBe('Name of the file');
  await person.press('Enter');
  await expect(garden.getByRole('dialog')).toHaveCount(0);
  expect(await person.focused()).toMatchObject({ name: 'What came off?', value: '2 ba' });
});

test('focus is never thrown to the top of the page', async ({ garden }) => {
  const person = new Person(garden);
  const landsOn = (name: string | RegExp) =>
    expect.poll(async () => (await person.focused()).name).toMatch(name);
  await person.tabTo('button', 'Start my garden');
  await person.press('Enter');
  // the first question, so that an answer can be typed at once
  await landsOn(/^How big is it/);
  await garden.getByRole('button', { name: 'Back' }).press('Enter');
  await landsOn('Where should the grass go?');
  await openSample(garden);
  await landsOn('This week');

  // something deleted: its neighbour, and what can be used there first
  await person.tabTo('button', /^Delete the mowing of Sunday 9 June/);
  await person.press('Enter');
  await landsOn(/^Change the mowing of 1 June/);
  // a choice that takes itself away: the part of the page it stood in
  await garden.getByRole('button', { name: 'back on the lawn' }).press('Enter');
  await landsOn('Clippings in hand');
  // nothing left to undo: the button is still there to say so
  const undo = garden.getByRole('button', { name: /^Undo/ });
  await undo.press('Enter');
  await undo.press('Enter');
  await expect(undo).toBeDisabled();
  expect(await person.focused()).toMatchObject({ name: 'Undo', states: ['disabled'] });
  await garden.getByRole('button', { name: 'Another bed' }).press('Enter');
  expect(await person.focused()).toMatchObject({ role: 'combobox', name: 'On which bed?' });
  await garden.getByRole('button', { name: 'Drop this line' }).last().press('Enter');
  await landsOn(/./);

  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).press('Enter');
  await landsOn('Gate bed');
  await garden.getByRole('button', { name: 'Delete Sunday 9 June: Clippings' }).press('Enter');
  await landsOn('Change 28 May: soil test');
  await garden.getByRole('button', { name: 'Delete Sweet potatoes' }).press('Enter');
  await landsOn('Sow or plant something…');
  await garden.getByRole('button', { name: 'All beds' }).press('Enter');
  await landsOn('Beds');
});

test('a layer is laid on a day that was meant, or not at all', async ({ garden }) => {
  await openReckoned(garden);
  const person = new Person(garden);
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Far bed', exact: true }).press('Enter');
  await person.tabTo('button', 'Lay something…');
  await person.press('Enter');
  await person.tabTo('combobox', 'What');
  await person.press('End');
  await person.tabTo('textbox', 'How much?');
  await person.type('1 cm');
  await person.tabTo('textbox', 'Laid when?');
  await person.press('Control+A');
  await person.type('20 June');
  await person.tabTo('button', 'Lay it');
  await person.press('Enter');
  await expect
    .poll(() => person.focused())
    .toMatchObject({ name: 'Laid when?', value: '20 June', states: ['invalid'] });
  await expect(garden.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
});

test('a planting’s bed is picked by arrows, one bed after the other', async ({ garden }) => {
  await openSampleAt(garden, 'Season');
  await listen(garden);
  const person = new Person(garden);
  await garden.getByRole('button', { name: /^Tomatoes on South wall/ }).press('Enter');
  await person.tabTo('combobox', 'Bed');
  for (const bed of ['Bean row, grass half', 'Bean row, straw half']) {
    await person.press('ArrowDown');
    await hear(garden, `Tomatoes: now on ${bed}. Undo puts it back.`);
    // its fields are on another strip now, and one is where one was in them
    expect(await person.focused()).toMatchObject({ role: 'combobox', name: 'Bed', value: bed });
  }
});

test('what was added is gone on with, and ticking begins and ends where it should', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Garden');
  const person = new Person(garden);
  const landsIn = (value: string) =>
    expect.poll(() => person.focused()).toMatchObject({ role: 'textbox', value });
  await garden.getByRole('button', { name: 'Add a bag or bucket' }).press('Enter');
  await landsIn('bucket 2');
  await garden.getByRole('button', { name: 'Add a heap' }).press('Enter');
  await landsIn('Heap 2');
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Choose several…' }).press('Enter');
  await expect
    .poll(() => person.focused())
    .toMatchObject({
      role: 'group',
      name: 'For the beds you tick',
      description: 'Tick the beds it is for.',
    });
  await garden.getByRole('button', { name: 'Done' }).press('Enter');
  await expect.poll(async () => (await person.focused()).name).toBe('Choose several…');
});

test('figures that stand together are one stop, and arrows lead to every one', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Beds');
  const person = new Person(garden);
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).press('Enter');
  // its page comes in parts: all of it first
  await seasonsAreImagined(garden);
  const ledger = garden.getByRole('table', { name: /^Nitrogen from the morning/ });
  const figures = ledger.getByRole('button', { name: /: why\?$/ });
  const first = await person.tabTo('button', /^[\d.]+, ready in the soil, as deep as roots go/);
  const names = await figures.evaluateAll((all) => all.map((one) => one.ariaLabel ?? ''));
  expect(names.length).toBeGreaterThan(10);
  // who comes by keys is told how to go on, by ear and by eye
  expect(first.description).toMatch(/^Arrow keys lead to the other figures here/);
  const hint = garden.locator('.key-hint');
  await expect(hint).toHaveText(first.description);
  const met = [first.name];
  for (const _ of names.slice(1)) {
    await person.press('ArrowDown');
    met.push((await person.focused()).name);
  }
  expect(met).toEqual(names);
  await person.press('Enter');
  expect((await person.focused()).states).toContain('expanded');
  await person.press('Escape');
  // on to what comes after the table, and back to the figure one was at
  await person.press('Tab');
  expect(names).not.toContain((await person.focused()).name);
  await person.press('Shift+Tab');
  expect((await person.focused()).name).toBe(names.at(-1));
  await person.tabTo('DisclosureTriangle', 'Who to ask first');
  await expect(hint).toHaveCount(0);
});

test('letters alone do nothing outside a field', async ({ garden }) => {
  await openSampleImagined(garden);
  const before = await garden.locator('main').ariaSnapshot();
  const focus = new Person(garden);
  await focus.tabTo('button', 'Open Gate bed');
  for (const letter of 'abcdefghijklmnopqrstuvwxyz0123456789?/.,-+') await focus.press(letter);
  expect((await focus.focused()).name).toBe('Open Gate bed');
  expect(await garden.locator('main').ariaSnapshot()).toBe(before);
});

test('choosing moves neither focus nor page', async ({ garden }) => {
  await openSample(garden);
  const person = new Person(garden);
  const stays = async (role: string, name: string | RegExp, key: string) => {
    const before = await person.tabTo(role, name);
    const at = garden.url();
    await person.press(key);
    // a field shows its new words when the garden has taken them
    await expect.poll(() => person.focused()).not.toEqual(before);
    const after = await person.focused();
    expect(after.role).toBe(before.role);
    expect(garden.url()).toBe(at);
    await expect(garden.getByRole('dialog')).toHaveCount(0);
    return after;
  };
  await garden.getByRole('region', { name: 'Mown again?' }).getByText('Change').press('Enter');
  expect((await stays('combobox', 'On which bed?', 'ArrowDown')).name).toBe('On which bed?');
  expect((await stays('radio', /^just cut/, 'ArrowRight')).name).toMatch(/^limp/);
  expect((await stays('radio', /^damp/, 'ArrowRight')).states).toContain('checked');
  expect((await stays('textbox', 'When?', 'ArrowDown')).value).toBe('Fri 14 June 2013');
  await goTo(garden, 'Garden');
  expect((await stays('radio', /^metres/, 'ArrowRight')).name).toMatch(/^feet/);
});

test('a press acts when it is let go, and does nothing where the pointer slid off before', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Beds');
  await goTo(garden, 'This week');
  const button = garden.getByRole('button', { name: /^Delete the mowing/ }).first();
  await button.hover();
  await garden.mouse.down();
  await expect(garden.getByRole('group', { name: 'Deleted' })).toHaveCount(0);
  await garden.mouse.move(4, 4);
  await garden.mouse.up();
  await expect(garden.getByRole('group', { name: 'Deleted' })).toHaveCount(0);
  await expect(garden.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
  await button.hover();
  await garden.mouse.down();
  await garden.mouse.up();
  await expect(garden.getByRole('group', { name: 'Deleted' })).toBeVisible();
});
