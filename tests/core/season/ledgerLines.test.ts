import { describe, expect, test } from 'vitest';
import { flowIndex, flowKinds } from '../../../app/core/season/flows';
import { bedLedger, flowTotals, supplyBySource } from '../../../app/core/season/ledger';
import type { SeasonResult } from '../../../app/core/season/result';
import { noNitrogen, seasonFromFlows } from '../../charts/seasonFromFlows';

/*
 * Which line of the account, and which band of the supply, each way of nitrogen belongs to: written
 * down by hand from what a gardener would call it, one line per flow.
 */

type Line = readonly [
  from: Parameters<typeof flowIndex>[0],
  to: Parameters<typeof flowIndex>[1],
  why: string,
  line: string | null,
  band?: string,
];

const lines: readonly Line[] = [
  ['applied', 'coverResidue', 'laid on', 'in: laid on'],
  ['applied', 'coverFree', 'ready at laying', 'in: compost and manure'],
  ['applied', 'dugResidue', 'dug in', 'in: dug in'],
  ['applied', 'mineralTop', 'ready when dug in', 'in: compost and manure', 'compost'],
  ['applied', 'slow', 'slow material', 'in: compost and manure'],
  ['applied', 'soilOrganic', 'slow material dug in', 'in: compost and manure'],
  ['rain', 'mineralTop', 'rain', 'in: rain', 'rain'],
  ['air', 'crop', 'fixed', 'in: fixed from the air', 'air'],
  ['deeperSoil', 'mineralLower', 'roots reach deeper', 'in: reached by deeper roots', 'soil'],
  ['coverResidue', 'coverMicrobes', 'eaten', null],
  ['coverMicrobes', 'coverHumus', 'humified', null],
  ['coverMicrobes', 'coverFree', 'released', null],
  ['coverFree', 'coverMicrobes', 'held back', null],
  ['dugResidue', 'dugMicrobes', 'eaten', null],
  ['dugMicrobes', 'dugHumus', 'humified', null],
  ['mineralTop', 'mineralLower', 'washed down', null],
  [
    'mineralTop',
    'coverMicrobes',
    'held back from the soil',
    'moved: held back by browns',
    'held back',
  ],
  ['mineralTop', 'dugMicrobes', 'held back', 'moved: held back by browns', 'held back'],
  ['coverFree', 'ammonia', 'to the air', 'out: lost to the air'],
  ['mineralLower', 'leached', 'washed out', 'out: washed out', 'lost'],
  ['mineralTop', 'denitrified', 'wet soil', 'out: lost from wet soil', 'lost'],
  [
    'mineralLower',
    'belowRoots',
    'roots reach less deep',
    'out: left below shallower roots',
    'lost',
  ],
  ['crop', 'harvested', 'picked', 'out: picked'],
  ['crop', 'removed', 'cleared away', 'out: cleared away'],
  ['coverResidue', 'removed', 'raked off', 'out: raked off'],
  ['coverMicrobes', 'removed', 'raked off', 'out: raked off'],
  ['coverHumus', 'removed', 'raked off', 'out: raked off'],
  ['coverFree', 'removed', 'raked off', 'out: raked off'],
  ['slow', 'removed', 'raked off', 'out: raked off'],
  ['coverFree', 'mineralTop', 'washed in', 'moved: washed in from the cover', 'cover'],
  ['coverFree', 'mineralTop', 'cover dug in', 'moved: cover dug in', 'cover'],
  ['coverResidue', 'dugResidue', 'cover dug in', 'moved: cover dug in'],
  ['coverMicrobes', 'dugMicrobes', 'cover dug in', 'moved: cover dug in'],
  ['coverHumus', 'dugHumus', 'cover dug in', 'moved: cover dug in'],
  ['dugMicrobes', 'mineralTop', 'released', 'moved: released by what was dug in', 'dug in'],
  ['slow', 'coverFree', 'released from compost', 'moved: released by compost'],
  ['slow', 'mineralTop', 'released from compost', 'moved: released by compost', 'compost'],
  ['slow', 'soilOrganic', 'compost becomes soil', 'moved: compost turned to soil'],
  ['coverHumus', 'youngHumus', 'season end', 'moved: turned to humus at the season’s end'],
  ['dugHumus', 'youngHumus', 'season end', 'moved: turned to humus at the season’s end'],
  ['soilOrganic', 'mineralTop', 'released by the soil', 'moved: released by the soil', 'soil'],
  [
    'youngHumus',
    'mineralTop',
    'released by last year’s humus',
    'moved: released by last year’s humus',
    'last year',
  ],
  ['mineralTop', 'crop', 'taken up', 'moved: taken up by the crop', 'taken'],
  ['mineralLower', 'crop', 'taken up', 'moved: taken up by the crop', 'taken'],
  ['mineralTop', 'crop', 'luxury', 'moved: taken up by the crop', 'taken'],
  ['mineralLower', 'crop', 'luxury', 'moved: taken up by the crop', 'taken'],
  ['crop', 'coverResidue', 'tops left', 'moved: left by the crop'],
  ['crop', 'dugResidue', 'tops dug in', 'moved: left by the crop'],
  ['crop', 'dugResidue', 'roots left', 'moved: left by the crop'],
];

const days = 6;
const oneGram = (flow: number): SeasonResult =>
  seasonFromFlows(noNitrogen(), days, (index, day) => (index === flow && day === 3 ? 1 : 0));

test('the list above names every flow once', () => {
  const named = lines.map(([from, to, why]) => flowIndex(from, to, why));
  expect(named.toSorted((one, other) => one - other)).toEqual([...flowKinds.keys()]);
});

test.each(lines.map(([from, to, why, line, band]) => ({ from, to, why, line, band })))(
  '$from to $to, $why: $line',
  ({ from, to, why, line, band }) => {
    const result = oneGram(flowIndex(from, to, why));
    const ledger = bedLedger(result, result.firstDay, result.firstDay + days - 1);
    const found = [
      ...ledger.cameIn.map(({ key, gM2 }) => ({ line: `in: ${key}`, gM2 })),
      ...ledger.wentOut.map(({ key, gM2 }) => ({ line: `out: ${key}`, gM2 })),
      ...ledger.moved.map(({ key, gM2 }) => ({ line: `moved: ${key}`, gM2 })),
    ].filter(({ gM2 }) => gM2 !== 0);
    expect(found).toEqual(line === null ? [] : [{ line, gM2: 1 }]);

    const supply = supplyBySource(result);
    const bands = [
      ...Object.entries(supply.bySource),
      ['taken', supply.taken] as const,
      ['held back', supply.heldBack] as const,
      ['lost', supply.lost] as const,
    ].filter(([, series]) => series.some((grams) => grams !== 0));
    expect(bands).toEqual(
      band === undefined ? [] : [[band, Float64Array.from([0, 0, 0, 1, 0, 0])]],
    );

    expect(flowTotals(result).filter(({ gM2 }) => gM2 !== 0)).toEqual([{ from, to, why, gM2: 1 }]);
  },
);

describe('days of a ledger', () => {
  const rain = flowIndex('rain', 'mineralTop', 'rain');
  const taken = flowIndex('mineralTop', 'crop', 'taken up');
  // 3 g ready and 2 g in the cover to begin with; 10, 11, 12 ... g of rain, a gram taken up a day
  const result = seasonFromFlows(
    { ...noNitrogen(), mineralTop: 3, coverFree: 2 },
    days,
    (flow, day) => (flow === rain ? 10 + day : flow === taken ? 1 : 0),
  );
  const { firstDay } = result;
  const grams = (list: readonly { key: string; gM2: number }[], key: string) =>
    list.find((line) => line.key === key)?.gM2;

  test('both ends count', () => {
    const ledger = bedLedger(result, firstDay + 1, firstDay + 3);
    expect([ledger.fromDay, ledger.toDay]).toEqual([firstDay + 1, firstDay + 3]);
    expect(grams(ledger.cameIn, 'rain')).toBe(11 + 12 + 13);
    // 3 + 10 - 1 in the morning, 3 + 46 - 4 in the evening
    expect(grams(ledger.opening, 'ready in the soil')).toBe(12);
    expect(grams(ledger.onHand, 'ready in the soil')).toBe(45);
    expect(grams(ledger.onHand, 'in the crop')).toBe(4);
    expect(grams(ledger.opening, 'in the cover')).toBe(2);
    expect(ledger.totals).toEqual({
      opening: 12 + 1 + 2,
      cameIn: 36,
      wentOut: 0,
      onHand: 45 + 4 + 2,
    });
    expect(ledger.difference).toBe(0);
  });

  test('a single day, the first and the last', () => {
    const first = bedLedger(result, firstDay, firstDay);
    expect(grams(first.opening, 'ready in the soil')).toBe(3);
    expect(grams(first.cameIn, 'rain')).toBe(10);
    const last = bedLedger(result, firstDay + days - 1, firstDay + days - 1);
    expect(grams(last.cameIn, 'rain')).toBe(15);
    expect(grams(last.onHand, 'in the crop')).toBe(6);
  });

  test('other days are refused by name', () => {
    for (const [from, to] of [
      [firstDay - 1, firstDay],
      [firstDay, firstDay + days],
      [firstDay + 2, firstDay + 1],
    ] as const)
      expect(() => bedLedger(result, from, to)).toThrow(`Days ${from} to ${to}`);
  });

  test('the soil’s own store opens no account: it shows as what it gave or got', () => {
    const soil = seasonFromFlows({ ...noNitrogen(), soilOrganic: 400 }, days, (flow) =>
      flow === flowIndex('soilOrganic', 'mineralTop', 'released by the soil') ? 0.5 : 0,
    );
    const ledger = bedLedger(soil, firstDay + 2, firstDay + 3);
    expect(grams(ledger.opening, 'in the soil itself')).toBeUndefined();
    expect(grams(ledger.onHand, 'in the soil itself')).toBe(-1);
    expect(ledger.totals).toMatchObject({ opening: 1, onHand: 1 });
  });
});
