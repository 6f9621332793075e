import { row, single } from './row';
import type { MaterialRow, Row } from './shapes';
import type { MaterialId } from './materials';

/** The material that comes off each kind of lawn. */
export const lawnMaterials = {
  fed: 'grass-fresh-fertilised',
  ordinary: 'grass-fresh-generic',
  'clover-rich': 'grass-clover-lawn',
  lean: 'grass-fresh-lean-summer',
  'first rough cut': 'grass-first-rough-cut',
  'seed-headed': 'grass-seed-headed',
} as const satisfies Record<string, MaterialId>;

/** Whether a row of the tables is what comes fresh off some kind of lawn. */
export const isClippings = (id: string): boolean =>
  Object.values<string>(lawnMaterials).includes(id);

export type LawnKindName = keyof typeof lawnMaterials;

/** Dry matter on a square metre in each centimetre taken off, until one bag has been weighed. */
export const dryMassPerCentimetre: Row = row(
  4,
  8,
  13,
  'g dry matter per m2 and cm',
  'MaineGrazing',
  'pasture stick readings against the weekly weights of lawns, which are two to four times less',
  'assumed',
  { drawnPer: 'mowing' },
);

const yearUnit = 'g dry matter per m2 and year';

/** Dry matter a lawn of cool-season grass gives in a year. */
export const yearlyYields = {
  lean: row(150, 250, 350, yearUnit, 'Friell', 'below the readings for usual care', 'derived', {
    drawnPer: 'garden',
  }),
  ordinary: row(
    350,
    450,
    520,
    yearUnit,
    'Friell',
    '470 with usual care; 370-515 elsewhere',
    'derived',
    {
      drawnPer: 'garden',
    },
  ),
  fed: row(
    480,
    600,
    1000,
    yearUnit,
    'RhodeIsland1991',
    'above 370-515 of fed, unwatered turf; warm-season grass can double it',
    'derived',
    {
      drawnPer: 'garden',
    },
  ),
} as const;

/** What clippings hold besides nitrogen: for what collecting takes off a lawn. */
export const clippingsMinerals = {
  phosphorusPercent: row(
    0.5,
    0.75,
    1,
    '% of dry matter',
    'MissouriG6958',
    'half to one per cent; whether element or oxide is not said',
    'derived',
    { drawnPer: 'material' },
  ),
  potassiumPercent: row(
    1.5,
    2,
    2.5,
    '% of dry matter',
    'MissouriG6958',
    'about two per cent; range ours',
    'mixed',
    { drawnPer: 'material' },
  ),
} as const;

/** What leaving clippings does for a lawn: the other side of collecting them. */
export const leavingClippings = {
  yieldRaised: row(
    0.3,
    0.5,
    0.72,
    'share of the yield without',
    'Kopp2002',
    'abstract: dry matter up 30-72 %, middle ours',
    'derived',
  ),
  uptakeRaised: row(
    0.48,
    0.54,
    0.6,
    'share of the uptake without',
    'Kopp2002',
    'abstract: nitrogen taken up 48-60 % more',
    'derived',
  ),
  feedSavedAtFirst: single(0.25, 'share of lawn feed', 'MissouriG6958', 'up to a quarter', 'read'),
  feedSavedInTheLongRun: row(
    0.33,
    0.5,
    0.6,
    'share of lawn feed',
    'Qian2003',
    'a simulation: a third after ten years, half after 25, 60 % after 50',
    'reported',
  ),
} as const;

/** Nitrogen that a year of clippings takes along, all of it collected. */
export const nitrogenTakenOff: Row = row(
  11.1,
  18,
  26,
  'g N per m2 and year',
  'RhodeIsland1991',
  'abstract: 111-260 kg/ha from fed turf, middle ours',
  'derived',
);

/** Figures nobody measured, only good for asking whether an entry can be meant. */
export const clippingsSanity = {
  litresAWeek: row(
    0.2,
    0.3,
    0.4,
    'L per m2 and week',
    'MowerMaker',
    '20-40 L from 100 m2 in a week',
    'reported',
  ),
  firstMowingInMay: single(
    0.3,
    'kg fresh per m2',
    'FrenchCompostAdvice',
    '30 kg from 100 m2',
    'reported',
  ),
  cloverGrassCut: row(
    0.8,
    1.1,
    1.4,
    'kg fresh per m2 and cut',
    'BiolandReport',
    '8-14 t/ha a cut, three cuts a year',
    'read',
  ),
} as const;

/** The yearly yield that goes with a kind of lawn. */
export const yearlyYieldOf = (kind: LawnKindName): Row =>
  kind === 'fed' ? yearlyYields.fed : kind === 'lean' ? yearlyYields.lean : yearlyYields.ordinary;

/**
 * By how much the density may be off where somebody gave a depth; a weight leaves no such doubt.
 */
export const depthDensityFactor: Row = row(
  0.6,
  1,
  1.6,
  'factor on bulk density',
  'Woods',
  '150-400 around 250 kg/m3; nothing measured for a mower box',
  'assumed',
  { drawnPer: 'mowing' },
);

export type WetnessName = 'soaked' | 'damp' | 'dry';
export type ConditionName = 'just cut' | 'limp' | 'crisp';

/** Water on the outside, in kg per kg dry matter, above what the material holds when dry to the touch. */
export const outsideWater: Readonly<Record<WetnessName, Row>> = {
  dry: single(0, 'kg per kg dry matter', 'Definition', 'dry to the touch', 'definition'),
  damp: row(
    0,
    0.56,
    1.5,
    'kg per kg dry matter',
    'Rynk1992',
    'ordinary clippings from 80 to the average 82 per cent water',
    'derived',
    { drawnPer: 'mowing' },
  ),
  soaked: row(
    1,
    1.67,
    4,
    'kg per kg dry matter',
    'Assumed',
    'ordinary clippings from 80 to 85 per cent water: a 45 L bag then weighs 15 kg',
    'assumed',
    { drawnPer: 'mowing' },
  ),
};

/** Water left in clippings that were spread out for a day, or until they rustle. */
export const wiltedMoisture = {
  limp: row(45, 60, 72, '% of fresh weight', 'Assumed', 'clippings a day old', 'assumed', {
    drawnPer: 'mowing',
  }),
  crisp: row(10, 15, 30, '% of fresh weight', 'Assumed', 'sun-dried clippings', 'assumed', {
    drawnPer: 'mowing',
  }),
} as const;

const wettedPercent = (moisturePercent: number, water: number): number => {
  const dry = 1 - moisturePercent / 100;
  const wet = moisturePercent / 100 + water * dry;
  return (100 * wet) / (wet + dry);
};

/**
 * Water in a material as it was handled, in per cent of fresh weight. Wetness adds water to the
 * outside and changes neither dry matter nor nitrogen; wilting only concerns what is cut green.
 */
export function moistureRow(
  material: Pick<MaterialRow, 'moisturePercent' | 'materialClass'>,
  condition: ConditionName,
  wetness: WetnessName,
): Row {
  const base =
    material.materialClass === 'green' && condition !== 'just cut'
      ? wiltedMoisture[condition]
      : material.moisturePercent;
  if (wetness === 'dry') return base;
  const added = outsideWater[wetness];
  return {
    ...base,
    low: wettedPercent(base.low, added.low),
    typical: wettedPercent(base.typical, added.typical),
    high: wettedPercent(base.high, added.high),
    standing: added.standing === 'assumed' ? 'assumed' : base.standing,
    place: `${base.place}; ${added.place}`,
  };
}
