import { expect, test, vi } from 'vitest';
import { BedTrack } from '../../../app/core/plan/bedTrack';
import { layerOf } from '../../../app/core/plan/response';
import { judgedDay } from '../../../app/core/plan/spells';
import { plantingAccounts } from '../../../app/core/season/plantingAccount';
import { runSeason } from '../../../app/core/season/season';
import { at } from '../../../app/core/season/seasonAccount';
import { madeQuestion } from './madeQuestion';

// Whole plans on a busy machine take their time.
vi.setConfig({ testTimeout: 120_000 });

const seeds = [2, 3, 8];

for (const seed of seeds)
  test(`garden ${seed}: going on from a morning with a layer more is the whole run with it`, () => {
    const { beds, sources, days } = madeQuestion(seed);
    for (const { question } of beds) {
      const { input } = question;
      const track = new BedTrack(input, days);
      for (const source of sources.slice(0, 4)) {
        for (const day of days.slice(0, 3)) {
          const layer = layerOf(source, 5, day, 'a layer');
          const gone = track.with(layer);
          const whole = { ...input, layers: [...input.layers, layer] };
          const run = runSeason(whole);
          days.forEach((one, index) =>
            expect(gone.dry[index]).toBeCloseTo(at(run.coverDryKg, run, one), 9),
          );
          expect(gone.fixed).toBeCloseTo(
            run.plantings.reduce((sum, { fixed }) => sum + fixed, 0),
            9,
          );
          const judged = judgedDay(input);
          if (judged === null) {
            expect(gone.supply).toBe(0);
            continue;
          }
          const accounts = plantingAccounts(whole, run, judged);
          const supply = accounts.reduce(
            (sum, { inCrop, inReach, release, tieUp }) => sum + inCrop + inReach + release - tieUp,
            0,
          );
          expect(gone.supply).toBeCloseTo(supply, 9);
          expect(gone.need).toBeCloseTo(
            accounts.reduce((sum, { need }) => sum + need, 0),
            9,
          );
        }
      }
    }
  });

test('a layer leaves no trace in the next run of the same track', () => {
  const { beds, sources, days } = madeQuestion(3);
  const [source] = sources;
  for (const { question } of beds) {
    const track = new BedTrack(question.input, days);
    const layer = layerOf(source!, 8, days[0]!, 'a layer');
    const once = track.with(layer);
    track.with(layerOf(source!, 40, days[1]!, 'another'));
    expect(track.with(layer)).toEqual(once);
    expect(new BedTrack(question.input, days).base).toEqual(track.base);
  }
});

test('a day that is none of the plan’s is refused', () => {
  const { beds, sources, days } = madeQuestion(3);
  const track = new BedTrack(beds[0]!.question.input, days);
  expect(() => track.with(layerOf(sources[0]!, 5, days[0]! + 1, 'a layer'))).toThrow(/no day/);
});

test('an empty bed is judged on the day its next crop starts', () => {
  const { beds } = madeQuestion(3);
  const { input } = beds[0]!.question;
  const [planting] = input.plantings;
  const later = { ...planting!, startDay: input.today + 20, clearingDay: input.today + 90 };
  expect(judgedDay({ ...input, plantings: [later] })).toBe(input.today + 20);
  expect(judgedDay({ ...input, plantings: [] })).toBeNull();
  expect(judgedDay({ ...input, plantings: [{ ...later, startDay: input.today }] })).toBe(
    input.today,
  );
});
