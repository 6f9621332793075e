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

describe('words: 4.5 to 1', () => {
  test.each([
    ...pairs(['ink', 'ink-soft', 'accent'], ['ground', 'ground-raised', 'ground-sunk']),
    ...pairs(['ink', 'ink-soft'], ['mown', 'mown-back', 'accent-ground', 'stripe', 'selection']),
    ...pairs(['ink', 'ink-soft'], ['note-ground', 'caution-ground', 'stop-ground']),
    ...pairs(['note', 'caution', 'stop'], ['ground', 'ground-raised']),
    ...themes.flatMap((theme) =>
      (['note', 'caution', 'stop'] as const).map(
        (weight) => [weight, `${weight}-ground`, theme] as const,
      ),
    ),
    ...pairs(['on-accent'], ['accent', 'accent-deep']),
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
    // what has come up over the place one is at
    ...pairs(
      ['spring', 'summer', 'autumn', 'winter'].map((season) => `turf-${season}`),
      ['ground-raised'],
    ),
    // the dots of ready nitrogen in a bed's drawing
    ...pairs(['on-soil-head'], ['soil-drawn']),
    ...pairs(['rule-strong', 'focus'], ['ground', 'ground-raised', 'ground-sunk']),
    ...themes.flatMap((theme) =>
      ['greens', 'leaves', 'straw', 'compost', 'other'].map(
        (stuff) => [`stuff-${stuff}-figure`, `stuff-${stuff}`, theme] as const,
      ),
    ),
  ])('%s on %s by %s', (front, ground, theme) => {
    expect(contrast(front, ground, theme)).toBeGreaterThanOrEqual(3);
  });
});
