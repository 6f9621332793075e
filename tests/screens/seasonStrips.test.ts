import { describe, expect, test } from 'vitest';
import { unitsOf } from '../../app/amounts/unitSystem';
import { dayOf, seasonEnd, seasonStart } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { bedQuestion } from '../../app/document/bedQuestion';
import type { Garden } from '../../app/document/schema';
import { bedStrips, firstDayKnown } from '../../app/screens/season/stripsData';
import type { Shown } from '../../app/screens/shown';
import type { BedResults } from '../../app/store/contract';
import { families } from '../../app/tables/families';
import { basisOf, limits } from '../../app/tables/thresholds';
import { cautionWords } from '../../app/words/cautions';
import { metricChartUnits } from '../../app/words/chartUnits';
import { bigGarden } from '../bench/bigGarden';

const units = unitsOf('metric');
// the strips read nothing else of how a person reads
const shown = { units, chart: metricChartUnits } as Shown;
const garden = bigGarden({ beds: 6, years: 2, seed: 5 });
const today = dayOf('2013-06-15');
const span = { from: seasonStart(today, 1), to: seasonEnd(today, 1) };
const answersOf = (of: Garden): Record<string, BedResults> =>
  Object.fromEntries(of.beds.map(({ id }) => [id, answerBed(bedQuestion(of, id, today), limits)]));
const results = answersOf(garden);

describe('what does not go together', () => {
  const strips = bedStrips(garden, results, span, today, shown);

  test('is what the engine says, in its words and by its weight, and nothing else', () => {
    let told = 0;
    for (const { bedId, troubles, crowded } of strips) {
      const sayings = results[bedId]!.cautions.map((caution) => ({
        weight: caution.weight,
        says: cautionWords(caution, basisOf(caution), units).says,
      }));
      expect(crowded).toEqual([]);
      for (const { weight, says } of troubles) {
        expect(sayings).toContainEqual({ weight, says });
        told += 1;
      }
    }
    // the garden's manure before peas, and its cover over seedlings
    expect(told).toBeGreaterThan(1);
  });

  // what stands or lies where and when, cautions.md; the others are about amounts and days to come
  test.each([
    'raw manure',
    'treated lawn',
    'treated source',
    'seed fly',
    'cold soil',
    'frost',
    'seedlings',
    'tied up',
    'overdue',
  ] as const)('%s is told on a day of its bed', (kind) => {
    const [bed] = garden.beds;
    const own = results[bed!.id]!;
    const like = Object.values(results).flatMap(({ cautions }) => cautions)[0]!;
    const day = today - 3;
    const answers = {
      ...results,
      [bed!.id]: {
        ...own,
        cautions: [
          { ...like, kind, detail: {}, layerId: null, date: day, weight: 'stop' as const },
        ],
      },
    };
    const strip = bedStrips(garden, answers, span, today, shown).find(
      ({ bedId }) => bedId === bed!.id,
    );
    const told = strip!.troubles.filter(({ id }) => id.startsWith(`${kind} `));
    expect(told).toMatchObject([{ day, weight: 'stop' }]);
  });

  test('raw manure before a pick stands on the day it was laid', () => {
    const manured = strips.flatMap(({ bedId, troubles }) =>
      results[bedId]!.cautions.filter(({ kind }) => kind === 'raw manure').map((caution) => ({
        troubles,
        laid: results[bedId]!.input.layers.find(({ id }) => id === caution.layerId)!.day,
      })),
    );
    expect(manured.length).toBeGreaterThan(0);
    for (const { troubles, laid } of manured)
      expect(
        troubles.filter(({ id }) => id.startsWith('raw manure')).map(({ day }) => day),
      ).toContain(laid);
  });

  test('a second planting on a full bed is crowding, told with its days and both names', () => {
    const first = garden.plantings.find(
      ({ started, cleared }) => started.startsWith('2013') && (cleared ?? '9') > '2013-06-01',
    )!;
    const crowdedGarden: Garden = {
      ...garden,
      plantings: [
        ...garden.plantings,
        { ...first, id: 'more', cropId: 'radish', started: first.started, share: 0.5 },
      ],
    };
    const strip = bedStrips(crowdedGarden, results, span, today, shown).find(
      ({ bedId }) => bedId === first.bedId,
    )!;
    expect(strip.crowded[0]).toMatchObject({ from: dayOf(first.started), share: 1.5 });
    expect(strip.troubles[0]!.says).toMatch(
      /^From .* and .* claim 150 % of the bed, more than there is\. Move one, or say how much of the bed each has\.$/,
    );
  });
});

test('a family back too soon is told on the day it comes, with where the years come from', () => {
  const [bed] = garden.beds;
  const like = garden.plantings[0]!;
  const potatoes = (id: string, started: string, cleared: string | null) => ({
    ...like,
    id,
    bedId: bed!.id,
    cropId: 'potato',
    started,
    firstHarvest: null,
    cleared,
  });
  const told = (years: number) =>
    bedStrips(
      {
        ...garden,
        plantings: [
          potatoes('was', `${String(2013 - years)}-05-01`, `${String(2013 - years)}-09-01`),
          potatoes('is', '2013-05-01', null),
        ],
      },
      {},
      span,
      today,
      { ...shown, day: (date: string) => date } as Shown,
    ).flatMap(({ troubles }) => troubles.filter(({ id }) => id.startsWith('too soon')));
  // ConnecticutRotation, as the table of families has it: two seasons at least, three usual
  const { low, typical } = families.Solanaceae.freeSeasons;
  expect(told(low)).toMatchObject([{ day: dayOf('2013-05-01'), weight: 'caution' }]);
  expect(told(low)[0]!.says).toContain('University of Connecticut');
  expect(told(typical)).toMatchObject([{ weight: 'note' }]);
  expect(told(typical + 1)).toEqual([]);
});

test('a bed of which nothing changed keeps its strip, whatever is edited elsewhere', () => {
  const before = bedStrips(garden, results, span, today, shown);
  const moved = garden.plantings.find(
    ({ bedId, started }) => bedId === 'bed-2' && started > '2013',
  )!;
  const after = bedStrips(
    {
      ...garden,
      plantings: garden.plantings.map((one) =>
        one === moved ? { ...one, started: '2013-05-03', firstHarvest: null, cleared: null } : one,
      ),
    },
    results,
    span,
    today,
    shown,
  );
  after.forEach((strip, at) => {
    if (strip.bedId === 'bed-2') expect(strip).not.toBe(before[at]);
    else expect(strip).toBe(before[at]);
  });
  expect(after.find(({ bedId }) => bedId === 'bed-2')!.plantings).toContainEqual(
    expect.objectContaining({ id: moved.id, start: dayOf('2013-05-03') }),
  );
});

test('only what stands or lies in the season is on a strip', () => {
  for (const season of [span, { from: seasonStart(span.from - 1, 1), to: span.from - 1 }])
    for (const { bedId, plantings, layers } of bedStrips(garden, results, season, today, shown)) {
      const of = garden.plantings.filter(
        (one) =>
          one.bedId === bedId &&
          dayOf(one.started) <= season.to &&
          (one.cleared === null || dayOf(one.cleared) > season.from),
      );
      expect(plantings.map(({ id }) => id)).toEqual(of.map(({ id }) => id));
      expect(layers.length).toBe(
        garden.applications.filter(
          (one) =>
            one.bedId === bedId && dayOf(one.date) >= season.from && dayOf(one.date) <= season.to,
        ).length,
      );
    }
});

test('one can step back to the first thing written down', () => {
  const first = firstDayKnown(garden, results, today);
  expect(first).toBeLessThan(span.from);
  expect(
    firstDayKnown({ ...garden, plantings: [], applications: [], mowings: [] }, {}, today),
  ).toBe(today);
});

test('layers are as deep as the engine has them, and only a typed end is called typed', () => {
  const strips = bedStrips(garden, results, span, today, shown);
  let layers = 0;
  const ends = new Set<boolean>();
  for (const { bedId, layers: drawn, plantings } of strips) {
    for (const { id, laidDepth, inSoil } of drawn) {
      const known = results[bedId]!.input.layers.find((one) => one.id === id)!;
      expect(laidDepth).toBe(known.laidDepth);
      expect(inSoil).toBe(known.placement !== 'laid');
      layers += 1;
    }
    for (const { id, isEndTyped } of plantings) {
      const typed = garden.plantings.find((one) => one.id === id)!.cleared !== null;
      expect(isEndTyped).toBe(typed);
      ends.add(typed);
    }
  }
  expect(layers).toBeGreaterThan(5);
  expect(ends.size).toBe(2);
});
