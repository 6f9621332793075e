import * as z from 'zod/mini';
import { amountSchema } from './amounts';
import { between, day, id, nonNegative, note, positive, share, text } from './parts';

const eventBase = { id, date: day, note: z.optional(note) };
export const lookAnswers = {
  nodules: ['pink', 'white', 'none'],
  leaves: ['yellow', 'normal', 'dark and lush'],
  soilSeen: ['all', 'some', 'none'],
} as const;
/** Eyes, nose, finger and board: only what was looked for is there, and something was. */
const lookSchema = z
  .strictObject({
    ...eventBase,
    kind: z.literal('look and dig'),
    bedId: id,
    /** of the legumes that stand on the bed on that day */
    nodules: z.optional(z.enum(lookAnswers.nodules)),
    /** the lower leaves */
    leaves: z.optional(z.enum(lookAnswers.leaves)),
    smellsSour: z.optional(z.boolean()),
    moistFingerDeep: z.optional(z.boolean()),
    slugsUnderBoard: z.optional(z.boolean()),
    soilSeen: z.optional(z.enum(lookAnswers.soilSeen)),
  })
  .check(
    z.refine(
      ({ nodules, leaves, smellsSour, moistFingerDeep, slugsUnderBoard, soilSeen }) =>
        [nodules, leaves, smellsSour, moistFingerDeep, slugsUnderBoard, soilSeen].some(
          (answer) => answer !== undefined,
        ),
      { error: 'nothing that was seen is in it' },
    ),
  );
export const eventSchema = z.discriminatedUnion('kind', [
  z.strictObject({ ...eventBase, kind: z.literal('water'), bedId: id, millimetres: positive }),
  z.strictObject({ ...eventBase, kind: z.literal('rain gauge'), millimetres: nonNegative }),
  z.strictObject({ ...eventBase, kind: z.literal('dig cover in'), bedId: id, share }),
  z.strictObject({
    ...eventBase,
    kind: z.literal('rake off'),
    bedId: id,
    share,
    /** what came off, as it was put on a heap: its dry matter and the nitrogen still in it */
    toHeap: z.optional(
      z.strictObject({
        stockId: id,
        materialId: id,
        amount: amountSchema,
        nitrogenPercent: between(0.01, 20),
      }),
    ),
  }),
  z.strictObject({
    ...eventBase,
    kind: z.literal('harvest'),
    bedId: id,
    plantingId: id,
    kilograms: positive,
  }),
  z.strictObject({
    ...eventBase,
    kind: z.literal('soil test'),
    bedId: id,
    nitrateMgPerKg: z.nullable(nonNegative),
    organicMatterPercent: z.nullable(between(0.1, 60)),
    depthCentimetres: positive,
    /** nitrate as the laboratory printed it, where that was not mg/kg */
    nitrateText: z.optional(text(60)),
    /** phosphorus and potassium as the laboratory printed them, with its own ratings: nothing is reckoned from them */
    minerals: z.optional(
      z.strictObject({
        /** the method's name: a rating means nothing without it */
        extractant: z.optional(text(60)),
        phosphorus: z.optional(text(60)),
        phosphorusRating: z.optional(text(40)),
        potassium: z.optional(text(60)),
        potassiumRating: z.optional(text(40)),
      }),
    ),
  }),
  lookSchema,
  /** the week's plan asked for something on this bed and the gardener laid nothing */
  z.strictObject({ ...eventBase, kind: z.literal('nothing laid'), bedId: id }),
]);
