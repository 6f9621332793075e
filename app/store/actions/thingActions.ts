import { failure } from '../../core/result';
import { mowingAccount } from '../../document/accounts';
import type { Amount, Garden } from '../../document/schema';
import { stepNames } from '../../words/stepNames';
import type { Edited, GardenActions } from '../contract';
import { freshIds } from '../freshIds';
import { changeIn, editFor, openGarden, thingOf, type ActionTools, type ThingOf } from './changing';
import { cropName } from '../../document/cropValues';

type Thing = 'Bed' | 'Planting' | 'Lawn' | 'Stock' | 'Material' | 'Crop' | 'Container';
type ThingActions = Pick<
  GardenActions,
  `${'add' | 'edit' | 'delete'}${Thing}` | 'weighContainer' | 'swapMaterial'
>;

type Kept = 'beds' | 'plantings' | 'lawns' | 'stock' | 'materials' | 'crops' | 'containers';
const prefixes: Readonly<Record<Kept, string>> = {
  beds: 'bed',
  plantings: 'planting',
  lawns: 'lawn',
  stock: 'stock',
  materials: 'own',
  crops: 'own-crop',
  containers: 'container',
};

const isTypedIn =
  (containerId: string) =>
  ({ amount }: { readonly amount: Amount | null }): boolean =>
    amount?.quantity.kind === 'containers' && amount.quantity.containerId === containerId;

/** Leaves that went on a heap with a mowing are counted in that container. */
const hasLeavesIn =
  (containerId: string) =>
  ({ rest }: Pick<Garden['mowings'][number], 'rest'>): boolean =>
    rest.to === 'heap' && rest.leaves !== undefined && isTypedIn(containerId)(rest.leaves);

/** "3 mowings, 2 layers" for what still points at a thing; null when nothing does. */
function usedBy(counts: Readonly<Record<string, number>>): string | null {
  const parts = Object.entries(counts)
    .filter(([, count]) => count > 0)
    .map(
      ([what, count]) => `${String(count)} ${what}${count === 1 || what === 'stock' ? '' : 's'}`,
    );
  return parts.length > 0 ? parts.join(', ') : null;
}

/** What a mowing gave to a bed stays told when the bed goes: it is neither in hand nor on the lawn. */
function keepWhatLayThere(garden: Garden, bedId: string): void {
  const name = garden.beds.find(({ id }) => id === bedId)?.name ?? '';
  const there = garden.applications.filter((layer) => layer.bedId === bedId);
  for (const mowing of garden.mowings) {
    const { laidDryKilograms, totalDryKilograms } = mowingAccount(
      { ...garden, applications: there },
      mowing,
    );
    if (laidDryKilograms > 0 && totalDryKilograms > 0)
      mowing.onDeletedBeds = [
        ...(mowing.onDeletedBeds ?? []),
        { name, share: laidDryKilograms / totalDryKilograms },
      ];
  }
}

/** Beds, plantings, lawns, stock, materials, containers: added, changed, deleted. */
export function thingActions(tools: ActionTools): ThingActions {
  const nameOf = (garden: Garden, list: Kept, thing: ThingOf<Kept>): string => {
    if ('name' in thing) return thing.name;
    return plantingName(garden, thing);
  };
  const plantingName = (
    garden: Garden,
    planting: Pick<ThingOf<'plantings'>, 'cropId' | 'bedId'>,
  ): string => {
    const crop = cropName(garden, planting.cropId).toLowerCase();
    const bed = garden.beds.find(({ id }) => id === planting.bedId)?.name;
    return bed === undefined ? crop : `${crop} on ${bed}`;
  };

  const add = <List extends Kept>(list: List, thing: Omit<ThingOf<List>, 'id'>): Edited<string> => {
    const open = openGarden(tools);
    if (!open.ok) return open;
    const id = freshIds(prefixes[list], open.value[list] ?? [])();
    const whole = { ...thing, id } as unknown as ThingOf<List>;
    return editFor(
      tools,
      'how' in whole
        ? stepNames.plant(whole.how, nameOf(open.value, list, whole))
        : stepNames.add(nameOf(open.value, list, whole)),
      (garden) => {
        ((garden[list] ??= []) as ThingOf<List>[]).push(whole);
      },
      id,
    );
  };

  const change = <List extends Kept>(
    list: List,
    id: string,
    changes: Partial<Omit<ThingOf<List>, 'id'>>,
    gesture?: string,
  ): Edited => {
    const found = thingOf(tools, list, id);
    if (!found.ok) return found;
    const name = nameOf(found.value.garden, list, found.value.thing);
    const recipe = (garden: Garden): void => {
      changeIn(garden, list, id, changes as Partial<ThingOf<List>>);
      // its picks go where a planting goes
      if (list === 'plantings' && 'bedId' in changes && typeof changes.bedId === 'string')
        for (const event of garden.events)
          if (event.kind === 'harvest' && event.plantingId === id) event.bedId = changes.bedId;
    };
    return editFor(tools, stepNames.change(name), recipe, null, gesture);
  };

  /** Deletes a thing that nothing points at, or with all that goes with it. */
  const remove = <List extends Kept>(
    list: List,
    id: string,
    inUse: (garden: Garden) => string | null,
    alongWith: (garden: Garden) => void = () => undefined,
  ): Edited => {
    const found = thingOf(tools, list, id);
    if (!found.ok) return found;
    const by = inUse(found.value.garden);
    if (by !== null) return failure({ kind: 'in-use', by });
    const name = nameOf(found.value.garden, list, found.value.thing);
    return tools.edit(stepNames.remove(name), (garden) => {
      alongWith(garden);
      const things = garden[list] as { id: string }[];
      things.splice(
        things.findIndex((one) => one.id === id),
        1,
      );
    });
  };
  const nothing = (): null => null;

  return {
    addBed: (bed) => add('beds', bed),
    editBed: (id, changes, gesture) => change('beds', id, changes, gesture),
    deleteBed: (id) =>
      remove('beds', id, nothing, (garden) => {
        keepWhatLayThere(garden, id);
        garden.plantings = garden.plantings.filter(({ bedId }) => bedId !== id);
        garden.applications = garden.applications.filter(({ bedId }) => bedId !== id);
        garden.events = garden.events.filter((event) => !('bedId' in event) || event.bedId !== id);
      }),

    addPlanting: (planting) => add('plantings', planting),
    editPlanting: (id, changes, gesture) => change('plantings', id, changes, gesture),
    deletePlanting: (id) => {
      const found = thingOf(tools, 'plantings', id);
      // what it holds was grown before the bed was made: it can be cleared, but not never have been
      if (found.ok && found.value.thing.continues) return failure({ kind: 'goes-on' });
      return remove('plantings', id, nothing, (garden) => {
        garden.events = garden.events.filter(
          (event) => event.kind !== 'harvest' || event.plantingId !== id,
        );
      });
    },

    addLawn: (lawn) => add('lawns', lawn),
    editLawn: (id, changes, gesture) => change('lawns', id, changes, gesture),
    deleteLawn: (id) =>
      remove('lawns', id, ({ mowings }) =>
        usedBy({ mowing: mowings.filter(({ lawnId }) => lawnId === id).length }),
      ),

    addStock: (stock) => add('stock', stock),
    editStock: (id, changes, gesture) => change('stock', id, changes, gesture),
    deleteStock: (id) =>
      remove('stock', id, ({ mowings, applications, events }) =>
        usedBy({
          mowing: mowings.filter(
            ({ rest }) =>
              (rest.to === 'heap' && (rest.stockId === id || rest.leaves?.stockId === id)) ||
              (rest.to === 'store' && rest.stockId === id),
          ).length,
          layer: applications.filter(({ from }) => from.source === 'stock' && from.stockId === id)
            .length,
          raking: events.filter(
            (event) => event.kind === 'rake off' && event.toHeap?.stockId === id,
          ).length,
        }),
      ),

    addMaterial: (material) => add('materials', material),
    editMaterial: (id, changes) => change('materials', id, changes),
    deleteMaterial: (id) =>
      remove('materials', id, ({ stock, applications, lawns, containers, events }) =>
        usedBy({
          lawn: lawns.filter(({ ownClippings }) => ownClippings?.includes(id)).length,
          'weighed container': containers.filter(({ weighed }) => weighed?.of === id).length,
          raking: events.filter(
            (event) => event.kind === 'rake off' && event.toHeap?.materialId === id,
          ).length,
          stock: stock.filter(({ materialId }) => materialId === id).length,
          layer: applications.filter(
            ({ from }) => from.source === 'elsewhere' && from.materialId === id,
          ).length,
        }),
      ),

    swapMaterial: (from, to) => {
      const found = thingOf(tools, 'materials', to);
      if (!found.ok) return found;
      const { garden: before, thing } = found.value;
      const isFrom = (layer: Garden['applications'][number]): boolean =>
        layer.from.source === 'elsewhere' && layer.from.materialId === from;
      const counts = {
        stores: before.stock.filter(({ materialId }) => materialId === from).length,
        layers: before.applications.filter(isFrom).length,
      };
      return editFor(
        tools,
        stepNames.swapMaterial(thing.name, counts.stores + counts.layers),
        (garden) => {
          for (const stock of garden.stock) if (stock.materialId === from) stock.materialId = to;
          for (const layer of garden.applications)
            if (isFrom(layer)) layer.from = { source: 'elsewhere', materialId: to };
        },
        counts,
      );
    },

    addCrop: (crop) => add('crops', crop),
    editCrop: (id, changes) => change('crops', id, changes),
    deleteCrop: (id) =>
      remove('crops', id, ({ plantings }) =>
        usedBy({ planting: plantings.filter(({ cropId }) => cropId === id).length }),
      ),

    addContainer: (container) => add('containers', container),
    editContainer: (id, changes, gesture) => change('containers', id, changes, gesture),
    deleteContainer: (id) =>
      remove('containers', id, ({ mowings, applications, stock }) =>
        usedBy({
          mowing: mowings.filter((one) => isTypedIn(id)(one) || hasLeavesIn(id)(one)).length,
          layer: applications.filter(isTypedIn(id)).length,
          stock: stock.filter(isTypedIn(id)).length,
        }),
      ),

    weighContainer: (id, weighed) => {
      const found = thingOf(tools, 'containers', id);
      if (!found.ok) return found;
      const { mowings, applications, stock } = found.value.garden;
      const counts = {
        mowings: mowings.filter(isTypedIn(id)).length,
        layers: applications.filter(isTypedIn(id)).length,
        stocks: stock.filter(isTypedIn(id)).length,
      };
      const { name } = found.value.thing;
      const label = stepNames.weigh(name, counts.mowings + counts.layers + counts.stocks);
      return editFor(
        tools,
        label,
        (garden) => {
          changeIn(garden, 'containers', id, { weighed });
        },
        counts,
      );
    },
  };
}
