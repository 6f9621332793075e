import * as z from 'zod/mini';
import { between, day, list, months, text } from './parts';

/** [date, lowest deg C, highest deg C, rain mm]; null where the day's value is missing. */
export const weatherRowSchema = z.tuple([
  day,
  z.nullable(between(-70, 60)),
  z.nullable(between(-70, 60)),
  z.nullable(between(0, 2000)),
]);

/** What a station may have measured besides; each name carries its unit. */
export const extraColumns = [
  'wind m/s at 2 m',
  'humidity %',
  'highest humidity %',
  'lowest humidity %',
  'dew point deg C',
  'sunshine h',
  'radiation MJ/m2',
] as const;
/** A day and one value for each of `columns`; null where it is missing. */
export const extraRowSchema = z.tuple([day], z.nullable(z.number()));

/** The gardener's own thermometer: [date, lowest deg C, highest deg C]; outranks the record. */
export const thermometerRowSchema = z.tuple([
  day,
  z.nullable(between(-70, 60)),
  z.nullable(between(-70, 60)),
]);

export const weatherSchema = z.strictObject({
  normals: z.strictObject({
    place: text(120),
    standing: text(200),
    minimumCelsius: months(between(-70, 60)),
    maximumCelsius: months(between(-70, 60)),
    rainMillimetres: months(between(0, 3000)),
    wetDays: months(between(0, 31)),
    lastSpringFrost: z.nullable(text(5)),
    firstAutumnFrost: z.nullable(text(5)),
  }),
  /** name of a record that came with the program and can be gone on with, or null */
  bundledRecord: z.nullable(text(80)),
  days: list(weatherRowSchema, 40_000),
  extra: z.optional(
    z.strictObject({
      columns: list(z.enum(extraColumns), extraColumns.length, 1),
      days: list(extraRowSchema, 40_000),
    }),
  ),
  thermometer: z.optional(list(thermometerRowSchema, 40_000)),
  /** days by place from the weather service, there only where the gardener agreed; the record outranks them */
  download: z.optional(
    z.strictObject({
      /** the place as it was sent, to a tenth of a degree, east of Greenwich */
      latitudeDegrees: between(-66, 66),
      longitudeDegrees: between(-180, 180),
      /** null: the gardener wants no more of it */
      agreedOn: z.nullable(day),
      /** the computer's day on which the days were asked for last */
      askedOn: day,
      days: list(weatherRowSchema, 40_000),
    }),
  ),
});
