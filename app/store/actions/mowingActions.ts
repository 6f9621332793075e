import { dayOf, textFromDay } from '../../core/days';
import { failure } from '../../core/result';
import type { Caution } from '../../core/season/verdict';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import type { Garden, Mowing } from '../../document/schema';
import { stepNames } from '../../words/stepNames';
import type { GardenActions } from '../contract';
import { freshIds } from '../freshIds';
import { treatmentOfHeap } from './stockTreatment';
import { putRest } from './putRest';
import { changeIn, editFor, openGarden, thingOf, type ActionTools } from './changing';

type MowingActions = Pick<
  GardenActions,
  'logMowing' | 'editMowing' | 'deleteMowing' | 'restOf' | 'leaveLying' | 'logBacklog'
>;

/** Mowings one back-log entry may make: a year of mowing every other day. */
const mostOfBacklog = 200;

function heldBack(garden: Garden, mowing: Pick<Mowing, 'lawnId' | 'date'>): Caution | null {
  const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
  return lawn ? lawnHeldBack(garden, lawn, dayOf(mowing.date)) : null;
}

/** What was mown, and where what was not laid went. */
export function mowingActions(tools: ActionTools): MowingActions {
  const lawnName = (lawnId: string): string =>
    tools.read().garden?.lawns.find(({ id }) => id === lawnId)?.name ?? '';

  return {
    logMowing: (draft) => {
      const open = openGarden(tools);
      if (!open.ok) return open;
      const id = freshIds('mowing', open.value.mowings)();
      const mowing: Mowing = { id, ...draft, rest: { to: 'undecided' } };
      return editFor(
        tools,
        stepNames.logMowing(lawnName(draft.lawnId), draft.amount.text),
        (garden) => {
          garden.mowings.push(mowing);
        },
        id,
      );
    },

    editMowing: (id, changes, rest) => {
      const found = thingOf(tools, 'mowings', id);
      if (!found.ok) return found;
      const mowing = { ...found.value.thing, ...changes };
      const { garden, thing } = found.value;
      // what lies on the heap already is marked there, and no new question
      const held =
        (rest?.to === 'heap' || rest?.to === 'store') && thing.rest.to !== rest.to
          ? heldBack(garden, mowing)
          : null;
      if (held?.row === 'label forbids')
        return failure({ kind: 'label-forbids', source: lawnName(mowing.lawnId) });
      if (held?.weight === 'stop') return failure({ kind: 'held-back', stop: held });
      return tools.edit(stepNames.editMowing(lawnName(thing.lawnId)), (draft) => {
        changeIn(draft, 'mowings', id, rest === undefined ? changes : { ...changes, rest });
      });
    },

    deleteMowing: (id) => {
      const found = thingOf(tools, 'mowings', id);
      if (!found.ok) return found;
      const isOfIt = ({ from }: (typeof found.value.garden.applications)[number]): boolean =>
        from.source === 'mowing' && from.mowingId === id;
      const layers = found.value.garden.applications.filter(isOfIt).length;
      return editFor(
        tools,
        stepNames.deleteMowing(lawnName(found.value.thing.lawnId)),
        (garden) => {
          garden.mowings = garden.mowings.filter((one) => one.id !== id);
          garden.applications = garden.applications.filter((one) => !isOfIt(one));
        },
        { layers },
      );
    },

    restOf: (mowingId, rest, option) => {
      const found = thingOf(tools, 'mowings', mowingId);
      if (!found.ok) return found;
      const { garden, thing: mowing } = found.value;
      const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
      const isKept = rest.to === 'heap' || rest.to === 'store' || rest.to === 'dry';
      const held = isKept ? heldBack(garden, mowing) : null;
      if (held?.row === 'label forbids')
        return failure({ kind: 'label-forbids', source: lawn?.name ?? '' });
      if (held?.weight === 'stop' && option !== 'in spite of a stop')
        return failure({ kind: 'held-back', stop: held });
      return tools.edit(stepNames.restOf(rest.to), (draft) => {
        putRest(draft, mowingId, rest);
        const heap =
          held && draft.stock.find(({ id }) => rest.to === 'heap' && id === rest.stockId);
        if (heap && lawn) heap.treatment = treatmentOfHeap(heap, lawn);
      });
    },

    leaveLying: (mowingIds) =>
      tools.edit(stepNames.leaveLying(mowingIds.length), (draft) => {
        for (const id of mowingIds) putRest(draft, id, { to: 'lawn' });
      }),

    logBacklog: ({ lawnId, bedId, from, to, everyDays, amount, wetness, condition, placement }) => {
      const open = openGarden(tools);
      if (!open.ok) return open;
      const [first, last] = [dayOf(from), dayOf(to)];
      const step = Math.max(1, Math.round(everyDays));
      const count = Math.floor((last - first) / step) + 1;
      if (count < 1) {
        return failure({ kind: 'broken', where: 'to', what: 'the last day lies before the first' });
      }
      if (count > mostOfBacklog) {
        const what = `more than ${String(mostOfBacklog)} mowings in one entry`;
        return failure({ kind: 'broken', where: 'everyDays', what });
      }
      const mowingId = freshIds('mowing', open.value.mowings);
      const layerId = freshIds('application', open.value.applications);
      return editFor(
        tools,
        stepNames.logBacklog(count),
        (garden) => {
          for (let index = 0; index < count; index++) {
            const date = textFromDay(first + index * step);
            const id = mowingId();
            garden.mowings.push({
              id,
              date,
              lawnId,
              amount: { ...amount, quantity: { ...amount.quantity } },
              wetness,
              kind: null,
              rest: { to: 'lawn' },
            });
            garden.applications.push({
              id: layerId(),
              date,
              bedId,
              from: { source: 'mowing', mowingId: id },
              amount: { ...amount, quantity: { ...amount.quantity } },
              condition,
              wetness,
              placement,
              mixtureId: null,
              passedStops: [],
            });
          }
        },
        { mowings: count },
      );
    },
  };
}
