import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutAtFigures, whyName } from '../../app/words/why';

const plain = (says: string, figures: readonly string[]): string =>
  cutAtFigures(says, figures)
    .map((stretch) => (typeof stretch === 'string' ? stretch : stretch.text))
    .join('');

describe('a sentence cut at its figures', () => {
  test('each figure stands alone, the words between them stay', () => {
    expect(cutAtFigures('It is 3.2 times. Past 1.2, tops grow.', ['3.2 times', '1.2'])).toEqual([
      'It is ',
      { figure: 0, text: '3.2 times' },
      '. Past ',
      { figure: 1, text: '1.2' },
      ', tops grow.',
    ]);
  });

  test('a figure is no part of a longer number, before or after', () => {
    expect(cutAtFigures('11.2 and 1.25 and 1.2', ['1.2'])).toEqual([
      '11.2 and 1.25 and ',
      { figure: 0, text: '1.2' },
    ]);
    expect(cutAtFigures('about 110 g', ['10 g'])).toEqual(['about 110 g']);
  });

  test('what is not in the sentence is left out, and so is what lies over another', () => {
    expect(cutAtFigures('5 g/m² is ready.', ['8 %', '5 g/m²', '5 g'])).toEqual([
      { figure: 1, text: '5 g/m²' },
      ' is ready.',
    ]);
    expect(cutAtFigures('nothing', [''])).toEqual(['nothing']);
  });

  test('law: no letter is lost or said twice', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('1', '2', '.', ' ', 'g', '%') }),
        fc.array(fc.string({ unit: fc.constantFrom('1', '2', '.', ' ', 'g', '%'), minLength: 1 }), {
          maxLength: 4,
        }),
        (says, figures) => {
          expect(plain(says, figures)).toBe(says);
        },
      ),
      { numRuns: 300, seed: 41 },
    );
  });

  test('its button is named by the figure', () => {
    expect(whyName('3.2 times')).toBe('3.2 times: why?');
  });
});
