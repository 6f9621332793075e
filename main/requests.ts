import { z } from 'zod';
import { dayFromText, dayOf } from '../app/core/days';
import { exportEndings, colourSchemes, type Host } from '../app/host/contract';

/** A garden of a lifetime stays far below; more is a mistake or an attack. */
export const textLimitBytes = 20_000_000;

const id = z.uuid();
/** As a person types it; `cleanName` makes a file name of it. */
const name = z.string().max(400);
/** The name of a step, for a menu. */
const step = z.string().max(400);
const text = z.string();
const day = z.string().refine((word) => dayFromText(word) !== null);
/** Days that one question may want; the service's own history goes further. */
const mostDaysAsked = 30 * 366;
const tenths = (degrees: number) =>
  z
    .number()
    .int()
    .min(-10 * degrees)
    .max(10 * degrees);

/** The one shape that each power takes. Strict: an unknown key is refused, not ignored. */
export const requests = {
  about: z.null(),
  recentGardens: z.null(),
  openGarden: z.strictObject({ id: id.nullable() }),
  saveGarden: z.strictObject({ id: id.nullable(), name, text, replace: z.boolean() }),
  keepDraft: z.strictObject({ id: id.nullable(), name, text }),
  restoreDraft: z.null(),
  discardDraft: z.null(),
  exportFile: z.strictObject({
    name,
    ending: z.enum(exportEndings),
    base64: z.base64(),
    replace: z.boolean(),
  }),
  askWeather: z
    .strictObject({
      latitudeTenths: tenths(90),
      longitudeTenths: tenths(180),
      firstDay: day,
      lastDay: day,
    })
    .refine(({ firstDay, lastDay }) => {
      const days = dayOf(lastDay) - dayOf(firstDay) + 1;
      return days >= 1 && days <= mostDaysAsked;
    }),
  callOffWeather: z.null(),
  forgetWeather: z.null(),
  chooseColourScheme: z.strictObject({ scheme: z.enum(colourSchemes) }),
  describeWindow: z.strictObject({
    name,
    unsaved: z.boolean(),
    undo: step.nullish(),
    redo: step.nullish(),
  }),
} satisfies Record<keyof Host, z.ZodType>;

export type Power = keyof Host;

/** Whether a name from outside names a power; `toString` and its like do not. */
export const isPower = (word: string): word is Power => Object.hasOwn(requests, word);
