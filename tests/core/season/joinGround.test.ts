import { describe, expect, test } from 'vitest';
import { remnant } from '../../../app/core/cover/leftOver';
import { crumb } from '../../../app/core/cover/residueClass';
import { dayOf, type DayNumber } from '../../../app/core/days';
import type { BedState } from '../../../app/core/season/bedState';
import { stepDay } from '../../../app/core/season/day';
import { flowKinds, pools, type Pool } from '../../../app/core/season/flows';
import type { BedSeason, GroundInput } from '../../../app/core/season/input';
import { lowerDepthFor } from '../../../app/core/season/runPlan';
import { startingState } from '../../../app/core/season/startingState';
import { poolIndex } from '../../../app/core/season/ways';
import {
  bareBed,
  beanCrop,
  clippings,
  compost,
  firstOf2013,
  fruitingCrop,
  newYorkNormals,
  normalYear,
  planted,
  straw,
} from './handMadeBed';

const may = dayOf('2013-05-10');
const made = dayOf('2013-07-20');
const lastDay = dayOf('2013-12-31');

/** A bed on its first morning, or after some days of its run. */
function after(bed: BedSeason, days = 0): BedState {
  const state = startingState(bed, lowerDepthFor(bed));
  for (let index = 0; index < days; index++)
    stepDay(bed, state, new Float64Array(flowKinds.length), index);
  return state;
}
/** A ground's own run, as it is on the evening before the new bed's first day. */
const evening = (input: BedSeason): BedState => after(input, input.lastDay - input.firstDay + 1);
const from = (first: DayNumber, last: DayNumber): Partial<BedSeason> => ({
  firstDay: first,
  lastDay: last,
  today: last,
  weather: normalYear(newYorkNormals, first, last - first + 1),
});

const fruit = planted(fruitingCrop, may, {
  id: 'fruit',
  share: 0.6,
  topsFate: 'left',
});
const beans = planted(beanCrop, may, { id: 'beans', share: 0.4 });
const layers = [
  clippings(may + 20, 25),
  clippings(made - 3, 30),
  straw(may + 30, 40),
  compost(may - 5, 20),
  clippings(may + 5, 10, { id: 'dug', placement: 'dug' }),
  compost(made - 40, 10, { id: 'dug compost', placement: 'dug' }),
  compost(made - 9, 2, { id: 'meal', slowKind: 'meal', slowShare: 0.6 }),
  compost(made - 8, 2, { id: 'dug meal', slowKind: 'meal', slowShare: 0.6, placement: 'dug' }),
  compost(made - 2, 5, { id: 'manure', slowKind: 'manure', mineralShare: 0.3 }),
];
const laterOn = clippings(made + 10, 20);
const whole = bareBed({
  ...from(firstOf2013, lastDay),
  plantings: [fruit, beans],
  layers: [...layers, laterOn],
  events: [{ kind: 'water', day: made - 1, depth: 12 }],
});
const before = bareBed({
  ...from(firstOf2013, made - 1),
  plantings: [fruit, beans],
  layers,
  events: whole.events,
});
const bare = bareBed({
  ...from(firstOf2013, made - 1),
  layers: [straw(may, 60), compost(may, 30)],
});

const ground = (input: BedSeason, share: number, more: Partial<GroundInput> = {}): GroundInput => ({
  input,
  share,
  plants: [],
  ...more,
});
const madeOf = (grounds: readonly GroundInput[], over: Partial<BedSeason> = {}): BedSeason =>
  bareBed({ ...from(made, lastDay), ground: grounds, ...over });

const sums = (state: BedState) => ({
  residue: state.classes.reduce((all, item) => all + item.residue, 0),
  microbes: state.classes.reduce((all, item) => all + item.microbes, 0),
  humus: state.classes.reduce((all, item) => all + item.humus, 0),
  lyingDry: state.classes.reduce((all, item) => all + item.lyingDry, 0),
});
const slowOf = ({ slow: { lyingFactor: _ofTheDay, ...held } }: BedState) => held;
const gramsOf = (plant: BedState['plantings'][number] | undefined) => {
  const { nitrogen, crown, needSoFar, metSoFar, harvested, removed, left, fixed, uptake, luxury } =
    plant!;
  return { nitrogen, crown, needSoFar, metSoFar, harvested, removed, left, fixed, uptake, luxury };
};
type Numbers = Readonly<Record<string, number>>;
/** `sum share x part`, key by key, to 12 digits. */
function expectMean(of: Numbers, parts: readonly (readonly [number, Numbers])[]): void {
  for (const [key, value] of Object.entries(of)) {
    const wanted = parts.reduce((all, [share, part]) => all + share * part[key]!, 0);
    expect(Math.abs(value - wanted), key).toBeLessThanOrEqual(
      1e-12 * Math.max(1, Math.abs(wanted)),
    );
  }
}

/** The whole of a ground goes on, with both its plants. */
const goneOn = (input: BedSeason): BedSeason => ({
  ...madeOf(
    [
      ground(input, 1, {
        plants: [
          { from: 'fruit', to: 'fruit', factor: 1 },
          { from: 'beans', to: 'beans', factor: 1 },
        ],
      }),
    ],
    { plantings: [fruit, beans], layers: [laterOn] },
  ),
  soil: input.soil,
});
/** So little in the ground, and straw on it, that what is wanted is owed. */
const lean: Pick<BedSeason, 'soil' | 'layers'> = {
  soil: { ...whole.soil, organicMatterPercent: 0.3, startingMineralTop: 0 },
  layers: [straw(may + 30, 40)],
};

describe('a bed made of one ground, whole', () => {
  const bed = goneOn(before);

  test.each([
    ['well fed', before],
    ['on lean ground, its hungry plants with what they are owed', { ...before, ...lean }],
  ])('goes on as if nothing had been cut: %s', (name, eve) => {
    const uncut = { ...whole, soil: eve.soil, layers: [...eve.layers, laterOn] };
    const cut = goneOn(eve);
    const one = after(uncut, made - firstOf2013);
    const other = after(cut);
    const owed = one.plantings[0]!.arrears.reduce((all, unmet) => all + unmet, 0);
    expect(owed > 0.1, `${name}: ${owed}`).toBe(eve !== before);
    for (let day = made; day <= lastDay; day++) {
      for (const pool of pools)
        expect(other.nitrogen[poolIndex[pool]], `${pool} ${day}`).toBeCloseTo(
          one.nitrogen[poolIndex[pool]]!,
          9,
        );
      expect(other.water.top).toBeCloseTo(one.water.top, 9);
      expect(other.water.lower).toBeCloseTo(one.water.lower, 9);
      expect(other.water.cover).toBeCloseTo(one.water.cover, 9);
      expect(other.soilCelsius).toBeCloseTo(one.soilCelsius, 9);
      one.plantings.forEach((plant, at) => {
        expectMean(gramsOf(other.plantings[at]), [[1, gramsOf(plant)]]);
        expect(other.plantings[at]!.progress).toBeCloseTo(plant.progress, 12);
        expect(other.plantings[at]!.rootDepth).toBeCloseTo(plant.rootDepth, 9);
        expect(other.plantings[at]!.standing).toBe(plant.standing);
      });
      stepDay(uncut, one, new Float64Array(flowKinds.length), day - firstOf2013);
      stepDay(cut, other, new Float64Array(flowKinds.length), day - made);
    }
    expect(other.plantings[0]!.left).toBeGreaterThan(0.5);
  });

  test('its layers lie as they did, each with the class it rots in', () => {
    const lying = (state: BedState) =>
      state.layers
        .filter(({ left }) => left > 0)
        .map(({ id, left, dryKgPerM2, settled, item }) => ({
          id,
          left,
          dryKgPerM2,
          settled,
          residue: item?.residue ?? null,
          isOfTheBed: item === null || state.classes.includes(item),
        }));
    expect(lying(after(bed))).toEqual(lying(evening(before)));
    expect(lying(after(bed)).length).toBeGreaterThanOrEqual(4);
  });
});

describe('a bed made of two grounds', () => {
  const factor = 0.25;
  const parts = [
    ground(before, 0.25, { plants: [{ from: 'fruit', to: 'kept', factor }] }),
    ground(bare, 0.75),
  ];
  const bed = madeOf(parts, { plantings: [{ ...fruit, id: 'kept', share: 0.15 }] });
  const [one, other] = [evening(before), evening(bare)];
  const state = after(bed);

  test('holds by area what they held: a quarter of the one and three of the other', () => {
    for (const pool of pools.filter((name) => name !== 'crop' && name !== 'mineralLower'))
      expect(state.nitrogen[poolIndex[pool]], pool).toBeCloseTo(
        0.25 * one.nitrogen[poolIndex[pool]]! + 0.75 * other.nitrogen[poolIndex[pool]]!,
        11,
      );
    expectMean(sums(state), [
      [0.25, sums(one)],
      [0.75, sums(other)],
    ]);
    expectMean(slowOf(state), [
      [0.25, slowOf(one)],
      [0.75, slowOf(other)],
    ]);
    expectMean({ ...state.ammonia }, [
      [0.25, { ...one.ammonia }],
      [0.75, { ...other.ammonia }],
    ]);
    for (const [store, grams] of Object.entries({ ...one.ammonia, ...slowOf(one) }))
      expect(grams, store).toBeGreaterThan(0);
    expect(state.soilCelsius).toBeCloseTo(0.25 * one.soilCelsius + 0.75 * other.soilCelsius, 11);
    expect(state.water.cover).toBeCloseTo(0.25 * one.water.cover + 0.75 * other.water.cover, 11);
  });

  test('the plant that goes on has its part of all it had; the one that does not is gone', () => {
    expectMean(gramsOf(state.plantings[0]), [[factor, gramsOf(one.plantings[0])]]);
    expect(one.plantings[0]!.uptake).toBeGreaterThan(1);
    const hungry = { ...before, ...lean };
    const owing = after({ ...bed, ground: [{ ...parts[0]!, input: hungry }, parts[1]!] });
    const owed = evening(hungry).plantings[0]!.arrears;
    expect(Math.max(...owed)).toBeGreaterThan(0);
    expect(owing.plantings[0]!.arrears).toEqual(owed.map((unmet) => factor * unmet));
    expect(state.nitrogen[poolIndex.crop]).toBeCloseTo(factor * one.plantings[0]!.nitrogen, 12);
    expect(state.plantings).toHaveLength(1);
  });

  test('a layer lies as much thinner as the bed is larger', () => {
    const ofGround = new Map(
      [one, other].flatMap(({ layers: lying }, at) =>
        lying.map((layer) => [layer.id, { share: at === 0 ? 0.25 : 0.75, layer }] as const),
      ),
    );
    expect(state.layers.length).toBeGreaterThanOrEqual(5);
    for (const { id, dryKgPerM2, left } of state.layers) {
      const was = ofGround.get(id)!;
      expect(dryKgPerM2).toBeCloseTo(was.share * was.layer.dryKgPerM2, 12);
      expect(left).toBe(was.layer.left);
    }
  });

  test('soil water goes by how full the layers were', () => {
    const fill = (of: BedState) => [
      of.water.top / of.sizes.topFull,
      of.water.lower / of.sizes.lowerFull,
    ];
    fill(state).forEach((share, at) =>
      expect(share).toBeCloseTo(0.25 * fill(one)[at]! + 0.75 * fill(other)[at]!, 11),
    );
    expect(fill(one)[0]).toBeLessThan(0.99);
  });

  test('nitrate of the lower layer goes by its depth in each ground', () => {
    const deep = (of: BedState) => of.nitrogen[poolIndex.mineralLower]! / of.lowerDepth;
    expect(one.lowerDepth).not.toBe(other.lowerDepth);
    expect(deep(state)).toBeCloseTo(0.25 * deep(one) + 0.75 * deep(other), 12);
  });
});

describe('what was done to one ground’s cover on that morning', () => {
  const held = (state: BedState, pool: Pool) => state.nitrogen[poolIndex[pool]]!;
  const bedAfter = (morning?: GroundInput['morning']) =>
    after(madeOf([ground(before, 0.5, morning ? { morning } : {}), ground(bare, 0.5)]));
  const plain = bedAfter();
  const [one, other] = [evening(before), evening(bare)];

  test('raked off by half: half of its residue, none of the other’s', () => {
    const raked = bedAfter([{ kind: 'rake off', day: made, share: 0.5 }]);
    expect(held(raked, 'coverResidue')).toBeCloseTo(
      0.25 * held(one, 'coverResidue') + 0.5 * held(other, 'coverResidue'),
      11,
    );
    expect(held(raked, 'dugResidue')).toBeCloseTo(held(plain, 'dugResidue'), 11);
  });

  test('dug in whole: its residue is below, and nothing is lost', () => {
    const dug = bedAfter([{ kind: 'dig cover in', day: made, share: 1 }]);
    expect(held(dug, 'coverResidue')).toBeCloseTo(0.5 * held(other, 'coverResidue'), 11);
    expect(held(dug, 'dugResidue') + held(dug, 'coverResidue')).toBeCloseTo(
      held(plain, 'dugResidue') + held(plain, 'coverResidue'),
      11,
    );
  });
});

describe('the lower layer of a bed made of grounds', () => {
  const depthOf = (...inputs: readonly BedSeason[]) =>
    lowerDepthFor(madeOf(inputs.map((input) => ground(input, 1 / inputs.length))));

  // 30 cm at least; roots of 80 cm go 50 below the top 30
  test('goes no less deep than the deepest of them, though nothing deep goes on', () => {
    expect(depthOf(bare)).toBe(300);
    expect(depthOf(before)).toBe(500);
    expect(depthOf(bare, before)).toBe(500);
    expect(depthOf(before, bare)).toBe(500);
  });

  test('is that of a ground’s last season: what was deep in an earlier one is over', () => {
    const turn = dayOf('2013-06-01');
    const deepTill = (clearingDay: DayNumber): BedSeason => ({
      ...before,
      seasonStarts: [turn],
      plantings: [{ ...fruit, startDay: may, clearingDay }],
    });
    expect(depthOf(deepTill(turn - 5))).toBe(300);
    expect(depthOf(deepTill(turn + 5))).toBe(500);
  });
});

describe('what a ground’s earlier season left', () => {
  const turn = dayOf('2013-06-25');
  const long = bareBed({
    ...from(firstOf2013, made - 1),
    seasonStarts: [turn],
    layers: [
      straw(may, 60),
      straw(may, 20, { id: 'other straw', nitrogen: 6 }),
      clippings(may, 9),
      clippings(turn + 9, 9, { nitrogen: 12 }),
    ],
  });

  test('stays that in the new bed: eaten whole as early as it would have been', () => {
    const crumbs = (state: BedState) => state.classes.map((item) => item.crumb).sort();
    const ofGround = crumbs(evening(long));
    expect(new Set(ofGround)).toEqual(new Set([crumb, remnant]));
    expect(crumbs(after(madeOf([ground(long, 1)])))).toEqual(ofGround);
    const isLeftOver = (state: BedState) => state.classes.map((item) => item.isLeftOver);
    expect(isLeftOver(after(madeOf([ground(long, 1)])))).toEqual(isLeftOver(evening(long)));
    expect(isLeftOver(evening(long))).toContain(true);
  });
});
