import * as z from 'zod/mini';
import { dayFromText } from '../core/days';

// The page's content policy forbids making code from text, which the schema library would try.
z.config({ jitless: true });

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

const text = (most: number, least = 0) => z.string().check(z.minLength(least), z.maxLength(most));
const between = (least: number, most: number) => z.number().check(z.gte(least), z.lte(most));
const list = <Item extends z.core.SomeType>(item: Item, most: number, least = 0) =>
  z.array(item).check(z.minLength(least), z.maxLength(most));
const id = text(64, 1);
const name = text(80, 1);
const note = text(2000);
const day = z
  .string()
  .check(
    z.refine((words) => dayFromText(words) !== null, { error: 'not a day, wanted YYYY-MM-DD' }),
  );
const positive = z.number().check(z.positive(), z.lte(1e7));
const nonNegative = between(0, 1e7);
const share = between(0, 1);
const months = <Item extends z.core.SomeType>(item: Item) => z.array(item).check(z.length(12));

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
const hazards = z.optional(list(z.enum(sourceHazards), sourceHazards.length));

export const lawnSchema = z.strictObject({
  id,
  name,
  areaM2: positive,
  grass: z.enum(['cool', 'warm']),
  kind: z.enum(lawnKinds),
  creepingGrass: z.boolean(),
  seedHeadsSeen: z.nullable(day),
  fouledByPets: z.boolean(),
  hazards,
  treatment: treatmentSchema,
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
  z.strictObject({ ...eventBase, kind: z.literal('rake off'), bedId: id, share }),
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
