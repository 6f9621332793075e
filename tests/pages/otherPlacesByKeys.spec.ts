// Laboratory, label and gauge, without a pointer: by Tab, arrows, Enter and the names that are heard.
import type { Page } from '@playwright/test';
import { Person } from './a11y/keys';
import { expect, test } from './fixtures';
import { openSampleAt } from './journeys';

async function goByKeys(person: Person, place: string): Promise<void> {
  await person.tabTo('button', place);
  await person.press('Enter');
  await expect(person.page.getByRole('heading', { name: place, level: 1 })).toBeFocused();
}

/** Fills the next field of this name and leaves it. */
async function fill(person: Person, label: string | RegExp, text: string): Promise<void> {
  await person.tabTo('textbox', label);
  await person.press('ControlOrMeta+a');
  await person.type(text);
}

const undoOf = (garden: Page, step: RegExp) => garden.getByRole('button', { name: step });

test('a compost’s laboratory sheet, and what the bed’s account makes of it @once', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Tables');
  const person = new Person(garden);
  await person.tabTo('searchbox', /^Find a material/);
  await person.type('own garden');
  await person.tabTo('button', 'Own garden compost');
  await person.press('Enter');
  // nobody read the table's phosphorus anywhere, and the table says so
  const sheet = garden.getByRole('group', { name: 'Each number with its source' });
  await expect(sheet.getByRole('row', { name: /^Phosphorus/ })).toContainText(
    /from memory|recalled/i,
  );
  await person.tabTo('button', 'Make a row of my own from it');
  await person.press('Enter');
  await expect(
    garden.getByRole('button', { name: 'My own garden compost', exact: true }),
  ).toBeFocused();

  await fill(person, /^Water/, '45 %');
  await fill(person, /^Nitrogen/, '1.1 % fresh');
  await fill(person, /^Carbon to nitrogen/, '13:1');
  await fill(person, /^Phosphorus/, '0.8 % P2O5');
  await fill(person, /^Potassium/, 'plenty');
  await person.press('Tab');
  await expect(garden.getByText('Potassium begins with a number.')).toBeVisible();
  await garden.keyboard.press('Shift+Tab');
  await fill(person, /^Potassium/, '1.6 % K2O');
  await fill(person, /^Where the numbers/, 'Lab, 3 June, sample 12');
  await person.press('Tab');
  const field = (label: string) => garden.getByRole('textbox', { name: label });
  // 1.1 % of what is 45 % water is 2 % of what is dry; P of P2O5 0.4364, K of K2O 0.8301
  await expect(field('Nitrogen (% of dry weight)')).toHaveValue('2');
  await expect(field('Phosphorus (% of dry weight)')).toHaveValue('0.3491');
  await expect(field('Potassium (% of dry weight)')).toHaveValue('1.328');
  const own = garden.getByRole('row').filter({ hasText: 'My own garden compost' }).first();
  await expect(own).toContainText('yours');
  await person.tabTo('button', 'Use it wherever the table’s row is used');
  await person.press('Enter');
  await expect(garden.getByText(/^Rests on own garden compost\. Used by 2 stores/)).toBeVisible();

  // the store it was laid from is this compost now: what the laboratory read is no recollection
  await person.tabTo('button', /^South wall, 1 layer$|^.* bed, 1 layer$/);
  await person.press('Enter');
  const account = garden.getByRole('region', { name: 'Phosphorus and potassium' });
  const laid = account.getByRole('row', { name: /^My own garden compost laid/ });
  await expect(laid).toBeVisible();
  await expect(laid).not.toContainText('recalled');
  await person.press('ControlOrMeta+z');
  await expect(account.getByRole('row', { name: /^Own garden compost laid/ })).toContainText(
    'recalled',
  );
});

test('a treatment with its day and the label’s words, then a soil test with its ratings @once', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Lawn');
  const person = new Person(garden);
  const thing = garden.locator('summary').filter({ hasText: 'Back lawn' });
  await person.tabTo('DisclosureTriangle', /^Back lawn/);
  await expect(thing).toBeFocused();
  await person.press('Enter');
  await person.tabTo('button', 'What was put on Back lawn');
  await person.press('Enter');
  const question = garden.getByRole('dialog', {
    name: 'Was weedkiller or feed put on “Back lawn”?',
  });
  await expect(question).toBeVisible();
  await person.tabTo('radio', /^Nothing/);
  await person.press('ArrowDown');
  await fill(person, /^What was it\?/, 'moss killer');
  await fill(person, 'When?', '1 June');
  await person.tabTo('radio', /^Never use them/);
  await person.press('ArrowDown');
  await person.press('Space');
  await fill(person, 'How many days?', '28');
  await fill(person, /^Its words/, 'do not mulch for four weeks');
  await person.tabTo('button', 'Keep this answer');
  await person.press('Enter');
  await expect(question).toHaveCount(0);
  await expect(
    garden.getByRole('button', { name: 'What was put on Back lawn', exact: true }),
  ).toBeFocused();
  // 28 days after 1 June
  await expect(
    garden.getByText(
      'Treated on 1 June 2013 (moss killer): the label says to wait 28 days, till 29 June. The label’s words: “do not mulch for four weeks”',
    ),
  ).toBeVisible();

  await goByKeys(person, 'Beds');
  await person.tabTo('button', 'Gate bed');
  await person.press('Enter');
  await expect(garden.getByRole('heading', { name: 'Gate bed', level: 1 })).toBeFocused();
  await person.tabTo('button', 'Soil test…');
  await person.press('Enter');
  const sheet = garden.getByRole('dialog', { name: /A soil test of/ });
  await expect(sheet).toBeVisible();
  await fill(person, /^Nitrate-N/, '35 lb/acre');
  await fill(person, /^Organic matter/, '4.2');
  await person.tabTo('DisclosureTriangle', 'Phosphorus and potassium');
  await person.press('Enter');
  await fill(person, 'Phosphorus', '42 ppm');
  await fill(person, 'Phosphorus, as the lab rates it', 'optimum');
  await person.tabTo('button', 'Write it down');
  await person.press('Enter');
  // figures of an unnamed method say nothing
  await expect(sheet.getByText(/method/i).first()).toBeVisible();
  await fill(person, 'Method (extractant)', 'Mehlich-3');
  await person.tabTo('button', 'Write it down');
  await person.press('Enter');
  await expect(sheet).toHaveCount(0);
  const account = garden.getByRole('region', { name: 'Phosphorus and potassium' });
  await expect(account).toContainText('phosphorus 42 ppm (the lab: optimum, Mehlich-3)');
  await expect(undoOf(garden, /^Undo: Log a soil test of Gate bed/)).toBeVisible();
  await person.press('ControlOrMeta+z');
  await expect(account).toContainText('without one nothing is advised here');
});

test('rain from a spreadsheet: line by line, and all of it taken back at once @once', async ({
  garden,
}) => {
  await openSampleAt(garden, 'Garden');
  const person = new Person(garden);
  await person.tabTo('button', 'Rain from a spreadsheet…');
  await person.press('Enter');
  const dialog = garden.getByRole('dialog', { name: 'Rain from a spreadsheet' });
  await expect(dialog.getByLabel('The cells')).toBeFocused();
  // as a spreadsheet puts cells on the clipboard: tabs between, a line for each row
  await garden.keyboard.insertText(
    'Day\tRain (mm)\n2013-06-12\t4.5\n2013-06-13\t0\n2013-06-14\twet\n2013-06-31\t2\n2013-07-01\t3\n2013-06-12\t9',
  );
  await expect(
    dialog.getByText('2 of 6 lines can be brought in; 1 is there already; 3 cannot be read.'),
  ).toBeVisible();
  const lines = dialog.getByRole('group', { name: 'What was understood, line by line' });
  for (const line of ['4', '5', '6'])
    await expect(lines.getByRole('row', { name: new RegExp(`^${line} `) })).toContainText(
      /\w+ \w+/,
    );
  await expect(undoOf(garden, /^Undo/)).toHaveAttribute('aria-disabled', 'true');
  await person.tabTo('button', 'Bring in 2');
  await person.press('Enter');
  // what could not be read stays to be mended
  await expect(dialog.getByLabel('The cells')).toHaveValue(
    'Day\tRain (mm)\n2013-06-14\twet\n2013-06-31\t2\n2013-07-01\t3',
  );
  await person.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(garden.getByRole('button', { name: 'Rain from a spreadsheet…' })).toBeFocused();

  // both days are the garden's now, and one step takes both back
  const again = async (says: string) => {
    await person.press('Enter');
    await garden.keyboard.insertText('2013-06-12\t4.5\n2013-06-13\t0');
    await expect(dialog.getByText(says)).toBeVisible();
    await person.press('Escape');
    await expect(dialog).toHaveCount(0);
  };
  await again('0 of 2 lines can be brought in; 2 are there already.');
  await person.press('ControlOrMeta+z');
  await expect(undoOf(garden, /^Undo/)).toHaveAttribute('aria-disabled', 'true');
  await again('2 of 2 lines can be brought in.');
});
