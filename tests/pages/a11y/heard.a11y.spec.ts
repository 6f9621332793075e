// What is said when something on the page changes by itself, and that nothing is said otherwise.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { answerTo, respond } from '../../main/weather/madeService';
import { expect, test } from '../fixtures';
import {
  goTo,
  openReckoned,
  openSample,
  openSampleAt,
  seasonsAreImagined,
  startOwnGarden,
} from '../journeys';
import { hear, heard, listen } from './heard';
import { Person } from './keys';

test('trouble with a field is said when one has left it', async ({ garden }) => {
  await openSample(garden);
  await listen(garden);
  const person = new Person(garden);
  await person.tabTo('textbox', 'What came off?');
  await person.type('2 bgas');
  await person.press('Tab');
  expect(await hear(garden, 'bgas')).toMatch(
    /^What came off\? .*bgas.* Offered beside it: 2 bags\.$/,
  );
  // back in the field the same is tied to it
  await person.press('Shift+Tab');
  await person.press('Shift+Tab');
  expect(await person.focused()).toMatchObject({
    name: 'What came off?',
    states: ['invalid'],
    description: expect.stringContaining('bgas'),
  });
  await person.press('Tab');
  expect((await person.focused()).name).toBe('Use “2 bags”');
  await person.press('Enter');
  expect(await person.focused()).toMatchObject({
    name: 'What came off?',
    value: '2 bags',
    states: [],
  });
  await hear(garden, /^It weighs about/);
});

test('a form with answers missing says how many, and goes to the first', async ({ garden }) => {
  await listen(garden);
  const person = new Person(garden);
  await garden.getByRole('button', { name: 'Start my garden' }).press('Enter');
  await person.tabTo('button', 'Start this garden');
  await person.press('Enter');
  await hear(garden, '3 answers need a look.');
  expect(await person.focused()).toMatchObject({
    name: expect.stringMatching(/^How big is it\?/),
    states: ['invalid'],
    description: expect.stringContaining('Nothing is typed yet'),
  });
});

test('inside a question as well: trouble, a day moved, the effect of a laying', async ({
  garden,
}) => {
  await openReckoned(garden);
  await listen(garden);
  const person = new Person(garden);
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Far bed', exact: true }).press('Enter');
  await person.tabTo('button', 'Water…');
  await person.press('Enter');
  await person.press('Enter');
  await hear(garden, /^How much\? .*Nothing is typed yet/);
  await person.type('10 mm');
  await person.tabTo('textbox', 'When?');
  await person.press('ArrowDown');
  await hear(garden, 'Fri 14 June 2013');
  await person.tabTo('button', 'A day earlier');
  expect((await person.focused()).description).toBe('When?');
  await person.press('Enter');
  await hear(garden, 'Thu 13 June 2013');
  await garden.keyboard.press('Escape');

  // what is refused is gone to, also from another field
  await person.tabTo('button', 'Soil test…');
  await person.press('Enter');
  await person.type('lots');
  await person.tabTo('textbox', 'Organic matter (%)');
  await person.press('Enter');
  await expect(garden.getByLabel('Nitrate-N (mg/kg)')).toBeFocused();
  expect(await person.focused()).toMatchObject({
    states: ['invalid'],
    description: expect.stringContaining('No number stands at the start'),
  });
  await garden.keyboard.press('Escape');

  await person.tabTo('button', 'Lay something…');
  await person.press('Enter');
  await person.tabTo('combobox', 'What');
  await person.press('End');
  await person.tabTo('textbox', 'How much?');
  await person.type('5 cm');
  expect(await hear(garden, /^Far bed with this/)).toMatch(/nitrogen .*; cover good, before /);
});

test('files: saved, changed, refused, opened', async ({ garden, folder }) => {
  await openReckoned(garden);
  await listen(garden);
  const person = new Person(garden);
  const name = garden.getByLabel('Name of the file');
  await person.press('Control+s');
  await expect(name).toBeFocused();
  await person.press('Enter');
  await hear(garden, 'Saved as “Sorrel Lane”.');
  // it is said before the question has gone, which takes no commands meanwhile
  await expect(name).toHaveCount(0);
  await person.press('Control+Shift+S');
  await expect(name).toBeFocused();
  await person.press('Enter');
  await hear(garden, 'A garden called “Sorrel Lane” is already there.');
  await person.press('Escape');
  await garden.getByRole('button', { name: 'Go on a week' }).press('Enter');
  await hear(garden, 'It is now Saturday 22 June 2013.');
  await person.press('Control+s');
  await expect
    .poll(async () => (await heard(garden)).filter((words) => words.startsWith('Saved')))
    .toHaveLength(2);
  const broken = join(folder, 'broken.mowings');
  await writeFile(broken, 'no garden');
  await person.press('Control+o');
  await garden.getByLabel('A garden file').setInputFiles(broken);
  await hear(garden, /broken.*(not|no) /);
});

test('what became of the beds, and earlier mowings before they are kept', async ({ garden }) => {
  await openReckoned(garden);
  await listen(garden);
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).press('Enter');
  await garden.getByRole('button', { name: 'Delete Sweet potatoes' }).press('Enter');
  await hear(garden, 'Deleted: Sweet potatoes. Undo brings it back.');
  await hear(garden, 'Gate bed: now nothing planted, before over-fed.');
  await garden.keyboard.press('Control+z');
  await hear(garden, 'Undone: ');
  await hear(garden, 'Gate bed: now over-fed, before nothing planted.');

  await goTo(garden, 'This week');
  await garden.getByText('Catch up on earlier mowings in one line').press('Enter');
  await garden
    .getByLabel('What was mown before, and where it went')
    .fill('on the tomatoes about a bag a week since 4 May');
  await hear(garden, /^This makes 7 mowings, laid on South wall/);
});

test('a weather file: what was understood of it, before it is kept', async ({ garden, folder }) => {
  await openSampleAt(garden, 'Garden');
  const record = join(folder, 'record.csv');
  await writeFile(record, 'date,low,high,rain\n01/02/2013,2,9,0\n02/02/2013,1,8,0\n');
  await garden.getByRole('button', { name: 'Bring measured weather…' }).press('Enter');
  await listen(garden);
  await garden.getByLabel('A weather file').setInputFiles(record);
  // in short: its columns and lines can be read at leisure
  await hear(garden, /a table with one line a day/);
  const said = (await heard(garden)).find((words) => words.includes('a table with one line'));
  expect(said).toMatch(/^0 new days would be added .* No gaps\. Nothing refused\.$/);
  expect(said).not.toContain('by its heading');
});

test('weather by place: being asked for, and what came', async ({ garden, weather }) => {
  weather.answerWith((response, url) => respond(response, answerTo(url)));
  await startOwnGarden(garden);
  await goTo(garden, 'Garden');
  await garden.getByRole('button', { name: 'See what it would send…' }).press('Enter');
  await listen(garden);
  const person = new Person(garden);
  await person.tabTo('textbox', 'Longitude (degrees)');
  await person.type('74 W');
  await person.press('Enter');
  await hear(garden, /^Asking /);
  await expect
    .poll(() => person.focused())
    .toMatchObject({
      name: 'Take these days',
      description: expect.stringMatching(/would be added/),
    });
});

test('a mixture: what its change came to, in short, and where one goes on', async ({ garden }) => {
  await openSampleAt(garden, 'Tables');
  await listen(garden);
  const person = new Person(garden);
  await garden.getByRole('radio', { name: 'A mixture' }).check();
  await garden.getByText(/^It comes to/).waitFor();
  await person.tabTo('button', 'And something else');
  await person.press('Enter');
  await expect.poll(async () => (await person.focused()).name).toBe('Material 3');
  await person.tabTo('textbox', /^How much of clippings/);
  await person.press('Control+A');
  await person.type('20 kg');
  await hear(
    garden,
    /^[^.]* of autumn leaves, chopped\. It comes to [^.]* of carbon to 1 of nitrogen, \d+ % water\.$/,
  );
  expect((await heard(garden)).filter((words) => words.length > 120)).toEqual([]);
});

test('a crop too soon after its own family: with the bed it is given, and as the bed is picked', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Beds');
  await listen(garden);
  const person = new Person(garden);
  await garden.getByRole('button', { name: 'Copy a season…' }).press('Enter');
  await garden.getByRole('combobox', { name: 'Season' }).selectOption('2012');
  expect(await person.tabTo('combobox', 'Bed for winter rye')).toMatchObject({
    value: 'Far bed',
    description: expect.stringContaining('Winter rye after its own family'),
  });
  await person.press('ArrowUp');
  expect(await person.focused()).toMatchObject({ value: 'Resting bed', description: '' });
  await person.press('ArrowDown');
  await hear(garden, /^Winter rye after its own family/);
});

test('the dots of a bed say what is done to their line, not that they came', async ({ garden }) => {
  await openSampleAt(garden, 'Beds');
  await listen(garden);
  const person = new Person(garden);
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).press('Enter');
  await person.tabTo('slider', 'The line over the dots');
  await seasonsAreImagined(garden);
  await person.press('ArrowRight');
  await hear(garden, /dots lie past/);
  expect((await heard(garden)).filter((words) => words.includes('dots lie past'))).toHaveLength(1);
});

test('walking through the page says nothing', async ({ garden }) => {
  await listen(garden);
  await openSample(garden);
  const person = new Person(garden);
  await hear(garden, 'reckoned');
  await person.tabTo('button', 'Show all 10');
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).press('Enter');
  await person.tabTo('radio', /^what I write down/);
  await garden.waitForTimeout(1200);
  expect((await heard(garden)).filter((words) => !words.includes('reckoned'))).toEqual([]);
});
