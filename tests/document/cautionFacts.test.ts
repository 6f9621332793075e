import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { cautionFacts } from '../../app/document/cautionFacts';
import { parseGarden } from '../../app/document/parse';
import type { Application, Garden } from '../../app/document/schema';
import { materialRows } from '../../app/tables/materials';

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

describe('what a layer is made of', () => {
  const garden = read();
  const today = dayOf(garden.garden.today ?? '');
  const bed = garden.beds[0]!;
  const factsOf = (materialId: string, own: Garden['materials'] = []) => {
    const layer: Application = {
      id: 'new',
      date: garden.garden.today ?? '',
      bedId: bed.id,
      from: { source: 'elsewhere', materialId },
      amount: { text: '10 L', quantity: { kind: 'volume', litres: 10 }, certainty: 'plain' },
      condition: 'limp',
      wetness: 'damp',
      placement: 'laid',
      mixtureId: null,
      passedStops: [],
    };
    const facts = cautionFacts({ ...garden, materials: own }, bed.id, today, [layer]);
    return facts.layers['new']!;
  };

  // veterinary common knowledge; the threshold table, row "dog poison"
  test.each(['cocoa-hulls', 'blood-meal', 'feather-meal'])('%s poisons dogs', (id) =>
    expect(factsOf(id).hazards).toEqual(['dog poison']),
  );

  test('an own material is what it rests on', () => {
    const own = { id: 'own-9', name: 'Cocoa mulch', basedOn: 'cocoa-hulls' };
    expect(factsOf('own-9', [own]).hazards).toEqual(['dog poison']);
    expect(factsOf('own-9', [own]).materialName).toBe('Cocoa mulch');
  });

  test.each(['straw-wheat', 'alfalfa-meal', 'leaf-mould', 'vermicompost'])('%s does not', (id) =>
    expect(factsOf(id).hazards).toEqual([]),
  );

  test('every compost counts as one, worms’ too; leaf mould and manure do not', () => {
    const ids = materialRows.map(({ id }) => id).filter((id) => factsOf(id).isCompost);
    expect(ids).toEqual([
      'compost-garden',
      'compost-yard-waste',
      'compost-cattle-manure',
      'compost-poultry',
      'compost-mushroom',
      'vermicompost',
    ]);
  });
});
