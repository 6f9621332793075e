// A Saturday for a gardener who does not see: names, what is focused and what is said is all there
// is to go by. Nothing here looks at the page; only the file at the end is read from the disk.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseGarden } from '../../../app/document/parse';
import { expect, test } from '../fixtures';
import { planIsMade } from '../journeys';
import { hear, heard, listen } from './heard';
import { Person } from './keys';

test('from the sample to a saved file, by ear', async ({ garden, program }) => {
  await listen(garden);
  const person = new Person(garden);
  let from = 0;
  /** something said since the last thing that was listened for */
  const next = async (wanted: string | RegExp) => {
    const words = await hear(garden, wanted, from);
    from = (await heard(garden)).lastIndexOf(words) + 1;
    return words;
  };

  await person.tabTo('button', 'Look round Sorrel Lane');
  await person.press('Enter');
  expect(await next('reckoned')).toBe('9 beds are reckoned. Over-fed: Gate bed. Short: Far bed.');

  await person.tabTo('textbox', 'What came off?');
  await person.type('2 bags');
  expect(await next('It weighs')).toMatch(
    /^It weighs about \d+ kg, likely \d+ to \d+ kg \(8 times in 10\)\. .*Nitrogen in it about \d+ g, likely/,
  );
  await person.press('Enter');
  await next('Logged: 2 bags from Back lawn. The plan follows.');
  expect(await person.focused()).toMatchObject({
    role: 'heading',
    name: 'What to do this week',
  });
  await planIsMade(garden);
  await next(/^The plan is there\. .*Far bed: .*buckets of clippings of Back lawn/);

  await person.tabTo('combobox', 'On which bed?');
  await person.type('Gate');
  expect((await person.focused()).value).toBe('Gate bed (over-fed)');
  await person.tabTo('textbox', 'How much?');
  await person.type('1 bag');
  expect(await next('Gate bed with this')).toMatch(
    /nitrogen over-fed as before; cover good as before\. \d stops: .*times what the crop can use/,
  );

  await person.tabTo('button', 'Lay it');
  await person.press('Enter');
  await expect.poll(async () => (await person.focused()).name).toBe('Go back and change it');
  // the question is read out with its reasons, and with what else could be done
  expect(await person.dialog()).toMatchObject({
    role: 'dialog',
    name: 'Stop: better not on Gate bed',
    description: expect.stringMatching(/times what the crop can use.*Lay it on a hungrier bed/),
  });
  const stopsAt = await person.dialog();
  await person.tabTo('button', 'Lay it all the same');
  await person.press('Enter');
  await next('Not ticked yet: Gate bed.');
  expect(await person.dialog()).toEqual(stopsAt);
  await person.tabTo(
    'checkbox',
    /^I have read these \d stops, and lay it on Gate bed all the same\.$/,
  );
  await person.press('Space');
  expect((await person.focused()).states).toContain('checked');
  await person.tabTo('button', 'Lay it all the same');
  await person.press('Enter');
  await next('Laid on Gate bed. Undo takes it back.');
  expect((await person.focused()).role).toBe('heading');

  await person.press('Control+z');
  await next(/^Undone: Lay .* on Gate bed\.$/);
  await person.press('Control+y');
  await next(/^Done again: Lay .* on Gate bed\.$/);
  await planIsMade(garden);

  // the caution is on the bed afterwards: its line tells why
  await person.tabTo('button', 'Open Gate bed');
  await person.press('Enter');
  await expect.poll(() => person.focused()).toMatchObject({ role: 'heading', name: 'Gate bed' });
  expect(await person.tabTo('DisclosureTriangle', 'Why this line')).toMatchObject({
    description: expect.stringMatching(/^stop .*times what/),
    states: ['collapsed'],
  });
  await person.tabTo('slider', 'Day in the season of Gate bed');
  await person.press('ArrowLeft');
  expect(await next('Friday 14 June 2013')).toMatch(/ready in the soil/);
  expect((await person.focused()).value).toBe('14 June');

  await person.press('Control+s');
  await expect
    .poll(() => person.focused())
    .toMatchObject({
      role: 'textbox',
      name: 'Name of the file',
      description: expect.stringContaining(program.gardensFolder),
    });
  await person.press('Control+A');
  await person.type('Saturday');
  await person.press('Enter');
  await next('Saved as “Saturday”.');

  const saved = parseGarden(
    await readFile(join(program.gardensFolder, 'Saturday.mowings'), 'utf8'),
  );
  expect(saved.ok).toBe(true);
  if (!saved.ok) return;
  const mowing = saved.value.mowings.find(({ amount }) => amount.text === '2 bags');
  const latest = saved.value.applications.at(-1);
  expect(latest).toMatchObject({
    amount: { text: '1 bag' },
    bedId: saved.value.beds.find(({ name }) => name === 'Gate bed')?.id,
  });
  expect(latest?.passedStops.length).toBeGreaterThan(0);
  expect(mowing).toBeDefined();
});
