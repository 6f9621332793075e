import { row } from './row';
import type { Row } from './shapes';
import { organicMatterLimit, saxtonRawls } from '../core/soil/pedotransfer';

/** What the feel of a soil between the fingers says of it. */
export interface SoilRow {
  /** m3 water per m3 soil that stays after draining */
  readonly fieldCapacity: Row;
  /** m3 water per m3 soil that roots cannot take */
  readonly wiltingPoint: Row;
  /** usual make-up of the class, for the density */
  readonly sand: number;
  readonly clay: number;
}

const water = 'm3 per m3';

/** A run's plan rests on the soil's water, so imagined seasons keep its likely value. */
const keptLikely = { drawnPer: 'nothing' } as const;

const printed = (
  texture: string,
  capacity: readonly [number, number],
  wilting: readonly [number, number],
  sand: number,
  clay: number,
): SoilRow => {
  const place = `table 19, ${texture}: middle of the printed range`;
  const middle = ([low, high]: readonly [number, number]): Row =>
    row(low, (low + high) / 2, high, water, 'Allen1998', place, 'derived', keptLikely);
  return { fieldCapacity: middle(capacity), wiltingPoint: middle(wilting), sand, clay };
};

const fromMakeUp = (texture: string, sand: number, clay: number): SoilRow => {
  const { fieldCapacity, wiltingPoint } = saxtonRawls({ sand, clay, organicMatterPercent: 2.5 });
  const around = (value: number): Row =>
    row(
      value - 0.05,
      value,
      value + 0.05,
      water,
      'SaxtonRawls2006',
      `${texture} at 2.5 % organic matter; range ours`,
      'derived',
      keptLikely,
    );
  return { fieldCapacity: around(fieldCapacity), wiltingPoint: around(wiltingPoint), sand, clay };
};

/** Water by texture; three kinds are missing in the printed table and worked out instead. */
export const soils = {
  sand: printed('sand', [0.07, 0.17], [0.02, 0.07], 0.88, 0.05),
  'loamy sand': printed('loamy sand', [0.11, 0.19], [0.03, 0.1], 0.8, 0.05),
  'sandy loam': printed('sandy loam', [0.18, 0.28], [0.06, 0.16], 0.65, 0.1),
  loam: printed('loam', [0.2, 0.3], [0.07, 0.17], 0.4, 0.2),
  'silt loam': printed('silt loam', [0.22, 0.36], [0.09, 0.21], 0.2, 0.15),
  silt: printed('silt', [0.28, 0.36], [0.12, 0.22], 0.1, 0.05),
  'sandy clay loam': fromMakeUp('sandy clay loam', 0.6, 0.25),
  'clay loam': fromMakeUp('clay loam', 0.3, 0.35),
  'silt clay loam': printed('silt clay loam', [0.3, 0.37], [0.17, 0.24], 0.1, 0.35),
  'sandy clay': fromMakeUp('sandy clay', 0.5, 0.4),
  'silty clay': printed('silty clay', [0.3, 0.42], [0.17, 0.29], 0.1, 0.45),
  clay: printed('clay', [0.32, 0.4], [0.2, 0.24], 0.25, 0.5),
} as const satisfies Record<string, SoilRow>;

export type TextureName = keyof typeof soils;

/**
 * Clay at which the yearly release of humus is half of what it would be without any. No sum reads
 * it: recalled and never verified, it would move every likely value of sand and clay, and the range
 * of `soilReleaseRate` already spans what it says.
 */
export const clayThatHalvesRelease: Row = row(
  200,
  200,
  200,
  'g clay per kg soil',
  'RemyMarin1976',
  'yearly release of humus goes by 1/(200 + clay) and 1/(200 + 0.3 lime), both in g/kg',
  'memory',
  { drawnPer: 'nothing', note: 'that both slow it was read, the numbers are recalled' },
);

/** What a soil gives of its own by its clay, over what a loam gives (`clayThatHalvesRelease`). */
export function releaseByClay(texture: TextureName): number {
  const grams = (name: TextureName): number => 1000 * soils[name].clay;
  const { typical: half } = clayThatHalvesRelease;
  return (half + grams('loam')) / (half + grams(texture));
}

/** Organic matter by how long the bed has been mulched or composted, where no test says it. */
export const organicMatterByMulchYears = {
  none: row(1.2, 2.5, 4.5, '% of dry soil', 'Assumed', 'no years of compost or mulch', 'assumed', {
    drawnPer: 'garden',
  }),
  'a few': row(
    2.2,
    4,
    7,
    '% of dry soil',
    'Assumed',
    'a few years of compost or mulch',
    'assumed',
    {
      drawnPer: 'garden',
    },
  ),
  many: row(3.5, 6, 12, '% of dry soil', 'Assumed', 'many years of compost or mulch', 'assumed', {
    drawnPer: 'garden',
  }),
} as const;

export type MulchYearsName = keyof typeof organicMatterByMulchYears;

/** Not tested and not asked: as wide as the question allows. */
export const organicMatterUnknown: Row = row(
  1.2,
  4,
  12,
  '% of dry soil',
  'Assumed',
  'neither tested nor asked',
  'assumed',
  { drawnPer: 'garden' },
);

/** The organic matter of a bed: measured if it was, else from the years of mulch. */
export const organicMatterRow = (
  measuredPercent: number | null,
  mulchYears: MulchYearsName | null,
): Row => {
  if (measuredPercent !== null) {
    const spread = measuredPercent > organicMatterLimit ? 0.3 : 0.1;
    return row(
      measuredPercent * (1 - spread),
      measuredPercent,
      measuredPercent * (1 + spread),
      '% of dry soil',
      'Assumed',
      'own test; spread of a soil sample assumed',
      'measured',
      { drawnPer: 'garden' },
    );
  }
  return mulchYears === null ? organicMatterUnknown : organicMatterByMulchYears[mulchYears];
};

/** Dug garden soil of ordinary organic matter. */
export const usualBulkDensity: Row = row(
  1.1,
  1.3,
  1.4,
  'kg per L',
  'Recalled',
  'mineral topsoil 1.2-1.4, beds rich in organic matter 0.9-1.1',
  'memory',
  keptLikely,
);

/**
 * Weight of a litre of soil: the usual one, or less where organic matter makes it lighter by the
 * equations of Saxton and Rawls. Above 8 % organic matter the value at 8 % stands, with a wider
 * range downwards: bought-in mixes are lighter than anything the equations have seen.
 */
export function bulkDensityRow(texture: TextureName, organicMatterPercent: number): Row {
  const { sand, clay } = soils[texture];
  const { bulkDensityKgPerL: light } = saxtonRawls({ sand, clay, organicMatterPercent });
  if (light >= usualBulkDensity.typical) return usualBulkDensity;
  const beyond = organicMatterPercent > organicMatterLimit;
  return row(
    light - (beyond ? 0.4 : 0.2),
    light,
    light + 0.1,
    'kg per L',
    'SaxtonRawls2006',
    beyond ? 'held at 8 % organic matter' : `${texture} at its organic matter`,
    'derived',
    keptLikely,
  );
}
