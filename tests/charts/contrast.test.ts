import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const css = readFileSync(join(import.meta.dirname, '../../app/style/tokens.css'), 'utf8');
const tokens = new Map(
  [...css.matchAll(/--([a-z0-9-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)].map(
    ([, name, day, night]) => [name ?? '', { day: day ?? '', night: night ?? '' }],
  ),
);
const themes = ['day', 'night'] as const;

/** WCAG 2.2, definitions of relative luminance and contrast ratio. */
function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
}
function contrast(one: string, other: string, theme: (typeof themes)[number]): number {
  const [a, b] = [one, other].map((name) => {
    const token = tokens.get(name);
    if (!token) throw new Error(`No token ${name}`);
    return luminance(token[theme]);
  });
  return (Math.max(a ?? 0, b ?? 0) + 0.05) / (Math.min(a ?? 0, b ?? 0) + 0.05);
}

const named = (start: string): readonly string[] =>
  [...tokens.keys()].filter((name) => name.startsWith(start));
const pairs = (fronts: readonly string[], grounds: readonly string[]) =>
  themes.flatMap((theme) =>
    fronts.flatMap((front) => grounds.map((ground) => [front, ground, theme] as const)),
  );

describe('the reckoning itself', () => {
  test('black on white is 21, grey #767676 on white 4.54 (WCAG, technique G18)', () => {
    tokens.set('black', { day: '#000000', night: '#000000' });
    tokens.set('white', { day: '#ffffff', night: '#ffffff' });
    tokens.set('grey', { day: '#767676', night: '#767676' });
    expect(contrast('black', 'white', 'day')).toBeCloseTo(21, 6);
    expect(contrast('grey', 'white', 'day')).toBeCloseTo(4.54, 2);
  });

  test('all colours were found', () => {
    expect(tokens.size).toBeGreaterThan(60);
  });
});

/** A colour laid over paper, as the pale ground of a band is. */
function laidOver(name: string, share: number, theme: (typeof themes)[number]): string {
  const parts = (token: string): readonly number[] =>
    [1, 3, 5].map((at) => Number.parseInt(tokens.get(token)![theme].slice(at, at + 2), 16));
  const paper = parts('casing');
  return `#${parts(name)
    .map((part, at) => Math.round(part * share + (paper[at] ?? 0) * (1 - share)))
    .map((part) => part.toString(16).padStart(2, '0'))
    .join('')}`;
}

describe('edges and weaves of the bands by source: 3 to 1 against the pale ground of any band', () => {
  const bands = readFileSync(join(import.meta.dirname, '../../app/style/charts/bands.css'), 'utf8');
  const share = Number(/\.weave-ground \{[^}]*fill-opacity: ([0-9.]+)/.exec(bands)?.[1]);
  const sources = [...tokens.keys()].filter((name) => name.startsWith('source-'));

  test('the share of colour in a ground was found', () => {
    expect(share).toBeGreaterThan(0.1);
    expect(share).toBeLessThan(0.5);
    expect(sources).toHaveLength(8);
  });

  test.each(pairs(sources, sources))('%s on the ground of %s by %s', (edge, ground, theme) => {
    const pale = laidOver(ground, share, theme);
    tokens.set('pale', { day: pale, night: pale });
    expect(contrast(edge, 'pale', theme)).toBeGreaterThanOrEqual(3);
  });
});

const words = [
  ...pairs(['ink', 'ink-soft', 'accent'], ['ground', 'ground-raised', 'ground-sunk']),
  ...pairs(['ink', 'ink-soft'], ['entry', 'accent-ground', 'stripe', 'selection']),
  ...pairs(['ink', 'ink-soft'], ['note-ground', 'stop-ground']),
  ...pairs(['note', 'caution', 'stop'], ['ground', 'ground-raised']),
  ...themes.flatMap((theme) =>
    (['note', 'stop'] as const).map((weight) => [weight, `${weight}-ground`, theme] as const),
  ),
  ...pairs(['on-accent'], ['accent', 'accent-deep']),
  // small buttons and folds while the pointer is on them
  ...pairs(['accent-deep'], ['accent-ground']),
  ...pairs(['on-soil-head', 'on-soil-head-soft'], ['soil-head']),
  ...pairs(['line-today'], ['ground-raised']),
  ...pairs(['ink', 'ink-soft'], ['way-soil']),
] as const;

describe('words: 4.5 to 1', () => {
  test.each(words)('%s on %s by %s', (front, ground, theme) => {
    expect(contrast(front, ground, theme)).toBeGreaterThanOrEqual(4.5);
  });
});

const marks = [
  ...pairs(
    [...named('source-'), ...named('sink-'), ...named('line-')],
    ['ground', 'ground-raised', 'stripe', 'casing'],
  ),
  ...pairs([...named('source-'), ...named('sink-'), 'line-nitrate'], ['way-soil']),
  ...pairs([...named('state-'), ...named('cover-')], ['ground', 'ground-raised', 'stripe']),
  // what has come up over the place one is at; icons of headings
  ...pairs(
    ['spring', 'summer', 'autumn', 'winter'].map((season) => `turf-${season}`),
    ['ground-raised', 'ground'],
  ),
  // in a bed's section: dots, roots and water in both layers of the soil, plants against the sky
  ...pairs(['section-dot', 'section-root'], ['soil-drawn', 'section-soil-lower']),
  ...pairs(['section-water'], ['section-gauge']),
  ['section-store', 'soil-drawn', 'day'] as const,
  ['section-store-line', 'soil-drawn', 'night'] as const,
  ...pairs(
    [
      'section-stem',
      'section-bloom-line',
      'section-bloom-sun-line',
      'section-fruit-line',
      'section-spent',
    ],
    ['ground', 'ground-raised'],
  ),
  ...themes.flatMap((theme) =>
    (
      [
        ['section-stem', 'section-leaf'],
        ['section-stem', 'section-pod'],
        ['section-bloom-line', 'section-bloom'],
        ['section-bloom-sun-line', 'section-bloom-sun'],
        ['section-store-line', 'section-store'],
      ] as const
    ).map(([front, ground]) => [front, ground, theme] as const),
  ),
  // blades, lines and the edge of the likely range of a lawn
  ...pairs(['source-cover', 'ink', 'ink-soft', 'line-today'], ['stuff-greens']),
  // layings as bars, the chosen day, marks of cautions
  ...pairs(
    ['greens', 'leaves', 'straw', 'compost', 'other'].map((stuff) => `stuff-${stuff}-figure`),
    ['ground', 'ground-raised', 'stripe', 'casing'],
  ),
  ...pairs(['accent', 'note', 'caution', 'stop', 'ink', 'ink-soft'], ['stripe', 'casing']),
  ...pairs(['rule-strong', 'focus'], ['ground', 'ground-raised', 'ground-sunk', 'entry']),
  ...themes.flatMap((theme) =>
    ['greens', 'leaves', 'straw', 'compost', 'other'].map(
      (stuff) => [`stuff-${stuff}-figure`, `stuff-${stuff}`, theme] as const,
    ),
  ),
] as const;

describe('marks, lines, borders: 3 to 1 against what they stand on', () => {
  test.each(marks)('%s on %s by %s', (front, ground, theme) => {
    expect(contrast(front, ground, theme)).toBeGreaterThanOrEqual(3);
  });
});

const sheets = join(import.meta.dirname, '../../app/style/charts');
/** Every rule of the style sheets of the drawings, by its selector; a contrast theme's own left out. */
const drawnBy = readdirSync(sheets).flatMap((file) => {
  const rules = readFileSync(join(sheets, file), 'utf8')
    .replace(/\/\*[^]*?\*\//g, '')
    .replace(/@media \(forced-colors: active\) \{[^]*?\n\}/g, '');
  return [...rules.matchAll(/([^{}]+)\{([^{}]*)\}/g)].map(([, selector = '', body = '']) => ({
    selector: selector.trim().replace(/\s+/g, ' '),
    body,
  }));
});

describe('no mark of a drawing is left out of the reckoning', () => {
  /** What others stand on, or what only helps the eye; each with what carries its meaning. */
  const grounds: Readonly<Record<string, string>> = {
    casing: 'paper under lines and words',
    ground: 'paper of the page, and the torn edge of a section',
    'ground-raised': 'paper of a sheet',
    stripe: 'every other month; the dates beneath say it',
    rule: 'lines of the scale and the hatch of days to come, which is said in words',
    'soil-drawn': 'soil: dots, roots and its own surface are reckoned on it',
    'soil-drawn-figure': 'crumbs; as the surface of the soil it lies under all that stands on it',
    'way-soil': 'the ground under the streams, which has an edge',
    'section-soil-lower': 'soil: as above',
    'section-gauge': 'the ground of the water in the soil',
    'section-leaf': 'has its own outline, reckoned',
    'section-pod': 'has its own outline, reckoned',
    'section-bloom': 'has its own outline, reckoned',
    'section-bloom-sun': 'has its own outline, reckoned',
    'section-store': 'has its own outline, reckoned',
    'section-fruit': 'has its own outline, reckoned',
    'stuff-greens': 'ground of a weave, reckoned',
  };
  const fronts = new Set<string>([...words, ...marks].map(([front]) => front));
  const used = new Map<string, string>();
  for (const { selector, body } of drawnBy)
    for (const [, value = ''] of body.matchAll(/(?:^|[;\s])(?:fill|stroke|color):\s*([^;]+)/g))
      for (const [, name = ''] of value.matchAll(/var\(--([a-z0-9-]+)/g))
        if (tokens.has(name)) used.set(name, selector);

  test('the style sheets were read', () => {
    expect(drawnBy.length).toBeGreaterThan(150);
    expect(used.size).toBeGreaterThan(45);
  });

  test.each([...used])('%s, as in %s', (name) => {
    if (!(name in grounds)) expect(fronts).toContain(name);
  });

  /** What is drawn half clear, and the rule of full ink that carries what it means. */
  const half: Readonly<Record<string, string>> = {
    '.weave-ground': '.chart-band-edge',
    '.weave-figure': '.chart-band-edge',
    '.weave-dot': '.chart-band-edge',
    '.weave-inked .weave-ground': '.chart-band-edge',
    '.weave-likely-ground': '.chart-likely-edge',
    '.weave-likely': '.chart-likely-edge',
    '.weave-imagined': '.chart-label-imagined',
    '.chart-gone-veil': '.weave-gone',
    '.chart-grid': '.chart-base',
    '.way-flow': '.way-bank',
    '.way-current-lines': '.way-bank',
    '.way-current .way-flow': '.way-current .way-bank',
    '.way-drawing.way-told .way-stream:not(.way-current) .way-flow': '.way-bank',
    '.way-basin': '.way-basin',
    '.way-pond': '.way-basin',
    '.way-drawing.way-told .way-place:not(.way-current) .way-basin': '.way-basin',
    '.chart-rain-imagined': '.chart-rain-top',
    '.chart-cross-day': '.chart-cross',
    '.section-crumbs': '.section-surface',
  };
  const clear = drawnBy.filter(({ body }) => /opacity: 0?\.\d|opacity: 0;/.test(body));

  test('what is drawn half clear is known', () => {
    expect(clear.map(({ selector }) => selector).toSorted()).toEqual(Object.keys(half).toSorted());
  });

  test.each(Object.entries(half))('%s has its meaning from %s, which is inked', (_, carrier) => {
    const rule = drawnBy.find(({ selector }) => selector === carrier);
    expect(rule?.body).toMatch(/(?:stroke|fill|stroke-width): (?:var|currentColor|\d)/);
    expect(rule?.body).not.toMatch(/(?:stroke-|[\s;])opacity: /);
  });
});
