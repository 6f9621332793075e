// What is done of a week's plan, as a file keeps it: a garden frozen when those entries were new.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { leavesWith, mowingAccount, stockAccount } from '../../app/document/accounts';
import { heapAccount } from '../../app/document/heapAccount';
import { nothingLaid } from '../../app/document/nothingLaid';
import { parseGarden } from '../../app/document/parse';
import type { Garden } from '../../app/document/schema';
import { serializeGarden } from '../../app/document/serialize';

const frozen = readFileSync(join(import.meta.dirname, '../documents/v1-plan.json'), 'utf8');
const read = (text: string): Garden => {
  const result = parseGarden(text);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const garden = read(frozen);
const mowing = (id: string) => garden.mowings.find((one) => one.id === id)!;

describe('the frozen garden', () => {
  test('opens and is kept, to the byte', () => {
    expect(serializeGarden(garden)).toBe(frozen);
  });

  test('knows the bed on which nothing was laid, for a week', () => {
    const beds = (day: string) => nothingLaid(garden, dayOf(day)).map(({ id }) => id);
    expect(beds('2021-06-19')).toEqual(['event-nothing']);
    expect(beds('2021-06-25')).toEqual(['event-nothing']);
    expect(beds('2021-06-26')).toEqual([]);
    expect(beds('2021-06-18')).toEqual([]);
  });

  test('has leaves on the heap beside the clippings, with their own nitrogen', () => {
    const heap = garden.stock.find(({ role }) => role === 'heap')!;
    const { entries } = heapAccount(garden, heap, dayOf('2021-06-20'));
    const own = entries.filter(({ from }) => from === 'mowing-heap');
    expect(own.map(({ what }) => what)).toEqual(['clippings', 'leaves']);
    expect(own[1]!.dryKilograms).toBe(leavesWith(garden, mowing('mowing-heap')));
    // leaves hold less of it than grass, dry weight against dry weight (materials tables)
    const share = ({ nitrogenGrams, dryKilograms }: (typeof own)[number]) =>
      nitrogenGrams / dryKilograms;
    expect(share(own[1]!)).toBeLessThan(share(own[0]!));
  });

  test('has dry grass in its store, and the loss on the way is not there', () => {
    const all = mowingAccount(garden, mowing('mowing-dried')).leftDryKilograms;
    const { leftDryKilograms } = stockAccount(garden, 'stock-dry');
    expect(leftDryKilograms).toBeGreaterThan(0.9 * all);
    expect(leftDryKilograms).toBeLessThan(all);
  });
});

describe('what points at nothing is refused', () => {
  const changed = (rest: object): string =>
    JSON.stringify({
      ...garden,
      mowings: garden.mowings.map((one) => (one.id === 'mowing-heap' ? { ...one, rest } : one)),
    });
  const heapId = garden.stock.find(({ role }) => role === 'heap')!.id;
  const amount = {
    text: '1 L',
    quantity: { kind: 'volume', litres: 1 },
    certainty: 'plain',
  };
  test.each([
    ['a store that is gone', { to: 'store', stockId: 'stock-9' }],
    ['a store that is a heap', { to: 'store', stockId: heapId }],
    [
      'leaves out of no store',
      { to: 'heap', stockId: heapId, leaves: { stockId: 'stock-9', amount } },
    ],
    [
      'leaves in a container nobody has',
      {
        to: 'heap',
        stockId: heapId,
        leaves: {
          stockId: 'stock-dry',
          amount: { ...amount, quantity: { kind: 'containers', count: 1, containerId: 'sack-9' } },
        },
      },
    ],
  ])('%s', (_name, rest) => {
    expect(parseGarden(changed(rest)).ok).toBe(false);
  });
});
