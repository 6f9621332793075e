import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import { flowIndex } from '../../../app/core/season/flows';
import type { BedSeason } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import { bedVerdict } from '../../../app/core/season/state';
import { limits } from '../../../app/tables/thresholds';
import { moved, steadyWeather } from './handMadeBed';
import { grown, laid, newYorkBed } from './newYork2013';

/*
 * What the design promises of a bed under New York weather of 2013, loam, 3 % organic matter. The
 * lines are the design's own; those with a source name it.
 */
const weekly = (from: string, count: number, millimetres: number) =>
  Array.from({ length: count }, (_none, week) =>
    laid('grass-fresh-generic', dayOf(from) + 7 * week, millimetres),
  );

const tomato = (wanted: 'usual' | 'good') => grown('tomato', '2013-05-18', wanted);
const beans = (wanted: 'usual' | 'good') => grown('snap_bean_pole', '2013-05-20', wanted);

describe('browns', () => {
  const straw = laid('straw-wheat', dayOf('2013-05-18'), 100);

  // Cochran, Elliott & Papendick 1980: straw on the surface left the soil as much nitrogen as none did.
  // Bare ground is left out: without a crop nitrate heaps up, and a thousandth of it a day is more.
  test.each([
    ['tomatoes, usual pick', tomato('usual')],
    ['tomatoes, good yield', tomato('good')],
    ['climbing beans', beans('usual')],
  ])('10 cm of straw laid on costs the soil under 0.5 g/m2 all season: %s', (_name, one) => {
    const result = runSeason(newYorkBed({ plantings: [one], layers: [straw] }));
    const taken = moved(result, 'mineralTop', 'coverMicrobes');
    expect(taken).toBeGreaterThan(0);
    expect(taken).toBeLessThan(0.5);
  });

  test.each(['usual', 'good'] as const)(
    'dug in on planting day it leaves a tomato (%s pick) under a quarter of its need, far less than laid on',
    (wanted) => {
      const run = (placement: 'laid' | 'dug') =>
        runSeason(newYorkBed({ plantings: [tomato(wanted)], layers: [{ ...straw, placement }] }))
          .plantings[0]!.demandMet;
      expect(run('dug')).toBeLessThan(0.25);
      expect(run('dug')).toBeLessThan(run('laid') / 3);
    },
  );
});

describe('climbing beans, unwatered, sown on 20 May', () => {
  const fixedWith = (wanted: 'usual' | 'good', layers: BedSeason['layers']): number =>
    runSeason(newYorkBed({ plantings: [beans(wanted)], layers })).plantings[0]!.fixed;

  test('one just-cut layer of 6 mm at 25 days, good yield: at least 80 % of the fixation is left', () => {
    const bare = fixedWith('good', []);
    expect(bare).toBeGreaterThan(3);
    const fed = fixedWith('good', weekly('2013-06-14', 1, 6));
    expect(fed).toBeGreaterThanOrEqual(0.8 * bare);
    expect(fed).toBeLessThan(bare);
  });

  test('25 mm every week: at most 20 % is left', () => {
    const fed = fixedWith('good', weekly('2013-06-14', 12, 25));
    expect(fed).toBeLessThanOrEqual(0.2 * fixedWith('good', []));
  });

  test('each further layer leaves less', () => {
    const fixed = [0, 1, 2, 3, 4].map((count) => fixedWith('good', weekly('2013-06-14', count, 6)));
    for (let count = 1; count < fixed.length; count++)
      expect(fixed[count]).toBeLessThan(fixed[count - 1]!);
  });

  test.each(['usual', 'good'] as const)('a bare bed (%s pick) is never called short', (wanted) => {
    const bed = newYorkBed({ plantings: [beans(wanted)] });
    const result = runSeason(bed);
    const states = new Set<string>();
    for (let day = dayOf('2013-05-20'); day <= bed.lastDay; day++)
      states.add(bedVerdict(bed, result, day, limits).state);
    expect(states).not.toContain('short');
    expect(states.size).toBeGreaterThan(1);
  });
});

describe('the soil alone', () => {
  test('a bare bed releases 1.0-2.0 % of its organic nitrogen from April to October (Hartz and others 2000)', () => {
    const result = runSeason(newYorkBed());
    const flow = result.flows[flowIndex('soilOrganic', 'mineralTop', 'released by the soil')]!;
    const from = dayOf('2013-04-01') - result.firstDay;
    const to = dayOf('2013-10-31') - result.firstDay;
    const released = flow.slice(from, to + 1).reduce((a, b) => a + b, 0);
    expect(released / result.start.soilOrganic).toBeGreaterThan(0.01);
    expect(released / result.start.soilOrganic).toBeLessThan(0.02);
  });

  test('no rain and no watering: leached is exactly 0', () => {
    const bed = newYorkBed({ plantings: [tomato('usual')], layers: weekly('2013-05-25', 6, 6) });
    const dry = { ...bed.weather, rainMillimetres: new Float64Array(365) };
    expect(moved(runSeason(bed), '*', 'leached')).toBeGreaterThan(1);
    expect(moved(runSeason({ ...bed, weather: dry }), '*', 'leached')).toBe(0);
  });

  test('air at -5 C all year: decay, release and ammonia are exactly 0', () => {
    const bed = newYorkBed({
      layers: [
        ...weekly('2013-05-25', 3, 25),
        laid('straw-wheat', dayOf('2013-04-01'), 100, { placement: 'dug' }),
      ],
    });
    const { rainMillimetres } = bed.weather;
    const weather = { ...steadyWeather(365, -5, -5), rainMillimetres };
    const result = runSeason({ ...bed, weather });
    expect(moved(runSeason(bed), '*', 'ammonia')).toBeGreaterThan(0);
    for (const pool of ['coverResidue', 'dugResidue', 'soilOrganic', 'youngHumus'] as const)
      expect(moved(result, pool, '*')).toBe(0);
    expect(moved(result, '*', 'ammonia')).toBe(0);
  });
});

describe('rain does not clear the name of a bed', () => {
  const today = dayOf('2013-07-20');
  const layers = weekly('2013-05-25', 8, 20);
  const bedWith = (rain: number): BedSeason => {
    const bed = newYorkBed({ plantings: [tomato('usual')], layers, today });
    const rainMillimetres = bed.weather.rainMillimetres.slice();
    rainMillimetres[today - bed.firstDay]! += rain;
    return { ...bed, weather: { ...bed.weather, rainMillimetres } };
  };
  const stateWith = (rain: number, later: number) => {
    const bed = bedWith(rain);
    return bedVerdict(bed, runSeason(bed), today + later, limits).state;
  };

  test('an over-fed tomato bed is over-fed after 100 mm as well, on that day and all the week after', () => {
    expect(stateWith(0, 0)).toBe('over-fed');
    for (let later = 0; later <= 7; later++) expect(stateWith(100, later)).toBe('over-fed');
  });

  test('though the rain washes nitrogen out', () => {
    const [dry, wet] = [0, 100].map((rain) => moved(runSeason(bedWith(rain)), '*', 'leached'));
    expect(wet!).toBeGreaterThan(dry! + 1);
  });
});
