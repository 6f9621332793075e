import type { DayNumber } from '../../core/days';
import { lawnCurve, type LawnCurve } from '../../document/lawnCurve';
import type { Garden, Lawn } from '../../document/schema';

const kept = new WeakMap<Lawn, { readonly of: readonly unknown[]; readonly curve: LawnCurve }>();

/** What of a garden a lawn's curve is made of: plantings are no part of it, the soil of the beds is. */
const partsOf = (garden: Garden, today: DayNumber): readonly unknown[] => {
  const { plantings: _plantings, crops: _crops, ...rest } = garden;
  return [today, ...Object.values(rest)];
};

/** Whether a lawn's curve is there without being reckoned. */
export function hasLawnCurve(garden: Garden, lawn: Lawn, today: DayNumber): boolean {
  const before = kept.get(lawn)?.of;
  const parts = partsOf(garden, today);
  return before?.length === parts.length && before.every((one, at) => one === parts[at]);
}

/** As `lawnCurve`, reckoned again only when something it is made of is another. */
export function keptLawnCurve(garden: Garden, lawn: Lawn, today: DayNumber): LawnCurve {
  const before = kept.get(lawn);
  if (before && hasLawnCurve(garden, lawn, today)) return before.curve;
  const curve = lawnCurve(garden, lawn.id, today);
  kept.set(lawn, { of: partsOf(garden, today), curve });
  return curve;
}
