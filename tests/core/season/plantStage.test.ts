import { describe, expect, test } from 'vitest';
import { handsHigh } from '../../../app/core/season/cautions/plantSize';
import type { CropInput, PlantingInput } from '../../../app/core/season/input';
import {
  handMillimetres,
  pickingDayOf,
  type PlantOnDay,
  plantsOnDay,
} from '../../../app/core/season/plantStage';
import { limits } from '../../../app/tables/thresholds';
import { makeBed, makePlanting, makePlantingResult, makeResult, stepping, today } from '../madeBed';

/** Made up: up ten days after sowing at 20 °C; clock of a hundredth a day; grows to 2 m. */
const emergence = [
  { celsius: 5, days: null },
  { celsius: 20, days: 10 },
];
const grown = 2000;
const sownOn = today - 100;

interface Made {
  readonly planting: PlantingInput;
  readonly on: (day: number) => PlantOnDay | undefined;
  readonly hands: (day: number) => number;
}

function made(changes: Partial<PlantingInput> = {}, crop: Partial<CropInput> = {}): Made {
  const planting = makePlanting(
    {
      sown: true,
      startDay: sownOn,
      clearingDay: null,
      firstHarvestDay: sownOn + 60,
      usualEndDay: sownOn + 99,
      ...changes,
    },
    { excessClass: 'fruit', flowerDays: 40, emergence, ...crop },
  );
  const input = makeBed({ plantings: [planting] });
  const result = makeResult({
    soilTemperature: stepping(20, today, 20),
    plantings: [makePlantingResult(planting, { need: 0.1, uptake: 0.1 })],
  });
  return {
    planting,
    on: (day) => plantsOnDay({ input, result }, day, limits, () => grown)[0],
    hands: (day) => handsHigh({ result }, planting, day, limits),
  };
}

describe('how far a planting is', () => {
  test('seed until it is up, seedling until it is a hand high, then leaf, flower, picking, end', () => {
    const { on, hands } = made();
    const stages: string[] = [];
    for (let day = sownOn; day <= sownOn + 105; day += 1) {
      const { stage } = on(day)!;
      if (stages.at(-1) !== stage) stages.push(stage);
      if (stage === 'seedling') expect(hands(day)).toBeLessThan(1);
      if (stage === 'leafy') expect(hands(day)).toBeGreaterThanOrEqual(1);
    }
    expect(stages).toEqual(['seed', 'seedling', 'leafy', 'flowering', 'bearing', 'finished']);
    expect(on(sownOn + 9)!.stage).toBe('seed');
    expect(on(sownOn + 10)!.stage).toBe('seedling');
    expect(on(sownOn + 39)!.stage).toBe('leafy');
    expect(on(sownOn + 40)!.stage).toBe('flowering');
    expect(on(sownOn + 60)!.stage).toBe('bearing');
    expect(on(sownOn + 99)!.stage).toBe('bearing');
    expect(on(sownOn + 100)!.stage).toBe('finished');
  });

  test('before it is sown and after it is cleared it is not there', () => {
    const { on } = made({ clearingDay: today - 10, cleared: true });
    expect(on(sownOn - 1)).toBeUndefined();
    expect(on(today - 11)).toBeDefined();
    expect(on(today - 10)).toBeUndefined();
  });

  test('what is grown to be laid is never picked; what does not flower never flowers', () => {
    expect(made({}, { excessClass: 'cover' }).on(sownOn + 80)!.stage).toBe('flowering');
    expect(made({}, { flowerDays: null }).on(sownOn + 50)!.stage).toBe('leafy');
  });

  test('set-out plants are never seed', () => {
    expect(made({ sown: false }).on(sownOn)!.stage).toBe('seedling');
  });

  test('what stays for years rests until it grows again', () => {
    const season = {
      seasonDay: sownOn,
      isRegrowth: true,
      startDay: sownOn + 20,
      firstHarvestDay: sownOn + 60,
      usualEndDay: sownOn + 99,
      normalDegreeDays: 1300,
    };
    const { on } = made({ sown: false, seasons: [season] });
    expect(on(sownOn + 19)!.stage).toBe('resting');
    expect(on(sownOn + 19)!.height).toBe(0);
    expect(on(sownOn + 45)!.stage).toBe('leafy');
    // it rests till next season and is not asked about
    expect(on(today)!.stage).toBe('bearing');
  });
});

test('what stays for years is picked by its last season, not by its first two', () => {
  const season = (firstHarvestDay: number) => ({
    seasonDay: firstHarvestDay - 150,
    isRegrowth: true,
    startDay: firstHarvestDay - 100,
    firstHarvestDay,
    usualEndDay: firstHarvestDay + 100,
    normalDegreeDays: 1300,
  });
  const { planting } = made({ firstHarvestDay: sownOn + 1 });
  expect(pickingDayOf({ ...planting, seasons: [season(1000)] })).toBe(1000);
  expect(pickingDayOf({ ...planting, seasons: [1000, 1365, 1730].map(season) })).toBe(1730);
  expect(pickingDayOf(planting)).toBe(sownOn + 1);
});

describe('how tall it is', () => {
  test('nothing below ground; a hand’s breadth when the cautions say so; grown at 0.6 of its time', () => {
    const { on, hands } = made();
    expect(on(sownOn + 5)!.height).toBe(0);
    let before = 0;
    for (let day = sownOn + 10; day <= sownOn + 99; day += 1) {
      const { height } = on(day)!;
      expect(height).toBeGreaterThanOrEqual(before);
      expect(height >= handMillimetres).toBe(hands(day) >= 1);
      before = height;
    }
    expect(on(sownOn + 60)!.height).toBeCloseTo(grown, 9);
    expect(on(sownOn + 59)!.height).toBeLessThan(grown);
    expect(on(today)!.height).toBeCloseTo(grown, 9);
  });

  test('below a hand it is its share of one, by the clock of the cautions', () => {
    const { on, hands } = made();
    for (const day of [sownOn + 12, sownOn + 15, sownOn + 20]) {
      expect(hands(day)).toBeGreaterThan(0);
      expect(hands(day)).toBeLessThan(1);
      expect(on(day)!.height).toBeCloseTo(100 * hands(day), 9);
    }
  });

  test('roots are those of the run', () => {
    expect(made().on(today)!.rootDepth).toBe(300);
  });
});
