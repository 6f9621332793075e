// An edit of one bed asks the engine about that bed alone, and what is shown of the others stays the
// same object, so that nothing of them is drawn again.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { bedQuestion } from '../../app/document/bedQuestion';
import { sameQuestion } from '../../app/store/sameQuestion';
import type { Engine, Question } from '../../app/worker/protocol';
import { bigGarden } from '../bench/bigGarden';
import { sameThreadEngine, storeWith, type TestStore } from './surroundings';

interface Heard extends Pick<TestStore, 'store' | 'time'> {
  /** beds of each question, in the order they were asked; a new list after each look */
  asked(): { readonly kind: string; readonly beds: readonly string[] }[];
}

const draws = (question: Question): readonly string[] =>
  question.kind === 'draws' ? question.beds.map(({ input }) => input.bedId) : [];

/** A dozen beds, all reckoned. Imagined seasons are asked for and answered with nothing. */
async function dozen(): Promise<Heard> {
  let asked: { kind: string; beds: readonly string[] }[] = [];
  const inner = sameThreadEngine();
  const engine: Engine = {
    ask: (asking, options) => {
      const question: Question = asking;
      if (question.kind === 'beds')
        asked.push({ kind: 'beds', beds: question.beds.map(({ input }) => input.bedId) });
      if (question.kind === 'draws') asked.push({ kind: 'draws', beds: draws(question) });
      return inner.ask(asking, options);
    },
    stop: () => inner.stop(),
  };
  const opened = await storeWith(bigGarden({ beds: 12, years: 1, seed: 3 }), { engine });
  await opened.time.pass(1000);
  expect(Object.keys(opened.store.getState().bedResults)).toHaveLength(12);
  return {
    ...opened,
    asked: () => {
      const before = asked;
      asked = [];
      return before;
    },
  };
}

describe('with a dozen beds', () => {
  test('at the opening all are asked about, in one question', async () => {
    const { asked } = await dozen();
    const [first, ...others] = asked().filter(({ kind }) => kind === 'beds');
    expect(first?.beds).toHaveLength(12);
    expect(others).toEqual([]);
  });

  test('an edit of one asks about that one, and the others’ results are the same objects', async () => {
    const { store, time, asked } = await dozen();
    asked();
    const before = store.getState().bedResults;
    const layer = store.getState().garden!.applications.find(({ bedId }) => bedId === 'bed-5')!;
    store.getState().deleteApplication(layer.id);
    await time.pass(1000);
    expect(asked().filter(({ kind }) => kind === 'beds')).toEqual([
      { kind: 'beds', beds: ['bed-5'] },
    ]);
    const after = store.getState().bedResults;
    const others = Object.keys(before).filter((id) => after[id] !== before[id]);
    expect(others).toEqual(['bed-5']);
    expect(store.getState().work).toBe('ready');
  });

  test('what a bed’s results are of is what was asked, and no copy of it', async () => {
    const { store } = await dozen();
    const { garden, bedResults } = store.getState();
    const today = dayOf(garden!.garden.today!);
    for (const { id } of garden!.beds)
      expect(bedResults[id]!.input).toBe(bedQuestion(garden!, id, today).input);
  });

  test('a name asks about none', async () => {
    const { store, time, asked } = await dozen();
    asked();
    const before = store.getState().bedResults;
    store.getState().editGarden({ name: 'Another name' });
    await time.pass(1000);
    expect(asked().filter(({ kind }) => kind === 'beds')).toEqual([]);
    expect(store.getState().bedResults).toBe(before);
    expect(store.getState().work).toBe('ready');
  });

  test('what a bed does not say itself still reaches it: a mowing that was weighed anew', async () => {
    const { store, time, asked } = await dozen();
    asked();
    const { garden } = store.getState();
    const mowing = garden!.mowings.at(-1)!;
    const laidOn = garden!.applications.flatMap(({ from, bedId }) =>
      from.source === 'mowing' && from.mowingId === mowing.id ? [bedId] : [],
    );
    expect(laidOn.length).toBeGreaterThan(0);
    store.getState().editMowing(mowing.id, { kind: 'lean', wetness: 'soaked' });
    await time.pass(1000);
    const beds = asked().flatMap(({ kind, beds: own }) => (kind === 'beds' ? own : []));
    for (const bed of laidOn) expect(beds).toContain(bed);
    expect(beds.length).toBeLessThan(12);
  });

  test('the end is as if all had been reckoned anew', async () => {
    const { store, time } = await dozen();
    store.getState().editBed('bed-2', { texture: 'clay loam' });
    await time.pass(5);
    store.getState().editBed('bed-3', { areaM2: 9 });
    await time.pass(60);
    store.getState().undo();
    await time.pass(1000);
    const { bedResults, garden } = store.getState();
    const anew = await storeWith(garden!, { engine: sameThreadEngine() });
    await anew.time.pass(1000);
    const fresh = anew.store.getState().bedResults;
    for (const [id, { season, verdict }] of Object.entries(fresh)) {
      expect(bedResults[id]!.verdict).toEqual(verdict);
      expect(bedResults[id]!.season.residual).toBe(season.residual);
    }
  });
});

describe('the same question', () => {
  const leaf = fc.oneof(
    fc.double(),
    fc.string(),
    fc.boolean(),
    fc.constant(null),
    fc.float64Array({ maxLength: 4 }),
  );
  const anything = fc.letrec((tie) => ({
    node: fc.oneof(
      { depthSize: 'small' },
      leaf,
      fc.array(tie('node'), { maxLength: 4 }),
      fc.dictionary(fc.stringMatching(/^[a-z]{1,3}$/), tie('node'), {
        maxKeys: 4,
        noNullPrototype: true,
      }),
    ),
  })).node;

  test('is one that was made a second time, and no other', () => {
    fc.assert(
      fc.property(anything, anything, (one, other) => {
        expect(sameQuestion(one, structuredClone(one))).toBe(true);
        expect(sameQuestion(one, [one])).toBe(false);
        expect(sameQuestion({ one }, { one, more: null })).toBe(false);
        expect(sameQuestion({ one, more: undefined }, { one, other: undefined })).toBe(false);
        expect(sameQuestion(one, other)).toBe(sameQuestion(other, one));
      }),
    );
  });
  test('tells one number of many', () => {
    fc.assert(
      fc.property(fc.float64Array({ minLength: 1, maxLength: 9 }), fc.nat(), (numbers, place) => {
        const other = numbers.slice();
        const at = place % numbers.length;
        other[at] = numbers[at] === 1 ? 2 : 1;
        expect(sameQuestion({ numbers }, { numbers: other })).toBe(false);
      }),
    );
  });
});
