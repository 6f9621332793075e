// What is asked of the engine about a bed is made once and kept for as long as nothing of it changes.
// Kept and made anew must be the same, whatever is done to the garden.
import fc from 'fast-check';
import { freeze, produce } from 'immer';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { dayOf } from '../../app/core/days';
import type { BedQuestion } from '../../app/core/season/bedAnswer';
import { bedQuestion } from '../../app/document/bedQuestion';
import { cautionFacts } from '../../app/document/cautionFacts';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';
import { bedSeason } from '../../app/document/seasonInput';
import { seasonSpread } from '../../app/document/seasonSpread';
import { sameQuestion } from '../../app/store/sameQuestion';
import { bigGarden } from '../bench/bigGarden';
import bedsText from '../documents/v1-beds.json?raw';
import ownText from '../documents/v1-own.json?raw';
import { edited, randomEdits } from './randomEdits';

vi.mock('../../app/document/seasonInput', async (original) => {
  const real = await original<typeof import('../../app/document/seasonInput')>();
  return { ...real, bedSeason: vi.fn(real.bedSeason) };
});
vi.mock('../../app/document/cautionFacts', async (original) => {
  const real = await original<typeof import('../../app/document/cautionFacts')>();
  return { ...real, cautionFacts: vi.fn(real.cautionFacts) };
});

const parsed = (text: string): Garden => {
  const garden = parseGarden(text);
  if (!garden.ok) throw new Error(garden.error.kind);
  return freeze(garden.value, true);
};
const todayOf = ({ garden }: Garden): number => dayOf(garden.today ?? '2021-06-20');

const gardens: Readonly<Record<string, Garden>> = {
  'the sample': parsed(sampleText),
  // after the last of the changes
  'beds split and joined': produce(
    parsed(bedsText),
    ({ garden }) => void (garden.today = '2021-12-20'),
  ),
  'own crops and materials': parsed(ownText),
  'two years of log': freeze(bigGarden({ beds: 3, years: 2, seed: 5 }), true),
};

/** All that is kept of a garden's beds, or what goes wrong. */
const asked = (garden: Garden): unknown[] => {
  const today = todayOf(garden);
  const outcome = (ask: () => unknown): unknown => {
    try {
      return ask();
    } catch (error) {
      return String(error);
    }
  };
  return [...garden.beds, ...(garden.retiredBeds ?? [])].flatMap(({ id }) => [
    outcome(() => bedQuestion(garden, id, today)),
    outcome(() => seasonSpread(garden, id)),
  ]);
};

describe.each(Object.entries(gardens))('of %s', (_name, garden) => {
  test('what is kept is what would be made anew, after any edits and after they are taken back', () => {
    fc.assert(
      fc.property(randomEdits, (edits) => {
        let now = garden;
        asked(now);
        for (const edit of edits) {
          now = edited(now, edit);
          // a copy shares no part with what was ever asked about, and may be changed: nothing of it is kept
          expect(sameQuestion(asked(now), asked(structuredClone(now)))).toBe(true);
        }
        expect(sameQuestion(asked(garden), asked(structuredClone(garden)))).toBe(true);
      }),
      { numRuns: 5 },
    );
  }, 60_000);
});

describe('what comes to a bed from elsewhere', () => {
  /** Whether what is kept of a bed follows an edit of something else, and rightly. */
  const follows = (garden: Garden, bedId: string, recipe: (draft: Garden) => void): boolean => {
    const today = todayOf(garden);
    const question = (of: Garden) => bedQuestion(of, bedId, today);
    const before = question(garden);
    const after = produce(garden, recipe);
    expect(sameQuestion(question(after), question(structuredClone(after)))).toBe(true);
    return !sameQuestion(question(after), before);
  };
  const log = gardens['two years of log']!;
  const split = gardens['beds split and joined']!;

  test('clippings on hand, of which another bed gets some', () => {
    const inHand = produce(log, ({ mowings }) => void (mowings.at(-1)!.rest = { to: 'undecided' }));
    const laid = inHand.applications.find(
      ({ from, bedId }) =>
        bedId !== 'bed-0' &&
        from.source === 'mowing' &&
        from.mowingId === inHand.mowings.at(-1)!.id,
    )!;
    expect(
      follows(inHand, 'bed-0', ({ applications }) => {
        const at = applications.findIndex(({ id }) => id === laid.id);
        applications.splice(at, 1);
      }),
    ).toBe(true);
  });

  test('the gauge, which tells of rain on all of them', () => {
    const gauge = { id: 'gauge', date: '2013-06-10', kind: 'rain gauge', millimetres: 44 } as const;
    expect(follows(log, 'bed-0', ({ events }) => void events.push(gauge))).toBe(true);
  });

  test('the soil of most beds, which is the lawn’s, and with it what its clippings are', () => {
    const dry = produce(log, ({ mowings, weather }) => {
      for (const mowing of mowings) mowing.kind = null;
      for (const row of weather.days) row[3] = (row[3] ?? 0) / 4;
    });
    const sandy = produce(dry, ({ beds }) => {
      for (const bed of beds.slice(1)) bed.texture = 'sand';
    });
    expect(
      follows(sandy, 'bed-0', ({ beds }) => {
        for (const bed of beds.slice(1)) bed.texture = 'clay';
      }),
    ).toBe(true);
  });

  test('the bed it was made of', () => {
    expect(
      follows(split, 'bed-4', ({ retiredBeds }) => {
        retiredBeds!.find(({ id }) => id === 'bed-1')!.texture = 'sand';
      }),
    ).toBe(true);
    expect(
      follows(split, 'bed-6', ({ applications }) => {
        applications.find(({ bedId }) => bedId === 'bed-1')!.placement = 'dug';
      }),
    ).toBe(true);
  });

  test('a planting of that bed, which another bed’s planting goes on from or no longer does', () => {
    const elsewhere = produce(split, (draft) => {
      draft.plantings = draft.plantings.filter(({ bedId }) => bedId !== 'bed-4');
    });
    expect(
      follows(elsewhere, 'bed-4', ({ plantings }) => {
        delete plantings.find(({ bedId }) => bedId === 'bed-5')!.continues;
      }),
    ).toBe(true);
  });
});

describe('of sixty beds', () => {
  const garden = freeze(bigGarden({ beds: 60, years: 1, seed: 2 }), true);
  const today = todayOf(garden);
  const all = (of: Garden) => of.beds.map(({ id }) => bedQuestion(of, id, today));
  let before: readonly BedQuestion[] = [];
  beforeEach(() => {
    before = all(garden);
    vi.mocked(bedSeason).mockClear();
    vi.mocked(cautionFacts).mockClear();
  });

  const edits: readonly (readonly [string, (draft: Garden) => void, readonly string[]])[] = [
    ['nothing', () => undefined, []],
    [
      'a planting moved',
      ({ plantings }) =>
        void (plantings.find(({ bedId }) => bedId === 'bed-7')!.started = '2013-05-20'),
      ['bed-7'],
    ],
    [
      'a layer taken away',
      ({ applications }) =>
        void applications.splice(
          applications.findIndex(({ bedId }) => bedId === 'bed-31'),
          1,
        ),
      ['bed-31'],
    ],
    [
      'a bed watered',
      ({ events }) =>
        void events.push({
          id: 'water',
          date: '2013-06-14',
          kind: 'water',
          bedId: 'bed-59',
          millimetres: 9,
        }),
      ['bed-59'],
    ],
    ['a bed resized', ({ beds }) => void (beds[3]!.areaM2 *= 1.1), ['bed-3']],
  ];
  test.each(edits)('%s: only its bed’s question is laid out anew', (_name, recipe, touched) => {
    const after = produce(garden, recipe);
    const questions = all(after);
    const others = questions.filter((question, at) => question !== before[at]);
    expect(others.map(({ input }) => input.bedId)).toEqual(touched);
    // its season of today and that of a week ago
    expect(bedSeason).toHaveBeenCalledTimes(2 * touched.length);
    expect(cautionFacts).toHaveBeenCalledTimes(touched.length);
  });

  test('what all share asks for all of them anew', () => {
    const after = produce(garden, ({ weather }) => void (weather.days[100]![3] = 31));
    const questions = all(after);
    expect(questions.filter((question, at) => question === before[at])).toEqual([]);
    expect(bedSeason).toHaveBeenCalledTimes(2 * 60);
  });

  test('layers that are only thought of are never kept', () => {
    const [layer] = garden.applications.filter(({ bedId }) => bedId === 'bed-4');
    const thought = { ...layer!, id: 'thought', date: '2013-06-14' };
    const withThought = bedQuestion(garden, 'bed-4', today, [thought]);
    expect(withThought.input.layers.map(({ id }) => id)).toContain('thought');
    expect(bedQuestion(garden, 'bed-4', today)).toBe(before[4]);
  });
});
