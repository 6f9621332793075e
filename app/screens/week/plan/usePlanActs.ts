import { useState } from 'react';
import { useAnnounce } from '../../../controls/Announcer';
import type { PlanAnswer, PlanLine } from '../../../core/plan/answer';
import { unaskedSource } from '../../../store/selectors';
import { listed } from '../../../words/chartFormat';
import { editFailureSentence } from '../../../words/messages';
import { planSays } from '../../../words/planSays';
import { restsWords } from '../../../words/restWords';
import { useGarden, useMowings, useMowingsStore } from '../../store';
import { planDrafts } from './planDrafts';
import { toldRests, type PlannedRest } from './planRests';
import { usePlanNames } from './usePlanNames';

export interface PlanActs {
  readonly busy: boolean;
  /** what kept the last press from being written down, as a sentence */
  readonly refused: string | null;
  /** whether a line of the plan that still stands there was written down already */
  readonly isLaid: (bedId: string) => boolean;
  /** what was written down last, as a sentence */
  readonly done: string | null;
  readonly doIt: (lines: readonly PlanLine[], rests: readonly PlannedRest[]) => void;
  readonly doNothing: (bedIds: readonly string[]) => void;
  readonly countIn: (bedId: string) => void;
  /** something was written down elsewhere, by a form of its own */
  readonly wasDone: (words: string) => void;
}

/**
 * What a person did of the plan, written down.
 *
 * @param answer the plan that is shown
 * @param onDone told after each that was kept
 */
export function usePlanActs(answer: PlanAnswer | null, onDone: () => void): PlanActs {
  const garden = useGarden();
  const names = usePlanNames();
  const doPlan = useMowings((state) => state.doPlan);
  const layNothing = useMowings((state) => state.layNothing);
  const countBedIn = useMowings((state) => state.countIn);
  const showDialog = useMowings((state) => state.showDialog);
  const announce = useAnnounce();
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const store = useMowingsStore();
  const [done, setDone] = useState<{ words: string; in: typeof garden } | null>(null);
  const [laid, setLaid] = useState<{ of: PlanAnswer | null; beds: readonly string[] } | null>(null);

  const wasDone = (words: string) => {
    setRefused(null);
    setDone({ words, in: store.getState().garden ?? garden });
    announce(words);
    onDone();
  };
  const refuse = (words: string) => {
    setDone(null);
    setRefused(words);
  };
  const settle = (beds: readonly string[]) =>
    setLaid((now) => ({
      of: answer,
      beds: [...(now?.of === answer ? now.beds : []), ...beds],
    }));
  const bedsOf = (bedIds: readonly string[]) => listed([...new Set(bedIds)].map(names.bed));

  const doIt = async (lines: readonly PlanLine[], rests: readonly PlannedRest[]) => {
    const drafts = planDrafts(garden, lines);
    const froms = [
      ...drafts.flatMap(({ parts }) => parts.map(({ from }) => from)),
      ...rests.flatMap(({ mowingId, rest }) =>
        rest.to === 'lawn' ? [] : [{ source: 'mowing' as const, mowingId }],
      ),
    ];
    for (const from of froms) {
      const unasked = unaskedSource(garden, from);
      if (unasked) return showDialog({ kind: 'treatment', ...unasked });
    }
    setBusy(true);
    const result = await doPlan(drafts, rests);
    setBusy(false);
    if (result.ok) {
      settle(lines.map(({ bedId }) => bedId));
      const laidWords =
        drafts.length > 0 ? [planSays.laidOn(bedsOf(drafts.map(({ bedId }) => bedId)))] : [];
      const rest = restsWords(toldRests(rests), names);
      return wasDone(planSays.done(listed([...laidWords, ...(rest === '' ? [] : [rest])])));
    }
    switch (result.error.kind) {
      case 'stops':
        return refuse(planSays.stops);
      case 'held-back':
        return refuse(planSays.heldBack);
      case 'engine-failed':
        return refuse(planSays.engineFailed);
      default:
        return refuse(editFailureSentence(result.error));
    }
  };

  return {
    busy,
    isLaid: (bedId) => laid !== null && laid.of === answer && laid.beds.includes(bedId),
    refused,
    // once something else was done, undo would take back that
    done: done?.in === garden ? done.words : null,
    doIt: (lines, rests) => void doIt(lines, rests),
    doNothing: (bedIds) => {
      const result = layNothing(bedIds);
      if (!result.ok) return refuse(editFailureSentence(result.error));
      settle(bedIds);
      wasDone(planSays.nothingOn(bedsOf(bedIds)));
    },
    countIn: (bedId) => {
      const result = countBedIn(bedId);
      if (!result.ok) return refuse(editFailureSentence(result.error));
      wasDone(planSays.countedIn(names.bed(bedId)));
    },
    wasDone,
  };
}
