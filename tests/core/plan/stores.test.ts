// What stands in store: compost and meals for hungry beds, leaves kept back for the heap, the hoe.
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { dayOf } from '../../../app/core/days';
import { partnerForRatio } from '../../../app/core/cover/mix';
import type { PlanAnswer } from '../../../app/core/plan/answer';
import { keptLeaves, shareOf } from '../../../app/core/plan/keptLeaves';
import type { Solver } from '../../../app/core/plan/linearProgramme';
import { makePlan } from '../../../app/core/plan/makePlan';
import type { PlanQuestion } from '../../../app/core/plan/question';
import { ready } from '../../../app/core/plan/ready';
import { parseGarden } from '../../../app/document/parse';
import { planQuestion } from '../../../app/document/planQuestion';
import type { Garden } from '../../../app/document/schema';
import { limits } from '../../../app/tables/thresholds';
import { steadySolver } from '../../solve/steadySolver';

// Whole plans on a busy machine take their time.
vi.setConfig({ testTimeout: 120_000 });

const parsed = parseGarden(readFileSync('assets/gardens/sample.mowings', 'utf8'));
if (!parsed.ok) throw new Error('no sample');
const sample: Garden = parsed.value;
const today = dayOf(sample.garden.today ?? '');
const question = planQuestion(sample, today);

let solve: Solver;
let plan: PlanAnswer;
const planFor = (of: PlanQuestion): PlanAnswer => {
  const answer = makePlan(of, solve);
  if (!answer.ok) throw new Error(answer.error.kind);
  return answer.value;
};
beforeAll(async () => {
  solve = await steadySolver();
  plan = planFor(question);
});

const layersFrom = ({ lines }: PlanAnswer, sourceId: string) =>
  lines.flatMap((line) =>
    line.layers.filter((layer) => layer.sourceId === sourceId).map((layer) => ({ line, layer })),
  );

describe('compost', () => {
  const compost = 'stock stock-compost';

  test('goes to hungry beds alone, under a centimetre, and every gram ends somewhere', () => {
    const laid = layersFrom(plan, compost);
    expect(laid.length).toBeGreaterThan(0);
    for (const { line, layer } of laid) {
      const { supply, need } = line.why.before;
      expect(supply).toBeLessThan(question.weights.lowShare * need);
      expect(layer.depthMillimetres).toBeLessThanOrEqual(limits.lines['compost depth'].note + 1e-6);
    }
    const account = plan.sources.find(({ sourceId }) => sourceId === compost)!;
    for (const key of ['litres', 'dryKilograms', 'nitrogenGrams'] as const) {
      const sum = laid.reduce((total, { layer }) => total + layer.amount[key], 0);
      expect(account.laid[key]).toBeCloseTo(sum, 9);
      expect(account.laid[key] + account.rest[key]).toBeCloseTo(account.was[key], 9);
    }
    expect(account.choices).toEqual([]);
  });

  test('raw manure in its place is kept off what is picked within the wait', () => {
    const withManure = planQuestion(
      {
        ...sample,
        stock: sample.stock.map((stock) =>
          stock.id === 'stock-compost' ? { ...stock, materialId: 'manure-cow-fresh' } : stock,
        ),
      },
      today,
    );
    const source = withManure.sources.find(({ role }) => role === 'feed')!;
    expect(source.facts.isRawManure).toBe(true);
    const made = ready(withManure);
    if (!made.ok) throw new Error(made.error.kind);
    const at = made.value.sources.findIndex(({ id }) => id === source.id);
    const far = made.value.beds.find(({ bed }) => bed.bedId === 'bed-far')!;
    const layer = far.response.layers.find((one) => one.source === at)!;
    // sweet corn sown on 18 May is picked long before 90 days from 15 June are over
    expect(layer.blocked?.kind).toBe('raw manure');
    for (const { line } of layersFrom(planFor(withManure), source.id))
      expect(line.cautions.filter(({ weight }) => weight !== 'note')).toEqual([]);
  });
});

describe('leaves kept back', () => {
  const leaves = question.sources.find(({ id }) => id === 'stock stock-leaves')!;

  test('half of what three mowings want on the heap, half of the store at most', () => {
    const kept = keptLeaves(question);
    expect([...kept.keys()]).toEqual([leaves.id]);
    expect(kept.get(leaves.id)).toBeCloseTo(leaves.litres / 2, 9);
    const few = question.sources.filter(
      ({ ref, id }) => ref.source === 'mowing' || id === leaves.id,
    );
    const [mowing] = few.filter(({ ref }) => ref.source === 'mowing');
    const little: PlanQuestion = {
      ...question,
      sources: few.map((one) => (one === mowing ? { ...one, litres: 20 } : one)),
    };
    const wanted = partnerForRatio(
      shareOf(mowing!, 10),
      shareOf(leaves, 1),
      question.weights.heapCarbonToNitrogen,
    );
    if (!wanted.ok) throw new Error('no mixture');
    expect(keptLeaves(little).get(leaves.id)).toBeCloseTo(
      wanted.value / leaves.oneMillimetre.freshKgPerM2,
      9,
    );
  });

  test('none without a heap, nor for a lawn that is held back', () => {
    expect(keptLeaves({ ...question, heapStockId: null }).size).toBe(0);
    const held = question.lawns.find(({ heldBack }) => heldBack !== null)!.heldBack;
    const sources = question.sources.map((one) =>
      one.role === 'greens' ? { ...one, heldBack: held } : one,
    );
    expect(keptLeaves({ ...question, sources }).size).toBe(0);
  });

  test('the plan lays no more than the rest, this week and later, and says what it keeps', () => {
    const laid = layersFrom(plan, leaves.id).reduce(
      (sum, { layer }) => sum + layer.amount.litres,
      0,
    );
    const later = plan.coming
      .filter(({ sourceId }) => sourceId === leaves.id)
      .reduce((sum, { amount }) => sum + amount.litres, 0);
    expect(laid + later).toBeLessThanOrEqual(leaves.litres / 2 + 1e-6);
    const account = plan.sources.find(({ sourceId }) => sourceId === leaves.id)!;
    expect(account.kept?.litres).toBeCloseTo(leaves.litres / 2, 9);
    expect(plan.sources.filter(({ kept }) => kept !== null)).toEqual([account]);
  });
});

describe('the hoe', () => {
  test('is offered on open hungry beds where something stands, today, and never for browns', () => {
    const made = ready(question);
    if (!made.ok) throw new Error(made.error.kind);
    let offered = 0;
    for (const { response, base, aim, bed } of made.value.beds)
      for (const layer of response.layers) {
        if (layer.placement !== 'hoed') continue;
        offered += 1;
        expect(layer.day).toBe(0);
        expect(made.value.sources[layer.source]!.role).not.toBe('browns');
        expect(base.verdict.coverState).toMatch(/bare|thin/);
        expect(response.supplies[0]).toBeLessThan(question.weights.lowShare * aim.need);
        // it hides no ground, and feeds more than the same on top
        const laid = response.layers.find(
          (one) => one.source === layer.source && one.day === 0 && one.placement === 'laid',
        )!;
        expect(layer.dry[0]).toBeCloseTo(0, 12);
        expect(laid.dry[0]).toBeGreaterThan(0.01);
        if (bed.bedId === 'bed-far' && made.value.sources[layer.source]!.role === 'greens')
          expect(layer.supplies[0]).toBeGreaterThan(laid.supplies[0]!);
      }
    expect(offered).toBeGreaterThan(0);
  });

  test('where only today’s feeding counts it is what the hungry bed gets', () => {
    const bare = planFor({
      ...question,
      sources: question.sources.filter(({ ref }) => ref.source !== 'stock'),
      weights: { ...question.weights, groundGrams: 0, inHand: 1 },
    });
    const far = bare.lines.find(({ bedId }) => bedId === 'bed-far');
    expect(far?.layers.map(({ placement }) => placement)).toEqual(['hoed']);
    expect(far?.why.turns.map(({ kind }) => kind)).not.toContain('hoed in');
    expect(far!.why.after.supply).toBeGreaterThan(far!.why.before.supply + 1);
  });
});

test('less than half a bucket of a mowing is laid whole, and told in litres', () => {
  const little = planFor({
    ...question,
    sources: question.sources.flatMap((source) => {
      if (source.ref.source === 'stock') return [];
      return source.ref.source === 'mowing' ? [{ ...source, litres: 4.6 }] : [source];
    }),
  });
  const [one] = layersFrom(little, question.sources.find(({ ref }) => ref.source === 'mowing')!.id);
  expect(one?.layer.amount).toMatchObject({ counted: null });
  expect(one?.layer.amount.litres).toBeCloseTo(4.6, 9);
});
