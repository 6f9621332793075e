import { readFileSync } from 'node:fs';
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

describe('words: 4.5 to 1', () => {
  test.each([
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
  ])('%s on %s by %s', (front, ground, theme) => {
    expect(contrast(front, ground, theme)).toBeGreaterThanOrEqual(4.5);
  });
});

describe('marks, lines, borders: 3 to 1 against what they stand on', () => {
  test.each([
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
    ...pairs(['stuff-greens-figure'], ['ground', 'ground-raised']),
    ...pairs(['rule-strong', 'focus'], ['ground', 'ground-raised', 'ground-sunk', 'entry']),
    ...themes.flatMap((theme) =>
      ['greens', 'leaves', 'straw', 'compost', 'other'].map(
        (stuff) => [`stuff-${stuff}-figure`, `stuff-${stuff}`, theme] as const,
      ),
    ),
  ])('%s on %s by %s', (front, ground, theme) => {
    expect(contrast(front, ground, theme)).toBeGreaterThanOrEqual(3);
  });
});
