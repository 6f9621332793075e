// A heap as an account, and leaves to keep for the month of most grass.
import { describe, expect, test } from 'vitest';
import sampleText from '../../assets/gardens/sample.mowings?raw';
import { dayOf, textFromDay } from '../../app/core/days';
import { mowingAccount, stockAccount } from '../../app/document/accounts';
import { heapAccount, leavesToKeep } from '../../app/document/heapAccount';
import { parseGarden } from '../../app/document/parse';
import { findFault } from '../../app/document/references';
import { serializeGarden } from '../../app/document/serialize';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
const sample = parsed.value;
const today = dayOf('2013-06-15');
const kept = sample.stock.find(({ role }) => role === 'heap')!;
// begun before the first mowing, so that the sample's own rests count
const heap = { ...kept, date: '2013-01-01' };
const leaves = sample.stock.find(({ materialId }) => materialId.startsWith('leaves-'))!;

describe('a heap', () => {
  test('was given what the mowings’ rests came to', () => {
    const account = heapAccount(sample, heap, today);
    const rests = sample.mowings
      .filter(({ rest }) => rest.to === 'heap')
      .reduce((sum, mowing) => sum + mowingAccount(sample, mowing).leftDryKilograms, 0);
    expect(rests).toBeGreaterThan(0);
    expect(account.putOn.dryKilograms).toBeCloseTo(rests, 9);
    const { start, left, putOn } = account;
    expect(left.dryKilograms.typical).toBeLessThan(start.dryKilograms + rests);
    expect(left.dryKilograms.typical).toBeGreaterThan(start.dryKilograms);
    expect(left.nitrogenGrams.high).toBeLessThanOrEqual(start.nitrogenGrams + putOn.nitrogenGrams);
  });

  test('holds what was seen there later, and counts nothing twice that went on before', () => {
    const account = heapAccount(sample, kept, today);
    const since = sample.mowings.filter(
      ({ rest, date }) => rest.to === 'heap' && date >= kept.date,
    );
    expect(account.entries.map(({ from }) => from)).toEqual(since.map(({ id }) => id));
    expect(account.start.dryKilograms).toBeGreaterThan(0);
  });

  test('knows nothing of mowings of later days', () => {
    const first = sample.mowings.filter(({ rest }) => rest.to === 'heap').map(({ date }) => date);
    const early = heapAccount(sample, heap, dayOf(first.sort()[0]!));
    expect(early.entries).toHaveLength(1);
  });
});

describe('what was raked off a bed', () => {
  const [bed] = sample.beds;
  const raked = (date: string, stockId = heap.id): typeof sample => ({
    ...sample,
    events: [
      ...sample.events,
      {
        id: 'raked',
        date,
        kind: 'rake off',
        bedId: bed!.id,
        share: 0.5,
        toHeap: {
          stockId,
          materialId: 'straw-wheat',
          amount: {
            text: '4 kg',
            quantity: { kind: 'mass', kilograms: 4 },
            certainty: 'about',
          },
          nitrogenPercent: 1.5,
        },
      },
    ],
  });

  test('is in the heap’s books with the nitrogen it still had', () => {
    const garden = raked('2013-06-10');
    const [before, after] = [sample, garden].map((of) => heapAccount(of, heap, today));
    const dry = after!.putOn.dryKilograms - before!.putOn.dryKilograms;
    // kg dry x 1.5 % = 15 g in each
    expect(dry).toBeGreaterThan(2);
    expect(after!.putOn.nitrogenGrams - before!.putOn.nitrogenGrams).toBeCloseTo(15 * dry, 9);
    expect(after!.entries.at(-1)).toMatchObject({ from: 'raked', what: 'raked off' });
    const left = (of: typeof sample) =>
      stockAccount({ ...of, stock: [heap] }, heap.id).leftDryKilograms;
    const { mowings } = sample;
    const dryOf = (of: typeof sample) => left({ ...of, mowings: mowings.filter(() => false) });
    expect(
      dryOf({ ...garden, applications: [] }) - dryOf({ ...sample, applications: [] }),
    ).toBeCloseTo(dry, 9);
    expect(heapAccount(raked('2013-06-16'), heap, today).putOn).toEqual(before!.putOn);
  });

  test('can be read back from the file, and not go on what is no heap', () => {
    const garden = raked('2013-06-10');
    const again = parseGarden(serializeGarden(garden));
    expect(again.ok && again.value).toEqual(garden);
    const store = sample.stock.find(({ role }) => role === 'store')!;
    expect(findFault(raked('2013-06-10', store.id))).toMatchObject({ what: 'heap' });
  });
});

describe('leaves to keep', () => {
  const keep = leavesToKeep(sample, leaves, today)!;

  test('are reckoned for the June to come', () => {
    expect(textFromDay(keep.monthFirst)).toBe('2014-06-01');
  });

  test('go with the grass of the lawns that may be used, by the mixing sum', () => {
    expect(keep.clippingsLitres).toBeGreaterThan(100);
    expect(keep.leavesLitres).toBeGreaterThan(0);
    const bigger = {
      ...sample,
      lawns: sample.lawns.map((lawn) => ({ ...lawn, areaM2: lawn.areaM2 * 2 })),
    };
    expect(leavesToKeep(bigger, leaves, today)!.leavesLitres).toBeGreaterThan(keep.leavesLitres);
  });

  test('are none where every lawn is held back', () => {
    const held = {
      ...sample,
      lawns: sample.lawns.map((lawn) => ({
        ...lawn,
        treatment: { answer: 'treated', label: 'forbids' } as const,
      })),
    };
    expect(leavesToKeep(held, leaves, today)).toBeNull();
  });
});
