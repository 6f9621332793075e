// The season: dates of a planting changed by typing, by drag and by keys alone, each one step to undo.
import type { Page } from '@playwright/test';
import { Person } from './a11y/keys';
import { expect, test } from './fixtures';
import { openSampleAt } from './journeys';

const tomatoes = (garden: Page) => garden.getByRole('button', { name: /^Tomatoes on South wall/ });
// tests/documents/gardens: planted out on 18 May, a hundred and more days of the crop's row to its end
const asWritten = /^Tomatoes on South wall: planted 18 May, to about /;

async function openSeason(garden: Page): Promise<void> {
  await openSampleAt(garden, 'Season');
  await expect(garden.getByRole('heading', { name: 'Season', level: 1 })).toBeVisible();
  await expect(tomatoes(garden)).toHaveAccessibleName(asWritten);
}
async function undo(garden: Page): Promise<void> {
  await garden.keyboard.press('Control+z');
  await expect(tomatoes(garden)).toHaveAccessibleName(asWritten);
}
/** How far days lie apart on the screen [px]. */
async function dayWidth(garden: Page): Promise<number> {
  const axis = garden.getByRole('slider', { name: 'Day shown' });
  const box = (await axis.boundingBox())!;
  const days = Number(await axis.getAttribute('aria-valuemax')) + 1;
  // margins of the strips at the left and the right (app/charts/strips/layout.ts)
  return (box.width - 38 - 8) / days;
}

test('a date is typed, and undone in one step', async ({ garden }) => {
  await openSeason(garden);
  await tomatoes(garden).click();
  const fields = garden.getByRole('group', { name: 'Tomatoes', exact: true });
  await expect(fields.getByLabel('Planted', { exact: true })).toBeFocused();
  await fields.getByLabel('Planted', { exact: true }).fill('1 June');
  await fields.getByLabel('Planted', { exact: true }).press('Enter');
  await expect(tomatoes(garden)).toHaveAccessibleName(/planted 1 June, to about/);
  await fields.getByLabel('Cleared').fill('20 September');
  await fields.getByLabel('Cleared').press('Enter');
  await expect(tomatoes(garden)).toHaveAccessibleName(/planted 1 June, cleared 20 September/);
  // picked after it is gone, or gone before it is picked, is refused beside the field
  await fields.getByLabel('First pick').fill('21 September');
  await fields.getByLabel('First pick').press('Enter');
  await expect(fields.getByText(/^That is after Fri 20 September 2013/)).toBeVisible();
  await fields.getByLabel('First pick').fill('');
  await fields.getByLabel('First pick').press('Enter');
  await expect(fields.getByText(/^That is after/)).toHaveCount(0);
  await garden.keyboard.press('Escape');
  await expect(fields).toHaveCount(0);
  await expect(tomatoes(garden)).toBeFocused();
  await garden.keyboard.press('Control+z');
  await expect(tomatoes(garden)).toHaveAccessibleName(/planted 1 June, to about/);
  await undo(garden);
});

test('a planting is dragged whole and by its end; Escape puts it back', async ({ garden }) => {
  await openSeason(garden);
  const pxPerDay = await dayWidth(garden);
  const drag = async (at: 'middle' | 'end', days: number) => {
    const bar = tomatoes(garden);
    await bar.scrollIntoViewIfNeeded();
    const box = (await bar.boundingBox())!;
    const x = at === 'middle' ? box.x + box.width / 2 : box.x + box.width - 4;
    await garden.mouse.move(x, box.y + box.height / 2);
    await garden.mouse.down();
    await garden.mouse.move(x + (days * pxPerDay) / 2, box.y + box.height / 2);
    await garden.mouse.move(x + days * pxPerDay, box.y + box.height / 2);
  };
  await drag('middle', 10);
  // shown while it is under way, and nothing of the garden has changed
  await expect(tomatoes(garden)).toHaveAccessibleName(/planted 28 May/);
  await garden.keyboard.press('Escape');
  await expect(tomatoes(garden)).toHaveAccessibleName(asWritten);
  await garden.mouse.up();
  await expect(tomatoes(garden)).toHaveAccessibleName(asWritten);
  await expect(garden.getByRole('button', { name: /^Undo/ })).toHaveAttribute(
    'aria-disabled',
    'true',
  );

  await drag('middle', 10);
  await garden.mouse.up();
  await expect(tomatoes(garden)).toHaveAccessibleName(/planted 28 May, to about/);
  await undo(garden);

  await drag('end', -20);
  await garden.mouse.up();
  await expect(tomatoes(garden)).toHaveAccessibleName(/planted 18 May, cleared/);
  await undo(garden);
});

test('by keys alone: a day chosen and read, a planting moved', async ({ garden }) => {
  await openSeason(garden);
  const person = new Person(garden);
  await person.tabTo('slider', 'Day shown');
  await person.press('PageDown');
  await expect(garden.getByRole('slider', { name: 'Day shown' })).toHaveAttribute(
    'aria-valuetext',
    'Saturday 8 June 2013',
  );
  await expect(garden.getByText(/^8 June: .* ready$/).first()).toBeVisible();
  // all beds are one stop: up and down from bed to bed, left and right along one
  await person.tabTo('button', 'Gate bed, 1 of 9');
  await person.press('Tab');
  expect((await person.focused()).name).toBe('Back lawn');
  await person.press('Shift+Tab');
  await person.press('ArrowRight');
  expect((await person.focused()).name).toMatch(/ready, Gate bed: why\?$/);
  await person.press('ArrowRight');
  expect((await person.focused()).name).toMatch(/^Sweet potatoes on Gate bed/);
  for (let step = 0; step < 8; step++) {
    if (/^Tomatoes on/.test((await person.focused()).name)) break;
    await person.press('ArrowDown');
  }
  await expect(tomatoes(garden)).toBeFocused();
  await person.press('Shift+ArrowRight');
  await person.press('PageUp');
  await expect(tomatoes(garden)).toHaveAccessibleName(/planted 26 May/);
  await person.press('Escape');
  await expect(tomatoes(garden)).toHaveAccessibleName(asWritten);
  await person.press('Shift+ArrowLeft');
  await person.press('Enter');
  await expect(tomatoes(garden)).toHaveAccessibleName(/planted 17 May, to about/);
  await undo(garden);
});

test('other seasons, many words for one bed, and the numbers as tables', async ({ garden }) => {
  await openSeason(garden);
  await garden.getByLabel('Beds with this name or crop').fill('basil');
  await expect(garden.getByText('1 of 9 beds.')).toBeVisible();
  await garden.getByRole('button', { name: 'The same numbers as a table' }).click();
  const ready = garden.getByRole('group', { name: 'Nitrogen ready, bed by bed' });
  await expect(ready.getByRole('row')).toHaveCount(2);
  await garden.getByRole('button', { name: 'Later' }).click();
  // gone on with from what this season leaves
  await expect(garden.getByText(/^Each imagined season goes on from its own end/)).toBeVisible();
  const likely = /^1 January: [\d.]+ g\/m² ready, likely [\d.]+ to [\d.]+$/;
  await expect(garden.getByText(likely)).toBeVisible();
  await expect(ready.getByRole('row').last().getByRole('cell').first()).toHaveText(
    /^[\d.]+[\d.]+ to [\d.]+$/,
  );
  await garden.getByRole('button', { name: /^1 January: .*: why\?$/ }).click();
  await expect(garden.getByText(/^The range is from [\d,]+ imagined seasons/)).toBeVisible();
  await expect(garden.getByRole('button', { name: 'Later' })).toHaveAttribute(
    'aria-disabled',
    'true',
  );
});
