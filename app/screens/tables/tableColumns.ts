import { scaleOf, type RangeScale } from '../../charts/range/geometry';
import { cropRows } from '../../tables/crops';
import { materialMinerals } from '../../tables/materialMinerals';
import { materialRows } from '../../tables/materials';
import type { CropRow, MaterialRow, Row } from '../../tables/shapes';
import { rowInUnits, type RowUnits } from '../../words/rowInUnits';

/** A column of a list of rows: what stands in it, and the scale that all its ranges share. */
export interface Column<Line> {
  readonly head: string;
  readonly unit: string;
  readonly of: (line: Line) => Row;
  readonly scale: RangeScale;
}

const column = <Line>(
  lines: readonly Line[],
  head: string,
  unit: string,
  of: (line: Line) => Row,
  isLogarithmic = false,
): Column<Line> => ({ head, unit, of, scale: scaleOf(lines.map(of), isLogarithmic) });

export const materialColumns: readonly Column<MaterialRow>[] = [
  column(materialRows, 'Nitrogen', '% of dry weight', (row) => row.nitrogenPercent, true),
  column(materialRows, 'Carbon to nitrogen', 'to 1', (row) => row.carbonToNitrogen, true),
  column(materialRows, 'Water', '% of weight', (row) => row.moisturePercent),
];

/** Of crops, in the units a garden is shown in. */
export function cropColumns(units: RowUnits): readonly Column<CropRow>[] {
  const told = (row: Row): Row => ({ ...row, ...rowInUnits(row, units) });
  const { nitrogenPerArea, depth } = units;
  return [
    column(
      cropRows,
      'Takes up',
      `${nitrogenPerArea.symbol} of nitrogen`,
      (row) => told(row.uptake),
      true,
    ),
    column(cropRows, 'First pick after', 'days', (row) => row.firstHarvestDays),
    column(cropRows, 'Roots to', units.system === 'us' ? depth.symbol : 'cm', (row) =>
      told(row.rootDepthCentimetres),
    ),
  ];
}

/** Every number of a material with the name a gardener would give it. */
export function materialNumbers(row: MaterialRow): readonly { name: string; row: Row }[] {
  const { phosphorusPercent, potassiumPercent } = materialMinerals(row.id);
  const shares = [
    row.mineralShare && { name: 'Of its nitrogen ready at once', row: row.mineralShare },
    row.slowShare && { name: 'Of its nitrogen coming slowly', row: row.slowShare },
  ].filter((one) => one !== undefined);
  return [
    { name: 'Nitrogen', row: row.nitrogenPercent },
    { name: 'Carbon to nitrogen', row: row.carbonToNitrogen },
    { name: 'Water when dry to the touch', row: row.moisturePercent },
    { name: 'Weight as it is handled', row: row.densityKgPerM3 },
    { name: 'Dry weight once settled on a bed', row: row.settledDensityKgPerM3 },
    ...shares,
    { name: 'Phosphorus', row: phosphorusPercent },
    { name: 'Potassium', row: potassiumPercent },
  ];
}

/** Every number of a crop. */
export function cropNumbers(row: CropRow): readonly { name: string; row: Row }[] {
  const some = (name: string, one: Row | null): readonly { name: string; row: Row }[] =>
    one ? [{ name, row: one }] : [];
  return [
    { name: 'Nitrogen it takes up at the good pick', row: row.uptake },
    { name: 'The good pick', row: row.goodYield },
    { name: 'Nitrogen carried off with the pick', row: row.removedPerKilogram },
    { name: 'Days to the first pick', row: row.firstHarvestDays },
    { name: 'Days it usually stands', row: row.usualDays },
    ...some('Days to the first flowers', row.flowerDays),
    { name: 'Does not grow below', row: row.baseCelsius },
    { name: 'Roots reach down', row: row.rootDepthCentimetres },
    { name: 'Enough nitrate in the top soil', row: row.enoughNitrate },
    ...some('Soil this warm before it is mulched', row.warmSoilCelsius),
    { name: 'Carbon to nitrogen of what it leaves', row: row.residueCarbonToNitrogen },
    { name: 'Half of it is taken up by', row: row.curveMiddle },
    { name: 'How steeply it takes up', row: row.curveSteepness },
    { name: 'Water it uses when small', row: row.cropCoefficients.start },
    { name: 'Water it uses when grown', row: row.cropCoefficients.middle },
    { name: 'Water it uses at the end', row: row.cropCoefficients.end },
    { name: 'Share of the water it may empty before it thirsts', row: row.depletionShare },
    ...(row.legume
      ? [
          { name: 'Fetches from the air, usually', row: row.legume.usualPercentFixed },
          { name: 'Fetches from the air at most', row: row.legume.highPercentFixed },
          { name: 'Days until its nodules work', row: row.legume.nodulationDays },
          { name: 'Nitrate that halts it while in leaf', row: row.legume.leafyLimit },
          { name: 'Nitrate that halts it while in pod', row: row.legume.poddingLimit },
        ]
      : []),
  ];
}
