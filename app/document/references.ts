import { orderFaults } from './beliefs';
import { Faults, type Fault } from './faults';
import { groundFaults } from './groundFaults';
import { knownRows, type KnownRows } from './knownRows';
import type { Amount, Garden } from './schema';
import { weatherFaults } from './weatherFaults';

/** Beyond these a number was surely meant otherwise (a slip of the point, grams for kilograms). */
const believable = {
  kilograms: 100_000,
  litres: 1_000_000,
  containers: 10_000,
  depthMillimetres: 2_000,
  mownMillimetres: 1_000,
  areaM2: 1_000_000,
  containerLitres: 20_000,
  /** heavier than wet stone */
  kilogramsPerLitre: 3,
  waterMillimetres: 1_000,
  testDepthCentimetres: 200,
  nitrateMgPerKg: 2_000,
} as const;

/**
 * What the schema cannot say of a garden: ids are unique in their list, nothing points at what is
 * not there, amounts and days are believable, days follow in the order they must (`orderFaults`),
 * recorded days rise (`weatherFaults`). Answers the first fault, or null.
 * Linear in the garden.
 */
export function findFault(garden: Garden, known: KnownRows = knownRows): Fault | null {
  const faults = new Faults(garden);
  const retired = garden.retiredBeds ?? [];
  const beds = faults.ids('beds', garden.beds);
  for (const [index, { id }] of retired.entries()) {
    if (beds.has(id)) faults.broken('retiredBeds', index, 'id', 'an id is used twice');
    beds.add(id);
  }
  const lawns = faults.ids('lawns', garden.lawns);
  const containers = faults.ids('containers', garden.containers);
  const materials = faults.ids('materials', garden.materials);
  const crops = faults.ids('crops', garden.crops ?? []);
  const stock = faults.ids('stock', garden.stock);
  const stores = new Set(garden.stock.filter(({ role }) => role === 'store').map(({ id }) => id));
  const heaps = new Set(garden.stock.filter(({ role }) => role === 'heap').map(({ id }) => id));
  faults.ids('plantings', garden.plantings);
  const bedOfPlanting = new Map(garden.plantings.map(({ id, bedId }) => [id, bedId]));
  const mowings = faults.ids('mowings', garden.mowings);
  faults.ids('applications', garden.applications);
  faults.ids('events', garden.events);
  const isMaterial = (id: string): boolean => materials.has(id) || known.hasMaterial(id);

  const amount = (list: string, index: number, value: Amount, allowed: readonly string[]): void => {
    const { quantity } = value;
    if (!allowed.includes(quantity.kind)) {
      faults.broken(list, index, 'amount', `it cannot be given as ${quantity.kind} here`);
    }
    switch (quantity.kind) {
      case 'containers':
        faults.points(list, index, containers.has(quantity.containerId), 'container');
        faults.atMost(list, index, 'amount', quantity.count, believable.containers);
        break;
      case 'mass':
        faults.atMost(list, index, 'amount', quantity.kilograms, believable.kilograms);
        break;
      case 'volume':
        faults.atMost(list, index, 'amount', quantity.litres, believable.litres);
        break;
      case 'depth':
        faults.atMost(list, index, 'amount', quantity.millimetres, believable.depthMillimetres);
        break;
      case 'mown':
        faults.atMost(list, index, 'amount', quantity.areaM2, believable.areaM2);
        faults.atMost(
          list,
          index,
          'amount',
          quantity.heightMillimetres,
          believable.mownMillimetres,
        );
        break;
    }
  };

  garden.lawns.forEach((lawn, index) => {
    faults.atMost('lawns', index, 'areaM2', lawn.areaM2, believable.areaM2);
    for (const id of lawn.ownClippings ?? [])
      faults.points('lawns', index, materials.has(id), `own material "${id}"`);
    faults.day(
      'lawns',
      index,
      lawn.seedHeadsSeen,
      lawn.treatment.date,
      lawn.treatment.beanTestPassed,
      ...(lawn.earlierTreatments ?? []).flatMap(({ date, beanTestPassed }) => [
        date,
        beanTestPassed,
      ]),
    );
  });
  garden.containers.forEach(({ litres, weighed }, index) => {
    faults.atMost('containers', index, 'litres', litres, believable.containerLitres);
    if (!weighed) return;
    faults.day('containers', index, weighed.date);
    const heaviest = litres * believable.kilogramsPerLitre;
    faults.atMost('containers', index, 'weighed', weighed.kilograms, heaviest);
  });
  garden.materials.forEach(({ basedOn }, index) => {
    faults.points('materials', index, known.hasMaterial(basedOn), `material "${basedOn}"`);
  });
  garden.crops?.forEach(({ basedOn }, index) => {
    faults.points('crops', index, known.hasCrop(basedOn), `crop "${basedOn}"`);
  });
  garden.stock.forEach((item, index) => {
    faults.points('stock', index, isMaterial(item.materialId), `material "${item.materialId}"`);
    if (item.amount) amount('stock', index, item.amount, ['volume', 'mass', 'containers']);
    faults.day('stock', index, item.date, item.treatment.date, item.treatment.beanTestPassed);
  });
  for (const [list, some] of [
    ['beds', garden.beds],
    ['retiredBeds', retired],
  ] as const)
    some.forEach((bed, index) => {
      faults.atMost(list, index, 'areaM2', bed.areaM2, believable.areaM2);
      faults.day(list, index, bed.knownSince, bed.ground?.on);
      for (const { until, areaM2 } of bed.earlierAreas ?? []) {
        faults.day(list, index, until);
        faults.atMost(list, index, 'areaM2', areaM2, believable.areaM2);
      }
    });
  retired.forEach((bed, index) => faults.day('retiredBeds', index, bed.retired));
  garden.plantings.forEach((planting, index) => {
    faults.points('plantings', index, beds.has(planting.bedId), 'bed');
    faults.points(
      'plantings',
      index,
      crops.has(planting.cropId) || known.hasCrop(planting.cropId),
      `crop "${planting.cropId}"`,
    );
    faults.day('plantings', index, planting.started, planting.firstHarvest, planting.cleared);
    for (const key of ['firstHarvest', 'cleared'] as const) {
      const date = planting[key];
      if (date !== null && date < planting.started) {
        const what = `it lies before the start (${date} and ${planting.started})`;
        faults.broken('plantings', index, key, what);
      }
    }
  });
  garden.mowings.forEach((mowing, index) => {
    faults.points('mowings', index, lawns.has(mowing.lawnId), 'lawn');
    if (mowing.rest.to === 'heap') {
      faults.points('mowings', index, heaps.has(mowing.rest.stockId), 'heap');
      const { leaves } = mowing.rest;
      if (leaves) {
        faults.points('mowings', index, stores.has(leaves.stockId), 'store of leaves');
        amount('mowings', index, leaves.amount, ['volume', 'mass', 'containers']);
      }
    }
    if (mowing.rest.to === 'store')
      faults.points('mowings', index, stores.has(mowing.rest.stockId), 'store');
    amount('mowings', index, mowing.amount, ['volume', 'mass', 'containers', 'mown']);
    faults.day('mowings', index, mowing.date);
  });
  garden.applications.forEach(({ bedId, from, date, ...application }, index) => {
    const list = 'applications';
    faults.points(list, index, beds.has(bedId), 'bed');
    if (from.source === 'mowing') faults.points(list, index, mowings.has(from.mowingId), 'mowing');
    else if (from.source === 'stock') faults.points(list, index, stock.has(from.stockId), 'stock');
    else faults.points(list, index, isMaterial(from.materialId), `material "${from.materialId}"`);
    amount(list, index, application.amount, ['volume', 'mass', 'containers', 'depth']);
    faults.day(list, index, date);
  });
  garden.events.forEach((event, index) => {
    const list = 'events';
    if (event.kind !== 'rain gauge') faults.points(list, index, beds.has(event.bedId), 'bed');
    faults.day(list, index, event.date);
    if (event.kind === 'harvest') {
      const isThere = bedOfPlanting.get(event.plantingId) === event.bedId;
      faults.points(list, index, isThere, 'planting of that bed');
      faults.atMost(list, index, 'kilograms', event.kilograms, believable.kilograms);
    } else if (event.kind === 'water' || event.kind === 'rain gauge') {
      faults.atMost(list, index, 'millimetres', event.millimetres, believable.waterMillimetres);
    } else if (event.kind === 'rake off' && event.toHeap) {
      const { stockId, materialId, amount: raked } = event.toHeap;
      faults.points(list, index, heaps.has(stockId), 'heap');
      faults.points(list, index, isMaterial(materialId), `material "${materialId}"`);
      amount(list, index, raked, ['mass']);
    } else if (event.kind === 'soil test') {
      const { depthCentimetres, nitrateMgPerKg } = event;
      faults.atMost(list, index, 'depth', depthCentimetres, believable.testDepthCentimetres);
      faults.atMost(list, index, 'nitrate', nitrateMgPerKg ?? 0, believable.nitrateMgPerKg);
    }
  });
  faults.day('garden', null, garden.garden.today);
  orderFaults(garden, faults);
  groundFaults(garden, faults);
  weatherFaults(garden, faults);
  return faults.first;
}
