import { describe, expect, test } from 'vitest';
import type { PlantingInput } from '../../../app/core/season/input';
import {
  canFix,
  forecastMetOf,
  growsFrom,
  isStanding,
  openShareOf,
  plantingAccounts,
  plantingResult,
  takenOn,
} from '../../../app/core/season/plantingAccount';
import { watchedOf } from '../../../app/core/season/watchedSeason';
import {
  between,
  dugTakes,
  firstDay,
  lastDay,
  legumeInput,
  luxuryTop,
  makeBed,
  makePlanting,
  makePlantingResult,
  makeResult,
  soilRelease,
  today,
} from '../madeBed';
import { all } from './cautionRuns';

/* The account of each planting: 0.1 g wanted a day unless said otherwise; beds made by hand. */

const legume = { excessClass: 'legume', legume: legumeInput } as const;
interface Stand {
  readonly planting: PlantingInput;
  readonly need?: number;
  readonly uptake?: number;
  readonly fixed?: number;
}

function accountsOf(stands: readonly Stand[], flows: Readonly<Record<number, Float64Array>> = {}) {
  const input = makeBed({ plantings: stands.map(({ planting }) => planting) });
  const result = makeResult({
    plantings: stands.map(({ planting, need = 0.1, uptake = 0.1, fixed = 0 }) =>
      makePlantingResult(planting, { need, uptake, fixed }),
    ),
    pools: { mineralTop: all(3), mineralLower: all(2) },
    rootReach: all(0.5),
    flows,
  });
  return { input, result: watchedOf(result), accounts: plantingAccounts(input, result, today) };
}

describe('who stands', () => {
  test('from the day of planting to the eve of clearing', () => {
    const on = (day: number, clearingDay: number | null = 20) =>
      isStanding(makePlanting({ startDay: 10, clearingDay }), day);
    expect([9, 10, 19, 20].map((day) => on(day))).toEqual([false, true, true, false]);
    expect(on(500, null)).toBe(true);
  });

  test('growth counts from the planting, and of what stays for years from its last spring', () => {
    const clock = { ...makePlanting(), seasonDay: 0, isRegrowth: true };
    const seasons = [100, 465, 830].map((startDay) => ({ ...clock, startDay }));
    expect(growsFrom(makePlanting({ startDay: 100 }))).toBe(100);
    expect(growsFrom(makePlanting({ startDay: 100, seasons }))).toBe(830);
    expect(growsFrom(makePlanting({ startDay: 90, seasons: seasons.slice(0, 1) }))).toBe(100);
  });

  test('a run that does not know a planting says which', () => {
    expect(() => plantingResult({ plantings: [] }, 'corn')).toThrow('corn');
  });

  test('legumes can fix unless their nodules were seen not to work', () => {
    const of = (nodulesSeen: boolean | null, crop: Parameters<typeof makePlanting>[1]) =>
      canFix(makePlanting({ nodulesSeen }, crop));
    expect([null, true, false].map((seen) => of(seen, legume))).toEqual([true, true, false]);
    expect(of(true, {})).toBe(false);
  });
});

describe('an account', () => {
  const daysGone = today - makePlanting().startDay + 1;
  const clearing = makePlanting().clearingDay!;
  const daysLeft = clearing - today;

  test('of a planting by itself', () => {
    const { accounts } = accountsOf([{ planting: makePlanting(), uptake: 0.06 }], {
      [soilRelease]: between(0.2, today - 3, today + 4),
      [dugTakes]: between(0.05, today - 3, today + 4),
    });
    const [one] = accounts;
    expect(one).toMatchObject({ supplyShare: 1, horizon: clearing });
    expect(one!.need).toBeCloseTo(10.1, 9);
    expect(one!.inCrop).toBeCloseTo(0.06 * daysGone, 9);
    expect(one!.inReach).toBe(4);
    // from tomorrow on
    expect(one!.release).toBeCloseTo(0.8, 9);
    expect(one!.tieUp).toBeCloseTo(0.2, 9);
    expect(one!.stillWanted).toBeCloseTo(0.1 * daysLeft, 9);
    expect(one!.forecastTaken).toBeCloseTo(0.06 * daysLeft, 9);
  });

  test('supply counts to the day of clearing, and for the share that is planted', () => {
    const half = makePlanting({ share: 0.5, clearingDay: today + 2 });
    const { accounts } = accountsOf([{ planting: half }], {
      [soilRelease]: between(0.2, today + 1, today + 9),
      [dugTakes]: between(0.05, today + 1, today + 9),
    });
    expect(accounts[0]!.release).toBeCloseTo(0.2, 9);
    expect(accounts[0]!.tieUp).toBeCloseTo(0.05, 9);
    expect(accounts[0]!.inReach).toBe(2);
  });

  test('shares that add up to more than the bed share all of it', () => {
    const { accounts } = accountsOf([
      { planting: makePlanting({ id: 'a', share: 0.5 }) },
      { planting: makePlanting({ id: 'b', share: 0.75 }) },
    ]);
    expect(accounts.map(({ supplyShare }) => supplyShare)).toEqual([0.4, 0.6]);
  });

  test('what nobody cleared uses things to its usual end, or to today when that is past', () => {
    const horizon = (usualEndDay: number) =>
      accountsOf([{ planting: makePlanting({ clearingDay: null, usualEndDay }) }]).accounts[0]!
        .horizon;
    expect(horizon(today + 20)).toBe(today + 20);
    expect(horizon(today - 20)).toBe(today);
  });

  test('only of what stands tonight', () => {
    const { accounts } = accountsOf([
      { planting: makePlanting({ id: 'gone', clearingDay: today }) },
      { planting: makePlanting({ id: 'here' }) },
      { planting: makePlanting({ id: 'later', startDay: today + 1 }) },
    ]);
    expect(accounts.map(({ planting }) => planting.id)).toEqual(['here']);
  });

  test('a legume: need less what it will fix; what it fixed is in the crop', () => {
    const beans = makePlanting({}, legume);
    const of = (planting: PlantingInput) =>
      accountsOf([{ planting, uptake: 0.03, fixed: 0.05 }]).accounts[0]!;
    expect(of(beans).need).toBeCloseTo(10.1 - 0.05 * daysLeft, 9);
    expect(of(beans).inCrop).toBeCloseTo(0.08 * daysGone, 9);
    expect(of(beans).forecastTaken).toBeCloseTo(0.08 * daysLeft, 9);
    expect(of({ ...beans, nodulesSeen: false }).need).toBeCloseTo(10.1, 9);
  });

  test('what is past its usual end and not cleared is promised nothing more', () => {
    const planting = makePlanting({ clearingDay: null, usualEndDay: today + 20 });
    const input = makeBed({ plantings: [planting] });
    const own = makePlantingResult(planting, { need: 0.1, uptake: 0.1 });
    const run = makeResult({ plantings: [{ ...own, dailyUptake: all(0.1) }] });
    expect(plantingAccounts(input, run, today)[0]!.forecastTaken).toBeCloseTo(2, 9);
  });

  test('in a run that ends before the clearing the forecast ends with it', () => {
    const long = makePlanting({ clearingDay: lastDay + 50, usualEndDay: lastDay + 50 });
    const { accounts } = accountsOf([{ planting: long }]);
    expect(accounts[0]!.forecastTaken).toBeCloseTo(0.1 * (lastDay - today), 9);
  });
});

describe('luxury', () => {
  const corn = makePlanting({ id: 'corn', share: 0.4 });
  const kale = makePlanting({ id: 'kale', share: 0.4 });
  const beans = makePlanting({ id: 'beans', share: 0.2 }, legume);
  const stands: readonly Stand[] = [
    { planting: corn, need: 0.1, uptake: 0.13 },
    { planting: kale, need: 0.3, uptake: 0.35 },
    { planting: beans, need: 0.1, uptake: 0.06, fixed: 0.04 },
  ];
  const flows = { [luxuryTop]: between(0.08, firstDay, lastDay) };

  test('is shared by the day’s need among those that take it; a legume takes none', () => {
    const { input, result } = accountsOf(stands, flows);
    expect(takenOn(input, result, corn, today)).toBeCloseTo(0.13 - 0.02, 9);
    expect(takenOn(input, result, kale, today)).toBeCloseTo(0.35 - 0.06, 9);
    expect(takenOn(input, result, beans, today)).toBeCloseTo(0.1, 9);
  });

  test('is no part of what the forecast gives', () => {
    const { accounts } = accountsOf(stands, flows);
    const days = makePlanting().clearingDay! - today;
    const given = accounts.map(({ forecastTaken }) => forecastTaken / days);
    [0.11, 0.29, 0.1].forEach((grams, at) => expect(given[at]).toBeCloseTo(grams, 9));
    // 0.11 + 0.29 + 0.1 of 0.5
    expect(forecastMetOf(accounts)).toBeCloseTo(1, 9);
  });

  test('on a day when nobody wants any there is none to share', () => {
    const { input, result } = accountsOf([{ planting: corn, need: 0, uptake: 0.13 }], flows);
    expect(takenOn(input, result, corn, today)).toBeCloseTo(0.13, 9);
  });

  test('a day outside the run counts as its nearest', () => {
    const long = { ...corn, clearingDay: lastDay + 50, usualEndDay: lastDay + 50 };
    const { input, result } = accountsOf([{ planting: long, uptake: 0.13 }], flows);
    expect(takenOn(input, result, long, lastDay)).toBeCloseTo(0.05, 9);
    expect(takenOn(input, result, long, lastDay + 9)).toBeCloseTo(0.05, 9);
    expect(takenOn(input, result, { ...long }, firstDay - 9)).toBe(
      takenOn(input, result, long, firstDay),
    );
  });
});

describe('of all plantings together', () => {
  test('what the forecast meets, and what is open, go by grams', () => {
    const { accounts } = accountsOf([
      { planting: makePlanting({ id: 'a', share: 0.5 }), need: 0.1, uptake: 0.02 },
      { planting: makePlanting({ id: 'b', share: 0.5 }), need: 0.3, uptake: 0.26 },
    ]);
    expect(forecastMetOf(accounts)).toBeCloseTo(0.28 / 0.4, 9);
    const days = makePlanting().clearingDay! - today;
    expect(openShareOf(accounts)).toBeCloseTo(days / 101, 9);
  });

  test('nothing wanted is all met, nothing wanted at all is nothing open', () => {
    expect(forecastMetOf([])).toBe(1);
    expect(openShareOf([])).toBe(0);
    const done = accountsOf([{ planting: makePlanting(), need: 0 }]).accounts;
    expect(forecastMetOf(done)).toBe(1);
    expect(openShareOf(done)).toBe(0);
  });
});
