import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { parseGarden } from '../../app/document/parse';
import type { Garden } from '../../app/document/schema';
import {
  likelyCondition,
  newRow,
  readRow,
  readRows,
  takenBy,
  type LayRow,
} from '../../app/screens/week/layRows';
import { readingContext } from '../../app/screens/useReadingContext';

const sample = (): Garden => {
  const parsed = parseGarden(
    readFileSync(join(import.meta.dirname, '../../assets/gardens/sample.mowings'), 'utf8'),
  );
  if (!parsed.ok) throw new Error('the sample does not open');
  return parsed.value;
};
const garden = sample();
const context = readingContext(garden, 'metric', dayOf('2013-06-15'));
const mowing = garden.mowings.find(({ rest }) => rest.to === 'undecided');
const bed = garden.beds.find(({ name }) => name === 'Far bed');
const straw = garden.stock.find(({ name }) => name === 'Wheat straw');
if (!mowing || !bed || !straw) throw new Error('the sample is another');
const what = `mowing:${mowing.id}`;
const read = (changes: Partial<LayRow>) =>
  readRow(garden, context, { ...newRow(what, bed.id), ...changes }, '2013-06-15');

describe('a line of a laying', () => {
  test('says what it comes to on its bed', () => {
    const { draft, main, troubles } = read({ amount: '1 bag', placement: 'hoed' });
    expect(troubles).toEqual({});
    expect(draft).toMatchObject({
      bedId: bed.id,
      date: '2013-06-15',
      placement: 'hoed',
      parts: [{ from: { source: 'mowing', mowingId: mowing.id }, condition: 'just cut' }],
    });
    // sampleGarden.ts: a weighed bag of 45 L is 2.26 kg dry and 77 g N; Far bed has 9 m2
    expect(main?.dryKilograms).toBeCloseTo(2.26, 2);
    expect(main?.nitrogenGramsPerM2).toBeCloseTo(77 / 9, 1);
  });

  test('a depth is of this bed: 10 mm on 9 m2 are 90 L, two bags of 45 L', () => {
    const one = read({ amount: '10 mm' }).main;
    const other = read({ amount: '2 bags' }).main;
    expect(one?.millimetres).toBeCloseTo(10, 6);
    expect(one?.dryKilograms).toBeCloseTo(other?.dryKilograms ?? 0, 6);
  });

  test('with a brown it is a mixture of two parts', () => {
    const { draft, brown } = read({
      amount: '1 bag',
      brown: `stock:${straw.id}`,
      brownAmount: '3 kg',
    });
    expect(draft?.parts.map(({ from }) => from)).toEqual([
      { source: 'mowing', mowingId: mowing.id },
      { source: 'stock', stockId: straw.id },
    ]);
    expect(brown?.freshKilograms).toBeCloseTo(3, 6);
  });

  test('blank is no trouble; half filled says what is missing', () => {
    expect(read({ bedId: '' })).toMatchObject({ isBlank: true, draft: null, troubles: {} });
    expect(read({ bedId: '', amount: '1 bag' }).troubles).toHaveProperty('bed');
    expect(read({ amount: '' }).troubles).toHaveProperty('amount');
    expect(read({ amount: '2 bgas' }).troubles.amount?.suggestion).toBe('2 bags');
    expect(
      read({ amount: '1 bag', brown: `stock:${straw.id}`, brownAmount: '' }).troubles,
    ).toHaveProperty('brown');
  });

  test('what lines take from one source adds up', () => {
    const rows = [read({ amount: '1 bag' }), read({ amount: '1/2 bag' })];
    expect(takenBy(rows, what)).toBeCloseTo(1.5 * 2.26, 1);
    expect(takenBy(rows, 'stock:none')).toBe(0);
  });

  test('a number alone is so many of the usual container, and said so', () => {
    expect(read({ amount: '2' }).takenFor).toMatchObject({ kind: 'containers', count: 2 });
    expect(read({ amount: '2 bags' }).takenFor).toBeNull();
  });

  test('half and all of it are of the dry matter in hand, also when it has gone limp', () => {
    // three bags of 2.26 kg dry (sampleGarden.ts)
    for (const condition of ['just cut', 'limp', 'crisp'] as const) {
      expect(read({ amount: 'all of it', condition }).main?.dryKilograms).toBeCloseTo(6.78, 1);
      expect(read({ amount: 'half', condition }).main?.dryKilograms).toBeCloseTo(3.39, 1);
    }
  });

  test('the rest is what the other lines leave', () => {
    const rows = [
      { ...newRow(what, bed.id), amount: 'the rest' },
      { ...newRow(what, garden.beds[0]!.id), amount: '1 bag' },
    ];
    const [rest, one] = readRows(garden, context, rows, '2013-06-15');
    expect(rest!.main!.dryKilograms + one!.main!.dryKilograms).toBeCloseTo(
      read({ amount: 'all' }).main!.dryKilograms,
      6,
    );
    const taken = readRows(
      garden,
      context,
      [rows[0]!, { ...rows[1]!, amount: 'all of it' }],
      '2013-06-15',
    );
    expect(taken[0]!.troubles.amount?.sentence).toMatch(/Nothing of it is left/);
  });

  test.each([
    ['2013-06-15', 'damp', 'just cut'],
    ['2013-06-16', 'damp', 'limp'],
    ['2013-06-18', 'dry', 'limp'],
    ['2013-06-19', 'damp', 'crisp'],
    ['2013-06-22', 'soaked', 'limp'],
  ] as const)('mown on 15 June and laid on %s, %s, it is most likely %s', (day, wetness, state) => {
    expect(likelyCondition({ date: '2013-06-15', wetness }, day)).toBe(state);
  });
});
