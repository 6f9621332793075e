import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { chartTextSize, textWidth } from '../../app/charts/textWidth';

describe('room for a chart’s words', () => {
  test('is reckoned at the size the style sheet draws them in', () => {
    const css = readFileSync(join(import.meta.dirname, '../../app/style/tokens.css'), 'utf8');
    expect(css).toContain(`--size-chart: ${chartTextSize}px;`);
  });

  // measured once with canvas.measureText in Chromium, 14 px, weights 480 and 680
  test.each([
    ['About 19 kg, 7.5 mm thick as it is laid, 13 g/m2 of nitrogen.', false, 346.6],
    ['Hungry from 28 June: it gets 16 % of what it could still use.', false, 343.6],
    ['Hungry from 28 June: it gets 16 % of what it could still use.', true, 347.6],
    ['enough from 20 mg/kg', true, 133.7],
    ['MMMM', false, 51.3],
    ['illi', false, 14.3],
  ])('%s', (words, strong, measured) => {
    expect(textWidth(words, strong)).toBeGreaterThanOrEqual(measured);
    expect(textWidth(words, strong)).toBeLessThan(measured * 1.1);
  });
});
