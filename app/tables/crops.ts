import { beans } from './crops/beans';
import { coles } from './crops/coles';
import { covers } from './crops/covers';
import { cucurbits } from './crops/cucurbits';
import { flowers } from './crops/flowers';
import { fruits } from './crops/fruits';
import { herbs } from './crops/herbs';
import { leaves } from './crops/leaves';
import { peas } from './crops/peas';
import { perennials } from './crops/perennials';
import { roots } from './crops/roots';
import { tubers } from './crops/tubers';
import type { CropRow } from './shapes';

/**
 * What every crop takes up, carries off, needs and stands, by id. Where several readings exist
 * the typical value is our choice among them and low and high span them.
 */
export const crops = {
  ...beans,
  ...peas,
  ...leaves,
  ...herbs,
  ...coles,
  ...roots,
  ...tubers,
  ...fruits,
  ...cucurbits,
  ...perennials,
  ...flowers,
  ...covers,
} as const satisfies Record<string, CropRow>;

export type CropId = keyof typeof crops;

/** Every crop, in the order of the tables. */
export const cropRows: readonly CropRow[] = Object.values(crops);

/** Stays in the ground for years and grows again each season. */
export const staysForYears = (id: string): boolean => Object.hasOwn(perennials, id);

/** The crop of that id; undefined when the tables do not have it. */
export const cropOf = (id: string): CropRow | undefined =>
  Object.hasOwn(crops, id) ? crops[id as CropId] : undefined;
