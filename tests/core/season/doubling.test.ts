import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAmount } from '../../../app/amounts/readAmount';
import { readMeasure } from '../../../app/amounts/readMeasure';
import { dayOf } from '../../../app/core/days';
import { answerBed } from '../../../app/core/season/bedAnswer';
import { flowKinds, pools } from '../../../app/core/season/flows';
import type { SeasonResult } from '../../../app/core/season/result';
import { runSeason } from '../../../app/core/season/season';
import { bedQuestion } from '../../../app/document/bedQuestion';
import { parseGarden } from '../../../app/document/parse';
import { sampleText } from '../../../app/document/sampleGarden';
import type { Amount, Garden, Quantity } from '../../../app/document/schema';
import { bedSeason } from '../../../app/document/seasonInput';
import { limits } from '../../../app/tables/thresholds';
import { metricGarden, usGarden } from '../../amounts/gardens';
import { anyBed, lawRuns } from './anyBed';

/* Issue 3, "Laws": doubling area and material; lb and kg, in and mm one answer. */

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('no sample');
const sample: Garden = parsed.value;
const today = dayOf('2013-07-20');

/** Largest difference of any pool or flow on any day [g N per m2]. */
function difference(one: SeasonResult, other: SeasonResult): number {
  let most = 0;
  const compare = (a: Float64Array, b: Float64Array): void =>
    a.forEach((grams, day) => (most = Math.max(most, Math.abs(grams - b[day]!))));
  expect(one.days).toBe(other.days);
  for (const pool of pools) compare(one.pools[pool], other.pools[pool]);
  flowKinds.forEach((_kind, flow) => compare(one.flows[flow]!, other.flows[flow]!));
  return most;
}

/** As much again; a depth is one already, whatever the area. */
function twice(quantity: Quantity): Quantity {
  switch (quantity.kind) {
    case 'volume':
      return { ...quantity, litres: 2 * quantity.litres };
    case 'mass':
      return { ...quantity, kilograms: 2 * quantity.kilograms };
    case 'containers':
      return { ...quantity, count: 2 * quantity.count };
    case 'mown':
      return { ...quantity, areaM2: 2 * quantity.areaM2 };
    case 'depth':
      return quantity;
  }
}
const twiceOf = (amount: Amount): Amount => ({ ...amount, quantity: twice(amount.quantity) });

/** Twice the ground, the grass, what was laid and what was picked. */
const doubled: Garden = {
  ...sample,
  lawns: sample.lawns.map((lawn) => ({ ...lawn, areaM2: 2 * lawn.areaM2 })),
  beds: sample.beds.map((bed) => ({ ...bed, areaM2: 2 * bed.areaM2 })),
  mowings: sample.mowings.map((one) => ({ ...one, amount: twiceOf(one.amount) })),
  applications: sample.applications.map((one) => ({ ...one, amount: twiceOf(one.amount) })),
  events: sample.events.map((event) =>
    event.kind === 'harvest' ? { ...event, kilograms: 2 * event.kilograms } : event,
  ),
};

describe('twice the ground and twice the stuff', () => {
  test('any bed: per square metre its area changes not one bit', () => {
    const area = fc.double({ min: 0.1, max: 500, noNaN: true });
    fc.assert(
      fc.property(anyBed, area, (bed, areaM2) => {
        expect(difference(runSeason(bed), runSeason({ ...bed, areaM2 }))).toBe(0);
      }),
      { ...lawRuns, numRuns: 100 },
    );
  });

  test.each(sample.beds.map(({ id }) => id))('%s of the sample, from what was typed', (id) => {
    const [one, two] = [bedSeason(sample, id, today), bedSeason(doubled, id, today)];
    expect(two.areaM2).toBeCloseTo(2 * one.areaM2, 12);
    expect(two.layers).toHaveLength(one.layers.length);
    expect(difference(runSeason(one), runSeason(two))).toBeLessThan(1e-10);
    const [said, again] = [sample, doubled].map(
      (garden) => answerBed(bedQuestion(garden, id, today), limits).verdict,
    );
    expect(again!.state).toBe(said!.state);
    if (said!.ratio !== null) expect(again!.ratio).toBeCloseTo(said!.ratio, 9);
  });

  test('twice the stuff on the same ground is another bed', () => {
    const richer: Garden = { ...doubled, beds: sample.beds };
    const id = sample.applications[0]!.bedId;
    const [one, two] = [sample, richer].map((garden) => runSeason(bedSeason(garden, id, today)));
    expect(difference(one!, two!)).toBeGreaterThan(0.1);
  });
});

describe('pounds and kilograms, inches and millimetres', () => {
  const amountOf = (text: string, context: typeof metricGarden): Amount => {
    const read = readAmount(text, 'layer', context);
    if (!read.ok) throw new Error(text);
    return { ...read.value.amount };
  };
  const withLayer = (amount: Amount): SeasonResult => {
    const [first] = sample.applications;
    const garden = { ...sample, applications: [{ ...first!, amount }] };
    return runSeason(bedSeason(garden, first!.bedId, today));
  };

  // international yard and pound agreement of 1959: 1 lb = 0.45359237 kg, 1 in = 25.4 mm
  test.each([
    ['10 lb', '4.5359237 kg'],
    ['1/2 in', '12.7 mm'],
    ['20 gal', '75.70823568 L'],
  ])('%s and %s are one season', (us, metric) => {
    const [one, other] = [
      withLayer(amountOf(us, usGarden)),
      withLayer(amountOf(metric, metricGarden)),
    ];
    expect(difference(one, other)).toBeLessThan(1e-9);
    const laid = (season: SeasonResult): number =>
      flowKinds.reduce(
        (sum, { from }, flow) =>
          from === 'applied' ? sum + season.flows[flow]!.reduce((a, b) => a + b, 0) : sum,
        0,
      );
    expect(laid(one)).toBeGreaterThan(1);
  });

  test('an inch of watering is 25.4 mm of it', () => {
    const read = (text: string, context: typeof metricGarden): number => {
      const reading = readMeasure(text, 'rain', context);
      if (!reading.ok) throw new Error(text);
      return Number(Object.values(reading.value).find((value) => typeof value === 'number'));
    };
    expect(read('1 in', usGarden)).toBeCloseTo(read('25.4 mm', metricGarden), 9);
    expect(read('1 in', usGarden)).toBeCloseTo(25.4, 9);
  });
});
