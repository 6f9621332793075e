import type { ProposalAnswer } from '../core/season/bedAnswer';
import type { Application } from '../document/schema';
import type { LayingDraft, WorkState } from './contract';
import type { Read, Write } from './gardenSlice';
import { proposalOf } from './proposal';
import type { Surroundings } from './surroundings';
import { todayDayOf } from './today';

/** A bed as it would be with layers that somebody else proposed: this week's plan. */
export interface Ahead {
  readonly bedId: string;
  readonly drafts: readonly LayingDraft[];
  readonly state: WorkState;
  /** what the drafts would be written down as; the ids are those in `answer` */
  readonly applications: readonly Application[];
  readonly answer: ProposalAnswer | null;
}

export interface AheadSlice {
  readonly ahead: Ahead | null;
  /** runs a bed with these layers, all of which are of it; none: forgets them */
  wantAhead(bedId: string, drafts: readonly LayingDraft[]): void;
}

export interface AheadDoor {
  readonly slice: AheadSlice;
  /** garden or day are other than before: what was proposed is no more */
  changed(): void;
}

/** The engine's own forecast of a bed under a proposal, apart from what is being typed elsewhere. */
export function aheadDoor(
  read: Read,
  write: Write,
  { engine, computerToday }: Pick<Surroundings, 'engine' | 'computerToday'>,
): AheadDoor {
  const forget = (): void => {
    if (read().ahead !== null) write({ ahead: null });
  };
  const ask = async (bedId: string, drafts: readonly LayingDraft[]): Promise<void> => {
    const { garden } = read();
    if (!garden) return;
    const put = (changes: Partial<Ahead>): void => {
      const { ahead } = read();
      if (ahead?.drafts === drafts && read().garden === garden)
        write({ ahead: { ...ahead, ...changes } });
    };
    try {
      const proposal = proposalOf(garden, drafts, todayDayOf(read(), computerToday));
      if (typeof proposal === 'string') return put({ state: 'failed' });
      const { beds, limits } = proposal.question;
      const settled = await engine.ask<'ahead'>({ kind: 'ahead', beds, limits });
      if (settled.state === 'superseded') return;
      const answer = settled.state === 'answered' ? settled.answer[0] : undefined;
      put(
        answer
          ? { state: 'ready', answer, applications: proposal.applications }
          : { state: 'failed' },
      );
    } catch {
      put({ state: 'failed' });
    }
  };
  return {
    slice: {
      ahead: null,
      wantAhead: (bedId, drafts) => {
        if (drafts.length === 0 || !read().garden) return forget();
        write({ ahead: { bedId, drafts, state: 'working', applications: [], answer: null } });
        void ask(bedId, drafts);
      },
    },
    changed: forget,
  };
}
