// The week's plan in the store: made when wanted, made anew after changes, stopped, and of this garden.
import { describe, expect, test } from 'vitest';
import type { PlanAnswer } from '../../app/core/plan/answer';
import type { PlanQuestion } from '../../app/core/plan/question';
import { success } from '../../app/core/result';
import { planPauseMilliseconds } from '../../app/store/surroundings';
import type { Planner, SettledPlan } from '../../app/worker/planClient';
import { exampleGarden } from '../document/exampleGarden';
import { settle, storeWith } from './surroundings';

/** A planner that answers when the test says so. */
function heldPlanner() {
  const asked: PlanQuestion[] = [];
  let open: ((settled: SettledPlan) => void) | null = null;
  let cancelled = 0;
  const end = (settled: SettledPlan): void => {
    open?.(settled);
    open = null;
  };
  const planner: Planner = {
    warm: () => undefined,
    plan: (question) => {
      asked.push(question);
      return new Promise((resolve) => (open = resolve));
    },
    cancel: () => {
      if (open) cancelled++;
      end({ state: 'superseded' });
    },
    stop: () => end({ state: 'superseded' }),
  };
  return {
    planner,
    asked,
    cancels: () => cancelled,
    answer: async () => {
      const today = asked.at(-1)?.today ?? 0;
      end({
        state: 'answered',
        answer: success({ today, lines: [] as PlanAnswer['lines'] } as PlanAnswer),
      });
      await settle();
    },
    fail: async () => {
      end({ state: 'failed', reason: 'a test' });
      await settle();
    },
  };
}

async function opened() {
  const held = heldPlanner();
  const made = await storeWith(exampleGarden(), { planner: held.planner });
  return { ...made, ...held, plan: () => made.store.getState().plan };
}

describe('the week’s plan', () => {
  test('is made for nobody until it is wanted, then once', async () => {
    const { store, time, asked, plan, answer } = await opened();
    await time.pass(10_000);
    expect(asked).toHaveLength(0);
    store.getState().wantPlan();
    await time.pass(planPauseMilliseconds);
    expect(plan().state).toBe('working');
    await answer();
    expect(plan()).toMatchObject({ state: 'ready', isBehind: false });
    store.getState().wantPlan();
    await time.pass(10_000);
    expect(asked).toHaveLength(1);
  });

  test('is behind after a change, stays in sight, and is made anew after a pause', async () => {
    const { store, time, asked, plan, answer } = await opened();
    store.getState().wantPlan();
    await time.pass(planPauseMilliseconds);
    await answer();
    const [bed] = store.getState().garden!.beds;
    store.getState().editBed(bed!.id, { areaM2: 7 });
    expect(plan()).toMatchObject({ isBehind: true, state: 'working' });
    expect(plan().answer).not.toBeNull();
    await time.pass(planPauseMilliseconds - 1);
    expect(asked).toHaveLength(1);
    await time.pass(1);
    expect(asked).toHaveLength(2);
    await answer();
    expect(plan()).toMatchObject({ isBehind: false, state: 'ready' });
  });

  test('keeps to wishes: nothing here, so much of this, the height of the grass', async () => {
    const { store, time, asked } = await opened();
    const bedId = store.getState().garden!.beds[0]!.id;
    store.getState().wantPlan();
    await time.pass(planPauseMilliseconds);
    store.getState().pinPlan(bedId, 'stock S', 20);
    store.getState().pinPlan(bedId, 'stock T', 5);
    await time.pass(0);
    expect(asked.at(-1)?.wishes.pins).toEqual([
      { bedId, sourceId: 'stock S', litres: 20 },
      { bedId, sourceId: 'stock T', litres: 5 },
    ]);
    store.getState().pinPlan(bedId, null, 0);
    await time.pass(0);
    expect(asked.at(-1)?.wishes.pins).toEqual([{ bedId, sourceId: null, litres: 0 }]);
    store.getState().pinPlan(bedId, null, null);
    store.getState().setGrassHeight('lawn', 'ankle');
    store.getState().setBedsADay(null);
    await time.pass(0);
    expect(asked.at(-1)?.wishes).toEqual({ pins: [], bedsADay: null, heights: { lawn: 'ankle' } });
  });

  test('lets go of an amount once it was laid, or what it speaks of is gone', async () => {
    const { store, time } = await opened();
    const { garden } = store.getState();
    const [one, two] = garden!.beds.map(({ id }) => id);
    const stockId = garden!.stock[0]!.id;
    const pins = () => store.getState().planWishes.pins.map(({ bedId }) => bedId);
    store.getState().wantPlan();
    await time.pass(planPauseMilliseconds);
    store.getState().pinPlan(one!, `stock ${stockId}`, 20);
    store.getState().pinPlan(two!, `stock ${stockId}`, 5);
    store.getState().editBed(one!, { areaM2: 7 });
    expect(pins()).toEqual([one, two]);
    await store.getState().layIt(
      [
        {
          bedId: one!,
          date: '2021-06-20',
          placement: 'laid',
          parts: [
            {
              from: { source: 'stock', stockId },
              amount: { text: '5 L', quantity: { kind: 'volume', litres: 5 }, certainty: 'plain' },
              condition: 'crisp',
              wetness: 'dry',
            },
          ],
          passedStops: [],
        },
      ],
      'without cautions',
    );
    expect(pins()).toEqual([two]);
    store.getState().deleteBed(two!);
    expect(pins()).toEqual([]);
  });

  test('is stopped, and neither a change nor a visit starts it again until it is asked for', async () => {
    const { store, time, asked, plan, cancels } = await opened();
    store.getState().wantPlan();
    await time.pass(planPauseMilliseconds);
    store.getState().stopPlan();
    expect(cancels()).toBe(1);
    expect(plan()).toMatchObject({ state: 'idle', isStopped: true });
    store.getState().editBed(store.getState().garden!.beds[0]!.id, { areaM2: 7 });
    await time.pass(10_000);
    expect(asked).toHaveLength(1);
    store.getState().leavePlan();
    store.getState().wantPlan();
    await time.pass(10_000);
    expect(asked).toHaveLength(1);
    store.getState().resumePlan();
    await time.pass(0);
    expect(asked).toHaveLength(2);
    expect(plan()).toMatchObject({ state: 'working', isStopped: false });
  });

  test('ends when its place is left, and says when it failed', async () => {
    const { store, time, asked, plan, fail } = await opened();
    store.getState().wantPlan();
    await time.pass(planPauseMilliseconds);
    store.getState().leavePlan();
    await settle();
    expect(plan().state).toBe('idle');
    store.getState().editBed(store.getState().garden!.beds[0]!.id, { areaM2: 7 });
    await time.pass(10_000);
    expect(asked).toHaveLength(1);
    store.getState().wantPlan();
    await time.pass(planPauseMilliseconds);
    await fail();
    expect(plan()).toMatchObject({ state: 'failed', reason: 'a test' });
  });
});
