import type { MaterialId } from './materials';

const groupOf = (...ids: readonly MaterialId[]): ReadonlySet<string> => new Set(ids);

/** What dogs like and sicken of (common practice). Mouldy compost does it too, but no row is mouldy. */
export const poisonsToDogs = groupOf('cocoa-hulls', 'blood-meal', 'feather-meal');

/**
 * Rotted stuff that brings more phosphorus than nitrogen asks for, year upon year; leaf mould and
 * rotted sawdust bring little of either.
 */
export const composts = groupOf(
  'compost-garden',
  'compost-yard-waste',
  'compost-cattle-manure',
  'compost-poultry',
  'compost-mushroom',
  'vermicompost',
);

/** Droppings of poultry, fresh or with their litter: rich in ammonia. */
export const burnsPlants = groupOf('manure-hen-fresh', 'manure-broiler-litter');

/** Cut after it flowered, or with what had. */
export const carriesSeed = groupOf('hay-grass', 'hay-legume');
