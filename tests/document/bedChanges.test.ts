import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../app/core/days';
import { runDraws } from '../../app/core/season/draws/runDraws';
import { pools } from '../../app/core/season/flows';
import type { BedSeason } from '../../app/core/season/input';
import type { SeasonResult } from '../../app/core/season/result';
import { runSeason } from '../../app/core/season/season';
import { joinBeds } from '../../app/document/bedChanges/joinBeds';
import { resizeBed } from '../../app/document/bedChanges/resizeBed';
import { bringBack, retireBeds } from '../../app/document/bedChanges/retireBeds';
import { splitBed, type PlantsAt } from '../../app/document/bedChanges/splitBed';
import { faultOfChange } from '../../app/document/change';
import { drawsQuestion } from '../../app/document/drawsQuestion';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';
import { bedSeason } from '../../app/document/seasonInput';
import { serializeGarden } from '../../app/document/serialize';
import { limits } from '../../app/tables/thresholds';

/** What is conserved is a law of ours; no number here is from outside. */
const sample: Garden = (() => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error('the sample cannot be read');
  return parsed.value;
})();
const today = '2013-06-15';
const run = (garden: Garden, bedId: string, day = today) => {
  const input = bedSeason(garden, bedId, dayOf(day));
  return { input, result: runSeason(input) };
};
const done = <Value>(result: { ok: boolean; value?: Value; error?: unknown }): Value => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value as Value;
};
/** g N of the whole bed before its first day, or on a day's evening. */
const gramsAtStart = ({ input, result }: { input: BedSeason; result: SeasonResult }): number =>
  input.areaM2 * pools.reduce((sum, pool) => sum + result.start[pool], 0);
const gramsOn = (
  { input, result }: { input: BedSeason; result: SeasonResult },
  date: string,
): number =>
  input.areaM2 *
  pools.reduce((sum, pool) => sum + result.pools[pool][dayOf(date) - result.firstDay]!, 0);
const dayBefore = (date: string): string => textFromDay(dayOf(date) - 1);
const isKept = (garden: Garden): void => {
  expect(faultOfChange(null, garden)).toBeNull();
  const parsed = parseGarden(serializeGarden(garden));
  expect(parsed.ok && parsed.value).toEqual(garden);
};
const lastOf = (garden: Garden, bedId: string): string =>
  [
    ...garden.applications.filter((one) => one.bedId === bedId).map(({ date }) => date),
    ...garden.events.flatMap((one) => ('bedId' in one && one.bedId === bedId ? [one.date] : [])),
    ...garden.plantings
      .filter((one) => one.bedId === bedId)
      .flatMap(({ started, cleared }) => [started, cleared ?? started])
      .filter((day) => day <= today),
  ]
    .sort()
    .at(-1) ?? '2013-03-01';
/** Days on which each bed can be split: after its last entry, up to today. */
const days = (bedIds: readonly string[]): fc.Arbitrary<string> => {
  const last = Math.max(...bedIds.map((id) => dayOf(lastOf(sample, id))));
  return fc.integer({ min: Math.min(last + 1, dayOf(today)), max: dayOf(today) }).map(textFromDay);
};
const splittable = sample.beds.filter(({ id }) => lastOf(sample, id) < today).map(({ id }) => id);

test('the sample has beds to try it on', () => {
  expect(splittable.length).toBeGreaterThan(3);
});

describe('a bed split into two', () => {
  test('keeps its grams, wherever its plants stand then', () => {
    fc.assert(
      fc.property(
        fc
          .constantFrom(...splittable)
          .chain((bedId) => fc.record({ bedId: fc.constant(bedId), on: days([bedId]) })),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        fc.array(fc.constantFrom<PlantsAt>('both', 'first', 'second'), {
          minLength: 8,
          maxLength: 8,
        }),
        ({ bedId, on }, firstShare, where) => {
          const own = sample.plantings.filter((one) => one.bedId === bedId);
          const plants = Object.fromEntries(own.map(({ id }, at) => [id, where[at % 8]!]));
          const { garden, bedIds } = done(
            splitBed(
              sample,
              { bedId, on, names: ['One half', 'Other half'], firstShare, plants },
              today,
            ),
          );
          const before = gramsOn(run(sample, bedId), dayBefore(on));
          const parts = bedIds.map((id) => run(garden, id));
          const after = parts.reduce((sum, part) => sum + gramsAtStart(part), 0);
          // roots planned on one part may open soil below that the whole bed had not reached
          const isSameDepth = parts.every(
            ({ result }) =>
              result.lowerDepth[0] ===
              run(sample, bedId).result.lowerDepth[
                dayOf(on) - 1 - run(sample, bedId).result.firstDay
              ],
          );
          if (isSameDepth) expect(after).toBeCloseTo(before, 6);
          else expect(after).toBeGreaterThan(before - 1e-6);
          for (const { result } of parts) expect(result.residual).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 40, seed: 20_130_615 },
    );
  });

  test.each(splittable)('%s goes on as if nobody had drawn a line', (bedId) => {
    const on = textFromDay(Math.max(dayOf(lastOf(sample, bedId)) + 1, dayOf(today) - 10));
    const { garden, bedIds } = done(
      splitBed(
        sample,
        { bedId, on, names: ['One half', 'Other half'], firstShare: 0.3, plants: {} },
        today,
      ),
    );
    isKept(garden);
    const whole = run(sample, bedId).result;
    for (const id of bedIds) {
      const part = run(garden, id).result;
      for (const pool of pools) {
        const from = part.firstDay - whole.firstDay;
        const wanted = whole.pools[pool].slice(from);
        part.pools[pool].forEach((grams, index) => expect(grams).toBeCloseTo(wanted[index]!, 8));
      }
    }
  });

  test('keeps every entry, and says which bed it came from', () => {
    const bedId = splittable[0]!;
    const { garden } = done(
      splitBed(
        sample,
        { bedId, on: today, names: ['One half', 'Other half'], firstShare: 0.5, plants: {} },
        today,
      ),
    );
    expect(garden.applications).toEqual(sample.applications);
    expect(garden.events).toEqual(sample.events);
    for (const planting of sample.plantings.filter(({ started }) => started <= today))
      expect(garden.plantings).toContainEqual(planting);
    expect(garden.retiredBeds?.map(({ id, retired }) => [id, retired])).toEqual([[bedId, today]]);
  });

  test('is refused where something was written down since, or the day is to come', () => {
    const bedId = splittable[0]!;
    const ask = (on: string) =>
      splitBed(
        sample,
        { bedId, on, names: ['One half', 'Other half'], firstShare: 0.5, plants: {} },
        today,
      );
    const last = lastOf(sample, bedId);
    expect(ask(dayBefore(last))).toMatchObject({
      ok: false,
      error: { kind: 'written since', date: last },
    });
    // the day that is named can be taken
    expect(ask(last)).toMatchObject({ ok: true });
    expect(
      splitBed(
        done(ask(today)).garden,
        { bedId: 'bed-9', on: today, names: ['a', 'b'], firstShare: 0.5, plants: {} },
        today,
      ),
    ).toMatchObject({ ok: false });
    expect(ask('2013-06-16')).toMatchObject({ ok: false, error: { kind: 'still to come' } });
  });
});

describe('beds joined', () => {
  test('hold what they held together, each by its own past', () => {
    fc.assert(
      fc.property(
        fc
          .shuffledSubarray(splittable, { minLength: 2, maxLength: 3 })
          .chain((bedIds) => fc.record({ bedIds: fc.constant(bedIds), on: days(bedIds) })),
        ({ bedIds, on }) => {
          const { garden, bedIds: made } = done(joinBeds(sample, bedIds, on, 'Joined', today));
          const old = bedIds.map((id) => run(sample, id));
          const before = old.reduce((sum, bed) => sum + gramsOn(bed, dayBefore(on)), 0);
          const joined = run(garden, made[0]!);
          const deepest = joined.result.lowerDepth[0]!;
          const depths = old.map(
            ({ result }) => result.lowerDepth[dayOf(on) - 1 - result.firstDay]!,
          );
          // where roots go less deep, the soil below comes with it as at the turn of a season
          const below = old.reduce((sum, { input, result }, at) => {
            const held = result.pools.mineralLower[dayOf(on) - 1 - result.firstDay]!;
            return sum + input.areaM2 * held * (deepest / depths[at]! - 1);
          }, 0);
          expect(deepest).toBeGreaterThanOrEqual(Math.max(...depths));
          expect(gramsAtStart(joined)).toBeCloseTo(before + below, 6);
          expect(joined.result.residual).toBeLessThan(1e-6);
          isKept(garden);
        },
      ),
      { numRuns: 25, seed: 20_130_616 },
    );
  });

  test('a bed split three times, a part of a part of a part, and joined again balances to 1e-9', () => {
    let tried = 0;
    for (const bedId of splittable) {
      const last = dayOf(lastOf(sample, bedId));
      const firstDay = Math.min(Math.max(last + 1, dayOf('2013-03-10')), dayOf(today) - 3);
      if (last >= firstDay) continue;
      tried += 1;
      const on = (later: number): string => textFromDay(firstDay + later);
      let garden = sample;
      let whole = bedId;
      const parts: string[] = [];
      [0.37, 0.5, 1 / 3].forEach((firstShare, at) => {
        const names = [`Part ${String(at)}`, `Rest ${String(at)}`] as const;
        const made = done(
          splitBed(garden, { bedId: whole, on: on(at), names, firstShare, plants: {} }, today),
        );
        garden = made.garden;
        parts.push(made.bedIds[1]!);
        whole = made.bedIds[0]!;
      });
      parts.push(whole);
      for (const id of parts) expect(run(garden, id).result.residual).toBeLessThan(1e-9);
      const joined = done(joinBeds(garden, parts, on(3), 'One again', today));
      const [id] = joined.bedIds;
      const bed = joined.garden.beds.find((one) => one.id === id)!;
      const was = sample.beds.find((one) => one.id === bedId)!;
      expect(Math.abs(bed.areaM2 - was.areaM2)).toBeLessThan(1e-9 * was.areaM2);
      const again = run(joined.garden, id!);
      expect(again.result.residual).toBeLessThan(1e-9);
      const before = gramsOn(run(sample, bedId), dayBefore(on(3)));
      expect(Math.abs(gramsAtStart(again) - before), was.name).toBeLessThan(1e-9 * before);
      isKept(joined.garden);
    }
    expect(tried).toBeGreaterThan(3);
  });

  test('a bed split and joined again is the bed it was', () => {
    const bedId = splittable.find((id) => lastOf(sample, id) < '2013-06-10')!;
    const first = textFromDay(dayOf('2013-06-11'));
    const split = done(
      splitBed(
        sample,
        { bedId, on: first, names: ['One half', 'Other half'], firstShare: 0.4, plants: {} },
        today,
      ),
    );
    const joined = done(joinBeds(split.garden, split.bedIds, '2013-06-14', 'Whole again', today));
    isKept(joined.garden);
    const was = run(sample, bedId).result;
    const is = run(joined.garden, joined.bedIds[0]!).result;
    const from = is.firstDay - was.firstDay;
    for (const pool of pools)
      is.pools[pool].forEach((grams, index) =>
        expect(grams).toBeCloseTo(was.pools[pool][index + from]!, 8),
      );
  });
});

describe('a bed of another size', () => {
  const [bed] = sample.beds;
  const layers = sample.applications.filter(({ bedId }) => bedId === bed!.id);
  test('leaves what was laid before on the area it was laid on', () => {
    const from = textFromDay(dayOf(lastOf(sample, bed!.id)) + 1);
    const garden = done(
      resizeBed(sample, bed!.id, from, { areaM2: bed!.areaM2 * 2, sides: null }, today),
    );
    isKept(garden);
    expect(layers.length).toBeGreaterThan(0);
    const [was, is] = [run(sample, bed!.id), run(garden, bed!.id)];
    expect(is.input.layers).toEqual(was.input.layers);
    expect(is.input.areaM2).toBe(2 * was.input.areaM2);
    for (const pool of pools) expect(is.result.pools[pool]).toEqual(was.result.pools[pool]);
  });
  test('thins what is laid after', () => {
    const first = layers.map(({ date }) => date).sort()[0]!;
    const garden = done(
      resizeBed(sample, bed!.id, first, { areaM2: bed!.areaM2 * 2, sides: null }, today),
    );
    const [was, is] = [run(sample, bed!.id).input.layers, run(garden, bed!.id).input.layers];
    is.forEach((layer, at) => {
      if (layers.find(({ id }) => id === layer.id)!.amount.quantity.kind !== 'depth')
        expect(layer.dryKgPerM2).toBeCloseTo(was[at]!.dryKgPerM2 / 2, 12);
    });
  });
});

describe('beds put away', () => {
  test('are gone from the beds with their logs kept, and come back as they were', () => {
    const ids = sample.beds.slice(0, 2).map(({ id }) => id);
    const garden = done(retireBeds(sample, ids, today, today));
    isKept(garden);
    expect(garden.beds).toHaveLength(sample.beds.length - 2);
    expect(garden.applications).toBe(sample.applications);
    const back = done(bringBack(done(bringBack(garden, ids[1]!)), ids[0]!));
    expect(new Set(back.beds)).toEqual(new Set(sample.beds));
    expect(back.retiredBeds).toBeUndefined();
  });
  test('are not put away on the very day they were made', () => {
    const bedId = splittable[0]!;
    const on = textFromDay(Math.max(dayOf(lastOf(sample, bedId)) + 1, dayOf('2013-06-01')));
    const names = ['One half', 'Other half'] as const;
    const made = done(splitBed(sample, { bedId, on, names, firstShare: 0.5, plants: {} }, today));
    const [half] = made.bedIds;
    expect(retireBeds(made.garden, [half!], on, today)).toMatchObject({
      error: { kind: 'made since', bed: 'One half', date: on },
    });
    if (on < today)
      expect(retireBeds(made.garden, [half!], textFromDay(dayOf(on) + 1), today).ok).toBe(true);
  });

  test('do not come back from under the beds made of them', () => {
    const bedId = splittable[0]!;
    const { garden } = done(
      splitBed(
        sample,
        { bedId, on: today, names: ['One half', 'Other half'], firstShare: 0.5, plants: {} },
        today,
      ),
    );
    expect(bringBack(garden, bedId)).toEqual({
      ok: false,
      error: { kind: 'made of it', beds: ['One half', 'Other half'] },
    });
  });
});

test('imagined seasons of a part are those of the whole: its past is drawn with it', () => {
  // its only test is what its run starts from: a later one would weigh the draws of the whole alone
  const bedId = 'bed-squash';
  const { garden, bedIds } = done(
    splitBed(
      sample,
      { bedId, on: '2013-06-11', names: ['One half', 'Other half'], firstShare: 0.4, plants: {} },
      today,
    ),
  );
  const ask = (from: Garden, id: string) =>
    runDraws(drawsQuestion(from, id, dayOf(today), 30), limits)!;
  const [whole, part] = [ask(sample, bedId), ask(garden, bedIds[0]!)];
  expect(whole.nitrate.at(-1)!.low).not.toBeCloseTo(whole.nitrate.at(-1)!.high, 3);
  expect(part.nitrate.at(-1)!.low).toBeCloseTo(whole.nitrate.at(-1)!.low, 6);
  expect(part.nitrate.at(-1)!.middle).toBeCloseTo(whole.nitrate.at(-1)!.middle, 6);
  expect(part.nitrate.at(-1)!.high).toBeCloseTo(whole.nitrate.at(-1)!.high, 6);
  expect(part.states).toEqual(whole.states);
});
