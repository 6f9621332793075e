import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ledgerWay } from '../../../app/core/season/ledgerStreams';
import { realRuns } from '../../charts/realRuns';

const runs = realRuns();
/** any bed, over any days of its run */
const anyWay = fc
  .tuple(fc.nat(runs.length - 1), fc.double({ min: 0, max: 1, noNaN: true }), fc.nat(400))
  .map(([index, share, length]) => {
    const { result, name } = runs[index]!;
    const first = result.firstDay + Math.floor(share * (result.days - 1));
    const last = Math.min(result.firstDay + result.days - 1, first + length);
    return { name, way: ledgerWay(result, first, last) };
  });

describe('law: the way of a bed’s nitrogen, over the engine’s own results', () => {
  test('there are beds enough to speak of', () => {
    expect(runs.length).toBeGreaterThan(15);
  });

  // the table shows hundredths of a gram; what is left over lies seven places below
  test('at every place what was there and came is what went on and is there', () => {
    fc.assert(
      fc.property(anyWay, ({ way }) => {
        for (const place of way.places)
          expect(Math.abs(place.opening + place.cameIn - place.wentOut - place.end)).toBeLessThan(
            1e-9,
          );
      }),
      { numRuns: 300, seed: 21 },
    );
  });

  test('its streams from outside are what the ledger says came in, those to the outside what went out', () => {
    fc.assert(
      fc.property(anyWay, ({ way }) => {
        const { ledger, streams } = way;
        for (const { key, gM2 } of ledger.cameIn)
          expect(
            streams.reduce((sum, one) => sum + (one.from === key ? one.gM2 : 0), 0),
          ).toBeCloseTo(gM2, 9);
        for (const { key, gM2 } of ledger.wentOut)
          expect(streams.reduce((sum, one) => sum + (one.to === key ? one.gM2 : 0), 0)).toBeCloseTo(
            gM2,
            9,
          );
      }),
      { numRuns: 200, seed: 22 },
    );
  });

  test('each stream is named once and is more than nothing', () => {
    fc.assert(
      fc.property(anyWay, ({ way }) => {
        const names = way.streams.map(({ from, to }) => `${from} > ${to}`);
        expect(new Set(names).size).toBe(names.length);
        for (const { gM2 } of way.streams) expect(gM2).toBeGreaterThan(0);
      }),
      { numRuns: 100, seed: 23 },
    );
  });

  test('days outside the run are refused', () => {
    const { result } = runs[0]!;
    expect(() => ledgerWay(result, result.firstDay - 1, result.firstDay)).toThrow(RangeError);
  });
});
