import { dayOf, seasonStart, textFromDay, type DayNumber } from '../core/days';
import type { GroundInput } from '../core/season/input';
import { anyBed, areaOn } from './bedPast';
import type { Bed, Garden, Planting } from './schema';
import type { bedSeason } from './seasonInput';

/**
 * First day of the run of a bed that was made of others: never the first of a season, whose turn
 * belongs to the ground, and never after today.
 */
export function firstDayMade(on: string, today: DayNumber, seasonStartMonth: number): DayNumber {
  const day = dayOf(on);
  return Math.min(today, day === seasonStart(day, seasonStartMonth) ? day + 1 : day);
}

/**
 * The runs of what a bed was made of, up to the evening before, with what of them goes on in it.
 *
 * @param own the bed's plantings
 * @param runOf how a bed is laid out for the engine: `bedSeason`
 */
export function groundInputs(
  garden: Garden,
  bed: Bed,
  firstDay: DayNumber,
  own: readonly Planting[],
  runOf: typeof bedSeason,
): readonly GroundInput[] {
  const parts = bed.ground?.parts ?? [];
  const whole = parts.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  const eve = firstDay - 1;
  const asItWas = withEnded(garden, parts, textFromDay(eve));
  return parts.map(({ bedId, areaM2 }) => {
    const before = anyBed(garden, bedId);
    const wasM2 = before ? areaOn(before, bed.ground!.on) : areaM2;
    return {
      input: runOf(asItWas, bedId, eve, { endsToday: true }),
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
