import type { MaterialRow } from '../tables/shapes';
import { lawnMaterials } from '../tables/lawns';
import { carbonBounds, carbonKindOf, materialOf } from '../tables/materials';
import { mowingKind } from './lawnKind';
import { rowOrMeasured } from './measuredRow';
import type { Application, Garden, Lawn, LawnKind, Mowing, OwnMaterial } from './schema';
import { withId } from './withId';

/** Own values that stand in for a table's. */
export interface MeasuredContents {
  readonly nitrogenPercent?: number | undefined;
  readonly carbonToNitrogen?: number | undefined;
  readonly moisturePercent?: number | undefined;
  readonly densityKgPerM3?: number | undefined;
}

/** A material at its likely values: the table's row, an own material, or a lot that was tested. */
export interface MaterialValues {
  /** of the table's row or of the own material */
  readonly id: string;
  readonly name: string;
  /** the row it is, or rests on */
  readonly row: MaterialRow;
  /** kg per kg dry matter */
  readonly nitrogen: number;
  readonly carbon: number;
  /** water when dry to the touch, kg per kg fresh */
  readonly moisture: number;
  readonly densityKgPerM3: number;
}

/**
 * A row with measured values put in its place. A measured nitrogen leaves carbon as it was, so C:N
 * moves; a measured C:N leaves nitrogen as it was. Carbon stays within what the kind of material
 * can hold: of a pair that does not fit, nitrogen stands and carbon goes to the nearest bound.
 */
export function withMeasured(
  row: MaterialRow,
  measured: MeasuredContents,
  named: { readonly id: string; readonly name: string } = row,
): MaterialValues {
  const nitrogen = (measured.nitrogenPercent ?? row.nitrogenPercent.typical) / 100;
  const usualCarbon = (row.nitrogenPercent.typical / 100) * row.carbonToNitrogen.typical;
  const wanted =
    measured.carbonToNitrogen === undefined ? usualCarbon : nitrogen * measured.carbonToNitrogen;
  const bounds = carbonBounds[carbonKindOf(row)];
  const carbon = Math.min(bounds.high / 100, Math.max(bounds.low / 100, wanted));
  return {
    id: named.id,
    name: named.name,
    row,
    nitrogen,
    carbon,
    moisture: (measured.moisturePercent ?? row.moisturePercent.typical) / 100,
    densityKgPerM3: measured.densityKgPerM3 ?? row.densityKgPerM3.typical,
  };
}

const rowOf = (id: string): MaterialRow => {
  const row = materialOf(id);
  if (!row) throw new Error(`No material ${id} in the tables`);
  return row;
};

/** A material by the id a garden uses: one of its own, or a row of the tables. */
export function materialById(garden: Garden, id: string): MaterialValues {
  const own = garden.materials.find((material) => material.id === id);
  return own ? withMeasured(rowOf(own.basedOn), own, own) : withMeasured(rowOf(id), {});
}

/** The row of one's own that a lawn's clippings of a kind are counted by, where there is one. */
const ownClippings = (garden: Garden, lawn: Lawn, kind: LawnKind): OwnMaterial | undefined =>
  lawn.ownClippings === undefined
    ? undefined
    : garden.materials.find(
        ({ id, basedOn }) => basedOn === lawnMaterials[kind] && lawn.ownClippings?.includes(id),
      );

/**
 * Clippings of a lawn when they count as a kind: the table's row, or what was measured in its place.
 * Its `row` then holds the measured numbers too, so that ranges are theirs as well.
 */
export function clippingsOfKind(garden: Garden, lawn: Lawn, kind: LawnKind): MaterialValues {
  const row = rowOf(lawnMaterials[kind]);
  const own = ownClippings(garden, lawn, kind);
  if (!own) return withMeasured(row, {});
  const values = withMeasured(row, own, own);
  return {
    ...values,
    row: {
      ...row,
      nitrogenPercent: rowOrMeasured(row.nitrogenPercent, values.nitrogen * 100),
      moisturePercent: rowOrMeasured(row.moisturePercent, values.moisture * 100),
      densityKgPerM3: rowOrMeasured(row.densityKgPerM3, values.densityKgPerM3),
    },
  };
}

/** What came off the lawn: the mowing's own kind, else the lawn's, lean after drought. */
export function clippingsOf(garden: Garden, mowing: Mowing): MaterialValues {
  const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
  if (!lawn) throw new Error(`No lawn ${mowing.lawnId}`);
  return clippingsOfKind(garden, lawn, mowingKind(garden, lawn, mowing));
}

/** The mowing a layer came from, or null when it came from elsewhere. */
export function mowingOf(garden: Garden, from: Application['from']): Mowing | null {
  if (from.source !== 'mowing') return null;
  const mowing = withId(garden.mowings, from.mowingId);
  if (!mowing) throw new Error(`No mowing ${from.mowingId}`);
  return mowing;
}

/** What a layer is made of, without a test of the lot itself. */
export function materialFrom(garden: Garden, from: Application['from']): MaterialValues {
  const mowing = mowingOf(garden, from);
  if (mowing) return clippingsOf(garden, mowing);
  if (from.source === 'elsewhere') return materialById(garden, from.materialId);
  if (from.source !== 'stock') throw new Error('A layer comes from a mowing, a stock or elsewhere');
  const stock = garden.stock.find(({ id }) => id === from.stockId);
  if (!stock) throw new Error(`No stock ${from.stockId}`);
  return materialById(garden, stock.materialId);
}

/**
 * All of a garden that `materialFrom` hangs on, part by part. The kind of a mowing stands for the
 * weather, lawn and soil it was told from.
 */
export function materialParts(garden: Garden, from: Application['from']): readonly unknown[] {
  const ownOf = (id: string | undefined): unknown =>
    garden.materials.find((material) => material.id === id);
  if (from.source === 'elsewhere') return [ownOf(from.materialId)];
  if (from.source === 'stock') {
    const stock = garden.stock.find(({ id }) => id === from.stockId);
    return [stock, ownOf(stock?.materialId)];
  }
  const mowing = mowingOf(garden, from);
  const lawn = garden.lawns.find(({ id }) => id === mowing?.lawnId);
  if (!mowing || !lawn) return [mowing];
  const kind = mowingKind(garden, lawn, mowing);
  return [mowing, kind, ownClippings(garden, lawn, kind)];
}

/** What a layer is made of: a lot's own test outranks the material's values. */
export function materialOfApplication(
  garden: Garden,
  application: Pick<Application, 'from' | 'nitrogenPercent' | 'carbonToNitrogen'>,
): MaterialValues {
  const material = materialFrom(garden, application.from);
  const { nitrogenPercent, carbonToNitrogen } = application;
  if (nitrogenPercent === undefined && carbonToNitrogen === undefined) return material;
  const measured = {
    nitrogenPercent: nitrogenPercent ?? material.nitrogen * 100,
    carbonToNitrogen:
      carbonToNitrogen ??
      // nitrogen alone was measured: the lot keeps the material's carbon
      (material.carbon * 100) / (nitrogenPercent ?? material.nitrogen * 100),
    moisturePercent: material.moisture * 100,
    densityKgPerM3: material.densityKgPerM3,
  };
  return withMeasured(material.row, measured, material);
}
