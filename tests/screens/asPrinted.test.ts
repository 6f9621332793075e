import { expect, test } from 'vitest';
import { asPrinted } from '../../app/screens/print/asPrinted';
import { papers } from '../../app/screens/print/papers';

test.each([
  ['print', 'all'],
  ['screen and (width >= 72rem)', 'not all'],
  // 40 rem are 640 px
  ['(width < 40rem)', 'not all'],
  ['(width < 48rem)', 'all'],
  ['(width >= 40rem) and (forced-colors: active)', 'all and (forced-colors: active)'],
  ['print and (width <= 48rem)', 'all'],
  ['(prefers-reduced-motion: reduce)', 'all and (prefers-reduced-motion: reduce)'],
  ['print, (width > 90rem)', 'all, not all'],
])('%s on 680 px of paper is %s', (query, printed) => {
  expect(asPrinted(query, 680)).toBe(printed);
});

test('papers are as wide as the standards and the margins leave them', () => {
  // A4 210 mm less twice 15 mm; Letter 8.5 in less the same: CSS px of 1/96 in
  expect(papers.map(({ width }) => Math.round(width))).toEqual([680, 703]);
});
