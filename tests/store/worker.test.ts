import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { bedQuestion } from '../../app/document/bedQuestion';
import { limits } from '../../app/tables/thresholds';
import { answer } from '../../app/worker/answer';
import { sameThreadEngine, workerEngine, type WorkerLike } from '../../app/worker/client';
import type { Asked, QuestionOf, Replied } from '../../app/worker/protocol';
import { exampleGarden } from '../document/exampleGarden';

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
    const { id, question } = this.inside[index]!;
    const data: Replied = ok
      ? { id, ok: true, answer: answer(question) }
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
