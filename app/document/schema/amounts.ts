import * as z from 'zod/mini';
import { day, id, list, nonNegative, positive, text } from './parts';

/** The quantity a person meant. Mass is computed from it, never stored beside it. */
export const quantitySchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('volume'), litres: nonNegative }),
  z.strictObject({ kind: z.literal('mass'), kilograms: nonNegative }),
  z.strictObject({ kind: z.literal('containers'), count: nonNegative, containerId: id }),
  z.strictObject({ kind: z.literal('mown'), areaM2: positive, heightMillimetres: positive }),
  z.strictObject({ kind: z.literal('depth'), millimetres: nonNegative }),
]);

export const amountSchema = z.strictObject({
  /** the words typed, kept as they are */
  text: text(200),
  quantity: quantitySchema,
  /** "about", "not sure": wider range */
  certainty: z.enum(['plain', 'about', 'not sure']),
});

export const conditionSchema = z.enum(['just cut', 'limp', 'crisp']);
export const wetnessSchema = z.enum(['soaked', 'damp', 'dry']);
export const lawnKinds = [
  'fed',
  'ordinary',
  'clover-rich',
  'lean',
  'first rough cut',
  'seed-headed',
] as const;

/** Sprays and feeds on a lawn or on what was brought in; must be settled before any of it is laid. */
export const treatmentSchema = z.strictObject({
  answer: z.enum(['not asked', 'nothing', 'treated', 'unknown']),
  product: z.optional(text(200)),
  date: z.optional(day),
  /** what the label says about clippings */
  label: z.optional(z.enum(['forbids', 'interval', 'silent'])),
  intervalDays: z.optional(nonNegative),
  labelWords: z.optional(text(500)),
  /** day a bean-pot test passed */
  beanTestPassed: z.optional(day),
});

/** What may be wrong with where grass grew or with what was brought in, besides what was put on it. */
export const sourceHazards = [
  'poisonous plants',
  'painted wood',
  'roadside',
  'old house',
  'mouldy',
  'walnut',
  'diseased tops',
  'bought in',
] as const;
export const hazards = z.optional(list(z.enum(sourceHazards), sourceHazards.length));
