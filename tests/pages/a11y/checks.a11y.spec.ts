// The checks themselves: each finds the fault that was planted for it, and leaves good pages alone.
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { focusFindings, running, smallTargets, spreadText, unreadableText } from './inPage';
import { brokenWords, cutEntries, lostShapes } from './wholeWords';
import { hear, heard, listen } from './heard';
import { Person } from './keys';

const show = (page: Page, body: string, style = '') =>
  page.setContent(
    `<!doctype html><html lang="en"><head><title>A page</title><style>${style}</style></head><body><main>${body}</main></body></html>`,
  );

test('small targets that crowd each other', async ({ page }) => {
  const small = 'button { width: 16px; height: 16px; padding: 0; border: 0 }';
  await show(page, '<button>a</button><button>b</button>', small);
  expect(await page.evaluate(smallTargets)).toHaveLength(2);
  await show(page, '<button>a</button>', small);
  expect(await page.evaluate(smallTargets)).toEqual([]);
  await show(
    page,
    '<button>a</button><button>b</button>',
    'button { min-width: 24px; height: 24px }',
  );
  expect(await page.evaluate(smallTargets)).toEqual([]);
});

test('text cut off, running over, covering other text, past the edge', async ({ page }) => {
  const findings = async (body: string, style: string) => {
    await show(page, body, style);
    return (await page.evaluate(unreadableText)).join('; ');
  };
  expect(
    await findings('<p>Long words</p>', 'p { width: 3em; white-space: nowrap; overflow: hidden }'),
  ).toContain('cut off');
  // one line with an ellipsis is lawful only where a title says all of it
  const oneLine =
    'p { width: 3em; white-space: nowrap; overflow: hidden; text-overflow: ellipsis }';
  expect(await findings('<p title="Long words, all of them">Long words</p>', oneLine)).toBe('');
  expect(await findings('<p title="Long">Long words</p>', oneLine)).toContain('cut off');
  expect(await findings('<p>Many<br>lines</p>', 'p { height: 1em; overflow: hidden }')).toContain(
    'cut off below',
  );
  expect(
    await findings('<button>Long words</button>', 'button { width: 3em; white-space: nowrap }'),
  ).toContain('runs out of what holds it');
  expect(
    await findings('<p>One</p><p>Two</p>', 'p { position: absolute; top: 0; left: 0 }'),
  ).toContain('cover each other');
  expect(await findings('<p>Wide</p>', 'p { width: 200vw }')).toContain(
    'the page scrolls sideways',
  );
  expect(
    await findings(
      '<div class="box"><p>Wide words in a box</p></div>',
      '.box { width: 4em; overflow: auto; white-space: nowrap }',
    ),
  ).toContain('a box that scrolls sideways');
  expect(await findings('<p>One</p><p>Two <em>words</em></p><button>Press</button>', '')).toBe('');
});

test('a day shown in part, a word torn in two, a shape that a contrast theme takes away', async ({
  page,
}) => {
  const day = '<p class="field-date"><input value="Thursday 26 November 2026"></p>';
  await show(page, day, 'input { width: 5em }');
  expect((await page.evaluate(cutEntries)).join()).toContain('26 November');
  await show(page, day, 'input { width: 25em }');
  expect(await page.evaluate(cutEntries)).toEqual([]);

  const torn = 'p { width: 4em; overflow-wrap: anywhere }';
  await show(page, '<p>Phosphorus</p>', torn);
  expect((await page.evaluate(brokenWords)).join()).toContain('Phosphorus');
  // between words, at a hyphen and in the path of a file a line may end
  await show(page, '<p>one two three four-and-five /home/gardener/Documents</p>', torn);
  expect(await page.evaluate(brokenWords)).toEqual([]);

  const mark =
    'i { width: 9px; height: 9px; display: block; clip-path: polygon(0 0, 100% 0, 0 100%) }';
  await page.emulateMedia({ forcedColors: 'active' });
  await show(page, '<i></i>', `${mark} i { background: red }`);
  expect(await page.evaluate(lostShapes)).toEqual(['lost: i.']);
  await show(page, '<i></i>', `${mark} i { forced-color-adjust: none; background: CanvasText }`);
  expect(await page.evaluate(lostShapes)).toEqual([]);
});

test('text that has no room to be spread out', async ({ page }) => {
  await show(
    page,
    '<p>Some words here</p>',
    'p { width: max-content; max-width: 9em; height: 1.2em; overflow: hidden }',
  );
  expect(await page.evaluate(unreadableText)).toEqual([]);
  await page.evaluate(spreadText, true);
  expect((await page.evaluate(unreadableText)).join()).toContain('cut off below');
  await page.evaluate(spreadText, false);
  expect(await page.evaluate(unreadableText)).toEqual([]);
});

test('focus without a ring, covered, out of sight, back up the page', async ({ page }) => {
  const walk = async (body: string, style: string) => {
    await show(page, body, style);
    const findings: string[] = [];
    for (let press = 0; press < 3; press++) {
      await page.keyboard.press('Tab');
      findings.push(...(await page.evaluate(focusFindings)));
    }
    return findings.join('; ');
  };
  const two = '<button>One</button><br><button>Two</button>';
  expect(await walk(two, '')).not.toMatch(/ring|covered|sight|up/);
  expect(await walk(two, 'button:focus { outline: none }')).toMatch(
    /no focus ring.*the same with and without/,
  );
  expect(await walk(two, 'button { outline: 2px solid black !important }')).toContain(
    'the same with and without focus',
  );
  const drawing =
    '<svg width="90" height="40"><g tabindex="0"><rect width="40" height="40"/></g><g tabindex="0"><rect x="50" width="40" height="40"/></g></svg>';
  const plain = 'g { outline: none } rect { fill: white }';
  expect(await walk(drawing, plain)).toMatch(/no focus ring.*the same with and without/);
  const framed = `${plain} g:focus rect { stroke: black; stroke-width: 3px }`;
  expect(await walk(drawing, framed)).not.toMatch(/ring|the same/);
  expect(await walk(`${two}<div></div>`, 'div { position: fixed; inset: 0 }')).toContain(
    'covered while focused',
  );
  expect(await walk(two, 'button { position: fixed; left: -200px }')).toContain(
    'focused out of sight',
  );
  expect(await walk(two, 'main { display: flex; flex-direction: column-reverse }')).toContain(
    'goes back up',
  );
});

test('colours too weak, also those forced on a contrast theme', async ({ page }) => {
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
  const ids = async () =>
    (
      await new AxeBuilder({ page }).setLegacyMode(true).withRules(['color-contrast']).analyze()
    ).violations.map(({ id }) => id);
  await show(page, '<p>Grey</p>', 'p { color: #777; background: #888 }');
  expect(await ids()).toEqual([]);
  await show(page, '<p>Grey</p>', 'p { color: #777; background: #888; forced-color-adjust: none }');
  expect(await ids()).toEqual(['color-contrast']);
});

test('what is said, and what is not', async ({ page }) => {
  await show(page, '<div role="status"></div><section></section><dialog>Asked</dialog>');
  await listen(page);
  await page.evaluate(() => {
    document.querySelector('[role=status]')!.textContent = 'Saved.';
  });
  await hear(page, 'Saved.');
  // a region that comes with its words is not heard, an alert is
  await page.evaluate(() => {
    document.querySelector('section')!.innerHTML =
      '<p aria-live="polite">Not heard.</p><p role="alert">Refused.</p>';
  });
  await hear(page, 'Refused.');
  // nor is what lies behind a question
  await page.evaluate(() => {
    document.querySelector('dialog')!.showModal();
    document.querySelector('[role=status]')!.textContent = 'Behind.';
  });
  await page.evaluate(() => {
    document.querySelector('dialog')!.innerHTML += '<p role="alert">In front.</p>';
  });
  await hear(page, 'In front.');
  expect(await heard(page)).toEqual(['Saved.', 'Refused.', 'In front.']);
});

test('names, states and descriptions as they are told', async ({ page }) => {
  await show(
    page,
    '<label>Size <input value="2" aria-describedby="hint" aria-invalid="true"></label><p id="hint">In metres</p><details><summary>Why</summary>Because</details>',
  );
  const person = new Person(page);
  expect(await person.tabTo('textbox', 'Size')).toEqual({
    role: 'textbox',
    name: 'Size',
    description: 'In metres',
    value: '2',
    states: ['invalid'],
  });
  expect((await person.tabTo('DisclosureTriangle', 'Why')).states).toEqual(['collapsed']);
  await expect(person.tabTo('button', 'Nowhere', 5)).rejects.toThrow('It passed');
});

test('what moves', async ({ page }) => {
  await show(
    page,
    '<p>Turning</p>',
    '@keyframes turn { to { rotate: 1turn } } p { animation: turn 9s }',
  );
  expect(await page.evaluate(running)).toEqual(['p "Turning"']);
});
