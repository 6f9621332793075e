import { dayFromText } from '../core/days';
import type { BedQuestion, ProposalAnswer } from '../core/season/bedAnswer';
import type { BedSeason } from '../core/season/input';
import { weeklyDays } from '../core/season/stateHistory';
import { bedQuestion } from '../document/bedQuestion';
import type { Garden } from '../document/schema';
import { bedSeason } from '../document/seasonInput';
import { limits } from '../tables/thresholds';
import type { LayingDraft, ResultsSlice } from './contract';
import { drawsDoor } from './drawsDoor';
import type { Read, Write } from './gardenSlice';
import { proposalOf, withPassedStops, type Proposal } from './proposal';
import { proposalDrawsOf, withDraws } from './proposalDraws';
import { sameQuestion } from './sameQuestion';
import {
  bedsInABreath,
  typedPauseMilliseconds,
  resultsPauseMilliseconds,
  type Surroundings,
} from './surroundings';
import { todayDayOf, todayTextOf } from './today';
import { touchedBeds } from './touchedBeds';

export interface ResultsDoor {
  readonly slice: ResultsSlice;
  /** garden or day are other than before: everything is asked again */
  changed(): void;
}

const messageOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

/** What the worker makes of the garden. The last good answers stay until better ones come. */
export function resultsDoor(read: Read, write: Write, surroundings: Surroundings): ResultsDoor {
  const { engine, later, computerToday, breathe } = surroundings;
  const draws = drawsDoor(read, write, surroundings);
  const today = (): number => todayDayOf(read(), computerToday);
  const todayText = (): string => todayTextOf(read(), computerToday);

  let callOffBeds: (() => void) | null = null;
  /** what the results on screen were answers to, by bed */
  const answered = new Map<string, BedQuestion>();
  /** the garden that was last asked about, so that an edit of it can be told from another garden */
  let asked: { readonly garden: Garden; readonly openings: number } | null = null;

  /** Asks about those of some beds whose questions are other than before. Whether all went well. */
  const askAbout = async (garden: Garden, bedIds: readonly string[]): Promise<boolean> => {
    const askedFor = todayText();
    const isStill = (): boolean => read().garden === garden && todayText() === askedFor;
    const fail = (workReason: string): false => {
      write({ work: 'failed', workReason });
      draws.failed(workReason);
      return false;
    };
    try {
      const questions: BedQuestion[] = [];
      for (const [at, id] of bedIds.entries()) {
        if (at > 0 && at % bedsInABreath === 0) await breathe();
        if (!isStill()) return false;
        const question = bedQuestion(garden, id, today());
        if (!sameQuestion(answered.get(id), question)) questions.push(question);
      }
      if (questions.length === 0) return true;
      const settled = await engine.ask<'beds'>({ kind: 'beds', beds: questions, limits });
      if (settled.state === 'superseded' || !isStill()) return false;
      if (settled.state === 'failed') return fail(settled.reason);
      const bedResults = { ...read().bedResults };
      for (const question of questions) answered.set(question.input.bedId, question);
      for (const bed of settled.answer) {
        // its own input, not the copy that came back: what is asked next of it is the very same
        const input = answered.get(bed.bedId)?.input ?? bed.input;
        bedResults[bed.bedId] = draws.withOdds(garden, { ...bed, input });
      }
      write({ bedResults });
      return true;
    } catch (error) {
      return isStill() && fail(messageOf(error));
    }
  };

  /** First the beds that were touched, at once; then, after a pause, what follows for the others. */
  const askBeds = (then: () => void): void => {
    const { garden, openings } = read();
    if (!garden) return;
    const isSame = asked?.openings === openings;
    if (!isSame) answered.clear();
    const near = touchedBeds(isSame && asked ? asked.garden : null, garden);
    asked = { garden, openings };
    const ids = garden.beds.map(({ id }) => id);
    for (const id of answered.keys()) if (!ids.includes(id)) answered.delete(id);
    const others = ids.filter((id) => !near.has(id));
    const ready = (): void => write({ work: 'ready', workReason: null });
    /** What is slow waits until the typing pauses. */
    const goOn = (): void => {
      draws.bedsReckoned();
      then();
    };
    void askAbout(
      garden,
      ids.filter((id) => near.has(id)),
    ).then((isWell) => {
      if (!isWell) return;
      if (others.length === 0) ready();
      callOffBeds = later(resultsPauseMilliseconds, () => {
        if (others.length === 0) return goOn();
        void askAbout(garden, others).then((wasWell) => {
          if (!wasWell) return;
          ready();
          goOn();
        });
      });
    });
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
      const weeks: BedSeason[] = [];
      for (const [at, day] of weeklyDays(first, last).entries()) {
        if (at > 0 && at % bedsInABreath === 0) await breathe();
        if (!isWanted()) return;
        const input = bedSeason(garden, bedId, day, { knownThen: true });
        if (input.firstDay <= input.today) weeks.push(input);
      }
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
    callOffProposal = later(typedPauseMilliseconds, () => void askProposal(drafts));
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
      const { bedResults } = read();
      const left = Object.entries(bedResults).filter(([id]) => isThere.has(id));
      const isSame = left.length === Object.keys(bedResults).length;
      write({
        work: 'working',
        workReason: null,
        bedResults: isSame ? bedResults : Object.fromEntries(left),
      });
      // Several changes of one breath are one question; it is on its way before the page draws, so that
      // the worker reckons while the page does.
      let isCalledOff = false;
      callOffBeds = () => {
        isCalledOff = true;
      };
      queueMicrotask(() => {
        if (isCalledOff) return;
        askBeds(() => {
          // the slow look back only for the bed that is open, and after what is on screen
          if (openBedId !== null && read().openBedId === openBedId) wantHistory(openBedId);
        });
      });
      if (preview) propose(preview.drafts);
    },
  };
}
