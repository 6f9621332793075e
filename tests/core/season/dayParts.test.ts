import { describe, expect, test } from 'vitest';
import { poolIndex } from '../../../app/core/season/ways';
import { flowIndex, type Pool } from '../../../app/core/season/flows';
import { runSeason } from '../../../app/core/season/season';
import { leachedShare } from '../../../app/core/soil/leaching';
import { temperatureFactor } from '../../../app/core/soil/temperature';
import { firstDayOf, set, warm } from './firstDay';
import { bareBed, clippings, compost, firstOf2013, moved, straw } from './handMadeBed';

describe('order of the day', () => {
  test('the lower layer loses first: nothing that came down today leaves today', () => {
    const { flow } = firstDayOf(bareBed({ weather: warm(60) }), (state) => {
      set(state, 'mineralLower', 0);
      set(state, 'mineralTop', 10);
    });
    expect(flow('mineralTop', 'mineralLower', 'washed down')).toBeGreaterThan(3);
    expect(flow('mineralLower', 'leached', 'washed out')).toBe(0);
  });

  test('what rain, soil and clippings bring today is not washed down today', () => {
    const bed = bareBed({ weather: warm(60), layers: [clippings(firstOf2013, 10)] });
    const { flow } = firstDayOf(bed, (state) => set(state, 'mineralTop', 0));
    expect(flow('rain', 'mineralTop', 'rain')).toBeGreaterThan(0);
    expect(flow('soilOrganic', 'mineralTop', 'released by the soil')).toBeGreaterThan(0);
    expect(flow('coverFree', 'mineralTop', 'washed in')).toBeGreaterThan(0);
    expect(flow('mineralTop', 'mineralLower', 'washed down')).toBe(0);
  });

  test('but what a gardener digs in this morning is', () => {
    const layer = compost(firstOf2013, 20, { placement: 'dug', mineralShare: 0.5 });
    const { flow } = firstDayOf(bareBed({ weather: warm(60), layers: [layer] }), (state) =>
      set(state, 'mineralTop', 0),
    );
    expect(flow('mineralTop', 'mineralLower', 'washed down')).toBeGreaterThan(
      0.4 * layer.nitrogen * 0.5,
    );
  });

  test('wet soil takes its share first, the rest goes down with the drainage', () => {
    const { flow, report, state } = firstDayOf(bareBed({ weather: warm(60) }), (one) =>
      set(one, 'mineralTop', 10),
    );
    const lost = flow('mineralTop', 'denitrified', 'wet soil');
    expect(lost).toBeCloseTo(10 * 0.02 * temperatureFactor(state.soilCelsius), 12);
    const down = (10 - lost) * leachedShare(report.drainageTop, 0.25 * 300);
    expect(flow('mineralTop', 'mineralLower', 'washed down')).toBeCloseTo(down, 12);
  });

  test('under half a millimetre of drainage no nitrogen goes to the air', () => {
    const { flow, report } = firstDayOf(bareBed({ weather: warm(1.2) }));
    expect(report.drainageTop).toBeGreaterThan(0);
    expect(report.drainageTop).toBeLessThan(0.5);
    expect(flow('mineralTop', 'denitrified', 'wet soil')).toBe(0);
  });

  test('rain brings a year’s gram in the measure of a normal year’s rain', () => {
    const bed = bareBed({ weather: warm(10) });
    const normal = bed.normals.rainMillimetres.reduce((a, b) => a + b, 0);
    expect(firstDayOf(bed).flow('rain', 'mineralTop', 'rain')).toBeCloseTo(10 / normal, 12);
  });

  test('raking and digging meet the old cover, what is laid the same day lies on top of it', () => {
    const day = firstOf2013 + 40;
    const bed = bareBed({
      weather: warm(3),
      layers: [clippings(firstOf2013, 10), clippings(day, 10, { id: 'new' })],
      events: [{ kind: 'dig cover in', day, share: 1 }],
    });
    const result = runSeason(bed);
    const [old, fresh] = result.layers;
    expect(old!.left[39]).toBeGreaterThan(0.1);
    expect(old!.left[40]).toBe(0);
    expect(fresh!.left[40]).toBeGreaterThan(0.9);
  });
});

describe('cover', () => {
  test('free nitrogen washes in by 0.02 and the throughfall over itself plus 2 mm a kg', () => {
    const bed = bareBed({ weather: warm(0), layers: [straw(firstOf2013, 50)] });
    const dry = firstDayOf(bed, (state) => set(state, 'coverFree', 1));
    const free = 1 - dry.flow('coverFree', 'coverMicrobes', 'held back');
    expect(dry.flow('coverFree', 'mineralTop', 'washed in')).toBeCloseTo(0.02 * free, 9);
    const wet = firstDayOf({ ...bed, weather: warm(20) }, (state) => set(state, 'coverFree', 1));
    const through = wet.report.throughfall;
    expect(through).toBeLessThan(20);
    const left = 1 - wet.flow('coverFree', 'coverMicrobes', 'held back');
    expect(wet.flow('coverFree', 'mineralTop', 'washed in')).toBeCloseTo(
      left * (0.02 + through / (through + 2 * 2)),
      9,
    );
  });

  test('ammonia takes no more than half of the free nitrogen', () => {
    const { flow, state } = firstDayOf(bareBed({ weather: warm(5) }), (one) => {
      set(one, 'coverFree', 0.1);
      one.ammonia.ripe = 100;
    });
    expect(flow('coverFree', 'ammonia', 'to the air')).toBeCloseTo(0.05, 12);
    expect(state.ammonia.ripe).toBeCloseTo(84, 12);
  });

  test('browns on top hold a fifth of what is free, then a thousandth of the soil’s', () => {
    const bed = bareBed({ weather: warm(5), layers: [straw(firstOf2013, 400)] });
    const { flow } = firstDayOf(bed, (state) => {
      set(state, 'coverFree', 1);
      set(state, 'mineralTop', 10);
    });
    // 400 mm of straw wants far more than there is: it gets both shares and no more.
    expect(flow('coverFree', 'coverMicrobes', 'held back')).toBeCloseTo(0.2, 9);
    const down = flow('mineralTop', 'mineralLower', 'washed down');
    const soil = 10 - down - flow('mineralTop', 'denitrified', 'wet soil');
    const added =
      flow('soilOrganic', 'mineralTop', 'released by the soil') +
      flow('rain', 'mineralTop', 'rain');
    expect(flow('mineralTop', 'coverMicrobes', 'held back from the soil')).toBeCloseTo(
      0.001 * (soil + added),
      9,
    );
  });

  test('greens free first what browns beside them then hold', () => {
    const day = firstOf2013;
    const bed = bareBed({ weather: warm(5), layers: [clippings(day, 20), straw(day, 100)] });
    const { flow } = firstDayOf(bed, (state) => set(state, 'coverFree', 0));
    const freed = flow('coverMicrobes', 'coverFree', 'released');
    expect(freed).toBeGreaterThan(0);
    expect(flow('coverFree', 'coverMicrobes', 'held back')).toBeCloseTo(0.2 * freed, 9);
  });

  test('dug in on poor soil browns take every gram of the top 30 cm, sharing by what they want', () => {
    const day = firstOf2013;
    const bed = bareBed({
      weather: warm(0),
      layers: [
        straw(day, 200, { placement: 'dug' }),
        straw(day, 100, { placement: 'dug', id: 'other', nitrogen: 8 }),
      ],
    });
    const { state, flow } = firstDayOf(bed, (one) => set(one, 'mineralTop', 0.2));
    expect(state.nitrogen[poolIndex.mineralTop]).toBeCloseTo(0, 12);
    const released = flow('soilOrganic', 'mineralTop', 'released by the soil');
    expect(flow('mineralTop', 'dugMicrobes', 'held back')).toBeCloseTo(0.2 + released, 9);
  });

  test('hoed in decays at six tenths of dug in, in the same soil', () => {
    const gone = (placement: 'dug' | 'hoed'): number => {
      const layer = clippings(firstOf2013, 10, { placement });
      const { state } = firstDayOf(bareBed({ weather: warm(), layers: [layer] }));
      return Math.log(layer.carbon / state.classes[0]!.residue);
    };
    expect(gone('hoed') / gone('dug')).toBeCloseTo(0.6, 9);
  });

  test('on top clippings decay at 0.24 of their speed in air and wet, straw at half of that', () => {
    const gone = (layer: ReturnType<typeof clippings>): number => {
      const bed = bareBed({ weather: warm(30), layers: [layer] });
      const { state, report } = firstDayOf(bed);
      const [item] = state.classes;
      const wet = 0.15 + 0.85 * report.coverWetness;
      const days = Math.log(layer.carbon / item!.residue) / item!.parameters.decay;
      return days / wet / temperatureFactor(20);
    };
    expect(gone(clippings(firstOf2013, 10))).toBeCloseTo(0.24, 9);
    // Straw starves on top; with greens' nitrogen at hand it would go at half the speed of clippings.
    expect(gone(straw(firstOf2013, 1, { nitrogen: 1 }))).toBeCloseTo(0.12, 9);
  });

  test('rake and dig', () => {
    const day = firstOf2013 + 60;
    const layers = [
      clippings(firstOf2013, 20),
      straw(firstOf2013 + 5, 30),
      compost(firstOf2013 + 9, 5),
    ];
    const eve = runSeason(bareBed({ weather: warm(3), layers, lastDay: day - 1 }));
    const held = (pool: Pool): number => eve.pools[pool].at(-1)!;
    const raked = runSeason(
      bareBed({ weather: warm(3), layers, events: [{ kind: 'rake off', day, share: 0.5 }] }),
    );
    expect(moved(raked, 'coverResidue', 'removed')).toBeCloseTo(held('coverResidue') / 2, 9);
    expect(moved(raked, 'coverMicrobes', 'removed')).toBeCloseTo(0.06 * held('coverMicrobes'), 9);
    expect(moved(raked, 'coverHumus', 'removed')).toBeCloseTo(0.06 * held('coverHumus'), 9);
    expect(moved(raked, 'coverFree', 'removed')).toBeCloseTo(held('coverFree') / 2, 9);
    expect(moved(raked, 'slow', 'removed')).toBeCloseTo(held('slow') / 2, 9);

    const dug = runSeason(
      bareBed({ weather: warm(3), layers, events: [{ kind: 'dig cover in', day, share: 1 }] }),
    );
    for (const [pool, to] of [
      ['coverResidue', 'dugResidue'],
      ['coverMicrobes', 'dugMicrobes'],
      ['coverHumus', 'dugHumus'],
      ['coverFree', 'mineralTop'],
    ] as const) {
      expect(held(pool)).toBeGreaterThan(0);
      expect(moved(dug, pool, to, 'cover dug in')).toBeCloseTo(held(pool), 9);
      expect(dug.pools[pool].at(-1)).toBeCloseTo(0, 12);
    }
    for (const whole of [
      dug,
      runSeason(
        bareBed({ weather: warm(3), layers, events: [{ kind: 'rake off', day, share: 1 }] }),
      ),
    ]) {
      const evening = day - firstOf2013;
      expect(whole.coverDryKg[evening - 1]).toBeGreaterThan(0.5);
      expect(whole.coverDryKg[evening]).toBe(0);
      for (const layer of whole.layers) expect(layer.left[evening]).toBe(0);
    }
  });

  test('raking takes the promises of ammonia with it', () => {
    const day = firstOf2013 + 3;
    const layers = [clippings(firstOf2013, 25)];
    const lost = (share: number): number =>
      moved(
        runSeason(
          bareBed({
            weather: warm(3),
            layers,
            events: share > 0 ? [{ kind: 'rake off', day, share }] : [],
          }),
        ),
        'coverFree',
        'ammonia',
      );
    expect(lost(0)).toBeGreaterThan(1);
    expect(lost(1)).toBeLessThan(0.35 * lost(0));
  });
});

describe('compost', () => {
  const layer = compost(firstOf2013, 10);
  const { nitrogen } = layer;

  test('on top: ready to the cover, the rest waits; at the season’s end what is spent becomes soil', () => {
    const bed = bareBed({ weather: warm(0), layers: [layer], seasonStarts: [firstOf2013 + 200] });
    const result = runSeason(bed);
    expect(moved(result, 'applied', 'coverFree')).toBeCloseTo(0.03 * nitrogen, 9);
    expect(moved(result, 'applied', 'slow')).toBeCloseTo(0.97 * nitrogen, 9);
    expect(moved(result, 'slow', 'soilOrganic')).toBeCloseTo(0.82 * nitrogen, 9);
    expect(
      result.flows[flowIndex('slow', 'soilOrganic', 'compost becomes soil')]![200],
    ).toBeGreaterThan(0);
  });

  test('dug in: ready to the soil, the rest to soil organic nitrogen, 2 % of the slow part a normalised day', () => {
    const bed = bareBed({ weather: warm(0), layers: [{ ...layer, placement: 'dug' }] });
    const { flow, report } = firstDayOf(bed);
    expect(flow('applied', 'mineralTop', 'ready when dug in')).toBeCloseTo(0.03 * nitrogen, 9);
    expect(flow('applied', 'soilOrganic', 'slow material dug in')).toBeCloseTo(0.82 * nitrogen, 9);
    expect(flow('slow', 'mineralTop', 'released from compost')).toBeCloseTo(
      0.15 * nitrogen * (1 - Math.exp(-0.02 * report.soilNormalisedDay)),
      9,
    );
  });
});

describe('season’s end', () => {
  test('humus becomes last year’s humus, on the first morning of the new season, and is released slowly', () => {
    const turn = firstOf2013 + 180;
    const bed = bareBed({
      weather: warm(2),
      layers: [clippings(firstOf2013, 20), straw(firstOf2013, 10, { placement: 'dug' })],
      seasonStarts: [turn],
    });
    const result = runSeason(bed);
    const eve = turn - firstOf2013 - 1;
    const cover = result.flows[flowIndex('coverHumus', 'youngHumus', 'season end')]!;
    const dug = result.flows[flowIndex('dugHumus', 'youngHumus', 'season end')]!;
    expect(cover[eve + 1]).toBeCloseTo(result.pools.coverHumus[eve]!, 9);
    expect(dug[eve + 1]).toBeCloseTo(result.pools.dugHumus[eve]!, 9);
    expect(cover[eve]! + cover[eve + 2]!).toBe(0);
    const released =
      result.flows[flowIndex('youngHumus', 'mineralTop', 'released by last year’s humus')]!;
    expect(released[eve]).toBe(0);
    expect(released[eve + 1]).toBeCloseTo(
      0.0003 * (cover[eve + 1]! + dug[eve + 1]!) * result.soilNormalisedDay[eve + 1]!,
      9,
    );
  });
});
