import { useEffect, useMemo, useState } from 'react';
import { useAnnounce, useHeardAtRest } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { Dialog } from '../../controls/Dialog';
import { PickOne } from '../../controls/PickOne';
import { measureText } from '../../amounts/measureText';
import { textFromDay } from '../../core/days';
import type { Application, Bed } from '../../document/schema';
import type { LayingDraft, StopCaution } from '../../store/contract';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { placementChoices } from '../choices';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { BedEffect } from '../week/BedEffect';
import { previewHeard } from '../week/previewHeard';
import { stopsDialog } from '../places';
import { partOfTaken, type Raking, type TakenOff } from './raking';
import { stuffName } from './chartData';

/** A heap among the places, told apart from beds. */
const heapPlace = (stockId: string): string => `heap ${stockId}`;

/** Where what was raked off this bed goes: on another bed, or on a heap. */
export function CarryDialog(props: {
  readonly from: Bed;
  readonly raking: Raking;
  readonly taken: TakenOff;
  readonly onClose: () => void;
  /** told where it is now: "Laid on Far bed" */
  readonly onLaid: (where: string) => void;
}) {
  const { from, raking, taken, onClose } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const preview = useMowings((state) => state.preview);
  const propose = useMowings((state) => state.propose);
  const layIt = useMowings((state) => state.layIt);
  const announce = useAnnounce();
  const editEvent = useMowings((state) => state.editEvent);
  const beds = garden.beds.filter(({ id }) => id !== from.id);
  const heaps = garden.stock.filter(({ role }) => role === 'heap');
  const [place, setPlace] = useState('');
  const heap = heaps.find(({ id }) => place === heapPlace(id));
  const bedId = heap ? '' : place;
  const [placement, setPlacement] = useState<Application['placement']>('laid');
  const [date, setDate] = useState(raking.date);
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const [stops, setStops] = useState<readonly StopCaution[] | null>(null);
  const part = useMemo(
    () => partOfTaken(garden, taken, (kilograms) => measureText(kilograms, 'weight', shown.system)),
    [garden, taken, shown.system],
  );
  const drafts = useMemo<readonly LayingDraft[]>(
    () =>
      part && bedId !== '' ? [{ bedId, date, placement, parts: [part], passedStops: [] }] : [],
    [part, bedId, date, placement],
  );
  useEffect(() => propose(drafts), [drafts, propose]);
  useEffect(() => () => propose([]), [propose]);
  useHeardAtRest(
    preview?.state === 'ready' ? previewHeard(preview.beds, garden.beds, shown.units) : '',
    'effect',
  );
  const name = beds.find(({ id }) => id === bedId)?.name ?? '';
  const effect = preview?.beds.find((one) => one.bedId === bedId);
  const putOnHeap = () => {
    if (!heap || part?.nitrogenPercent === undefined || part.from.source !== 'elsewhere') return;
    const { amount, nitrogenPercent, from: source } = part;
    const toHeap = { stockId: heap.id, materialId: source.materialId, amount, nitrogenPercent };
    const result = editEvent({ ...raking, toHeap });
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    announce(`Put on ${heap.name}. Undo takes it back.`);
    props.onLaid(`Put on ${heap.name}`);
    onClose();
  };
  const lay = async (passed: readonly string[]) => {
    const result = await layIt(drafts.map((draft) => ({ ...draft, passedStops: passed })));
    if (result.ok) {
      announce(`Laid on ${name}. Undo takes it back.`);
      props.onLaid(`Laid on ${name}`);
      onClose();
    } else if (result.error.kind === 'stops') setStops(result.error.stops);
    else if (result.error.kind === 'engine-failed')
      setRefused('The sums did not come out, so nobody can say what speaks against it.');
    else setRefused(editFailureSentence(result.error));
  };
  return (
    <Dialog title={`What came off ${from.name}`} wide onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(submit) => {
          submit.preventDefault();
          setAsked(true);
          if (heap) putOnHeap();
          else if (drafts.length > 0) void lay([]);
        }}
      >
        <p>
          {stuffName(taken.material)}, about {shown.estimate(taken.dryKilograms, shown.units.mass)}{' '}
          of dry weight with {shown.estimate(taken.nitrogenGrams, shown.units.nitrogen)} of nitrogen
          still in it.{' '}
          <span className="soft">
            It is reckoned as new stuff of that kind with so much nitrogen; what has rotted already
            goes on a little slower than that.
          </span>
        </p>
        {taken.heldBack.length > 0 ? (
          <p role="alert" className="field-trouble">
            <span aria-hidden="true" className="field-trouble-mark" />
            Some of it came from {taken.heldBack.join(' and ')}, which is held back from beds. Leave
            it off them.
          </p>
        ) : part === null ? (
          <p>Too little is left of it to be worth carrying.</p>
        ) : (
          <>
            <PickOne
              label="Where does it go?"
              value={place}
              groups={[
                { label: null, options: [{ value: '', label: 'Choose a bed or the heap' }] },
                {
                  label: 'On a bed',
                  options: beds.map((bed) => ({ value: bed.id, label: bed.name })),
                },
                ...(heaps.length > 0
                  ? [
                      {
                        label: 'On the heap',
                        options: heaps.map(({ id, name: called }) => ({
                          value: heapPlace(id),
                          label: called,
                        })),
                      },
                    ]
                  : []),
              ]}
              onPick={setPlace}
              echo={
                heap
                  ? 'It is in the heap’s books with this nitrogen, from the day it was raked.'
                  : undefined
              }
            />
            {asked && place === '' && (
              <p role="alert" className="field-trouble">
                <span aria-hidden="true" className="field-trouble-mark" />
                Choose where it goes.
              </p>
            )}
            {!heap && (
              <>
                <ChoiceRow
                  legend="How?"
                  choices={placementChoices}
                  value={placement}
                  onChoose={setPlacement}
                />
                <DateField
                  label="When?"
                  day={date}
                  today={today}
                  earliest={raking.date}
                  latest={today}
                  write={shown.dayField}
                  sentence={dayFailureSentence}
                  onDay={(day) => setDate(day ?? today)}
                />
              </>
            )}
            {effect && <BedEffect bed={effect} name={name} />}
          </>
        )}
        {refused && (
          <p role="alert" className="field-trouble">
            {refused}
          </p>
        )}
        <div className="button-row">
          {part !== null && taken.heldBack.length === 0 && (
            <button type="submit" className="button-main">
              {heap ? 'Put it there' : 'Lay it'}
            </button>
          )}
          <button type="button" className="button" onClick={onClose}>
            {part !== null && taken.heldBack.length === 0 ? 'Cancel' : 'All right'}
          </button>
        </div>
      </form>
      {stops && (
        <stopsDialog.Part
          places={[{ id: bedId, name, stops: stops.map(({ caution }) => caution) }]}
          onClose={() => setStops(null)}
          onPass={() => {
            const kinds = stops.map(({ caution }) => caution.kind);
            setStops(null);
            void lay(kinds);
          }}
        />
      )}
    </Dialog>
  );
}
