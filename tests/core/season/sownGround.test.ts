import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stepDay } from '../../../app/core/season/day';
import { evaporationOf } from '../../../app/core/season/dayPlants';
import { flowKinds } from '../../../app/core/season/flows';
import type { BedSeason } from '../../../app/core/season/input';
import { lowerDepthFor } from '../../../app/core/season/runPlan';
import { startingState } from '../../../app/core/season/startingState';
import { crops } from '../../../app/tables/crops';
import { anyBed, lawRuns } from './anyBed';
import { bareBed, fruitingCrop, planted } from './handMadeBed';

/** What the soil gives to the air on one day of a bed that nobody waters, and its water before it. */
function givenOff(bed: BedSeason, day: number, lowerDepth: number) {
  const state = startingState(bed, lowerDepth);
  for (let index = 0; index < day; index++)
    stepDay(bed, state, new Float64Array(flowKinds.length), index);
  const morning = { ...state.water };
  const { fromSoil, fromCover } = stepDay(bed, state, new Float64Array(flowKinds.length), day);
  return { morning, fromSoil, fromCover };
}

const coefficientsAtStart = Object.values(crops).map((row) => row.cropCoefficients.start.typical);

describe('ground sown this morning', () => {
  test('gives off no less that day than the same ground bare, whatever is sown and lies there', () => {
    expect(Math.min(...coefficientsAtStart)).toBeLessThan(
      bareBed().coefficients.bareCropCoefficient,
    );
    const start = fc.constantFrom(...coefficientsAtStart);
    const share = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        anyBed,
        fc.integer({ min: 5, max: 190 }),
        start,
        share,
        (any, day, cropCoefficientStart, sown) => {
          const bare: BedSeason = { ...any, keptMoist: false, plantings: [], seasonStarts: [] };
          const crop = { ...fruitingCrop, cropCoefficientStart };
          const bed: BedSeason = {
            ...bare,
            plantings: [planted(crop, bare.firstDay + day, { share: sown })],
          };
          const lowerDepth = lowerDepthFor(bed);
          const [without, withSeed] = [bare, bed].map((one) => givenOff(one, day, lowerDepth));
          // no season turns: the two have one lower layer all along
          expect(withSeed!.morning).toEqual(without!.morning);
          expect(withSeed!.fromSoil).toBeGreaterThanOrEqual(without!.fromSoil - 1e-12);
          expect(withSeed!.fromCover).toBeCloseTo(without!.fromCover, 12);
        },
      ),
      lawRuns,
    );
  });

  test('is closed by leaves: from bare ground or the crop’s own start down to what is shaded', () => {
    const c = bareBed().coefficients;
    const at = (cropCoefficientStart: number, shaded: number): number =>
      evaporationOf({ cropCoefficientStart }, shaded, c);
    expect(at(0.3, 0)).toBe(c.bareCropCoefficient);
    expect(at(0.95, 0)).toBe(0.95);
    expect(at(0.3, 1)).toBe(c.evaporationUnderCanopy);
    expect(at(0.3, 0.5)).toBeCloseTo((c.bareCropCoefficient + c.evaporationUnderCanopy) / 2, 12);
  });
});
