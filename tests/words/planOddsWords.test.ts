import { expect, test } from 'vitest';
import { planOddsWords } from '../../app/words/planOddsWords';

test('a line says in how many imagined seasons its bed is better with it', () => {
  expect(planOddsWords({ better: 78, worse: 0, of: 100 })).toBe(
    'Better with it in 8 of 10 imagined seasons.',
  );
  expect(planOddsWords({ better: 100, worse: 0, of: 100 })).toBe(
    'Better with it in all imagined seasons.',
  );
  expect(planOddsWords({ better: 0, worse: 0, of: 100 })).toBe(
    'Better with it in no imagined season.',
  );
});
