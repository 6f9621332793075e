// "What if…" on a bed's page: layers that are only thought of, weighed side by side.
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { goTo, openReckoned, planIsMade } from './journeys';

const whatIf = (garden: Page) => garden.getByRole('region', { name: 'What if…' });
const table = (garden: Page) => whatIf(garden).getByRole('table');
const marks = (garden: Page) => table(garden).getByRole('img');
const oddsAreThere = (garden: Page, columns: number) =>
  expect(marks(garden)).toHaveCount(columns, { timeout: 120_000 });

async function openBed(garden: Page, name: string) {
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name, exact: true }).click();
  await expect(garden.getByRole('heading', { name, level: 1 })).toBeVisible();
  await expect(whatIf(garden)).toBeVisible();
}

test.beforeEach(async ({ garden }) => {
  await openReckoned(garden);
  await openBed(garden, 'Far bed');
});

test('a layer is typed, slid and weighed against the bed as it is', async ({ garden }) => {
  await whatIf(garden).getByRole('button', { name: 'Try a layer' }).click();
  await expect(whatIf(garden).getByLabel('What', { exact: true })).toBeFocused();
  await whatIf(garden).getByLabel('How much?').fill('4 buckets');
  await oddsAreThere(garden, 1);
  await expect(marks(garden)).toHaveAccessibleName(
    /^Of 20 marks \d+ better, \d+ worse, \d+ as good as alike$/,
  );
  await expect(table(garden).getByText(/^Better in .*imagined season/)).toBeVisible();
  await expect(whatIf(garden).getByText(/Each mark stands for 5 of 100/)).toBeVisible();
  // one step to the right is half a bucket more, and the words follow
  const slider = whatIf(garden).getByRole('slider', { name: 'Slide it' });
  await slider.focus();
  await garden.keyboard.press('ArrowRight');
  await expect(whatIf(garden).getByLabel('How much?')).toHaveValue('4 1/2 buckets');
  await expect(table(garden).getByRole('columnheader', { name: /4 1\/2 buckets/ })).toBeVisible();
  // the same by the field’s own arrow keys: one amount is one stop of the Tab key
  const field = whatIf(garden).getByLabel('How much?');
  await field.press('ArrowUp');
  await expect(field).toHaveValue('5 buckets');
  await field.press('ArrowDown');
  await expect(field).toHaveValue('4 1/2 buckets');
  await expect(slider).toHaveAttribute('tabindex', '-1');
  await oddsAreThere(garden, 1);
});

test('three stand side by side, each with its day, and one can be taken away', async ({
  garden,
}) => {
  await whatIf(garden).getByRole('button', { name: 'Try a layer' }).click();
  await whatIf(garden).getByLabel('How much?').fill('1 bucket');
  for (const amount of ['5 buckets', '20 buckets']) {
    await whatIf(garden).getByRole('button', { name: 'Another alternative' }).click();
    await whatIf(garden).getByLabel('How much?').fill(amount);
  }
  await expect(whatIf(garden).getByRole('button', { name: 'Another alternative' })).toHaveCount(0);
  await whatIf(garden).getByRole('radio', { name: 'in a week' }).check();
  await expect(
    table(garden).getByRole('columnheader', { name: /20 buckets.*in a week/ }),
  ).toBeVisible();
  await whatIf(garden)
    .getByRole('radio', { name: /^dug in/ })
    .check();
  await expect(
    table(garden).getByRole('columnheader', { name: /20 buckets.*dug in/ }),
  ).toBeVisible();
  await expect(whatIf(garden).getByText('It can be laid from 22 June on.')).toBeVisible();
  await oddsAreThere(garden, 3);
  await whatIf(garden).getByRole('button', { name: 'Drop alternative 3' }).click();
  await oddsAreThere(garden, 2);
  // they lie on the desk while one looks elsewhere
  await openBed(garden, 'Gate bed');
  await openBed(garden, 'Far bed');
  await expect(table(garden).getByRole('columnheader', { name: /5 buckets/ })).toBeVisible();
  await oddsAreThere(garden, 2);
});

test('nothing to be read is said at the field, and nothing is weighed', async ({ garden }) => {
  await whatIf(garden).getByRole('button', { name: 'Try a layer' }).click();
  await whatIf(garden).getByLabel('How much?').fill('a heap or so');
  await expect(whatIf(garden).locator('[aria-invalid]')).toBeVisible();
  await expect(table(garden)).toHaveCount(0);
  await expect(whatIf(garden).getByRole('button', { name: 'Lay it…' })).toBeDisabled();
});

test('another amount is compared anew, and what better means is told on request', async ({
  garden,
}) => {
  await whatIf(garden).getByRole('button', { name: 'Try a layer' }).click();
  await whatIf(garden).getByLabel('How much?').fill('1 bucket');
  await oddsAreThere(garden, 1);
  await whatIf(garden).getByLabel('How much?').fill('45 buckets');
  await expect(table(garden).getByRole('columnheader', { name: /45 buckets/ })).toBeVisible();
  await oddsAreThere(garden, 1);
  await expect(whatIf(garden).getByText('better than as it is')).toBeVisible();
  await whatIf(garden).getByText('What “better” means here').click();
  await expect(whatIf(garden).getByText(/These weights are our own judgement\./)).toBeVisible();
});

test('it is laid from the form, filled in, with its cautions', async ({ garden }) => {
  await whatIf(garden).getByRole('button', { name: 'Try a layer' }).click();
  await whatIf(garden).getByLabel('What', { exact: true }).selectOption('Wheat straw, in store');
  await whatIf(garden).getByLabel('How much?').fill('2 buckets');
  await oddsAreThere(garden, 1);
  await whatIf(garden).getByRole('button', { name: 'Lay it…' }).click();
  const dialog = garden.getByRole('dialog', { name: 'Lay it on Far bed' });
  await expect(dialog.getByLabel('How much?')).toHaveValue('2 buckets');
  await expect(dialog.getByRole('table')).toBeVisible();
  await dialog.getByRole('button', { name: 'Lay it', exact: true }).click();
  await expect(dialog).toHaveCount(0);
  await expect(whatIf(garden).getByText(/^Laid on Far bed\./)).toBeVisible();
  await expect(table(garden)).toHaveCount(0);
  await expect(
    garden.getByRole('region', { name: 'What was done' }).getByText(/2 buckets/),
  ).toBeVisible();
});

test('room that is offered leads to its odds: a layer is tried on the bed’s page', async ({
  garden,
}) => {
  await goTo(garden, 'This week');
  await planIsMade(garden);
  await garden.getByRole('button', { name: 'In how many seasons it helps South wall' }).click();
  await expect(garden.getByRole('heading', { name: 'South wall', level: 1 })).toBeVisible();
  await expect(garden.getByRole('heading', { name: 'What if…' })).toBeFocused();
  await expect(whatIf(garden).getByLabel('How much?')).not.toHaveValue('');
  await oddsAreThere(garden, 1);
  await expect(table(garden).getByText(/^(Better|Worse|As good).*imagined season/)).toBeVisible();
});
