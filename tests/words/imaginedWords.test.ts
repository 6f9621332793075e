import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { NitrogenState } from '../../app/core/season/verdict';
import { nitrogenStates } from '../../app/core/season/verdict';
import {
  imaginedProgress,
  imaginedReady,
  likelyPercent,
  likelyTimes,
  oddsWords,
  restingWords,
  isSeldom,
  stateOddsWords,
} from '../../app/words/imaginedWords';

const states = (odds: Partial<Record<NitrogenState, number>>): Record<NitrogenState, number> => ({
  ...(Object.fromEntries(nitrogenStates.map((state) => [state, 0])) as Record<
    NitrogenState,
    number
  >),
  ...odds,
});

describe('odds, counted on ten fingers', () => {
  test.each([
    [1, 'in all imagined seasons'],
    [0.97, 'in nearly all imagined seasons'],
    [0.72, 'in 7 of 10 imagined seasons'],
    [0.5, 'in 5 of 10 imagined seasons'],
    [0.04, 'in hardly any imagined season'],
    [0, 'in no imagined season'],
  ])('%s: %s', (share, words) => expect(oddsWords(share)).toBe(words));

  test('states: the one shown first, then the commonest; the rare ones left out', () => {
    expect(
      stateOddsWords(
        states({ 'over-fed': 0.7, 'about right': 0.06, 'enough to the end': 0.22 }),
        'over-fed',
      ),
    ).toBe('Over-fed in 7 of 10 imagined seasons, enough to the end in 2, about right in 1');
    // as often as not is not seldom
    const half = states({ 'about right': 0.48, 'enough to the end': 0.52 });
    expect(stateOddsWords(half, 'about right')).toBe(
      'About right in 5 of 10 imagined seasons, enough to the end in 5',
    );
    expect(isSeldom(half, 'about right')).toBe(false);
    expect(stateOddsWords(states({ short: 1 }), 'short')).toBe('Short in all imagined seasons');
    expect(stateOddsWords(states({ short: 0.98, 'about right': 0.02 }), 'short')).toBe(
      'Short in nearly all imagined seasons',
    );
  });
  test('a state that others outnumber is said to be that of the likely values', () => {
    const border = states({
      'over-fed': 0.403,
      'enough to the end': 0.064,
      short: 0.038,
      'about right': 0.495,
    });
    expect(stateOddsWords(border, 'enough to the end')).toBe(
      'Enough to the end by the likely values, but of 10 imagined seasons about right in 5, over-fed in 4, enough to the end in 1',
    );
    expect(isSeldom(border, 'enough to the end')).toBe(true);
    expect(isSeldom(border, 'about right')).toBe(false);
    expect(stateOddsWords(states({ short: 0.6, 'about right': 0.4 }), 'enough for now')).toBe(
      'Enough for now by the likely values, but of 10 imagined seasons short in 6, about right in 4',
    );
    expect(stateOddsWords(states({ short: 0.98, 'about right': 0.02 }), 'about right')).toBe(
      'About right by the likely values, but short in nearly all imagined seasons',
    );
    expect(stateOddsWords(states({ short: 1 }), 'about right')).toBe(
      'About right by the likely values, but short in all imagined seasons',
    );
  });
  test('the counts that are told are never more than ten', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 5, maxLength: 5 }),
        fc.constantFrom(...nitrogenStates),
        (odds, shown) => {
          const all = odds.reduce((sum, one) => sum + one, 0);
          const line = stateOddsWords(
            states(Object.fromEntries(odds.map((one, at) => [nitrogenStates[at]!, one / all]))),
            shown,
          );
          const counts = [...line.matchAll(/ in (\d+)/g)].map(([, count]) => Number(count));
          expect(counts.reduce((sum, count) => sum + count, 0)).toBeLessThanOrEqual(10);
        },
      ),
    );
  });
});

test('ranges say one number where both ends read alike', () => {
  expect(likelyTimes({ low: 1.21, high: 1.87 })).toBe('1.2 to 1.9 times');
  expect(likelyTimes({ low: 1.21, high: 1.22 })).toBe('1.2 times');
  expect(likelyPercent({ low: 0.617, high: 0.842 })).toBe('62 to 84 %');
  expect(likelyPercent({ low: 1, high: 1 })).toBe('100 %');
});

describe('what they rest on', () => {
  test('nothing is said while all count alike', () => {
    expect(restingWords({ count: 1000, effectiveCount: 1000 })).toBe('');
    expect(restingWords({ count: 1000, effectiveCount: 960 })).toBe('');
  });
  test('what a test left is said, and when it is little', () => {
    expect(restingWords({ count: 1000, effectiveCount: 243.7 })).toMatch(/about 240 of 1,000\.$/);
    expect(restingWords({ count: 4000, effectiveCount: 12.3 })).toMatch(/about 12 of 4,000.*rough/);
    expect(restingWords({ count: 100, effectiveCount: 0 })).toMatch(/left out/);
  });
  test('progress and rest', () => {
    expect(imaginedProgress(1200, 12_000)).toBe('Imagining seasons: 1,200 of 12,000');
    expect(imaginedReady([1000, 1000])).toMatch(/from 1,000 imagined seasons/);
    expect(imaginedReady([100, 1000])).toMatch(/100 to 1,000/);
    expect(imaginedReady([])).toMatch(/No season/);
  });
});
