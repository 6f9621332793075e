import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import { drawnSeason, makeDraws } from '../../../app/core/season/draws/drawnSeason';
import { drawnWeather } from '../../../app/core/season/draws/drawnWeather';
import { overFeedingWindow } from '../../../app/core/season/draws/overFeeding';
import { runDraws, type DrawsQuestion } from '../../../app/core/season/draws/runDraws';
import type { BedSeason } from '../../../app/core/season/input';
import type { SeasonResult } from '../../../app/core/season/result';
import { runSeason } from '../../../app/core/season/season';
import { bedVerdict } from '../../../app/core/season/state';
import type { BedVerdict } from '../../../app/core/season/verdict';
import { mgPerKgFromGramsPerM2 } from '../../../app/core/units';
import { drawsQuestion } from '../../../app/document/drawsQuestion';
import { parseGarden } from '../../../app/document/parse';
import type { Garden } from '../../../app/document/schema';
import { limits } from '../../../app/tables/thresholds';
import { exampleGarden } from '../../document/exampleGarden';

const file = join(import.meta.dirname, '../../../assets/gardens/sample.mowings');
const parsed = parseGarden(readFileSync(file, 'utf8'));
if (!parsed.ok) throw new Error('The sample does not open');
const sample = parsed.value;

/** One bed of one crop, with as much of the richest clippings as wanted laid on it by June. */
function bedOf(cropId: string, started: string, millimetres: number): Garden {
  const garden = exampleGarden();
  const [planting] = garden.plantings;
  const [laying] = garden.applications;
  garden.events = [];
  garden.plantings = [{ ...planting!, cropId, started, share: 1, nodules: 'not looked' }];
  garden.applications = Array.from({ length: Math.round(millimetres / 10) }, (_, at) => ({
    ...laying!,
    id: `laying-${String(at)}`,
    date: `2021-05-${String(at + 1).padStart(2, '0')}`,
    from: { source: 'elsewhere' as const, materialId: 'grass-fresh-fertilised' },
    amount: {
      text: '1 cm',
      quantity: { kind: 'depth' as const, millimetres: 10 },
      certainty: 'plain' as const,
    },
    mixtureId: null,
    passedStops: [],
  }));
  return garden;
}
const day = dayOf('2021-06-20');
const asked = (cropId: string, millimetres: number, count = 60): DrawsQuestion =>
  drawsQuestion(bedOf(cropId, '2021-05-10', millimetres), 'bed-1', day, count);

/** Odds from whole runs, by the words of the rule and by no function of the lean way. */
function oddsOfWholeRuns(
  question: DrawsQuestion,
  isPast: (input: BedSeason, result: SeasonResult, verdict: BedVerdict) => boolean,
): number {
  const { input, spread, weather, seed, count } = question;
  const draws = makeDraws(seed, count);
  let past = 0;
  for (let draw = 0; draw < count; draw++) {
    const sky = drawnWeather(input, weather, seed, draw);
    const season = drawnSeason(input, spread, sky, draws, draw);
    const result = runSeason(season);
    if (isPast(season, result, bedVerdict(season, result, season.today, limits))) past += 1;
  }
  return past / count;
}

describe('the odds of too much before flower, fruit and filling', () => {
  test('fruit: past 1.3 times the need, and over 20 mg/kg from 14 days before to 42 after the first flower', () => {
    const question = asked('tomato', 40);
    const answer = runDraws(question, limits)!;
    const odds = oddsOfWholeRuns(
      question,
      (_input, _result, { ratio, flowerNitrate }) => ratio! > 1.3 && flowerNitrate! > 20,
    );
    expect(answer.overFeeding).toMatchObject({ excessClass: 'fruit', plantingId: 'planting-1' });
    expect(answer.overFeeding!.odds).toBeCloseTo(odds, 12);
    expect(odds).toBeGreaterThan(0.05);
    expect(odds).toBeLessThan(0.95);
    const { begins, first, last } = answer.overFeeding!;
    expect([begins - first, last - begins]).toEqual([14, 42]);
  });

  test('what is stored: past the line of its class, and over 20 mg/kg on a day after two fifths of its time', () => {
    for (const [cropId, line] of [
      ['onion', 1.3],
      ['carrot', 1.2],
    ] as const) {
      const question = asked(cropId, 60);
      const [planting] = question.input.plantings;
      const from =
        planting!.startDay + Math.round(0.4 * (planting!.usualEndDay - planting!.startDay));
      const odds = oddsOfWholeRuns(question, (input, { pools }, { ratio }) => {
        const perGram = mgPerKgFromGramsPerM2(1, input.soil.bulkDensityKgPerL, 30);
        const window = pools.mineralTop.slice(
          from - input.firstDay,
          planting!.usualEndDay - input.firstDay + 1,
        );
        return ratio! > line && Math.max(...window) * perGram > 20;
      });
      const { overFeeding } = runDraws(question, limits)!;
      expect(overFeeding!.odds).toBeCloseTo(odds, 12);
      expect(overFeeding!.begins).toBe(from);
      expect(odds).toBeGreaterThan(0.05);
    }
  });

  test('more clippings never make it less likely', () => {
    const odds = [0, 20, 40, 80, 160].map(
      (millimetres) => runDraws(asked('tomato', millimetres, 40), limits)!.overFeeding!.odds,
    );
    expect(odds).toEqual(odds.toSorted((one, other) => one - other));
    expect(odds[0]).toBe(0);
    expect(odds.at(-1)).toBeGreaterThan(0.9);
  });

  test('nobody speaks of it on leaf, beans, or an empty bed', () => {
    for (const cropId of ['lettuce_leaf', 'snap_bean_pole', 'rhubarb'])
      expect(runDraws(asked(cropId, 60, 5), limits)!.overFeeding).toBeNull();
    const empty = bedOf('tomato', '2021-05-10', 60);
    empty.plantings = [];
    expect(runDraws(drawsQuestion(empty, 'bed-1', day, 5), limits)!.overFeeding).toBeNull();
  });

  test('a window is of the calendar: in no crop without harm of its own', () => {
    const { plantings } = drawsQuestion(
      bedOf('lettuce_leaf', '2021-05-10', 0),
      'bed-1',
      day,
      1,
    ).input;
    expect(overFeedingWindow(plantings[0]!, limits)).toBeNull();
  });

  test('on the sample the bed that is over-fed at likely values is so in most seasons', () => {
    const today = dayOf(sample.garden.today!);
    const gate = sample.beds.find(({ name }) => name.startsWith('Gate'))!;
    const { overFeeding } = runDraws(drawsQuestion(sample, gate.id, today, 60), limits)!;
    expect(overFeeding!.odds).toBeGreaterThan(0.5);
  });
});
