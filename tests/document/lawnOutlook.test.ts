import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../app/core/days';
import { lawnOutlook, type LawnOutlook } from '../../app/document/lawnOutlook';
import { lawnSeason, usualGrowth } from '../../app/document/lawnWeather';
import { mowingMass } from '../../app/document/accounts';
import { parseGarden } from '../../app/document/parse';
import { yearlyDryGrams } from '../../app/document/lawnYield';
import type { Garden, Lawn, Mowing } from '../../app/document/schema';
import { bundledRecord } from '../../app/tables/bundledRecords';
import { nitrogenTakenOff } from '../../app/tables/lawns';

const text = readFileSync(join(import.meta.dirname, '../../assets/gardens/sample.mowings'), 'utf8');
const parsed = parseGarden(text);
if (!parsed.ok) throw new Error(parsed.error.kind);
const sample: Garden = parsed.value;
const today = dayOf('2013-06-15');
const nextSaturday = dayOf('2013-06-22');
const back = sample.lawns.find(({ name }) => name.startsWith('Back')) as Lawn;
const width = ({ low, high }: { low: number; high: number }): number => high / low;

/** One invented lawn of 100 m2 in the sample's place, nothing mown yet. */
function plain(lawn: Partial<Lawn> = {}, mowings: readonly Mowing[] = []): Garden {
  return {
    ...sample,
    lawns: [{ ...back, id: 'lawn-1', areaM2: 100, kind: 'ordinary', grass: 'cool', ...lawn }],
    mowings: [...mowings],
    applications: [],
    containers: [],
  };
}
const weight = (date: string, kilograms: number, more: Partial<Mowing> = {}): Mowing => ({
  id: `mowing-${date}`,
  date,
  lawnId: 'lawn-1',
  amount: {
    text: `${String(kilograms)} kg`,
    quantity: { kind: 'mass', kilograms },
    certainty: 'plain',
  },
  wetness: 'dry',
  kind: null,
  rest: { to: 'undecided' },
  ...more,
});
const look = (garden: Garden, day = '2013-06-22', known = '2013-06-15'): LawnOutlook =>
  lawnOutlook(garden, garden.lawns[0]!.id, dayOf(day), dayOf(known));

// common practice: people mow about once a week while the grass grows; a garden that is new in
// November did not let its lawn stand since New Year
describe('a lawn whose mowings nobody wrote down', () => {
  test('in the middle of the season counts as mown a week before, and says so', () => {
    const outlook = look(plain(), '2013-11-25', '2013-11-25');
    expect(outlook).toMatchObject({ isSinceSupposed: true, wasMown: false });
    expect(outlook.since).toBe(dayOf('2013-11-18'));
    const june = look(plain(), '2013-06-22', '2013-06-22');
    expect(june.dryKilograms.typical).toBeLessThan(100 * 0.03);
    // a mowing of the same week before gives the same middle, and is known better
    const logged = look(plain({}, [weight('2013-06-15', 10)]), '2013-06-22', '2013-06-22');
    expect(june.dryKilograms.typical).toBeCloseTo(logged.dryKilograms.typical, 9);
    expect(logged.isSinceSupposed).toBe(false);
    expect(width(june.dryKilograms)).toBeGreaterThan(width(logged.dryKilograms));
  });

  test('or so long before as its people said they mow', () => {
    const mownEvery = (days: number): Garden => {
      const garden = plain();
      return { ...garden, lawns: garden.lawns.map((lawn) => ({ ...lawn, mownEveryDays: days })) };
    };
    const [weekly, fortnightly] = [7, 14].map((days) =>
      look(mownEvery(days), '2013-06-22', '2013-06-22'),
    );
    expect(weekly!.since).toBe(dayOf('2013-06-15'));
    expect(fortnightly!.since).toBe(dayOf('2013-06-08'));
    expect(fortnightly!.dryKilograms.typical).toBeGreaterThan(1.5 * weekly!.dryKilograms.typical);
    // what was said is known better than what most people do
    const usual = look(plain(), '2013-06-22', '2013-06-22');
    expect(width(weekly!.dryKilograms)).toBeLessThan(width(usual.dryKilograms));
    // a mowing that was written down goes before any habit
    const logged = { ...mownEvery(14), mowings: plain({}, [weight('2013-06-18', 10)]).mowings };
    expect(look(logged, '2013-06-22', '2013-06-22').since).toBe(dayOf('2013-06-18'));
  });

  test('in spring is what grew since winter', () => {
    const outlook = look(plain(), '2013-04-06', '2013-04-06');
    expect(outlook).toMatchObject({ isSinceSupposed: false, since: dayOf('2012-12-31') });
  });

  test('three weeks away are believed, a summer without a mower is not', () => {
    const garden = plain({}, [weight('2013-05-25', 10)]);
    expect(look(garden, '2013-06-15', '2013-06-15')).toMatchObject({
      isSinceSupposed: false,
      since: dayOf('2013-05-25'),
    });
    expect(look(garden, '2013-09-21', '2013-09-21')).toMatchObject({
      isSinceSupposed: true,
      since: dayOf('2013-09-14'),
    });
  });
});

describe('what a lawn is expected to give', () => {
  // `lawn` 1: Friell (University of Minnesota) prints 1-3 g/m2 a day, 7-21 a week, for usual care
  test('an ordinary week of the growing half-year lies in what was measured', () => {
    const { weeks } = look(plain());
    const growing = weeks.filter(({ from }) => {
      const date = textFromDay(from);
      return date >= '2013-05-01' && date < '2013-10-01';
    });
    const mean = growing.reduce((sum, { expected }) => sum + expected.typical, 0) / growing.length;
    expect(mean).toBeGreaterThan(7);
    expect(mean).toBeLessThan(21);
  });

  // `lawn` 1: 250 / 450 / 600 g/m2 a year, lean, ordinary, fed
  test.each([
    ['lean', 250],
    ['ordinary', 450],
    ['fed', 600],
  ] as const)('a usual year of a %s lawn is %d g/m2', (kind, yearly) => {
    const garden = plain({ kind });
    expect(yearlyDryGrams(garden.lawns[0]!)).toBe(yearly);
    // a season without any record: its weeks come from the usual weather
    const bare = { ...garden, weather: { ...garden.weather, days: [] } };
    const { weeks } = look(bare, '2013-01-02', '2013-01-02');
    const sum = weeks.reduce((all, { expected }) => all + expected.typical, 0);
    expect(sum / yearly).toBeGreaterThan(0.7);
    expect(sum / yearly).toBeLessThan(1.3);
  });

  // `lawn` 6, worked scale: 100 m2 giving 14 g/m2 in a week, 80 % water, 3.2 % N, 250 kg/m3, is
  // 1.4 kg dry, 7 kg fresh, 28 L, 45 g N. Our row of an ordinary lawn has 3.4 % N.
  test('dry matter, fresh weight, litres and nitrogen hang together as in the worked scale', () => {
    const { dryKilograms, freshKilograms, litres, nitrogenGrams } = look(plain());
    const scale = 1.4 / dryKilograms.typical;
    expect(freshKilograms.typical * scale).toBeCloseTo(7, 0);
    expect(litres.typical * scale).toBeCloseTo(28, 0);
    expect((nitrogenGrams.typical * scale * 3.2) / 3.4).toBeCloseTo(45, 0);
  });

  test('grass that was not seen growing gives nothing, winter next to nothing', () => {
    const winter = look(plain({}, [weight('2013-01-05', 1)]), '2013-01-12', '2013-01-12');
    const spring = look(plain({}, [weight('2013-05-11', 1)]), '2013-05-18', '2013-05-18');
    expect(winter.dryKilograms.typical).toBeLessThan(spring.dryKilograms.typical / 5);
    const same = look(plain({}, [weight('2013-05-18', 1)]), '2013-05-18', '2013-05-18');
    expect(same.dryKilograms.typical).toBe(0);
  });

  test('warm-season grass peaks in the heat of summer, cool-season grass does not', () => {
    const of = (grass: Lawn['grass']) => {
      const garden = plain({ grass });
      const year = lawnSeason(
        garden,
        grass,
        dayOf('2013-01-01'),
        dayOf('2013-12-31'),
        dayOf('2012-01-01'),
        1,
        'no record',
      );
      const share = (from: string, to: string) => {
        const [first, last] = [dayOf(from) - year.firstDay, dayOf(to) - year.firstDay];
        return year.growth.slice(first, last).reduce((sum, one) => sum + one, 0);
      };
      return share('2013-07-01', '2013-09-01') / share('2013-04-15', '2013-06-15');
    };
    expect(of('warm')).toBeGreaterThan(1.5);
    expect(of('cool')).toBeLessThan(1.2);
  });

  test('a dry spell halves what was to be expected', () => {
    const record = bundledRecord('new-york')!;
    const days = record.rainMillimetres.map((rain, at): Garden['weather']['days'][number] => [
      textFromDay(dayOf(record.firstDay) + at),
      record.minimumCelsius[at]!,
      record.maximumCelsius[at]!,
      rain,
    ]);
    const wet: Garden = { ...plain(), weather: { ...sample.weather, days } };
    const dry: Garden = {
      ...wet,
      weather: {
        ...wet.weather,
        days: days.map(([date, low, high, rain]) => [
          date,
          low,
          high,
          date >= '2013-05-15' && date < '2013-07-01' ? 0 : rain,
        ]),
      },
    };
    const of = (garden: Garden) =>
      look({ ...garden, mowings: [weight('2013-06-20', 5)] }, '2013-06-27', '2013-06-27');
    expect(of(dry).dryKilograms.typical).toBeLessThan(of(wet).dryKilograms.typical / 2);
    expect(of(dry).waterShare).toBeLessThan(0.5);
    expect(of(dry).kind).toBe('lean');
    expect(of(wet).kind).toBe('ordinary');
  });

  test('the record after today is never looked at', () => {
    const cut: Garden = {
      ...sample,
      weather: {
        ...sample.weather,
        days: sample.weather.days.filter(([date]) => dayOf(date) <= today),
      },
    };
    const longer: Garden = {
      ...cut,
      weather: {
        ...cut.weather,
        days: [...cut.weather.days, ['2013-06-16', 30, 45, 0], ['2013-06-17', 30, 45, 0]],
      },
    };
    expect(lawnOutlook(longer, back.id, nextSaturday, today)).toEqual(
      lawnOutlook(cut, back.id, nextSaturday, today),
    );
  });
});

describe('what logged mowings teach', () => {
  const dates = [
    '2013-04-20',
    '2013-04-27',
    '2013-05-04',
    '2013-05-11',
    '2013-05-18',
    '2013-05-25',
  ];

  test('the range narrows with each mowing after the first', () => {
    const widths = dates.map((_date, at) =>
      width(
        look(
          plain(
            {},
            dates.slice(0, at + 1).map((date) => weight(date, 7)),
          ),
        ).ratio,
      ),
    );
    expect(look(plain({}, [weight(dates[0]!, 7)])).learntFrom).toBe(0);
    for (let at = 1; at < widths.length; at++) expect(widths[at]!).toBeLessThan(widths[at - 1]!);
    expect(
      look(
        plain(
          {},
          dates.map((date) => weight(date, 7)),
        ),
      ).learntFrom,
    ).toBe(5);
  });

  test('a lawn that gives twice as much is expected to go on so', () => {
    const of = (kilograms: number) =>
      look(
        plain(
          {},
          dates.map((date) => weight(date, kilograms)),
        ),
      );
    expect(of(28).ratio.typical).toBeGreaterThan(of(14).ratio.typical);
    expect(of(28).dryKilograms.typical).toBeGreaterThan(of(14).dryKilograms.typical);
  });

  test('two halves on neighbouring days are one mowing', () => {
    const whole = look(
      plain(
        {},
        dates.map((date) => weight(date, 8)),
      ),
    );
    const halves = look(
      plain(
        {},
        dates.flatMap((date) => [
          weight(date, 4),
          { ...weight(date, 4), id: `second-${date}`, date: textFromDay(dayOf(date) + 1) },
        ]),
      ),
    );
    expect(halves.learntFrom).toBe(whole.learntFrom);
    expect(halves.ratio.typical).toBeCloseTo(whole.ratio.typical, 1);
  });

  test('the sample garden: the back lawn counts in bags, next Saturday’s range holds its usual two', () => {
    const outlook = lawnOutlook(sample, back.id, nextSaturday, today);
    const bag = sample.containers.find(({ name }) => name === 'bag')!;
    expect(outlook.containers?.containerId).toBe(bag.id);
    const { low, typical, high } = outlook.containers!.count;
    expect([low < typical, typical < high]).toEqual([true, true]);
    // sampleMowings.ts: between 1 1/2 and 3 bags are logged each week of May and June
    expect(low).toBeLessThan(2.5);
    expect(high).toBeGreaterThan(1.5);
    expect(outlook.learntFrom).toBe(
      sample.mowings.filter(({ lawnId }) => lawnId === back.id).length - 1,
    );
    expect(textFromDay(outlook.since)).toBe('2013-06-15');
  });
});

describe('what collecting takes off a lawn and costs it', () => {
  const dates = Array.from({ length: 26 }, (_unused, at) =>
    textFromDay(dayOf('2013-04-20') + 7 * at),
  );

  // `lawn` 4: 111-260 kg N/ha a year (Rhode Island) = 11.1-26.0 g/m2 from fed turf
  test('a season of a fed lawn, all collected, takes off what was measured', () => {
    const garden = plain({ kind: 'fed' });
    const { takenByEnd } = look(garden, '2013-01-02', '2013-01-02');
    expect(takenByEnd.nitrogen.high).toBeGreaterThan(nitrogenTakenOff.low);
    expect(takenByEnd.nitrogen.low).toBeLessThan(nitrogenTakenOff.high);
    expect(takenByEnd.nitrogen.typical).toBeGreaterThan(nitrogenTakenOff.low);
    expect(takenByEnd.nitrogen.typical).toBeLessThan(nitrogenTakenOff.high * 1.1);
  });

  // `lawn` 3 (MU G6958): about 4 % N with about 2 % K and a half to one P
  test('phosphorus and potassium go along in the proportion printed', () => {
    const { taken } = look(
      plain(
        {},
        dates.slice(0, 8).map((date) => weight(date, 8)),
      ),
    );
    expect(taken.potassium.typical / taken.phosphorus.typical).toBeCloseTo(2 / 0.75, 10);
    expect(taken.potassium.typical).toBeCloseTo(
      (taken.dryKilograms.typical * 1000 * 0.02) / 100,
      10,
    );
  });

  test('the sample’s bags, all of them', () => {
    const { taken } = lawnOutlook(sample, back.id, today, today);
    const own = sample.mowings.filter(({ lawnId }) => lawnId === back.id);
    const left = own.filter(({ rest }) => rest.to === 'lawn');
    const whole = own.reduce((sum, mowing) => sum + mowingMass(sample, mowing).dryKilograms, 0);
    expect(taken.dryKilograms.typical).toBeLessThanOrEqual(whole);
    expect(taken.dryKilograms.typical).toBeGreaterThan(
      whole - left.reduce((sum, mowing) => sum + mowingMass(sample, mowing).dryKilograms, 0) - 1e-9,
    );
  });

  test('clippings left lying are not taken off', () => {
    const lying = { rest: { to: 'lawn' } } as const;
    const { taken, cost } = look(
      plain(
        {},
        dates.slice(0, 8).map((date) => weight(date, 8, lying)),
      ),
    );
    expect(taken.dryKilograms.typical).toBe(0);
    expect(taken.nitrogen.typical).toBe(0);
    expect([cost.collectedShare, cost.yieldLost.typical]).toEqual([0, 0]);
  });

  // Kopp & Guillard 2002, abstract: clippings left raise dry matter by 30-72 %: without them 23-42 % less
  test('taking everything costs a quarter to two fifths of the yield in the end', () => {
    const { cost } = look(
      plain(
        {},
        dates.slice(0, 8).map((date) => weight(date, 40)),
      ),
    );
    expect(cost.collectedShare).toBeGreaterThan(0.8);
    expect(cost.yieldLost.low / cost.collectedShare).toBeCloseTo(1 - 1 / 1.3, 10);
    expect(cost.yieldLost.high / cost.collectedShare).toBeCloseTo(1 - 1 / 1.72, 10);
  });

  test('a lawn that was mined for years is expected to give less', () => {
    const years = (count: number): Mowing[] =>
      Array.from({ length: count }, (_unused, year) =>
        dates.map((date) => {
          const then = `${String(2012 - year)}${date.slice(4)}`;
          return weight(then, 10, { id: `mowing-${then}` });
        }),
      ).flat();
    const expected = [0, 1, 3, 8].map(
      (count) => look(plain({}, years(count)), '2013-01-02', '2013-01-02').ratio.typical,
    );
    expect(expected[0]).toBeCloseTo(1, 12);
    for (let at = 1; at < expected.length; at++)
      expect(expected[at]!).toBeLessThan(expected[at - 1]!);
    expect(expected.at(-1)!).toBeGreaterThan(1 / 1.5 - 0.01);
  });
});

test('no lawn, no outlook', () => {
  expect(() => lawnOutlook(sample, 'lawn-9', today)).toThrow('No lawn lawn-9');
  expect(usualGrowth(sample, 'cool', today)).toBeGreaterThan(30);
});
