import { describe, expect, test } from 'vitest';
import {
  bedCautions,
  withOddsOfBed,
  withOddsOfLayers,
} from '../../app/core/season/cautions/cautions';
import type { CautionFacts, Run } from '../../app/core/season/cautions/facts';
import type { OverFeeding } from '../../app/core/season/draws/overFeeding';
import type { DrawsAnswer } from '../../app/core/season/draws/runDraws';
import type { CropInput } from '../../app/core/season/input';
import { runSeason } from '../../app/core/season/season';
import { bedVerdict } from '../../app/core/season/state';
import type { Caution } from '../../app/core/season/verdict';
import { limits, thresholdRow } from '../../app/tables/thresholds';
import { makeBed, makeLayer, makePlanting, today } from './madeBed';

/* Odds are invented; the lines are those of the table: 3, 5 and 8 seasons in 10. */

const facts: CautionFacts = {
  seasonStartMonth: 1,
  roof: 'open',
  lastSpringFrost: null,
  ownWell: false,
  dogs: false,
  layers: {},
  plantings: { tall: { cropName: 'Tomato', weedkillerSensitive: false } },
};
const runOf = (
  crop: Partial<CropInput> = {},
  layers: Parameters<typeof makeLayer>[0][] = [],
): Run => {
  const input = makeBed({
    plantings: [makePlanting({ id: 'tall' }, { excessClass: 'fruit', ...crop })],
    layers: layers.map((layer) => makeLayer(layer)),
  });
  const result = runSeason(input);
  return { input, result, verdict: bedVerdict(input, result, today, limits) };
};
const run = runOf();
const band = { low: 0, middle: 0, high: 0 };
const drawsOf = (odds: number, changes: Partial<OverFeeding> = {}, worth = 100): DrawsAnswer => ({
  bedId: run.input.bedId,
  count: 100,
  effectiveCount: worth,
  states: {
    'over-fed': odds,
    'enough to the end': 0,
    'enough for now': 0,
    short: 0,
    'about right': 1 - odds,
    'nothing planted': 0,
  },
  ratio: band,
  needMet: band,
  fixed: band,
  leached: band,
  nitrateDays: [],
  nitrate: [],
  overFeeding: {
    odds,
    plantingId: 'tall',
    excessClass: 'fruit',
    begins: today + 10,
    first: today - 4,
    last: today + 52,
    ...changes,
  },
  ratioDots: null,
  mattersMost: { ratio: [], needMet: [], fixed: [], leached: [] },
});
const oddsIn = (cautions: readonly Caution[]): Caution | undefined =>
  cautions.find(({ kind }) => kind === 'over-feeding');
const said = (draws: DrawsAnswer, of: Run = run): string => {
  const found = oddsIn(withOddsOfBed([], of, draws, facts, limits));
  return found ? `${found.weight}: ${found.row}` : 'none';
};

describe('over-feeding by the odds of the imagined seasons', () => {
  test.each([
    [0.29, 'none'],
    [0.31, 'note: over-feeding odds'],
    [0.49, 'note: over-feeding odds'],
    [0.51, 'caution: over-feeding odds'],
    [0.79, 'caution: over-feeding odds'],
    [0.81, 'caution: over-feeding all but sure'],
  ])('%s of the weight: %s', (odds, words) => expect(said(drawsOf(odds))).toBe(words));

  test('says how many in ten, which line, the day, the crop', () => {
    const [caution] = withOddsOfBed([], run, drawsOf(0.62), facts, limits);
    expect(caution).toMatchObject({
      number: 6.2,
      threshold: 5,
      unit: 'in 10',
      date: today + 10,
      layerId: null,
      detail: { crop: 'Tomato', excessClass: 'fruit' },
    });
    for (const odds of [0.4, 0.6, 0.9]) {
      const one = oddsIn(withOddsOfBed([], run, drawsOf(odds), facts, limits))!;
      expect(thresholdRow(one.row).id).toBe(one.row);
    }
  });

  test('names the fortnight’s heat where flowers set, and nowhere else', () => {
    const hot = makeBed({ plantings: run.input.plantings });
    const maximumCelsius = hot.weather.maximumCelsius.map((warm, index) =>
      index > today - hot.firstDay - 6 && index <= today - hot.firstDay ? 35 : warm,
    );
    const input = { ...hot, weather: { ...hot.weather, maximumCelsius } };
    const result = runSeason(input);
    const inHeat: Run = { input, result, verdict: bedVerdict(input, result, today, limits) };
    const of = (excessClass: OverFeeding['excessClass']) =>
      oddsIn(withOddsOfBed([], inHeat, drawsOf(0.6, { excessClass }), facts, limits))!.detail;
    expect(of('fruit')['hotDays']).toBe(6);
    expect(of('flower')['hotDays']).toBe(6);
    expect(of('storage')['hotDays']).toBeUndefined();
  });

  test('not where there are no odds, the draws are worth too little, the time is over or the crop gone', () => {
    expect(said({ ...drawsOf(0.9), overFeeding: null })).toBe('none');
    expect(said(drawsOf(0.9, {}, 10))).not.toBe('none');
    expect(said(drawsOf(0.9, {}, 9.9))).toBe('none');
    expect(said(drawsOf(0.9, { last: today }))).not.toBe('none');
    expect(said(drawsOf(0.9, { last: today - 1 }))).toBe('none');
    expect(said(drawsOf(0.9, { plantingId: 'gone' }))).toBe('none');
    const cleared = {
      ...run,
      input: {
        ...run.input,
        plantings: run.input.plantings.map((one) => ({ ...one, clearingDay: today })),
      },
    };
    expect(said(drawsOf(0.9), cleared)).toBe('none');
  });

  test('stands among a bed’s other cautions, once, strongest first', () => {
    const others = bedCautions(run, facts, limits);
    const once = withOddsOfBed(others, run, drawsOf(0.9), facts, limits);
    const twice = withOddsOfBed(once, run, drawsOf(0.4), facts, limits);
    expect(once).toHaveLength(others.length + 1);
    expect(twice).toHaveLength(others.length + 1);
    const ranks = twice.map(({ weight }) => ['stop', 'caution', 'note'].indexOf(weight));
    expect(ranks).toEqual(ranks.toSorted((one, other) => one - other));
  });
});

describe('a layer about to be laid', () => {
  const after = runOf({}, [{ id: 'new', day: today }]);
  const layer = (without: number, odds: number, of: Run = after): string => {
    const draws = { before: drawsOf(without), after: drawsOf(odds) };
    const found = oddsIn(withOddsOfLayers([], of, ['new'], draws, facts, limits));
    return found ? `${found.weight}: ${found.row}` : 'none';
  };
  test('is told the odds with it, and those without', () => {
    const draws = { before: drawsOf(0.2), after: drawsOf(0.6) };
    expect(withOddsOfLayers([], after, ['new'], draws, facts, limits)).toEqual([
      expect.objectContaining({
        kind: 'over-feeding',
        weight: 'caution',
        number: 6,
        layerId: 'new',
        date: today + 10,
        detail: expect.objectContaining({ without: 2, crop: 'Tomato' }),
      }),
    ]);
  });
  test('is only to blame for a rise, and a small one is a note', () => {
    expect(layer(0.6, 0.6)).toBe('none');
    expect(layer(0.6, 0.619)).toBe('none');
    expect(layer(0.6, 0.621)).toBe('note: over-feeding odds');
    expect(layer(0.6, 0.649)).toBe('note: over-feeding odds');
    expect(layer(0.6, 0.651)).toBe('caution: over-feeding odds');
    expect(layer(0.84, 0.87)).toBe('note: over-feeding odds');
    expect(layer(0.1, 0.29)).toBe('none');
  });
  test('of browns is never to blame', () => {
    const straw = runOf({}, [{ id: 'new', day: today, materialClass: 'mature', isGreens: false }]);
    expect(layer(0.1, 0.9, straw)).toBe('none');
  });
});
