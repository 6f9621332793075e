import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import { runSeason } from '../../../app/core/season/season';
import { at } from '../../../app/core/season/seasonAccount';
import { waterNeeds, type WaterQuestion } from '../../../app/core/season/waterNeeds';
import { startingState } from '../../../app/core/season/startingState';
import { stepDay } from '../../../app/core/season/day';
import { flowKinds } from '../../../app/core/season/flows';
import type { BedSeason } from '../../../app/core/season/input';
import { lowerDepthFor, runPlan } from '../../../app/core/season/runPlan';
import { parseGarden } from '../../../app/document/parse';
import { sampleText } from '../../../app/document/sampleGarden';
import { waterQuestions } from '../../../app/document/waterQuestion';

/* How many mm: told from the same bed run for itself, not from the answer's own sums. */

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('no sample');
const today = dayOf('2013-06-15');
const questions = waterQuestions(parsed.value, today);
const inDrought = (question: WaterQuestion): WaterQuestion => {
  const rainMillimetres = question.input.weather.rainMillimetres.map((rain, index) =>
    question.input.firstDay + index > today - 21 ? 0 : rain,
  );
  const weather = { ...question.input.weather, rainMillimetres };
  return { ...question, input: { ...question.input, keptMoist: false, weather } };
};
const dry = questions.map(inDrought);

/** The same bed with so much poured on a morning. */
const poured = (input: BedSeason, day: number, depth: number): BedSeason => ({
  ...input,
  events: [...input.events, { kind: 'water', day, depth }],
});
/** Dryness is depletion over what is readily had, so 0.5 is half of RAW. */
const drynessOn = (input: BedSeason, day: number): number => {
  const season = runSeason(input);
  return at(season.dryness, season, day);
};

describe('what is poured when a bed is due', () => {
  // what is cleared in between leaves other roots and another measure
  const due = dry.filter((one) => {
    const day = waterNeeds(one).due?.day;
    const stays = (on: number) =>
      one.input.plantings.every(({ clearingDay }) => clearingDay === null || clearingDay > on + 1);
    return day !== undefined && stays(day);
  });

  test.each(due.map((one) => [one.input.bedId, one] as const))(
    '%s: brings the soil to half of what its plants find easily, a day’s drying apart',
    (_, { input, ...rest }) => {
      const { day, pour } = waterNeeds({ ...rest, input }).due!;
      // the cover drinks its part first; the morning's 0.5 has dried for a day since
      const after = drynessOn(poured(input, day + 1, pour), day + 1);
      expect(after).toBeGreaterThan(0.35);
      expect(after).toBeLessThan(0.75);
    },
  );

  test('under straw it takes what the straw drinks more than on bare ground of the same dryness', () => {
    for (const question of due.slice(0, 3)) {
      const { input, straw } = question;
      const bare = waterNeeds({ ...question, input: { ...input, layers: [] } });
      const covered = waterNeeds({
        ...question,
        input: { ...input, layers: [{ ...straw, day: today - 5 }] },
      });
      if (!bare.due || !covered.due || bare.due.day !== covered.due.day) continue;
      const drinks = covered.due.pour - bare.due.pour;
      expect(drinks).toBeGreaterThan(0);
      // at most 8 mm (model: the cover's water), less what lies drier or wetter beneath
      expect(drinks).toBeLessThan(12);
    }
  });

  test('what a shower left in the cover need not be poured', () => {
    const question = dry.find((one) => waterNeeds(one).away !== null)!;
    const straw = { ...question.straw, day: today - 30 };
    const after = (rain: number) => {
      const rainMillimetres = Float64Array.from(question.input.weather.rainMillimetres);
      rainMillimetres[today - question.input.firstDay] = rain;
      const weather = { ...question.input.weather, rainMillimetres };
      return waterNeeds({
        ...question,
        input: { ...question.input, weather, layers: [...question.input.layers, straw] },
      }).away!.pour;
    };
    // all of it stays in the straw, which holds 8 mm at the most
    expect(after(7)).toBeLessThan(after(6));
    expect(after(6) - after(7)).toBeLessThanOrEqual(1 + 1e-9);
  });

  test('before going away all that is gone is poured: the soil is full next morning', () => {
    let told = 0;
    for (const question of dry) {
      const { away } = waterNeeds(question);
      if (!away) continue;
      told += 1;
      const after = drynessOn(poured(question.input, today + 1, away.pour), today + 1);
      expect(after).toBeLessThan(0.35);
      const half = drynessOn(poured(question.input, today + 1, away.pour / 2), today + 1);
      expect(half).toBeGreaterThan(after);
    }
    expect(told).toBeGreaterThan(0);
  });
});

describe('what the cover saved', () => {
  const question = dry[0]!;
  const savedFrom = today - 25;
  const input = { ...question.input, layers: [{ ...question.straw, day: savedFrom }] };
  const told = () => waterNeeds({ ...question, input, savedFrom }).saved;
  const bare = { ...input, layers: [] };
  const givenOff = (of: BedSeason, coverEvaporationSaving: number) => {
    const bed = { ...of, coefficients: { ...of.coefficients, coverEvaporationSaving } };
    const plan = runPlan(bed, lowerDepthFor(bed));
    const state = startingState(bed, plan.lowerDepth, plan, false);
    const sum = { soil: 0, cover: 0, gone: 0 };
    for (let index = 0; index <= today - bed.firstDay; index += 1) {
      stepDay(bed, state, new Float64Array(flowKinds.length), index);
      if (bed.firstDay + index < savedFrom) continue;
      sum.soil += state.report.fromSoil;
      sum.cover += state.report.fromCover;
      sum.gone = state.report.depletion;
    }
    return sum;
  };
  const usual = input.coefficients.coverEvaporationSaving;

  test('is the soil’s giving off without it less that with it, at each end of its range', () => {
    const saved = told();
    const without = givenOff(bare, usual);
    expect(saved!.soil.typical).toBeCloseTo(without.soil - givenOff(input, usual).soil, 9);
    for (const end of ['low', 'high'] as const)
      expect(saved!.soil[end]).toBeCloseTo(
        without.soil - givenOff(input, question.saving[end]).soil,
        9,
      );
    expect(saved!.caught).toBeCloseTo(givenOff(input, usual).cover - without.cover, 9);
    expect(saved!.atHand).toBeCloseTo(without.gone - givenOff(input, usual).gone, 9);
    expect(Math.abs(saved!.atHand)).toBeGreaterThan(0);
  });

  test('of a bed that was covered before, only what came since counts', () => {
    const older = { ...question.straw, id: 'older', day: savedFrom - 20 };
    const both = { ...input, layers: [older, ...input.layers] };
    const { saved: since } = waterNeeds({ ...question, input: both, savedFrom });
    const before = givenOff({ ...both, layers: [older] }, usual);
    expect(before.cover).toBeGreaterThan(0);
    expect(since!.soil.typical).toBeCloseTo(before.soil - givenOff(both, usual).soil, 9);
    expect(since!.caught).toBeCloseTo(givenOff(both, usual).cover - before.cover, 9);
  });
});
