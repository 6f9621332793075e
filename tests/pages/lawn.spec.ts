// The lawn: what it grows, learnt from its mowings, and the same as a table.
import { expect, test } from './fixtures';
import { goTo, openSample } from './journeys';

test('a lawn’s growth is told, drawn and listed, and moves when a mowing goes', async ({
  garden,
}) => {
  await openSample(garden);
  await goTo(garden, 'Lawn');
  const back = garden.getByRole('region', { name: 'Back lawn' });
  await expect(back.getByText(/^It grows fastest around .* bags a week\./)).toBeVisible();
  await expect(back.getByText(/^Learnt from 9 mowings/)).toBeVisible();
  await back.getByRole('button', { name: 'The same numbers as a table' }).click();
  // 2013 has 53 weeks that begin on 1 January or every seventh day after
  await expect(back.getByRole('row')).toHaveCount(1 + 53);
  await goTo(garden, 'This week');
  await garden
    .getByRole('button', { name: /^Delete the mowing/ })
    .first()
    .click();
  await goTo(garden, 'Lawn');
  await expect(back.getByText(/^Learnt from 8 mowings/)).toBeVisible();
});
