import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { runDraws } from '../../app/core/season/draws/runDraws';
import { flowKinds, pools, type Pool } from '../../app/core/season/flows';
import { bedLedger } from '../../app/core/season/ledger';
import { runSeason } from '../../app/core/season/season';
import { joinBeds } from '../../app/document/bedChanges/joinBeds';
import { splitBed } from '../../app/document/bedChanges/splitBed';
import { faultOfChange } from '../../app/document/change';
import { drawsQuestion } from '../../app/document/drawsQuestion';
import { mineralAccount } from '../../app/document/mineralAccount';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden, GardenEvent } from '../../app/document/schema';
import { bedSeason } from '../../app/document/seasonInput';
import { limits } from '../../app/tables/thresholds';

/** What is conserved is a law of ours; no number here is from outside. */
const sample: Garden = (() => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error('the sample cannot be read');
  return parsed.value;
})();
const today = '2013-06-15';
const on = '2013-06-15';
const done = <Value>(result: { ok: boolean; value?: Value; error?: unknown }): Value => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value as Value;
};
const run = (garden: Garden, bedId: string) => {
  const input = bedSeason(garden, bedId, dayOf(today));
  return { input, result: runSeason(input) };
};
type Run = ReturnType<typeof run>;
const indexOn = ({ result }: Run): number => dayOf(on) - result.firstDay;
/** g N of the whole bed in a pool that evening. */
const grams = (bed: Run, pool: Pool): number =>
  bed.input.areaM2 * bed.result.pools[pool][indexOn(bed)]!;
const all = (bed: Run): number => pools.reduce((sum, pool) => sum + grams(bed, pool), 0);
/** g N of the whole bed that went a way on that day. */
const wentOn = (bed: Run, from: string, to: string): number =>
  bed.input.areaM2 *
  flowKinds.reduce(
    (sum, kind, at) =>
      kind.from === from && kind.to === to ? sum + bed.result.flows[at]![indexOn(bed)]! : sum,
    0,
  );
const split = (garden: Garden, bedId: string, firstShare = 0.3) =>
  done(
    splitBed(
      garden,
      { bedId, on, names: ['One half', 'Other half'], firstShare, plants: {} },
      today,
    ),
  );

/** The sample with things written down for a bed on the very day of the change. */
function busyDay(bedId: string, isDug: boolean): Garden {
  const planting = sample.plantings.find(
    (one) => one.bedId === bedId && one.started < on && one.cleared === null,
  );
  const layer = sample.applications[0]!;
  const cover: GardenEvent = isDug
    ? { id: 'today-2', date: on, kind: 'dig cover in', bedId, share: 0.4 }
    : { id: 'today-2', date: on, kind: 'rake off', bedId, share: 0.4 };
  return {
    ...sample,
    applications: [
      ...sample.applications,
      {
        ...layer,
        id: `today-layer-${bedId}`,
        date: on,
        bedId,
        from: { source: 'elsewhere', materialId: 'straw-wheat' },
        amount: {
          text: '3 kg',
          quantity: { kind: 'mass', kilograms: 3 },
          certainty: 'plain',
        },
        placement: 'laid',
        condition: 'crisp',
        wetness: 'dry',
        mixtureId: null,
        passedStops: [],
      },
    ],
    events: [
      ...sample.events,
      { id: 'today-1', date: on, kind: 'water', bedId, millimetres: 12 },
      cover,
      ...(planting
        ? [
            {
              id: 'today-3',
              date: on,
              kind: 'harvest' as const,
              bedId,
              plantingId: planting.id,
              kilograms: 0.5,
            },
          ]
        : []),
    ],
  };
}
const bedIds = ['bed-gate', 'bed-wall', 'bed-squash', 'bed-border'].filter((id) =>
  sample.beds.some((bed) => bed.id === id),
);

test('the sample has these beds', () => {
  expect(bedIds.length).toBeGreaterThan(2);
});

describe('a bed split on a day that has entries', () => {
  test.each(bedIds.flatMap((id) => [[id, true] as const, [id, false] as const]))(
    '%s goes on as if nobody had drawn a line (dug in: %s)',
    (bedId, isDug) => {
      const busy = busyDay(bedId, isDug);
      expect(faultOfChange(null, busy)).toBeNull();
      const { garden, bedIds: made } = split(busy, bedId);
      expect(faultOfChange(null, garden)).toBeNull();
      expect(garden.applications).toEqual(busy.applications);
      expect(garden.events).toEqual(busy.events);
      const whole = run(busy, bedId);
      for (const id of made) {
        const part = run(garden, id);
        expect(part.result.residual).toBeLessThan(1e-6);
        for (const pool of pools) {
          const wanted = whole.result.pools[pool].slice(
            part.result.firstDay - whole.result.firstDay,
          );
          part.result.pools[pool].forEach((held, index) =>
            expect(held).toBeCloseTo(wanted[index]!, 8),
          );
        }
      }
      const parts = made.map((id) => run(garden, id));
      for (const [from, to] of [
        ['applied', 'coverResidue'],
        ['coverResidue', isDug ? 'dugResidue' : 'removed'],
        ['crop', 'harvested'],
      ] as const)
        expect(parts.reduce((sum, part) => sum + wentOn(part, from, to), 0)).toBeCloseTo(
          wentOn(whole, from, to),
          8,
        );
    },
  );
});

describe('beds joined on a day that has entries', () => {
  test('hold what they would have held, but for the day’s weather', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(bedIds, { minLength: 2, maxLength: 2 }),
        fc.boolean(),
        ([one, other], isDug) => {
          const busy = busyDay(one!, isDug);
          const { garden, bedIds: made } = done(
            joinBeds(busy, [one!, other!], on, 'Joined', today),
          );
          expect(faultOfChange(null, garden)).toBeNull();
          const apart = [run(busy, one!), run(busy, other!)];
          const joined = run(garden, made[0]!);
          expect(joined.result.residual).toBeLessThan(1e-6);
          // what came from outside that day, and what was picked, is the same to the gram
          const laid = apart.reduce((sum, bed) => sum + wentOn(bed, 'applied', 'coverResidue'), 0);
          expect(laid).toBeGreaterThan(1);
          expect(wentOn(joined, 'applied', 'coverResidue')).toBeCloseTo(laid, 8);
          const picked = apart.reduce((sum, bed) => sum + wentOn(bed, 'crop', 'harvested'), 0);
          expect(wentOn(joined, 'crop', 'harvested')).toBeCloseTo(picked, 6);
          // of one ground alone a part of the cover went before they were one: 0.4 of its own
          const before = all(apart[0]!) + all(apart[1]!);
          const deeper =
            joined.input.areaM2 * joined.result.pools.mineralLower[0]! -
            grams(apart[0]!, 'mineralLower') -
            grams(apart[1]!, 'mineralLower');
          expect(Math.abs(all(joined) - deeper - before)).toBeLessThan(0.02 * before);
        },
      ),
      { numRuns: 8, seed: 20_130_617 },
    );
  });

  test('what is dug in on one is dug in on it alone, and before the other’s cover is there', () => {
    const plain = done(joinBeds(sample, ['bed-gate', 'bed-squash'], on, 'Joined', today));
    const dugIn = (bedId: string): Garden => ({
      ...sample,
      events: [...sample.events, { id: 'dug', date: on, kind: 'dig cover in', bedId, share: 1 }],
    });
    // before the new bed's first day begins, what was done to one ground alone having been done
    const coverAtStart = (garden: Garden, id: string) => {
      const bed = run(garden, id);
      const dug = wentOn(bed, 'coverResidue', 'dugResidue') / bed.input.areaM2;
      return bed.result.start.coverResidue - dug;
    };
    const both = coverAtStart(plain.garden, plain.bedIds[0]!);
    const without = ['bed-gate', 'bed-squash'].map((id) => {
      const { garden, bedIds: made } = done(
        joinBeds(dugIn(id), ['bed-gate', 'bed-squash'], on, 'Joined', today),
      );
      return both - coverAtStart(garden, made[0]!);
    });
    expect(Math.min(...without)).toBeGreaterThan(0.1);
    expect(without[0]! + without[1]!).toBeCloseTo(both, 8);
  });
});

describe('what is raked off one bed on the very day it is joined', () => {
  const pair = ['bed-gate', 'bed-squash'] as const;
  const rakedOn = (bedId: string, share: number): Garden => ({
    ...sample,
    events: [...sample.events, { id: 'raked', date: on, kind: 'rake off', bedId, share }],
  });
  const joined = (garden: Garden) => {
    const { garden: after, bedIds: made } = done(joinBeds(garden, [...pair], on, 'Joined', today));
    return { garden: after, bed: run(after, made[0]!) };
  };
  const startGrams = ({ input, result }: Run): number =>
    input.areaM2 * pools.reduce((sum, pool) => sum + result.start[pool], 0);
  const raked = (bed: Run): number =>
    pools.reduce((sum, pool) => sum + wentOn(bed, pool, 'removed'), 0);

  test.each([0.25, 1])('is in the new bed’s account to the gram, %d of it', (share) => {
    const apart = run(rakedOn(pair[0], share), pair[0]);
    const { bed } = joined(rakedOn(pair[0], share));
    expect(raked(apart)).toBeGreaterThan(1);
    expect(raked(bed)).toBeCloseTo(raked(apart), 8);
    // it begins with all that both held the evening before, raked or not
    expect(startGrams(bed)).toBeCloseTo(startGrams(joined(sample).bed), 8);
    expect(bed.result.residual).toBeLessThan(1e-9);
    const { firstDay } = bed.result;
    const { wentOut, difference } = bedLedger(bed.result, firstDay, firstDay);
    const line = wentOut.find(({ key }) => key === 'raked off');
    expect(bed.input.areaM2 * (line?.gM2 ?? 0)).toBeCloseTo(raked(apart), 6);
    expect(Math.abs(difference)).toBeLessThan(1e-9);
  });

  test('so is its phosphorus and potassium', () => {
    const of = (garden: Garden, bed: Run) =>
      mineralAccount(garden, bed.input, bed.result)
        .flatMap(({ lines }) => lines)
        .filter(({ way }) => way === 'raked off')
        .reduce((sum, { figures }) => sum + bed.input.areaM2 * figures.potassium.typical, 0);
    const before = rakedOn(pair[0], 0.5);
    const whole = of(before, run(before, pair[0]));
    const { garden, bed } = joined(before);
    expect(whole).toBeLessThan(-1);
    expect(of(garden, bed) / whole).toBeCloseTo(1, 1);
    // and a second raking of that day finds what the first one left
    const again: Garden = {
      ...before,
      events: [...before.events, { ...before.events.at(-1)!, id: 'again' } as GardenEvent],
    };
    expect(of(again, run(again, pair[0])) / whole).toBeCloseTo(1.5, 1);
  });
});

describe('what was found before a bed was split', () => {
  const bedId = 'bed-squash';
  const tested = (mgPerKg: number): Garden => ({
    ...sample,
    events: [
      ...sample.events,
      {
        id: 'found',
        date: '2013-06-05',
        kind: 'soil test',
        bedId,
        nitrateMgPerKg: mgPerKg,
        organicMatterPercent: null,
        depthCentimetres: 30,
      },
    ],
  });
  const seen: Garden = {
    ...sample,
    events: [
      ...sample.events,
      { id: 'seen', date: '2013-05-25', kind: 'look and dig', bedId, soilSeen: 'none' },
    ],
  };
  const answer = (garden: Garden, id: string) =>
    runDraws(drawsQuestion(garden, id, dayOf(today), 60), limits)!;
  const same = (garden: Garden) => {
    const whole = answer(garden, bedId);
    const { garden: after, bedIds: made } = split(garden, bedId);
    const part = answer(after, made[0]!);
    expect(part.effectiveCount).toBeCloseTo(whole.effectiveCount, 6);
    for (const key of ['low', 'middle', 'high'] as const)
      expect(part.nitrate.at(-1)![key]).toBeCloseTo(whole.nitrate.at(-1)![key], 6);
    return part;
  };

  test('a nitrate test weighs the draws of the parts as it did those of the whole', () => {
    const [low, high] = [same(tested(1)), same(tested(15))];
    expect(low.effectiveCount).toBeLessThan(low.count);
    expect(high.nitrate.at(-1)!.middle).not.toBeCloseTo(low.nitrate.at(-1)!.middle, 2);
  });

  test('and so does a look', () => {
    const plain = same(sample);
    expect(same(seen).effectiveCount).toBeLessThan(plain.effectiveCount);
  });
});

describe('what was picked before a split', () => {
  test('is in the old bed’s phosphorus and potassium, and not once more in the new one’s', () => {
    const bedId = 'bed-kitchen';
    const lettuce = sample.plantings.find((one) => one.bedId === bedId && one.started < on)!;
    const picked: Garden = {
      ...sample,
      plantings: sample.plantings.map((one) =>
        one.id === lettuce.id ? { ...one, cleared: null } : one,
      ),
      events: [
        // its last cut, on the day of the split, is the new beds’
        ...sample.events.filter(({ kind }) => kind !== 'harvest'),
        {
          id: 'pick',
          date: '2013-06-01',
          kind: 'harvest',
          bedId,
          plantingId: lettuce.id,
          kilograms: 1,
        },
      ],
    };
    const pickedOf = (garden: Garden, id: string, day: string) => {
      const input = bedSeason(garden, id, dayOf(day), { endsToday: day !== today });
      return mineralAccount(garden, input, runSeason(input))
        .flatMap(({ lines }) => lines)
        .filter(({ way }) => way === 'picked');
    };
    const { garden, bedIds: made } = split(picked, bedId);
    expect(pickedOf(garden, bedId, '2013-06-14')).toHaveLength(1);
    for (const id of made) expect(pickedOf(garden, id, today)).toEqual([]);
  });
});
