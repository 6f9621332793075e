import { cropOf, cropRows } from '../../tables/crops';
import type { CropRow } from '../../tables/shapes';
import { foundWords } from '../../words/tableWords';
import { CitedRows } from '../CitedRows';
import { useDesk } from '../desk';
import { cropGroups } from '../lists';
import { useGarden } from '../store';
import { RowList, type ListedGroup } from './RowList';
import { matches, SearchField } from './SearchField';
import { cropColumns, cropNumbers } from './tableColumns';
import { cropUsesWords } from './usedBy';

const groups: readonly ListedGroup<CropRow>[] = cropGroups.map(({ label, options }) => ({
  name: label ?? '',
  lines: options.flatMap(({ value, label: name }) => {
    const line = cropOf(value);
    return line ? [{ id: value, name, line }] : [];
  }),
}));

/** All crops, and what each takes, gives and stands. */
export function CropTable() {
  const garden = useGarden();
  const [typed, setTyped] = useDesk('tables crops search', () => '');
  const [open, setOpen] = useDesk<string | null>('tables crop open', () => null);
  const left = groups
    .map((group) => ({ ...group, lines: group.lines.filter(({ name }) => matches(name, typed)) }))
    .filter(({ lines }) => lines.length > 0);
  const found = left.reduce((sum, { lines }) => sum + lines.length, 0);
  return (
    <>
      <SearchField
        label="Find a crop"
        text={typed}
        onText={setTyped}
        found={foundWords(found, cropRows.length, 'crops')}
      />
      {left.length > 0 && (
        <RowList
          label="Crops"
          groups={left}
          columns={cropColumns}
          open={open}
          onOpen={setOpen}
          detail={(id) => {
            const row = cropOf(id);
            return row && <CropDetail row={row} uses={cropUsesWords(garden, id)} />;
          }}
        />
      )}
    </>
  );
}

function CropDetail({ row, uses }: { readonly row: CropRow; readonly uses: string }) {
  const ways = [
    row.frostTender ? 'Frost kills it.' : '',
    row.eatenFromSoil ? 'What is eaten touches the soil: raw manure needs its waiting time.' : '',
    row.weedkillerSensitive ? 'Weedkiller carried in by mulch harms it first.' : '',
    row.familyCurve ? 'When it takes up what is borrowed from a relative.' : '',
  ].filter(Boolean);
  return (
    <>
      <p>
        {uses} {ways.join(' ')}
      </p>
      <CitedRows rows={cropNumbers(row)} />
    </>
  );
}
