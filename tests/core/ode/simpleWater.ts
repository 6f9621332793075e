import type { Coefficients } from '../../../app/core/season/coefficients';
import type { SoilProperties } from '../../../app/core/season/input';

/**
 * Warmth and water of a bed written anew from the model (sections 3 and 6 and the chapters of
 * FAO-56 it names), for a check of the program by something that shares no code with it.
 */

/** Lloyd & Taylor 1994 scaled to 1 at 15 C; nothing below -1 C, a straight line from there to 1 C. */
export function warmth(celsius: number): number {
  const raw = (t: number): number => Math.exp(308.56 / 56.02 - 308.56 / (t + 46.02));
  if (celsius >= 1) return raw(celsius) / raw(15);
  return celsius > -1 ? ((celsius + 1) / 2) * (raw(1) / raw(15)) : 0;
}

/** FAO-56 equations 21, 23-25 and 52: radiation outside the air, and what the temperatures make of it. */
export function referenceDemand(
  low: number,
  high: number,
  latitude: number,
  dayOfYear: number,
): number {
  const phi = (Math.PI / 180) * latitude;
  const delta = 0.409 * Math.sin((2 * Math.PI * dayOfYear) / 365 - 1.39);
  const omega = Math.acos(-Math.tan(phi) * Math.tan(delta));
  const dr = 1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365);
  const ra =
    (1440 / Math.PI) *
    0.082 *
    dr *
    (omega * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(omega));
  return 0.0023 * ((low + high) / 2 + 17.8) * Math.sqrt(high - low) * 0.408 * ra;
}

export interface Leaves {
  /** crop coefficient now, at the start and at full growth; null on bare ground */
  readonly kc: number;
  readonly start: number;
  readonly canopy: number;
  readonly reach: number;
  readonly p: number;
}

export interface Buckets {
  top: number;
  lower: number;
  cover: number;
}

export interface Drained {
  readonly top: number;
  readonly lower: number;
  readonly through: number;
  /** water in the cover over the day */
  readonly damp: number;
}

/** One day of the three buckets [mm], rain and evaporation before drainage; never watered. */
export function drain(
  w: Buckets,
  soil: SoilProperties,
  lowerDepth: number,
  rain: number,
  et0: number,
  holds: number,
  hidden: number,
  leaves: Leaves | null,
  c: Coefficients,
): Drained {
  const full = { top: 300 * soil.fieldCapacity, lower: lowerDepth * soil.fieldCapacity };
  const wilt = { top: 300 * soil.wiltingPoint, lower: lowerDepth * soil.wiltingPoint };
  const canopy = leaves?.canopy ?? 0;
  const reach = leaves?.reach ?? 0;
  const ke = leaves
    ? Math.max(leaves.start, c.bareCropCoefficient) * (1 - canopy) +
      c.evaporationUnderCanopy * canopy
    : c.bareCropCoefficient;
  const kcb = leaves ? Math.max(0, leaves.kc - ke) : 0;

  const caught = Math.min(rain, Math.max(0, holds - w.cover));
  w.cover += caught;
  const airAsks = et0 * hidden * (1 - canopy);
  const fromCover = Math.min(w.cover, airAsks);
  // falls in a straight line until the day is over or nothing is left: the area of that trapeze
  const dryFrom = airAsks > 0 ? Math.min(1, w.cover / airAsks) : 1;
  const damp = (dryFrom * (w.cover + (w.cover - airAsks * dryFrom))) / 2;
  w.cover -= fromCover;
  const spilled = Math.max(0, w.cover - holds);
  w.cover -= spilled;
  const through = rain - caught + spilled;

  // FAO-56 equations 71-74: evaporation slows once the readily evaporable water is gone.
  const tew = 1000 * (soil.fieldCapacity - 0.5 * soil.wiltingPoint) * c.evaporationDepth;
  const rew = c.readilyEvaporableShare * tew;
  const gone = Math.max(0, full.top - w.top - through);
  const kr = gone <= rew ? 1 : Math.max(0, (tew - gone) / (tew - rew));
  const soilWants =
    kr * Math.max(0, ke * et0 * (1 - c.coverEvaporationSaving * hidden) - fromCover);
  w.top += through;
  w.top -= Math.min(soilWants, Math.max(0, w.top - wilt.top));

  const taw = full.top - wilt.top + reach * (full.lower - wilt.lower);
  const p = Math.min(0.8, Math.max(0.1, (leaves?.p ?? 0.5) + 0.04 * (5 - (kcb + ke) * et0)));
  const depletion = Math.max(0, full.top - w.top + reach * (full.lower - w.lower));
  const ks = depletion > p * taw ? Math.max(0, (taw - depletion) / ((1 - p) * taw)) : 1;
  const here = Math.max(0, w.top - wilt.top);
  const below = reach * Math.max(0, w.lower - wilt.lower);
  const pull = here + c.lowerLayerUptakeWeight * below;
  if (pull > 0) {
    w.top -= Math.min(here, (ks * kcb * et0 * here) / pull);
    w.lower -= Math.min(below, (ks * kcb * et0 * c.lowerLayerUptakeWeight * below) / pull);
  }

  const top = Math.max(0, w.top - full.top);
  w.top -= top;
  w.lower += top;
  const lower = Math.max(0, w.lower - full.lower);
  w.lower -= lower;
  return { top, lower, through, damp };
}
