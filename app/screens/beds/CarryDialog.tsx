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
import { StopsDialog } from '../week/StopsDialog';
import { partOfTaken, type Raking, type TakenOff } from './raking';
import { stuffName } from './chartData';

/** Laying on another bed what was raked off this one. */
export function CarryDialog(props: {
  readonly from: Bed;
  readonly raking: Raking;
  readonly taken: TakenOff;
  readonly onClose: () => void;
  readonly onLaid: (bedName: string) => void;
}) {
  const { from, raking, taken, onClose } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const preview = useMowings((state) => state.preview);
  const propose = useMowings((state) => state.propose);
  const layIt = useMowings((state) => state.layIt);
  const announce = useAnnounce();
  const beds = garden.beds.filter(({ id }) => id !== from.id);
  const [bedId, setBedId] = useState('');
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
  const lay = async (passed: readonly string[]) => {
    const result = await layIt(drafts.map((draft) => ({ ...draft, passedStops: passed })));
    if (result.ok) {
      announce(`Laid on ${name}. Undo takes it back.`);
      props.onLaid(name);
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
          if (drafts.length > 0) void lay([]);
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
              label="On which bed?"
              value={bedId}
              groups={[
                {
                  label: null,
                  options: [
                    { value: '', label: 'Choose a bed' },
                    ...beds.map((bed) => ({ value: bed.id, label: bed.name })),
                  ],
                },
              ]}
              onPick={setBedId}
            />
            {asked && bedId === '' && (
              <p role="alert" className="field-trouble">
                <span aria-hidden="true" className="field-trouble-mark" />
                Choose the bed it goes on.
              </p>
            )}
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
              Lay it
            </button>
          )}
          <button type="button" className="button" onClick={onClose}>
            {part !== null && taken.heldBack.length === 0 ? 'Cancel' : 'All right'}
          </button>
        </div>
      </form>
      {stops && (
        <StopsDialog
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
