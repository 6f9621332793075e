import { describe, expect, test } from 'vitest';
import { arrivalOf, leastArrival } from '../../../app/core/season/arrival';
import { runSeason } from '../../../app/core/season/season';
import { watchedOf } from '../../../app/core/season/watchedSeason';
import { dayOf } from '../../../app/core/days';
import { parseGarden } from '../../../app/document/parse';
import { sampleText } from '../../../app/document/sampleGarden';
import type { Application } from '../../../app/document/schema';
import { bedSeason } from '../../../app/document/seasonInput';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('no sample');
const garden = parsed.value;
const today = dayOf('2013-06-15');
const end = dayOf('2013-12-31');

const layer = (litres: number, over: Partial<Application> = {}): Application => ({
  id: 'thought-1',
  date: '2013-06-15',
  bedId: 'bed-far',
  from: { source: 'elsewhere', materialId: 'grass-fresh-generic' },
  amount: { text: `${litres} L`, quantity: { kind: 'volume', litres }, certainty: 'plain' },
  condition: 'limp',
  wetness: 'dry',
  placement: 'laid',
  mixtureId: null,
  passedStops: [],
  ...over,
});
const run = (layers: readonly Application[] = []) =>
  runSeason(bedSeason(garden, 'bed-far', today, { extraApplications: layers }));
const before = run();

describe('when what a layer holds arrives', () => {
  test('half of it is in the soil before all of it, and after it was laid', () => {
    const arrival = arrivalOf(before, run([layer(90)]), end)!;
    expect(arrival.grams).toBeGreaterThan(1);
    expect(arrival.halfBy).toBeGreaterThan(today);
    expect(arrival.halfBy).toBeLessThan(end);
  });

  test('dug in it arrives sooner than laid on, and laid a week later it arrives later', () => {
    const laid = arrivalOf(before, run([layer(90)]), end)!;
    const dug = arrivalOf(before, run([layer(90, { placement: 'dug' })]), end)!;
    const later = arrivalOf(before, run([layer(90, { date: '2013-06-22' })]), end)!;
    expect(dug.halfBy).toBeLessThan(laid.halfBy);
    expect(later.halfBy).toBeGreaterThan(laid.halfBy);
  });

  test('looking past the end of the run is looking to its end, and that day counts', () => {
    const after = run([layer(90)]);
    expect(arrivalOf(before, after, end + 400)).toEqual(arrivalOf(before, after, end));
    const twoMonths = today + 60;
    const sum = (result: typeof before) => {
      let free = 0;
      const watched = watchedOf(result);
      for (let day = today; day <= twoMonths; day++)
        free += watched.released[day - result.firstDay]! - watched.tiedUp[day - result.firstDay]!;
      return free;
    };
    const { grams } = arrivalOf(before, after, twoMonths)!;
    expect(grams).toBeCloseTo(sum(after) - sum(before), 12);
  });

  test('the shorter one looks ahead, the less has come', () => {
    const after = run([layer(90)]);
    const soon = arrivalOf(before, after, today + 30)!;
    expect(soon.grams).toBeLessThan(arrivalOf(before, after, end)!.grams);
    expect(soon.halfBy).toBeLessThanOrEqual(today + 30);
  });

  test('nothing, next to nothing, and what takes more than it brings, never arrive', () => {
    expect(arrivalOf(before, before, end)).toBeNull();
    expect(arrivalOf(before, run([layer(0.5)]), end)).toBeNull();
    const straw = layer(300, {
      from: { source: 'elsewhere', materialId: 'straw-wheat' },
      condition: 'crisp',
      placement: 'dug',
    });
    expect(arrivalOf(before, run([straw]), today + 60)).toBeNull();
    expect(leastArrival).toBeGreaterThan(0);
  });
});
