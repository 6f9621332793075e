import { describe, expect, test } from 'vitest';
import type { ExcessClass } from '../../app/core/season/input';
import { bedVerdict, laidThisSeason } from '../../app/core/season/state';
import { stateHistory, weeklyDays } from '../../app/core/season/stateHistory';
import type { BedVerdict, NitrogenState } from '../../app/core/season/verdict';
import { gramsPerM2FromMgPerKg } from '../../app/core/units';
import { limits } from '../../app/tables/thresholds';
import {
  between,
  dayIn,
  dugTakes,
  legumeInput,
  luxuryTop,
  makeBed,
  makeCrop,
  makeLayer,
  makePlanting,
  makePlantingResult,
  makeResult,
  soilRelease,
  stepping,
  today,
  washedIn,
} from './madeBed';

/*
 * Beds made by hand: 101 days of 0.1 g/m2 need, 10.1 in all; 32 days are over today, 6.9 g are
 * still wanted. Lines are those of the threshold table (cautions table of the design).
 */
const clearing = dayIn(8, 23);
const daysLeft = clearing - today;

interface Made {
  readonly excessClass?: ExcessClass;
  readonly uptake?: number;
  readonly fixed?: number;
  readonly mineralTop?: number;
  readonly mineralLower?: number;
  readonly release?: number;
  readonly tieUp?: number;
  readonly washed?: number;
  readonly share?: number;
  readonly need?: number;
  readonly dryness?: number;
  readonly nodulesSeen?: boolean | null;
  readonly previous?: NitrogenState;
  readonly mineralByDay?: Float64Array;
}

function verdictOf(made: Made): BedVerdict {
  const excessClass = made.excessClass ?? 'storage';
  const planting = makePlanting(
    { share: made.share ?? 1, nodulesSeen: made.nodulesSeen ?? null },
    { excessClass, legume: excessClass === 'legume' ? legumeInput : null },
  );
  const own = makePlantingResult(planting, {
    need: made.need ?? 0.1,
    uptake: made.uptake ?? 0.1,
    fixed: made.fixed ?? 0,
  });
  const bed = makeBed({ plantings: [planting] });
  const result = makeResult({
    plantings: [own],
    pools: {
      mineralTop: made.mineralByDay ?? between(made.mineralTop ?? 1, 0, Infinity),
      mineralLower: between(made.mineralLower ?? 0, 0, Infinity),
    },
    flows: {
      [soilRelease]: between((made.release ?? 0) / daysLeft, today + 1, clearing),
      [dugTakes]: between((made.tieUp ?? 0) / daysLeft, today + 1, clearing),
      [washedIn]: between((made.washed ?? 0) / daysLeft, today + 1, clearing),
    },
    dryness: between(made.dryness ?? 0, 0, Infinity),
  });
  return bedVerdict(bed, result, today, limits, made.previous ?? null);
}

/** Release that brings the ratio of the made bed to a wanted value: 3.2 g are in the crop, 1 g is ready. */
const releaseFor = (ratio: number): number => ratio * 10.1 - 3.2 - 1;

describe('the ratio', () => {
  test('is what is in the crop, in reach and to come, less tie-up, over the total need', () => {
    const verdict = verdictOf({
      mineralTop: 2,
      mineralLower: 1,
      release: 3,
      washed: 2,
      tieUp: 1.5,
    });
    expect(verdict.need).toBeCloseTo(10.1, 9);
    expect(verdict.inCrop).toBeCloseTo(3.2, 9);
    expect(verdict.inReach).toBeCloseTo(3, 9);
    expect(verdict.expectedRelease).toBeCloseTo(5, 9);
    expect(verdict.expectedTieUp).toBeCloseTo(1.5, 9);
    expect(verdict.ratio).toBeCloseTo((3.2 + 3 + 5 - 1.5) / 10.1, 9);
  });

  test('counts supply for the share that is planted', () => {
    const whole = verdictOf({ release: 4, mineralTop: 2 });
    const half = verdictOf({ release: 4, mineralTop: 2, share: 0.5 });
    expect(half.inReach).toBeCloseTo(whole.inReach / 2, 9);
    expect(half.expectedRelease).toBeCloseTo(whole.expectedRelease / 2, 9);
  });

  test('of two plantings adds by share, and shares over one share the whole bed', () => {
    const one = makePlanting({ id: 'one', share: 0.9 });
    const two = makePlanting({ id: 'two', share: 0.9 });
    const bed = makeBed({ plantings: [one, two] });
    const result = makeResult({
      plantings: [one, two].map((planting) =>
        makePlantingResult(planting, { need: 0.1, uptake: 0.1 }),
      ),
      pools: { mineralTop: between(4, 0, Infinity) },
    });
    const verdict = bedVerdict(bed, result, today, limits);
    expect(verdict.inReach).toBeCloseTo(4, 9);
    expect(verdict.need).toBeCloseTo(20.2, 9);
  });

  test('of a legume asks of the soil only what fixation will not bring', () => {
    const verdict = verdictOf({ excessClass: 'legume', uptake: 0.04, fixed: 0.06 });
    expect(verdict.need).toBeCloseTo(10.1 - 0.06 * daysLeft, 9);
    expect(verdict.inCrop).toBeCloseTo(3.2, 9);
    expect(verdict.room).toBeNull();
  });

  test('never divides by what remains: a day before clearing it is still over the total need', () => {
    const planting = makePlanting();
    const bed = makeBed({ plantings: [planting] });
    const result = makeResult({
      plantings: [makePlantingResult(planting, { need: 0.1, uptake: 0.05 })],
      pools: { mineralTop: between(1, 0, Infinity) },
    });
    const verdict = bedVerdict(bed, result, clearing - 1, limits);
    expect(verdict.ratio).toBeCloseTo((0.05 * 100 + 1) / 10.1, 6);
  });

  test('is null where nothing stands, and on the day of clearing nothing does', () => {
    const planting = makePlanting();
    const bed = makeBed({ plantings: [planting] });
    const result = makeResult({
      plantings: [makePlantingResult(planting, { need: 0.1, uptake: 0.1 })],
    });
    expect(bedVerdict(bed, result, clearing, limits).state).toBe('nothing planted');
    expect(bedVerdict(bed, result, clearing, limits).ratio).toBeNull();
    expect(bedVerdict(bed, result, clearing - 1, limits).state).not.toBe('nothing planted');
  });

  test('luxury does not count towards what the forecast meets', () => {
    const planting = makePlanting();
    const bed = makeBed({ plantings: [planting] });
    const own = makePlantingResult(planting, { need: 0.1, uptake: 0.1 });
    const result = makeResult({
      plantings: [own],
      flows: { [luxuryTop]: between(0.03, planting.startDay, clearing) },
    });
    expect(bedVerdict(bed, result, today, limits).forecastMet).toBeCloseTo(0.7, 9);
  });
});

describe('over-fed, by class (lines of the threshold table)', () => {
  const lines: readonly (readonly [ExcessClass, number])[] = [
    ['tender storage', 1.2],
    ['storage', 1.3],
    ['flower', 1.3],
    ['leaf', 2],
    ['head', 2],
    ['perennial', 1.2],
  ];
  test.each(lines)('%s past %s, not below', (excessClass, line) => {
    const above = verdictOf({ excessClass, release: releaseFor(line + 0.01) });
    expect(above.state).toBe('over-fed');
    expect(above.overFedLine).toBeCloseTo(line, 9);
    expect(verdictOf({ excessClass, release: releaseFor(line - 0.01) }).state).toBe(
      'enough to the end',
    );
  });

  const strong: readonly (readonly [ExcessClass, number])[] = [
    ['tender storage', 1.5],
    ['storage', 1.7],
    ['flower', 2],
    ['perennial', 1.7],
  ];
  test.each(strong)('%s strongly past %s', (excessClass, line) => {
    expect(verdictOf({ excessClass, release: releaseFor(line + 0.01) }).strongly).toBe(true);
    expect(verdictOf({ excessClass, release: releaseFor(line - 0.01) }).strongly).toBe(false);
  });

  test('fruit also needs over 20 mg/kg of nitrate round first flower, over 30 for strongly', () => {
    // 1.3 kg/L: 20 mg/kg is 7.8 g/m2 in 0-30 cm. First flower is 40 days after planting, 24 June.
    const at = (mgPerKg: number, ratio: number): BedVerdict => {
      const high = gramsPerM2FromMgPerKg(mgPerKg, 1.3, 30);
      return verdictOf({
        excessClass: 'fruit',
        release: releaseFor(ratio),
        mineralByDay: Float64Array.from(
          between(high, dayIn(7, 1), dayIn(7, 3)).map((value) => Math.max(1, value)),
        ),
      });
    };
    expect(at(21, 1.35).state).toBe('over-fed');
    expect(at(21, 1.35).flowerNitrate).toBeCloseTo(21, 6);
    expect(at(19, 1.35).state).toBe('enough to the end');
    expect(at(31, 1.85).strongly).toBe(true);
    expect(at(29, 1.85).strongly).toBe(false);
  });

  test('nitrate counts from 14 days ahead of the first flower to its 42nd day, no longer', () => {
    const high = gramsPerM2FromMgPerKg(40, 1.3, 30);
    const flower = dayIn(5, 15) + 40;
    const on = (day: number): NitrogenState =>
      verdictOf({
        excessClass: 'fruit',
        release: releaseFor(1.4),
        mineralByDay: Float64Array.from(between(high, day, day).map((value) => Math.max(1, value))),
      }).state;
    expect(on(flower - 14)).toBe('over-fed');
    expect(on(flower + 42)).toBe('over-fed');
    expect(on(flower - 15)).toBe('enough to the end');
    expect(on(flower + 43)).toBe('enough to the end');
  });

  test('never for cover crops and legumes', () => {
    expect(verdictOf({ excessClass: 'cover', release: 30 }).state).toBe('enough to the end');
    expect(verdictOf({ excessClass: 'legume', release: 30 }).state).toBe('enough to the end');
  });

  test('not while the forecast leaves the crop hungry: the nitrogen is there but not in reach in time', () => {
    expect(verdictOf({ release: 30, uptake: 0.08 }).state).not.toBe('over-fed');
  });

  test('nitrogen washed below the top still counts: rain clears no name', () => {
    const dry = verdictOf({ excessClass: 'tender storage', mineralTop: 9 });
    const washed = verdictOf({ excessClass: 'tender storage', mineralTop: 1, mineralLower: 8 });
    expect(dry.state).toBe('over-fed');
    expect(washed.state).toBe('over-fed');
    expect(washed.ratio).toBeCloseTo(dry.ratio ?? NaN, 9);
  });

  test('two classes share the line by their need', () => {
    const fruit = makePlanting({ id: 'fruit', share: 0.5 }, { excessClass: 'storage' });
    const leaf = makePlanting({ id: 'leaf', share: 0.5 }, { excessClass: 'leaf' });
    const verdict = bedVerdict(
      makeBed({ plantings: [fruit, leaf] }),
      makeResult({
        plantings: [
          makePlantingResult(fruit, { need: 0.06, uptake: 0.06 }),
          makePlantingResult(leaf, { need: 0.04, uptake: 0.04 }),
        ],
      }),
      today,
      limits,
    );
    expect(verdict.excessClass).toBe('storage');
    expect(verdict.overFedLine).toBeCloseTo(0.6 * 1.3 + 0.4 * 2, 9);
  });
});

describe('enough, short, about right', () => {
  test('enough to the end above 1.1 when the forecast meets 85 % of what is wanted', () => {
    expect(verdictOf({ release: releaseFor(1.11) }).state).toBe('enough to the end');
    expect(verdictOf({ release: releaseFor(1.09) }).state).toBe('about right');
    // 1.11 with less in the crop; forecast 84 %
    expect(verdictOf({ release: 9, uptake: 0.084 }).state).toBe('about right');
    expect(verdictOf({ release: 9, uptake: 0.086 }).state).toBe('enough to the end');
  });

  test('a legume is enough by the ratio alone', () => {
    expect(verdictOf({ excessClass: 'legume', release: 12, uptake: 0.03, fixed: 0.03 }).state).toBe(
      'enough to the end',
    );
  });

  test('enough for now from 20 mg/kg on, and says when it falls below', () => {
    const high = gramsPerM2FromMgPerKg(20.5, 1.3, 30);
    const falls = dayIn(7, 4);
    const verdict = verdictOf({ need: 0.2, uptake: 0.2, mineralByDay: stepping(high, falls, 1) });
    expect(verdict.ratio).toBeLessThan(1.1);
    expect(verdict.state).toBe('enough for now');
    expect(verdict.turnsOn).toBe(falls + 1);
    const low = gramsPerM2FromMgPerKg(19.5, 1.3, 30);
    expect(
      verdictOf({ need: 0.2, uptake: 0.2, mineralByDay: stepping(low, falls, 1) }).state,
    ).not.toBe('enough for now');
  });

  test("a crop's own row decides: 25 mg/kg is not enough for one that wants 26", () => {
    const planting = makePlanting({}, { ...makeCrop(), enoughNitrateLow: 26 });
    const result = makeResult({
      plantings: [makePlantingResult(planting, { need: 0.2, uptake: 0.2 })],
      pools: { mineralTop: between(gramsPerM2FromMgPerKg(25, 1.3, 30), 0, Infinity) },
    });
    expect(bedVerdict(makeBed({ plantings: [planting] }), result, today, limits).state).not.toBe(
      'enough for now',
    );
  });

  test('short on the first day on which supply falls under nine tenths of the need', () => {
    // 1 g ready less 0.4 out of reach: 0.6 g for 0.1 g a day; 0.6 < 0.9 x 0.1 x 7 on the 7th day.
    const verdict = verdictOf({ mineralTop: 1, uptake: 0.03 });
    expect(verdict.state).toBe('short');
    expect(verdict.turnsOn).toBe(today + 7);
  });

  test('not short when the season meets 85 %, nor with under 15 % of the need open', () => {
    expect(verdictOf({ mineralTop: 1, uptake: 0.086 }).state).toBe('about right');
    const planting = makePlanting();
    const bed = makeBed({ plantings: [planting] });
    const result = makeResult({
      plantings: [makePlantingResult(planting, { need: 0.1, uptake: 0.03 })],
      pools: { mineralTop: between(0.5, 0, Infinity) },
    });
    const at = (day: number): NitrogenState => bedVerdict(bed, result, day, limits).state;
    expect(at(clearing - 16)).toBe('short');
    expect(at(clearing - 15)).toBe('about right');
  });

  test('not short for a need under 0.3 g', () => {
    expect(verdictOf({ need: 0.01, uptake: 0.001, mineralTop: 0.4 }).state).toBe('about right');
    expect(verdictOf({ need: 0.012, uptake: 0.001, mineralTop: 0.4 }).state).toBe('short');
  });

  test('tie-up takes from what will be in hand', () => {
    // 1.6 g lasts 34 days at 0.09 - 3/69 a day, and 17 days when the release is all held back
    expect(verdictOf({ mineralTop: 2, uptake: 0.05, release: 3 }).turnsOn).toBeNull();
    expect(verdictOf({ mineralTop: 2, uptake: 0.05, release: 3, tieUp: 3 }).turnsOn).toBe(
      today + 18,
    );
  });

  test('a legume is short only when its nodules are known not to work', () => {
    expect(verdictOf({ excessClass: 'legume', uptake: 0.02, fixed: 0.01 }).state).not.toBe('short');
    expect(verdictOf({ excessClass: 'legume', uptake: 0.02, nodulesSeen: false }).state).toBe(
      'short',
    );
  });

  test('says that a bed was short, and since when, once nothing can be done', () => {
    const planting = makePlanting();
    const own = makePlantingResult(planting, { need: 0.1, uptake: 0.1 });
    const uptake = Float64Array.from(own.dailyUptake);
    for (let day = dayIn(5, 25); day < dayIn(6, 10); day += 1)
      uptake[day - makeResult().firstDay] = 0;
    const verdict = bedVerdict(
      makeBed({ plantings: [planting] }),
      makeResult({
        plantings: [{ ...own, dailyUptake: uptake }],
        pools: { mineralTop: between(5, 0, Infinity) },
        flows: { [soilRelease]: between(0.05, today, clearing) },
      }),
      today,
      limits,
    );
    expect(verdict.state).toBe('about right');
    // a week with under 70 % of its need: three bare days in seven, the week begins 4 days before
    expect(verdict.wasShortOn).toBe(dayIn(5, 21));
    expect(verdictOf({}).wasShortOn).toBeNull();
  });

  test('dry is a mark beside the state', () => {
    expect(verdictOf({ dryness: 1.01 }).dryFirst).toBe(true);
    expect(verdictOf({ dryness: 0.99 }).dryFirst).toBe(false);
    expect(verdictOf({ dryness: 1.01 }).state).toBe(verdictOf({}).state);
  });
});

describe('a state is left only past its margin', () => {
  test('over-fed: 0.1 below its line', () => {
    const at = (ratio: number, previous?: NitrogenState): NitrogenState =>
      verdictOf({ release: releaseFor(ratio), ...(previous && { previous }) }).state;
    expect(at(1.25)).toBe('enough to the end');
    expect(at(1.25, 'over-fed')).toBe('over-fed');
    expect(at(1.19, 'over-fed')).toBe('enough to the end');
  });

  test('enough to the end: 1.05', () => {
    const at = (ratio: number, previous?: NitrogenState): NitrogenState =>
      verdictOf({ release: releaseFor(ratio), ...(previous && { previous }) }).state;
    expect(at(1.07)).toBe('about right');
    expect(at(1.07, 'enough to the end')).toBe('enough to the end');
    expect(at(1.04, 'enough to the end')).toBe('about right');
  });

  test('enough for now: 17 mg/kg', () => {
    const at = (mgPerKg: number, previous?: NitrogenState): NitrogenState =>
      verdictOf({
        need: 0.2,
        uptake: 0.2,
        mineralTop: gramsPerM2FromMgPerKg(mgPerKg, 1.3, 30),
        ...(previous && { previous }),
      }).state;
    expect(at(18)).toBe('about right');
    expect(at(18, 'enough for now')).toBe('enough for now');
    expect(at(16.5, 'enough for now')).toBe('about right');
  });

  test('short: 90 % met', () => {
    const at = (uptake: number, previous?: NitrogenState): NitrogenState =>
      verdictOf({ mineralTop: 1, uptake, ...(previous && { previous }) }).state;
    expect(at(0.088)).toBe('about right');
    expect(at(0.088, 'short')).toBe('short');
    expect(at(0.091, 'short')).toBe('about right');
  });
});

describe('room left for greens', () => {
  test('is what is missing to 1.1 over the share that counts, at most 80 g less what is laid', () => {
    const verdict = verdictOf({ release: releaseFor(0.8) });
    expect(verdict.room).toBeCloseTo((0.3 * 10.1) / 0.33, 6);
    expect(verdictOf({ release: releaseFor(1.2) }).room).toBe(0);

    const planting = makePlanting();
    const bed = makeBed({
      plantings: [planting],
      layers: [
        makeLayer({ id: 'a', nitrogen: 40, day: dayIn(5, 1) }),
        makeLayer({ id: 'b', nitrogen: 35, day: dayIn(6, 1) }),
        makeLayer({ id: 'straw', nitrogen: 20, materialClass: 'mature', isGreens: false }),
      ],
    });
    const result = makeResult({
      plantings: [makePlantingResult(planting, { need: 0.1, uptake: 0.05 })],
    });
    expect(laidThisSeason(bed, result, today)).toBe(75);
    expect(bedVerdict(bed, result, today, limits).room).toBeCloseTo(5, 9);
  });

  test('of compost only what a season frees counts as laid', () => {
    const bed = makeBed({
      layers: [
        makeLayer({ nitrogen: 60, materialClass: 'slow', mineralShare: 0.03, slowShare: 0.05 }),
      ],
    });
    expect(laidThisSeason(bed, makeResult({}), today)).toBeCloseTo(4.8, 9);
  });

  test('layers of last season do not count as laid', () => {
    const bed = makeBed({
      seasonStarts: [dayIn(4, 1)],
      layers: [makeLayer({ nitrogen: 40, day: dayIn(3, 1) })],
    });
    expect(laidThisSeason(bed, makeResult({}), today)).toBe(0);
  });

  test('what was raked off again does not count: of what still lay the share that was taken', () => {
    const bed = makeBed({
      layers: [makeLayer({ id: 'a', nitrogen: 40, day: dayIn(6, 1) })],
      events: [{ kind: 'rake off', day: dayIn(6, 11), share: 0.5 }],
    });
    const result = makeResult({});
    const left = new Float64Array(result.days).fill(0.8);
    const raked = { ...result, layers: [{ id: 'a', left, depth: left }] };
    expect(laidThisSeason(bed, raked, today)).toBeCloseTo(40 * (1 - 0.5 * 0.8), 9);
  });

  test('a crop that wants next to nothing any more has no room, whatever it went without', () => {
    const planting = makePlanting();
    const done = makePlantingResult(planting, { need: 0.1, uptake: 0.02 });
    const bed = makeBed({ plantings: [planting] });
    done.dailyNeed.fill(0, today + 1 - makeResult({}).firstDay);
    const verdict = bedVerdict(bed, makeResult({ plantings: [done] }), today, limits);
    expect(verdict.openShare).toBeLessThan(limits.numbers['little open']);
    expect(verdict.room).toBe(0);
  });
});

describe('cover', () => {
  const coverOf = (fraction: number, depth: number): string =>
    bedVerdict(
      makeBed(),
      makeResult({
        coverFraction: between(fraction, 0, Infinity),
        coverDepth: between(depth, 0, Infinity),
      }),
      today,
      limits,
    ).coverState;
  test('the lines lie at 30 and 70 % of the ground, and at 100 mm', () => {
    expect(coverOf(0.29, 5)).toBe('bare');
    expect(coverOf(0.31, 5)).toBe('thin');
    expect(coverOf(0.69, 10)).toBe('thin');
    expect(coverOf(0.71, 10)).toBe('good');
    expect(coverOf(0.99, 99)).toBe('good');
    expect(coverOf(0.99, 101)).toBe('too deep');
  });
});

describe('the state over past days', () => {
  test('asks for a run as it was known on each week, and hands the state on', () => {
    const planting = makePlanting();
    const bed = makeBed({ plantings: [planting] });
    const asked: number[] = [];
    const own = makePlantingResult(planting, { need: 0.1, uptake: 0.1 });
    const history = stateHistory(
      dayIn(5, 18),
      today,
      (day) => {
        asked.push(day);
        // 1.35 on the day before the last, 1.25 today: held in "over-fed" by its margin alone
        const ratio = day === today ? 1.25 : 1.35;
        const left = clearing - day;
        const inCrop = 0.1 * (day - planting.startDay + 1);
        return {
          input: bed,
          result: makeResult({
            plantings: [own],
            flows: {
              [soilRelease]: between((ratio * 10.1 - inCrop) / left, day + 1, clearing),
            },
          }),
        };
      },
      limits,
    );
    expect(asked).toEqual(weeklyDays(dayIn(5, 18), today));
    expect(history.map((one) => one.verdict.state)).toEqual(new Array(5).fill('over-fed'));
    expect(history.at(-1)?.verdict.ratio).toBeCloseTo(1.25, 6);
  });

  test('weeks end on the last day', () => {
    expect(weeklyDays(today - 15, today)).toEqual([today - 14, today - 7, today]);
  });
});

test('a day outside the run is refused', () => {
  expect(() => bedVerdict(makeBed(), makeResult(), dayIn(12, 31) + 1, limits)).toThrow(RangeError);
});
