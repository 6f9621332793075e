import { type FlowIndex, flowKinds, type Pool, pools } from '../../app/core/season/flows';
import type { SeasonResult } from '../../app/core/season/result';

export const noNitrogen = (): Record<Pool, number> =>
  Object.fromEntries(pools.map((pool) => [pool, 0])) as Record<Pool, number>;

/**
 * A run whose pools are the start plus the given flows: nitrogen is conserved by construction, so
 * whatever a ledger or chart leaves over is its own doing. Everything but nitrogen is empty.
 */
export function seasonFromFlows(
  start: Readonly<Record<Pool, number>>,
  days: number,
  amount: (flow: FlowIndex, day: number) => number,
  rest: Partial<SeasonResult> = {},
): SeasonResult {
  const flows = flowKinds.map((_kind, index) =>
    Float64Array.from({ length: days }, (_value, day) => amount(index, day)),
  );
  const series = Object.fromEntries(pools.map((pool) => [pool, new Float64Array(days)])) as Record<
    Pool,
    Float64Array
  >;
  const now = { ...start };
  for (let day = 0; day < days; day += 1) {
    flowKinds.forEach((kind, index) => {
      const moved = flows[index]?.[day] ?? 0;
      if (kind.from in now) now[kind.from as Pool] -= moved;
      if (kind.to in now) now[kind.to as Pool] += moved;
    });
    for (const pool of pools) series[pool][day] = now[pool];
  }
  const zeros = () => new Float64Array(days);
  return {
    bedId: 'bed',
    firstDay: 15_706,
    days,
    today: 15_706 + days - 1,
    start,
    pools: series,
    flows,
    residual: 0,
    kind: new Uint8Array(days),
    rain: zeros(),
    watered: zeros(),
    airMean: zeros(),
    airMinimum: zeros(),
    airMaximum: zeros(),
    soilTemperature: zeros(),
    drainageTop: zeros(),
    drainageLower: zeros(),
    dryness: zeros(),
    availableWaterTop: zeros(),
    availableWaterLower: zeros(),
    coverFill: zeros(),
    coverFraction: zeros(),
    coverDepth: zeros(),
    coverDryKg: zeros(),
    rootReach: zeros(),
    soilNormalisedDay: zeros(),
    lowerDepth: zeros().fill(300),
    plantings: [],
    layers: [],
    ...rest,
  };
}
