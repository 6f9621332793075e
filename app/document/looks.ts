import { dayOf, type DayNumber } from '../core/days';
import type { Look } from '../core/season/draws/signs';
import type { Garden, GardenEvent, Planting } from './schema';
import { cropById } from './cropValues';
import { ofBed } from './ofBed';

export type LookEvent = Extract<GardenEvent, { kind: 'look and dig' }>;

const isLook = (event: GardenEvent): event is LookEvent => event.kind === 'look and dig';

/** What was seen on a bed, in the order it was written down; the draws leave later days out. */
export const looksOf = (garden: Garden, bedId: string): readonly Look[] =>
  ofBed(garden.events, bedId)
    .filter(isLook)
    .map(({ date, nodules, leaves, smellsSour, moistFingerDeep, slugsUnderBoard, soilSeen }) => ({
      day: dayOf(date),
      nodules,
      leaves,
      smellsSour,
      moistFingerDeep,
      slugsUnderBoard,
      soilSeen,
    }));

/**
 * What is known of a planting's nodules on a day: the latest look at its bed up to then while it
 * stood, else what was written at the planting itself. White or none in the days before nodules
 * begin to work tells nothing: there are none yet on any bean.
 *
 * @param looks of the planting's own bed
 */
export function nodulesKnown(
  planting: Planting,
  looks: readonly Look[],
  today: DayNumber,
  garden: Pick<Garden, 'crops'> = {},
): Planting['nodules'] {
  const legume = cropById(garden, planting.cropId)?.legume;
  if (!legume) return planting.nodules;
  const started = dayOf(planting.started);
  const cleared = planting.cleared === null ? Infinity : dayOf(planting.cleared);
  let latest: { readonly day: DayNumber; readonly nodules: Planting['nodules'] } | null = null;
  for (const { day, nodules } of looks) {
    if (nodules === undefined || day > today || day < started || day > cleared) continue;
    if (nodules !== 'pink' && day < started + legume.nodulationDays.typical) continue;
    if (latest === null || day >= latest.day) latest = { day, nodules };
  }
  return latest?.nodules ?? planting.nodules;
}
