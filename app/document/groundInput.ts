import { dayOf, seasonStart, textFromDay, type DayNumber } from '../core/days';
import type { BedEvent, BedSeason, GroundInput, LayerInput } from '../core/season/input';
import { anyBed, areaOn } from './bedPast';
import { foundOnGround } from './foundOnGround';
import type { Bed, Garden, Planting } from './schema';
import type { layerInput } from './layerInput';
import type { bedEvents, bedSeason } from './seasonInput';

/** How a garden is laid out for the engine, handed in by `seasonInput`, which needs this file. */
export interface LayingOut {
  readonly runOf: typeof bedSeason;
  readonly layerOf: typeof layerInput;
  readonly eventsOf: typeof bedEvents;
}

/**
 * First day of the run of a bed that was made of others: never the first of a season, whose turn
 * belongs to the ground, and never after today.
 */
export function firstDayMade(on: string, today: DayNumber, seasonStartMonth: number): DayNumber {
  const day = dayOf(on);
  return Math.min(today, day === seasonStart(day, seasonStartMonth) ? day + 1 : day);
}

/** A ground of a bed with its part of it, and which of its plants go on. */
interface Part {
  readonly bedId: string;
  /** part of the new bed's area, 0-1 */
  readonly share: number;
  readonly plants: GroundInput['plants'];
}

function partsOf(garden: Garden, bed: Bed, own: readonly Planting[]): readonly Part[] {
  const parts = bed.ground?.parts ?? [];
  const whole = parts.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  return parts.map(({ bedId, areaM2 }) => {
    const before = anyBed(garden, bedId);
    const wasM2 = before ? areaOn(before, bed.ground!.on) : areaM2;
    return {
      bedId,
      share: areaM2 / whole,
      plants: own.flatMap(({ id, continues }) => {
        const from = garden.plantings.find((planting) => planting.id === continues?.plantingId);
        return continues && from?.bedId === bedId
          ? [{ from: from.id, to: id, factor: (continues.portion * wasM2) / whole }]
          : [];
      }),
    };
  });
}

/** Entries of the day a bed was made that were written down for its grounds, on one of them. */
function thatDay(
  garden: Garden,
  bedId: string,
  on: string,
  { layerOf, eventsOf }: LayingOut,
): { readonly layers: readonly LayerInput[]; readonly events: readonly BedEvent[] } {
  const before = anyBed(garden, bedId);
  if (!before) return { layers: [], events: [] };
  const day = dayOf(on);
  return {
    layers: garden.applications
      .filter((one) => one.bedId === bedId && one.date === on)
      .map((one) => layerOf(garden, before, one)),
    events: eventsOf(garden, before).filter((event) => event.day === day),
  };
}

const isOfCover = ({ kind }: BedEvent): boolean => kind === 'rake off' || kind === 'dig cover in';

/**
 * What was written down for a bed's grounds on the day it was made: all that came before the change.
 * Its layers, waterings and picks are the new bed's by area, gram for gram. What of one ground's
 * cover was raked off or dug in is done on that ground alone (`groundInputs`), save where there is
 * but one.
 *
 * @param firstDay of the new bed's run; where that is a day later, the ground's run has them
 */
export function doneBeforeMade(
  garden: Garden,
  bed: Bed,
  firstDay: DayNumber,
  own: readonly Planting[],
  layingOut: LayingOut,
): Pick<BedSeason, 'layers' | 'events'> {
  if (!bed.ground || dayOf(bed.ground.on) !== firstDay) return { layers: [], events: [] };
  const { on } = bed.ground;
  const parts = partsOf(garden, bed, own);
  const each = parts.map((part) => ({ part, ...thatDay(garden, part.bedId, on, layingOut) }));
  return {
    layers: each.flatMap(({ part: { share }, layers }) =>
      layers.map((layer) => ({
        ...layer,
        freshKgPerM2: share * layer.freshKgPerM2,
        dryKgPerM2: share * layer.dryKgPerM2,
        nitrogen: share * layer.nitrogen,
        carbon: share * layer.carbon,
        laidDepth: share * layer.laidDepth,
      })),
    ),
    events: each.flatMap(({ part: { share, plants }, events }) =>
      events.flatMap((event): BedEvent[] => {
        if (event.kind === 'water') return [{ ...event, depth: share * event.depth }];
        if (event.kind === 'harvest')
          return plants.flatMap(({ from, to, factor }) =>
            from === event.plantingId
              ? [{ ...event, plantingId: to, kilogramsPerM2: factor * event.kilogramsPerM2 }]
              : [],
          );
        return parts.length === 1 ? [event] : [];
      }),
    ),
  };
}

/**
 * The runs of what a bed was made of, up to the evening before, with what of them goes on in it.
 *
 * @param own the bed's plantings
 */
export function groundInputs(
  garden: Garden,
  bed: Bed,
  firstDay: DayNumber,
  own: readonly Planting[],
  layingOut: LayingOut,
): readonly GroundInput[] {
  if (!bed.ground) return [];
  const { on } = bed.ground;
  const parts = partsOf(garden, bed, own);
  const eve = firstDay - 1;
  const asItWas = withEnded(garden, bed.ground.parts, textFromDay(eve));
  const isThatDay = dayOf(on) === firstDay;
  return parts.map(({ bedId, share, plants }) => {
    const input = layingOut.runOf(asItWas, bedId, eve, { endsToday: true });
    const found = foundOnGround(garden, input, on);
    const morning =
      isThatDay && parts.length > 1
        ? thatDay(garden, bedId, on, layingOut).events.filter(isOfCover)
        : [];
    return {
      input,
      share,
      plants,
      ...(morning.length > 0 && { morning }),
      ...(found && { found }),
    };
  });
}

/** The garden with what stood on such ground and goes on nowhere cleared by the evening before. */
function withEnded(
  garden: Garden,
  parts: readonly { readonly bedId: string }[],
  eve: string,
): Garden {
  const goesOn = new Set(garden.plantings.flatMap(({ continues }) => continues?.plantingId ?? []));
  const isOver = ({ id, bedId, started, cleared }: Planting): boolean =>
    parts.some((part) => part.bedId === bedId) &&
    !goesOn.has(id) &&
    started <= eve &&
    (cleared === null || cleared > eve);
  if (!garden.plantings.some(isOver)) return garden;
  return {
    ...garden,
    plantings: garden.plantings.map((one) => (isOver(one) ? { ...one, cleared: eve } : one)),
  };
}
