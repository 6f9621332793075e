import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import { pools } from '../../../app/core/season/flows';
import type { BedSeason } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import { beanCrop, clippings, compost, fruitingCrop, planted, straw } from '../season/handMadeBed';
import { newYorkBed } from '../season/newYork2013';
import { integrateBed } from './simpleBed';

const day = (text: string): number => dayOf(`2013-${text}`);
const mown = ['05-20', '05-27', '06-03', '06-17', '07-01', '08-12'].map((date, at) =>
  clippings(day(date), 4 + 5 * at, { nitrogen: 40 * 0.05 * (4 + 5 * at) }),
);

/** The measured weather of New York in 2013, frost and cloudbursts included. */
const beds: readonly (readonly [string, BedSeason])[] = [
  ['bare ground', newYorkBed()],
  ['a cover of clippings and straw', newYorkBed({ layers: [...mown, straw(day('06-10'), 60)] })],
  [
    'compost on top and dug in, clippings hoed and straw dug in',
    newYorkBed({
      layers: [
        compost(day('04-01'), 8),
        compost(day('04-02'), 10, { placement: 'dug', mineralShare: 0.1 }),
        clippings(day('05-10'), 12, { placement: 'hoed' }),
        straw(day('05-12'), 90, { placement: 'dug' }),
        straw(day('05-14'), 5, { placement: 'dug', nitrogen: 4, carbon: 80 }),
      ],
      seasonStarts: [day('09-01')],
    }),
  ],
  [
    'manure and meal on top and dug in, raked and dug',
    newYorkBed({
      layers: [
        compost(day('04-03'), 12, { slowKind: 'manure', mineralShare: 0.2 }),
        compost(day('04-03'), 9, { slowKind: 'manure', placement: 'dug' }),
        compost(day('04-20'), 2, { slowKind: 'meal', slowShare: 0.6 }),
        compost(day('05-20'), 3, { slowKind: 'meal', slowShare: 0.6, placement: 'hoed' }),
        compost(day('06-20'), 8, { slowKind: 'manure', mineralShare: 0.2 }),
        clippings(day('06-20'), 12),
      ],
      events: [
        { kind: 'rake off', day: day('04-06'), share: 0.3 },
        { kind: 'dig cover in', day: day('05-02'), share: 0.4 },
      ],
    }),
  ],
  [
    'straw on top and straw dug in, both starving, beside clippings',
    newYorkBed({
      soil: { ...newYorkBed().soil, organicMatterPercent: 1, startingMineralTop: 0.5 },
      layers: [
        straw(day('05-01'), 150),
        straw(day('05-02'), 120, { placement: 'dug' }),
        straw(day('05-03'), 80, { placement: 'dug', nitrogen: 24, carbon: 1280 }),
        clippings(day('05-20'), 6),
        clippings(day('05-20'), 6, { placement: 'dug', nitrogen: 18 }),
      ],
    }),
  ],
  [
    'a fruiting crop over clippings, its tops dug in',
    newYorkBed({
      layers: mown,
      plantings: [planted(fruitingCrop, day('05-15'), { topsFate: 'dug in' })],
    }),
  ],
  [
    'beans over clippings, raked and dug in twice, watered',
    newYorkBed({
      layers: [...mown, compost(day('05-01'), 6), straw(day('06-02'), 40)],
      plantings: [planted(beanCrop, day('05-18'))],
      events: [
        { kind: 'rake off', day: day('06-10'), share: 0.3 },
        { kind: 'dig cover in', day: day('06-25'), share: 0.4 },
        { kind: 'rake off', day: day('06-25'), share: 0.2 },
        { kind: 'water', day: day('07-16'), depth: 9 },
        { kind: 'water', day: day('07-16'), depth: 4 },
        { kind: 'rake off', day: day('08-20'), share: 0.5 },
        { kind: 'dig cover in', day: day('10-20'), share: 1 },
      ],
      seasonStarts: [day('11-10')],
    }),
  ],
  [
    'a crop over two turns of the season: the second layer deepens, stays and is given up',
    newYorkBed({
      layers: mown,
      plantings: [planted(fruitingCrop, day('05-15'), { clearingDay: day('08-25') })],
      seasonStarts: [day('05-01'), day('07-15'), day('09-20')],
    }),
  ],
  [
    'beans on poor soil, their tops dug in',
    newYorkBed({
      soil: { ...newYorkBed().soil, organicMatterPercent: 1, startingMineralTop: 1 },
      plantings: [planted(beanCrop, day('05-18'), { topsFate: 'dug in' })],
    }),
  ],
  [
    'beans without nodules',
    newYorkBed({ plantings: [planted(beanCrop, day('05-18'), { nodulesSeen: false })] }),
  ],
  [
    'a hungry crop on poor soil',
    newYorkBed({
      soil: { ...newYorkBed().soil, organicMatterPercent: 1.2, startingMineralTop: 1 },
      plantings: [planted(fruitingCrop, day('05-15'))],
    }),
  ],
];

describe('a season against an integration written anew, every pool on every day', () => {
  test.each(beds)('%s: to 1e-6 g/m2', (_name, bed) => {
    const ours = runSeason(bed);
    expect(ours.residual).toBeLessThan(1e-9);
    const theirs = integrateBed(bed);
    for (const pool of pools) {
      let worst = 0;
      let on = 0;
      theirs[pool].forEach((grams, index) => {
        const off = Math.abs(grams - ours.pools[pool][index]!);
        if (!(off <= worst)) [worst, on] = [off, index];
      });
      expect(theirs[pool]).toHaveLength(ours.days);
      expect({ pool, on, off: worst < 1e-6 ? 0 : worst }).toEqual({ pool, on, off: 0 });
    }
  });

  test('the beds hold something in every pool', () => {
    const held = new Set(
      beds.flatMap(([, bed]) => {
        const result = runSeason(bed);
        return pools.filter((pool) => result.pools[pool].some((grams) => grams > 0.01));
      }),
    );
    expect([...held].toSorted()).toEqual([...pools].toSorted());
  });
});
