import { failure } from '../../core/result';
import { stepNames } from '../../words/stepNames';
import type { GardenEvent } from '../../document/schema';
import type { GardenActions, New } from '../contract';
import { freshIds } from '../freshIds';
import { markStockOf } from './stockTreatment';
import { changeIn, editFor, openGarden, thingOf, type ActionTools } from './changing';

type EventActions = Pick<
  GardenActions,
  'logEvent' | 'bringList' | 'editEvent' | 'deleteEvent' | 'answerTreatment'
>;

/** Rain, watering, picks, tests, raking and digging; and what was put on a lawn or stock. */
export function eventActions(tools: ActionTools): EventActions {
  const bedOf = (event: New<GardenEvent>): string =>
    'bedId' in event
      ? (tools.read().garden?.beds.find(({ id }) => id === event.bedId)?.name ?? '')
      : '';

  return {
    logEvent: (event) => {
      const open = openGarden(tools);
      if (!open.ok) return open;
      const id = freshIds('event', open.value.events)();
      return editFor(
        tools,
        stepNames.logEvent(event.kind, bedOf(event)),
        (garden) => {
          garden.events.push({ ...event, id });
        },
        id,
      );
    },

    bringList: (mowings, rain) => {
      const open = openGarden(tools);
      if (!open.ok) return open;
      const mowingId = freshIds('mowing', open.value.mowings);
      const eventId = freshIds('event', open.value.events);
      return tools.edit(stepNames.bringList(mowings.length, rain.length), (garden) => {
        for (const draft of mowings)
          garden.mowings.push({ id: mowingId(), ...draft, rest: { to: 'undecided' } });
        for (const { date, millimetres } of rain)
          garden.events.push({ id: eventId(), kind: 'rain gauge', date, millimetres });
      });
    },

    editEvent: (event) => {
      const found = thingOf(tools, 'events', event.id);
      if (!found.ok) return found;
      return tools.edit(stepNames.editEvent(event.kind, bedOf(event)), (garden) => {
        garden.events = garden.events.map((one) => (one.id === event.id ? event : one));
      });
    },

    deleteEvent: (id) => {
      const found = thingOf(tools, 'events', id);
      if (!found.ok) return found;
      return tools.edit(
        stepNames.deleteEvent(found.value.thing.kind, bedOf(found.value.thing)),
        (garden) => {
          garden.events = garden.events.filter((one) => one.id !== id);
        },
      );
    },

    answerTreatment: (of, treatment, isAnother = false) => {
      const open = openGarden(tools);
      if (!open.ok) return open;
      const [list, id] =
        'lawnId' in of ? (['lawns', of.lawnId] as const) : (['stock', of.stockId] as const);
      const things: readonly { readonly id: string; readonly name: string }[] = open.value[list];
      const thing = things.find((one) => one.id === id);
      if (!thing) return failure({ kind: 'missing', what: list });
      return tools.edit(stepNames.answerTreatment(thing.name), (garden) => {
        const lawn = list === 'lawns' && garden.lawns.find((one) => one.id === id);
        if (
          isAnother &&
          lawn &&
          (lawn.treatment.answer === 'treated' || lawn.treatment.answer === 'unknown')
        )
          lawn.earlierTreatments = [lawn.treatment, ...(lawn.earlierTreatments ?? [])];
        changeIn(garden, list, id, { treatment });
        if (list === 'lawns') markStockOf(garden, id);
      });
    },
  };
}
