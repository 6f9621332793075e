import { cropById } from '../../document/cropValues';
import type { Garden } from '../../document/schema';
import { cropOf } from '../../tables/crops';
import type { CropRow } from '../../tables/shapes';
import { CitedRows } from '../CitedRows';
import { cropGroupsOf } from '../lists';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { FoundRows } from './FoundRows';
import { OwnCropFields } from './OwnCropFields';
import type { ListedGroup } from './RowList';
import { cropColumns, cropNumbers } from './tableColumns';
import { cropUsesWords } from './usedBy';
import { GoToUses } from './GoToUses';
import { placesOfCrop, type UsedPlace } from './usedWhere';

const groupsOf = (garden: Garden): readonly ListedGroup<CropRow>[] =>
  cropGroupsOf(garden).map(({ label, options }) => ({
    name: label ?? '',
    lines: options.flatMap(({ value, label: name }) => {
      const line = cropById(garden, value);
      return line ? [{ id: value, name, line, tableId: line.tableId }] : [];
    }),
  }));

/** All crops, one's own first, and what each takes, gives and stands. */
export function CropTable() {
  const garden = useGarden();
  const { units } = useShown();
  const addCrop = useMowings((state) => state.addCrop);
  return (
    <FoundRows
      what="crop"
      groups={groupsOf(garden)}
      columns={cropColumns(units)}
      ownNames={(garden.crops ?? []).map(({ name }) => name)}
      onAdd={addCrop}
      renderDetail={(id, { close, addOwn }) => {
        const mine = garden.crops?.find((one) => one.id === id);
        const row = cropOf(mine?.basedOn ?? id);
        if (!row) return null;
        return mine ? (
          <OwnCropFields own={mine} row={row} onGone={close} />
        ) : (
          <CropDetail
            row={row}
            uses={cropUsesWords(garden, id)}
            places={placesOfCrop(garden, id)}
            onOwn={() => addOwn(row)}
          />
        );
      }}
    />
  );
}

function CropDetail(props: {
  readonly row: CropRow;
  readonly uses: string;
  readonly places: readonly UsedPlace[];
  readonly onOwn: () => void;
}) {
  const { row } = props;
  const { units } = useShown();
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
      <GoToUses places={props.places} entry={['planting', 'plantings']} />
      <CitedRows rows={cropNumbers(row)} units={units} />
      <div className="button-row">
        <button type="button" className="button" onClick={props.onOwn}>
          Make a row of my own from it
        </button>
      </div>
    </>
  );
}
