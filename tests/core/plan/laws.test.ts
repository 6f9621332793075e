import { beforeAll, describe, expect, test, vi } from 'vitest';
import { textFromDay } from '../../../app/core/days';
import type { PlanAnswer } from '../../../app/core/plan/answer';
import type { LinearProgramme, Solver } from '../../../app/core/plan/linearProgramme';
import { makePlan, planOf } from '../../../app/core/plan/makePlan';
import { usualWishes, type PlanQuestion } from '../../../app/core/plan/question';
import { failure } from '../../../app/core/result';
import { answerProposal } from '../../../app/core/season/bedAnswer';
import { bedQuestion } from '../../../app/document/bedQuestion';
import type { Application, Garden } from '../../../app/document/schema';
import { limits } from '../../../app/tables/thresholds';
import { gardenWithMowing, madeQuestion } from './madeQuestion';
import { steadySolver } from '../../solve/steadySolver';

// Whole plans on a busy machine take their time.
vi.setConfig({ testTimeout: 120_000 });

const seeds = [1, 2, 3, 4, 5, 13];

let solve: Solver;
const plans = new Map<number, PlanAnswer>();

const planFor = (question: PlanQuestion, by: Solver = solve): PlanAnswer => {
  const answer = makePlan(question, by);
  if (!answer.ok) throw new Error(answer.error.kind);
  return answer.value;
};
const planOfSeed = (seed: number): PlanAnswer => {
  const known = plans.get(seed) ?? planFor(madeQuestion(seed));
  plans.set(seed, known);
  return known;
};

beforeAll(async () => {
  solve = await steadySolver();
});

const layersOf = ({ lines }: PlanAnswer) =>
  lines.flatMap(({ bedId, layers }) => layers.map((layer) => ({ bedId, ...layer })));

/** A plan's layers as they would be written into the garden. */
const written = (plan: PlanAnswer): readonly Application[] =>
  layersOf(plan).map(({ bedId, ref, day, amount, condition, placement }, index): Application => {
    if (ref.source === 'coming') throw new Error('Nothing that may come is written down');
    return {
      id: `written ${index}`,
      date: textFromDay(day),
      bedId,
      from: ref,
      amount: {
        text: '',
        quantity: { kind: 'volume', litres: amount.litres },
        certainty: 'plain',
      },
      condition,
      wetness: 'dry',
      placement,
      mixtureId: null,
      passedStops: [],
    };
  });

/** Layers of what is there already: what is only expected today lies on the lawn still. */
const ofWhatIsThere = (plan: PlanAnswer): PlanAnswer => ({
  ...plan,
  lines: plan.lines.map((line) => ({
    ...line,
    layers: line.layers.filter(({ ref }) => ref.source !== 'coming'),
  })),
});

describe.each(seeds)('garden %i', (seed) => {
  test('every kilogram ends somewhere', () => {
    const plan = planOfSeed(seed);
    expect(plan.sources.length).toBeGreaterThan(0);
    for (const { sourceId, was, laid, rest } of plan.sources) {
      const layers = layersOf(plan).filter((layer) => layer.sourceId === sourceId);
      for (const key of ['litres', 'freshKilograms', 'dryKilograms', 'nitrogenGrams'] as const) {
        const sum = layers.reduce((total, { amount }) => total + amount[key], 0);
        expect(laid[key]).toBeCloseTo(sum, 9);
        expect(laid[key] + rest[key]).toBeCloseTo(was[key], 9);
        expect(rest[key]).toBeGreaterThanOrEqual(0);
      }
    }
  });

  test('what is still to be placed has a place that can take it', () => {
    for (const { role, ref, rest, choices } of planOfSeed(seed).sources)
      if (role === 'greens' && ref.source !== 'stock' && rest.litres > 0)
        expect(choices.some(({ not }) => not === null)).toBe(true);
  });

  test('no line raises a caution or a stop, asked as the window asks', () => {
    const plan = ofWhatIsThere(planOfSeed(seed));
    const garden = gardenWithMowing(seed);
    const layers = written(plan);
    for (const { bedId } of plan.lines) {
      const own = layers.filter((layer) => layer.bedId === bedId);
      if (own.length === 0) continue;
      const { cautions } = answerProposal(
        {
          before: bedQuestion(garden, bedId, plan.today),
          after: bedQuestion(garden, bedId, plan.today, own),
          layerIds: own.map(({ id }) => id),
        },
        limits,
      );
      expect(cautions.filter(({ weight }) => weight !== 'note')).toEqual([]);
    }
  });

  test('what a line says of the bed after it is what the bed says of itself', () => {
    const plan = planOfSeed(seed);
    if (plan.lines.some(({ layers }) => layers.some(({ ref }) => ref.source === 'coming'))) return;
    const garden = gardenWithMowing(seed);
    const after: Garden = {
      ...garden,
      applications: [...garden.applications, ...written(plan)],
    };
    for (const { bedId, why } of plan.lines) {
      const { input, facts } = bedQuestion(after, bedId, plan.today);
      const answer = answerProposal(
        {
          before: { input, facts, weekAgo: null },
          after: { input, facts, weekAgo: null },
          layerIds: [],
        },
        limits,
      ).after;
      if (why.after.ratio !== null) expect(answer.verdict.ratio).toBeCloseTo(why.after.ratio, 9);
    }
  });

  test('whole or half buckets, on three beds at most', () => {
    const plan = planOfSeed(seed);
    expect(plan.lines.length).toBeLessThanOrEqual(3);
    for (const { amount } of layersOf(plan)) {
      expect(amount.counted).not.toBeNull();
      const halves = 2 * (amount.counted?.count ?? NaN);
      expect(halves).toBeCloseTo(Math.round(halves), 12);
      expect(halves).toBeGreaterThan(0);
    }
  });

  test('nearest bed first, and every bed in one list or the other', () => {
    const plan = planOfSeed(seed);
    const { beds } = madeQuestion(seed);
    const steps = new Map(beds.map(({ bedId, steps: to }) => [bedId, to ?? 0]));
    for (const list of [plan.lines, plan.leftOut])
      list
        .slice(1)
        .forEach(({ bedId }, at) =>
          expect(steps.get(bedId)!).toBeGreaterThanOrEqual(steps.get(list[at]!.bedId)!),
        );
    expect([...plan.lines, ...plan.leftOut].map(({ bedId }) => bedId).sort()).toEqual(
      beds.map(({ bedId }) => bedId).sort(),
    );
  });

  test('what may come is never more than is expected', () => {
    const plan = planOfSeed(seed);
    const { sources } = madeQuestion(seed);
    for (const { id, litres } of sources) {
      const used = [
        ...plan.coming.filter(({ sourceId }) => sourceId === id),
        ...layersOf(plan).filter(({ sourceId }) => sourceId === id),
      ].reduce((sum, { amount }) => sum + amount.litres, 0);
      expect(used).toBeLessThanOrEqual(litres + 1e-6);
    }
  });

  test('by the full model no line makes a bed worse', () => {
    const { effects, lines } = planOfSeed(seed);
    const total = (of: { nitrogen: number; ground: number }) => of.nitrogen + of.ground;
    expect(total(effects.plan)).toBeLessThanOrEqual(total(effects.doNothing) + 1e-9);
    for (const { why } of lines) expect(why.worth).toBeGreaterThan(0);
  });

  test('the same question twice gives the same answer', () => {
    expect(planFor(madeQuestion(seed))).toEqual(planOfSeed(seed));
  });
});

const objectiveOf = (question: PlanQuestion): number => {
  const made = planOf(question, solve);
  if (!made.ok || made.value.objective === null) throw new Error('not solved');
  return made.value.objective;
};

describe.each([3, 6])('garden %i', (seed) => {
  test('more of anything never makes the best plan worse', () => {
    const question = madeQuestion(seed);
    const before = objectiveOf(question);
    for (const more of question.sources)
      expect(
        objectiveOf({
          ...question,
          sources: question.sources.map((source) =>
            source.id === more.id ? { ...source, litres: source.litres + 40 } : source,
          ),
        }),
      ).toBeLessThanOrEqual(before * (1 + 1e-9) + 1e-6);
  });

  test('beds, sources and pins in another order and by other names: the same plan', () => {
    const question = madeQuestion(seed);
    const renamed: PlanQuestion = {
      ...question,
      sources: [...question.sources].reverse(),
      beds: [...question.beds].reverse().map((bed) => ({
        ...bed,
        bedId: `z${bed.bedId}`,
        question: {
          ...bed.question,
          input: { ...bed.question.input, bedId: `z${bed.bedId}` },
        },
      })),
    };
    const amounts = (plan: PlanAnswer) =>
      layersOf(plan)
        .map(
          ({ bedId, sourceId, amount }) =>
            `${bedId.replace(/^z/, '')} ${sourceId} ${amount.litres}`,
        )
        .sort();
    expect(amounts(planFor(renamed))).toEqual(amounts(planOfSeed(seed)));
  });

  test('twice the ground and twice the stuff: twice the plan', () => {
    const question = madeQuestion(seed);
    const doubled: PlanQuestion = {
      ...question,
      sources: question.sources.map((source) => ({
        ...source,
        litres: 2 * source.litres,
        stepLitres: 2 * source.stepLitres,
      })),
      beds: question.beds.map((bed) => ({
        ...bed,
        question: {
          ...bed.question,
          input: { ...bed.question.input, areaM2: 2 * bed.question.input.areaM2 },
        },
      })),
    };
    expect(objectiveOf(doubled)).toBeCloseTo(2 * objectiveOf(question), 5);
    const litres = (plan: PlanAnswer) => layersOf(plan).map(({ amount }) => amount.litres);
    litres(planFor(doubled)).forEach((one, at) =>
      expect(one).toBeCloseTo(2 * litres(planOfSeed(seed))[at]!, 6),
    );
  });

  test('pins are kept: none here, and exactly this', () => {
    const question = madeQuestion(seed);
    const bed = question.beds[0]!.bedId;
    const greens = question.sources.find(({ ref }) => ref.source === 'mowing')!.id;
    const none = planFor({
      ...question,
      wishes: { ...usualWishes, pins: [{ bedId: bed, sourceId: null, litres: 0 }] },
    });
    expect(none.lines.map(({ bedId }) => bedId)).not.toContain(bed);
    expect(none.leftOut.find(({ bedId }) => bedId === bed)?.reason.kind).toBe('pinned');

    const exactly = planFor({
      ...question,
      wishes: { ...usualWishes, pins: [{ bedId: bed, sourceId: greens, litres: 37 }] },
    });
    const own = layersOf(exactly).filter(
      ({ bedId, sourceId }) => bedId === bed && sourceId === greens,
    );
    expect(own).toHaveLength(1);
    expect(own[0]).toMatchObject({ isPinned: true });
    expect(own[0]?.amount.litres).toBeCloseTo(37, 9);
    expect(exactly.lines.length).toBeLessThanOrEqual(3);
  });

  test('as many beds as are asked for', () => {
    const question = madeQuestion(seed);
    const one = planFor({ ...question, wishes: { ...usualWishes, bedsADay: 1 } });
    expect(one.lines.length).toBeLessThanOrEqual(1);
    const many = planFor({ ...question, wishes: { ...usualWishes, bedsADay: null } });
    expect(many.leftOut.map(({ reason }) => reason.kind)).not.toContain('beds a day');
    if (one.how.kind !== 'solved' || many.how.kind !== 'solved') throw new Error('not solved');
    expect(many.how.objective).toBeLessThanOrEqual(one.how.objective + 1e-9);
  });

  test('without a bucket, five litres at a time', () => {
    const garden = { ...gardenWithMowing(seed), containers: [] };
    expect(garden.containers).toEqual([]);
    const question = madeQuestion(seed);
    const plan = planFor({
      ...question,
      sources: question.sources.map((source) => ({ ...source, measure: null, stepLitres: 5 })),
    });
    for (const { amount } of layersOf(plan)) {
      expect(amount.counted).toBeNull();
      expect(amount.litres / 5).toBeCloseTo(Math.round(amount.litres / 5), 9);
    }
  });
});

describe('where no solver answers', () => {
  const broken: Solver = () => failure({ kind: 'solver failed', reason: 'not there' });

  test.each(seeds)(
    'garden %i: the hungriest bed first, thinly, and nothing that is cautioned',
    (seed) => {
      const plan = planFor(madeQuestion(seed), broken);
      expect(plan.how).toEqual({
        kind: 'simple rule',
        because: { kind: 'solver failed', reason: 'not there' },
      });
      expect(plan.lines.length).toBeLessThanOrEqual(3);
      for (const { cautions } of plan.lines)
        expect(cautions.filter(({ weight }) => weight !== 'note')).toEqual([]);
      for (const { depthMillimetres, condition } of layersOf(plan))
        expect(depthMillimetres).toBeLessThanOrEqual(
          limits.lines[condition === 'just cut' ? 'layer just cut' : 'layer crisp'].note + 1e-6,
        );
      for (const { was, laid, rest } of plan.sources)
        expect(laid.litres + rest.litres).toBeCloseTo(was.litres, 9);
    },
  );

  test('it does lay something somewhere', () => {
    expect(seeds.some((seed) => planFor(madeQuestion(seed), broken).lines.length > 0)).toBe(true);
  });
});

describe('what only the gardener can settle', () => {
  test('pins for more than there is', () => {
    const question = madeQuestion(3);
    const { id, litres } = question.sources.find(({ ref }) => ref.source === 'mowing')!;
    const pins = question.beds
      .slice(0, 2)
      .map(({ bedId }) => ({ bedId, sourceId: id, litres: litres * 0.6 }));
    expect(makePlan({ ...question, wishes: { ...usualWishes, pins } }, solve)).toEqual(
      failure({ kind: 'pinned too much', sourceId: id, asked: 1.2 * litres, there: litres }),
    );
  });

  test('pins for what is not there', () => {
    const question = madeQuestion(3);
    const bedId = question.beds[0]!.bedId;
    const coming = question.sources.find(({ day }) => day !== null && day > question.today)!;
    for (const pin of [
      { bedId: 'no bed', sourceId: null, litres: 0 },
      { bedId, sourceId: 'no source', litres: 5 },
      { bedId, sourceId: coming.id, litres: 5 },
    ]) {
      const answer = makePlan({ ...question, wishes: { ...usualWishes, pins: [pin] } }, solve);
      expect(answer).toEqual(
        failure({ kind: 'pinned unknown', bedId: pin.bedId, sourceId: pin.sourceId }),
      );
    }
  });

  test('no bed, and nothing to lay', () => {
    const question = madeQuestion(3);
    expect(makePlan({ ...question, beds: [] }, solve)).toEqual(failure({ kind: 'no beds' }));
    // where a bed is over-fed there is still that to be mended
    const seed = seeds.find((one) => planOfSeed(one).mends.length === 0)!;
    expect(makePlan({ ...madeQuestion(seed), sources: [], lawns: [] }, solve)).toEqual(
      failure({ kind: 'nothing to lay' }),
    );
  });
});

test('steps done are told in order, up to the last', () => {
  const told: number[] = [];
  const question = madeQuestion(3);
  makePlan(question, solve, ({ done, of }) => {
    expect(of).toBe(question.beds.length + 3);
    told.push(done);
  });
  expect(told).toEqual([...told].sort((one, other) => one - other));
  expect(told.at(-1)).toBe(question.beds.length + 3);
});

test('the programme is made of plain numbers', () => {
  let seen: LinearProgramme | null = null;
  makePlan(madeQuestion(3), (programme) => {
    seen ??= programme;
    return failure({ kind: 'no solution' });
  });
  expect(seen).not.toBeNull();
  const { cost, rows, rowUpper, rowLower } = seen!;
  for (const list of [cost, rows.values]) expect(list.every(Number.isFinite)).toBe(true);
  expect(rowUpper.length).toBe(rowLower.length);
  expect(rows.starts.length).toBe(rowLower.length + 1);
});
