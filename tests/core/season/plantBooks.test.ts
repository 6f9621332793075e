import { describe, expect, test } from 'vitest';
import type { BedState } from '../../../app/core/season/bedState';
import { startingState } from '../../../app/core/season/startingState';
import { lowerDepthFor } from '../../../app/core/season/runPlan';
import { advancePlants, feedPlants, harvestPlants } from '../../../app/core/season/dayPlants';
import { flowIndex, flowKinds } from '../../../app/core/season/flows';
import type { BedEvent, BedSeason, PlantingInput } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import { set, warm } from './firstDay';
import { bareBed, beanCrop, firstOf2013, fruitingCrop, moved, planted } from './handMadeBed';

/*
 * The steps of a plant's day one by one: what it asks of the water (FAO-56 chapters 7 and 10 and the
 * model's canopy), what it takes, what its own books say of it. The crops are those of
 * `handMadeBed.ts`; 20 C on every day is ten degree-days above their base.
 */

interface Day {
  readonly state: BedState;
  readonly flows: Float64Array;
  readonly flow: (...way: Parameters<typeof flowIndex>) => number;
}

const bedWith = (plantings: readonly PlantingInput[], over: Partial<BedSeason> = {}): BedSeason =>
  bareBed({ weather: warm(3), plantings, ...over });

/** The plants' part of a bed's first day; the soil holds what it is given. */
function plantsOn(
  bed: BedSeason,
  morning: (state: BedState) => void = () => {},
  celsius = 20,
  events: readonly BedEvent[] = [],
): Day {
  const state = startingState(bed, lowerDepthFor(bed));
  const flows = new Float64Array(flowKinds.length);
  state.day.mean = celsius;
  morning(state);
  advancePlants(state, bed.firstDay, state.coefficients);
  feedPlants(state, flows, bed.firstDay, state.coefficients);
  harvestPlants(bed, state, flows, events, bed.firstDay);
  return { state, flows, flow: (...way) => flows[flowIndex(...way)]! };
}

const standingToEnd = { clearingDay: null, usualEndDay: firstOf2013 + 130 } as const;
const fruit = planted(fruitingCrop, firstOf2013, standingToEnd);
const bean = planted(beanCrop, firstOf2013, standingToEnd);

describe('what the plants of a bed ask of its water', () => {
  const asked = (...plantings: readonly PlantingInput[]): BedState['canopy'] =>
    plantsOn(bedWith(plantings)).state.canopy;

  test('an empty bed: the bare soil coefficient of 0.6, nobody to water', () => {
    expect(asked()).toEqual({
      isPlanted: false,
      transpiration: 0,
      evaporation: 0.6,
      canopy: 0,
      reach: 0,
      depletionShare: 0.5,
    });
  });

  test('a planting that comes later counts as nobody yet', () => {
    expect(asked({ ...fruit, startDay: firstOf2013 + 1 }).isPlanted).toBe(false);
  });

  test('half a bed of a crop in its middle stage', () => {
    // Kc 1.15; shade 0.9; under it 0.6 (1 - 0.9) + 0.07 x 0.9 = 0.123 evaporates
    const half = asked({ ...fruit, share: 0.5, normalDegreeDays: 10 / 0.6 });
    expect(half.isPlanted).toBe(true);
    expect(half.evaporation).toBeCloseTo(0.5 * 0.6 + 0.5 * 0.123, 12);
    expect(half.transpiration).toBeCloseTo(0.5 * (1.15 - 0.123), 12);
    expect(half.canopy).toBeCloseTo(0.45, 12);
    expect(half.reach).toBeCloseTo(1, 12);
    expect(half.depletionShare).toBeCloseTo(0.4, 12);
  });

  test('shares of a bed and a half are brought back to one bed', () => {
    // 0.6 and 0.9 of a bed count 0.4 and 0.6 of it; at their start both stand in bare soil, which gives
    // off 0.6 under the one (Kc 0.6) and under the other (0.5) alike
    const crowd = asked(
      { ...fruit, share: 0.6, normalDegreeDays: 1000 },
      { ...bean, share: 0.9, normalDegreeDays: 1000 },
    );
    expect(crowd.evaporation).toBeCloseTo(0.6, 12);
    expect(crowd.depletionShare).toBeCloseTo((0.6 * 0.4 + 0.9 * 0.45) / 1.5, 12);
    const middle = asked(
      { ...fruit, share: 0.6, normalDegreeDays: 10 / 0.6 },
      { ...fruit, id: 'second', share: 0.9, normalDegreeDays: 10 / 0.6 },
    );
    expect(middle.canopy).toBeCloseTo(0.9, 12);
    expect(middle.evaporation).toBeCloseTo(0.123, 12);
  });

  test('exactly a whole bed leaves no bare soil', () => {
    const whole = asked(
      { ...fruit, share: 0.5, normalDegreeDays: 10 / 0.6 },
      { ...fruit, id: 'second', share: 0.5, normalDegreeDays: 10 / 0.6 },
    );
    expect(whole.evaporation).toBeCloseTo(0.123, 12);
    expect(whole.canopy).toBeCloseTo(0.9, 12);
  });
});

describe('when a planting stands', () => {
  const stands = (changes: Partial<PlantingInput>): boolean =>
    plantsOn(bedWith([{ ...fruit, ...changes }])).state.plantings[0]!.standing;

  test('without a day of clearing it stays', () => {
    expect(stands({ clearingDay: null })).toBe(true);
    const result = runSeason(bedWith([fruit]));
    expect(result.plantings[0]!.clearingDay).toBeNull();
    expect(result.pools.crop.at(-1)).toBeGreaterThan(1);
  });

  test('it was cleared yesterday, or comes tomorrow: not here', () => {
    const before = { startDay: firstOf2013 - 50 };
    expect(stands({ ...before, clearingDay: firstOf2013 - 1 })).toBe(false);
    expect(stands({ startDay: firstOf2013 + 1 })).toBe(false);
  });

  test('on its last day it still wants, and goes in the evening', () => {
    const last = { ...fruit, startDay: firstOf2013 - 50, clearingDay: firstOf2013 };
    const [plant] = plantsOn(bedWith([{ ...last, normalDegreeDays: 10 }])).state.plantings;
    expect(plant!.needSoFar).toBeCloseTo(fruitingCrop.need, 9);
    expect(plant!.standing).toBe(false);
    expect(plant!.clearedOn).toBe(firstOf2013);
  });

  test('one whose usual days hold no warmth at all is at its end at once, in any weather', () => {
    for (const celsius of [-5, 20]) {
      const bed = bedWith([{ ...fruit, normalDegreeDays: 0 }]);
      const [plant] = plantsOn(bed, undefined, celsius).state.plantings;
      expect(plant!.progress).toBe(1);
      expect(plant!.needSoFar).toBeCloseTo(fruitingCrop.need, 9);
    }
  });
});

describe('what a plant takes', () => {
  /** A legume long past its nodulation wants `need` today; the top layer holds `ready`. */
  function legumeDay(need: number, ready: number): Day {
    const crop = { ...beanCrop, need };
    const bed = bedWith([{ ...bean, crop, startDay: firstOf2013 - 40, normalDegreeDays: 10 }]);
    return plantsOn(bed, (state) => {
      set(state, 'mineralTop', ready);
      set(state, 'mineralLower', 0);
      // seven of its ten degree-days come today
      state.day.mean = 17;
    });
  }
  /** what the curve wants by seven tenths of its clock: (g(0.7) - g(0))/(g(1) - g(0)), k 8, x50 0.7 */
  const g = (x: number): number => 1 / (1 + Math.exp(-8 * (x - 0.7)));
  const wanted = (g(0.7) - g(0)) / (g(1) - g(0));

  test('a legume covers what the soil cannot give, and no more than that', () => {
    // usual share 0.42 less nitrate 2 g over the podding limit 4.08; the soil gives 0.1 (2 - 0.4)
    const need = 0.25 / wanted;
    const { flow } = legumeDay(need, 2);
    const usual = 0.42 * (1 - 2 / 4.08) * 0.25;
    expect(0.25 - usual).toBeGreaterThan(0.16);
    expect(flow('mineralTop', 'crop', 'taken up')).toBeCloseTo(0.16, 9);
    // the gap of 0.0365 lies under the highest share of 0.6: the need is met to the gram
    expect(0.25 - 0.16).toBeLessThan(0.6 * 0.25);
    expect(flow('air', 'crop', 'fixed')).toBeCloseTo(0.25 - 0.16, 9);
  });

  test('a legume that finds all it asks for fixes its usual share', () => {
    const { flow } = legumeDay(0.1 / wanted, 2);
    const usual = 0.42 * (1 - 2 / 4.08) * 0.1;
    expect(flow('air', 'crop', 'fixed')).toBeCloseTo(usual, 9);
    expect(flow('mineralTop', 'crop', 'taken up')).toBeCloseTo(0.1 - usual, 9);
    expect(flow('mineralTop', 'crop', 'luxury')).toBe(0);
  });

  test('the plant’s own books are the sums of its flows', () => {
    const rich = { ...bareBed().soil, startingMineralTop: 25 };
    const bed = bedWith([{ ...fruit, share: 0.7 }], { soil: rich });
    const result = runSeason(bed);
    const [plant] = result.plantings;
    const luxury = moved(result, '*', 'crop', 'luxury');
    expect(luxury).toBeGreaterThan(0.1);
    expect(plant!.luxury).toBeCloseTo(luxury, 9);
    expect(plant!.uptake).toBeCloseTo(moved(result, '*', 'crop', 'taken up') + luxury, 9);
    expect(plant!.fixed).toBe(0);
    expect(plant!.dailyUptake.reduce((sum, one) => sum + one, 0)).toBeCloseTo(plant!.uptake, 9);
  });
});

describe('picking', () => {
  const start = firstOf2013;
  const picks = (plantings: readonly PlantingInput[], over: Partial<BedSeason> = {}) => {
    const result = runSeason(
      bedWith(plantings, { soil: { ...bareBed().soil, startingMineralTop: 15 }, ...over }),
    );
    return { result, byDay: result.flows[flowIndex('crop', 'harvested', 'picked')]! };
  };
  const grown = { normalDegreeDays: 10 * 60, firstHarvestDay: start + 70 } as const;

  test('is spread evenly from the first pick to the clearing, by share and by need met', () => {
    const { result, byDay } = picks([
      { ...fruit, ...grown, share: 0.5, clearingDay: start + 89, usualEndDay: start + 80 },
    ]);
    const { demandMet } = result.plantings[0]!;
    // after 60 days the plant wants nothing more, so what it met stands
    expect(demandMet).toBeGreaterThan(0.3);
    expect(byDay[69]).toBe(0);
    // 9.8 g/m2 of planted ground over the 20 days to the clearing, on half a bed
    for (const at of [70, 80, 85, 89])
      expect(byDay[at]).toBeCloseTo((9.8 * 0.5 * demandMet) / 20, 9);
    expect(byDay[90]).toBe(0);
  });

  test('ends with the usual end where nobody said when it will be cleared', () => {
    const { byDay } = picks([{ ...fruit, ...grown, clearingDay: null, usualEndDay: start + 80 }]);
    expect(byDay[80]).toBeGreaterThan(0);
    expect(byDay[81]).toBe(0);
  });

  test('a pick on one planting is not a pick on its neighbour', () => {
    const day = start + 60;
    const one = { ...fruit, ...grown, id: 'one', share: 0.5, ...standingToEnd };
    const { result } = picks([one, { ...one, id: 'other' }], {
      today: start + 364,
      events: [{ kind: 'harvest', day, plantingId: 'one', kilogramsPerM2: 0.2 }],
    });
    const [picked, left] = result.plantings;
    expect(picked!.harvested).toBeCloseTo(0.2 * 1.4, 9);
    // nothing was logged on the other: its picks are spread from its own first day on
    const spreadOver = 130 - 70 + 1;
    expect(left!.harvested).toBeCloseTo((left!.demandMet * 9.8 * 0.5 * spreadOver) / spreadOver, 9);
  });

  test('pick after pick never takes more than nine tenths of all that grew', () => {
    const big = (day: number): BedEvent => ({
      kind: 'harvest',
      day,
      plantingId: 'fruit',
      kilogramsPerM2: 50,
    });
    const { result } = picks([{ ...fruit, ...grown }], {
      events: [big(start + 65), big(start + 66), big(start + 67)],
    });
    const [plant] = result.plantings;
    expect(plant!.harvested).toBeCloseTo(0.9 * plant!.uptake, 9);
  });
});

describe('clearing', () => {
  const clearing = firstOf2013 + 90;
  const tomato = { ...fruit, clearingDay: clearing, usualEndDay: clearing, normalDegreeDays: 800 };

  test.each(['taken away', 'left', 'dug in', 'pulled with roots'] as const)(
    'tops %s: what was taken up is what was picked, carried off and left',
    (topsFate) => {
      const [plant] = runSeason(bedWith([{ ...tomato, topsFate }])).plantings;
      const grew = plant!.uptake + plant!.fixed;
      expect(grew).toBeGreaterThan(1);
      expect(plant!.removed + plant!.left).toBeCloseTo(grew, 9);
      const roots = 0.15 * grew;
      const left = {
        'taken away': roots,
        left: grew - plant!.harvested,
        'dug in': grew - plant!.harvested,
        'pulled with roots': 0,
      }[topsFate];
      expect(plant!.left).toBeCloseTo(left, 9);
    },
  );

  test('tops left lie on the bed: 42 % carbon at the crop’s C:N, as loose as straw', () => {
    const result = runSeason(bedWith([{ ...tomato, topsFate: 'left' }]));
    const at = clearing - firstOf2013;
    const nitrogen = moved(result, 'crop', 'coverResidue', 'tops left');
    const dry = (nitrogen * 17) / 0.42 / 1000;
    expect(dry).toBeGreaterThan(0.05);
    expect(result.coverDryKg[at - 1]).toBe(0);
    expect(result.coverDryKg[at]).toBeCloseTo(dry, 9);
    // 40 kg of dry matter in a cubic metre
    expect(result.coverDepth[at]).toBeCloseTo((1000 * dry) / 40, 9);
    // and hide the ground from the next day on: 1 - e^(-5 kg), before they have rotted to speak of
    expect(result.coverFraction[at - 1]).toBe(0);
    expect(result.coverFraction[at + 1]! / (1 - Math.exp(-5 * dry))).toBeGreaterThan(0.97);
    expect(result.coverFraction[at + 1]! / (1 - Math.exp(-5 * dry))).toBeLessThanOrEqual(1);
    expect(result.coverDryKg.at(-1)).toBeLessThan(0.6 * dry);
    expect(result.residual).toBeLessThan(1e-9);
  });

  test('tops dug in do not lie on the bed', () => {
    const result = runSeason(bedWith([{ ...tomato, topsFate: 'dug in' }]));
    expect(moved(result, 'crop', 'dugResidue', 'tops dug in')).toBeGreaterThan(1);
    expect(Math.max(...result.coverDryKg)).toBe(0);
  });

  // de Ruijter & Huijsmans 2019 (recalled): 0.40 x g N per kg - 5.08 % of a residue's nitrogen
  test.each([
    ['left', true, 15, 0.4 * 28 - 5.08],
    ['left', true, 35, 0],
    ['left', false, 15, 0],
    ['dug in', true, 15, 0],
  ] as const)(
    'tops %s, green %s, C:N %d: %d %% of their nitrogen may go to the air',
    (topsFate, residueIsGreen, residueCarbonToNitrogen, percent) => {
      const crop = { ...fruitingCrop, residueIsGreen, residueCarbonToNitrogen };
      const today = { ...tomato, crop, clearingDay: firstOf2013, normalDegreeDays: 10 };
      const { state, flow } = plantsOn(bedWith([{ ...today, topsFate }]));
      const tops = flow('crop', 'coverResidue', 'tops left');
      expect(tops > 0).toBe(topsFate === 'left');
      expect(state.ammonia.unripe).toBeCloseTo((percent / 100) * tops, 12);
    },
  );

  test('what the tops lose to the air is no more than they may', () => {
    const crop = { ...fruitingCrop, residueIsGreen: true, residueCarbonToNitrogen: 15 };
    const result = runSeason(bedWith([{ ...tomato, crop, topsFate: 'left' }]));
    const lost = moved(result, 'coverFree', 'ammonia', 'to the air');
    expect(lost).toBeGreaterThan(0);
    expect(lost).toBeLessThanOrEqual(
      ((0.4 * 28 - 5.08) / 100) * moved(result, 'crop', 'coverResidue', 'tops left'),
    );
    expect(result.residual).toBeLessThan(1e-9);
  });

  test.each([
    [true, 'green'],
    [false, 'mature'],
  ] as const)('tops that are green %s rot as %s, at the crop’s own C:N', (residueIsGreen, kind) => {
    const crop = { ...fruitingCrop, residueIsGreen, residueCarbonToNitrogen: 30 };
    const today = { ...tomato, crop, clearingDay: firstOf2013, normalDegreeDays: 10 };
    const { state, flow } = plantsOn(bedWith([{ ...today, topsFate: 'left' }]));
    const tops = state.classes.find((one) => one.placement === 'laid');
    expect(tops!.materialClass).toBe(kind);
    expect(state.layers.map(({ id }) => id)).toEqual(['tops of fruit']);
    expect(tops!.residue).toBeCloseTo(30 * flow('crop', 'coverResidue', 'tops left'), 9);
  });
});
