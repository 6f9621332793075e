import { describe, expect, test } from 'vitest';
import { layerCautions } from '../../app/core/season/cautions/cautions';
import type { CautionFacts, Run } from '../../app/core/season/cautions/facts';
import type { BedSeason, LayerInput } from '../../app/core/season/input';
import { runSeason } from '../../app/core/season/season';
import { bedVerdict } from '../../app/core/season/state';
import type { NitrogenState } from '../../app/core/season/verdict';
import { limits } from '../../app/tables/thresholds';
import { dayIn, firstDay, legumeInput, makeBed, makeLayer, makePlanting, today } from './madeBed';

/* The rules of a bed on the real engine, in made-up weather. */

const run = (input: BedSeason, previous: NitrogenState | null = null): Run => {
  const result = runSeason(input);
  return { input, result, verdict: bedVerdict(input, result, input.today, limits, previous) };
};

const facts: CautionFacts = {
  seasonStartMonth: 1,
  roof: 'open',
  lastSpringFrost: null,
  ownWell: false,
  dogs: false,
  layers: {},
  plantings: {},
};

const weekly = (from: number, count: number, laidDepth: number): LayerInput[] =>
  Array.from({ length: count }, (_, week) =>
    makeLayer({
      id: `week ${String(week)}`,
      day: from + 7 * week,
      laidDepth,
      nitrogen: 1.6 * laidDepth,
      carbon: 21 * laidDepth,
      dryKgPerM2: 0.048 * laidDepth,
      freshKgPerM2: 0.25 * laidDepth,
    }),
  );

const withRain = (bed: BedSeason, day: number, millimetres: number): BedSeason => {
  const rainMillimetres = Float64Array.from(bed.weather.rainMillimetres);
  rainMillimetres[day - firstDay] = millimetres;
  return { ...bed, weather: { ...bed.weather, rainMillimetres } };
};

const sweetPotato = makePlanting(
  { startDay: dayIn(5, 25), usualEndDay: dayIn(9, 25), clearingDay: dayIn(9, 25) },
  { excessClass: 'tender storage', need: 11, fullRootDepth: 900 },
);
const beans = makePlanting(
  { sown: true, startDay: dayIn(5, 20), usualEndDay: dayIn(8, 30), clearingDay: dayIn(8, 30) },
  { excessClass: 'legume', need: 14, legume: legumeInput },
);

describe('an over-fed bed', () => {
  const fed = makeBed({ plantings: [sweetPotato], layers: weekly(dayIn(4, 20), 8, 7) });

  test('is not made about right by 100 mm of rain', () => {
    const dry = run(fed);
    const washed = run(withRain(fed, today, 100));
    expect(dry.verdict.state).toBe('over-fed');
    expect(washed.verdict.nitrateMgPerKg).toBeLessThan(dry.verdict.nitrateMgPerKg);
    expect(washed.verdict.state).not.toBe('about right');
    expect(washed.verdict.state).not.toBe('short');
  });

  test('would have been right with one layer', () => {
    const thin = run({ ...fed, layers: fed.layers.slice(0, 1) });
    expect(thin.verdict.ratio ?? Infinity).toBeLessThan(dryRatio(fed) / 2);
  });

  const dryRatio = (bed: BedSeason): number => run(bed).verdict.ratio ?? 0;
});

describe('climbing beans', () => {
  test('on a bare bed are never short, on any week of their life', () => {
    for (let day = beans.startDay; day < (beans.clearingDay ?? 0); day += 7) {
      const { verdict } = run(makeBed({ plantings: [beans], today: day }));
      expect(verdict.state).not.toBe('short');
      expect(verdict.room).toBeNull();
    }
  });

  test('a first thin layer is no stop and costs little; an inch a week is a stop from the first', () => {
    const day = beans.startDay + 25;
    const bare = run(makeBed({ plantings: [beans], today: day }));
    const cautionsOf = (layer: LayerInput) =>
      layerCautions(
        bare,
        run(makeBed({ plantings: [beans], today: day, layers: [layer] })),
        [layer.id],
        facts,
        limits,
      );
    const [thin, thick] = [6, 25].map((depth) => cautionsOf(weekly(day, 1, depth)[0]!));
    expect(thin?.map((caution) => caution.weight)).not.toContain('stop');
    expect(thin?.find((caution) => caution.kind === 'legume')?.weight ?? 'note').toBe('note');
    expect(thick?.[0]).toMatchObject({ kind: 'layer depth', weight: 'stop' });
  });
});

describe('a hungry bed', () => {
  const corn = makePlanting({ sown: true }, { excessClass: 'head', need: 18 });
  const poor = makeBed({
    plantings: [corn],
    soil: { ...makeBed().soil, organicMatterPercent: 1, startingMineralTop: 0.5 },
  });
  const straw = makeLayer({
    id: 'straw',
    day: dayIn(5, 1),
    materialClass: 'mature',
    isGreens: false,
    nitrogen: 9,
    carbon: 9 * 80,
    dryKgPerM2: 1.6,
    condition: 'crisp',
  });

  test('is short, and greens on it raise its ratio', () => {
    const bare = run(poor);
    const fed = run({
      ...poor,
      layers: [makeLayer({ placement: 'hoed', nitrogen: 25, carbon: 325 })],
    });
    expect(bare.verdict.state).toBe('short');
    expect(fed.verdict.ratio ?? 0).toBeGreaterThan(bare.verdict.ratio ?? 0);
  });

  test('straw dug in makes it hungrier and is called tied up before it is done', () => {
    const bare = run(poor);
    const dug = run({ ...poor, today: straw.day, layers: [{ ...straw, placement: 'dug' }] });
    const cautions = layerCautions(
      run({ ...poor, today: straw.day }),
      dug,
      ['straw'],
      facts,
      limits,
    );
    expect(cautions.find((caution) => caution.kind === 'tied up')?.weight).toBe('caution');
    const later = run({ ...poor, layers: [{ ...straw, placement: 'dug' }] });
    expect(later.verdict.ratio ?? 1).toBeLessThan(bare.verdict.ratio ?? 0);
    const laid = run({ ...poor, today: straw.day, layers: [straw] });
    const onTop = layerCautions(run({ ...poor, today: straw.day }), laid, ['straw'], facts, limits);
    expect(onTop.map((caution) => caution.kind)).not.toContain('tied up');
  });

  test('never asks for a ratio over what remains: the same bed is judged by its whole need to the end', () => {
    const early = run({ ...poor, today: dayIn(6, 1) }).verdict;
    const late = run({ ...poor, today: dayIn(8, 20) }).verdict;
    expect(late.need).toBeCloseTo(early.need, 6);
    expect(late.openShare).toBeLessThan(0.1);
    expect(late.state).not.toBe('over-fed');
  });
});
