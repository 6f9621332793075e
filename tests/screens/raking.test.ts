// Raking cover off and carrying it on: what the dialogs reckon must be what the engine does.
import { describe, expect, test } from 'vitest';
import sampleText from '../../assets/gardens/sample.mowings?raw';
import { dryLyingBefore, partOfTaken, takenOff, topLayer } from '../../app/screens/beds/raking';
import type { Raking } from '../../app/screens/beds/raking';
import { dayOf } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { bedLedger } from '../../app/core/season/ledger';
import { joinBeds } from '../../app/document/bedChanges/joinBeds';
import { splitBed } from '../../app/document/bedChanges/splitBed';
import { bedQuestion } from '../../app/document/bedQuestion';
import { massOf } from '../../app/document/layerMass';
import { materialOfApplication } from '../../app/document/materialValues';
import { parseGarden } from '../../app/document/parse';
import type { Garden } from '../../app/document/schema';
import { limits } from '../../app/tables/thresholds';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
const sample = parsed.value;
const today = dayOf('2013-06-15');
const gate = sample.beds.find(({ name }) => name === 'Gate bed')!;
const results = (garden: Garden) => answerBed(bedQuestion(garden, gate.id, today), limits);
const raking = (share: number, id = 'r1', date = '2013-06-15'): Raking => ({
  kind: 'rake off',
  id,
  date,
  bedId: gate.id,
  share,
});
const raked = (...events: Raking[]): Garden => ({
  ...sample,
  events: [...sample.events, ...events],
});

describe('the top layer', () => {
  const before = results(sample);
  const top = topLayer(sample, before, today)!;

  test('is the one laid last: 9 June (sampleMowings.ts)', () => {
    expect(top.laidOn).toBe('2013-06-09');
    expect(top.share).toBeGreaterThan(0.1);
    expect(top.share).toBeLessThan(0.5);
  });

  test('raked off by its share, as much dry weight is gone as lay in it', () => {
    const layer = sample.applications.find(
      ({ bedId, date }) => bedId === gate.id && date === top.laidOn,
    )!;
    const input = before.input.layers.find(({ id }) => id === layer.id)!;
    const left = before.season.layers.find(({ id }) => id === layer.id)!.left;
    const index = today - 1 - before.season.firstDay;
    const lay = input.dryKgPerM2 * left[index]!;
    expect(dryLyingBefore(before, today) * top.share).toBeCloseTo(lay, 12);
    const garden = raked(raking(top.share));
    const taken = takenOff(garden, gate, results(garden), raking(top.share))!;
    expect(taken.dryKilograms).toBeCloseTo(lay * gate.areaM2, 9);
    expect(taken.material.row.id).toMatch(/^grass-/);
  });

  test('an answer of before the raking, or of another share, is not taken for this one', () => {
    const now = raked(raking(0.5));
    expect(takenOff(now, gate, before, raking(0.5))).toBeNull();
    expect(takenOff(now, gate, results(raked(raking(0.25))), raking(0.5))).toBeNull();
    expect(takenOff(now, gate, results(now), raking(0.5))?.nitrogenGrams).toBeGreaterThan(0);
  });

  test('nothing lies, nothing on top', () => {
    const bare = { ...sample, applications: [] };
    expect(topLayer(bare, results(bare), today)).toBeNull();
  });
});

describe('what came off', () => {
  test('holds the nitrogen that the ledger says was taken from the bed', () => {
    const garden = raked(raking(0.5));
    const after = results(garden);
    const taken = takenOff(garden, gate, after, raking(0.5))!;
    const held = (answer: typeof after): number =>
      Object.values(answer.season.pools).reduce(
        (sum, pool) => sum + pool[today - answer.season.firstDay]!,
        0,
      );
    // the bed holds less by as much on that evening, but for what would have left by itself that day
    const less = held(results(sample)) - held(after);
    expect(taken.nitrogenGrams / gate.areaM2).toBeGreaterThan(less * 0.97);
    expect(taken.nitrogenGrams / gate.areaM2).toBeLessThan(less * 1.03);
  });

  test('two rakings of one day share what went', () => {
    const first = raking(0.5, 'r1');
    const second = raking(0.5, 'r2');
    const garden = raked(first, second);
    const after = results(garden);
    const one = takenOff(garden, gate, after, first)!;
    const two = takenOff(garden, gate, after, second)!;
    expect(two.dryKilograms).toBeCloseTo(one.dryKilograms / 2, 9);
    expect(two.nitrogenGrams).toBeCloseTo(one.nitrogenGrams / 2, 9);
    const went = bedLedger(after.season, today, today).wentOut.find(
      ({ key }) => key === 'raked off',
    )!.gM2;
    expect(one.nitrogenGrams + two.nitrogenGrams).toBeCloseTo(went * gate.areaM2, 9);
  });

  test('carried on, it lies there with the same dry weight and nitrogen', () => {
    const garden = raked(raking(0.5));
    const taken = takenOff(garden, gate, results(garden), raking(0.5))!;
    const part = partOfTaken(garden, taken, (kilograms) => `${kilograms} kg`)!;
    const material = materialOfApplication(garden, part);
    const mass = massOf(garden, part.amount.quantity, material, part, gate.areaM2);
    expect(mass.dryKilograms).toBeCloseTo(taken.dryKilograms, 6);
    expect(mass.dryKilograms * 1000 * material.nitrogen).toBeCloseTo(taken.nitrogenGrams, 4);
  });

  test('from a lawn that is held back, it says so', () => {
    const lawnId = sample.lawns.find(({ name }) => name === 'Back lawn')!.id;
    const treated: Garden = {
      ...raked(raking(0.5)),
      lawns: sample.lawns.map((lawn) =>
        lawn.id === lawnId
          ? {
              ...lawn,
              treatment: {
                answer: 'treated',
                product: 'weed killer',
                date: '2013-04-01',
                label: 'forbids',
              },
            }
          : lawn,
      ),
    };
    expect(takenOff(treated, gate, results(treated), raking(0.5))!.heldBack).toEqual(['Back lawn']);
    expect(
      takenOff(raked(raking(0.5)), gate, results(raked(raking(0.5))), raking(0.5))!.heldBack,
    ).toEqual([]);
  });
});

describe('of a bed that was split', () => {
  // a law of ours: the halves lie under what the whole lay under, and no number is from outside
  const split = (on: string) => {
    const names = ['One half', 'Other half'] as const;
    const made = splitBed(sample, { bedId: gate.id, on, names, firstShare: 0.5, plants: {} }, on);
    if (!made.ok) throw new Error(made.error.kind);
    const { garden, bedIds } = made.value;
    const id = bedIds[0]!;
    return { garden, bed: garden.beds.find((one) => one.id === id)! };
  };
  const answer = (garden: Garden, bedId: string, day: number) =>
    answerBed(bedQuestion(garden, bedId, day), limits);

  test.each(['2013-06-15', '2013-06-20'])(
    'the layers of the whole can be raked off a half, day %s',
    (date) => {
      const day = dayOf(date);
      const { garden, bed } = split('2013-06-15');
      const on = { ...raking(0.5, 'r2', date), bedId: bed.id };
      const half = answer(garden, bed.id, day);
      const was = answer(sample, gate.id, day);
      expect(dryLyingBefore(half, day)).toBeCloseTo(dryLyingBefore(was, day), 2);
      expect(topLayer(garden, half, day)!.laidOn).toBe(topLayer(sample, was, day)!.laidOn);
      expect(topLayer(garden, half, day)!.share).toBeCloseTo(topLayer(sample, was, day)!.share, 2);
      const after = { ...garden, events: [...garden.events, on] };
      const taken = takenOff(after, bed, answer(after, bed.id, day), on)!;
      const all = raked({ ...on, bedId: gate.id });
      const ofWhole = takenOff(all, gate, answer(all, gate.id, day), { ...on, bedId: gate.id })!;
      expect(taken.dryKilograms / ofWhole.dryKilograms).toBeCloseTo(0.5, 2);
      expect(taken.nitrogenGrams / ofWhole.nitrogenGrams).toBeCloseTo(0.5, 2);
      expect(taken.material.row.id).toBe(ofWhole.material.row.id);
    },
  );
});

test('of a bed joined that day, what was raked off one of them first is no longer there', () => {
  const on = '2013-06-15';
  const day = dayOf(on);
  const squash = sample.beds.find(({ name }) => name === 'Squash hill')!;
  const joined = (garden: Garden) => {
    const made = joinBeds(garden, [gate.id, squash.id], on, 'Joined', on);
    if (!made.ok) throw new Error(made.error.kind);
    const bed = made.value.garden.beds.find(({ id }) => id === made.value.bedIds[0])!;
    const now = (more: Garden) => answerBed(bedQuestion(more, bed.id, day), limits);
    return { garden: made.value.garden, bed, now };
  };
  const whole = joined(sample);
  const half = joined(raked(raking(0.5)));
  const lay = (one: ReturnType<typeof joined>) =>
    dryLyingBefore(one.now(one.garden), day) * one.bed.areaM2;
  // a law of ours: what went is half of what lay on the one of them
  const onGate = dryLyingBefore(results(sample), day) * gate.areaM2;
  expect(lay(whole) - lay(half)).toBeCloseTo(onGate / 2, 1);
  const again: Raking = { ...raking(0.5, 'r2'), bedId: half.bed.id };
  const after = { ...half.garden, events: [...half.garden.events, again] };
  const taken = takenOff(after, half.bed, half.now(after), again)!;
  const first = takenOff(raked(raking(0.5)), gate, results(raked(raking(0.5))), raking(0.5))!;
  const both: Raking = { ...raking(0.5, 'r3'), bedId: whole.bed.id };
  const all = { ...whole.garden, events: [...whole.garden.events, both] };
  const ofWhole = takenOff(all, whole.bed, whole.now(all), both)!;
  // half of all, less half of what half of it was on the one; nearly so, for of microbes and humus
  // raking takes a small share, and the second finds more of them than half
  const wanted = ofWhole.nitrogenGrams - first.nitrogenGrams / 2;
  expect(taken.nitrogenGrams / wanted).toBeGreaterThan(1);
  expect(taken.nitrogenGrams / wanted).toBeLessThan(1.05);
});
