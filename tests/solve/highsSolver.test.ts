import { beforeAll, expect, test } from 'vitest';
import type { LinearProgramme, Solver } from '../../app/core/plan/linearProgramme';
import { seeded } from '../../app/core/random';
import { failure } from '../../app/core/result';
import { highsSolver } from '../../app/solve/highsSolver';
import { steadySolver } from './steadySolver';

let solve: Solver;
beforeAll(async () => {
  solve = await steadySolver();
});

/** Least -3x - 5y + 7 with x <= 4, 2y <= 12, 3x + 2y <= 18: x 2, y 6, sum -36 + 7. */
const twoProducts = (changes: Partial<LinearProgramme> = {}): LinearProgramme => ({
  cost: Float64Array.of(-3, -5),
  constant: 7,
  columnLower: Float64Array.of(0, 0),
  columnUpper: Float64Array.of(4, Infinity),
  isWhole: Uint8Array.of(0, 0),
  rows: {
    starts: Int32Array.of(0, 1, 3),
    columns: Int32Array.of(1, 0, 1),
    values: Float64Array.of(2, 3, 2),
  },
  rowLower: Float64Array.of(-Infinity, -Infinity),
  rowUpper: Float64Array.of(12, 18),
  ...changes,
});

test('finds the corner that arithmetic finds, constant included', () => {
  const answer = solve(twoProducts());
  if (!answer.ok) throw new Error(answer.error.kind);
  expect(answer.value.objective).toBeCloseTo(-29, 9);
  expect([...answer.value.values]).toEqual([2, 6]);
});

test('whole columns are whole, and no better', () => {
  const answer = solve(
    twoProducts({ rowUpper: Float64Array.of(11, 18), isWhole: Uint8Array.of(1, 1) }),
  );
  if (!answer.ok) throw new Error(answer.error.kind);
  // y at most 5.5, so 5; then x at most 8/3, so 2: -6 - 25 + 7
  expect([...answer.value.values]).toEqual([2, 5]);
  expect(answer.value.objective).toBeCloseTo(-24, 9);
});

test('says so where nothing fits, and where nothing holds it', () => {
  expect(solve(twoProducts({ rowUpper: Float64Array.of(-1, 18) }))).toEqual(
    failure({ kind: 'no solution' }),
  );
  expect(
    solve(
      twoProducts({
        columnUpper: Float64Array.of(Infinity, Infinity),
        rowUpper: Float64Array.of(Infinity, Infinity),
      }),
    ),
  ).toEqual(failure({ kind: 'no solution' }));
});

test('a programme with nothing to choose comes to its constant', () => {
  const none = new Float64Array(0);
  const rows = { starts: Int32Array.of(0), columns: new Int32Array(0), values: none };
  const nothing = {
    cost: none,
    columnLower: none,
    columnUpper: none,
    isWhole: new Uint8Array(0),
    rows,
    rowLower: none,
    rowUpper: none,
  };
  expect(solve(twoProducts(nothing))).toEqual({
    ok: true,
    value: { objective: 7, values: none },
  });
  // ... unless something is wanted all the same
  const wanting = solve(
    twoProducts({
      ...nothing,
      rows: { ...rows, starts: Int32Array.of(0, 0) },
      rowLower: Float64Array.of(1),
      rowUpper: Float64Array.of(2),
    }),
  );
  expect(wanting).toEqual(failure({ kind: 'no solution' }));
});

test('stops at its time', async () => {
  const hurried = await highsSolver({ limit: { seconds: 0 } });
  const answer = hurried(
    twoProducts({ rowUpper: Float64Array.of(11, 17), isWhole: Uint8Array.of(1, 1) }),
  );
  if (answer.ok) throw new Error('it had no time');
  expect(answer.error).toEqual({ kind: 'took too long', seconds: 0 });
});

/** Twenty things with a value each, of three kinds of which only so much may be taken. */
function packing(): LinearProgramme {
  const things = 20;
  const random = seeded(3);
  const numbers = Float64Array.from({ length: 3 * things }, () => 20 + Math.floor(80 * random()));
  const columns = Array.from({ length: 3 * things }, (_value, at) => at % things);
  return {
    cost: Float64Array.from({ length: things }, () => -20 - Math.floor(80 * random())),
    constant: 0,
    columnLower: new Float64Array(things),
    columnUpper: new Float64Array(things).fill(1),
    isWhole: new Uint8Array(things).fill(1),
    rows: {
      starts: Int32Array.of(0, things, 2 * things, 3 * things),
      columns: Int32Array.from(columns),
      values: numbers,
    },
    rowLower: new Float64Array(3).fill(-Infinity),
    rowUpper: new Float64Array(3).fill(500),
  };
}

test('stops by work where it is told to, and not by the clock', async () => {
  const hurried = await highsSolver({ limit: { branchings: 1 } });
  expect(hurried(packing())).toMatchObject({ ok: false, error: { kind: 'solver failed' } });
  expect(solve(packing()).ok).toBe(true);
});

test('a broken programme is a failure, not a fall', () => {
  const answer = solve(
    twoProducts({
      rows: {
        starts: Int32Array.of(0, 1, 3),
        columns: Int32Array.of(1, 0, 9),
        values: Float64Array.of(2, 3, 2),
      },
    }),
  );
  expect(answer).toMatchObject({ ok: false, error: { kind: 'solver failed' } });
});

test('the same programme always has the same solution', () => {
  // x + y <= 1 at equal cost: a whole edge of answers
  const edge = twoProducts({
    cost: Float64Array.of(-1, -1),
    columnUpper: Float64Array.of(1, 1),
    rows: {
      starts: Int32Array.of(0, 2, 2),
      columns: Int32Array.of(0, 1),
      values: Float64Array.of(1, 1),
    },
    rowUpper: Float64Array.of(1, 1),
  });
  const first = solve(edge);
  for (let time = 0; time < 5; time++) expect(solve(edge)).toEqual(first);
});
