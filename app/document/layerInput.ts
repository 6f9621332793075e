import { dayOf } from '../core/days';
import type { LayerInput } from '../core/season/input';
import { areaOn } from './bedPast';
import { keptWith } from './keptParts';
import { massOf } from './layerMass';
import { materialOfApplication, materialParts, mowingOf } from './materialValues';
import type { Application, Bed, Garden } from './schema';

const kept = keptWith<Application, LayerInput>();

/**
 * One application per m2 of its bed as big as it was on that day. Of a garden that nobody can change
 * any more it is made once, for the bed's sums and for the books of its mowing alike.
 *
 * @throws when it comes from what the garden does not have: `parseGarden` and the store let no such
 *   garden in
 */
export function layerInput(garden: Garden, bed: Bed, application: Application): LayerInput {
  const areaM2 = areaOn(bed, application.date);
  const make = (): LayerInput => perSquareMetre(garden, areaM2, application);
  if (!Object.isFrozen(garden) || !Object.isFrozen(application)) return make();
  return kept(
    application,
    [areaM2, garden.containers, ...materialParts(garden, application.from)],
    make,
  );
}

function perSquareMetre(garden: Garden, areaM2: number, application: Application): LayerInput {
  const material = materialOfApplication(garden, application);
  const mowing = mowingOf(garden, application.from);
  const { condition } = application;
  // a mowing says how wet it was when it was cut; what was spread out since has dried
  const wetness =
    mowing === null ? application.wetness : condition === 'just cut' ? mowing.wetness : 'dry';
  const handling = { condition, wetness };
  const { quantity } = application.amount;
  const mass = massOf(garden, quantity, material, handling, areaM2);
  const dryKgPerM2 = mass.dryKilograms / areaM2;
  const { row } = material;
  return {
    id: application.id,
    day: dayOf(application.date),
    materialId: material.id,
    materialClass: row.materialClass,
    isGreens: row.isGreens,
    placement: application.placement,
    condition,
    freshKgPerM2: mass.freshKilograms / areaM2,
    dryKgPerM2,
    nitrogen: dryKgPerM2 * 1000 * material.nitrogen,
    carbon: dryKgPerM2 * 1000 * material.carbon,
    laidDepth: mass.litres / areaM2,
    settledDensityKgPerM3: row.settledDensityKgPerM3.typical,
    mineralShare: row.mineralShare?.typical ?? 0,
    slowShare: row.slowShare?.typical ?? 0,
    slowKind: row.slowKind ?? 'compost',
  };
}
