import { produce } from 'immer';
import { faultOfChange } from '../document/change';
import type { Garden } from '../document/schema';
import { whatIfQuestions, type WhatIfQuestions } from '../document/whatIfQuestion';
import { limits } from '../tables/thresholds';
import type { Read, Write } from './gardenSlice';
import { applicationsOf, withPassedStops } from './proposal';
import { proposalPauseMilliseconds, quickDraws, type Surroundings } from './surroundings';
import { todayDayOf } from './today';
import type { WhatIf, WhatIfDraft, WhatIfDraws, WhatIfSlice } from './whatIfContract';

export interface WhatIfDoor {
  readonly slice: WhatIfSlice;
  /** garden or day are other than before: what is thought of is weighed again */
  changed(): void;
}

const noDraws: WhatIfDraws = {
  state: 'idle',
  done: 0,
  of: 0,
  reason: null,
  odds: {},
  count: 0,
  effectiveCount: 0,
};

const messageOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

const byKey = <Value>(
  drafts: readonly WhatIfDraft[],
  values: readonly Value[],
): Record<string, Value> =>
  Object.fromEntries(
    drafts.flatMap(({ key }, at) => {
      const value = values[at];
      return value === undefined ? [] : [[key, value] as const];
    }),
  );

/** A bed with this or that: first by the likely course, then against itself in imagined seasons. */
export function whatIfDoor(
  read: Read,
  write: Write,
  { engine, later, computerToday }: Pick<Surroundings, 'engine' | 'later' | 'computerToday'>,
): WhatIfDoor {
  let callOff: (() => void) | null = null;
  let running: AbortController | null = null;
  /** of `read().whatIf.drafts`, so that what was stopped can go on */
  let questions: WhatIfQuestions | null = null;

  const end = (): void => {
    callOff?.();
    callOff = null;
    running?.abort();
    running = null;
  };
  const put = (drafts: readonly WhatIfDraft[], changes: Partial<WhatIf>): void => {
    const { whatIf } = read();
    if (whatIf?.drafts === drafts) write({ whatIf: { ...whatIf, ...changes } });
  };
  const putDraws = (drafts: readonly WhatIfDraft[], changes: Partial<WhatIfDraws>): void => {
    const { whatIf } = read();
    if (whatIf?.drafts === drafts) put(drafts, { draws: { ...whatIf.draws, ...changes } });
  };

  const imagine = async (
    drafts: readonly WhatIfDraft[],
    { imagined }: WhatIfQuestions,
  ): Promise<void> => {
    running?.abort();
    const controller = new AbortController();
    running = controller;
    const { signal } = controller;
    const of = imagined.base.count * (1 + imagined.others.length);
    putDraws(drafts, { ...noDraws, state: 'working', of });
    try {
      const question = { kind: 'what if draws', paired: imagined, limits } as const;
      const settled = await engine.ask<'what if draws'>(question, {
        signal,
        onProgress: (progress) => {
          if (!signal.aborted) putDraws(drafts, { done: progress.done, of: progress.of });
        },
      });
      if (signal.aborted || settled.state === 'superseded') return;
      if (settled.state === 'failed')
        return putDraws(drafts, { state: 'failed', reason: settled.reason });
      const { others, count, effectiveCount } = settled.answer;
      putDraws(drafts, { state: 'ready', odds: byKey(drafts, others), count, effectiveCount });
    } catch (error) {
      if (!signal.aborted) putDraws(drafts, { state: 'failed', reason: messageOf(error) });
    }
  };

  const weigh = async (bedId: string, drafts: readonly WhatIfDraft[]): Promise<void> => {
    const { garden } = read();
    if (!garden) return;
    const fail = (reason: string): void => put(drafts, { state: 'failed', reason });
    try {
      const layers = drafts.map(({ draft }) => applicationsOf(garden, [draft]));
      for (const applications of layers) {
        const hypothetical = produce(garden, (made: Garden) => {
          made.applications.push(...applications);
        });
        const fault = faultOfChange(garden, hypothetical);
        if (fault) return fail(`${fault.where}: ${fault.what}`);
      }
      const today = todayDayOf(read(), computerToday);
      const asked = whatIfQuestions(garden, bedId, today, layers, quickDraws);
      const settled = await engine.ask<'what if'>({ kind: 'what if', beds: asked.likely, limits });
      const isWanted = read().whatIf?.drafts === drafts && read().garden === garden;
      if (settled.state === 'superseded' || !isWanted) return;
      if (settled.state === 'failed') return fail(settled.reason);
      const likely = settled.answer.map((bed, at) => ({
        ...bed,
        cautions: withPassedStops(garden, layers[at] ?? [], bed.cautions),
      }));
      put(drafts, { state: 'ready', reason: null, likely: byKey(drafts, likely) });
      questions = asked;
      await imagine(drafts, asked);
    } catch (error) {
      fail(messageOf(error));
    }
  };

  const start = (bedId: string, drafts: readonly WhatIfDraft[]): void => {
    end();
    questions = null;
    if (drafts.length === 0 || !read().garden) {
      if (read().whatIf !== null) write({ whatIf: null });
      return;
    }
    const before = read().whatIf;
    const likely = before?.bedId === bedId ? before.likely : {};
    write({ whatIf: { bedId, drafts, state: 'working', reason: null, likely, draws: noDraws } });
    callOff = later(proposalPauseMilliseconds, () => void weigh(bedId, drafts));
  };

  return {
    slice: {
      whatIf: null,
      weighWhatIf: start,
      stopWhatIf: () => {
        const { whatIf } = read();
        if (whatIf?.draws.state !== 'working') return;
        running?.abort();
        putDraws(whatIf.drafts, { state: 'idle' });
      },
      resumeWhatIf: () => {
        const { whatIf } = read();
        if (!whatIf || whatIf.draws.state === 'working' || whatIf.state === 'working') return;
        if (questions) void imagine(whatIf.drafts, questions);
        else start(whatIf.bedId, whatIf.drafts);
      },
    },
    changed: () => {
      const { whatIf, garden } = read();
      if (!whatIf) return;
      const isThere = garden?.beds.some(({ id }) => id === whatIf.bedId) ?? false;
      // a fresh list, so that nothing asked before can answer for it
      start(whatIf.bedId, isThere ? [...whatIf.drafts] : []);
    },
  };
}
