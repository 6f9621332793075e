import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { runDraws, type DrawsAnswer } from '../../app/core/season/draws/runDraws';
import { bedQuestion } from '../../app/document/bedQuestion';
import { drawsQuestions } from '../../app/document/drawsQuestion';
import { limits } from '../../app/tables/thresholds';
import { answer, type ShortQuestion } from '../../app/worker/answer';
import { sameThreadEngine, workerEngine, type WorkerLike } from '../../app/worker/client';
import type {
  Asked,
  Progress,
  Question,
  QuestionOf,
  Replied,
  Settled,
} from '../../app/worker/protocol';
import { lookUpEvery } from '../../app/worker/slices';
import { exampleGarden } from '../document/exampleGarden';
import { turn, WorkingWorker } from './workingWorker';

const today = dayOf('2021-06-20');
const beds = (): QuestionOf<'beds'> => ({
  kind: 'beds',
  beds: [bedQuestion(exampleGarden(), 'bed-1', today)],
  limits,
});
const empty = (kind: 'beds' | 'proposal' | 'check'): any => ({ kind, beds: [], limits });

/** A worker whose answers come when the test says so. */
class FakeWorker implements WorkerLike {
  static made: FakeWorker[] = [];
  readonly inside: Asked[] = [];
  terminated = false;
  onmessage: WorkerLike['onmessage'] = null;
  onerror: WorkerLike['onerror'] = null;
  onmessageerror: WorkerLike['onmessageerror'] = null;
  constructor() {
    FakeWorker.made.push(this);
  }
  postMessage(message: Asked): void {
    this.inside.push(structuredClone(message));
  }
  terminate(): void {
    this.terminated = true;
  }
  reply(index: number, ok = true): void {
    const asked = this.inside[index]!;
    if (!('question' in asked)) throw new Error('not a question');
    const { id, question } = asked;
    const data: Replied = ok
      ? { id, ok: true, answer: answer(question as ShortQuestion) }
      : { id, ok: false, reason: 'it broke' };
    this.onmessage?.({ data } as MessageEvent<Replied>);
  }
}
const fresh = () => {
  FakeWorker.made = [];
  return workerEngine(() => new FakeWorker());
};
const only = (): FakeWorker => FakeWorker.made[0]!;

describe('the worker answers the newest question', () => {
  test('an answer comes back to its own question, over the crossing', async () => {
    const engine = fresh();
    const asked = engine.ask<'beds'>(beds());
    only().reply(0);
    const settled = await asked;
    expect(settled).toMatchObject({ state: 'answered', answer: [{ bedId: 'bed-1' }] });
    if (settled.state !== 'answered') return;
    expect(settled.answer[0]!.season.residual).toBeLessThan(1e-9);
    expect(settled.answer).toEqual(answer(beds()));
  });
  test('a newer question of the kind supersedes the one inside at once, and its late answer settles nothing', async () => {
    const engine = fresh();
    const first = engine.ask<'beds'>(empty('beds'));
    const second = engine.ask<'beds'>(beds());
    expect(await first).toEqual({ state: 'superseded' });
    only().reply(0);
    await Promise.resolve();
    only().reply(1);
    expect(await second).toMatchObject({ state: 'answered', answer: [{ bedId: 'bed-1' }] });
  });
  test('of many that wait, only the newest is ever computed', async () => {
    const engine = fresh();
    const all = Array.from({ length: 20 }, () => engine.ask<'beds'>(empty('beds')));
    only().reply(0);
    only().reply(1);
    const states = (await Promise.all(all)).map(({ state }) => state);
    expect(states.filter((state) => state === 'superseded')).toHaveLength(19);
    expect(states.at(-1)).toBe('answered');
    expect(only().inside).toHaveLength(2);
  });
  test('kinds do not supersede each other; the slow look back has a worker of its own', async () => {
    const engine = fresh();
    const one = engine.ask<'beds'>(empty('beds'));
    const two = engine.ask<'proposal'>(empty('proposal'));
    const past = engine.ask<'history'>({ kind: 'history', weeks: [], limits });
    expect(FakeWorker.made).toHaveLength(2);
    FakeWorker.made[1]!.reply(0);
    expect(await past).toEqual({ state: 'answered', answer: [] });
    only().reply(0);
    only().reply(1);
    expect(await one).toMatchObject({ state: 'answered' });
    expect(await two).toMatchObject({ state: 'answered' });
  });
  test('an error arrives as text and the worker goes on', async () => {
    const engine = fresh();
    const failing = engine.ask<'beds'>(empty('beds'));
    only().reply(0, false);
    expect(await failing).toEqual({ state: 'failed', reason: 'it broke' });
    const next = engine.ask<'beds'>(empty('beds'));
    only().reply(1);
    expect(await next).toMatchObject({ state: 'answered' });
    expect(FakeWorker.made).toHaveLength(1);
  });
  test('a worker that dies fails what was in it; what waited gets a new worker', async () => {
    const engine = fresh();
    const lost = engine.ask<'beds'>(empty('beds'));
    const waiting = engine.ask<'proposal'>(empty('proposal'));
    only().onerror?.({ message: 'out of memory' } as ErrorEvent);
    expect(await lost).toEqual({ state: 'failed', reason: 'out of memory' });
    expect(only().terminated).toBe(true);
    FakeWorker.made[1]!.reply(0);
    expect(await waiting).toMatchObject({ state: 'answered' });
  });
  test('a worker that cannot be made is a failure, not a crash', async () => {
    const engine = workerEngine(() => {
      throw new Error('no workers here');
    });
    expect(await engine.ask<'beds'>(empty('beds'))).toEqual({
      state: 'failed',
      reason: 'no workers here',
    });
  });
  test('stopped, everything open is superseded', async () => {
    const engine = fresh();
    const open = [engine.ask<'beds'>(empty('beds')), engine.ask<'check'>(empty('check'))];
    engine.stop();
    expect(await Promise.all(open)).toEqual([{ state: 'superseded' }, { state: 'superseded' }]);
    expect(only().terminated).toBe(true);
  });
});

describe('the same without a worker', () => {
  test('the newest of one breath is answered', async () => {
    const engine = sameThreadEngine();
    const [first, second] = await Promise.all([
      engine.ask<'beds'>(empty('beds')),
      engine.ask<'beds'>(beds()),
    ]);
    expect(first).toEqual({ state: 'superseded' });
    expect(second).toMatchObject({ state: 'answered', answer: [{ bedId: 'bed-1' }] });
  });
  test('an error is text', async () => {
    const engine = sameThreadEngine();
    const broken = { ...beds(), beds: [{}] } as never;
    expect(await engine.ask<'beds'>(broken)).toMatchObject({ state: 'failed' });
  });
});

const bedIds = ['bed-1', 'bed-2'];
const count = 60;
const draws = (number = count): QuestionOf<'draws'> => ({
  kind: 'draws',
  beds: drawsQuestions(exampleGarden(), bedIds, today, number),
  limits,
});
const proposalDraws = (): QuestionOf<'proposal draws'> => {
  const [before, after] = draws().beds;
  return { kind: 'proposal draws', beds: [{ before: before!, after: after! }], limits };
};
const known = new Map<number, DrawsAnswer[]>();
const alone = (number = count): DrawsAnswer[] => {
  const found = known.get(number) ?? draws(number).beds.map((bed) => runDraws(bed, limits)!);
  known.set(number, found);
  return found;
};
const working = () => {
  WorkingWorker.made = [];
  return workerEngine(() => new WorkingWorker());
};
const answered = <Answer>(settled: Settled<Answer>): Answer => {
  if (settled.state !== 'answered') throw new Error(settled.state);
  return settled.answer;
};

describe.each([
  ['a worker', working],
  ['this thread', () => sameThreadEngine(() => lookUpEvery(10))],
])('imagined seasons in %s', (_where, make) => {
  test('are what the sums alone say, bed after bed', async () => {
    expect(answered(await make().ask<'draws'>(draws()))).toEqual(alone());
  });

  test('asked again or for another number, the answer is as if asked first', async () => {
    const engine = make();
    for (const number of [20, 40, 20, 30, 40])
      expect(answered(await engine.ask<'draws'>(draws(number)))).toEqual(alone(number));
  });

  test('with and without a layer come in pairs', async () => {
    const [pair] = answered(await make().ask<'proposal draws'>(proposalDraws()));
    const [before, after] = alone();
    expect(pair).toEqual({ bedId: 'bed-1', before, after });
  });

  test('tell how far they are, and of each bed as it is done', async () => {
    const told: Progress[] = [];
    await make().ask<'draws'>(draws(), { onProgress: (progress) => told.push(progress) });
    expect(told.length).toBeGreaterThan(8);
    const done = told.map((progress) => progress.done);
    expect(done).toEqual(done.toSorted((one, other) => one - other));
    expect(told.every(({ of }) => of === 2 * count)).toBe(true);
    expect(done.at(-1)).toBe(2 * count);
    expect(told.flatMap(({ bed }) => (bed ? [bed] : []))).toEqual(alone());
  });

  test('a newer question calls off the older one within a slice, which then says nothing', async () => {
    const engine = make();
    const told: Progress[] = [];
    const newer: Promise<Settled<unknown>>[] = [];
    const older = engine.ask<'draws'>(draws(500), {
      onProgress: (progress) => {
        told.push(progress);
        if (newer.length === 0) newer.push(engine.ask<'draws'>(draws()));
      },
    });
    expect(await older).toEqual({ state: 'superseded' });
    expect(answered((await newer[0])!)).toEqual(alone());
    expect(told).toEqual([{ done: 10, of: 1000 }]);
  });

  test('called off they leave no half answer, and the next question is answered', async () => {
    const engine = make();
    const controller = new AbortController();
    const told: Progress[] = [];
    const stopped = engine.ask<'draws'>(draws(), {
      signal: controller.signal,
      onProgress: (progress) => {
        told.push(progress);
        if (progress.done >= count + 20) controller.abort();
      },
    });
    expect(await stopped).toEqual({ state: 'superseded' });
    const toldThen = told.length;
    // the first bed was whole by then, the second is not told of
    expect(told.flatMap(({ bed }) => (bed ? [bed] : []))).toEqual(alone().slice(0, 1));
    for (let wait = 0; wait < 20; wait++) await turn();
    expect(told).toHaveLength(toldThen);
    expect(answered(await engine.ask<'draws'>(draws()))).toEqual(alone());
    expect(await engine.ask<'draws'>(draws(), { signal: controller.signal })).toEqual({
      state: 'superseded',
    });
  });

  test('both kinds run side by side and do not end each other', async () => {
    const engine = make();
    const [all, pairs] = await Promise.all([
      engine.ask<'draws'>(draws()),
      engine.ask<'proposal draws'>(proposalDraws()),
    ]);
    expect(answered(all)).toEqual(alone());
    expect(answered(pairs)).toHaveLength(1);
  });

  test('a broken promise of ours is a reason, not silence', async () => {
    const broken = { kind: 'draws', beds: [{}], limits } as never;
    expect(await make().ask<'draws'>(broken)).toMatchObject({ state: 'failed' });
  });

  test('stopped, they are superseded', async () => {
    const engine = make();
    const open = engine.ask<'draws'>(draws());
    engine.stop();
    expect(await open).toEqual({ state: 'superseded' });
  });
});

describe('the worker of the imagined seasons', () => {
  test('is another than that of the screen, which answers meanwhile; never more than two', async () => {
    const engine = working();
    const order: string[] = [];
    const note = async (question: Question): Promise<void> => {
      await engine.ask(question as never);
      order.push(question.kind);
    };
    await Promise.all([
      note(draws(200)),
      note(proposalDraws()),
      note({ kind: 'history', weeks: [], limits }),
      note(beds()),
      note(empty('proposal')),
      note(empty('check')),
    ]);
    expect(order.at(-1)).toBe('draws');
    expect(order.indexOf('beds')).toBeLessThan(order.indexOf('proposal draws'));
    expect(WorkingWorker.made).toHaveLength(2);
  });

  test('hears that a question is of no use, and never answers it', async () => {
    const engine = working();
    const older = engine.ask<'draws'>(draws(200));
    await engine.ask<'draws'>(draws(20));
    expect(await older).toEqual({ state: 'superseded' });
    const [worker] = WorkingWorker.made;
    const stopped = worker!.heard.find((message) => 'stop' in message)!;
    expect(worker!.said.filter((reply) => reply.id === stopped.id && 'ok' in reply)).toEqual([]);
  });

  test('dies with all that was in it, and the next question has a new one', async () => {
    const engine = working();
    const lost = engine.ask<'draws'>(draws(200));
    const alsoLost = engine.ask<'proposal draws'>(proposalDraws());
    WorkingWorker.made[0]!.onerror?.({ message: 'out of memory' } as ErrorEvent);
    expect([await lost, await alsoLost]).toEqual([
      { state: 'failed', reason: 'out of memory' },
      { state: 'failed', reason: 'out of memory' },
    ]);
    expect(answered(await engine.ask<'draws'>(draws()))).toEqual(alone());
    expect(WorkingWorker.made).toHaveLength(2);
  });
});
