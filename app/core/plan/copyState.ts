import type { BedState } from '../season/bedState';
import type { RunPlan } from '../season/runPlan';

/** What no day changes: it is shared between a state and its copies. */
const shared: ReadonlySet<string> = new Set([
  'plan',
  'sizes',
  'coefficients',
  'input',
  'crop',
  'curve',
  'clock',
  'parameters',
]);

// Spread first and fill in after: copies then are of the same shape as what they were copied from,
// and the day runs on them as fast.
function copyOf<Value>(value: Value): Value {
  if (value instanceof Float64Array) return value.slice() as Value;
  if (Array.isArray(value)) return value.map(copyOf) as Value;
  if (typeof value !== 'object' || value === null) return value;
  const copy = { ...value };
  for (const key in copy) {
    const one = copy[key];
    if (typeof one === 'object' && !shared.has(key)) copy[key] = copyOf(one);
  }
  return copy;
}

/**
 * A bed to go on with from the same morning, apart from the one it was copied from.
 *
 * @param state of a run that keeps no layers (`startingState`): layers point into their classes
 * @param plan entries of the days to come; those of days gone by must be the same
 */
export const copyState = (state: BedState, plan: RunPlan): BedState => {
  const copy: { -readonly [Key in keyof BedState]: BedState[Key] } = copyOf(state);
  copy.plan = plan;
  return copy;
};
