import { useAnnounce } from '../../controls/Announcer';
import { cropById } from '../../document/cropValues';
import type { Garden } from '../../document/schema';
import { cropOf } from '../../tables/crops';
import type { CropRow } from '../../tables/shapes';
import { editFailureSentence } from '../../words/messages';
import { foundWords } from '../../words/tableWords';
import { CitedRows } from '../CitedRows';
import { useDesk } from '../desk';
import { cropGroupsOf } from '../lists';
import { useGarden, useMowings } from '../store';
import { freeName, showOpenRow } from './ownRows';
import { OwnCropFields } from './OwnCropFields';
import { RowList, type ListedGroup } from './RowList';
import { matches, SearchField } from './SearchField';
import { cropColumns, cropNumbers } from './tableColumns';
import { cropUsesWords } from './usedBy';

const groupsOf = (garden: Garden): readonly ListedGroup<CropRow>[] =>
  cropGroupsOf(garden).map(({ label, options }) => ({
    name: label ?? '',
    lines: options.flatMap(({ value, label: name }) => {
      const line = cropById(garden, value);
      return line ? [{ id: value, name, line }] : [];
    }),
  }));

/** All crops, one's own first, and what each takes, gives and stands. */
export function CropTable() {
  const garden = useGarden();
  const addCrop = useMowings((state) => state.addCrop);
  const announce = useAnnounce();
  const [typed, setTyped] = useDesk('tables crops search', () => '');
  const [open, setOpen] = useDesk<string | null>('tables crop open', () => null);
  const groups = groupsOf(garden);
  const left = groups
    .map((group) => ({ ...group, lines: group.lines.filter(({ name }) => matches(name, typed)) }))
    .filter(({ lines }) => lines.length > 0);
  const count = (list: readonly ListedGroup<CropRow>[]) =>
    list.reduce((sum, { lines }) => sum + lines.length, 0);
  const addOwn = (row: CropRow) => {
    const name = freeName(
      row.name,
      (garden.crops ?? []).map((crop) => crop.name),
    );
    const result = addCrop({ name, basedOn: row.id });
    if (result.ok) {
      setTyped('');
      setOpen(result.value);
      showOpenRow();
    }
    announce(result.ok ? `Added: ${name}.` : editFailureSentence(result.error));
  };
  return (
    <>
      <SearchField
        label="Find a crop"
        text={typed}
        onText={setTyped}
        found={foundWords(count(left), count(groups), 'crops')}
      />
      {left.length > 0 && (
        <RowList
          label="Crops"
          groups={left}
          columns={cropColumns}
          open={open}
          onOpen={setOpen}
          renderDetail={(id) => {
            const mine = garden.crops?.find((one) => one.id === id);
            const row = cropOf(mine?.basedOn ?? id);
            if (!row) return null;
            return mine ? (
              <OwnCropFields own={mine} row={row} onGone={() => setOpen(null)} />
            ) : (
              <CropDetail row={row} uses={cropUsesWords(garden, id)} onOwn={() => addOwn(row)} />
            );
          }}
        />
      )}
    </>
  );
}

function CropDetail(props: {
  readonly row: CropRow;
  readonly uses: string;
  readonly onOwn: () => void;
}) {
  const { row } = props;
  const ways = [
    row.frostTender ? 'Frost kills it.' : '',
    row.eatenFromSoil ? 'What is eaten touches the soil: raw manure needs its waiting time.' : '',
    row.weedkillerSensitive ? 'Weedkiller carried in by mulch harms it first.' : '',
    row.familyCurve ? 'When it takes up what is borrowed from a relative.' : '',
  ].filter(Boolean);
  return (
    <>
      <p>
        {props.uses} {ways.join(' ')}
      </p>
      <CitedRows rows={cropNumbers(row)} />
      <div className="button-row">
        <button type="button" className="button" onClick={props.onOwn}>
          Make a row of my own from it
        </button>
      </div>
    </>
  );
}
