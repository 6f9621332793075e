// Every place of the window, by the rules a machine can check: axe, target sizes, reflow.
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { bedsAreReckoned, firstLine, goTo, openSample } from './journeys';

type Scene = readonly [name: string, enter: (garden: Page) => Promise<void>];

const openBed = async (garden: Page) => {
  await openSample(garden);
  await goTo(garden, 'Beds');
  await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
  await expect(garden.getByRole('slider')).toBeVisible();
};
const proposeStop = async (garden: Page) => {
  await openSample(garden);
  await firstLine(garden).getByLabel('On which bed?').selectOption('Gate bed (over-fed)');
  await firstLine(garden).getByLabel('How much?').fill('1 bag');
  await expect(firstLine(garden).getByText('stop', { exact: true }).first()).toBeVisible();
};

const scenes: readonly Scene[] = [
  ['first run', async () => undefined],
  [
    'own garden, answers missing',
    async (garden) => {
      await garden.getByRole('button', { name: 'Start my garden' }).click();
      await garden.getByRole('button', { name: 'Start this garden' }).click();
    },
  ],
  [
    'own garden, months typed',
    async (garden) => {
      await garden.getByRole('button', { name: 'Start my garden' }).click();
      await garden.getByRole('radio', { name: 'I type them' }).check();
    },
  ],
  [
    'this week, a mowing typed',
    async (garden) => {
      await openSample(garden);
      await garden.getByLabel('What came off?').fill('2 bags');
      await garden
        .getByRole('region', { name: 'Mown again?' })
        .getByText('Why these figures')
        .click();
    },
  ],
  [
    'this week, a wrong entry',
    async (garden) => {
      await openSample(garden);
      await garden.getByLabel('What came off?').fill('2 bgas');
      await garden.getByLabel('What came off?').blur();
    },
  ],
  ['this week, a stop before it is laid', proposeStop],
  [
    'the stop dialog',
    async (garden) => {
      await proposeStop(garden);
      await garden.getByRole('button', { name: 'Lay it', exact: true }).click();
      await expect(garden.getByRole('dialog')).toBeVisible();
    },
  ],
  [
    'the treated question',
    async (garden) => {
      await openSample(garden);
      await garden.getByRole('button', { name: 'Change the answer' }).click();
      await garden.getByRole('radio', { name: 'Something was put on it' }).check();
    },
  ],
  [
    'beds',
    async (garden) => {
      await openSample(garden);
      await goTo(garden, 'Beds');
    },
  ],
  ['a bed', openBed],
  [
    'a bed, laying from the stores',
    async (garden) => {
      await openBed(garden);
      await garden.getByRole('button', { name: 'Lay something…' }).click();
    },
  ],
  [
    'a bed, sowing',
    async (garden) => {
      await openBed(garden);
      await garden.getByRole('button', { name: 'Sow or plant something…' }).click();
    },
  ],
  [
    'garden, everything open',
    async (garden) => {
      await openSample(garden);
      await goTo(garden, 'Garden');
      for (const summary of await garden.locator('.thing > summary').all()) await summary.click();
    },
  ],
  [
    'weighing a bag',
    async (garden) => {
      await openSample(garden);
      await goTo(garden, 'Garden');
      await garden.locator('.thing', { hasText: 'bag' }).first().locator('summary').click();
      await garden.getByRole('button', { name: 'Weigh one bag…' }).click();
    },
  ],
  [
    'how to read this',
    async (garden) => {
      await openSample(garden);
      await garden.getByRole('button', { name: 'Garden file' }).click();
      await garden.getByRole('button', { name: 'How to read this' }).click();
    },
  ],
  [
    'the file menu',
    async (garden) => {
      await openSample(garden);
      await garden.getByRole('button', { name: 'Garden file' }).click();
    },
  ],
];

for (const [name, enter] of scenes)
  test(`${name}: nothing that axe finds, light and dark`, async ({ garden }) => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await garden.emulateMedia({ colorScheme });
      if (colorScheme === 'light') await enter(garden);
      const { violations } = await new AxeBuilder({ page: garden })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
        .analyze();
      expect(
        violations.map(({ id, nodes }) => [
          colorScheme,
          id,
          ...nodes.map(({ target, failureSummary }) => `${target.join(' ')}: ${failureSummary}`),
        ]),
      ).toEqual([]);
    }
  });

/** Controls smaller than 24 px either way whose middle is within 24 px of another's. */
const smallTargets = (garden: Page) =>
  garden.evaluate(() => {
    const all = [
      ...document.querySelectorAll<HTMLElement>(
        'button, summary, select, textarea, input:not([type=file]):not([hidden]), a[href], [role=slider]',
      ),
    ]
      .filter((one) => one.checkVisibility() && !one.closest('.skip, .only-heard'))
      // the whole line of a tick or choice can be pressed
      .map((one) => (one.closest('label') as HTMLElement | null) ?? one)
      .map((one) => ({ one, box: one.getBoundingClientRect() }));
    return all
      .filter(({ box }) => box.width < 24 || box.height < 24)
      .map(({ one, box }) => `${one.tagName}.${one.className} ${box.width}x${box.height}`);
  });

const places: readonly Scene[] = scenes.filter(([name]) =>
  [
    'first run',
    'this week, a stop before it is laid',
    'beds',
    'a bed',
    'garden, everything open',
  ].includes(name),
);

for (const [name, enter] of places)
  test(`${name}: targets of 24 px, and no sideways scrolling at 320 px`, async ({ garden }) => {
    await enter(garden);
    expect(await smallTargets(garden)).toEqual([]);
    await garden.setViewportSize({ width: 320, height: 640 });
    // tables and charts may scroll in their own boxes, the page may not
    await expect
      .poll(() => garden.evaluate(() => document.documentElement.scrollWidth))
      .toBeLessThanOrEqual(320);
    expect(await smallTargets(garden)).toEqual([]);
  });

test('wider spacing of text cuts nothing off', async ({ garden }) => {
  await openSample(garden);
  // WCAG 2.2, 1.4.12: line 1.5, paragraph 2, letter 0.12, word 0.16 em
  await garden.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }',
    );
    document.adoptedStyleSheets.push(sheet);
  });
  await bedsAreReckoned(garden);
  const cut = await garden.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main button, main p, main h1, main h2, main h3')]
      .filter((one) => one.checkVisibility() && !one.closest('.only-heard'))
      .filter((one) => one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0)
      .map((one) => `${one.tagName} ${one.textContent.slice(0, 40)}`),
  );
  expect(cut).toEqual([]);
  expect(await garden.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
    1280,
  );
});
