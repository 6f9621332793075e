import { describe, expect, test } from 'vitest';
import { drawnBed } from '../../../app/core/season/draws/drawnBed';
import { makeDraws } from '../../../app/core/season/draws/drawnSeason';
import { runDraws, type DrawsQuestion } from '../../../app/core/season/draws/runDraws';
import { dayOf } from '../../../app/core/days';
import type { LegumeInput } from '../../../app/core/season/input';
import type { SeasonSpread } from '../../../app/core/season/draws/spread';
import { parseGarden } from '../../../app/document/parse';
import { sampleText } from '../../../app/document/sampleGarden';
import type { Garden, Planting } from '../../../app/document/schema';
import { bedSeason } from '../../../app/document/seasonInput';
import { seasonSpread } from '../../../app/document/seasonSpread';
import { crops } from '../../../app/tables/crops';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import { limits } from '../../../app/tables/thresholds';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('no sample');
const sample: Garden = parsed.value;
const today = dayOf('2013-06-15');
const bedId = sample.beds[0]!.id;
const only = (cropId: string): Garden => ({
  ...sample,
  applications: [],
  events: [],
  plantings: [
    {
      ...sample.plantings[0]!,
      id: 'own',
      bedId,
      cropId,
      share: 1,
      nodules: 'not looked',
      started: '2013-05-20',
      firstHarvest: null,
      cleared: null,
    } satisfies Planting,
  ],
});
const count = 200;

function asked(cropId: string): DrawsQuestion {
  const garden = only(cropId);
  return {
    input: bedSeason(garden, bedId, today),
    spread: seasonSpread(garden, bedId),
    weather: { kind: 'generated', spread: typicalWeatherSpread(40.8) },
    tests: [],
    seed: 1,
    count,
  };
}

/** What the nodules are taken to do in each draw. */
function legumesOf({ input, spread, seed }: DrawsQuestion): readonly LegumeInput[] {
  const bed = drawnBed(input, spread, makeDraws(seed, count));
  return Array.from({ length: count }, (_, draw) => {
    bed.write(draw);
    return { ...bed.input.plantings[0]!.crop.legume! };
  });
}

const at = (values: readonly number[], share: number): number =>
  [...values].sort((one, other) => one - other)[Math.round(share * (count - 1))]!;

describe('what is not known of a legume’s nodules is drawn', () => {
  test.each(['snap_bean_bush', 'snap_bean_pole', 'pea'] as const)(
    '%s: its row of the share fixed is the 5, 50 and 95 % point, and so is the limit by nitrate',
    (cropId) => {
      const question = asked(cropId);
      const legumes = legumesOf(question);
      const { usualPercentFixed, leafyLimit } = crops[cropId].legume;
      const usual = legumes.map(({ usualShareFixed }) => 100 * usualShareFixed);
      for (const [share, value] of [
        [0.05, usualPercentFixed.low],
        [0.5, usualPercentFixed.typical],
        [0.95, usualPercentFixed.high],
      ] as const)
        expect(Math.abs(at(usual, share) - value)).toBeLessThan(1.5);
      const limit = legumes.map((one) => one.leafyLimit);
      // Voisin et al. 2002, for beans borrowed: 4.8 g/m2, x 0.8-1.3 and x 1.2 (0.8-2.3)
      expect(at(limit, 0.05)).toBeCloseTo(leafyLimit.low, 0);
      expect(at(limit, 0.95)).toBeCloseTo(leafyLimit.high, 0);
      const typical = question.input.plantings[0]!.crop.legume!;
      for (const one of legumes) {
        // ours: weak nodules cannot rise to the row's high share, strong ones to no less
        const weak = Math.min(1, one.usualShareFixed / typical.usualShareFixed);
        expect(one.highShareFixed).toBeCloseTo(
          Math.max(one.usualShareFixed, weak * typical.highShareFixed),
          12,
        );
        expect(one.leafyLimit / one.poddingLimit).toBeCloseTo(
          typical.leafyLimit / typical.poddingLimit,
          9,
        );
        expect(one.nodulationDays).toBe(typical.nodulationDays);
      }
    },
  );

  test('the season it was made from stays as it is', () => {
    const question = asked('snap_bean_pole');
    const before = structuredClone(question.input.plantings[0]!.crop.legume);
    legumesOf(question);
    expect(question.input.plantings[0]!.crop.legume).toEqual(before);
  });

  test('the range of what is fixed grows by it, and it is named among what matters most', () => {
    const question = asked('snap_bean_pole');
    const whole = runDraws(question, limits)!;
    const { fixing: _fixing, ...rest } = question.spread;
    const held: SeasonSpread = rest;
    const without = runDraws({ ...question, spread: held }, limits)!;
    const width = ({ low, high }: { low: number; high: number }): number => high / low;
    expect(width(whole.fixed)).toBeGreaterThan(1.1 * width(without.fixed));
    expect(whole.mattersMost.fixed.map(({ name }) => name)).toContain('fixing of snap_bean_pole');
    expect(without.mattersMost.fixed.map(({ name }) => name)).not.toContain(
      'fixing of snap_bean_pole',
    );
  });

  test('what is no legume has none of it', () => {
    expect(asked('tomato').spread.fixing).toEqual({});
  });
});
