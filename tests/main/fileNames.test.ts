import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cleanName, nameOfPath, withEnding } from '../../main/fileNames';

describe('a typed name becomes one that every system takes', () => {
  test.each([
    ['Back plot', 'Back plot'],
    ['Grüne Ecke 🌱', 'Grüne Ecke 🌱'],
    ['畑', '畑'],
    ['plot.mowings', 'plot'],
    ['plot.MOWINGS', 'plot'],
    ['2025/26', '2025-26'],
    ['..\\..\\secret', '-..-secret'],
    ['/etc/passwd', '-etc-passwd'],
    ['a:b*c?d"e<f>g|h', 'a-b-c-d-e-f-g-h'],
    ['  plot . ', 'plot'],
    ['.hidden', 'hidden'],
    ['plot...', 'plot'],
    ['CON', 'CON-'],
    ['con', 'con-'],
    ['nul.txt', 'nul.txt-'],
    ['COM7', 'COM7-'],
    ['lpt¹', 'lpt¹-'],
    ['CONTENT', 'CONTENT'],
    ['a\nb\tc\u0000d', 'abcd'],
    // Signs that turn the direction of writing can make an ending look like another.
    ['plot\u202Esgniwom', 'plotsgniwom'],
    ['zero\u200Bwidth', 'zerowidth'],
  ])('%j -> %j', (typed, clean) => {
    expect(cleanName(typed)).toBe(clean);
  });

  test.each(['', '   ', '...', '.mowings', '\u0000', '///', '\u200B', '- -'.replace(' ', '')])(
    '%j leaves nothing',
    (typed) => {
      expect(cleanName(typed)).toBeNull();
    },
  );

  test('long names are cut between signs, with room for the ending', () => {
    const clean = cleanName('🌱'.repeat(300))!;
    expect(Buffer.byteLength(`${clean}.mowings`)).toBeLessThanOrEqual(255);
    expect(clean).toMatch(/^(🌱)+$/u);
  });

  test('whatever is typed: no separator, no forbidden sign, no dot or space at the ends, and stable', () => {
    const typed = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 400 }),
      fc.string({
        unit: fc.constantFrom('.', ' ', '/', '\\', ':', 'C', 'O', 'N', '-', 'é'),
        maxLength: 300,
      }),
    );
    fc.assert(
      fc.property(typed, (text) => {
        const clean = cleanName(text);
        if (clean === null) return;
        // eslint-disable-next-line no-control-regex
        expect(clean).not.toMatch(/[\u0000-\u001f<>:"/\\|?*]/);
        expect(clean).not.toMatch(/^[\s.]|[\s.]$/u);
        expect(Buffer.byteLength(clean)).toBeLessThanOrEqual(201);
        expect(cleanName(clean)).toBe(clean);
      }),
      { numRuns: 1000 },
    );
  });
});

test('names and endings of paths', () => {
  expect(nameOfPath('/somewhere/My plot.mowings')).toBe('My plot');
  expect(nameOfPath('/somewhere/My plot.json')).toBe('My plot.json');
  expect(withEnding('/a/plot')).toBe('/a/plot.mowings');
  expect(withEnding('/a/plot.json')).toBe('/a/plot.json.mowings');
  expect(withEnding('/a/plot.Mowings')).toBe('/a/plot.Mowings');
});
