import { describe, expect, test } from 'vitest';
import { bedsHeard, effectHeard, figuresHeard, type HeardStates } from '../../app/words/heardWords';

const bed = (
  name: string,
  nitrogen: HeardStates['nitrogen'],
  cover: HeardStates['cover'] = 'good',
): HeardStates => ({ id: name, name, nitrogen, cover });

describe('the effect of a laying, said', () => {
  test('names what changes and what stays', () => {
    expect(
      effectHeard(bed('Far bed', 'short', 'bare'), bed('Far bed', 'about right', 'bare'), []),
    ).toBe(
      'Far bed with this: nitrogen about right, before short; cover bare as before. No reason was found to hold it back.',
    );
  });

  test('says every stop and caution in full, stops first, and counts notes', () => {
    const said = effectHeard(bed('Gate bed', 'over-fed'), bed('Gate bed', 'over-fed'), [
      { weight: 'caution', says: 'It is thick.' },
      { weight: 'stop', says: 'It is too much.' },
      { weight: 'note', says: 'It is wet.' },
      { weight: 'stop', says: 'It is full.' },
    ]);
    expect(said).toContain('2 stops: It is too much. It is full. 1 caution: It is thick. 1 note.');
    expect(said).not.toContain('It is wet');
  });
});

describe('what became of the beds, said', () => {
  test('of a garden heard of for the first time: how many, and which are over-fed or short', () => {
    expect(
      bedsHeard([], [bed('Gate', 'over-fed'), bed('Wall', 'about right'), bed('Far', 'short')]),
    ).toBe('3 beds are reckoned. Over-fed: Gate. Short: Far.');
    expect(bedsHeard([bed('Old', 'short')], [bed('One', 'about right')])).toBe(
      '1 bed is reckoned.',
    );
  });

  test('afterwards only what is another than before', () => {
    const before = [bed('Gate', 'over-fed'), bed('Far', 'short', 'bare')];
    expect(bedsHeard(before, before)).toBe('');
    expect(bedsHeard(before, [bed('Gate', 'over-fed'), bed('Far', 'about right', 'thin')])).toBe(
      'Far: now about right, before short. Cover on Far: now thin, before bare.',
    );
  });

  test('a bed under another name is the same bed; a new one is told', () => {
    const renamed = { ...bed('Gate', 'over-fed'), name: 'Entrance' };
    expect(bedsHeard([bed('Gate', 'over-fed')], [renamed])).toBe('');
    expect(bedsHeard([bed('Gate', 'over-fed')], [renamed, bed('New', 'short', 'bare')])).toBe(
      'New: short, cover bare.',
    );
  });

  test('of no beds nothing', () => expect(bedsHeard([], [])).toBe(''));
});

test('figures are said with their names and ranges', () => {
  expect(
    figuresHeard([
      { label: 'It weighs', words: 'about 25 kg, likely 22 to 31 kg (8 times in 10)' },
      { label: 'Nitrogen in it', words: '150 g' },
    ]),
  ).toBe('It weighs about 25 kg, likely 22 to 31 kg (8 times in 10). Nitrogen in it 150 g.');
});
