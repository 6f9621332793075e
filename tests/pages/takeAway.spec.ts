// Charts leave the window as a drawing, a picture and numbers, on both sides.
import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from './fixtures';
import { openSampleAt } from './journeys';

test('a ledger is taken away as drawing, picture and numbers, and nothing is written over', async ({
  garden,
  program,
  side,
}) => {
  const name = 'Ledger of Far bed, this season so far 2013-06-15';
  const path = (ending: string) => join(program.gardensFolder, `${name}.${ending}`);
  if (side === 'bridge') program.dialogAnswers.save.push(path('svg'), path('png'), path('csv'));
  await openSampleAt(garden, 'Beds');
  await garden.getByRole('button', { name: 'Far bed', exact: true }).click();
  await garden.getByRole('button', { name: /^Keep a copy: Ledger/ }).click();
  const menu = garden.getByRole('group', { name: 'Keep a copy' });
  for (const [button, ending] of [
    ['Drawing, sharp at any size (SVG)', 'svg'],
    ['Picture (PNG)', 'png'],
    ['Numbers, for a spreadsheet (CSV)', 'csv'],
  ] as const) {
    await menu.getByRole('button', { name: button }).click();
    await expect(menu.getByText(`Written as “${name}.${ending}”`)).toBeVisible();
  }

  const drawing = await readFile(path('svg'), 'utf8');
  // self-contained: no class, variable or address that only the window knows
  expect(drawing).not.toMatch(/ class="|var\(|light-dark|https?:\/\/(?!www\.w3\.org)/);
  expect(drawing).toMatch(/@font-face\{[^}]*url\(data:/);
  expect(drawing).toContain('<title>Ledger of Far bed, this season so far, Saturday 15 June 2013');
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(drawing) ?? [];

  const picture = await readFile(path('png'));
  expect(picture.subarray(1, 4).toString()).toBe('PNG');
  // PNG, header: width and height in big-endian bytes 16 to 23; two pixels for each of the drawing
  expect(picture.readUInt32BE(16)).toBe(Math.round(2 * Number(width)));
  expect(picture.readUInt32BE(20)).toBe(Math.round(2 * Number(height)));

  const numbers = await readFile(path('csv'), 'utf8');
  expect(numbers).toMatch(/^\uFEFFfirst day,last day,from,to,nitrogen \[g\/m²\],/);

  if (side === 'bridge') return;
  await menu.getByRole('button', { name: 'Numbers, for a spreadsheet (CSV)' }).click();
  await expect(menu.getByText('is already there')).toBeVisible();
  await menu.getByRole('button', { name: 'Keep both' }).click();
  await expect(menu.getByText(`Written as “${name} (2).csv”`)).toBeVisible();
  expect(
    (await readdir(program.gardensFolder)).filter((file) => file.endsWith('.csv')),
  ).toHaveLength(2);
  // the button that was pressed has gone: the focus is where Escape is heard
  await expect(garden.getByRole('button', { name: /^Keep a copy: Ledger/ })).toBeFocused();
  await garden.keyboard.press('Escape');
  await expect(menu).toHaveCount(0);
  await expect(garden.getByRole('button', { name: /^Keep a copy: Ledger/ })).toBeFocused();
});
