import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { cautionFacts } from '../../app/document/cautionFacts';
import { parseGarden } from '../../app/document/parse';
import type { Application, Garden } from '../../app/document/schema';

/* The sample garden: three bags mown today and given to nobody yet. */
const read = (): Garden => {
  const parsed = parseGarden(readFileSync('assets/gardens/sample.mowings', 'utf8'));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  return parsed.value;
};

describe('what is on hand', () => {
  const garden = read();
  const today = dayOf(garden.garden.today ?? '');
  const bed = garden.beds[0]!;
  const open = garden.mowings.find(({ rest }) => rest.to === 'undecided')!;

  test('the open mowing, in litres and grams', () => {
    const [first, ...others] = cautionFacts(garden, bed.id, today).onHand ?? [];
    expect(others).toEqual([]);
    // 3 bags of 45 L; a bag holds 77 g N by the sample's own sums, damp or dry
    expect(first?.litres).toBeCloseTo(135, 6);
    expect(first?.nitrogenGrams ?? 0).toBeGreaterThan(0.8 * 3 * 77);
    expect(first?.nitrogenGrams ?? 0).toBeLessThan(1.2 * 3 * 77);
  });

  test('less what a proposal takes, and nothing once it is a week old or on the lawn', () => {
    const taken: Application = {
      id: 'proposal',
      date: garden.garden.today ?? '',
      bedId: bed.id,
      from: { source: 'mowing', mowingId: open.id },
      amount: { text: '1 bag', quantity: { kind: 'volume', litres: 45 }, certainty: 'plain' },
      condition: 'just cut',
      wetness: 'damp',
      placement: 'laid',
      mixtureId: null,
      passedStops: [],
    };
    expect(cautionFacts(garden, bed.id, today, [taken]).onHand?.[0]?.litres).toBeCloseTo(90, 3);
    expect(cautionFacts(garden, bed.id, today + 7).onHand).toEqual([]);
    const decided: Garden = {
      ...garden,
      mowings: garden.mowings.map((mowing) =>
        mowing.id === open.id ? { ...mowing, rest: { to: 'lawn' as const } } : mowing,
      ),
    };
    expect(cautionFacts(decided, bed.id, today).onHand).toEqual([]);
  });
});
