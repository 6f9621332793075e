import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { readAmount } from '../../app/amounts/readAmount';
import { unitsOf } from '../../app/amounts/unitSystem';
import { amountWords } from '../../app/screens/amountWords';
import { estimateWithUnit } from '../../app/words/figures';

const containers = [{ id: 'bag', name: 'bag', plural: 'bags', litres: 45, weighed: null }];
const lawns = [{ id: 'lawn', name: 'Back lawn', areaM2: 220 }];
const context = {
  units: 'metric',
  containers,
  lawns,
  lawnId: 'lawn',
  today: dayOf('2013-06-18'),
  bareNumber: true,
} as const;
const shown = (system: 'metric' | 'us') => ({
  system,
  units: unitsOf(system),
  estimate: estimateWithUnit,
});

describe('an amount in tidy words', () => {
  test.each([
    ['2 bags last Saturday, dry, from Back lawn', '2 bags'],
    ['a bag and a half, soaked', '1 1/2 bags'],
    ['roughly 6 kg, soaked, on 14 June', 'about 6 kg'],
    ['14 lb', '14 lb'],
    ['220 m2, 2 cm off', '220 m2, 20 mm off'],
    ['3', '3 bags'],
  ])('“%s” is “%s”', (text, words) => {
    const reading = readAmount(text, 'mowing', context);
    if (!reading.ok) throw new Error(reading.error.kind);
    expect(amountWords(reading.value.amount, { containers }, context, shown('metric'))).toBe(words);
  });

  test('a part that was worked out is told to the quarter', () => {
    const amount = {
      text: 'half of it',
      quantity: { kind: 'containers', count: 1.48, containerId: 'bag' },
      certainty: 'plain',
    } as const;
    expect(amountWords(amount, { containers }, context, shown('metric'))).toBe('1 1/2 bags');
  });

  test('what was not typed in a unit comes in the person’s own', () => {
    const amount = {
      text: 'half',
      quantity: { kind: 'mass', kilograms: 4.5359237 },
      certainty: 'plain',
    } as const;
    expect(amountWords(amount, { containers }, context, shown('us'))).toBe('10 lb');
  });
});
