// Weather of the garden's place from the net: off, agreed to, wrong, called off, seen, taken, undone, removed.
// The service stands on this machine and its answers are made to the documented form.
import type { Page } from '@playwright/test';
import { answerTo, respond } from '../main/weather/madeService';
import { hear, listen } from './a11y/heard';
import { expect, test } from './fixtures';
import { goTo, startOwnGarden } from './journeys';

const part = (garden: Page) => garden.locator('.download');
const dialogOf = (garden: Page) => garden.getByRole('dialog', { name: 'Weather by place' });

async function openDialog(garden: Page) {
  await startOwnGarden(garden);
  await goTo(garden, 'Garden');
  await expect(part(garden)).toContainText('Off: nothing is asked of anybody.');
  await part(garden).getByRole('button', { name: 'See what it would send…' }).click();
  return dialogOf(garden);
}

test('nothing leaves the computer before it is agreed to, and what came is taken in one step', async ({
  garden,
  weather,
}) => {
  const dialog = await openDialog(garden);
  await expect(dialog).toContainText('archive-api.open-meteo.com');
  await expect(dialog).toContainText('once a day at most');
  const agree = dialog.getByRole('button', { name: 'I agree: ask for these days' });
  await agree.click();
  await expect(dialog.getByLabel('Longitude (degrees)')).toHaveAttribute('aria-invalid', 'true');
  expect(weather.asked).toEqual([]);

  // Central Park lies at 40.78 N, 73.97 W: neither is sent nearer than a tenth
  await dialog.getByLabel('Longitude (degrees)').fill('73.97 W');
  await expect(dialog).toContainText('40.8° north, 74.0° west');
  weather.answerWith((response) => respond(response, { error: true, reason: 'Tired.' }, 503));
  await agree.click();
  await expect(dialog.getByRole('alert')).toContainText('Tired.');
  weather.answerWith((response, url) => respond(response, answerTo(url)));
  await dialog.getByRole('button', { name: 'Try again' }).click();
  await expect(dialog.getByText(/1,\d{3} days from \d{4}-01-01 to/)).toBeVisible();
  const asked = new URL(weather.asked[1]!, 'http://there').searchParams;
  expect([asked.get('latitude'), asked.get('longitude')]).toEqual(['40.8', '-74.0']);

  // looked at and left: the garden is as it was, and the service is not asked twice in a day
  await dialog.getByRole('button', { name: 'Leave them' }).click();
  await expect(part(garden)).toContainText('Off: nothing is asked of anybody.');
  await part(garden).getByRole('button', { name: 'See what it would send…' }).click();
  await dialog.getByLabel('Longitude (degrees)').fill('-74');
  await agree.click();
  await expect(dialog).toContainText('the service was not asked again');
  expect(weather.asked).toHaveLength(2);
  await listen(garden);
  await dialog.getByRole('button', { name: 'Take these days' }).click();
  await hear(garden, 'Undo takes it back.');
  await expect(part(garden)).toContainText(/1,\d{3} downloaded days are kept/);

  await garden.keyboard.press('Control+z');
  await expect(part(garden)).toContainText('Off: nothing is asked of anybody.');
  await garden.keyboard.press('Control+y');
  await expect(part(garden)).toContainText(/On since/);
  await garden.getByText('Where this season’s weather is from').click();
  const row = garden.getByRole('row', { name: /^Downloaded for the place/ });
  await expect(row.getByRole('cell').first()).not.toHaveText('0');

  await part(garden).getByRole('button', { name: 'Ask for the latest days…' }).click();
  await expect(dialog).toContainText(/there already|asked for this place today/);
  await expect(dialog.getByRole('button', { name: /ask for these days/i })).toHaveCount(0);
  await dialog.getByRole('button', { name: 'Close' }).last().click();
  await part(garden).getByRole('button', { name: 'Switch it off' }).click();
  await expect(part(garden)).toContainText('Off: nothing is asked of anybody.');
  await part(garden).getByRole('button', { name: 'Remove the downloaded days' }).click();
  await expect(part(garden)).not.toContainText('downloaded days are kept');
  expect(weather.asked).toHaveLength(2);
});

test('an answer that cannot be is refused day by day, and a slow one called off', async ({
  garden,
  weather,
}) => {
  const dialog = await openDialog(garden);
  await dialog.getByLabel('Longitude (degrees)').fill('74 W');
  // never answered
  weather.answerWith(() => undefined);
  const agree = dialog.getByRole('button', { name: 'I agree: ask for these days' });
  await agree.click();
  await dialog.getByRole('button', { name: 'Call it off' }).click();
  await expect(dialog.getByRole('alert')).toContainText('called off');

  const again = dialog.getByRole('button', { name: 'Try again' });
  weather.answerWith((response) => response.writeHead(302, { location: '/else' }).end());
  await again.click();
  await expect(dialog.getByRole('alert')).toContainText('another address');
  weather.answerWith((response, url) => {
    const answer = answerTo(url);
    answer.daily['temperature_2m_max']![1] = 99;
    answer.daily['precipitation_sum']![2] = null;
    respond(response, answer);
  });
  await again.click();
  await expect(dialog).toContainText(/Line 2, \d{4}-01-02: highest temperature of 99/);
  await expect(dialog).toContainText(/\d{4}-01-03: no rain/);
});
