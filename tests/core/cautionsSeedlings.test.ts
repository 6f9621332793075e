import { describe, expect, test } from 'vitest';
import { emergenceIn, handsHigh } from '../../app/core/season/cautions/plantSize';
import { coldSoilCautions } from '../../app/core/season/cautions/soilCautions';
import { stemCautions } from '../../app/core/season/cautions/stemCautions';
import type { Run } from '../../app/core/season/cautions/facts';
import type { PlantingInput } from '../../app/core/season/input';
import { bedVerdict } from '../../app/core/season/state';
import { limits } from '../../app/tables/thresholds';
import {
  makeBed,
  makeLayer,
  makePlanting,
  makePlantingResult,
  makeResult,
  stepping,
  today,
} from './madeBed';

/** Made up: 20 days at 10 °C, 10 at 20, none at 5. */
const emergence = [
  { celsius: 5, days: null },
  { celsius: 10, days: 20 },
  { celsius: 20, days: 10 },
];
/** Its clock runs a hundredth a day from sowing to the clearing 100 days on. */
const sownOn = (startDay: number, changes: Partial<PlantingInput['crop']> = {}): PlantingInput =>
  makePlanting(
    { sown: true, startDay, clearingDay: startDay + 99, usualEndDay: startDay + 99 },
    { excessClass: 'fruit', emergence, ...changes },
  );
const runOf = (planting: PlantingInput, soilTemperature: Float64Array): Run => {
  const input = makeBed({ plantings: [planting] });
  const result = makeResult({
    soilTemperature,
    plantings: [makePlantingResult(planting, { need: 0.1, uptake: 0.1 })],
  });
  return { input, result, verdict: bedVerdict(input, result, input.today, limits) };
};
const steady = (celsius: number): Float64Array => stepping(celsius, today, celsius);

describe('seed in the ground', () => {
  test('warm soil brings it up sooner', () => {
    const up = (celsius: number) =>
      emergenceIn(runOf(sownOn(today), steady(celsius)), sownOn(today));
    expect(up(20)).toEqual({ kind: 'up', day: today + 10 });
    expect(up(10)).toEqual({ kind: 'up', day: today + 20 });
    expect(up(5)).toEqual({ kind: 'not yet' });
  });

  test('what was set out, and what nobody tried, is not foretold', () => {
    const run = runOf(sownOn(today), steady(20));
    expect(emergenceIn(run, { ...sownOn(today), sown: false })).toBeNull();
    expect(emergenceIn(run, makePlanting({ sown: true, startDay: today }))).toBeNull();
  });

  test('nothing shows before it is up; then its clock begins', () => {
    const sown = today - 10;
    const planting = sownOn(sown);
    const run = runOf(planting, steady(20));
    const hands = (day: number): number => handsHigh(run, planting, day, limits);
    expect(hands(today - 1)).toBe(0);
    expect(hands(today)).toBe(0);
    // 0.1 of its time is gone when it is up; a hand is 0.12 of the 0.9 that are left
    expect(hands(today + 1)).toBeCloseTo(0.01 / (0.9 * limits.numbers['hand high sown']), 9);
    expect(hands(today + 10)).toBeLessThan(1);
    expect(hands(today + 11)).toBeGreaterThan(1);
  });

  test('in soil too cold it never shows', () => {
    const planting = sownOn(today - 60);
    expect(handsHigh(runOf(planting, steady(4)), planting, today, limits)).toBe(0);
  });

  test('sown before the run begins: its clock alone says how tall it is', () => {
    const planting = sownOn(makeBed().firstDay - 20);
    const run = runOf(planting, steady(20));
    const day = makeBed().firstDay + 5;
    expect(handsHigh(run, planting, day, limits)).toBeCloseTo(
      0.25 / limits.numbers['hand high sown'],
      9,
    );
  });
});

describe('cautions', () => {
  test('a cover over seed says when it is up and when it may be laid', () => {
    const run = runOf(sownOn(today - 4), steady(20));
    const [caution] = stemCautions(run, [makeLayer()], limits);
    expect(caution).toMatchObject({
      row: 'cover over seedlings',
      number: 0,
      date: today + 17,
      detail: { up: today + 6 },
    });
  });

  test('over seedlings that are up it no longer says so', () => {
    const run = runOf(sownOn(today - 12), steady(20));
    const [caution] = stemCautions(run, [makeLayer()], limits);
    expect(caution?.row).toBe('cover over seedlings');
    expect(caution?.detail).not.toHaveProperty('up');
  });

  test('what pushes through is covered on planting day; seed of it is not', () => {
    const told = (changes: Partial<PlantingInput>, pushesThrough: boolean): string[] => {
      const planting = { ...sownOn(today - 1, { pushesThrough }), ...changes };
      return stemCautions(runOf(planting, steady(20)), [makeLayer()], limits).map(({ row }) => row);
    };
    const season = (isRegrowth: boolean): Pick<PlantingInput, 'seasons'> => ({
      seasons: [
        {
          seasonDay: today - 30,
          isRegrowth,
          startDay: today - 1,
          firstHarvestDay: today + 60,
          usualEndDay: today + 98,
          normalDegreeDays: 1500,
        },
      ],
    });
    expect(told({ sown: false }, false)).toEqual(['cover over seedlings']);
    expect(told({ sown: false }, true)).toEqual([]);
    expect(told({ sown: true }, true)).toEqual(['cover over seedlings']);
    expect(told(season(false), true)).toEqual(['cover over seedlings']);
    expect(told(season(true), true)).toEqual([]);
  });

  test('the colder the soil, the longer the ground is kept open', () => {
    const openAt = (celsius: number): boolean => {
      const run = runOf(sownOn(today - 40, { warmSoilCelsius: 15 }), steady(celsius));
      return coldSoilCautions(run, today, limits, null).length > 0;
    };
    // at 14.9 °C it is up after 14 days and over two hands high by now; at 6 °C not up at all
    expect(openAt(6)).toBe(true);
    expect(openAt(14.9)).toBe(false);
  });
});
