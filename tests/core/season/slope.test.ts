import { expect, test } from 'vitest';
import { runSeason } from '../../../app/core/season/season';
import { runoffMillimetres } from '../../../app/core/soil/runoff';
import { newYorkBed } from './newYork2013';

test('on a slope the surplus of heavy rain runs off: less drains, less is washed out, the books close', () => {
  const flat = newYorkBed();
  const steep = { ...flat, runoffCurveNumber: 80 };
  const [level, sloped] = [flat, steep].map(runSeason);
  const sum = (series: Float64Array): number => series.reduce((all, one) => all + one, 0);
  const lost = flat.weather.rainMillimetres.reduce(
    (all, rain) => all + runoffMillimetres(rain, 80),
    0,
  );
  expect(lost).toBeGreaterThan(20);
  const drained = sum(level!.drainageLower) - sum(sloped!.drainageLower);
  expect(drained).toBeGreaterThan(0);
  expect(drained).toBeLessThanOrEqual(lost + 1e-9);
  expect(sloped!.residual).toBeLessThan(1e-9);
  // what fell is shown as it fell
  expect(sum(sloped!.rain)).toBe(sum(level!.rain));
});
