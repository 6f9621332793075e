import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flowKinds, pools, sinks, sources } from '../../app/core/season/flows';
import {
  bedLedger,
  flowTotals,
  holdings,
  supplyBySource,
  supplySources,
} from '../../app/core/season/ledger';
import type { SeasonResult } from '../../app/core/season/result';
import { noNitrogen, seasonFromFlows } from '../charts/seasonFromFlows';

const days = 12;
const grams = fc.double({ min: 0, max: 50, noNaN: true });
const anySeason = fc
  .tuple(
    fc.array(grams, { minLength: pools.length, maxLength: pools.length }),
    fc.array(grams, { minLength: flowKinds.length * days, maxLength: flowKinds.length * days }),
  )
  .map(([start, amounts]) =>
    seasonFromFlows(
      Object.fromEntries(pools.map((pool, index) => [pool, start[index] ?? 0])) as ReturnType<
        typeof noNitrogen
      >,
      days,
      (flow, day) => amounts[flow * days + day] ?? 0,
    ),
  );
const anySpan = fc
  .tuple(fc.nat(days - 1), fc.nat(days - 1))
  .map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);

/** One gram moves once, on day 5; nothing else happens. */
const oneGram = (flow: number): SeasonResult =>
  seasonFromFlows(noNitrogen(), days, (index, day) => (index === flow && day === 5 ? 1 : 0));

const sum = (series: ArrayLike<number>): number => Array.from(series).reduce((a, b) => a + b, 0);

describe('law: a ledger balances over any days of any run', () => {
  test('opening + in - out = on hand', () => {
    fc.assert(
      fc.property(anySeason, anySpan, (result, [from, to]) => {
        const ledger = bedLedger(result, result.firstDay + from, result.firstDay + to);
        expect(Math.abs(ledger.difference)).toBeLessThan(1e-9);
      }),
      { numRuns: 200, seed: 20_130_615 },
    );
  });

  test('and shows a leak: a millionth of a gram slipped into any flow that crosses the edge, or any pool', () => {
    const sound = () => seasonFromFlows(noNitrogen(), days, (flow) => 1 + flow / 10);
    flowKinds.forEach((kind, index) => {
      const crosses = !(kind.from in holdingOfPool) || !(kind.to in holdingOfPool);
      const leaky = sound();
      const flow = leaky.flows[index];
      if (flow) flow[5] = (flow[5] ?? 0) + 1e-6;
      const { difference } = bedLedger(leaky, leaky.firstDay, leaky.firstDay + days - 1);
      if (crosses) expect(Math.abs(difference)).toBeGreaterThan(9e-7);
      else expect(Math.abs(difference)).toBeLessThan(1e-9);
    });
    for (const pool of pools) {
      const leaky = sound();
      leaky.pools[pool][days - 1] = (leaky.pools[pool][days - 1] ?? 0) + 1e-6;
      const { difference } = bedLedger(leaky, leaky.firstDay, leaky.firstDay + days - 1);
      expect(Math.abs(difference), pool).toBeGreaterThan(9e-7);
    }
  });
});

const holdingOfPool = Object.fromEntries(
  Object.entries(holdings).flatMap(([key, list]) => list.map((pool) => [pool, key])),
);

describe('every pool and every flow has one line', () => {
  test('pools', () => {
    expect(Object.values(holdings).flat().toSorted()).toEqual([...pools].toSorted());
  });

  test.each(flowKinds.map((kind, index) => [kind.from, kind.to, kind.why, index] as const))(
    '%s -> %s (%s)',
    (from, to, _why, index) => {
      const result = oneGram(index);
      const ledger = bedLedger(result, result.firstDay, result.firstDay + days - 1);
      const comesIn = (sources as readonly string[]).includes(from);
      const goesOut = (sinks as readonly string[]).includes(to);
      const withinOne = holdingOfPool[from] === holdingOfPool[to];
      expect(ledger.totals.cameIn).toBe(comesIn ? 1 : 0);
      expect(ledger.totals.wentOut).toBe(goesOut ? 1 : 0);
      expect(sum(ledger.moved.map((line) => line.gM2))).toBe(
        comesIn || goesOut || withinOne ? 0 : 1,
      );
      expect(ledger.difference).toBe(0);
    },
  );
});

describe('the soil itself is told as a change', () => {
  test('500 g in the soil that give 2 g: nothing on hand at the start, 2 g less at the end', () => {
    const release = flowKinds.findIndex((kind) => kind.why === 'released by the soil');
    const result = seasonFromFlows({ ...noNitrogen(), soilOrganic: 500 }, days, (flow, day) =>
      flow === release && day < 2 ? 1 : 0,
    );
    const ledger = bedLedger(result, result.firstDay, result.firstDay + days - 1);
    expect(ledger.totals.opening).toBe(0);
    expect(ledger.onHand.find((line) => line.key === 'in the soil itself')?.gM2).toBe(-2);
    expect(ledger.onHand.find((line) => line.key === 'ready in the soil')?.gM2).toBe(2);
  });

  test('days outside the run are refused', () => {
    const result = oneGram(0);
    expect(() => bedLedger(result, result.firstDay - 1, result.firstDay)).toThrow(RangeError);
    expect(() => bedLedger(result, result.firstDay, result.firstDay + days)).toThrow(RangeError);
    expect(() => bedLedger(result, result.firstDay + 3, result.firstDay + 2)).toThrow(RangeError);
  });
});

describe('flow totals and supply are the flows, nothing else', () => {
  test('totals stand in the order of the flow list and add up each flow', () => {
    fc.assert(
      fc.property(anySeason, (result) => {
        flowTotals(result).forEach((total, index) => {
          expect(total.why).toBe(flowKinds[index]?.why);
          expect(total.gM2).toBeCloseTo(sum(result.flows[index] ?? []), 9);
        });
      }),
      { numRuns: 50, seed: 7 },
    );
  });

  test('on every day the bands explain what is ready in the soil', () => {
    fc.assert(
      fc.property(anySeason, (result) => {
        const supply = supplyBySource(result);
        for (let day = 0; day < days; day += 1) {
          const before =
            day === 0
              ? result.start.mineralTop + result.start.mineralLower
              : (result.pools.mineralTop[day - 1] ?? 0) + (result.pools.mineralLower[day - 1] ?? 0);
          const after = (result.pools.mineralTop[day] ?? 0) + (result.pools.mineralLower[day] ?? 0);
          const bands = supplySources
            .filter((source) => source !== 'air')
            .reduce((total, source) => total + (supply.bySource[source][day] ?? 0), 0);
          const gone =
            (supply.taken[day] ?? 0) + (supply.heldBack[day] ?? 0) + (supply.lost[day] ?? 0);
          expect(before + bands - gone - after).toBeCloseTo(0, 9);
        }
      }),
      { numRuns: 100, seed: 11 },
    );
  });

  test('what the beans fix goes to the band "air"', () => {
    const fixed = flowKinds.findIndex((kind) => kind.why === 'fixed');
    expect(sum(supplyBySource(oneGram(fixed)).bySource.air)).toBe(1);
  });
});
