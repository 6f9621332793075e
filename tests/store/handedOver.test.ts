// Answers made of whole runs are handed over by the worker, not copied: nothing of them may be needed there
// afterwards, and nothing may be missing here.
import { freeze } from 'immer';
import { expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { bedQuestion } from '../../app/document/bedQuestion';
import { limits } from '../../app/tables/thresholds';
import { answer } from '../../app/worker/answer';
import { buffersOf } from '../../app/worker/buffersOf';
import { desk } from '../../app/worker/desk';
import type { QuestionOf, Replied } from '../../app/worker/protocol';
import { lookUpEvery } from '../../app/worker/slices';
import { bigGarden } from '../bench/bigGarden';

const garden = freeze(bigGarden({ beds: 3, years: 2, seed: 9 }), true);
const today = dayOf(garden.garden.today!);
const beds = garden.beds.map(({ id }) => bedQuestion(garden, id, today));
const question: QuestionOf<'beds'> = { kind: 'beds', beds, limits };

/** As over a worker's border: what is handed over is gone on its side. */
function overTheBorder() {
  const came: Replied[] = [];
  const take = desk(
    (reply, handedOver = []) => came.push(structuredClone(reply, { transfer: handedOver })),
    () => lookUpEvery(50),
  );
  return { came, ask: (id: number) => take({ id, question: structuredClone(question) }) };
}

test('what comes over is the whole answer, again and again', () => {
  const { came, ask } = overTheBorder();
  for (const id of [1, 2, 3]) ask(id);
  const whole = answer(question);
  expect(came).toEqual([1, 2, 3].map((id) => ({ id, ok: true, answer: whole })));
});

test('all its arrays are handed over, each once, and none is left to be copied', () => {
  const reply = structuredClone(answer(question));
  const buffers = buffersOf(reply);
  expect(new Set(buffers).size).toBe(buffers.length);
  expect(buffers.length).toBeGreaterThan(3 * 40);
  structuredClone(reply, { transfer: buffers });
  expect(buffersOf(reply).every(({ byteLength }) => byteLength === 0)).toBe(true);
});

test('in lists, maps and objects alike', () => {
  const [one, other] = [new Float64Array(2), new Uint8Array(3)];
  const both = new Float64Array(one.buffer, 8, 1);
  expect(
    buffersOf({ a: [one, { b: new Map([['c', other]]) }], both, none: null, text: '' }),
  ).toEqual([one.buffer, other.buffer]);
});
