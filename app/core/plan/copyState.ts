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

function copyOf<Value>(value: Value): Value {
  if (value instanceof Float64Array) return value.slice() as Value;
  if (Array.isArray(value)) return value.map(copyOf) as Value;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [key, shared.has(key) ? one : copyOf(one)]),
  ) as Value;
}

/**
 * A bed to go on with from the same morning, apart from the one it was copied from.
 *
 * @param state of a run that keeps no layers (`startingState`): layers point into their classes
 * @param plan entries of the days to come; those of days gone by must be the same
 */
export const copyState = (state: BedState, plan: RunPlan): BedState => ({
  ...copyOf(state),
  plan,
});
