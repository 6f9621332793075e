import { expect, test } from 'vitest';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';
import { seasonSpread } from '../../app/document/seasonSpread';

const sample = (): Garden => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error(parsed.error.kind);
  return parsed.value;
};

const garden = sample();
const [planting] = garden.plantings;
const [application] = garden.applications;

test.each<[string, Garden]>([
  ['a planting that goes', { ...garden, plantings: garden.plantings.slice(1) }],
  [
    'a planting that is another crop',
    {
      ...garden,
      plantings: garden.plantings.map((one) =>
        one === planting ? { ...one, cropId: 'tomato' } : one,
      ),
    },
  ],
  [
    'a planting on another bed',
    {
      ...garden,
      plantings: garden.plantings.map((one) =>
        one === planting ? { ...one, bedId: garden.beds.at(-1)!.id } : one,
      ),
    },
  ],
  [
    'nitrogen measured of a layer',
    {
      ...garden,
      applications: garden.applications.map((one) =>
        one === application ? { ...one, nitrogenPercent: 3.3 } : one,
      ),
    },
  ],
  [
    'organic matter that nobody measured',
    {
      ...garden,
      beds: garden.beds.map((bed) => ({ ...bed, organicMatterPercent: null })),
      events: garden.events.filter(({ kind }) => kind !== 'soil test'),
    },
  ],
])('what is kept of a bed follows %s, and goes back with it', (_name, changed) => {
  const spreads = (of: Garden) => of.beds.map(({ id }) => seasonSpread(of, id));
  const before = spreads(garden);
  // a copy shares no part with what was ever asked about
  const afresh = spreads(structuredClone(changed));
  expect(afresh).not.toEqual(before);
  expect(spreads(changed)).toEqual(afresh);
  expect(spreads(garden)).toEqual(before);
});
