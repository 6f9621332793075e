import { useState } from 'react';
import { amountTrouble } from '../../controls/amountTrouble';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { Dialog } from '../../controls/Dialog';
import { Field } from '../../controls/Field';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { measureText } from '../../amounts/measureText';
import { readMeasure } from '../../amounts/readMeasure';
import { textFromDay } from '../../core/days';
import type { Planting } from '../../document/schema';
import { estimateWithUnit } from '../../words/figures';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { noduleChoices, topsChoices } from '../choices';
import { cropGroupsOf } from '../lists';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { cropById } from '../../document/cropValues';
import { bedStepNames } from '../../words/bedChangeWords';
import { useAddPlantings } from './change/useAddPlantings';

const shares = ['1', '0.75', '0.5', '0.33', '0.25', '0.1'] as const;
const shareWords: Readonly<Record<string, string>> = {
  '1': 'all of it',
  '0.75': 'three quarters',
  '0.5': 'half',
  '0.33': 'a third',
  '0.25': 'a quarter',
  '0.1': 'a tenth',
};

/** Sowing or planting something, or changing what was sown. */
export function PlantingDialog(props: {
  readonly bedId: string;
  readonly planting: Planting | null;
  /** further beds that get the same, in the same step */
  readonly alsoOn?: readonly string[];
  /** asked for where no bed is at hand: `bedId` is only the first choice */
  readonly choosesBed?: boolean;
  readonly onClose: () => void;
}) {
  const { bedId, planting, alsoOn = [], choosesBed = false, onClose } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const addPlanting = useMowings((state) => state.addPlanting);
  const editPlanting = useMowings((state) => state.editPlanting);
  const [draft, setDraft] = useState<Omit<Planting, 'id'>>(
    () =>
      planting ?? {
        bedId,
        cropId: 'tomato',
        share: 1,
        started: today,
        how: 'planted',
        firstHarvest: null,
        cleared: null,
        tops: 'left',
        wanted: 'usual',
        nodules: 'not looked',
      },
  );
  const [kilograms, setKilograms] = useState(
    typeof draft.wanted === 'object'
      ? measureText(draft.wanted.kilogramsPerM2 * shown.units.area.size, 'weight', shown.system)
      : '',
  );
  const [wanted, setWanted] = useState<'poor' | 'usual' | 'heavy' | 'own'>(
    typeof draft.wanted === 'object' ? 'own' : draft.wanted,
  );
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const change = (changes: Partial<Planting>) => setDraft((now) => ({ ...now, ...changes }));
  const crop = cropById(garden, draft.cropId);
  const addSame = useAddPlantings(({ length }) =>
    bedStepNames.plantSame((crop?.name ?? 'something').toLowerCase(), length),
  );
  const perArea = shown.system === 'us' ? 'sq ft' : 'm²';
  // a pick is typed by weight, from one unit of the ground the person measures in
  const areaOf = shown.units.area.size;
  const reading = readMeasure(kilograms, 'weight', {
    units: shown.system,
    containers: [],
    bareNumber: true,
  });
  const bed = garden.beds.find(({ id }) => id === draft.bedId);

  const keep = () => {
    setAsked(true);
    if (wanted === 'own' && !reading.ok) return;
    const whole: Omit<Planting, 'id'> = {
      ...draft,
      wanted:
        wanted === 'own' && reading.ok
          ? { kilogramsPerM2: reading.value.value / areaOf }
          : wanted === 'own'
            ? draft.wanted
            : wanted,
    };
    const result = planting
      ? editPlanting(planting.id, whole)
      : alsoOn.length > 0
        ? addSame([bedId, ...alsoOn].map((id) => ({ ...whole, bedId: id })))
        : addPlanting(whole);
    if (result.ok) onClose();
    else setRefused(editFailureSentence(result.error));
  };

  const date = (label: string, key: 'firstHarvest' | 'cleared', hint: string, earliest: string) => (
    <DateField
      label={label}
      hint={hint}
      day={draft[key]}
      today={today}
      earliest={earliest}
      mayBeEmpty
      write={shown.dayField}
      sentence={dayFailureSentence}
      onDay={(day) => change({ [key]: day })}
    />
  );

  return (
    <Dialog
      title={
        planting
          ? `Change ${crop?.name ?? 'a planting'}`
          : choosesBed
            ? 'Sow or plant something'
            : `Sow or plant on ${alsoOn.length > 0 ? `${alsoOn.length + 1} beds` : (bed?.name ?? '')}`
      }
      wide
      onClose={onClose}
    >
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <div className="fields">
          {choosesBed && (
            <PickOne
              label="Bed"
              value={draft.bedId}
              groups={[
                {
                  label: null,
                  options: garden.beds.map(({ id, name }) => ({ value: id, label: name })),
                },
              ]}
              onPick={(chosen) => change({ bedId: chosen })}
            />
          )}
          <PickOne
            label="Crop"
            value={draft.cropId}
            groups={cropGroupsOf(garden)}
            onPick={(cropId) =>
              change({
                cropId,
                how: cropById(garden, cropId)?.clock === 'planting' ? 'planted' : 'sown',
              })
            }
            echo={crop && standsFor(crop.usualDays.typical)}
          />
          <Field label="Variety, if you like">
            {(links) => (
              <input
                {...links}
                type="text"
                maxLength={80}
                value={draft.variety ?? ''}
                onChange={(event) =>
                  setDraft(({ variety: _variety, ...rest }) =>
                    event.target.value ? { ...rest, variety: event.target.value } : rest,
                  )
                }
              />
            )}
          </Field>
          <ChoiceRow
            legend="How did it start there?"
            choices={[
              { value: 'sown', label: 'Sown' },
              { value: 'planted', label: 'Planted out' },
            ]}
            value={draft.how}
            onChoose={(how) => change({ how })}
          />
          <DateField
            label="When?"
            hint="A day to come is fine too."
            day={draft.started}
            today={today}
            write={shown.dayField}
            sentence={dayFailureSentence}
            onDay={(day) => change({ started: day ?? today })}
          />
        </div>
        <PickOne
          label="How much of the bed?"
          value={shares.find((share) => Number(share) === draft.share) ?? String(draft.share)}
          groups={[
            {
              label: null,
              options: [
                ...shares.map((share) => ({ value: share, label: shareWords[share] ?? share })),
                ...(shares.some((share) => Number(share) === draft.share)
                  ? []
                  : [
                      {
                        value: String(draft.share),
                        label: `${Math.round(draft.share * 100)} % of it`,
                      },
                    ]),
              ],
            },
          ]}
          onPick={(share) => change({ share: Number(share) })}
        />
        <ChoiceRow
          legend="What pick do you want of it?"
          choices={[
            { value: 'poor', label: 'a small one' },
            { value: 'usual', label: 'the usual' },
            { value: 'heavy', label: 'a heavy one' },
            { value: 'own', label: 'I know the weight' },
          ]}
          value={wanted}
          onChoose={setWanted}
        />
        {wanted === 'own' && (
          <QuantityField
            label={`Pick wanted from one ${perArea} (${shown.units.mass.symbol})`}
            hint={
              crop &&
              `A good yield is about ${estimateWithUnit(crop.goodYield.typical, shown.units.yieldPerArea)}.`
            }
            text={kilograms}
            onText={setKilograms}
            trouble={asked ? amountTrouble(reading) : null}
          />
        )}
        <div className="fields">
          {date('First pick', 'firstHarvest', 'Empty: reckoned from the crop.', draft.started)}
          {date('Cleared', 'cleared', 'Empty: it still stands.', draft.started)}
        </div>
        <ChoiceRow
          legend="When cleared, the tops are"
          choices={topsChoices}
          value={draft.tops}
          onChoose={(tops) => change({ tops })}
        />
        {crop?.legume && (
          <ChoiceRow
            legend="Nodules on the roots, when one plant is dug up"
            choices={noduleChoices}
            value={draft.nodules}
            onChoose={(nodules) => change({ nodules })}
          />
        )}
        {refused && (
          <p role="alert" className="field-trouble">
            {refused}
          </p>
        )}
        <div className="button-row">
          <button type="submit" className="button-main">
            {planting ? 'Keep the change' : 'Add it'}
          </button>
          <button type="button" className="button" onClick={onClose}>
            Cancel
          </button>
        </div>
      </form>
    </Dialog>
  );
}

const standsFor = (days: number): string => `Stands about ${Math.round(days / 7)} weeks.`;
