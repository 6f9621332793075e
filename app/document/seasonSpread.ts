import type { Coefficients } from '../core/season/coefficients';
import type { Drawn, FixingSpread, LayerSpread, SeasonSpread } from '../core/season/draws/spread';
import { actingRatio } from '../tables/actingRatio';
import { coefficientRows } from '../tables/coefficients';
import type { MaterialRow, Row } from '../tables/shapes';
import { organicMatterRow } from '../tables/soils';
import { wantedShares } from '../tables/wanted';
import { measuredMatter } from './measuredMatter';
import { anyBed, areaOn, groundOf, idsOfPast } from './bedPast';
import { bedParts, keptWith } from './keptParts';
import { lotInputOf } from './layerMass';
import { rowOrMeasured } from './measuredRow';
import { lotOfAmount } from './keptLots';
import { materialOfApplication, mowingOf } from './materialValues';
import type { Application, Bed, Garden, Planting } from './schema';
import { cropById } from './cropValues';

/** 10 and 90 % points to 5 and 95 % points: standard normal quantiles, a definition. */
const widening = 1.6448536269514722 / 1.2815515655446004;

/** Widens a shown range (10-90) to the points a row is read by (5-95), on the log scale. */
function fivePoints(shown: { low: number; typical: number; high: number }): {
  low: number;
  typical: number;
  high: number;
} {
  if (!(shown.low > 0)) return { low: 1, typical: 1, high: 1 };
  return {
    low: Math.pow(shown.low / shown.typical, widening),
    typical: 1,
    high: Math.pow(shown.high / shown.typical, widening),
  };
}

/** A row as a factor on its own typical value. */
const factorOf = (row: Row): { low: number; typical: number; high: number } => ({
  low: row.low / row.typical,
  typical: 1,
  high: row.high / row.typical,
});

/** Compost and the like have a share of their own, and wood a rate that no ratio moves. */
const rotsByRatio = ({ materialClass }: MaterialRow): boolean =>
  materialClass === 'green' || materialClass === 'mature';

const actingOf = (materialId: string): Drawn => ({
  name: `acting ratio of ${materialId}`,
  shape: 'amount',
  low: actingRatio.low,
  typical: actingRatio.typical,
  high: actingRatio.high,
});

/** Shares of compost and the like: of one material, one draw. */
function sharesOf({
  id,
  mineralShare,
  slowShare,
}: MaterialRow): Pick<LayerSpread, 'ready' | 'slow'> {
  const share = (name: string, { low, typical, high }: Row): Drawn => ({
    name: `${name} of ${id}`,
    shape: 'share',
    low,
    typical,
    high,
  });
  return {
    ...(mineralShare ? { ready: share('ready share', mineralShare) } : {}),
    ...(slowShare ? { slow: share('slow share', slowShare) } : {}),
  };
}

function layerSpread(garden: Garden, now: Bed, application: Application): LayerSpread {
  const bed = anyBed(garden, application.bedId) ?? now;
  const material = materialOfApplication(garden, application);
  const mowing = mowingOf(garden, application.from);
  const { condition } = application;
  const wetness =
    mowing === null ? application.wetness : condition === 'just cut' ? mowing.wetness : 'dry';
  const lot = lotOfAmount(
    application.amount,
    lotInputOf(
      garden,
      application.amount,
      material,
      { condition, wetness },
      areaOn(bed, application.date),
    ),
  );
  // A lot of its own: the mowing it came from, else this laying.
  const lotName = mowing?.id ?? application.id;
  const percent = rowOrMeasured(material.row.nitrogenPercent, material.nitrogen * 100);
  const measured = application.nitrogenPercent !== undefined;
  return {
    mass: { name: `mass of ${lotName}`, shape: 'amount', ...fivePoints(lot.dryKilograms) },
    nitrogen: {
      name: measured ? `nitrogen of lot ${application.id}` : `nitrogen of ${material.id}`,
      shape: 'share',
      low: percent.low / 100,
      typical: material.nitrogen,
      high: percent.high / 100,
    },
    ...(rotsByRatio(material.row) ? { acting: actingOf(material.id) } : {}),
    ...sharesOf(material.row),
  };
}

/** Need of a crop: what its row spans, and what a word for the pick spans, as one factor. */
function needSpread(garden: Garden, planting: Planting): Drawn | null {
  const row = cropById(garden, planting.cropId);
  if (!row) return null;
  const uptake = factorOf(row.uptake);
  const wanted =
    typeof planting.wanted === 'string'
      ? factorOf(wantedShares[planting.wanted])
      : { low: 1, typical: 1, high: 1 };
  const joined = (one: number, other: number): number =>
    Math.exp(Math.sign(Math.log(one * other)) * Math.hypot(Math.log(one), Math.log(other)));
  return {
    name: `need of ${row.id}`,
    shape: 'amount',
    low: joined(uptake.low, wanted.low),
    typical: 1,
    high: joined(uptake.high, wanted.high),
  };
}

/** What a legume's own rows span: the share it fixes, and the nitrate that stops it. */
function fixingSpread(garden: Garden, planting: Planting): FixingSpread | null {
  const row = cropById(garden, planting.cropId);
  if (!row?.legume) return null;
  const { usualPercentFixed, leafyLimit } = row.legume;
  return {
    usual: {
      name: `fixing of ${row.id}`,
      shape: 'share',
      low: usualPercentFixed.low / 100,
      typical: usualPercentFixed.typical / 100,
      high: usualPercentFixed.high / 100,
    },
    // both limits of a crop span the same
    limit: { name: `nodule limit of ${row.id}`, shape: 'amount', ...factorOf(leafyLimit) },
  };
}

/**
 * What of a bed's season is uncertain, from the rows themselves: coefficients drawn once per
 * garden, the mass of each lot, the nitrogen of each material, each crop's need, what each legume
 * fixes and the nitrate that stops it, the soil's organic matter. What was measured in the garden
 * has the narrow range of that measurement.
 *
 * @source readings of ranges: model 1 and 10
 */
export function seasonSpread(
  garden: Garden,
  bedId: string,
  extraApplications: readonly Application[] = [],
): SeasonSpread {
  const bed = anyBed(garden, bedId);
  if (!bed) throw new Error(`No bed ${bedId}`);
  const make = (): SeasonSpread => spreadOf(garden, bed, extraApplications);
  if (extraApplications.length > 0 || !Object.isFrozen(garden)) return make();
  return kept(bed, bedParts(garden, bed), make);
}

/** A planting that is moved on one bed leaves the layers of all the others as they were. */
const kept = keptWith<Bed, SeasonSpread>();

function spreadOf(
  garden: Garden,
  bed: Bed,
  extraApplications: readonly Application[],
): SeasonSpread {
  const past = idsOfPast(garden, bed);
  const plantings = garden.plantings.filter((planting) => past.has(planting.bedId));
  const keys = Object.keys(coefficientRows) as (keyof Coefficients)[];
  const coefficients = keys.flatMap((key): SeasonSpread['coefficients'][number][] => {
    const row: Row = coefficientRows[key];
    if (row.drawnPer === undefined || row.drawnPer === 'nothing') return [];
    const shape = row.high < 1 && row.low > 0 && row.unit.includes('share') ? 'share' : 'amount';
    return [{ key, name: key, shape, low: row.low, typical: row.typical, high: row.high }];
  });
  const layers = [...garden.applications, ...extraApplications]
    .filter((application) => past.has(application.bedId))
    .map((application): [string, LayerSpread] => [
      application.id,
      layerSpread(garden, bed, application),
    ]);
  const needs = plantings.flatMap((planting): [string, Drawn][] => {
    const need = needSpread(garden, planting);
    return need ? [[planting.id, need]] : [];
  });
  const fixing = plantings.flatMap((planting): [string, FixingSpread][] => {
    const own = fixingSpread(garden, planting);
    return own ? [[planting.id, own]] : [];
  });
  const measured = measuredMatter(garden, bed);
  const matter = organicMatterRow(measured, bed.mulchYears);
  return {
    coefficients,
    layers: Object.fromEntries(layers),
    needs: Object.fromEntries(needs),
    fixing: Object.fromEntries(fixing),
    organicMatter: {
      name:
        measured !== null
          ? `organic matter of ${groundOf(garden, bed)}`
          : `organic matter ${bed.mulchYears ?? 'unknown'}`,
      shape: 'amount',
      ...factorOf(matter),
    },
  };
}
