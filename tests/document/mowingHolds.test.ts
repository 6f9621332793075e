import { describe, expect, test } from 'vitest';
import { mowingMass } from '../../app/document/accounts';
import { mowingHolds } from '../../app/document/mowingHolds';
import type { Garden, Mowing } from '../../app/document/schema';
import { exampleGarden } from './exampleGarden';

/** The weighed bag of the sample (sampleGarden.ts): 45 L, 11.3 kg full and dry to the touch, 3.4 % N. */
const cardBag = (): Garden => {
  const garden = exampleGarden();
  garden.containers[0] = {
    ...garden.containers[0]!,
    litres: 45,
    weighed: { date: '2021-04-27', kilograms: 11.3, wetness: 'dry' },
  };
  return garden;
};
const mowing = (changes: Partial<Mowing> = {}): Mowing => ({
  ...exampleGarden().mowings[0]!,
  wetness: 'dry',
  amount: {
    text: '1 bag',
    quantity: { kind: 'containers', count: 1, containerId: 'container-1' },
    certainty: 'plain',
  },
  ...changes,
});

describe('what a mowing holds', () => {
  test('a weighed bag of ordinary clippings: 2.26 kg dry, 77 g N (11.3 kg at 80 % water, 3.4 % N)', () => {
    const holds = mowingHolds(cardBag(), mowing());
    expect(holds.freshKilograms.typical).toBeCloseTo(11.3, 9);
    expect(holds.dryKilograms.typical).toBeCloseTo(2.26, 9);
    expect(holds.nitrogenGrams.typical).toBeCloseTo(77, 0);
    expect(holds.formula).toBe('by weighed container');
  });
  test('its middle is the mass every layer is reckoned with, in each way it can be typed', () => {
    const quantities: Mowing['amount']['quantity'][] = [
      { kind: 'containers', count: 2, containerId: 'container-2' },
      { kind: 'volume', litres: 90 },
      { kind: 'mass', kilograms: 6 },
      { kind: 'mown', areaM2: 220, heightMillimetres: 20 },
    ];
    for (const quantity of quantities) {
      for (const wetness of ['soaked', 'damp', 'dry'] as const) {
        const one = mowing({ wetness, amount: { text: '', quantity, certainty: 'about' } });
        const holds = mowingHolds(cardBag(), one);
        const mass = mowingMass(cardBag(), one);
        expect(holds.dryKilograms.typical).toBeCloseTo(mass.dryKilograms, 12);
        expect(holds.freshKilograms.typical).toBeCloseTo(mass.freshKilograms, 12);
        expect(holds.nitrogenGrams.typical).toBeCloseTo(mass.nitrogenGrams, 9);
        expect(holds.dryKilograms.low).toBeLessThan(holds.dryKilograms.typical);
        expect(holds.dryKilograms.high).toBeGreaterThan(holds.dryKilograms.typical);
      }
    }
  });
  test('weighing narrows the range; "not sure" widens it', () => {
    const unweighed = cardBag();
    unweighed.containers[0]!.weighed = null;
    const width = (garden: Garden, certainty: Mowing['amount']['certainty'] = 'plain') => {
      const one = mowing({ amount: { ...mowing().amount, certainty } });
      const { low, typical, high } = mowingHolds(garden, one).dryKilograms;
      return (high - low) / typical;
    };
    expect(width(cardBag())).toBeLessThan(width(unweighed));
    expect(width(cardBag(), 'not sure')).toBeGreaterThan(width(cardBag()));
  });
});
