// A heap as an account, and leaves to keep for the month of most grass.
import { describe, expect, test } from 'vitest';
import sampleText from '../../assets/gardens/sample.mowings?raw';
import { dayOf, textFromDay } from '../../app/core/days';
import { mowingAccount } from '../../app/document/accounts';
import { heapAccount, leavesToKeep } from '../../app/document/heapAccount';
import { parseGarden } from '../../app/document/parse';

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
    expect(account.entries.map(({ mowingId }) => mowingId)).toEqual(since.map(({ id }) => id));
    expect(account.start.dryKilograms).toBeGreaterThan(0);
  });

  test('knows nothing of mowings of later days', () => {
    const first = sample.mowings.filter(({ rest }) => rest.to === 'heap').map(({ date }) => date);
    const early = heapAccount(sample, heap, dayOf(first.sort()[0]!));
    expect(early.entries).toHaveLength(1);
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
