import { describe, expect, test } from 'vitest';
import { dayFromParts, dayOf, partsFromDay } from '../../../app/core/days';
import { drawnPlan } from '../../../app/core/season/draws/drawnPlan';
import { drawnBed } from '../../../app/core/season/draws/drawnBed';
import { makeDraws } from '../../../app/core/season/draws/columns';
import { drawnWeather, weatherSeed } from '../../../app/core/season/draws/drawnWeather';
import { imaginedMonths } from '../../../app/core/season/draws/imaginedMonths';
import { weatherWriter } from '../../../app/core/season/draws/weatherWriter';
import { imaginedMonth } from '../../../app/core/season/imagine';
import type { BedSeason, LayerInput, SeasonWeather } from '../../../app/core/season/input';
import { weatherPlan } from '../../../app/core/season/runPlan';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import { bareBed, clippings, newYorkNormals, planted, fruitingCrop } from './handMadeBed';

/* Days of a draw: measured ones as they were, imagined ones from the month, seed and draw alone. */

const spread = typicalWeatherSpread(40.8);
const generated = { kind: 'generated', spread } as const;

/** 2 C to 9 C with 3 mm of rain on every day; from `imaginedFrom` on, and on the days named, imagined. */
function skyOver(
  first: string,
  last: string,
  imaginedFrom: string,
  alsoImagined: readonly string[] = [],
): BedSeason {
  const firstDay = dayOf(first);
  const lastDay = dayOf(last);
  const days = lastDay - firstDay + 1;
  const holes = new Set(alsoImagined.map((day) => dayOf(day) - firstDay));
  const weather: SeasonWeather = {
    minimumCelsius: new Float64Array(days).fill(2),
    maximumCelsius: new Float64Array(days).fill(9),
    rainMillimetres: new Float64Array(days).fill(3),
    kind: Uint8Array.from({ length: days }, (_, at) =>
      firstDay + at >= dayOf(imaginedFrom) || holes.has(at) ? 2 : 0,
    ),
  };
  return bareBed({ firstDay, lastDay, today: dayOf(imaginedFrom) - 1, weather });
}

const overNewYear = skyOver('2013-11-01', '2014-02-10', '2013-12-20', [
  '2013-11-05',
  '2013-11-30',
  '2013-12-01',
]);

describe('the weather of a draw', () => {
  test.each([0, 3])(
    'draw %i: each imagined day is that of its month, over the year’s end as well',
    (draw) => {
      const sky = drawnWeather(overNewYear, generated, 7, draw);
      const { kind } = overNewYear.weather;
      let imagined = 0;
      for (let at = 0; at < kind.length; at++) {
        const { year, month, dayOfMonth } = partsFromDay(overNewYear.firstDay + at);
        const own = imaginedMonth(newYorkNormals, spread, weatherSeed(7, draw), year, month, false);
        const day = dayOfMonth - 1;
        const is = kind[at] === 2;
        imagined += is ? 1 : 0;
        expect(sky.minimumCelsius[at]).toBe(is ? own.minimumCelsius[day] : 2);
        expect(sky.maximumCelsius[at]).toBe(is ? own.maximumCelsius[day] : 9);
        expect(sky.rainMillimetres[at]).toBe(is ? own.rainMillimetres[day] : 3);
      }
      expect(imagined).toBe(3 + 12 + 31 + 10);
      expect(overNewYear.weather.rainMillimetres.every((rain) => rain === 3)).toBe(true);
    },
  );

  test('under a roof the warmth is drawn and the rain is what it was', () => {
    const open = drawnWeather(overNewYear, generated, 7, 1);
    const roofed = drawnWeather(overNewYear, { ...generated, isRoofed: true }, 7, 1);
    expect(roofed.minimumCelsius).toEqual(open.minimumCelsius);
    expect(roofed.rainMillimetres.every((rain) => rain === 3)).toBe(true);
    expect(open.rainMillimetres.some((rain) => rain !== 3)).toBe(true);
  });

  test('years of record take turns; without any it is the typical sky', () => {
    const year = (rain: number): SeasonWeather => ({
      ...overNewYear.weather,
      rainMillimetres: overNewYear.weather.rainMillimetres.map(() => rain),
    });
    const years = { kind: 'years', seasons: [year(0), year(1), year(2)] } as const;
    const rain = (draw: number) => drawnWeather(overNewYear, years, 7, draw).rainMillimetres[0];
    expect([0, 1, 2, 3, 7].map(rain)).toEqual([0, 1, 2, 0, 1]);
    expect(drawnWeather(overNewYear, { kind: 'years', seasons: [] }, 7, 2)).toBe(
      overNewYear.weather,
    );
  });
});

describe('the same days, laid out ready for a run', () => {
  const months = (bed: BedSeason, count: number, mostMonths?: number) =>
    imaginedMonths(bed.normals, spread, bed.latitudeDegrees, 7, count, mostMonths);

  /** Draws in an order in which some come again. */
  function sameAsDrawn(
    bed: BedSeason,
    count: number,
    isRoofed: boolean,
    mostMonths?: number,
  ): void {
    const source = { ...generated, isRoofed };
    const writer = weatherWriter(bed, source, months(bed, count, mostMonths));
    for (const draw of [count - 1, 0, 1, count - 1, 1]) {
      writer.write(draw);
      const drawn = drawnWeather(bed, source, 7, draw);
      expect(writer.plan).toEqual(weatherPlan(drawn, bed.firstDay, bed.latitudeDegrees));
    }
  }

  test('over a year’s end, with holes, draws in any order', () =>
    sameAsDrawn(overNewYear, 5, false));
  test('under a roof', () => sameAsDrawn(overNewYear, 5, true));
  test('where more months are asked for than are kept', () => {
    sameAsDrawn(overNewYear, 5, false, 0);
    sameAsDrawn(overNewYear, 5, false, 1);
    sameAsDrawn(overNewYear, 5, false, 2);
  });
  test('where nothing is imagined, and where all is', () => {
    sameAsDrawn(skyOver('2013-05-30', '2013-07-02', '2013-07-03'), 3, false);
    sameAsDrawn(skyOver('2012-02-10', '2012-03-20', '2012-02-10'), 3, false);
  });
  test('a hole that ends with its month, one that begins with it, and two in one month', () => {
    const holes = [
      '2013-05-29',
      '2013-05-30',
      '2013-05-31',
      '2013-06-01',
      '2013-06-09',
      '2013-06-10',
    ];
    sameAsDrawn(skyOver('2013-05-20', '2013-07-05', '2013-07-01', holes), 3, false);
  });

  test('asked backwards, or a dozen years apart, a month is its own', () => {
    const plan = () => {
      const series = () => new Float64Array(31);
      return { rain: series(), mean: series(), airFactor: series(), evapotranspiration: series() };
    };
    const written = (asked: ReturnType<typeof months>, year: number, month: number, draw = 0) => {
      const into = plan();
      asked.write({ year, month, first: 0, last: 27 }, draw, into, 0, false);
      return into;
    };
    for (const order of [
      [
        [2013, 6],
        [2013, 5],
        [2013, 4],
      ],
      [
        [2014, 1],
        [2013, 12],
      ],
      [
        [2013, 6],
        [2025, 5],
      ],
    ] as const) {
      const shared = months(overNewYear, 2);
      for (const [year, month] of order) {
        const alone = written(months(overNewYear, 2), year, month);
        expect(written(shared, year, month)).toEqual(alone);
        expect(alone.rain.some((rain) => rain > 0)).toBe(true);
      }
    }
    // one draw’s month is not the other’s
    const shared = months(overNewYear, 2);
    written(shared, 2013, 5, 0);
    expect(written(shared, 2013, 6, 1)).toEqual(written(months(overNewYear, 2), 2013, 6, 1));
  });

  test('beds of one garden share the months, whichever days of them they ask for', () => {
    const shared = months(overNewYear, 4);
    const late = skyOver('2013-12-01', '2014-01-20', '2014-01-05');
    const writers = [overNewYear, late].map((bed) => ({
      bed,
      writer: weatherWriter(bed, generated, shared),
    }));
    for (const draw of [0, 2, 3])
      for (const { bed, writer } of writers) {
        writer.write(draw);
        const drawn = drawnWeather(bed, generated, 7, draw);
        expect(writer.plan).toEqual(weatherPlan(drawn, bed.firstDay, bed.latitudeDegrees));
      }
  });

  test('years of record', () => {
    const warm = {
      ...overNewYear.weather,
      maximumCelsius: overNewYear.weather.maximumCelsius.map(() => 30),
    };
    const wet = {
      ...overNewYear.weather,
      rainMillimetres: overNewYear.weather.rainMillimetres.map(() => 30),
    };
    const source = { kind: 'years', seasons: [warm, wet] } as const;
    const writer = weatherWriter(overNewYear, source, months(overNewYear, 1));
    for (const draw of [0, 1, 2, 1]) {
      writer.write(draw);
      const own = source.seasons[draw % 2]!;
      expect(writer.plan).toEqual(
        weatherPlan(own, overNewYear.firstDay, overNewYear.latitudeDegrees),
      );
    }
    const none = weatherWriter(overNewYear, { kind: 'years', seasons: [] }, months(overNewYear, 1));
    none.write(3);
    expect(none.plan).toEqual(
      weatherPlan(overNewYear.weather, overNewYear.firstDay, overNewYear.latitudeDegrees),
    );
  });

  test('the bed’s own weather is never written over', () => {
    const before = overNewYear.weather.rainMillimetres.slice();
    weatherWriter(overNewYear, generated, months(overNewYear, 2)).write(1);
    expect(overNewYear.weather.rainMillimetres).toEqual(before);
  });
});

describe('layers of one day in a drawn bed', () => {
  const day = dayFromParts(2013, 6, 1);
  const lay = (id: string, changes: Partial<LayerInput> = {}): LayerInput =>
    clippings(day, 5, { id, ...changes });
  const factor = (name: string) =>
    ({ name, shape: 'amount', low: 0.2, typical: 1, high: 5 }) as const;
  const massOf = (id: string) => ({
    mass: factor(`mass ${id}`),
    nitrogen: factor(`content ${id}`),
  });

  test('stand in the order of their drawn numbers, in every draw', () => {
    const layers = ['a', 'b', 'c'].map((id) => lay(id));
    const alone = lay('alone', { day: day + 1 });
    const input = bareBed({ layers: [...layers, alone] });
    const draws = makeDraws(5, 12);
    const bed = drawnBed(
      input,
      {
        coefficients: [],
        needs: {},
        organicMatter: null,
        layers: Object.fromEntries(layers.map(({ id }) => [id, massOf(id)])),
      },
      draws,
    );
    const { plan, reorder } = drawnPlan(
      bed.input,
      weatherPlan(input.weather, input.firstDay, 40.8),
    );
    const orders = new Set<string>();
    for (let draw = 0; draw < 12; draw++) {
      bed.write(draw);
      reorder();
      const laid = plan.layers.get(day - input.firstDay)!;
      // by the text of their nitrogen, as the run of a file orders them
      const texts = laid.map(({ nitrogen }) => String(nitrogen));
      expect(texts).toEqual(texts.toSorted());
      orders.add(laid.map(({ id }) => id).join(''));
    }
    expect(orders.size).toBeGreaterThan(2);
    expect(plan.layers.get(day + 1 - input.firstDay)!.map(({ id }) => id)).toEqual(['alone']);
  });

  test.each([
    ['material', { materialId: 'another' }],
    ['placement', { placement: 'dug' }],
    ['condition', { condition: 'limp' }],
  ] as const)('that differ in %s keep their order whatever is drawn', (_what, change) => {
    const input = bareBed({ layers: [lay('a'), lay('b', change)] });
    const { plan, reorder } = drawnPlan(input, weatherPlan(input.weather, input.firstDay, 40.8));
    const before = plan.layers.get(day - input.firstDay)!.map(({ id }) => id);
    reorder();
    expect(plan.layers.get(day - input.firstDay)!.map(({ id }) => id)).toEqual(before);
  });
});

describe('a drawn bed', () => {
  const factor = (name: string) =>
    ({ name, shape: 'amount', low: 0.5, typical: 1, high: 2 }) as const;
  const day = dayFromParts(2013, 6, 1);
  const input = bareBed({
    layers: [clippings(day, 5, { id: 'known' }), clippings(day, 5, { id: 'sure' })],
    plantings: [
      planted(fruitingCrop, day, { id: 'drawn', share: 0.5 }),
      planted(fruitingCrop, day, { id: 'sure', share: 0.5 }),
    ],
  });
  const draws = makeDraws(2, 9);
  const content = {
    name: 'content',
    shape: 'share',
    low: 0.02,
    typical: 0.034,
    high: 0.05,
  } as const;
  const bed = drawnBed(
    input,
    {
      coefficients: [{ ...factor('rate'), key: 'slowRate' }],
      layers: { known: { mass: factor('mass'), nitrogen: content } },
      needs: { drawn: factor('need') },
      organicMatter: factor('matter'),
    },
    draws,
  );

  test.each([0, 4, 8])('draw %i: what is uncertain is drawn, all else is as it was', (draw) => {
    bed.write(draw);
    const now = bed.input;
    expect(now.coefficients).toEqual({
      ...input.coefficients,
      slowRate: draws.value(factor('rate'), draw),
    });
    expect(now.soil).toEqual({
      ...input.soil,
      organicMatterPercent: 3 * draws.value(factor('matter'), draw),
    });
    const mass = draws.value(factor('mass'), draw);
    const [known, sure] = now.layers;
    const [before] = input.layers;
    expect(known).toEqual({
      ...before,
      freshKgPerM2: before!.freshKgPerM2 * mass,
      dryKgPerM2: before!.dryKgPerM2 * mass,
      carbon: before!.carbon * mass,
      nitrogen: expect.closeTo(
        (before!.nitrogen * mass * draws.value(content, draw)) / 0.034,
        9,
      ) as number,
    });
    expect(sure).toEqual(input.layers[1]);
    const need = draws.value(factor('need'), draw);
    expect(now.plantings[0]!.crop).toEqual({
      ...fruitingCrop,
      need: fruitingCrop.need * need,
      harvestNitrogen: fruitingCrop.harvestNitrogen * need,
    });
    expect(now.plantings[1]).toEqual(input.plantings[1]);
    expect(now.plantings[0]).toMatchObject({ id: 'drawn', share: 0.5 });
  });

  test('the typical bed stays as it was', () => {
    expect(input.soil.organicMatterPercent).toBe(3);
    expect(input.layers[0]).toEqual(clippings(day, 5, { id: 'known' }));
    expect(input.plantings[0]!.crop).toEqual(fruitingCrop);
  });
});
