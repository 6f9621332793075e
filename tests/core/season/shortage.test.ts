import { describe, expect, test } from 'vitest';
import { plantingAccounts } from '../../../app/core/season/plantingAccount';
import { turnsShortOn, wasShortOn } from '../../../app/core/season/shortOfNitrogen';
import { watchedOf } from '../../../app/core/season/watchedSeason';
import { limits } from '../../../app/tables/thresholds';
import {
  between,
  firstDay,
  legumeInput,
  makeBed,
  makePlanting,
  makePlantingResult,
  makeResult,
  soilRelease,
  today,
} from '../madeBed';
import { all } from './cautionRuns';

/*
 * Short: four weeks are looked through for a day by which the crop will have wanted more than 0.3 g and
 * will find, beyond 0.4 g/m2 that stay behind, less than nine tenths of it (threshold table).
 */

interface Stand {
  readonly share?: number;
  readonly start?: number;
  readonly end: number;
  readonly need: number;
  readonly uptake?: number;
}

interface Made {
  readonly stands: readonly Stand[];
  readonly mineralTop: number;
  readonly release?: number;
  readonly wasShort?: boolean;
}

function turns({ stands, mineralTop, release = 0, wasShort = false }: Made): number | null {
  const plantings = stands.map(({ share = 1 / stands.length, start = today - 5, end }, at) =>
    makePlanting({ id: `${at}`, share, startDay: start, clearingDay: end, usualEndDay: end }),
  );
  const bed = makeBed({ plantings });
  const result = watchedOf(
    makeResult({
      plantings: plantings.map((planting, at) => {
        const { need, uptake = 0 } = stands[at]!;
        return makePlantingResult(planting, { need, uptake });
      }),
      pools: { mineralTop: all(mineralTop) },
      flows: { [soilRelease]: between(release, today + 1, today + 200) },
    }),
  );
  const day = turnsShortOn(plantingAccounts(bed, result, today), result, today, limits, wasShort);
  return day === null ? null : day - today;
}

describe('when a bed turns short', () => {
  const long = { end: today + 90, need: 0.1 };

  test('the last of the 28 days counts, the day after it does not', () => {
    // g above 0.4 lasts while g >= 0.09 d: 2.5 g to day 27, 2.53 g to day 28
    expect(turns({ stands: [long], mineralTop: 2.9 })).toBe(28);
    expect(turns({ stands: [long], mineralTop: 2.93 })).toBeNull();
  });

  test('the need must be over 0.3 g', () => {
    // 0.15 + 0.15 on the second day is not over it
    expect(turns({ stands: [{ ...long, need: 0.15 }], mineralTop: 0.4 })).toBe(3);
  });

  test('a bed that was short needs all that is wanted, to the gram', () => {
    // 0.25 g a day; 0.5 g on hand is what two days want
    const made: Made = { stands: [{ ...long, need: 0.25 }], mineralTop: 0.9 };
    expect(turns({ ...made, wasShort: true })).toBe(3);
    expect(turns(made)).toBe(3);
    expect(turns({ ...made, mineralTop: 0.89, wasShort: true })).toBe(2);
    expect(turns({ ...made, mineralTop: 0.89 })).toBe(3);
  });

  test('on its own last day a crop still wants', () => {
    // five days of 0.1 g: 0.4 g on hand are nine tenths of four days' need and not of five days'
    expect(turns({ stands: [{ end: today + 5, need: 0.1 }], mineralTop: 0.8 })).toBe(5);
  });

  test('release counts for whom it reaches: a share that was cleared gives its neighbour nothing', () => {
    // Half a bed each. The first is cleared on day 3 and wants next to nothing; the other wants 0.1 a
    // day and gets half of 0.1 a day besides 0.2 g: 0.2 + 0.05 d + 0.05 x 3 of the first's
    // = 0.35 + 0.05 d < 0.09 d from day 9 on.
    const stands = [
      { end: today + 3, need: 1e-9 },
      { end: today + 90, need: 0.1 },
    ];
    expect(turns({ stands, mineralTop: 0.6, release: 0.1 })).toBe(9);
  });

  test('shares count what is in reach once', () => {
    // two thirds of a bed hold back two thirds of 0.4: 2/3 (1.6 - 0.4) = 0.8 g lasts eight days
    const part = { share: 2 / 3, end: today + 90, need: 0.1 };
    expect(turns({ stands: [part], mineralTop: 1.6 })).toBe(9);
  });
});

describe('that a bed was short', () => {
  interface Past {
    readonly days: number;
    readonly end?: number;
    readonly need: number;
    readonly uptake: (day: number) => number;
    readonly legume?: boolean;
    readonly start?: number;
  }

  /** days since the start on which the shortage began; null for none */
  function was({ days, end = 10, need, uptake, legume = false, start }: Past): number | null {
    const startDay = start ?? today - days + 1;
    const planting = makePlanting(
      { startDay, clearingDay: startDay + end, usualEndDay: startDay + end },
      { legume: legume ? legumeInput : null },
    );
    const bed = makeBed({ plantings: [planting] });
    const own = makePlantingResult(planting, { need, uptake: 0 });
    const result = watchedOf(
      makeResult({
        plantings: [
          { ...own, dailyUptake: own.dailyNeed.map((_, at) => uptake(firstDay + at - startDay)) },
        ],
      }),
    );
    const now = startDay + days - 1;
    const accounts = plantingAccounts(bed, result, now);
    const day = wasShortOn(accounts, bed, result, now, limits);
    return day === null ? null : day - startDay;
  }
  const nothing = (): number => 0;

  test('from its first day, if it went without from then on', () => {
    // 11 days of 0.1 g in all; five days went by with nothing
    expect(was({ days: 5, need: 0.1, uptake: nothing })).toBe(0);
  });

  test('today counts: the third day in seven that gave nothing', () => {
    const uptake = (missing: number) => (day: number) => (day > 13 - missing ? 0 : 0.1);
    expect(was({ days: 14, end: 19, need: 0.1, uptake: uptake(3) })).toBe(7);
    expect(was({ days: 14, end: 19, need: 0.1, uptake: uptake(2) })).toBeNull();
  });

  test('not worth saying under a tenth of the season’s need', () => {
    // three days without: 0.3 of 10.1 g
    const uptake = (day: number) => (day > 10 ? 0 : 0.1);
    expect(was({ days: 14, end: 100, need: 0.1, uptake })).toBeNull();
  });

  test('nor where a week wants no more than 0.3 g', () => {
    expect(was({ days: 10, end: 20, need: 0.04, uptake: nothing })).toBeNull();
    expect(was({ days: 10, end: 20, need: 0.045, uptake: nothing })).toBe(0);
    expect(was({ days: 2, need: 0.15, uptake: nothing })).toBeNull();
    expect(was({ days: 2, need: 0.151, uptake: nothing })).toBe(0);
  });

  test('a week is seven days: what came before is forgotten', () => {
    // eight good days hide nothing: the bed is short from the week that ends on the 11th day
    const uptake = (day: number) => (day < 8 ? 0.1 : 0);
    expect(was({ days: 13, end: 19, need: 0.1, uptake })).toBe(4);
  });

  test('what was planted before the run is counted from the run’s first day', () => {
    expect(was({ days: 15, end: 40, need: 0.1, uptake: nothing, start: firstDay - 10 })).toBe(10);
  });

  test('legumes never', () => {
    expect(was({ days: 5, need: 0.1, uptake: nothing, legume: true })).toBeNull();
  });
});
