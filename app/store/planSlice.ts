import type { PlanAnswer } from '../core/plan/answer';
import { usualWishes, type PlanPin, type PlanWishes } from '../core/plan/question';
import { planQuestion } from '../document/planQuestion';
import type { Garden } from '../document/schema';
import type { Planner } from '../worker/planClient';
import type { Read, Write } from './gardenSlice';
import type { PlanSlice, WeekPlan } from './planContract';
import { linesWithOdds } from './planOdds';
import { planPauseMilliseconds, type Surroundings } from './surroundings';
import { todayDayOf } from './today';

/**
 * A pin speaks of a bed, of something to lay, and of one laying: it is done with once any of them
 * is gone or something was laid there.
 */
function isStillAsked(
  { bedId, sourceId }: PlanPin,
  garden: Garden,
  before: Garden | null,
): boolean {
  if (!garden.beds.some(({ id }) => id === bedId)) return false;
  const earlier = new Set(before?.applications.map(({ id }) => id));
  const isLaid =
    before !== null &&
    garden.applications.some((one) => one.bedId === bedId && !earlier.has(one.id));
  if (isLaid) return false;
  if (sourceId === null) return true;
  return (
    garden.stock.some(({ id }) => sourceId === `stock ${id}`) ||
    garden.mowings.some(({ id, rest }) => sourceId === `mowing ${id}` && rest.to === 'undecided')
  );
}

export interface PlanDoor {
  readonly slice: PlanSlice;
  /** garden or day are other than before */
  changed(): void;
}

const noPlan: WeekPlan = {
  state: 'idle',
  answer: null,
  isBehind: false,
  trouble: null,
  reason: null,
  progress: null,
  isStopped: false,
};

/** The week's plan: made while a place that shows it is open, and again when what it rests on changes. */
export function planDoor(
  read: Read,
  write: Write,
  planner: Planner,
  { engine, later, computerToday }: Pick<Surroundings, 'engine' | 'later' | 'computerToday'>,
): PlanDoor {
  let isWanted = false;
  /** the garden that the pins were last held against */
  let known: Garden | null = null;
  let counting: AbortController | null = null;
  let callOff: (() => void) | null = null;

  const put = (changes: Partial<WeekPlan>): void =>
    write((state) => ({ plan: { ...state.plan, ...changes } }));

  /** Odds come after the plan; it is shown without them meanwhile, and stays so where they fail. */
  const count = async (garden: Garden, answer: PlanAnswer): Promise<void> => {
    const controller = new AbortController();
    counting = controller;
    const { signal } = controller;
    try {
      const lines = await linesWithOdds(engine, garden, answer.today, answer, signal);
      if (lines !== null && read().plan.answer === answer) put({ answer: { ...answer, lines } });
    } catch {
      // a plan without odds is a plan
    }
  };

  const make = async (): Promise<void> => {
    const { garden, planWishes } = read();
    if (!garden || !isWanted) return;
    known ??= garden;
    const isStill = (): boolean => read().garden === garden && read().planWishes === planWishes;
    try {
      const question = planQuestion(garden, todayDayOf(read(), computerToday), planWishes);
      const settled = await planner.plan(question, (progress) => {
        if (isStill()) put({ progress });
      });
      if (settled.state === 'superseded' || !isStill()) return;
      if (settled.state === 'failed')
        return put({ state: 'failed', reason: settled.reason, progress: null });
      const made = settled.answer;
      put({
        state: 'ready',
        progress: null,
        reason: null,
        isBehind: false,
        answer: made.ok ? made.value : null,
        trouble: made.ok ? null : made.error,
      });
      if (made.ok) void count(garden, made.value);
    } catch (error) {
      put({
        state: 'failed',
        reason: error instanceof Error ? error.message : String(error),
        progress: null,
      });
    }
  };

  const ask = (pause: number): void => {
    callOff?.();
    callOff = null;
    planner.cancel();
    counting?.abort();
    if (!isWanted || !read().garden || read().plan.isStopped) return;
    put({ state: 'working', progress: null, reason: null });
    callOff = later(pause, () => void make());
  };

  const behind = (): Partial<WeekPlan> => ({ isBehind: read().plan.answer !== null });

  const wish = (change: (wishes: PlanWishes) => PlanWishes): void => {
    write({ planWishes: change(read().planWishes) });
    put(behind());
    ask(0);
  };

  const slice: PlanSlice = {
    plan: noPlan,
    planWishes: usualWishes,
    wantPlan: () => {
      const { plan } = read();
      if (!isWanted) planner.warm();
      isWanted = true;
      const isFresh = plan.state === 'ready' && !plan.isBehind;
      // the beds themselves come first: what they say is what people look for
      if (!isFresh) return ask(planPauseMilliseconds);
      const { garden } = read();
      const lacksOdds = plan.answer?.lines.some(({ odds }) => odds === null) ?? false;
      if (garden && plan.answer && lacksOdds) void count(garden, plan.answer);
    },
    resumePlan: () => {
      put({ isStopped: false });
      ask(0);
    },
    leavePlan: () => {
      isWanted = false;
      callOff?.();
      callOff = null;
      counting?.abort();
      if (read().plan.state !== 'working') return;
      planner.cancel();
      put({ state: 'idle', progress: null });
    },
    stopPlan: () => {
      callOff?.();
      callOff = null;
      planner.cancel();
      put({ state: 'idle', progress: null, isStopped: true });
    },
    pinPlan: (bedId, sourceId, litres) =>
      wish((wishes) => ({
        ...wishes,
        pins: [
          // "none here" and "so much of this" speak of one bed: the newer counts
          ...wishes.pins.filter(
            (pin) =>
              pin.bedId !== bedId ||
              (sourceId !== null && pin.sourceId !== null && pin.sourceId !== sourceId),
          ),
          ...(litres === null ? [] : [{ bedId, sourceId, litres }]),
        ],
      })),
    setBedsADay: (bedsADay) => wish((wishes) => ({ ...wishes, bedsADay })),
    setGrassHeight: (lawnId, height) =>
      wish((wishes) => ({ ...wishes, heights: { ...wishes.heights, [lawnId]: height } })),
  };

  return {
    slice,
    changed: () => {
      const { garden, past, future } = read();
      // another garden altogether: nothing of the old one's plan is of use
      if (!garden || (past.length === 0 && future.length === 0))
        write({ plan: noPlan, planWishes: usualWishes });
      if (!garden) {
        callOff?.();
        planner.cancel();
        return;
      }
      const { planWishes } = read();
      const pins = planWishes.pins.filter((pin) => isStillAsked(pin, garden, known));
      if (pins.length < planWishes.pins.length) write({ planWishes: { ...planWishes, pins } });
      known = garden;
      put(behind());
      ask(planPauseMilliseconds);
    },
  };
}
