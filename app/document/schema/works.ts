import * as z from 'zod/mini';
import { amountSchema, conditionSchema, lawnKinds, wetnessSchema } from './amounts';
import { between, day, id, list, name, nonNegative, note, text } from './parts';

export const mowingSchema = z.strictObject({
  id,
  date: day,
  lawnId: id,
  amount: amountSchema,
  wetness: wetnessSchema,
  /** null: the lawn's own kind */
  kind: z.nullable(z.enum(lawnKinds)),
  /** where what was not laid went */
  rest: z.discriminatedUnion('to', [
    z.strictObject({ to: z.literal('undecided') }),
    z.strictObject({ to: z.literal('lawn') }),
    z.strictObject({
      to: z.literal('heap'),
      stockId: id,
      /** leaves out of a store that went on with it */
      leaves: z.optional(z.strictObject({ stockId: id, amount: amountSchema })),
    }),
    /** spread out, dried and kept in a store; what is lost on the way is reckoned, not stored */
    z.strictObject({ to: z.literal('store'), stockId: id }),
  ]),
  /** what lay on beds that are no longer in the garden, as shares of the mowing */
  onDeletedBeds: z.optional(list(z.strictObject({ name, share: nonNegative }), 1000)),
  note: z.optional(note),
});

export const applicationSchema = z.strictObject({
  id,
  date: day,
  bedId: id,
  from: z.discriminatedUnion('source', [
    z.strictObject({ source: z.literal('mowing'), mowingId: id }),
    z.strictObject({ source: z.literal('stock'), stockId: id }),
    /** grown on the spot or found: pulled weeds, spent plants, a cover crop */
    z.strictObject({ source: z.literal('elsewhere'), materialId: id }),
  ]),
  amount: amountSchema,
  condition: conditionSchema,
  /** wetness of what is not a mowing; a mowing has its own */
  wetness: wetnessSchema,
  placement: z.enum(['laid', 'hoed', 'dug']),
  /** layers laid together as one mixture share this */
  mixtureId: z.nullable(id),
  /** keeps "stop" cautions the gardener has deliberately passed */
  passedStops: z.array(text(80)),
  /** measured nitrogen and carbon to nitrogen of this very lot, if known */
  nitrogenPercent: z.optional(between(0.01, 20)),
  carbonToNitrogen: z.optional(between(2, 1000)),
});
