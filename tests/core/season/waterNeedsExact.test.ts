import { describe, expect, test } from 'vitest';
import { dayOf, type DayNumber } from '../../../app/core/days';
import { startingState } from '../../../app/core/season/startingState';
import { stepDay } from '../../../app/core/season/day';
import { flowKinds } from '../../../app/core/season/flows';
import type { BedSeason, LayerInput } from '../../../app/core/season/input';
import { lowerDepthFor, runPlan } from '../../../app/core/season/runPlan';
import { runSeason } from '../../../app/core/season/season';
import { daysAway, waterNeeds, type WaterQuestion } from '../../../app/core/season/waterNeeds';
import { coefficientRows } from '../../../app/tables/coefficients';
import { bareBed, firstOf2013, fruitingCrop, planted, straw } from './handMadeBed';

/* Numbers of `waterNeeds` reckoned anew, day by day, from the days of the engine. */

const sown = dayOf('2013-05-10');
const today = dayOf('2013-07-10');
const { low, high } = coefficientRows.coverEvaporationSaving;

/** A crop on a bed on which it rains as in a normal year, but not at all from a day on. */
function dryFrom(day: DayNumber, over: Partial<BedSeason> = {}): BedSeason {
  const bed = bareBed({ today, plantings: [planted(fruitingCrop, sown, { cleared: false })] });
  const rainMillimetres = bed.weather.rainMillimetres.map((rain, index) =>
    firstOf2013 + index >= day ? 0 : rain,
  );
  return { ...bed, weather: { ...bed.weather, rainMillimetres }, ...over };
}

const asked = (input: BedSeason, over: Partial<WaterQuestion> = {}): WaterQuestion => ({
  input,
  savedFrom: firstOf2013,
  saving: { low: 0.3, high: 0.7 },
  straw: straw(today, 80),
  ...over,
});
const dueOf = (input: BedSeason): DayNumber | null => waterNeeds(asked(input)).due?.day ?? null;

/** What soil and cover gave to the air from a day to today, and what is gone from the root zone then. */
function givenOff(input: BedSeason, from: DayNumber) {
  const plan = runPlan(input, lowerDepthFor(input));
  const state = startingState(input, plan.lowerDepth, plan);
  let [soil, cover] = [0, 0];
  for (let day = input.firstDay; day <= input.today; day++) {
    stepDay(input, state, new Float64Array(flowKinds.length), day - input.firstDay);
    if (day >= from) soil += state.report.fromSoil;
    if (day >= from) cover += state.report.fromCover;
  }
  return { soil, cover, depletion: state.report.depletion };
}

describe('a bed that was kept moist so far', () => {
  test('is left to the sky from tomorrow on: as if all it was given had been written down', () => {
    const kept = dryFrom(dayOf('2013-06-20'), { keptMoist: true });
    const given = runSeason(kept).watered;
    const refills = Array.from(given.keys()).filter((index) => given[index]! > 0);
    // a day on which it was refilled: that evening's water is in, and the next is not
    const refilled = firstOf2013 + refills.findLast((index) => firstOf2013 + index <= today)!;
    for (const then of [refilled, refilled + 1, refilled + 3]) {
      const events = refills
        .filter((index) => firstOf2013 + index <= then)
        .map((index) => ({
          kind: 'water' as const,
          day: firstOf2013 + index,
          depth: given[index]!,
        }));
      const written = dueOf({ ...kept, keptMoist: false, today: then, events });
      expect(written).toBeGreaterThan(then);
      expect(dueOf({ ...kept, today: then })).toBe(written);
    }
  });
});

describe('what the cover saved', () => {
  const savedFrom = dayOf('2013-06-01');
  const early = straw(dayOf('2013-05-15'), 30);
  const late = straw(dayOf('2013-06-05'), 60);
  const layered = (layers: readonly LayerInput[]): BedSeason =>
    dryFrom(dayOf('2013-07-01'), { layers });

  test('is the difference of the days themselves, low, likely and high, since the season’s first', () => {
    const question = asked(layered([early, late]), { savedFrom, saving: { low, high } });
    const spread = { ...question, saving: { low: 0.3, high: 0.7 } };
    const under = (coverEvaporationSaving: number) =>
      givenOff(
        {
          ...question.input,
          coefficients: { ...question.input.coefficients, coverEvaporationSaving },
        },
        savedFrom,
      );
    const bare = givenOff(layered([early]), savedFrom);
    const likely = under(question.input.coefficients.coverEvaporationSaving);
    const saved = waterNeeds(spread).saved!;
    expect(saved.soil.low).toBeCloseTo(bare.soil - under(0.3).soil, 9);
    expect(saved.soil.typical).toBeCloseTo(bare.soil - likely.soil, 9);
    expect(saved.soil.high).toBeCloseTo(bare.soil - under(0.7).soil, 9);
    expect(saved.caught).toBeCloseTo(likely.cover - bare.cover, 9);
    expect(saved.atHand).toBeCloseTo(bare.depletion - likely.depletion, 9);
    expect(saved.soil.high).toBeGreaterThan(saved.soil.low + 0.5);
    // the days before the season's first and the first itself would tell
    const earlier = givenOff(question.input, savedFrom - 1).soil;
    const later = givenOff(question.input, savedFrom + 1).soil;
    expect(earlier - likely.soil).toBeGreaterThan(0.01);
    expect(likely.soil - later).toBeGreaterThan(0.01);
  });

  test('counts what was laid today, and nothing that is laid tomorrow or was laid before', () => {
    const on = (day: DayNumber) =>
      waterNeeds(asked(layered([straw(day, 60)]), { savedFrom })).saved;
    expect(on(today)).not.toBeNull();
    expect(on(today + 1)).toBeNull();
    expect(on(savedFrom)).not.toBeNull();
    expect(on(savedFrom - 1)).toBeNull();
  });
});

describe('going away', () => {
  const dry = dryFrom(dayOf('2013-06-25'));
  const tomorrow = today + 1;

  test('is told of a bed that comes due on the fourteenth evening, and not on the fifteenth', () => {
    const soon = dryFrom(dayOf('2013-07-06'));
    const due = dueOf(soon)!;
    expect(due).toBeGreaterThan(today);
    for (const [ahead, isTold] of [
      [daysAway, true],
      [daysAway + 1, false],
    ] as const) {
      const then = { ...soon, today: due - ahead };
      expect(dueOf(then)).toBe(due);
      expect(waterNeeds(asked(then)).away !== null).toBe(isTold);
    }
  });

  test('poured to the full before leaving, with and without straw, as the days themselves have it', () => {
    const away = waterNeeds(asked(dry)).away!;
    const gone = givenOff(dry, firstOf2013).depletion;
    // nothing lies there, so there is no room in a cover
    expect(away.pour).toBeCloseTo(gone, 9);
    const watered: BedSeason = {
      ...dry,
      today: tomorrow,
      events: [{ kind: 'water', day: tomorrow, depth: away.pour }],
    };
    const covered: BedSeason = { ...watered, layers: [straw(tomorrow, 80)] };
    expect(away.dueWatered).toBe(dueOf(watered));
    expect(away.dueCovered).toBe(dueOf(covered));
    expect(away.dueWatered).toBeGreaterThan(tomorrow);
    expect(away.dueCovered).not.toBe(away.dueWatered);
    expect(away.dueCovered).not.toBeNull();
  });
});
