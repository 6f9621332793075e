import type { Page } from '@playwright/test';
import { expect } from './fixtures';

/** Opens the sample and waits until every bed has been reckoned. */
export async function openReckoned(garden: Page): Promise<void> {
  await garden.getByRole('button', { name: 'Look round Sorrel Lane' }).click();
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeVisible();
  await bedsAreReckoned(garden);
}

/** The same with the week's plan made, for what rests on it or must not meet it half way. */
export async function openSample(garden: Page): Promise<void> {
  await openReckoned(garden);
  await planIsMade(garden);
}

type Place = 'This week' | 'Beds' | 'Season' | 'Lawn' | 'Tables' | 'Garden';

/** The sample, gone on to another place: This week is left before its plan is made, so nobody waits for it. */
export async function openSampleAt(
  garden: Page,
  place: Exclude<Place, 'This week'>,
): Promise<void> {
  await openReckoned(garden);
  await goTo(garden, place);
  await expect(garden.getByRole('heading', { name: place, level: 1 })).toBeVisible();
  // its heading is there before its code
  await expect(garden.getByText('One moment…')).toHaveCount(0);
}

/** The part of This week that says what to do. */
export const weekPlan = (garden: Page) =>
  garden.getByRole('region', { name: 'What to do this week' });

/** Waits until the week's plan, which is made by itself, rests on the garden as it is. */
export async function planIsMade(garden: Page): Promise<void> {
  // every bed is run several times over, beside all its imagined seasons
  await expect(weekPlan(garden)).toHaveAttribute('data-plan', 'ready', { timeout: 120_000 });
}

export async function bedsAreReckoned(garden: Page): Promise<void> {
  await expect(garden.getByText('Reckoning the season, bed by bed…')).toHaveCount(0);
  await expect(garden.locator('.notice, .quiet').first()).toBeVisible();
}

/** Waits until every bed's imagined seasons have been run; on a page that shows their odds. */
export async function seasonsAreImagined(garden: Page): Promise<void> {
  await expect(garden.getByText(/^Odds and ranges come from/)).toBeVisible({ timeout: 120_000 });
}

/** The sample with all that its imagined seasons have to say, back on This week. */
export async function openSampleImagined(garden: Page): Promise<void> {
  await openSample(garden);
  await goTo(garden, 'Beds');
  await seasonsAreImagined(garden);
  await goTo(garden, 'This week');
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeVisible();
  await planIsMade(garden);
  // the odds of its lines come after it
  await expect
    .poll(
      async () => {
        const lines = await garden.getByRole('button', { name: /^Laid as planned/ }).count();
        return lines > 0 && lines === (await garden.getByText(/^Against laying nothing/).count());
      },
      { timeout: 120_000 },
    )
    .toBe(true);
}

export const goTo = (garden: Page, place: Place): Promise<void> =>
  garden.getByRole('navigation', { name: 'Places' }).getByRole('button', { name: place }).click();

/** The one line of the laying form that stands for a bed not chosen yet. */
export const firstLine = (garden: Page) => garden.locator('.lay-row').first();

/** A new garden of one bed of beans in New York, from the five answers, as the first run asks them. */
export async function startOwnGarden(garden: Page): Promise<void> {
  await garden.getByRole('button', { name: 'Start my garden' }).click();
  await garden.getByRole('radio', { name: 'Metres, kilograms, litres' }).check();
  await garden.getByRole('region', { name: 'The lawn' }).getByRole('textbox').fill('20 x 10 m');
  await garden.getByRole('textbox', { name: 'How much does a full one hold? (L)' }).fill('50 L');
  const bed = garden.getByRole('region', { name: 'One bed' });
  await bed.getByLabel('What do you call it?').fill('By the fence');
  await bed.getByLabel('How big is it? (m²)').fill('1.2 x 4 m');
  await garden.getByLabel('Crop').selectOption('Climbing beans');
  await garden.getByLabel('When?').fill('3 weeks ago');
  await garden.getByLabel('When?').blur();
  await garden
    .getByLabel('Place with weather most like yours')
    .selectOption({ label: 'New York (Central Park)' });
  await garden.getByRole('button', { name: 'Start this garden' }).click();
  await expect(garden.getByRole('heading', { name: 'This week', level: 1 })).toBeVisible();
  await bedsAreReckoned(garden);
}
