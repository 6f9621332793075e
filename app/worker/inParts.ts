import type { DrawsAnswer, DrawsQuestion } from '../core/season/draws/runDraws';
import { reasonOf } from './answer';
import type { AskOptions, Progress, QuestionOf, Settled } from './protocol';

/** Asks a part of a question, `at` saying which: 0 is the first. */
export type AskPart = (
  at: number,
  question: QuestionOf<'draws'>,
  options: AskOptions,
) => Promise<Settled<readonly DrawsAnswer[]>>;

/** What a bed's draws cost: the days they step. Those of beds whose draws prove poor cost more. */
const costOf = ({ input, count }: DrawsQuestion): number =>
  count * (input.lastDay - input.firstDay + 1);

/**
 * Deals beds out in their order, each to the part that has least to do so far, so that the first
 * beds are the first to be done.
 *
 * @returns places in `beds` for each part; no part is empty, so there may be fewer of them
 */
export function dealtOut(
  beds: readonly DrawsQuestion[],
  parts: number,
): readonly (readonly number[])[] {
  const dealt = Array.from({ length: Math.min(parts, beds.length) }, () => ({
    cost: 0,
    places: [] as number[],
  }));
  beds.forEach((bed, place) => {
    const next = dealt.reduce((least, part) => (part.cost < least.cost ? part : least));
    next.places.push(place);
    next.cost += costOf(bed);
  });
  return dealt.map(({ places }) => places);
}

/**
 * The imagined seasons of beds, asked in parts that are answered side by side: what is told and
 * answered is as if it had been asked as one, but for the order in which beds are done. A part that
 * fails or is overtaken ends the whole. Never rejects.
 */
export async function askInParts(
  question: QuestionOf<'draws'>,
  options: AskOptions,
  parts: number,
  ask: AskPart,
): Promise<Settled<readonly DrawsAnswer[]>> {
  const { beds } = question;
  if (parts < 2 || beds.length < 2) return ask(0, question, options);
  let dealt: readonly (readonly number[])[];
  try {
    dealt = dealtOut(beds, parts);
  } catch (error) {
    return { state: 'failed', reason: reasonOf(error) };
  }
  const { onProgress, signal } = options;
  const others = new AbortController();
  const end = (): void => others.abort();
  if (signal?.aborted) end();
  signal?.addEventListener('abort', end, { once: true });
  const far = dealt.map((places): Progress => ({
    done: 0,
    of: places.reduce((sum, place) => sum + beds[place]!.count, 0),
  }));
  const answers: DrawsAnswer[] = [];
  let ended: Settled<readonly DrawsAnswer[]> | null = null;

  await Promise.all(
    dealt.map(async (places, at) => {
      const tell = (progress: Progress): void => {
        if (ended) return;
        far[at] = progress;
        onProgress?.({
          ...progress,
          done: far.reduce((sum, { done }) => sum + done, 0),
          of: far.reduce((sum, { of }) => sum + of, 0),
        });
      };
      const part = { ...question, beds: places.map((place) => beds[place]!) };
      const settled = await ask(at, part, { onProgress: tell, signal: others.signal });
      if (settled.state === 'answered') {
        places.forEach((place, own) => (answers[place] = settled.answer[own]!));
        return;
      }
      // the first end is the reason; the other parts only follow
      ended ??= settled;
      end();
    }),
  );
  signal?.removeEventListener('abort', end);
  return ended ?? { state: 'answered', answer: answers };
}
