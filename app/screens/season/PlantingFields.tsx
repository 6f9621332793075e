import { type RefObject, useEffect, useId, useRef, useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { DateField } from '../../controls/DateField';
import { PickOne } from '../../controls/PickOne';
import { plantingDays } from '../../document/plantingDays';
import { soilOf } from '../../document/seasonInput';
import type { Bed, Planting } from '../../document/schema';
import { cropName } from '../../document/cropValues';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { onBedNow } from '../../words/seasonPlaceWords';
import { PlantingDialog } from '../beds/PlantingDialog';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';

export interface PlantingFieldsProps {
  readonly plantingId: string;
  /**
   * Whether its bed was being picked when the fields went away: they come up anew on the other bed's
   * strip, and the focus is still on the pick.
   */
  readonly bedPickRef: RefObject<boolean>;
  readonly onClose: () => void;
}

/** The dates of a planting and its bed; each is a change of its own, and can be undone. */
export function PlantingFields(props: PlantingFieldsProps) {
  const garden = useGarden();
  const planting = garden.plantings.find(({ id }) => id === props.plantingId);
  const bed = garden.beds.find(({ id }) => id === planting?.bedId);
  return planting && bed ? <Fields planting={planting} bed={bed} {...props} /> : null;
}

function Fields(props: PlantingFieldsProps & { readonly planting: Planting; readonly bed: Bed }) {
  const { planting, bed: its, bedPickRef } = props;
  const garden = useGarden();
  const shown = useShown();
  const todayDay = useToday();
  const today = shown.iso(todayDay);
  const soil = useMowings((state) => state.bedResults[its.id]?.input.soil);
  const days = plantingDays(
    garden,
    planting,
    soil ?? soilOf(garden, its, todayDay, todayDay),
    todayDay,
  );
  const editPlanting = useMowings((state) => state.editPlanting);
  const endGesture = useMowings((state) => state.endGesture);
  const headingId = useId();
  const box = useRef<HTMLDivElement>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const [isWhole, setWhole] = useState(false);
  useEffect(() => {
    box.current?.querySelector<HTMLElement>(bedPickRef.current ? 'select' : 'input')?.focus();
    bedPickRef.current = false;
  }, [bedPickRef]);
  const announce = useAnnounce();
  const change = (field: string, changes: Partial<Omit<Planting, 'id'>>): boolean => {
    // a day moved by the arrows again and again is one change
    const result = editPlanting(planting.id, changes, `season ${planting.id} ${field}`);
    setRefused(result.ok ? null : editFailureSentence(result.error));
    return result.ok;
  };
  const pickBed = (bedId: string): void => {
    bedPickRef.current = true;
    const bed = garden.beds.find(({ id }) => id === bedId);
    if (!change('bed', { bedId })) bedPickRef.current = false;
    else if (bed) announce(onBedNow(name, bed.name), 'bed picked');
  };
  const name = cropName(garden, planting.cropId);
  const common = { today, write: shown.dayField, sentence: dayFailureSentence };
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- only hears Escape from the fields within
    <div
      ref={box}
      className="strip-fields sheet"
      role="group"
      aria-labelledby={headingId}
      onBlur={endGesture}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || event.defaultPrevented || isWhole) return;
        event.preventDefault();
        props.onClose();
      }}
    >
      <h4 id={headingId}>
        {name}
        {planting.variety && `, ${planting.variety}`}
      </h4>
      <div className="fields">
        <DateField
          {...common}
          label={planting.how === 'sown' ? 'Sown' : 'Planted'}
          day={planting.started}
          latest={planting.firstHarvest ?? planting.cleared ?? undefined}
          onDay={(day) => day !== null && change('started', { started: day })}
        />
        <DateField
          {...common}
          label="First pick"
          hint={
            planting.firstHarvest === null && days.pick !== null
              ? `Left empty: about ${shown.dayWord(days.pick)}.`
              : 'Left empty: reckoned from the crop.'
          }
          day={planting.firstHarvest}
          earliest={planting.started}
          latest={planting.cleared ?? undefined}
          mayBeEmpty
          onDay={(day) => change('firstHarvest', { firstHarvest: day })}
        />
        <DateField
          {...common}
          label="Cleared"
          hint={
            planting.cleared === null && days.end !== null
              ? `Left empty: about ${shown.dayWord(days.end)}.`
              : 'Left empty: it still stands.'
          }
          day={planting.cleared}
          earliest={planting.firstHarvest ?? planting.started}
          mayBeEmpty
          onDay={(day) => change('cleared', { cleared: day })}
        />
        <PickOne
          label="Bed"
          value={planting.bedId}
          groups={[
            {
              label: null,
              options: garden.beds.map(({ id, name: bed }) => ({ value: id, label: bed })),
            },
          ]}
          onPick={pickBed}
        />
      </div>
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
      <div className="button-row">
        <button type="button" className="button-small" onClick={() => setWhole(true)}>
          All of {name}…
        </button>
        <button type="button" className="button-small" onClick={props.onClose}>
          Close the fields
        </button>
      </div>
      {isWhole && (
        <PlantingDialog
          bedId={planting.bedId}
          planting={planting}
          onClose={() => setWhole(false)}
        />
      )}
    </div>
  );
}
