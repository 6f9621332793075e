import { beforeAll, expect, test, vi } from 'vitest';
import { solve as solveElsewhere } from 'yalps';
import { bedDistance } from '../../../app/core/plan/bedDistance';
import type { LinearProgramme, Solver } from '../../../app/core/plan/linearProgramme';
import type { PlanQuestion } from '../../../app/core/plan/question';
import { ready, type Ready } from '../../../app/core/plan/ready';
import { noCaps, programmeOf } from '../../../app/core/plan/settle';
import { madeQuestion, withBeds } from './madeQuestion';
import { steadySolver } from '../../solve/steadySolver';

// Whole plans on a busy machine take their time.
vi.setConfig({ testTimeout: 120_000 });

let solve: Solver;
beforeAll(async () => {
  solve = await steadySolver();
});

const readied = (question: PlanQuestion): Ready => {
  const answer = ready(question);
  if (!answer.ok) throw new Error(answer.error.kind);
  return answer.value;
};

/** The same numbers for a solver that is no relative of the program's: a simplex table in plain code. */
function elsewhere(programme: LinearProgramme): number {
  const { cost, rows, columnLower, columnUpper, isWhole } = programme;
  const constraints = new Map<string, { min?: number; max?: number }>();
  const bound = (min: number, max: number) => ({
    ...(Number.isFinite(min) ? { min } : {}),
    ...(Number.isFinite(max) ? { max } : {}),
  });
  const variables = new Map<string, Map<string, number>>();
  cost.forEach((of, column) => {
    expect(columnLower[column]).toBe(0);
    const own = new Map([['cost', of]]);
    if (Number.isFinite(columnUpper[column])) {
      own.set(`upper ${column}`, 1);
      constraints.set(`upper ${column}`, { max: columnUpper[column]! });
    }
    variables.set(String(column), own);
  });
  programme.rowLower.forEach((lower, row) => {
    constraints.set(`row ${row}`, bound(lower, programme.rowUpper[row]!));
    for (let at = rows.starts[row]!; at < rows.starts[row + 1]!; at++)
      variables.get(String(rows.columns[at]!))!.set(`row ${row}`, rows.values[at]!);
  });
  const answer = solveElsewhere(
    {
      direction: 'minimize',
      objective: 'cost',
      constraints,
      variables,
      integers: [...cost.keys()].filter((column) => isWhole[column] === 1).map(String),
    },
    { precision: 1e-10, maxPivots: 100_000, tolerance: 0 },
  );
  expect(answer.status).toBe('optimal');
  return answer.result + programme.constant;
}

for (const seed of [2, 4, 5, 6, 9, 12])
  test(`garden ${seed}: two solvers agree on the plan's programme`, () => {
    const question = withBeds(madeQuestion(seed, 3), 3);
    for (const bedsADay of [1, null]) {
      const made = readied({ ...question, wishes: { ...question.wishes, bedsADay } });
      const { programme } = programmeOf(made, null, noCaps(made.beds.length));
      const own = solve(programme);
      expect(own.ok).toBe(true);
      if (!own.ok) continue;
      const other = elsewhere(programme);
      expect(Math.abs(own.value.objective - other)).toBeLessThanOrEqual(
        1e-6 * Math.max(1, Math.abs(other)),
      );
    }
  });

/** All whole millimetres of today's and next week's clippings on two beds that the rows allow. */
function bestOnGrid(made: Ready): { readonly best: number; readonly tried: number } {
  const { programme, amounts } = programmeOf(made, null, noCaps(made.beds.length));
  const columns = new Set(amounts.map(({ column }) => column));
  const { rows, rowUpper } = programme;
  const ownRows = [...rowUpper.keys()].filter((row) => {
    for (let at = rows.starts[row]!; at < rows.starts[row + 1]!; at++)
      if (!columns.has(rows.columns[at]!)) return false;
    return true;
  });
  const value = new Float64Array(programme.cost.length);
  let best = Infinity;
  let tried = 0;
  const isAllowed = (): boolean =>
    ownRows.every((row) => {
      let sum = 0;
      for (let at = rows.starts[row]!; at < rows.starts[row + 1]!; at++)
        sum += rows.values[at]! * value[rows.columns[at]!]!;
      return sum <= rowUpper[row]! + 1e-9 && sum >= programme.rowLower[row]! - 1e-9;
    });
  const distance = (): number => {
    let sum = 0;
    made.beds.forEach(({ response, perKilogram }, bed) => {
      const own = new Map(
        amounts.filter((one) => one.bed === bed).map((one) => [one.layer, value[one.column]!]),
      );
      sum += bedDistance(response, own, perKilogram, made.question.weights);
    });
    for (const { column } of amounts) sum += programme.cost[column]! * value[column]!;
    return sum;
  };
  const go = (next: number): void => {
    const one = amounts[next];
    if (!one) {
      if (!isAllowed()) return;
      tried += 1;
      best = Math.min(best, distance());
      return;
    }
    for (let depth = 0; depth <= programme.columnUpper[one.column]! + 1e-9; depth += 1) {
      value[one.column] = depth;
      go(next + 1);
    }
    value[one.column] = 0;
  };
  go(0);
  return { best, tried };
}

for (const seed of [3, 4, 5, 6, 13])
  test(`garden ${seed}: no whole millimetres on two beds in two weeks are better`, () => {
    const whole = withBeds(madeQuestion(seed, 2), 2);
    const made = readied({
      ...whole,
      sources: whole.sources.filter(({ role }) => role === 'greens'),
      wishes: { ...whole.wishes, bedsADay: null },
    });
    const own = solve(programmeOf(made, null, noCaps(made.beds.length)).programme);
    expect(own.ok).toBe(true);
    if (!own.ok) return;
    const { best, tried } = bestOnGrid(made);
    expect(tried).toBeGreaterThan(0);
    expect(own.value.objective).toBeLessThanOrEqual(best + 1e-6 * Math.max(1, best));
    // and the grid comes near: both speak of the same thing
    expect(best).toBeLessThanOrEqual(own.value.objective * 1.1 + 5);
  });
