import { describe, expect, test } from 'vitest';
import type { BedEvent, LayerInput } from '../../../app/core/season/input';
import { sameDayEventOrder, sameDayOrder } from '../../../app/core/season/sameDay';
import { runSeason } from '../../../app/core/season/season';
import { bareBed, clippings, compost, firstOf2013, straw } from './handMadeBed';

const day = firstOf2013 + 150;
const rake = (share: number): BedEvent => ({ kind: 'rake off', day, share });
const dig = (share: number): BedEvent => ({ kind: 'dig cover in', day, share });
const water = (depth: number): BedEvent => ({ kind: 'water', day, depth });
const pick = (kilogramsPerM2: number): BedEvent => ({
  kind: 'harvest',
  day,
  plantingId: 'p',
  kilogramsPerM2,
});

/** Every order in which a list can stand. */
const orders = <Entry>(list: readonly Entry[]): Entry[][] =>
  list.length < 2
    ? [[...list]]
    : list.flatMap((one, at) => orders(list.toSpliced(at, 1)).map((rest) => [one, ...rest]));

describe('entries of one day', () => {
  test('rake off, dig in, water, pick; of each the smaller first, however the file has them', () => {
    const sorted = [rake(0.2), rake(0.9), dig(0.5), water(3), water(20), pick(0.4)];
    for (const mixed of orders(sorted)) expect(mixed.sort(sameDayEventOrder)).toEqual(sorted);
    const twice = [water(1), water(7), pick(1), pick(7), dig(0.1), dig(0.7)];
    for (const mixed of orders(twice))
      expect(mixed.sort(sameDayEventOrder)).toEqual([
        dig(0.1),
        dig(0.7),
        water(1),
        water(7),
        pick(1),
        pick(7),
      ]);
  });

  test('layers by what they are and only then by name', () => {
    const known = [
      clippings(day, 5, { id: 'b', placement: 'dug' }),
      clippings(day, 5, { id: 'c', condition: 'crisp' }),
      clippings(day, 5, { id: 'a', condition: 'limp' }),
      clippings(day, 5, { id: 'a', condition: 'limp', nitrogen: 7 }),
      compost(day, 5, { id: 'a' }),
      compost(day, 5, { id: 'd' }),
      straw(day, 5, { id: 'a' }),
    ];
    const sorted = known.toSorted(sameDayOrder);
    for (const mixed of orders(known)) expect(mixed.sort(sameDayOrder)).toEqual(sorted);
    const first = (id: string): LayerInput => compost(day, 5, { id });
    expect(sameDayOrder(first('a'), first('b'))).toBe(-1);
    expect(sameDayOrder(first('b'), first('a'))).toBe(1);
    expect(sameDayOrder(first('a'), first('a'))).toBe(0);
    expect(sameDayOrder(clippings(day, 5, { id: 'z' }), straw(day, 5, { id: 'a' }))).toBe(-1);
    // 1.2 and 34 must not read like 1.23 and 4
    const parted = straw(day, 5, { nitrogen: 1.2, carbon: 34, id: 'x' });
    const other = straw(day, 5, { nitrogen: 1.23, carbon: 4, id: 'x' });
    expect(sameDayOrder(parted, other)).not.toBe(0);
  });

  test('a bed comes out the same to the last bit, whatever the order of its file', () => {
    const layers = [
      clippings(day, 9, { id: 'b' }),
      clippings(day, 4, { id: 'a' }),
      straw(day, 30, { id: 'c', placement: 'dug' }),
      compost(day, 3, { id: 'd' }),
    ];
    const early = [clippings(day - 30, 20, { id: 'early' })];
    const events = [water(9), rake(0.3), dig(0.4), water(0.7), rake(0.1)];
    const run = (one: LayerInput[], other: BedEvent[]): string =>
      JSON.stringify(
        runSeason(bareBed({ layers: [...early, ...one], events: other })).flows.map((flow) => [
          ...flow,
        ]),
      );
    const first = run(layers, events);
    expect(run(layers.toReversed(), events.toReversed())).toBe(first);
    expect(
      run(
        [layers[2]!, layers[0]!, layers[3]!, layers[1]!],
        [3, 0, 4, 2, 1].map((at) => events[at]!),
      ),
    ).toBe(first);
  });

  test('what is entered for the last day of a run is still done', () => {
    const lastDay = day;
    const bed = bareBed({
      lastDay,
      layers: [clippings(day - 40, 20), clippings(day, 10, { id: 'last' })],
      events: [rake(1)],
    });
    const { layers } = runSeason(bed);
    expect(layers[0]!.left.at(-1)).toBe(0);
    expect(layers[1]!.left.at(-1)).toBeGreaterThan(0.9);
  });
});
