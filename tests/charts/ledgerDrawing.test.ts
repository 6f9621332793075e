import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flowDrawing, flowSides } from '../../app/charts/ledger/geometry';
import { flowKinds, pools } from '../../app/core/season/flows';
import { bedLedger } from '../../app/core/season/ledger';
import type { SeasonResult } from '../../app/core/season/result';
import { seasonFromFlows } from './seasonFromFlows';

const days = 8;
const grams = fc.double({ min: 0, max: 1, noNaN: true });
// pools start high enough that none is drawn below nothing
const anyLedger = fc
  .array(grams, { minLength: flowKinds.length, maxLength: flowKinds.length })
  .map((amounts) => {
    const result = seasonFromFlows(
      Object.fromEntries(pools.map((pool) => [pool, 100])) as SeasonResult['start'],
      days,
      (flow) => amounts[flow] ?? 0,
    );
    return bedLedger(result, result.firstDay, result.firstDay + days - 1);
  });

const sum = (list: readonly { readonly gM2: number }[]) =>
  list.reduce((total, one) => total + one.gM2, 0);

describe('law: the drawing of a ledger', () => {
  test('is as heavy at the left as at the right', () => {
    fc.assert(
      fc.property(anyLedger, (ledger) => {
        const { into, outOf } = flowSides(ledger);
        expect(sum(into)).toBeCloseTo(sum(outOf), 8);
      }),
      { numRuns: 100, seed: 12 },
    );
  });

  test('has blocks as tall as their grams, that do not overlap, and a trunk without gaps', () => {
    fc.assert(
      fc.property(anyLedger, fc.integer({ min: 200, max: 1600 }), (ledger, width) => {
        const drawing = flowDrawing(ledger, width);
        for (const side of [drawing.into, drawing.outOf]) {
          let trunk = drawing.trunk.top;
          let free = -Infinity;
          for (const end of side) {
            expect(end.height).toBeCloseTo(end.gM2 * drawing.pxPerGram, 9);
            expect(end.trunkTop).toBeCloseTo(trunk, 6);
            trunk += end.height;
            expect(end.top).toBeGreaterThanOrEqual(free);
            free = end.top + end.height;
          }
          expect(trunk).toBeCloseTo(drawing.trunk.top + drawing.trunk.height, 6);
        }
      }),
      { numRuns: 100, seed: 13 },
    );
  });
});
