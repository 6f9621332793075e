import { expect, test } from 'vitest';
import { decayParameters } from '../../../app/core/cover/decay';
import { temperatureFactor } from '../../../app/core/soil/temperature';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { materialOf } from '../../../app/tables/materials';
import { decayStep, nitrogenReleased } from './oneStep';

const c = typicalCoefficients();

/** Of what is in 100 g of carbon at a C:N, set free in thirty days at 20 deg C; below 0: held. */
function freed(kind: 'green' | 'mature', ratio: number): number {
  const p = decayParameters(kind, ratio, c);
  const before = { residue: 100, microbes: 0, humus: 0 };
  const days = 30 * temperatureFactor(20);
  return nitrogenReleased(before, decayStep(before, p, days, days, c.assimilation), p);
}

// Abstract on charred and uncharred grounds: 0.5 to 1.75 % of grounds held nitrogen in a month.
test('coffee grounds hold nitrogen for a month in soil, as was measured; as greens they would not', () => {
  const grounds = materialOf('coffee-grounds')!;
  expect(grounds.materialClass).toBe('mature');
  const { low, typical, high } = grounds.carbonToNitrogen;
  for (const ratio of [low, typical, high]) expect(freed('mature', ratio)).toBeLessThan(0);
  expect(freed('green', low)).toBeGreaterThan(0);
});
