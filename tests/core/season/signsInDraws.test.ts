import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import {
  runDraws,
  type DrawsAnswer,
  type DrawsQuestion,
} from '../../../app/core/season/draws/runDraws';
import { type Look } from '../../../app/core/season/draws/signs';
import { parseGarden } from '../../../app/document/parse';
import { bedSeason } from '../../../app/document/seasonInput';
import { seasonSpread } from '../../../app/document/seasonSpread';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import { signCoefficients } from '../../../app/tables/signs';
import { limits } from '../../../app/tables/thresholds';

const file = join(import.meta.dirname, '../../../assets/gardens/sample.mowings');
const parsed = parseGarden(readFileSync(file, 'utf8'));
if (!parsed.ok) throw new Error('The sample does not open');
const sample = parsed.value;
const today = dayOf('2013-07-20');

const count = 200;
const bedNamed = (wanted: (crop: string) => boolean): string =>
  sample.plantings.find(({ cropId }) => wanted(cropId))!.bedId;
const tomatoes = bedNamed((crop) => crop.startsWith('tomato'));
const beans = bedNamed((crop) => crop.includes('bean'));

const asked = (bedId: string, looks: readonly Look[], now = today): DrawsQuestion => ({
  input: bedSeason(sample, bedId, now),
  spread: seasonSpread(sample, bedId),
  weather: { kind: 'generated', spread: typicalWeatherSpread(40.8) },
  tests: [],
  signs: { looks, coefficients: signCoefficients },
  seed: 4,
  count,
});
const drawn = (bedId: string, looks: readonly Look[]) => runDraws(asked(bedId, looks), limits)!;
const day = today - 4;

describe('what was seen moves the draws of a bed', () => {
  let kept: DrawsAnswer | null = null;
  /** Without anything seen, and the week of the look in it; made when a test first asks. */
  const unseen = () => {
    const plain = (kept ??= drawn(tomatoes, []));
    return { plain, week: plain.nitrateDays.findIndex((one) => one >= day) };
  };

  test('yellow leaves down, lush leaves up; more together with others than alone', () => {
    const { plain, week } = unseen();
    const yellow = drawn(tomatoes, [{ day, leaves: 'yellow' }]);
    const lush = drawn(tomatoes, [{ day, leaves: 'dark and lush' }]);
    expect(yellow.needMet.middle).toBeLessThan(plain.needMet.middle);
    expect(yellow.ratio!.middle).toBeLessThan(plain.ratio!.middle);
    expect(lush.nitrate[week]!.middle).toBeGreaterThan(plain.nitrate[week]!.middle);
    expect(lush.states['over-fed']).toBeGreaterThanOrEqual(plain.states['over-fed']);
    const both = drawn(tomatoes, [
      { day, leaves: 'dark and lush', soilSeen: 'none', moistFingerDeep: true },
    ]);
    expect(both.effectiveCount).toBeLessThan(lush.effectiveCount);
    expect(lush.effectiveCount).toBeLessThan(plain.effectiveCount);
  });
  test('without effect after today, and with nothing seen', () => {
    const { plain } = unseen();
    expect(drawn(tomatoes, [{ day: today + 3, leaves: 'yellow' }])).toEqual(plain);
    const { signs: _none, ...without } = asked(tomatoes, []);
    expect(runDraws(without, limits)).toEqual(plain);
  });
  test('far less than a nitrate test that says the same', () => {
    const { plain, week } = unseen();
    const lush = drawn(tomatoes, [{ day, leaves: 'dark and lush' }]);
    const tested = runDraws(
      {
        ...asked(tomatoes, []),
        tests: [
          { day: plain.nitrateDays[week]!, mgPerKg: plain.nitrate[week]!.high, spread: 0.15 },
        ],
      },
      limits,
    )!;
    const moved = (answer: DrawsAnswer): number =>
      answer.nitrate[week]!.middle - plain.nitrate[week]!.middle;
    expect(moved(tested)).toBeGreaterThan(2 * moved(lush));
    expect(moved(lush)).toBeGreaterThan(0);
    expect(tested.effectiveCount).toBeLessThan(lush.effectiveCount);
    expect(lush.effectiveCount).toBeGreaterThan(0.7 * count);
  });
  test('pink nodules speak for fixation', () => {
    const looked = drawn(beans, [{ day, nodules: 'pink' }]);
    const before = drawn(beans, []);
    expect(looked.fixed.middle).toBeGreaterThanOrEqual(before.fixed.middle);
    expect(looked.effectiveCount).toBeLessThan(before.effectiveCount);
  });
});
