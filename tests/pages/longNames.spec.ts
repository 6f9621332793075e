// Names as people give them: one long word, signs of code, another script. Nothing is pushed off the page.
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from './fixtures';
import { bedsAreReckoned, goTo } from './journeys';

// as long as a name may be (app/document/schema/parts.ts)
const names = ['W'.repeat(80), '=HYPERLINK("http://x","y")', '\u{1F955} Möhren', 'سرير الحديقة'];

test('a name of one long word breaks; no place is wider than the window @once', async ({
  garden,
  program,
  folder,
}) => {
  const text = await readFile(
    join(import.meta.dirname, '../../assets/gardens/sample.mowings'),
    'utf8',
  );
  const named = JSON.parse(text) as {
    garden: { isSample: boolean };
    beds: { name: string }[];
    lawns: { name: string }[];
  };
  named.garden.isSample = false;
  names.forEach((name, at) => (named.beds[at]!.name = name));
  named.lawns[0]!.name = names[0]!;
  const file = join(folder, 'names.mowings');
  await writeFile(file, JSON.stringify(named));
  await program.restart(file);
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeVisible();
  await bedsAreReckoned(garden);
  const over = () =>
    garden.locator('html').evaluate((html) => Math.max(0, html.scrollWidth - window.innerWidth));
  for (const width of [1280, 320]) {
    await garden.setViewportSize({ width, height: 900 });
    for (const place of ['This week', 'Beds', 'Season', 'Lawn', 'Garden'] as const) {
      await goTo(garden, place);
      await expect(garden.getByRole('heading', { name: place, level: 1 })).toBeVisible();
      // its heading is there before its code
      await expect(garden.getByText('One moment…')).toHaveCount(0);
      await expect.poll(over, { message: `${place} at ${String(width)}` }).toBe(0);
    }
    await goTo(garden, 'Beds');
    await garden.getByRole('button', { name: names[0]!, exact: true }).click();
    await expect(garden.getByRole('heading', { name: names[0]!, level: 1 })).toBeVisible();
    await expect.poll(over, { message: `a bed at ${String(width)}` }).toBe(0);
  }
});
