import * as z from 'zod';
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

const id = z.string().min(1).max(64);
const name = z.string().min(1).max(80);
const note = z.string().max(2000);
const day = z
  .string()
  .refine((text) => dayFromText(text) !== null, { error: 'not a day, wanted YYYY-MM-DD' });
const finite = z.number().finite();
const positive = finite.positive().max(1e7);
const nonNegative = finite.min(0).max(1e7);
const share = finite.min(0).max(1);
const months = (item: z.ZodNumber) => z.array(item).length(12);

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
  text: z.string().max(200),
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
  product: z.string().max(200).optional(),
  date: day.optional(),
  /** what the label says about clippings */
  label: z.enum(['forbids', 'interval', 'silent']).optional(),
  intervalDays: nonNegative.optional(),
  labelWords: z.string().max(500).optional(),
  /** day a bean-pot test passed */
  beanTestPassed: day.optional(),
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
const hazards = z.array(z.enum(sourceHazards)).max(sourceHazards.length).optional();

export const lawnSchema = z.strictObject({
  id,
  name,
  areaM2: positive,
  grass: z.enum(['cool', 'warm']),
  kind: z.enum(lawnKinds),
  creepingGrass: z.boolean(),
  seedHeadsSeen: day.nullable(),
  fouledByPets: z.boolean(),
  hazards,
  treatment: treatmentSchema,
  note: note.optional(),
});

export const containerSchema = z.strictObject({
  id,
  name,
  plural: name,
  litres: positive,
  /** "weigh one bag": a full one, with what was in it */
  weighed: z
    .strictObject({
      date: day,
      kilograms: positive,
      wetness: wetnessSchema,
      /** material that was in it; clippings when absent */
      of: id.optional(),
    })
    .nullable(),
});

/** A material of one's own, or a table row with own values. Missing values come from `basedOn`. */
export const ownMaterialSchema = z.strictObject({
  id,
  name,
  basedOn: id,
  nitrogenPercent: finite.min(0.01).max(20).optional(),
  carbonToNitrogen: finite.min(2).max(1000).optional(),
  moisturePercent: finite.min(0).max(97).optional(),
  densityKgPerM3: positive.optional(),
  note: note.optional(),
});

/** A crop of one's own, or a table row with own numbers. Missing numbers come from `basedOn`. */
export const ownCropSchema = z.strictObject({
  id,
  name,
  basedOn: id,
  /** nitrogen in the plant at the good pick */
  uptakeGramsPerM2: finite.min(0.1).max(100).optional(),
  goodYieldKilogramsPerM2: finite.min(0.01).max(100).optional(),
  firstHarvestDays: finite.min(1).max(2000).optional(),
  usualDays: finite.min(1).max(2000).optional(),
  rootDepthCentimetres: finite.min(5).max(300).optional(),
  note: note.optional(),
});

export const stockSchema = z.strictObject({
  id,
  name,
  materialId: id,
  /** a heap takes what is not laid; a store holds what was brought in */
  role: z.enum(['heap', 'store']),
  /** what was there on `date`; null for an empty heap */
  amount: amountSchema.nullable(),
  date: day,
  treatment: treatmentSchema,
  hazards,
  note: note.optional(),
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
  lengthMetres: positive.nullable(),
  widthMetres: positive.nullable(),
  /** walk from the gate, in steps */
  steps: nonNegative.nullable(),
  texture: z.enum(textures),
  /** measured, or null: then `mulchYears` stands in for it */
  organicMatterPercent: finite.min(0.1).max(60).nullable(),
  mulchYears: z.enum(['none', 'a few', 'many']).nullable(),
  watering: z.enum(['as logged', 'kept moist']),
  roof: z.enum(['open', 'glass or film']),
  /** fall of the ground, where it is worth saying; without it no rain runs off */
  slope: z.enum(slopes).optional(),
  /** the run starts here when it is later than the season's first day, or earlier on purpose */
  knownSince: day.nullable(),
  /** how big it was before each of these days, earliest first; what was done then was done on that */
  earlierAreas: z
    .array(z.strictObject({ until: day, areaM2: positive }))
    .min(1)
    .max(100)
    .optional(),
  /** split off or joined on a day's morning: so much of each of these retired beds */
  ground: z
    .strictObject({
      on: day,
      parts: z
        .array(z.strictObject({ bedId: id, areaM2: positive }))
        .min(1)
        .max(20),
    })
    .optional(),
  note: note.optional(),
});

/** A bed that is none any more: its log is kept, and the ground of others may go back to it. */
export const retiredBedSchema = bedSchema.extend({
  /** from this day's morning on */
  retired: day,
});

export const plantingSchema = z.strictObject({
  id,
  bedId: id,
  cropId: id,
  variety: z.string().max(80).optional(),
  share: finite.min(0.01).max(4),
  started: day,
  how: z.enum(['sown', 'planted']),
  firstHarvest: day.nullable(),
  /** day it left or will leave the bed */
  cleared: day.nullable(),
  tops: z.enum(['left', 'dug in', 'taken away', 'pulled with roots']),
  /** the usual pick in kg per m2 of planted ground, or a word */
  wanted: z.union([
    z.enum(['poor', 'usual', 'heavy']),
    z.strictObject({ kilogramsPerM2: positive }),
  ]),
  nodules: z.enum(['not looked', 'pink', 'white', 'none']),
  /** stood on a bed that was split or joined, and so much of it stands here since */
  continues: z.strictObject({ plantingId: id, portion: share.positive() }).optional(),
});

export const mowingSchema = z.strictObject({
  id,
  date: day,
  lawnId: id,
  amount: amountSchema,
  wetness: wetnessSchema,
  /** null: the lawn's own kind */
  kind: z.enum(lawnKinds).nullable(),
  /** where what was not laid went */
  rest: z.discriminatedUnion('to', [
    z.strictObject({ to: z.literal('undecided') }),
    z.strictObject({ to: z.literal('lawn') }),
    z.strictObject({
      to: z.literal('heap'),
      stockId: id,
      /** leaves out of a store that went on with it */
      leaves: z.strictObject({ stockId: id, amount: amountSchema }).optional(),
    }),
    /** spread out, dried and kept in a store; what is lost on the way is reckoned, not stored */
    z.strictObject({ to: z.literal('store'), stockId: id }),
  ]),
  /** what lay on beds that are no longer in the garden, as shares of the mowing */
  onDeletedBeds: z
    .array(z.strictObject({ name, share: nonNegative }))
    .max(1000)
    .optional(),
  note: note.optional(),
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
  mixtureId: id.nullable(),
  /** keeps "stop" cautions the gardener has deliberately passed */
  passedStops: z.array(z.string().max(80)),
  /** measured nitrogen and carbon to nitrogen of this very lot, if known */
  nitrogenPercent: finite.min(0.01).max(20).optional(),
  carbonToNitrogen: finite.min(2).max(1000).optional(),
});

const eventBase = { id, date: day, note: note.optional() };
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
    nodules: z.enum(lookAnswers.nodules).optional(),
    /** the lower leaves */
    leaves: z.enum(lookAnswers.leaves).optional(),
    smellsSour: z.boolean().optional(),
    moistFingerDeep: z.boolean().optional(),
    slugsUnderBoard: z.boolean().optional(),
    soilSeen: z.enum(lookAnswers.soilSeen).optional(),
  })
  .refine(
    ({ nodules, leaves, smellsSour, moistFingerDeep, slugsUnderBoard, soilSeen }) =>
      [nodules, leaves, smellsSour, moistFingerDeep, slugsUnderBoard, soilSeen].some(
        (answer) => answer !== undefined,
      ),
    { error: 'nothing that was seen is in it' },
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
    nitrateMgPerKg: nonNegative.nullable(),
    organicMatterPercent: finite.min(0.1).max(60).nullable(),
    depthCentimetres: positive,
    /** nitrate as the laboratory printed it, where that was not mg/kg */
    nitrateText: z.string().max(60).optional(),
    /** phosphorus and potassium as the laboratory printed them, with its own ratings: nothing is reckoned from them */
    minerals: z
      .strictObject({
        /** the method's name: a rating means nothing without it */
        extractant: z.string().max(60).optional(),
        phosphorus: z.string().max(60).optional(),
        phosphorusRating: z.string().max(40).optional(),
        potassium: z.string().max(60).optional(),
        potassiumRating: z.string().max(40).optional(),
      })
      .optional(),
  }),
  lookSchema,
  /** the week's plan asked for something on this bed and the gardener laid nothing */
  z.strictObject({ ...eventBase, kind: z.literal('nothing laid'), bedId: id }),
]);

/** [date, lowest deg C, highest deg C, rain mm]; null where the day's value is missing. */
export const weatherRowSchema = z.tuple([
  day,
  finite.min(-70).max(60).nullable(),
  finite.min(-70).max(60).nullable(),
  finite.min(0).max(2000).nullable(),
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
export const extraRowSchema = z.tuple([day]).rest(finite.nullable());

/** The gardener's own thermometer: [date, lowest deg C, highest deg C]; outranks the record. */
export const thermometerRowSchema = z.tuple([
  day,
  finite.min(-70).max(60).nullable(),
  finite.min(-70).max(60).nullable(),
]);

export const weatherSchema = z.strictObject({
  normals: z.strictObject({
    place: z.string().max(120),
    standing: z.string().max(200),
    minimumCelsius: months(finite.min(-70).max(60)),
    maximumCelsius: months(finite.min(-70).max(60)),
    rainMillimetres: months(finite.min(0).max(3000)),
    wetDays: months(finite.min(0).max(31)),
    lastSpringFrost: z.string().max(5).nullable(),
    firstAutumnFrost: z.string().max(5).nullable(),
  }),
  /** name of a record that came with the program and can be gone on with, or null */
  bundledRecord: z.string().max(80).nullable(),
  days: z.array(weatherRowSchema).max(40_000),
  extra: z
    .strictObject({
      columns: z.array(z.enum(extraColumns)).min(1).max(extraColumns.length),
      days: z.array(extraRowSchema).max(40_000),
    })
    .optional(),
  thermometer: z.array(thermometerRowSchema).max(40_000).optional(),
  /** days by place from the weather service, there only where the gardener agreed; the record outranks them */
  download: z
    .strictObject({
      /** the place as it was sent, to a tenth of a degree, east of Greenwich */
      latitudeDegrees: finite.min(-66).max(66),
      longitudeDegrees: finite.min(-180).max(180),
      /** null: the gardener wants no more of it */
      agreedOn: day.nullable(),
      /** the computer's day on which the days were asked for last */
      askedOn: day,
      days: z.array(weatherRowSchema).max(40_000),
    })
    .optional(),
});

export const gardenSchema = z.strictObject({
  format: z.literal(formatName),
  schemaVersion: z.literal(schemaVersion),
  units: z.strictObject(
    Object.fromEntries(
      Object.entries(fileUnits).map(([key, value]) => [key, z.literal(value)]),
    ) as {
      [Key in keyof typeof fileUnits]: z.ZodLiteral<(typeof fileUnits)[Key]>;
    },
  ),
  garden: z.strictObject({
    name,
    /** the invented garden that comes with the program; never mixed with one's own */
    isSample: z.boolean(),
    latitudeDegrees: finite.min(-66).max(66),
    /** height above the sea; sea level where it is not said */
    elevationMetres: finite.min(-430).max(6000).optional(),
    place: z.string().max(120),
    /** a day, or null for the computer's own */
    today: day.nullable(),
    seasonStartMonth: finite.int().min(1).max(12),
    shownUnits: z.enum(['metric', 'us']),
    dogs: z.boolean(),
    ownWell: z.boolean(),
    note: note.optional(),
  }),
  lawns: z.array(lawnSchema).max(100),
  containers: z.array(containerSchema).max(100),
  materials: z.array(ownMaterialSchema).max(500),
  crops: z.array(ownCropSchema).max(500).optional(),
  stock: z.array(stockSchema).max(200),
  beds: z.array(bedSchema).max(200),
  retiredBeds: z.array(retiredBedSchema).max(1000).optional(),
  plantings: z.array(plantingSchema).max(5000),
  mowings: z.array(mowingSchema).max(5000),
  applications: z.array(applicationSchema).max(20_000),
  events: z.array(eventSchema).max(20_000),
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
