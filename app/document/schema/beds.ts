import * as z from 'zod/mini';
import { between, day, id, list, name, nonNegative, note, positive, share, text } from './parts';

export const textures = [
  'sand',
  'loamy sand',
  'sandy loam',
  'loam',
  'silt loam',
  'silt',
  'sandy clay loam',
  'clay loam',
  'silt clay loam',
  'sandy clay',
  'silty clay',
  'clay',
] as const;

export const slopes = ['flat', 'gentle', 'steep'] as const;

export const bedSchema = z.strictObject({
  id,
  name,
  areaM2: positive,
  lengthMetres: z.nullable(positive),
  widthMetres: z.nullable(positive),
  /** walk from the gate, in steps */
  steps: z.nullable(nonNegative),
  texture: z.enum(textures),
  /** measured, or null: then `mulchYears` stands in for it */
  organicMatterPercent: z.nullable(between(0.1, 60)),
  mulchYears: z.nullable(z.enum(['none', 'a few', 'many'])),
  watering: z.enum(['as logged', 'kept moist']),
  roof: z.enum(['open', 'glass or film']),
  /** fall of the ground, where it is worth saying; without it no rain runs off */
  slope: z.optional(z.enum(slopes)),
  /** the run starts here when it is later than the season's first day, or earlier on purpose */
  knownSince: z.nullable(day),
  /** how big it was before each of these days, earliest first; what was done then was done on that */
  earlierAreas: z.optional(list(z.strictObject({ until: day, areaM2: positive }), 100, 1)),
  /** split off or joined on a day's morning: so much of each of these retired beds */
  ground: z.optional(
    z.strictObject({
      on: day,
      parts: list(z.strictObject({ bedId: id, areaM2: positive }), 20, 1),
    }),
  ),
  note: z.optional(note),
});

/** A bed that is none any more: its log is kept, and the ground of others may go back to it. */
export const retiredBedSchema = z.extend(bedSchema, {
  /** from this day's morning on */
  retired: day,
});

export const plantingSchema = z.strictObject({
  id,
  bedId: id,
  cropId: id,
  variety: z.optional(text(80)),
  share: between(0.01, 4),
  started: day,
  how: z.enum(['sown', 'planted']),
  firstHarvest: z.nullable(day),
  /** day it left or will leave the bed */
  cleared: z.nullable(day),
  tops: z.enum(['left', 'dug in', 'taken away', 'pulled with roots']),
  /** the usual pick in kg per m2 of planted ground, or a word */
  wanted: z.union([
    z.enum(['poor', 'usual', 'heavy']),
    z.strictObject({ kilogramsPerM2: positive }),
  ]),
  nodules: z.enum(['not looked', 'pink', 'white', 'none']),
  /** stood on a bed that was split or joined, and so much of it stands here since */
  continues: z.optional(z.strictObject({ plantingId: id, portion: share.check(z.positive()) })),
});
