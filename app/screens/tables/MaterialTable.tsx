import { Figured } from '../../controls/Figured';
import { rowOrMeasured } from '../../document/measuredRow';
import type { OwnMaterial } from '../../document/schema';
import { carbonBounds, carbonKindOf, materialOf, materialRows } from '../../tables/materials';
import type { MaterialRow, Row } from '../../tables/shapes';
import { CitedRows } from '../CitedRows';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { carbonWhy } from '../why/mixWhys';
import { FoundRows } from './FoundRows';
import { OwnMaterialFields } from './OwnMaterialFields';
import type { ListedGroup, ListedLine } from './RowList';
import { materialColumns, materialNumbers } from './tableColumns';
import { materialUses, materialUsesWords } from './usedBy';
import { GoToUses } from './GoToUses';
import { placesOfMaterial } from './usedWhere';

const measured = (row: Row, value: number | undefined): Row =>
  value === undefined ? row : { ...rowOrMeasured(row, value), standing: 'measured' };

/** A row of one's own as the table shows it: what was measured, the rest from what it rests on. */
function ownLine(own: OwnMaterial): ListedLine<MaterialRow> {
  const row = materialOf(own.basedOn);
  if (!row) throw new Error(`No material ${own.basedOn} in the tables`);
  return {
    id: own.id,
    name: own.name,
    tableId: row.id,
    line: {
      ...row,
      name: own.name,
      nitrogenPercent: measured(row.nitrogenPercent, own.nitrogenPercent),
      carbonToNitrogen: measured(row.carbonToNitrogen, own.carbonToNitrogen),
      moisturePercent: measured(row.moisturePercent, own.moisturePercent),
      densityKgPerM3: measured(row.densityKgPerM3, own.densityKgPerM3),
    },
  };
}

const kinds: readonly (Pick<ListedGroup<MaterialRow>, 'name' | 'also'> & {
  readonly belongs: (row: MaterialRow) => boolean;
})[] = [
  { name: 'Greens: rich in nitrogen', also: ['greens'], belongs: (row) => row.isGreens },
  { name: 'Browns: rich in carbon', also: ['browns'], belongs: (row) => row.isBrowns },
  { name: 'Compost, manure and the rest', belongs: (row) => !row.isGreens && !row.isBrowns },
];

/** All materials, one's own first. */
export function MaterialTable() {
  const garden = useGarden();
  const addMaterial = useMowings((state) => state.addMaterial);
  const own = garden.materials.map(ownLine);
  const groups: readonly ListedGroup<MaterialRow>[] = [
    { name: 'Your own', lines: own },
    ...kinds.map(({ belongs, ...group }) => ({
      ...group,
      lines: materialRows
        .filter(belongs)
        .map((line) => ({ id: line.id, name: line.name, line, tableId: line.id })),
    })),
  ];
  return (
    <FoundRows
      what="material"
      groups={groups}
      columns={materialColumns}
      ownNames={garden.materials.map(({ name }) => name)}
      onAdd={addMaterial}
      renderDetail={(id, { close, addOwn }) => {
        const mine = garden.materials.find((one) => one.id === id);
        const row = materialOf(mine?.basedOn ?? id);
        if (!row) return null;
        return mine ? (
          <OwnMaterialFields own={mine} row={row} onGone={close} />
        ) : (
          <MaterialDetail row={row} onOwn={() => addOwn(row)} />
        );
      }}
    />
  );
}

function MaterialDetail({ row, onOwn }: { readonly row: MaterialRow; readonly onOwn: () => void }) {
  const garden = useGarden();
  const { units } = useShown();
  const kind = carbonKindOf(row);
  const { low, high } = carbonBounds[kind];
  const carbon = `${low} to ${high} %`;
  return (
    <>
      <p>
        {materialUsesWords(materialUses(garden, row.id))}
        {row.mayCarryWeedkiller &&
          ' It may carry weedkiller: it is asked about before any of it is laid.'}
      </p>
      <GoToUses places={placesOfMaterial(garden, row.id)} entry={['layer', 'layers']} />
      {row.note && <p className="small">{row.note}</p>}
      <CitedRows rows={materialNumbers(row)} units={units} />
      <Figured
        className="small soft"
        says={`Stuff of its kind is ${carbon} carbon when dry; a pair of nitrogen and ratio that says otherwise keeps its nitrogen.`}
        figures={[{ text: carbon, why: carbonWhy(kind) }]}
      />
      <div className="button-row">
        <button type="button" className="button" onClick={onOwn}>
          Make a row of my own from it
        </button>
      </div>
    </>
  );
}
