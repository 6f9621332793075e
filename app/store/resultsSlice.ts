import { dayFromText } from '../core/days';
import type { ProposalAnswer } from '../core/season/bedAnswer';
import { weeklyDays } from '../core/season/stateHistory';
import { bedQuestion } from '../document/bedQuestion';
import type { Garden } from '../document/schema';
import { bedSeason } from '../document/seasonInput';
import { limits } from '../tables/thresholds';
import type { BedResults, LayingDraft, ResultsSlice } from './contract';
import { drawsDoor } from './drawsDoor';
import type { Read, Write } from './gardenSlice';
import { proposalOf, withPassedStops, type Proposal } from './proposal';
import { proposalDrawsOf, withDraws } from './proposalDraws';
import {
  proposalPauseMilliseconds,
  resultsPauseMilliseconds,
  type Surroundings,
} from './surroundings';
import { todayDayOf, todayTextOf } from './today';

export interface ResultsDoor {
  readonly slice: ResultsSlice;
  /** garden or day are other than before: everything is asked again */
  changed(): void;
}

const messageOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

/** What the worker makes of the garden. The last good answers stay until better ones come. */
export function resultsDoor(read: Read, write: Write, surroundings: Surroundings): ResultsDoor {
  const { engine, later, computerToday } = surroundings;
  const draws = drawsDoor(read, write, surroundings);
  const today = (): number => todayDayOf(read(), computerToday);
  const todayText = (): string => todayTextOf(read(), computerToday);

  let callOffBeds: (() => void) | null = null;
  const askBeds = async (): Promise<void> => {
    const { garden } = read();
    if (!garden) return;
    const askedFor = todayText();
    const fail = (workReason: string): void => {
      write({ work: 'failed', workReason });
      draws.failed(workReason);
    };
    try {
      const beds = garden.beds.map(({ id }) => bedQuestion(garden, id, today()));
      const settled = await engine.ask<'beds'>({ kind: 'beds', beds, limits });
      if (settled.state === 'superseded' || read().garden !== garden) return;
      if (settled.state === 'failed') {
        fail(settled.reason);
      } else if (todayText() === askedFor) {
        const entries = settled.answer.map((bed): [string, BedResults] => [
          bed.bedId,
          draws.withOdds(garden, bed),
        ]);
        write({ work: 'ready', workReason: null, bedResults: Object.fromEntries(entries) });
        draws.bedsReckoned();
      }
    } catch (error) {
      fail(messageOf(error));
    }
  };

  let callOffProposal: (() => void) | null = null;
  let proposalDraws: AbortController | null = null;
  /** The same proposal in imagined seasons, once its sums are shown. */
  const askProposalDraws = async (
    garden: Garden,
    { applications }: Proposal,
    drafts: readonly LayingDraft[],
    reckoned: readonly ProposalAnswer[],
  ): Promise<void> => {
    if (read().drawsWork.isStopped) return;
    const controller = new AbortController();
    proposalDraws = controller;
    const { signal } = controller;
    const day = today();
    try {
      const question = proposalDrawsOf(garden, applications, day, reckoned);
      const settled = await engine.ask<'proposal draws'>(question, { signal });
      const { preview } = read();
      if (signal.aborted || !preview || preview.drafts !== drafts) return;
      if (settled.state === 'failed') draws.failed(settled.reason);
      if (settled.state !== 'answered') return;
      const beds = preview.beds.map((bed) =>
        withDraws(garden, applications, day, bed, settled.answer),
      );
      write({ preview: { ...preview, beds } });
    } catch (error) {
      // the sums themselves stand
      if (!signal.aborted) draws.failed(messageOf(error));
    }
  };

  const askProposal = async (drafts: readonly LayingDraft[]): Promise<void> => {
    const { garden } = read();
    if (!garden) return;
    const isWanted = (): boolean => read().preview?.drafts === drafts;
    const fail = (reason: string): void => {
      const { preview } = read();
      if (preview && isWanted()) write({ preview: { ...preview, state: 'failed', reason } });
    };
    try {
      const proposal = proposalOf(garden, drafts, today());
      if (typeof proposal === 'string') return fail(proposal);
      const settled = await engine.ask<'proposal'>(proposal.question);
      if (settled.state === 'superseded' || !isWanted() || read().garden !== garden) return;
      if (settled.state === 'failed') return fail(settled.reason);
      const beds = settled.answer.map((bed) => ({
        ...bed,
        cautions: withPassedStops(garden, proposal.applications, bed.cautions),
      }));
      write({ preview: { drafts, state: 'ready', reason: null, beds } });
      await askProposalDraws(garden, proposal, drafts, settled.answer);
    } catch (error) {
      fail(messageOf(error));
    }
  };

  const askHistory = async (garden: Garden, bedId: string): Promise<void> => {
    const isWanted = (): boolean => read().history?.bedId === bedId && read().garden === garden;
    try {
      const last = today();
      const first = bedSeason(garden, bedId, last).firstDay;
      // A week on which the bed was not yet known has no state.
      const weeks = weeklyDays(first, last)
        .map((day) => bedSeason(garden, bedId, day, { knownThen: true }))
        .filter((input) => input.firstDay <= input.today);
      const settled = await engine.ask<'history'>({ kind: 'history', weeks, limits });
      if (settled.state === 'superseded' || !isWanted()) return;
      write({
        history:
          settled.state === 'answered'
            ? { bedId, state: 'ready', weeks: settled.answer }
            : { bedId, state: 'failed', weeks: [] },
      });
    } catch {
      if (isWanted()) write({ history: { bedId, state: 'failed', weeks: [] } });
    }
  };
  /** garden and day the history was last asked for */
  let historyOf: { garden: Garden; bedId: string; today: string } | null = null;
  const wantHistory = (bedId: string): void => {
    const { garden, history } = read();
    if (!garden?.beds.some(({ id }) => id === bedId)) return;
    const askedFor = todayText();
    const isSame =
      historyOf?.garden === garden && historyOf.bedId === bedId && historyOf.today === askedFor;
    if (isSame) return;
    historyOf = { garden, bedId, today: askedFor };
    const weeks = history?.bedId === bedId ? history.weeks : [];
    write({ history: { bedId, state: 'working', weeks } });
    void askHistory(garden, bedId);
  };

  const propose = (drafts: readonly LayingDraft[]): void => {
    callOffProposal?.();
    callOffProposal = null;
    proposalDraws?.abort();
    if (drafts.length === 0 || !read().garden) {
      write({ preview: null });
      return;
    }
    const touched = new Set(drafts.map(({ bedId }) => bedId));
    const beds = (read().preview?.beds ?? []).filter(({ bedId }) => touched.has(bedId));
    write({ preview: { drafts, state: 'working', reason: null, beds } });
    callOffProposal = later(proposalPauseMilliseconds, () => void askProposal(drafts));
  };

  const slice: ResultsSlice = {
    work: 'idle',
    workReason: null,
    bedResults: {},
    preview: null,
    history: null,
    ...draws.slice,
    propose,
    wantHistory,
  };

  return {
    slice,
    changed: () => {
      callOffBeds?.();
      draws.changed();
      const { garden, preview, openBedId } = read();
      if (!garden || dayFromText(todayText()) === null) {
        callOffProposal?.();
        proposalDraws?.abort();
        historyOf = null;
        write({ work: 'idle', workReason: null, bedResults: {}, preview: null, history: null });
        return;
      }
      const isThere = new Set(garden.beds.map(({ id }) => id));
      const bedResults = Object.fromEntries(
        Object.entries(read().bedResults).filter(([id]) => isThere.has(id)),
      );
      write({ work: 'working', workReason: null, bedResults });
      callOffBeds = later(resultsPauseMilliseconds, () => {
        void askBeds().then(() => {
          // the slow look back only for the bed that is open, and after what is on screen
          if (openBedId !== null && read().openBedId === openBedId) wantHistory(openBedId);
        });
      });
      if (preview) propose(preview.drafts);
    },
  };
}
