import { expect, it } from 'vitest';
import { carriedWords, ratioWords } from '../../app/words/mixWords';

const bucket = { name: 'bucket', plural: 'buckets', litres: 12 };
const bag = { name: 'bag', plural: 'bags', litres: 45 };

it('an amount is said in the largest container that it fills', () => {
  expect(carriedWords(90, [bucket, bag])).toBe('2 bags');
  expect(carriedWords(30, [bag, bucket])).toBe('2 1/2 buckets');
  expect(carriedWords(6, [bag, bucket])).toBe('1/2 bucket');
  expect(carriedWords(6, [])).toBeNull();
});

it('a ratio says what stands to what', () => {
  expect(ratioWords(27.4)).toBe('27 of carbon to 1 of nitrogen');
});
