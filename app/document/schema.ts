import * as z from 'zod/mini';
import {
  amountSchema,
  lawnKinds,
  quantitySchema,
  sourceHazards,
  treatmentSchema,
  wetnessSchema,
} from './schema/amounts';
import { bedSchema, plantingSchema, retiredBedSchema, slopes, textures } from './schema/beds';
import { eventSchema } from './schema/events';
import {
  containerSchema,
  lawnSchema,
  ownCropSchema,
  ownMaterialSchema,
  stockSchema,
} from './schema/things';
import {
  extraColumns,
  thermometerRowSchema,
  weatherRowSchema,
  weatherSchema,
} from './schema/weather';
import { applicationSchema, mowingSchema } from './schema/works';
import { text, between, list, name, note, day } from './schema/parts';

export { lawnKinds, sourceHazards } from './schema/amounts';
export { textures } from './schema/beds';
export { lookAnswers } from './schema/events';
export { extraColumns } from './schema/weather';

/** The file's own name and version. A newer version is refused with a sentence, an older one migrated. */
export const formatName = 'mowings-garden';
export const schemaVersion = 1;

/** Units written out in the file, so that it can be read without the program. */
export const fileUnits = {
  length: 'mm and m as named',
  area: 'm2',
  mass: 'kg',
  volume: 'L',
  temperature: 'deg C',
  rain: 'mm',
  nitrogen: 'g N/m2 or mg/kg as named',
  date: 'YYYY-MM-DD',
} as const;

export const gardenSchema = z.strictObject({
  format: z.literal(formatName),
  schemaVersion: z.literal(schemaVersion),
  units: z.strictObject(
    Object.fromEntries(
      Object.entries(fileUnits).map(([key, value]) => [key, z.literal(value)]),
    ) as {
      [Key in keyof typeof fileUnits]: z.ZodMiniLiteral<(typeof fileUnits)[Key]>;
    },
  ),
  garden: z.strictObject({
    name,
    /** the invented garden that comes with the program; never mixed with one's own */
    isSample: z.boolean(),
    latitudeDegrees: between(-66, 66),
    /** height above the sea; sea level where it is not said */
    elevationMetres: z.optional(between(-430, 6000)),
    place: text(120),
    /** a day, or null for the computer's own */
    today: z.nullable(day),
    seasonStartMonth: z.int().check(z.gte(1), z.lte(12)),
    shownUnits: z.enum(['metric', 'us']),
    dogs: z.boolean(),
    ownWell: z.boolean(),
    note: z.optional(note),
  }),
  lawns: list(lawnSchema, 100),
  containers: list(containerSchema, 100),
  materials: list(ownMaterialSchema, 500),
  crops: z.optional(list(ownCropSchema, 500)),
  stock: list(stockSchema, 200),
  beds: list(bedSchema, 200),
  retiredBeds: z.optional(list(retiredBedSchema, 1000)),
  plantings: list(plantingSchema, 5000),
  mowings: list(mowingSchema, 5000),
  applications: list(applicationSchema, 20_000),
  events: list(eventSchema, 20_000),
  weather: weatherSchema,
});

export type Garden = z.infer<typeof gardenSchema>;
export type Lawn = z.infer<typeof lawnSchema>;
export type Container = z.infer<typeof containerSchema>;
export type OwnMaterial = z.infer<typeof ownMaterialSchema>;
export type OwnCrop = z.infer<typeof ownCropSchema>;
export type Stock = z.infer<typeof stockSchema>;
export type Bed = z.infer<typeof bedSchema>;
export type RetiredBed = z.infer<typeof retiredBedSchema>;
export type Planting = z.infer<typeof plantingSchema>;
export type Mowing = z.infer<typeof mowingSchema>;
export type Application = z.infer<typeof applicationSchema>;
export type GardenEvent = z.infer<typeof eventSchema>;
export type Amount = z.infer<typeof amountSchema>;
export type Quantity = z.infer<typeof quantitySchema>;
export type Treatment = z.infer<typeof treatmentSchema>;
export type WeatherRow = z.infer<typeof weatherRowSchema>;
export type ExtraColumn = (typeof extraColumns)[number];
export type ExtraWeather = NonNullable<z.infer<typeof weatherSchema>['extra']>;
export type ThermometerRow = z.infer<typeof thermometerRowSchema>;
export type Slope = (typeof slopes)[number];
export type Wetness = z.infer<typeof wetnessSchema>;
export type SourceHazard = (typeof sourceHazards)[number];
export type LawnKind = (typeof lawnKinds)[number];
export type Texture = (typeof textures)[number];
