import { useState } from 'react';
import { Icon } from '../../controls/marks/Icon';
import type { IconName } from '../../controls/marks/iconPaths';
import { useAnnounce } from '../../controls/Announcer';
import { Figured } from '../../controls/Figured';
import { DeleteButton } from '../../controls/DeleteButton';
import { Dialog } from '../../controls/Dialog';
import { dayOf } from '../../core/days';
import { bedOn } from '../../document/bedPast';
import { leftOutOf } from '../../document/leftOut';
import { materialFrom } from '../../document/materialValues';
import type { LookEvent } from '../../document/looks';
import type { Application, Bed, GardenEvent } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { layersOn } from '../../store/selectors';
import { percent } from '../../words/chartFormat';
import { leftOutSentence } from '../../words/leftOutWords';
import { lookAdvice } from '../../words/lookWords';
import { editFailureSentence } from '../../words/messages';
import { amountWords } from '../amountWords';
import { placementWords } from '../choices';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';
import { LayForm } from '../week/LayForm';
import { lyingOf } from '../week/layRows';
import { stuffName } from './chartData';
import { EventDialog } from './EventDialog';
import { eventKinds, eventWords } from './eventWords';
import { CarryDialog } from './CarryDialog';
import { LayerDialog } from './LayerDialog';
import { LookDialog } from './LookDialog';
import { RakeDialog } from './RakeDialog';
import { soilWasCold } from './soilWasCold';
import type { PlainEvent, PlainEventKind } from './readEvent';
import { nitrateTestWords } from './nitrateTestWords';
import { takenOff, type Raking } from './raking';
import { cropName } from '../../document/cropValues';
import type { FigureInText } from '../../words/why';
import { eventFigures } from '../why/eventWhys';
import { layerFigures } from '../why/layerWhys';

/** What each is done with. */
const eventIcons: Readonly<Record<(typeof eventKinds)[number], IconName>> = {
  water: 'can',
  'rain gauge': 'rain',
  harvest: 'basket',
  'soil test': 'jar',
  'rake off': 'rake',
  'dig cover in': 'fork',
  'look and dig': 'lens',
};

const large = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

type Open =
  | { readonly kind: 'new event'; readonly event: PlainEventKind }
  | { readonly kind: 'event'; readonly event: PlainEvent }
  | { readonly kind: 'layer'; readonly layer: Application }
  | { readonly kind: 'look'; readonly event: LookEvent | null }
  | { readonly kind: 'rake'; readonly event: Raking | null }
  | { readonly kind: 'carry'; readonly event: Raking }
  | { readonly kind: 'lay' };

/** What was done on a bed, newest first; every line can be changed or deleted. */
export function BedLog({ bed, results }: { readonly bed: Bed; readonly results: BedResults }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const deleteApplication = useMowings((state) => state.deleteApplication);
  const deleteEvent = useMowings((state) => state.deleteEvent);
  const draws = useMowings((state) => state.draws[bed.id]);
  const announce = useAnnounce();
  const [open, setOpen] = useState<Open | null>(null);
  /** what was just done here, in sight where it was asked for */
  const [done, setDone] = useState<string | null>(null);
  const started = (next: Open) => {
    setDone(null);
    setOpen(next);
  };

  const carried = open?.kind === 'carry' ? takenOff(garden, bed, results, open.event) : null;

  const entries = [
    ...layersOn(garden, bed.id).map((layer) => ({ date: layer.date, layer, event: null })),
    ...garden.events
      .filter((event) => event.kind === 'rain gauge' || event.bedId === bed.id)
      .map((event) => ({ date: event.date, layer: null, event })),
  ].sort((one, other) => (one.date < other.date ? 1 : one.date > other.date ? -1 : 0));

  const leftShare = (layer: Application): number | null => {
    if (layer.placement !== 'laid') return null;
    const result = results.season.layers.find(({ id }) => id === layer.id);
    return result?.left[results.season.today - results.season.firstDay] ?? null;
  };
  const figuresOf = (layer: Application): readonly FigureInText[] => {
    const then = bedOn(bed, layer.date);
    const lies = lyingOf(garden, then, layer);
    return layerFigures({ garden, bed: then, layer, lies, left: leftShare(layer), shown });
  };
  const layerLine = (layer: Application): string => {
    const material = materialFrom(garden, layer.from);
    const lies = lyingOf(garden, bedOn(bed, layer.date), layer);
    return (
      `${stuffName(material)}, ${amountWords(layer.amount, garden, context, shown)}` +
      `${material.row.materialClass === 'green' ? `, ${layer.condition}` : ''}, ${placementWords[layer.placement]}: ` +
      `about ${shown.estimate(lies.freshKilograms, shown.units.mass)}, ` +
      `${shown.estimate(lies.millimetres, shown.units.depth)} as laid, ` +
      `${shown.estimate(lies.nitrogenGramsPerM2, shown.units.nitrogenPerArea)} of nitrogen`
    );
  };
  const ofCrop = (event: GardenEvent): string => {
    if (event.kind !== 'harvest') return '';
    const planting = garden.plantings.find(({ id }) => id === event.plantingId);
    return planting ? ` of ${cropName(garden, planting.cropId).toLowerCase()}` : '';
  };
  const leftOf = (layer: Application): string | null => {
    const left = leftShare(layer);
    return left === null ? null : `${percent(left)} of its dry weight still lies there`;
  };
  const remove = (label: string, layer: Application | null, event: GardenEvent | null) => {
    const result = layer ? deleteApplication(layer.id) : deleteEvent(event?.id ?? '');
    announce(
      result.ok ? `Deleted: ${label}. Undo brings it back.` : editFailureSentence(result.error),
    );
    setDone(null);
  };

  return (
    <section className="section" aria-labelledby="bed-log" data-bed={bed.id}>
      <div className="section-head">
        <h2 id="bed-log" tabIndex={-1}>
          What was done
        </h2>
      </div>
      <div className="button-row" role="group" aria-label="Write something down">
        <button type="button" className="button" onClick={() => started({ kind: 'lay' })}>
          <Icon name="barrow" /> Lay something…
        </button>
        {eventKinds.map((kind) => (
          <button
            key={kind}
            data-writes={kind}
            type="button"
            className="button"
            onClick={() =>
              started(
                kind === 'rake off'
                  ? { kind: 'rake', event: null }
                  : kind === 'look and dig'
                    ? { kind: 'look', event: null }
                    : { kind: 'new event', event: kind },
              )
            }
          >
            <Icon name={eventIcons[kind]} /> {eventWords[kind].button}…
          </button>
        ))}
      </div>
      {done !== null && <p className="done">{done}</p>}
      {leftOutOf(garden, bed.id, today).map((one) => (
        <p key={JSON.stringify(one)} className="small">
          {leftOutSentence(one, bed.name, shown.dayWord)}
        </p>
      ))}
      {entries.length === 0 && <p>Nothing has been written down for this bed yet.</p>}
      <ol className="plain-list log-list">
        {entries.map(({ date, layer, event }) => {
          const what = layer
            ? layerLine(layer)
            : event
              ? eventWords[event.kind].line(event, shown) + ofCrop(event)
              : '';
          const label = `${shown.dayNear(date, today)}: ${layer ? stuffName(materialFrom(garden, layer.from)) : event ? eventWords[event.kind].name : ''}`;
          const left = layer ? leftOf(layer) : null;
          const taken = event?.kind === 'rake off' ? takenOff(garden, bed, results, event) : null;
          return (
            <li
              key={layer?.id ?? event?.id}
              id={`entry-${layer?.id ?? event?.id ?? ''}`}
              tabIndex={-1}
              className="log-entry"
            >
              <Figured
                before={<strong className="nowrap">{large(shown.dayNear(date, today))}</strong>}
                says={[
                  ` ${what}.`,
                  left === null ? '' : `${left}.`,
                  event?.kind === 'soil test' && event.nitrateMgPerKg !== null
                    ? nitrateTestWords(results, dayOf(event.date))
                    : '',
                  event?.kind === 'look and dig'
                    ? lookAdvice(event, soilWasCold(results, dayOf(event.date)))
                    : '',
                  taken
                    ? `Off came about ${shown.estimate(taken.dryKilograms, shown.units.mass)} of dry weight with ${shown.estimate(taken.nitrogenGrams, shown.units.nitrogen)} of nitrogen.`
                    : '',
                  layer && layer.passedStops.length > 0 ? 'Laid in spite of a stop.' : '',
                ]
                  .filter(Boolean)
                  .join(' ')}
                figures={
                  layer
                    ? figuresOf(layer)
                    : event
                      ? eventFigures({ garden, results, draws, shown }, event, taken)
                      : []
                }
              />
              <div className="button-row">
                {taken && event?.kind === 'rake off' && garden.beds.length > 1 && (
                  <button
                    type="button"
                    className="button-small"
                    aria-label={`Lay it on another bed or the heap: ${label}`}
                    onClick={() => started({ kind: 'carry', event })}
                  >
                    Lay it on another bed or the heap…
                  </button>
                )}
                {event?.kind !== 'nothing laid' && (
                  <button
                    type="button"
                    className="button-small"
                    aria-label={`Change ${label}`}
                    onClick={() => {
                      if (layer) started({ kind: 'layer', layer });
                      else if (event?.kind === 'rake off') started({ kind: 'rake', event });
                      else if (event?.kind === 'look and dig') started({ kind: 'look', event });
                      else if (event) started({ kind: 'event', event });
                    }}
                  >
                    Change
                  </button>
                )}
                <DeleteButton
                  label={`Delete ${label}`}
                  onDelete={() => remove(label, layer, event)}
                >
                  Delete
                </DeleteButton>
              </div>
            </li>
          );
        })}
      </ol>
      {open?.kind === 'lay' && (
        <Dialog title={`Lay something on ${bed.name}`} wide onClose={() => setOpen(null)}>
          <p className="small soft">
            Of what is cut and waiting, from the stores, or found and grown on the spot.
          </p>
          <LayForm
            what={null}
            bedId={bed.id}
            onLaid={() => {
              setOpen(null);
              setDone(`Laid on ${bed.name}. It stands in the list below; undo takes it back.`);
            }}
            onCancel={() => setOpen(null)}
          />
        </Dialog>
      )}
      {open?.kind === 'new event' && (
        <EventDialog bed={bed} kind={open.event} event={null} onClose={() => setOpen(null)} />
      )}
      {open?.kind === 'event' && (
        <EventDialog
          bed={bed}
          kind={open.event.kind}
          event={open.event}
          onClose={() => setOpen(null)}
        />
      )}
      {open?.kind === 'look' && (
        <LookDialog bed={bed} event={open.event} onClose={() => setOpen(null)} />
      )}
      {open?.kind === 'rake' && (
        <RakeDialog
          bed={bed}
          results={results}
          event={open.event}
          onClose={() => setOpen(null)}
          onRaked={() =>
            setDone(
              'Raked off, and out of the sums of this bed. Where it went on another bed or the heap, say so in its line below.',
            )
          }
        />
      )}
      {open?.kind === 'carry' && carried && (
        <CarryDialog
          from={bed}
          raking={open.event}
          taken={carried}
          onClose={() => setOpen(null)}
          onLaid={(where) => setDone(`${where}. Undo takes it back.`)}
        />
      )}
      {open?.kind === 'layer' && (
        <LayerDialog bed={bed} layer={open.layer} onClose={() => setOpen(null)} />
      )}
    </section>
  );
}
