import { expect, test } from 'vitest';
import type { Amount, Garden } from '../../app/document/schema';
import { hasUnweighedBags } from '../../app/screens/beds/unweighedBags';
import { exampleGarden } from '../document/exampleGarden';

const bags: Amount = {
  text: '2 bags',
  quantity: { kind: 'containers', count: 2, containerId: 'bag' },
  certainty: 'plain',
};
const weight: Amount = {
  text: '6 kg',
  quantity: { kind: 'mass', kilograms: 6 },
  certainty: 'plain',
};
function garden(changes: { layer: Amount; mowing: Amount; isWeighed?: boolean }): Garden {
  const example = exampleGarden();
  const [mowing] = example.mowings;
  const [layer] = example.applications;
  return {
    ...example,
    containers: [
      {
        id: 'bag',
        name: 'bag',
        plural: 'bags',
        litres: 60,
        weighed: changes.isWeighed ? { date: '2021-06-01', kilograms: 12, wetness: 'damp' } : null,
      },
    ],
    mowings: [{ ...mowing!, amount: changes.mowing }],
    applications: [
      {
        ...layer!,
        bedId: 'bed-1',
        from: { source: 'mowing', mowingId: mowing!.id },
        amount: changes.layer,
      },
    ],
  };
}

test('a layer or its mowing that was counted in bags nobody weighed', () => {
  expect(hasUnweighedBags(garden({ layer: bags, mowing: weight }), 'bed-1')).toBe(true);
  expect(hasUnweighedBags(garden({ layer: weight, mowing: bags }), 'bed-1')).toBe(true);
  expect(hasUnweighedBags(garden({ layer: bags, mowing: bags }), 'bed-2')).toBe(false);
});
test('not what was weighed, itself or by the bag', () => {
  expect(hasUnweighedBags(garden({ layer: weight, mowing: weight }), 'bed-1')).toBe(false);
  const weighed = garden({ layer: bags, mowing: bags, isWeighed: true });
  expect(hasUnweighedBags(weighed, 'bed-1')).toBe(false);
});
