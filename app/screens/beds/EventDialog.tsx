import { useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { Dialog } from '../../controls/Dialog';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { measureText } from '../../amounts/measureText';
import { dayOf, textFromDay } from '../../core/days';
import { soilOf } from '../../document/seasonInput';
import type { Bed, GardenEvent } from '../../document/schema';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { eventDoubt } from '../../document/eventDoubt';
import { eventDoubtSentence } from '../../words/eventDoubtWords';
import { readWater } from '../../amounts/readMeasure';
import { useShown } from '../shown';
import { WeightWord } from '../StateWords';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';
import {
  noLabMinerals,
  type LabMinerals,
  readEvent,
  type EventEntry,
  type PlainEventKind,
} from './readEvent';
import { SoilTestFields } from './SoilTestFields';
import { cropName } from '../../document/cropValues';

const titles: Readonly<Record<PlainEventKind, string>> = {
  water: 'Water given to',
  'rain gauge': 'Rain in the gauge',
  harvest: 'Picked from',
  'soil test': 'A soil test of',
  'rake off': 'Cover raked off',
  'dig cover in': 'Cover dug into',
};

/** Writing down, or changing, one thing that happened on a bed. */
export function EventDialog(props: {
  readonly bed: Bed;
  readonly kind: PlainEventKind;
  /** null: a new one */
  readonly event: GardenEvent | null;
  readonly onClose: () => void;
}) {
  const { bed, kind, event, onClose } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const context = useReadingContext();
  const logEvent = useMowings((state) => state.logEvent);
  const editEvent = useMowings((state) => state.editEvent);
  const announce = useAnnounce();
  const plantings = garden.plantings.filter(({ bedId }) => bedId === bed.id);
  const [entry, setEntry] = useState<EventEntry>(() => ({
    date: event?.date ?? today,
    amount:
      event?.kind === 'water' || event?.kind === 'rain gauge'
        ? measureText(event.millimetres, 'rain', shown.system)
        : event?.kind === 'harvest'
          ? measureText(event.kilograms, 'weight', shown.system)
          : '',
    plantingId: event?.kind === 'harvest' ? event.plantingId : (plantings.at(-1)?.id ?? ''),
    nitrate:
      event?.kind === 'soil test'
        ? (event.nitrateText ?? event.nitrateMgPerKg?.toString() ?? '')
        : '',
    organicMatter:
      event?.kind === 'soil test' ? (event.organicMatterPercent?.toString() ?? '') : '',
    minerals: {
      ...noLabMinerals,
      ...((event?.kind === 'soil test' ? event.minerals : undefined) as
        Partial<LabMinerals> | undefined),
    },
    depth:
      event?.kind === 'soil test'
        ? measureText(event.depthCentimetres * 10, 'depth', shown.system)
        : shown.system === 'us'
          ? '12 in'
          : '30 cm',
    share: event?.kind === 'rake off' || event?.kind === 'dig cover in' ? event.share : 1,
  }));
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const change = (changes: Partial<EventEntry>) => {
    setWondering(false);
    setEntry((now) => ({ ...now, ...changes }));
  };
  const { bulkDensityKgPerL } = soilOf(garden, bed, dayOf(today), dayOf(today));
  const read = readEvent(kind, entry, bed, context, bulkDensityKgPerL);
  const amountTrouble = asked ? (read.troubles.amount ?? null) : null;

  const [wondering, setWondering] = useState(false);
  const doubt = read.event && eventDoubt(garden, read.event, event?.id ?? null);
  // changed again after the question: the new number is asked about anew
  const isSure = wondering && doubt !== null;

  const keep = () => {
    setAsked(true);
    if (!read.event) return;
    if (doubt && !isSure) return setWondering(true);
    const note = event?.note === undefined ? {} : { note: event.note };
    const result = event
      ? editEvent({ ...read.event, ...note, id: event.id } as GardenEvent)
      : logEvent(read.event);
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    announce('Written down. The season is reckoned again.');
    onClose();
  };

  /** how deep that is on this bed, and what was taken for granted */
  const waterEcho = (text: string, water: typeof read.event): string | undefined => {
    if (water?.kind !== 'water') return undefined;
    const reading = readWater(text, { ...context, bareNumber: true });
    const litres = reading.ok ? reading.value.assumedCanLitres : null;
    const can =
      litres === null
        ? ''
        : ` A can is taken to hold ${shown.estimate(litres, shown.units.volume)}; add yours under Garden if it holds another amount.`;
    return `${shown.estimate(water.millimetres, shown.units.rain)} on this bed.${can}`;
  };

  const title =
    kind === 'rain gauge' ? titles[kind] : `${titles[kind]} ${kind === 'rake off' ? '' : bed.name}`;
  return (
    <Dialog title={title.trim()} onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(submit) => {
          submit.preventDefault();
          keep();
        }}
      >
        {kind === 'water' && (
          <QuantityField
            label={`How much? (${shown.units.rain.symbol}, ${shown.units.volume.symbol} or cans)`}
            hint={
              shown.system === 'us'
                ? 'A depth on the bed, or what you carried: 1/2 in, 5 gal, 2 cans'
                : 'A depth on the bed, or what you carried: 10 mm, 20 L, 2 cans'
            }
            echo={waterEcho(entry.amount, read.event)}
            text={entry.amount}
            onText={(amount) => change({ amount })}
            trouble={amountTrouble}
          />
        )}
        {kind === 'rain gauge' && (
          <QuantityField
            label={`How much was in it? (${shown.units.rain.symbol})`}
            hint="Counts for the whole garden, in place of the record or the usual month."
            text={entry.amount}
            onText={(amount) => change({ amount })}
            trouble={amountTrouble}
          />
        )}
        {kind === 'harvest' &&
          (plantings.length === 0 ? (
            <p>Nothing was ever planted on this bed: add a planting first.</p>
          ) : (
            <>
              <PickOne
                label="What was picked?"
                value={entry.plantingId}
                groups={[
                  {
                    label: null,
                    options: plantings.map((planting) => ({
                      value: planting.id,
                      label: `${cropName(garden, planting.cropId)}, ${planting.how} ${shown.dayWord(planting.started)}`,
                    })),
                  },
                ]}
                onPick={(plantingId) => change({ plantingId })}
              />
              <QuantityField
                label={`How much? (${shown.units.mass.symbol})`}
                text={entry.amount}
                onText={(amount) => change({ amount })}
                trouble={amountTrouble}
              />
            </>
          ))}
        {kind === 'soil test' && (
          <SoilTestFields entry={entry} troubles={asked ? read.troubles : {}} onChange={change} />
        )}
        {(kind === 'rake off' || kind === 'dig cover in') && (
          <ChoiceRow
            legend="How much of the cover?"
            choices={[
              { value: '0.25', label: 'a quarter' },
              { value: '0.5', label: 'half' },
              { value: '0.75', label: 'three quarters' },
              { value: '1', label: 'all of it' },
            ]}
            value={String(entry.share) as '0.25' | '0.5' | '0.75' | '1'}
            onChoose={(share) => change({ share: Number(share) })}
          />
        )}
        <DateField
          label="When?"
          hint={kind === 'soil test' ? 'The day it was dug, not that of the letter.' : undefined}
          day={entry.date}
          today={today}
          latest={today}
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(date) => change({ date: date ?? today })}
        />
        {isSure && (
          <p role="alert" className="caution caution-caution">
            <span>
              <WeightWord weight="caution" /> {eventDoubtSentence(doubt, shown.units)}
            </span>
          </p>
        )}
        {refused && (
          <p role="alert" className="field-trouble">
            {refused}
          </p>
        )}
        <div className="button-row">
          <button
            type="submit"
            className="button-main"
            disabled={kind === 'harvest' && plantings.length === 0}
          >
            {event ? 'Keep the change' : 'Write it down'}
            {isSure ? ' all the same' : ''}
          </button>
          <button type="button" className="button" onClick={onClose}>
            Cancel
          </button>
        </div>
      </form>
    </Dialog>
  );
}
