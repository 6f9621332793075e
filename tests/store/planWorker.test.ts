import { expect, test } from 'vitest';
import type { PlanAnswer } from '../../app/core/plan/answer';
import type { PlanQuestion } from '../../app/core/plan/question';
import { failure, success } from '../../app/core/result';
import {
  sameThreadPlanner,
  workerPlanner,
  type PlanWorkerLike,
  type SettledPlan,
} from '../../app/worker/planClient';
import type { PlanAsked, PlanReplied } from '../../app/worker/planProtocol';

const question = { beds: [], days: [] } as unknown as PlanQuestion;
const answer = success({ today: 1 } as PlanAnswer);

/** A worker whose replies the test gives, one after the other. */
class PlayedWorker implements PlanWorkerLike {
  readonly asked: PlanAsked[] = [];
  isEnded = false;
  refuses = false;
  onmessage: PlanWorkerLike['onmessage'] = null;
  onerror: PlanWorkerLike['onerror'] = null;
  onmessageerror: PlanWorkerLike['onmessageerror'] = null;
  postMessage(message: PlanAsked): void {
    if (this.refuses) throw new Error('it cannot be copied');
    this.asked.push(message);
  }
  terminate(): void {
    this.isEnded = true;
  }
  say(reply: PlanReplied): void {
    this.onmessage?.({ data: reply } as MessageEvent<PlanReplied>);
  }
  lastId(): number {
    const last = this.asked.at(-1);
    return last?.kind === 'plan' ? last.id : NaN;
  }
}

function played(prepare: (worker: PlayedWorker) => void = () => undefined) {
  const workers: PlayedWorker[] = [];
  const planner = workerPlanner(() => {
    const worker = new PlayedWorker();
    prepare(worker);
    workers.push(worker);
    return worker;
  });
  return { planner, workers, last: () => workers.at(-1)! };
}

test('one worker is started by the first warm word and answers one question after the other', async () => {
  const { planner, workers, last } = played();
  planner.warm();
  expect(last().asked).toEqual([{ kind: 'warm' }]);
  const first = planner.plan(question);
  last().say({ kind: 'answered', id: last().lastId(), answer });
  expect(await first).toEqual({ state: 'answered', answer });
  const second = planner.plan(question);
  last().say({ kind: 'answered', id: last().lastId(), answer: failure({ kind: 'no beds' }) });
  expect(await second).toEqual({ state: 'answered', answer: failure({ kind: 'no beds' }) });
  expect(workers).toHaveLength(1);
});

test('progress is told, of the question that is open alone', async () => {
  const { planner, last } = played();
  const told: number[] = [];
  const plan = planner.plan(question, ({ done }) => told.push(done));
  const id = last().lastId();
  last().say({ kind: 'progress', id, progress: { done: 1, of: 3 } });
  last().say({ kind: 'progress', id: id + 1, progress: { done: 9, of: 9 } });
  last().say({ kind: 'answered', id, answer });
  last().say({ kind: 'progress', id, progress: { done: 2, of: 3 } });
  await plan;
  expect(told).toEqual([1]);
});

test('a newer question ends the worker that is busy, and the older settles as superseded', async () => {
  const { planner, workers, last } = played();
  const older = planner.plan(question);
  const newer = planner.plan(question);
  expect(await older).toEqual({ state: 'superseded' });
  expect(workers[0]?.isEnded).toBe(true);
  // what the ended worker still says is not heard
  workers[0]?.say({ kind: 'broken', id: last().lastId(), reason: 'too late' });
  workers[0]?.onerror?.({ message: 'too late' } as ErrorEvent);
  last().say({ kind: 'answered', id: last().lastId(), answer });
  expect(await newer).toEqual({ state: 'answered', answer });
});

test('cancel stops the work and keeps the next question from waiting', async () => {
  const { planner, workers, last } = played();
  const plan = planner.plan(question);
  planner.cancel();
  expect(await plan).toEqual({ state: 'superseded' });
  expect(workers[0]?.isEnded).toBe(true);
  expect(last().asked).toEqual([{ kind: 'warm' }]);
  planner.cancel();
  expect(workers).toHaveLength(2);
});

test('stop lets the worker go and starts no other', async () => {
  const { planner, workers } = played();
  const plan = planner.plan(question);
  planner.stop();
  expect(await plan).toEqual({ state: 'superseded' });
  expect(workers).toHaveLength(1);
  expect(workers[0]?.isEnded).toBe(true);
});

test.each<[string, (worker: PlayedWorker) => void, string]>([
  [
    'says that it broke',
    (worker) => worker.say({ kind: 'broken', id: worker.lastId(), reason: 'a leak' }),
    'a leak',
  ],
  ['falls', (worker) => worker.onerror?.({ message: 'no memory' } as ErrorEvent), 'no memory'],
  [
    'falls without a word',
    (worker) => worker.onerror?.({ message: '' } as ErrorEvent),
    'the worker stopped',
  ],
  [
    'answers what cannot be read',
    (worker) => worker.onmessageerror?.({} as MessageEvent),
    'an answer did not survive the crossing',
  ],
])(
  'a worker that %s fails its question, and the next one is answered',
  async (_how, fail, reason) => {
    const { planner, last } = played();
    const plan = planner.plan(question);
    fail(last());
    expect(await plan).toEqual({ state: 'failed', reason });
    const next = planner.plan(question);
    last().say({ kind: 'answered', id: last().lastId(), answer });
    expect(await next).toEqual({ state: 'answered', answer });
  },
);

test('a question that cannot be sent fails, and a worker that cannot be started', async () => {
  const { planner } = played((worker) => (worker.refuses = true));
  planner.warm();
  expect(await planner.plan(question)).toEqual({ state: 'failed', reason: 'it cannot be copied' });
  const none = workerPlanner(() => {
    throw new Error('no workers here');
  });
  none.warm();
  expect(await none.plan(question)).toEqual({ state: 'failed', reason: 'no workers here' });
});

test('in one thread the newest question wins, and a broken promise is a failure', async () => {
  const planner = sameThreadPlanner(() => failure({ kind: 'no solution' }));
  planner.warm();
  const all: Promise<SettledPlan>[] = [planner.plan(question), planner.plan(question)];
  expect(await Promise.all(all)).toEqual([
    { state: 'superseded' },
    { state: 'answered', answer: failure({ kind: 'no beds' }) },
  ]);
  const cancelled = planner.plan(question);
  planner.cancel();
  expect(await cancelled).toEqual({ state: 'superseded' });
  const stopped = planner.plan(question);
  planner.stop();
  expect(await stopped).toEqual({ state: 'superseded' });
  expect(await planner.plan({} as PlanQuestion)).toMatchObject({ state: 'failed' });
});
