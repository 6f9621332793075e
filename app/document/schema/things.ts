import * as z from 'zod/mini';
import { amountSchema, hazards, lawnKinds, treatmentSchema, wetnessSchema } from './amounts';
import { between, day, id, list, name, note, positive } from './parts';

export const lawnSchema = z.strictObject({
  id,
  name,
  areaM2: positive,
  grass: z.enum(['cool', 'warm']),
  kind: z.enum(lawnKinds),
  creepingGrass: z.boolean(),
  seedHeadsSeen: z.nullable(day),
  fouledByPets: z.boolean(),
  /** habit: days from one mowing to the next while the grass grows; absent: not said */
  mownEveryDays: z.optional(between(2, 90)),
  hazards,
  /** rows of one's own that its clippings are counted by, where they count as what such a row rests on */
  ownClippings: z.optional(list(id, 20)),
  treatment: treatmentSchema,
  /** what was put on it before `treatment`; absent: nothing, or nobody said */
  earlierTreatments: z.optional(list(treatmentSchema, 50)),
  note: z.optional(note),
});

export const containerSchema = z.strictObject({
  id,
  name,
  plural: name,
  litres: positive,
  /** "weigh one bag": a full one, with what was in it */
  weighed: z.nullable(
    z.strictObject({
      date: day,
      kilograms: positive,
      wetness: wetnessSchema,
      /** material that was in it; clippings when absent */
      of: z.optional(id),
    }),
  ),
});

/** A material of one's own, or a table row with own values. Missing values come from `basedOn`. */
export const ownMaterialSchema = z.strictObject({
  id,
  name,
  basedOn: id,
  nitrogenPercent: z.optional(between(0.01, 20)),
  carbonToNitrogen: z.optional(between(2, 1000)),
  moisturePercent: z.optional(between(0, 97)),
  densityKgPerM3: z.optional(positive),
  /** % of dry matter, as the elements */
  phosphorusPercent: z.optional(between(0.001, 20)),
  potassiumPercent: z.optional(between(0.001, 20)),
  note: z.optional(note),
});

/** A crop of one's own, or a table row with own numbers. Missing numbers come from `basedOn`. */
export const ownCropSchema = z.strictObject({
  id,
  name,
  basedOn: id,
  /** nitrogen in the plant at the good pick */
  uptakeGramsPerM2: z.optional(between(0.1, 100)),
  goodYieldKilogramsPerM2: z.optional(between(0.01, 100)),
  firstHarvestDays: z.optional(between(1, 2000)),
  usualDays: z.optional(between(1, 2000)),
  rootDepthCentimetres: z.optional(between(5, 300)),
  note: z.optional(note),
});

export const stockSchema = z.strictObject({
  id,
  name,
  materialId: id,
  /** a heap takes what is not laid; a store holds what was brought in */
  role: z.enum(['heap', 'store']),
  /** what was there on `date`; null for an empty heap */
  amount: z.nullable(amountSchema),
  date: day,
  treatment: treatmentSchema,
  hazards,
  note: z.optional(note),
});
