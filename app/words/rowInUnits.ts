import { toShown, type ShownUnit } from '../core/shownUnit';

/** The units of a garden that rows of the tables are told in. */
export interface RowUnits {
  readonly system: 'metric' | 'us';
  readonly nitrogenPerArea: ShownUnit;
  readonly yieldPerArea: ShownUnit;
  readonly depth: ShownUnit;
  readonly temperature: ShownUnit;
  readonly mass: ShownUnit;
  readonly length: ShownUnit;
}

/** What of a row is told. */
export interface ToldRow {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
  readonly unit: string;
}

const of = (row: ToldRow, unit: string, turn: (value: number) => number): ToldRow => ({
  low: turn(row.low),
  typical: turn(row.typical),
  high: turn(row.high),
  unit,
});

const inUnit = (row: ToldRow, unit: ShownUnit, size: number, what = ''): ToldRow =>
  of(row, `${unit.symbol}${what}`, (value) => toShown(value * size, unit));

/**
 * A row in the units a garden is shown in: as it was read where those are metric, turned where they
 * are not and the row's unit is one that a gardener would read otherwise. All else stays as it was read.
 */
export function rowInUnits(row: ToldRow, units: RowUnits): ToldRow {
  if (units.system === 'metric') return row;
  const cubicMetresPerCubicFoot = units.length.size ** 3;
  switch (row.unit) {
    case 'g N per m2':
      return inUnit(row, units.nitrogenPerArea, 1, ' of nitrogen');
    case 'kg fresh per m2':
      return inUnit(row, units.yieldPerArea, 1, ', fresh');
    case 'cm':
      return inUnit(row, units.depth, 10);
    case 'deg C':
      return inUnit(row, units.temperature, 1);
    case 'kg fresh per m3':
    case 'kg dry matter per m3':
      return of(
        row,
        `${units.mass.symbol}${row.unit.startsWith('kg dry') ? ' of dry matter' : ''} per cu ft`,
        (value) => (value * cubicMetresPerCubicFoot) / units.mass.size,
      );
    default:
      return row;
  }
}
