// Each line of the week's plan says in how many imagined seasons its bed is better with it.
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import type { PlanAnswer, PlanLayer, PlanLine } from '../../app/core/plan/answer';
import { runPaired, type PairedQuestion } from '../../app/core/plan/pairedDraws';
import type { PlanSourceRef } from '../../app/core/plan/question';
import { success } from '../../app/core/result';
import { planOddsQuestions } from '../../app/document/planOdds';
import { whatIfQuestions } from '../../app/document/whatIfQuestion';
import { planPauseMilliseconds, quickDraws } from '../../app/store/surroundings';
import { limits } from '../../app/tables/thresholds';
import type { Planner } from '../../app/worker/planClient';
import type { Engine, Question, Settled } from '../../app/worker/protocol';
import { exampleGarden } from '../document/exampleGarden';
import { settle, storeWith } from './surroundings';

const today = dayOf('2021-06-20');

const layer = (ref: PlanSourceRef, litres: number): PlanLayer => ({
  layerId: `plan ${ref.source}`,
  sourceId: ref.source,
  ref,
  day: today,
  condition: 'just cut',
  placement: 'laid',
  amount: { litres, counted: null, freshKilograms: 0, dryKilograms: 0, nitrogenGrams: 0 },
  depthMillimetres: litres / 6,
  isPinned: false,
});
const mown = layer({ source: 'mowing', mowingId: 'mowing-2' }, 36);
const toBeMown = layer({ source: 'coming', lawnId: 'lawn-1', day: today }, 36);
const line = (layers: readonly PlanLayer[]) =>
  ({ bedId: 'bed-1', layers, odds: null }) as unknown as PlanLine;
const planOf = (lines: readonly PlanLine[]) => ({ today, lines }) as PlanAnswer;

const plannerOf = (answer: PlanAnswer): Planner => ({
  warm: () => undefined,
  plan: async () => ({ state: 'answered', answer: success(answer) }),
  cancel: () => undefined,
  stop: () => undefined,
});

/** Answers questions about lines of a plan, and nothing else. */
function countingEngine(answers: (lines: readonly PairedQuestion[]) => Promise<Settled<any>>) {
  let asked = 0;
  const engine: Engine = {
    ask: (question: Question): Promise<Settled<any>> => {
      if (question.kind !== 'plan draws') return Promise.resolve({ state: 'superseded' });
      asked += 1;
      return answers(question.lines);
    },
    stop: () => undefined,
  };
  return { engine, asked: () => asked };
}

const counted = (lines: readonly PairedQuestion[]): Promise<Settled<any>> =>
  Promise.resolve({ state: 'answered', answer: lines.map((one) => runPaired(one, limits)) });

describe('odds of the plan’s lines', () => {
  test('come after the plan, and are those of the same layers weighed on the bed’s page', async () => {
    const answer = planOf([line([mown])]);
    let release = (): void => undefined;
    const waits = new Promise<void>((resolve) => (release = resolve));
    const { engine } = countingEngine(async (lines) => {
      await waits;
      return counted(lines);
    });
    const { store, time } = await storeWith(exampleGarden(), {
      engine,
      planner: plannerOf(answer),
    });
    store.getState().wantPlan();
    await time.pass(planPauseMilliseconds);
    const plan = () => store.getState().plan;
    expect(plan()).toMatchObject({ state: 'ready', answer: { lines: [{ odds: null }] } });
    release();
    await settle();
    const { imagined } = whatIfQuestions(
      exampleGarden(),
      'bed-1',
      today,
      [
        [
          {
            id: mown.layerId,
            date: '2021-06-20',
            bedId: 'bed-1',
            from: { source: 'mowing', mowingId: 'mowing-2' },
            amount: { text: '', quantity: { kind: 'volume', litres: 36 }, certainty: 'plain' },
            condition: 'just cut',
            wetness: 'dry',
            placement: 'laid',
            mixtureId: null,
            passedStops: [],
          },
        ],
      ],
      quickDraws,
    );
    const { others, count } = runPaired(imagined, limits);
    expect(plan().answer!.lines[0]!.odds).toEqual({
      better: Math.round(others[0]!.better * count),
      worse: Math.round(others[0]!.worse * count),
      of: count,
    });
  });

  test('count what is to be mown today as mown, and leave the garden as it is', () => {
    const garden = exampleGarden();
    const [asked] = planOddsQuestions(garden, today, planOf([line([toBeMown])]), 5);
    expect(asked!.others[0]!.input.layers).toHaveLength(asked!.base.input.layers.length + 1);
    expect(garden).toEqual(exampleGarden());
  });

  test('that fail leave the plan as it is; lines without any ask for none', async () => {
    const failing = countingEngine(async () => ({ state: 'failed', reason: 'a test' }));
    const made = await storeWith(exampleGarden(), {
      engine: failing.engine,
      planner: plannerOf(planOf([line([mown])])),
    });
    made.store.getState().wantPlan();
    await made.time.pass(planPauseMilliseconds);
    expect(made.store.getState().plan).toMatchObject({
      state: 'ready',
      answer: { lines: [{ odds: null }] },
    });
    const none = countingEngine(counted);
    const empty = await storeWith(exampleGarden(), {
      engine: none.engine,
      planner: plannerOf(planOf([])),
    });
    empty.store.getState().wantPlan();
    await empty.time.pass(planPauseMilliseconds);
    expect(none.asked()).toBe(0);
  });

  test('of a plan that was left meanwhile are counted when it is looked at again', async () => {
    const { engine, asked } = countingEngine(() => Promise.resolve({ state: 'superseded' }));
    const { store, time } = await storeWith(exampleGarden(), {
      engine,
      planner: plannerOf(planOf([line([mown])])),
    });
    store.getState().wantPlan();
    await time.pass(planPauseMilliseconds);
    store.getState().leavePlan();
    store.getState().wantPlan();
    await time.pass(planPauseMilliseconds);
    expect(asked()).toBe(2);
  });
});
