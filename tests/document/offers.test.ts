// Something that somebody offers: what it brings, and who may have it when. The rules are those of
// every layer (7 CFR 205.203 for raw manure; weedkiller carry-over: North Carolina State).
import { describe, expect, test } from 'vitest';
import sampleText from '../../assets/gardens/sample.mowings?raw';
import { dayOf } from '../../app/core/days';
import { answerProposal } from '../../app/core/season/bedAnswer';
import { judgeOffer, offerQuestion, stockOfOffer, type Offer } from '../../app/document/offers';
import { parseGarden } from '../../app/document/parse';
import type { Garden } from '../../app/document/schema';
import { cropOf } from '../../app/tables/crops';
import { materialRows } from '../../app/tables/materials';
import { mineralsOf, offerMineralRows } from '../../app/tables/offerMinerals';
import { limits } from '../../app/tables/thresholds';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
const sample = parsed.value;
const today = dayOf('2013-06-15');
const offered = (changes: Partial<Offer>): Offer => ({
  materialId: 'hay-grass',
  amount: { text: '20 kg', quantity: { kind: 'mass', kilograms: 20 }, certainty: 'plain' },
  origin: 'neighbour',
  treatment: { answer: 'nothing' },
  ...changes,
});
const weigh = (offer: Offer, garden: Garden = sample) =>
  judgeOffer(
    garden,
    offer,
    offerQuestion(garden, offer, today).beds.map((bed) => answerProposal(bed, limits)),
    today,
  );
const cropsOn = (bedId: string) =>
  sample.plantings
    .filter(({ bedId: on, cleared }) => on === bedId && (cleared ?? '9') > '2013-06-15')
    .map(({ cropId }) => cropOf(cropId)!);
// a column of the crop table: beans, peas, tomatoes and others that a trace deforms
const isSensitive = (bedId: string): boolean =>
  cropsOn(bedId).some(({ weedkillerSensitive }) => weedkillerSensitive);
const sensitiveBeds = sample.beds.filter(({ id }) => isSensitive(id));
const isFlowers = (bedId: string): boolean =>
  cropsOn(bedId).length > 0 &&
  cropsOn(bedId).every(({ excessClass }) => excessClass === 'flower' || excessClass === 'cover');

describe('hay', () => {
  test('of which they know that nothing was sprayed may be taken', () => {
    const { verdict, beds } = weigh(offered({}));
    expect(verdict).toBe('take');
    expect(beds.every(({ time }) => time.may === 'now')).toBe(true);
  });

  test('of which nobody knows is tried on beans first, and goes on no bed of beans this season', () => {
    const { verdict, beds } = weigh(offered({ treatment: { answer: 'unknown' } }));
    expect(verdict).toBe('test first');
    expect(sensitiveBeds.length).toBeGreaterThan(0);
    for (const { id } of sensitiveBeds)
      expect(beds.find(({ bedId }) => bedId === id)?.time).toEqual({
        may: 'from',
        day: dayOf('2014-01-01'),
      });
    expect(beds.some(({ time }) => time.may === 'after the test')).toBe(true);
    for (const { bedId, time } of beds)
      if (!isSensitive(bedId)) expect(time.may).toBe(isFlowers(bedId) ? 'now' : 'after the test');
  });

  test('that passed the test goes on beds without beans, and still not on beans', () => {
    const { verdict, beds } = weigh(
      offered({ treatment: { answer: 'unknown', beanTestPassed: '2013-06-10' } }),
    );
    expect(verdict).toBe('take');
    for (const { bedId, time } of beds) expect(time.may).toBe(isSensitive(bedId) ? 'from' : 'now');
  });

  test('whose label forbids it is left', () => {
    const { verdict, beds } = weigh(
      offered({ treatment: { answer: 'treated', label: 'forbids' } }),
    );
    expect(verdict).toBe('no');
    expect(beds.every(({ time }) => time.may === 'not this season')).toBe(true);
  });

  test('holds its weight times its nitrogen: 20 kg of hay is some 17 kg dry and 250 g of nitrogen', () => {
    const { contents } = weigh(offered({}));
    const row = materialRows.find(({ id }) => id === 'hay-grass')!;
    expect(contents.dryKilograms.typical).toBeLessThan(20);
    expect(contents.nitrogen.typical).toBeCloseTo(
      contents.dryKilograms.typical * 10 * row.nitrogenPercent.typical,
      6,
    );
    expect(contents.readyNitrogen).toBeNull();
    for (const range of [contents.phosphorus, contents.potassium, contents.salts]) {
      expect(range.low).toBeLessThan(range.typical);
      expect(range.high).toBeGreaterThan(range.typical);
    }
    expect(contents.salts.typical).toBeGreaterThan(contents.potassium.typical);
  });
});

describe('raw manure', () => {
  const manure = offered({ materialId: 'manure-cow-fresh', treatment: { answer: 'nothing' } });

  test('waits on every food bed until the picking is over (120 and 90 days)', () => {
    const { beds, contents } = weigh(manure);
    const food = beds.filter(({ bedId }) => !isFlowers(bedId));
    expect(food.length).toBeGreaterThan(2);
    const inside = food.filter(({ cautions }) =>
      cautions.some(({ kind, weight }) => kind === 'raw manure' && weight === 'stop'),
    );
    expect(inside.length).toBeGreaterThan(2);
    for (const { time } of inside) {
      expect(time.may).toBe('from');
      if (time.may === 'from') expect(time.day).toBeGreaterThan(today);
    }
    expect(contents.readyNitrogen!.typical).toBeLessThan(contents.nitrogen.typical);
  });
});

test('what is taken becomes a store with the answer it came with', () => {
  const offer = offered({ treatment: { answer: 'unknown' } });
  expect(stockOfOffer(offer, 'Hay of next door', today)).toEqual({
    name: 'Hay of next door',
    materialId: 'hay-grass',
    role: 'store',
    amount: offer.amount,
    date: '2013-06-15',
    treatment: { answer: 'unknown' },
    hazards: ['bought in'],
  });
  const own = stockOfOffer({ ...offer, origin: 'own ground' }, 'Hay', today);
  expect(own).not.toHaveProperty('hazards');
});

test('weighing an offer leaves the garden as it was', () => {
  const before = JSON.stringify(sample);
  weigh(offered({ treatment: { answer: 'unknown' } }));
  expect(JSON.stringify(sample)).toBe(before);
});

test('every material has its minerals, marked as recalled', () => {
  for (const { id } of materialRows) expect(mineralsOf(id)).toBeDefined();
  for (const kind of offerMineralRows)
    for (const { low, typical, high, standing } of Object.values(kind)) {
      expect(low).toBeGreaterThan(0);
      expect(typical).toBeGreaterThan(low);
      expect(high).toBeGreaterThan(typical);
      expect(standing).toBe('memory');
    }
});
