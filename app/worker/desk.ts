import { answer, reasonOf } from './answer';
import { buffersOf } from './buffersOf';
import { isSliced, type Asked, type Question, type QuestionOf, type Replied } from './protocol';
import type { SlicedKind } from './protocol';
import { sharedKept } from './sharedKept';
import { answerInSlices, type LookUp } from './slices';

const isSlicedQuestion = (question: Question): question is QuestionOf<SlicedKind> =>
  isSliced(question.kind);

/** Answers made of whole runs: long, new, and of no further use here. */
const isOfRuns = ({ kind }: Question): boolean =>
  kind === 'beds' ||
  kind === 'proposal' ||
  kind === 'check' ||
  kind === 'what if' ||
  kind === 'ahead';

/**
 * What a worker does with what it is sent. Short questions are answered on the spot; long ones run
 * side by side, a slice of each in turn, and end without a word when they are called off. What it
 * was given to get warm by is left lying as soon as a long question comes, which warms as well.
 *
 * @param post       sends a reply, with the memory in it that may be handed over
 * @param makeLookUp one for each long question
 */
export function desk(
  post: (reply: Replied, handedOver?: ArrayBuffer[]) => void,
  makeLookUp: () => LookUp,
): (message: Asked) => void {
  const shared = sharedKept();
  const running = new Set<number>();

  const slice = async (id: number, question: QuestionOf<SlicedKind>): Promise<void> => {
    running.add(id);
    const isStopped = (): boolean => !running.has(id);
    try {
      const whole = await answerInSlices(question, {
        limits: question.limits,
        shared,
        lookUp: makeLookUp(),
        isStopped,
        tell: (progress) => post({ id, progress }),
      });
      if (whole !== null && !isStopped()) post({ id, ok: true, answer: whole });
    } catch (error) {
      if (!isStopped()) post({ id, ok: false, reason: reasonOf(error) });
    }
    running.delete(id);
  };

  let isCold = true;
  const warmUp = async (question: QuestionOf<'draws'>): Promise<void> => {
    try {
      await answerInSlices(question, {
        limits: question.limits,
        shared: sharedKept(),
        lookUp: makeLookUp(),
        isStopped: () => !isCold,
        tell: () => undefined,
      });
    } catch {
      // nobody asked: what is wrong with the engine shows where somebody does
    }
  };

  return (message) => {
    const { id } = message;
    if ('warm' in message) {
      if (isCold) void warmUp(message.warm);
      return;
    }
    if ('stop' in message) {
      running.delete(id);
      return;
    }
    const { question } = message;
    if (isSlicedQuestion(question)) {
      isCold = false;
      void slice(id, question);
      return;
    }
    let reply: Replied;
    try {
      reply = { id, ok: true, answer: answer(question) };
    } catch (error) {
      reply = { id, ok: false, reason: reasonOf(error) };
    }
    post(reply, isOfRuns(question) ? buffersOf(reply) : []);
  };
}
