import type { DayNumber } from '../days';
import {
  type FlowIndex,
  type FlowKind,
  flowKinds,
  type Place,
  type Pool,
  type Sink,
  sinks,
  type Source,
  sources,
} from './flows';
import type { SeasonResult } from './result';

/** What a bed holds, as a gardener would name it. The soil's own store is shown as a change only. */
export const holdings = {
  'ready in the soil': ['mineralTop', 'mineralLower'],
  'in the cover': ['coverResidue', 'coverMicrobes', 'coverHumus', 'coverFree'],
  'rotting in the soil': ['dugResidue', 'dugMicrobes', 'dugHumus'],
  'in compost': ['slow'],
  'in young humus': ['youngHumus'],
  'in the crop': ['crop'],
  'in the soil itself': ['soilOrganic'],
} as const satisfies Readonly<Record<string, readonly Pool[]>>;
export type Holding = keyof typeof holdings;
export const holdingNames = Object.keys(holdings) as readonly Holding[];

const cameInNames = [
  'laid on',
  'dug in',
  'compost and manure',
  'rain',
  'fixed from the air',
  'reached by deeper roots',
] as const;
export type CameIn = (typeof cameInNames)[number];

const wentOutNames = [
  'picked',
  'cleared away',
  'raked off',
  'lost to the air',
  'washed out',
  'lost from wet soil',
  'left below shallower roots',
] as const;
export type WentOut = (typeof wentOutNames)[number];

const movedNames = [
  'released by the soil',
  'released by last year’s humus',
  'released by compost',
  'released by what was dug in',
  'washed in from the cover',
  'held back by browns',
  'taken up by the crop',
  'cover dug in',
  'left by the crop',
  'turned to humus at the season’s end',
  'compost turned to soil',
] as const;
export type Moved = (typeof movedNames)[number];

/** Where the nitrogen a crop can reach comes from. Grass and browns on the bed are one: "cover". */
export const supplySources = [
  'soil',
  'last year',
  'compost',
  'dug in',
  'cover',
  'rain',
  'air',
] as const;
export type SupplySource = (typeof supplySources)[number];

const isSource = (place: Place): place is Source => (sources as readonly string[]).includes(place);
const isSink = (place: Place): place is Sink => (sinks as readonly string[]).includes(place);

/** Which holding a pool is counted in; throws for a place outside the bed. */
export function holdingOf(place: Place): Holding {
  const found = holdingNames.find((name) => (holdings[name] as readonly Place[]).includes(place));
  if (found === undefined) throw new Error(`No holding for ${place}`);
  return found;
}

/** The line of what came in that a flow is counted in; null for one that stays in the bed or leaves it. */
export const cameInOf = ({ from, why }: FlowKind): CameIn | null => {
  if (!isSource(from)) return null;
  if (from === 'rain') return 'rain';
  if (from === 'air') return 'fixed from the air';
  if (from === 'deeperSoil') return 'reached by deeper roots';
  return why === 'laid on' || why === 'dug in' ? why : 'compost and manure';
};

const wentOutBySink = {
  ammonia: 'lost to the air',
  leached: 'washed out',
  denitrified: 'lost from wet soil',
  harvested: 'picked',
  belowRoots: 'left below shallower roots',
} as const satisfies Partial<Record<Sink, WentOut>>;

/** The line of what went out that a flow is counted in; null for one that does not leave the bed. */
export const wentOutOf = ({ from, to }: FlowKind): WentOut | null => {
  if (!isSink(to)) return null;
  if (to === 'removed') return from === 'crop' ? 'cleared away' : 'raked off';
  return wentOutBySink[to];
};

const movedBetween: Partial<Record<`${Holding} > ${Holding}`, Moved>> = {
  'in the soil itself > ready in the soil': 'released by the soil',
  'in young humus > ready in the soil': 'released by last year’s humus',
  'in compost > ready in the soil': 'released by compost',
  'in compost > in the cover': 'released by compost',
  'rotting in the soil > ready in the soil': 'released by what was dug in',
  'in the cover > ready in the soil': 'washed in from the cover',
  'ready in the soil > in the cover': 'held back by browns',
  'ready in the soil > rotting in the soil': 'held back by browns',
  'ready in the soil > in the crop': 'taken up by the crop',
  'in the cover > rotting in the soil': 'cover dug in',
  'in the crop > in the cover': 'left by the crop',
  'in the crop > rotting in the soil': 'left by the crop',
  'in the cover > in young humus': 'turned to humus at the season’s end',
  'rotting in the soil > in young humus': 'turned to humus at the season’s end',
  'in compost > in the soil itself': 'compost turned to soil',
};

const movedOf = (kind: FlowKind): Moved | null => {
  if (isSource(kind.from) || isSink(kind.to)) return null;
  const from = holdingOf(kind.from);
  const to = holdingOf(kind.to);
  if (from === to) return null;
  if (kind.why === 'cover dug in') return 'cover dug in';
  const moved = movedBetween[`${from} > ${to}`];
  if (moved === undefined)
    throw new Error(`The ledger has no line for ${kind.from} -> ${kind.to} (${kind.why})`);
  return moved;
};

const supplyByMove: Partial<Record<Moved, SupplySource>> = {
  'released by the soil': 'soil',
  'released by last year’s humus': 'last year',
  'released by compost': 'compost',
  'released by what was dug in': 'dug in',
  'washed in from the cover': 'cover',
  'cover dug in': 'cover',
};

const supplyOf = (kind: FlowKind): SupplySource | null => {
  if (kind.from === 'air') return 'air';
  if (kind.from === 'rain') return 'rain';
  // nitrate that stood in the soil already, below what the season before could reach
  if (kind.from === 'deeperSoil') return 'soil';
  const intoReady = !isSink(kind.to) && holdingOf(kind.to) === 'ready in the soil';
  if (!intoReady) return null;
  // compost and meals bring a share that is ready at once
  if (kind.from === 'applied') return 'compost';
  const moved = movedOf(kind);
  return moved === null ? null : (supplyByMove[moved] ?? null);
};

type Grouped<Key extends string> = readonly (readonly [Key, readonly FlowIndex[]])[];

function group<Key extends string>(
  names: readonly Key[],
  keyOf: (kind: FlowKind) => Key | null,
): Grouped<Key> {
  const keys = flowKinds.map(keyOf);
  return names.map((name) => [name, keys.flatMap((key, index) => (key === name ? [index] : []))]);
}

const cameInGroups = group(cameInNames, cameInOf);
const wentOutGroups = group(wentOutNames, wentOutOf);
const movedGroups = group(movedNames, movedOf);
const supplyGroups = group(supplySources, supplyOf);

const flowsOf = <Key extends string>(
  groups: Grouped<Key>,
  ...keys: readonly Key[]
): readonly FlowIndex[] => groups.flatMap(([key, flows]) => (keys.includes(key) ? flows : []));
const takenFlows = flowsOf(movedGroups, 'taken up by the crop');
const heldBackFlows = flowsOf(movedGroups, 'held back by browns');
const lostFlows = flowsOf(
  wentOutGroups,
  'washed out',
  'lost from wet soil',
  'left below shallower roots',
);

export interface LedgerLine<Key extends string> {
  readonly key: Key;
  /** g N per m2 of bed */
  readonly gM2: number;
}

/** A bed's account over whole days, both ends included; everything in g N per m2 of bed. */
export interface BedLedger {
  readonly fromDay: DayNumber;
  readonly toDay: DayNumber;
  /** on hand before `fromDay`; the soil itself counts as 0, its change stands in `onHand` */
  readonly opening: readonly LedgerLine<Holding>[];
  readonly cameIn: readonly LedgerLine<CameIn>[];
  readonly wentOut: readonly LedgerLine<WentOut>[];
  /** on hand after `toDay`; 'in the soil itself' is its change, below 0 where the soil gave */
  readonly onHand: readonly LedgerLine<Holding>[];
  /** from one place in the bed to another: part of no total */
  readonly moved: readonly LedgerLine<Moved>[];
  readonly totals: {
    readonly opening: number;
    readonly cameIn: number;
    readonly wentOut: number;
    readonly onHand: number;
  };
  /** opening + came in - went out - on hand; a sound run keeps it under 1e-9 */
  readonly difference: number;
}

/** Sum of a series from one index to another, both included. */
export const sumOver = (series: ArrayLike<number>, first: number, last: number): number => {
  let sum = 0;
  for (let index = first; index <= last; index += 1) sum += series[index] ?? 0;
  return sum;
};

const flowSum = (
  result: SeasonResult,
  flows: readonly FlowIndex[],
  first: number,
  last: number,
): number => flows.reduce((sum, index) => sum + sumOver(result.flows[index] ?? [], first, last), 0);

const poolBefore = (result: SeasonResult, pool: Pool, index: number): number =>
  index === 0 ? result.start[pool] : (result.pools[pool][index - 1] ?? 0);

const total = (lines: readonly LedgerLine<string>[]): number =>
  lines.reduce((sum, line) => sum + line.gM2, 0);

/**
 * Every gram of a bed between two days: what was there, what came in, what went out, what is on
 * hand. Nothing is made to fit: `difference` is what the four totals leave over.
 *
 * @param fromDay,toDay first and last day, both included; days of the run
 * @returns g N per m2 of bed
 * @throws RangeError when a day lies outside the run or `toDay` before `fromDay`
 * @validity any run; every flow of `flowKinds` counts exactly once
 * @source conservation of mass alone
 */
export function bedLedger(result: SeasonResult, fromDay: DayNumber, toDay: DayNumber): BedLedger {
  const first = fromDay - result.firstDay;
  const last = toDay - result.firstDay;
  if (first < 0 || last >= result.days || last < first)
    throw new RangeError(`Days ${fromDay} to ${toDay} are not days of this run`);

  const sumLines = <Key extends string>(groups: Grouped<Key>): LedgerLine<Key>[] =>
    groups.map(([key, flows]) => ({ key, gM2: flowSum(result, flows, first, last) }));
  const held = (key: Holding, index: number): number =>
    holdings[key].reduce((sum, pool) => sum + poolBefore(result, pool, index), 0);

  const isStore = (key: Holding): boolean => key === 'in the soil itself';
  const opening = holdingNames
    .filter((key) => !isStore(key))
    .map((key) => ({ key, gM2: held(key, first) }));
  const onHand = holdingNames.map((key) => ({
    key,
    gM2: held(key, last + 1) - (isStore(key) ? held(key, first) : 0),
  }));
  const cameIn = sumLines(cameInGroups);
  const wentOut = sumLines(wentOutGroups);
  const totals = {
    opening: total(opening),
    cameIn: total(cameIn),
    wentOut: total(wentOut),
    onHand: total(onHand),
  };
  return {
    fromDay,
    toDay,
    opening,
    cameIn,
    wentOut,
    onHand,
    moved: sumLines(movedGroups),
    totals,
    difference: totals.opening + totals.cameIn - totals.wentOut - totals.onHand,
  };
}

export interface FlowTotal {
  readonly from: Place;
  readonly to: Place;
  readonly why: string;
  readonly gM2: number;
}

/** Each flow of `flowKinds`, in its order, summed over the whole run [g N per m2 of bed]. */
export function flowTotals(result: SeasonResult): readonly FlowTotal[] {
  return flowKinds.map((kind, index) => ({
    from: kind.from,
    to: kind.to,
    why: kind.why,
    gM2: sumOver(result.flows[index] ?? [], 0, result.days - 1),
  }));
}

/** What reaches the crop's ground each day and what leaves it, g N per m2 of bed and day. */
export interface Supply {
  readonly bySource: Readonly<Record<SupplySource, Float64Array>>;
  /** taken up from the soil, luxury included */
  readonly taken: Float64Array;
  /** drawn from the soil by rotting browns; it comes back later as 'dug in' or 'cover' */
  readonly heldBack: Float64Array;
  /** washed out below the roots, lost to the air from wet soil, or left below shallower roots */
  readonly lost: Float64Array;
}

/**
 * A bed's supply by day and source. The bands are the flows into the ready nitrogen of the soil,
 * and for legumes into the crop, so that on every day
 *
 *     ready + Σ bands except air = ready' + taken + held back + lost
 *
 * @returns daily g N per m2 of bed from `result.firstDay`
 * @validity any run
 * @source mass balance (a definition)
 */
export function supplyBySource(result: SeasonResult): Supply {
  const daily = (flows: readonly FlowIndex[]): Float64Array => {
    const series = new Float64Array(result.days);
    for (const index of flows) {
      const flow = result.flows[index];
      for (let day = 0; day < result.days; day += 1)
        series[day] = (series[day] ?? 0) + (flow?.[day] ?? 0);
    }
    return series;
  };
  return {
    bySource: Object.fromEntries(
      supplyGroups.map(([source, flows]) => [source, daily(flows)]),
    ) as Record<SupplySource, Float64Array>,
    taken: daily(takenFlows),
    heldBack: daily(heldBackFlows),
    lost: daily(lostFlows),
  };
}
