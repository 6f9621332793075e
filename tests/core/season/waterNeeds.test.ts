import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import { runSeason } from '../../../app/core/season/season';
import { at } from '../../../app/core/season/seasonAccount';
import { daysAhead, waterNeeds, type WaterQuestion } from '../../../app/core/season/waterNeeds';
import { parseGarden } from '../../../app/document/parse';
import { sampleText } from '../../../app/document/sampleGarden';
import type { Garden } from '../../../app/document/schema';
import { waterQuestions } from '../../../app/document/waterQuestion';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('no sample');
const sample: Garden = parsed.value;
const today = dayOf('2013-06-15');
const questions = waterQuestions(sample, today);
const unwatered = (question: WaterQuestion): WaterQuestion => ({
  ...question,
  input: { ...question.input, keptMoist: false },
});
/** Without a drop from three weeks ago on. */
const inDrought = (question: WaterQuestion): WaterQuestion => {
  const { input } = unwatered(question);
  const rainMillimetres = input.weather.rainMillimetres.map((rain, index) =>
    input.firstDay + index > today - 21 ? 0 : rain,
  );
  return { ...question, input: { ...input, weather: { ...input.weather, rainMillimetres } } };
};
const dueOf = (question: WaterQuestion): number => waterNeeds(question).due?.day ?? Infinity;

describe('when watering is due', () => {
  test.each(
    questions.flatMap((question) => [
      [question.input.bedId, unwatered(question)] as const,
      [`${question.input.bedId} in a drought`, inDrought(question)] as const,
    ]),
  )(
    '%s: on the first evening on which the season’s own dryness passes 1 while something grows',
    (_, question) => {
      const { input } = question;
      const { due } = waterNeeds(question);
      const season = runSeason(input);
      // on the day of clearing the plants still drink
      const grows = (day: number) =>
        input.plantings.some(
          ({ startDay, clearingDay }) => startDay <= day && (clearingDay ?? Infinity) >= day,
        );
      const days = Array.from({ length: daysAhead + 1 }, (_unused, ahead) => today + ahead);
      const first = days.find((day) => grows(day) && at(season.dryness, season, day) > 1);
      expect(due?.day ?? null).toBe(first ?? null);
      if (due) expect(due.pour).toBeGreaterThan(0);
    },
  );

  test('in a drought most beds come due, and one without plants never does', () => {
    const dry = questions.map(inDrought);
    expect(dry.filter((one) => waterNeeds(one).due !== null).length).toBeGreaterThan(4);
    for (const question of dry) {
      const input = { ...question.input, plantings: [] };
      expect(waterNeeds({ ...question, input })).toMatchObject({ due: null, away: null });
    }
  });

  test('pouring what is said puts it off, and pouring more puts it off longer', () => {
    const dry = questions.map(inDrought).filter((one) => waterNeeds(one).due !== null);
    expect(dry.length).toBeGreaterThan(0);
    for (const question of dry) {
      const { due } = waterNeeds(question);
      const after = (depth: number): number => {
        const water = { kind: 'water', day: due!.day + 1, depth } as const;
        const input = { ...question.input, events: [...question.input.events, water] };
        const later = { ...input, today: due!.day + 1 };
        return dueOf({ ...question, input: later });
      };
      expect(after(due!.pour)).toBeGreaterThan(due!.day + 1);
      expect(after(2 * due!.pour)).toBeGreaterThanOrEqual(after(due!.pour));
    }
  });

  test('one kept moist is due no sooner than the same left dry so far, and is left to the sky from here on', () => {
    for (const question of questions) {
      const kept = { ...question, input: { ...question.input, keptMoist: true } };
      expect(dueOf(kept)).toBeGreaterThanOrEqual(dueOf(unwatered(question)));
    }
  });
});

describe('what the cover saved', () => {
  test('is nothing to speak of where nothing was laid, and lies within its range elsewhere', () => {
    let counted = 0;
    for (const question of questions) {
      const bare = { ...question, input: { ...question.input, layers: [] } };
      expect(waterNeeds(bare).saved).toBeNull();
      const { saved } = waterNeeds(question);
      if (saved === null) continue;
      counted += 1;
      const { low, typical, high } = saved.soil;
      expect(low).toBeLessThanOrEqual(typical + 1e-9);
      expect(typical).toBeLessThanOrEqual(high + 1e-9);
      expect(saved.caught).toBeGreaterThanOrEqual(0);
    }
    expect(counted).toBeGreaterThan(0);
  });

  test('under deep straw the soil gives off less, and what rain brings is shared with the straw', () => {
    const question = questions[0]!;
    const input = { ...question.input, layers: [{ ...question.straw, day: today - 40 }] };
    const { saved } = waterNeeds({ ...question, input });
    expect(saved!.soil.typical).toBeGreaterThan(5);
    expect(saved!.caught).toBeGreaterThan(5);
    // counted from tomorrow nothing was laid yet
    expect(waterNeeds({ ...question, input, savedFrom: today + 1 }).saved).toBeNull();
  });

  test('in a drought that came after it was laid, straw leaves more within reach of the roots', () => {
    const question = inDrought(questions[0]!);
    const input = { ...question.input, layers: [{ ...question.straw, day: today - 19 }] };
    expect(waterNeeds({ ...question, input }).saved!.atHand).toBeGreaterThan(0);
  });
});

describe('going away for two weeks', () => {
  test('only of beds that come due by then; watered and covered they last no shorter', () => {
    let told = 0;
    for (const question of questions) {
      const { due, away } = waterNeeds(inDrought(question));
      expect(away !== null).toBe(due !== null && due.day <= today + 14);
      if (!away || !due) continue;
      told += 1;
      expect(away.pour).toBeGreaterThan(0);
      expect(away.dueWatered ?? Infinity).toBeGreaterThanOrEqual(due.day);
      expect(away.dueCovered ?? Infinity).toBeGreaterThanOrEqual((away.dueWatered ?? Infinity) - 1);
    }
    expect(told).toBeGreaterThan(0);
  });
});
