import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { pools } from '../../../app/core/season/flows';
import type { BedSeason } from '../../../app/core/season/input';
import type { SeasonResult } from '../../../app/core/season/result';
import { runSeason } from '../../../app/core/season/season';
import { anyBed, Coverage, lawRuns } from './anyBed';
import { moved } from './handMadeBed';

const coverage = new Coverage();
afterAll(() => console.log(coverage.report()));

/** Something was held back by browns in the soil until its nitrate was all but gone. */
function starved(result: SeasonResult): boolean {
  if (moved(result, 'mineralTop', 'dugMicrobes') < 0.1) return false;
  return result.pools.mineralTop.some((grams) => grams < 0.01);
}

const lowest = (result: SeasonResult): number =>
  Math.min(...pools.map((pool) => result.pools[pool].reduce((a, b) => Math.min(a, b), 0)));

describe('laws of the balance, any bed', () => {
  test('nitrogen is never made nor lost, and no pool falls below nothing', () => {
    fc.assert(
      fc.property(anyBed, (bed: BedSeason) => {
        const result = runSeason(bed);
        coverage.count(bed, starved(result));
        expect(result.residual).toBeLessThan(1e-9);
        expect(lowest(result)).toBeGreaterThan(-1e-9);
      }),
      lawRuns,
    );
    expect(coverage.fewest()).toBeGreaterThanOrEqual(20);
  });
});
