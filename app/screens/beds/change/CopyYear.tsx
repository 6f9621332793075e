import { useId, useMemo, useState } from 'react';
import { useAnnounce } from '../../../controls/Announcer';
import { Dialog } from '../../../controls/Dialog';
import { DialogEnd } from '../../../controls/DialogEnd';
import { PickOne } from '../../../controls/PickOne';
import { Tick } from '../../../controls/Tick';
import { textFromDay } from '../../../core/days';
import {
  copyOf,
  plantingsYearLater,
  seasonsPlanted,
  type YearLater,
} from '../../../document/bedChanges/copyYear';
import { cropName } from '../../../document/cropValues';
import { tooSoonAfter } from '../../../document/tooSoonAfter';
import { shortSource } from '../../../tables/sources';
import { bedStepNames } from '../../../words/bedChangeWords';
import { editFailureSentence } from '../../../words/messages';
import { tooSoonWeight, tooSoonWords } from '../../../words/tooSoonWords';
import { useShown } from '../../shown';
import { WeightWord } from '../../StateWords';
import { useGarden } from '../../store';
import { useToday } from '../../useReadingContext';
import { useAddPlantings } from './useAddPlantings';

/** A season's plantings a year later: chosen, given their beds, looked at, then taken as one step. */
export function CopyYear({ onClose }: { readonly onClose: () => void }) {
  const garden = useGarden();
  const today = textFromDay(useToday());
  const announce = useAnnounce();
  const years = useMemo(() => seasonsPlanted(garden, today), [garden, today]);
  const thisYear = years.find((year) => String(year) < today.slice(0, 4)) ?? years[0] ?? 0;
  const [season, setSeason] = useState(thisYear);
  const rows = useMemo(() => plantingsYearLater(garden, season), [garden, season]);
  const [chosen, setChosen] = useState<Readonly<Record<string, boolean>>>({});
  const [beds, setBeds] = useState<Readonly<Record<string, string>>>({});
  const [refused, setRefused] = useState<string | null>(null);
  const addAll = useAddPlantings(({ length }) => bedStepNames.copyYear(length, String(season)));
  const bedFor = ({ from, bedId }: YearLater): string => beds[from.id] ?? bedId ?? '';
  const isChosen = (row: YearLater): boolean =>
    chosen[row.from.id] ?? (!row.isThere && row.bedId !== null);
  const taken = rows.filter((row) => isChosen(row) && bedFor(row) !== '');
  const keep = () => {
    if (taken.length === 0) return setRefused('Tick what is to be copied, and give each its bed.');
    const result = addAll(taken.map((row) => copyOf(row, bedFor(row))));
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    announce(`Copied: ${taken.length} plantings. Undo takes all of them back.`);
    onClose();
  };
  return (
    <Dialog title="Copy a season’s plantings to the year after" wide onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        {years.length === 0 ? (
          <p>Nothing has been sown or planted yet.</p>
        ) : (
          <PickOne
            label="Season"
            value={String(season)}
            groups={[
              {
                label: null,
                options: years.map((year) => ({ value: String(year), label: String(year) })),
              },
            ]}
            onPick={(year) => setSeason(Number(year))}
            echo="Each a year later to the day. First picks and clearings are reckoned anew."
          />
        )}
        <ul className="plain-list log-list">
          {rows.map((row) => (
            <CopyRow
              key={row.from.id}
              row={row}
              isChosen={isChosen(row)}
              bedId={bedFor(row)}
              onChoose={(is) => {
                setRefused(null);
                setChosen((now) => ({ ...now, [row.from.id]: is }));
              }}
              onBed={(bedId) => {
                setRefused(null);
                setBeds((now) => ({ ...now, [row.from.id]: bedId }));
                setChosen((now) => ({ ...now, [row.from.id]: bedId !== '' }));
              }}
            />
          ))}
        </ul>
        <DialogEnd
          refused={refused}
          keep={taken.length > 0 ? `Copy ${taken.length}` : 'Copy'}
          onCancel={onClose}
        />
      </form>
    </Dialog>
  );
}

function CopyRow(props: {
  readonly row: YearLater;
  readonly isChosen: boolean;
  readonly bedId: string;
  readonly onChoose: (isChosen: boolean) => void;
  readonly onBed: (bedId: string) => void;
}) {
  const { row, isChosen, bedId } = props;
  const garden = useGarden();
  const shown = useShown();
  const name = cropName(garden, row.from.cropId);
  const announce = useAnnounce();
  const soonId = useId();
  const soonOn = (bed: string) =>
    bed === '' ? null : tooSoonAfter(garden, row.from.cropId, bed, row.started);
  const soonSays = (soon: NonNullable<ReturnType<typeof soonOn>>): string =>
    tooSoonWords(name, soon, shown.day(soon.started), shortSource(soon.family.freeSeasons.source));
  const soon = isChosen ? soonOn(bedId) : null;
  return (
    <li className="copy-row">
      <Tick
        label={
          <>
            <strong>{name}</strong>, {row.from.how} {shown.day(row.started)}
          </>
        }
        hint={row.isThere ? 'It is written down there for that season already.' : undefined}
        checked={isChosen}
        onChange={props.onChoose}
      />
      <PickOne
        label={`Bed for ${name.toLowerCase()}`}
        value={bedId}
        groups={[
          {
            label: null,
            options: [
              { value: '', label: 'No bed yet' },
              ...garden.beds.map((bed) => ({ value: bed.id, label: bed.name })),
            ],
          },
        ]}
        describedBy={soon ? soonId : undefined}
        onPick={(picked) => {
          props.onBed(picked);
          const then = soonOn(picked);
          announce(then ? soonSays(then) : '', 'too soon');
        }}
      />
      {soon && (
        <p className="small copy-soon" id={soonId}>
          <WeightWord weight={tooSoonWeight(soon)} /> {soonSays(soon)}
        </p>
      )}
    </li>
  );
}
