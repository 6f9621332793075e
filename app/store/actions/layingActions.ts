import { failure, success } from '../../core/result';
import { stepNames } from '../../words/stepNames';
import type { Engine } from '../../worker/protocol';
import { dayOf } from '../../core/days';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import { nothingLaid } from '../../document/nothingLaid';
import type { Garden } from '../../document/schema';
import type { GardenActions, LayFailure, LayingDraft } from '../contract';
import { freshIds } from '../freshIds';
import { applicationsOf, proposalOf, stopsOf, withPassedStops } from '../proposal';
import { putRest } from './putRest';
import { changeIn, openGarden, thingOf, type ActionTools } from './changing';

type LayingActions = Pick<
  GardenActions,
  'layIt' | 'doPlan' | 'layNothing' | 'countIn' | 'editApplication' | 'deleteApplication'
>;

/** Laying, and changing what was laid. */
export function layingActions(tools: ActionTools, engine: Engine): LayingActions {
  const bedName = (bedId: string): string =>
    tools.read().garden?.beds.find(({ id }) => id === bedId)?.name ?? '';

  const pushNothing = (garden: Garden, bedIds: readonly string[]): void => {
    const date = tools.today();
    const nextId = freshIds('event', garden.events);
    for (const bedId of bedIds)
      garden.events.push({ kind: 'nothing laid', id: nextId(), bedId, date });
  };

  /** What stands against the drafts, as a failure; null when nothing does. */
  const objection = async (drafts: readonly LayingDraft[]): Promise<LayFailure | null> => {
    // A check that was overtaken by a newer one knows nothing; the person is still waiting for it.
    for (;;) {
      const { garden } = tools.read();
      if (!garden) return { kind: 'no-garden' };
      try {
        const proposal = proposalOf(garden, drafts, dayOf(tools.today()));
        if (typeof proposal === 'string') {
          return { kind: 'broken', where: 'applications', what: proposal };
        }
        const settled = await engine.ask<'check'>({ ...proposal.question, kind: 'check' });
        if (settled.state === 'superseded') continue;
        if (settled.state === 'failed') return { kind: 'engine-failed', reason: settled.reason };
        const beds = settled.answer.map((bed) => ({
          ...bed,
          cautions: withPassedStops(garden, proposal.applications, bed.cautions),
        }));
        const stops = stopsOf(drafts, beds);
        return stops.length > 0 ? { kind: 'stops', stops } : null;
      } catch (error) {
        const reason = error instanceof Error ? error.message : String(error);
        return { kind: 'engine-failed', reason };
      }
    }
  };

  return {
    layIt: async (drafts, option, without = []) => {
      if (option !== 'without cautions') {
        const against = await objection(drafts);
        if (against) return failure(against);
      }
      const open = openGarden(tools);
      if (!open.ok) return open;
      const applications = applicationsOf(open.value, drafts);
      const names = [...new Set(drafts.map(({ bedId }) => bedId))].map(bedName);
      const amounts = drafts.flatMap(({ parts }) => parts.map(({ amount }) => amount.text));
      const edited = tools.edit(stepNames.lay(names, amounts), (garden) => {
        garden.applications.push(...applications);
        pushNothing(garden, without);
      });
      if (!edited.ok) return edited;
      tools.read().propose([]);
      return success(applications.map(({ id }) => id));
    },

    doPlan: async (drafts, rests) => {
      const against = drafts.length > 0 ? await objection(drafts) : null;
      if (against) return failure(against);
      const open = openGarden(tools);
      if (!open.ok) return open;
      const { value: before } = open;
      for (const { mowingId, rest } of rests) {
        const mowing = before.mowings.find(({ id }) => id === mowingId);
        if (!mowing) return failure({ kind: 'missing', what: 'mowings' });
        const lawn = before.lawns.find(({ id }) => id === mowing.lawnId);
        const held =
          rest.to === 'lawn' || !lawn ? null : lawnHeldBack(before, lawn, dayOf(mowing.date));
        if (held?.row === 'label forbids')
          return failure({ kind: 'label-forbids', source: lawn?.name ?? '' });
        if (held?.weight === 'stop') return failure({ kind: 'held-back', stop: held });
      }
      const applications = applicationsOf(before, drafts);
      const [alone] = drafts.length === 0 && rests.length === 1 ? rests : [];
      const name = alone ? stepNames.restOf(alone.rest.to) : stepNames.doPlan();
      const edited = tools.edit(name, (garden) => {
        garden.applications.push(...applications);
        for (const { mowingId, rest } of rests) putRest(garden, mowingId, rest);
      });
      if (!edited.ok) return edited;
      tools.read().propose([]);
      return success(null);
    },

    layNothing: (bedIds) => {
      const open = openGarden(tools);
      if (!open.ok) return open;
      return tools.edit(stepNames.layNothing(bedIds.map(bedName)), (garden) => {
        pushNothing(garden, bedIds);
      });
    },

    countIn: (bedId) => {
      const open = openGarden(tools);
      if (!open.ok) return open;
      const held = new Set(
        nothingLaid(open.value, dayOf(tools.today()))
          .filter((event) => event.bedId === bedId)
          .map(({ id }) => id),
      );
      return tools.edit(stepNames.countIn(bedName(bedId)), (garden) => {
        garden.events = garden.events.filter(({ id }) => !held.has(id));
      });
    },

    editApplication: (id, changes) => {
      const found = thingOf(tools, 'applications', id);
      if (!found.ok) return found;
      return tools.edit(stepNames.editLayer(bedName(found.value.thing.bedId)), (garden) => {
        changeIn(garden, 'applications', id, changes);
      });
    },

    deleteApplication: (id) => {
      const found = thingOf(tools, 'applications', id);
      if (!found.ok) return found;
      return tools.edit(stepNames.deleteLayer(bedName(found.value.thing.bedId)), (garden) => {
        garden.applications = garden.applications.filter((one) => one.id !== id);
      });
    },
  };
}
