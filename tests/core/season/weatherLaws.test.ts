import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flowIndex, flowKinds, pools } from '../../../app/core/season/flows';
import { startingState } from '../../../app/core/season/startingState';
import { poolIndex } from '../../../app/core/season/ways';
import { lowerDepthFor, runPlan } from '../../../app/core/season/runPlan';
import { stepDay } from '../../../app/core/season/day';
import type { BedSeason, SeasonWeather } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import { leachedShare } from '../../../app/core/soil/leaching';
import { moistureFactor } from '../../../app/core/soil/organicMatter';
import { temperatureFactor } from '../../../app/core/soil/temperature';
import { availableShare, waterSizes } from '../../../app/core/soil/water';
import { anyBed, lawRuns } from './anyBed';
import { moved, steadyWeather } from './handMadeBed';

const daysOf = (bed: BedSeason): number => bed.lastDay - bed.firstDay + 1;
const leachedFlow = flowIndex('mineralLower', 'leached', 'washed out');
const downFlow = flowIndex('mineralTop', 'mineralLower', 'washed down');
const denitrifiedFlow = flowIndex('mineralTop', 'denitrified', 'wet soil');

/** All that soil life and warmth do, by the words of the flows. */
const livingReasons: ReadonlySet<string> = new Set([
  'eaten',
  'humified',
  'released',
  'held back',
  'held back from the soil',
  'released from compost',
  'released by the soil',
  'released by last year’s humus',
  'to the air',
  'wet soil',
]);

/** One day, once with each weather, from the same evening; the day has no entries of its own. */
function fork(bed: BedSeason, day: number, change: (weather: SeasonWeather) => void) {
  const quiet: BedSeason = {
    ...bed,
    keptMoist: false,
    layers: bed.layers.filter((one) => one.day !== bed.firstDay + day),
    events: bed.events.filter((one) => one.day !== bed.firstDay + day),
    seasonStarts: [],
  };
  const lowerDepth = lowerDepthFor(quiet);
  const state = startingState(quiet, lowerDepth);
  for (let index = 0; index < day; index++)
    stepDay(quiet, state, new Float64Array(flowKinds.length), index);
  const other: BedSeason = {
    ...quiet,
    weather: {
      ...quiet.weather,
      minimumCelsius: quiet.weather.minimumCelsius.slice(),
      maximumCelsius: quiet.weather.maximumCelsius.slice(),
      rainMillimetres: quiet.weather.rainMillimetres.slice(),
    },
  };
  change(other.weather);
  const before = state.nitrogen.slice();
  return [quiet, other].map((one) => {
    // what follows from the weather is reckoned once a run: the other weather needs its own
    const evening = { ...structuredClone(state), plan: runPlan(one, lowerDepth) };
    const flows = new Float64Array(flowKinds.length);
    const report = stepDay(one, evening, flows, day);
    const moist = moistureFactor(availableShare(evening.water, waterSizes(one.soil, lowerDepth)));
    return { before, flows, report, moist };
  });
}

describe('laws of weather, any bed', () => {
  test('without rain and watering nothing is washed out: exactly 0', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const dry: BedSeason = {
          ...bed,
          keptMoist: false,
          events: bed.events.filter((one) => one.kind !== 'water'),
          weather: { ...bed.weather, rainMillimetres: new Float64Array(daysOf(bed)) },
        };
        expect(moved(runSeason(dry), '*', 'leached')).toBe(0);
      }),
      lawRuns,
    );
  });

  test('at -5 C all year nothing decays, nothing is released, no ammonia leaves: exactly 0', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { rainMillimetres } = bed.weather;
        const weather = { ...steadyWeather(daysOf(bed), -5, -5), rainMillimetres };
        const result = runSeason({ ...bed, weather });
        flowKinds.forEach(({ why }, flow) => {
          if (livingReasons.has(why))
            expect(result.flows[flow]!.every((grams) => grams === 0)).toBe(true);
        });
      }),
      lawRuns,
    );
  });

  test('the words above are words of flows', () => {
    const words = new Set<string>(flowKinds.map(({ why }) => why));
    for (const reason of livingReasons) expect(words).toContain(reason);
  });

  test('at equal nitrate more drainage never takes a smaller share', () => {
    const millimetres = fc.double({ min: 0, max: 400, noNaN: true });
    fc.assert(
      fc.property(
        millimetres,
        millimetres,
        fc.double({ min: 10, max: 400, noNaN: true }),
        (a, b, full) => {
          const [less, more] = [Math.min(a, b), Math.max(a, b)];
          expect(leachedShare(more, full)).toBeGreaterThanOrEqual(leachedShare(less, full));
          expect(leachedShare(more, full)).toBeLessThanOrEqual(1);
        },
      ),
      lawRuns,
    );
    const rain = fc.double({ min: 0.1, max: 120, noNaN: true });
    fc.assert(
      fc.property(anyBed, fc.integer({ min: 5, max: 190 }), rain, (bed, day, extra) => {
        const [less, more] = fork(bed, day, (weather) => (weather.rainMillimetres[day]! += extra));
        const drained = (one: typeof less) => ({
          lower: one!.flows[leachedFlow]! / one!.before[poolIndex.mineralLower]!,
          top:
            one!.flows[downFlow]! /
            (one!.before[poolIndex.mineralTop]! - one!.flows[denitrifiedFlow]!),
        });
        expect(more!.report.drainageTop).toBeGreaterThanOrEqual(less!.report.drainageTop - 1e-9);
        if (!(less!.before[poolIndex.mineralTop]! > 1e-6)) return;
        if (!(less!.before[poolIndex.mineralLower]! > 1e-6)) return;
        expect(drained(more).lower).toBeGreaterThanOrEqual(drained(less).lower - 1e-12);
        expect(drained(more).top).toBeGreaterThanOrEqual(drained(less).top - 1e-12);
      }),
      lawRuns,
    );
  });

  test('without watering and with no loss from wet soil, rain added to a day never lowers what is washed out', () => {
    const rain = fc.double({ min: 0.1, max: 120, noNaN: true });
    const sealed = (bed: BedSeason): BedSeason => ({
      ...bed,
      keptMoist: false,
      events: bed.events.filter(({ kind }) => kind !== 'water'),
      coefficients: { ...bed.coefficients, denitrifiedShare: 0 },
    });
    // on that day, whatever grows, lies and rots there
    fc.assert(
      fc.property(anyBed, fc.integer({ min: 5, max: 190 }), rain, (bed, day, extra) => {
        const [less, more] = fork(
          sealed(bed),
          day,
          (weather) => (weather.rainMillimetres[day]! += extra),
        );
        expect(more!.flows[leachedFlow]!).toBeGreaterThanOrEqual(less!.flows[leachedFlow]! - 1e-12);
      }),
      lawRuns,
    );
    // and to the end of any run in which nothing holds nitrogen back for itself
    fc.assert(
      fc.property(anyBed, fc.integer({ min: 5, max: 190 }), rain, (made, day, extra) => {
        const bed = { ...sealed(made), plantings: [], layers: [] };
        const rainMillimetres = bed.weather.rainMillimetres.slice();
        rainMillimetres[day]! += extra;
        const wetter = { ...bed, weather: { ...bed.weather, rainMillimetres } };
        const washed = (one: BedSeason) => moved(runSeason(one), 'mineralLower', 'leached');
        expect(washed(wetter)).toBeGreaterThanOrEqual(washed(bed) - 1e-9);
      }),
      { ...lawRuns, numRuns: 200 },
    );
  });

  test('at equal moisture a colder day is never more normalised days', () => {
    const celsius = fc.double({ min: -40, max: 45, noNaN: true });
    fc.assert(
      fc.property(celsius, celsius, (a, b) => {
        expect(temperatureFactor(Math.min(a, b))).toBeLessThanOrEqual(
          temperatureFactor(Math.max(a, b)),
        );
        expect(temperatureFactor(a)).toBeGreaterThanOrEqual(0);
      }),
      lawRuns,
    );
    const colder = fc.double({ min: 0.01, max: 25, noNaN: true });
    fc.assert(
      fc.property(anyBed, fc.integer({ min: 0, max: 190 }), colder, (bed, day, drop) => {
        const [warm, cold] = fork(bed, day, (weather) => {
          weather.minimumCelsius[day]! -= drop;
          weather.maximumCelsius[day]! -= drop;
        });
        expect(cold!.report.soilNormalisedDay / cold!.moist).toBeLessThanOrEqual(
          warm!.report.soilNormalisedDay / warm!.moist + 1e-12,
        );
      }),
      lawRuns,
    );
  });

  test('no day knows what comes after it: other weather, layers and events ahead change nothing before', () => {
    fc.assert(
      fc.property(anyBed, anyBed, fc.integer({ min: 12, max: 190 }), (bed, ahead, day) => {
        const last = bed.firstDay + day;
        const spliced = (own: Float64Array, other: Float64Array): Float64Array =>
          own.map((value, at) => (at <= day ? value : (other[at] ?? value)));
        const { weather } = bed;
        const changed: BedSeason = {
          ...bed,
          weather: {
            kind: weather.kind,
            minimumCelsius: spliced(weather.minimumCelsius, ahead.weather.minimumCelsius),
            maximumCelsius: spliced(weather.maximumCelsius, ahead.weather.maximumCelsius),
            rainMillimetres: spliced(weather.rainMillimetres, ahead.weather.rainMillimetres),
          },
          layers: [
            ...bed.layers.filter((one) => one.day <= last),
            ...ahead.layers
              .filter((one) => one.day > last)
              .map((one) => ({ ...one, id: `${one.id} ahead` })),
          ],
          // Picking is the one entry that reaches back: logged picks stand for all picks to today.
          events: [
            ...bed.events.filter((one) => one.day <= last || one.kind === 'harvest'),
            ...ahead.events.filter((one) => one.day > last && one.kind !== 'harvest'),
          ],
        };
        const [own, other] = [runSeason(bed), runSeason(changed)];
        for (const pool of pools)
          for (let at = 0; at <= day; at++)
            if (own.pools[pool][at] !== other.pools[pool][at])
              throw new Error(`${pool} differs on day ${at}`);
      }),
      lawRuns,
    );
  });
});
