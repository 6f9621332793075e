import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flowIndex, flowKinds, pools, type Sink, sinks } from '../../../app/core/season/flows';
import type { BedSeason } from '../../../app/core/season/input';
import type { SeasonResult } from '../../../app/core/season/result';
import { runSeason } from '../../../app/core/season/season';
import { anyBed, lawRuns } from './anyBed';
import { clippings, moved } from './handMadeBed';

const small = 1e-9;
const sum = (series: ArrayLike<number>): number => Array.from(series).reduce((a, b) => a + b, 0);

const flow = {
  topTaken: flowIndex('mineralTop', 'crop', 'taken up'),
  topLuxury: flowIndex('mineralTop', 'crop', 'luxury'),
  lowerTaken: flowIndex('mineralLower', 'crop', 'taken up'),
  lowerLuxury: flowIndex('mineralLower', 'crop', 'luxury'),
  denitrified: flowIndex('mineralTop', 'denitrified', 'wet soil'),
  held: flowIndex('coverFree', 'coverMicrobes', 'held back'),
  soilHeld: flowIndex('mineralTop', 'coverMicrobes', 'held back from the soil'),
  soil: flowIndex('soilOrganic', 'mineralTop', 'released by the soil'),
} as const;

/** Throws above a limit: `expect` would take most of the time of these millions of comparisons. */
function atMost(value: number, limit: number, what: string): void {
  if (!(value <= limit)) throw new Error(`${what}: ${value} is over ${limit}`);
}

/** After plants have taken, nothing else moves nitrate: what they found is what is left and what they took. */
function plantLimits(bed: BedSeason, result: SeasonResult): void {
  const c = bed.coefficients;
  for (let day = 0; day < result.days; day++) {
    for (const [taken, luxury, pool] of [
      [flow.topTaken, flow.topLuxury, 'mineralTop'],
      [flow.lowerTaken, flow.lowerLuxury, 'mineralLower'],
    ] as const) {
      const out = result.flows[taken]![day]! + result.flows[luxury]![day]!;
      const found = result.pools[pool][day]! + out;
      atMost(
        out,
        c.uptakeShare * Math.max(0, found - c.uptakeFloor) + small,
        `day ${day} from ${pool}`,
      );
    }
  }
  result.plantings.forEach((one, at) => {
    const { crop, nodulesSeen } = bed.plantings[at]!;
    const fixes = crop.legume !== null && nodulesSeen !== false;
    expect(sum(one.dailyNeed)).toBeCloseTo(one.demand, 9);
    expect(sum(one.dailyUptake)).toBeCloseTo(one.uptake, 9);
    expect(sum(one.dailyFixed)).toBeCloseTo(one.fixed, 9);
    expect(one.demand).toBeLessThanOrEqual(crop.need * bed.plantings[at]!.share + small);
    expect(one.uptake - one.luxury + one.fixed).toBeLessThanOrEqual(one.demand + small);
    expect(one.luxury).toBeLessThanOrEqual(crop.legume ? 0 : c.luxuryShare * one.demand + small);
    expect(one.harvested).toBeLessThanOrEqual(c.harvestLimit * (one.uptake + one.fixed) + small);
    expect(one.removed + one.left).toBeLessThanOrEqual(one.uptake + one.fixed + small);
    if (one.clearingDay !== null)
      expect(one.removed + one.left).toBeCloseTo(one.uptake + one.fixed, 9);
    one.dailyFixed.forEach((fixed, day) => {
      const most = fixes ? crop.legume!.highShareFixed * one.dailyNeed[day]! : 0;
      atMost(fixed, most + small, `fixed on day ${day}`);
    });
    expect(one.demandMet).toBeGreaterThanOrEqual(0);
    expect(one.demandMet).toBeLessThanOrEqual(1);
  });
}

function coverLimits(bed: BedSeason, result: SeasonResult): void {
  const c = bed.coefficients;
  // Only plant material on top promises ammonia, laid or left there when a crop was cleared or killed, and
  // never more than the limit of its nitrogen. What a crop left counts whole: its roots are in it too.
  const laid = bed.layers.filter(
    (one) => one.placement === 'laid' && one.materialClass !== 'slow' && one.day <= bed.lastDay,
  );
  const leftThere = result.plantings.flatMap((one, at) =>
    bed.plantings[at]!.topsFate === 'left'
      ? [one.left, ...(one.earlierSeasons ?? []).map((season) => season.left)]
      : [],
  );
  const most = (c.ammoniaLimit / 100) * (sum(laid.map((one) => one.nitrogen)) + sum(leftThere));
  expect(moved(result, '*', 'ammonia')).toBeLessThanOrEqual(most + small);
  for (const layer of result.layers) {
    let isLaid = false;
    for (let day = 1; day < result.days; day++) {
      isLaid ||= layer.left[day - 1]! > 0;
      if (!isLaid) continue;
      atMost(layer.left[day]!, layer.left[day - 1]! + 1e-12, `left of ${layer.id}`);
      atMost(layer.depth[day]!, layer.depth[day - 1]! + small, `depth of ${layer.id}`);
    }
  }
  for (let day = 0; day < result.days; day++) {
    const held = result.flows[flow.held]![day]!;
    if (held > 0) {
      // What the free nitrogen was is at least what is left of it and this; 20 % of all that met it.
      const out = flowKinds.reduce(
        (grams, kind, at) => grams + (kind.from === 'coverFree' ? result.flows[at]![day]! : 0),
        0,
      );
      const free = result.pools.coverFree[day]! + out;
      atMost(held, c.coverFreeShareForTieUp * free + small, `held back on day ${day}`);
    }
    const soilHeld = result.flows[flow.soilHeld]![day]!;
    if (soilHeld > 0) {
      const out = flowKinds.reduce(
        (grams, kind, at) => grams + (kind.from === 'mineralTop' ? result.flows[at]![day]! : 0),
        0,
      );
      const soil = result.pools.mineralTop[day]! + out;
      atMost(soilHeld, c.soilShareForCoverTieUp * soil + small, `held from soil on day ${day}`);
    }
    for (const share of [
      'coverFraction',
      'coverFill',
      'availableWaterTop',
      'availableWaterLower',
      'rootReach',
    ] as const) {
      atMost(0, result[share][day]!, share);
      atMost(result[share][day]!, 1, share);
    }
  }
}

/** Everything the bed has or has given away: on hand, taken up, lost. */
function accountedFor(result: SeasonResult): number {
  const onHand = sum(pools.map((pool) => result.pools[pool].at(-1)!));
  return onHand + sum(sinks.map((sink: Sink) => moved(result, '*', sink)));
}

describe('laws of limits, any bed', () => {
  test('plants take no more than they want, than a day allows, than they may fix', () => {
    fc.assert(
      fc.property(anyBed, (bed) => plantLimits(bed, runSeason(bed))),
      lawRuns,
    );
  });

  test('a cover never rises, browns on top take no more than their share, ammonia keeps its limit', () => {
    fc.assert(
      fc.property(anyBed, (bed) => coverLimits(bed, runSeason(bed))),
      lawRuns,
    );
  });

  test('more clippings are found again to the last gram: on hand, taken up or lost', () => {
    const day = fc.integer({ min: 0, max: 190 });
    const millimetres = fc.double({ min: 0.1, max: 60, noNaN: true });
    const placement = fc.constantFrom('laid' as const, 'hoed' as const, 'dug' as const);
    fc.assert(
      fc.property(anyBed, day, millimetres, placement, (bed, at, depth, place) => {
        const layer = clippings(bed.firstDay + at, depth, { id: 'more', placement: place });
        const [less, more] = [
          runSeason(bed),
          runSeason({ ...bed, layers: [...bed.layers, layer] }),
        ];
        // A legume may fix less when it is fed: that much less came in from the air.
        const fixedLess = moved(less, 'air', 'crop') - moved(more, 'air', 'crop');
        // The deeper soil of a new season is as rich as the layer above: more is found in it too.
        const reachedMore =
          moved(more, 'deeperSoil', 'mineralLower') - moved(less, 'deeperSoil', 'mineralLower');
        expect(accountedFor(more) + fixedLess - reachedMore - accountedFor(less)).toBeCloseTo(
          layer.nitrogen,
          8,
        );
        if (moved(less, 'air', 'crop') === 0)
          expect(accountedFor(more)).toBeGreaterThanOrEqual(accountedFor(less));
      }),
      lawRuns,
    );
  });
});
