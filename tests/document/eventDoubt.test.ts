import { describe, expect, test } from 'vitest';
import { metricUnits } from '../../app/amounts/unitSystem';
import { eventDoubt } from '../../app/document/eventDoubt';
import { sampleText } from '../../app/document/sampleGarden';
import { parseGarden } from '../../app/document/parse';
import { cropOf } from '../../app/tables/crops';
import { eventDoubtSentence } from '../../app/words/eventDoubtWords';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('the sample does not open');
const garden = parsed.value;
const planting = garden.plantings.find(({ cropId }) => cropId === 'tomato')!;
const bed = garden.beds.find(({ id }) => id === planting.bedId)!;
// twice the high end of the crop's own row is the line (ours)
const most = 2 * cropOf('tomato')!.goodYield.high * bed.areaM2 * planting.share;
const pick = (kilograms: number) =>
  ({
    kind: 'harvest',
    date: '2013-06-15',
    bedId: bed.id,
    plantingId: planting.id,
    kilograms,
  }) as const;
const water = (millimetres: number) =>
  ({ kind: 'water', date: '2013-06-15', bedId: bed.id, millimetres }) as const;

describe('what is hardly believable is asked about', () => {
  test('a pick past twice the best of its row, earlier picks counted', () => {
    expect(eventDoubt(garden, pick(most * 0.99), null)).toBeNull();
    expect(eventDoubt(garden, pick(most * 1.01), null)).toMatchObject({ kind: 'harvest' });
    const picked = { ...garden, events: [{ ...pick(most * 0.6), id: 'event-x' }] };
    expect(eventDoubt(picked, pick(most * 0.6), null)).not.toBeNull();
    // the one being changed is not counted twice
    expect(eventDoubt(picked, pick(most * 0.6), 'event-x')).toBeNull();
  });

  test('500 kg of tomatoes in words', () => {
    const doubt = eventDoubt(garden, pick(500), null)!;
    expect(eventDoubtSentence(doubt, metricUnits)).toMatch(/kg.*tomato.*Check the number/);
  });

  test('over 60 mm of water at once, and no less', () => {
    expect(eventDoubt(garden, water(60), null)).toBeNull();
    expect(eventDoubt(garden, water(210), null)).toEqual({ kind: 'water', millimetres: 210 });
  });
});
