import { describe, expect, it } from 'vitest';
import { stockSentence } from '../../app/words/stockWords';

const straw = { name: 'Wheat straw', start: '47 kg', day: '1 March', isDry: false };

describe('the line of a store', () => {
  it('has one measure from start to end', () => {
    expect(stockSentence({ ...straw, added: null, laid: '29 kg', left: '18 kg' })).toBe(
      'Wheat straw: 47 kg on 1 March; since then about 29 kg taken out. About 18 kg is left.',
    );
  });

  it('says when nothing is left, and nothing of what was never touched', () => {
    expect(stockSentence({ ...straw, added: null, laid: '47 kg', left: '' })).toContain(
      'By the sums nothing is left.',
    );
    expect(stockSentence({ ...straw, added: null, laid: null, left: null })).toBe(
      'Wheat straw: 47 kg on 1 March.',
    );
  });

  it('says that it goes by dry weight where nothing was typed to measure by', () => {
    expect(
      stockSentence({
        ...straw,
        start: 'nothing',
        isDry: true,
        added: '6 kg',
        laid: null,
        left: null,
      }),
    ).toBe('Wheat straw: nothing on 1 March; since then about 6 kg added. All by dry weight.');
  });
});
