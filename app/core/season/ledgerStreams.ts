import type { DayNumber } from '../days';
import { flowKinds, type FlowKind } from './flows';
import {
  bedLedger,
  cameInOf,
  holdingNames,
  holdingOf,
  sumOver,
  wentOutOf,
  type BedLedger,
  type CameIn,
  type Holding,
  type WentOut,
} from './ledger';
import type { SeasonResult } from './result';

/** One way that nitrogen took over the days of an account: all flows with the same two ends, added up. */
export interface LedgerStream {
  readonly from: CameIn | Holding;
  readonly to: Holding | WentOut;
  /** g N per m2 of bed, above 0 */
  readonly gM2: number;
}

/** One place in the bed over the days of an account; `opening + in = out + end` [g N per m2 of bed]. */
export interface LedgerPlace {
  readonly holding: Holding;
  /** on hand before the first day; of the soil itself what it gave on balance, for its store is shown as a change */
  readonly opening: number;
  readonly cameIn: number;
  readonly wentOut: number;
  /** on hand after the last day; of the soil itself what it gained on balance */
  readonly end: number;
}

/** A bed's account with the way between its lines: from what came in, place by place, to what went out. */
export interface LedgerWay {
  readonly ledger: BedLedger;
  readonly streams: readonly LedgerStream[];
  readonly places: readonly LedgerPlace[];
}

type Ends = Pick<LedgerStream, 'from' | 'to'>;

const endsOf = (kind: FlowKind): Ends => {
  const into = cameInOf(kind);
  const outOf = wentOutOf(kind);
  return { from: into ?? holdingOf(kind.from), to: outOf ?? holdingOf(kind.to) };
};

/** by index of `flowKinds`; null where a flow stays within one place */
const ends: readonly (Ends | null)[] = flowKinds.map((kind) => {
  const found = endsOf(kind);
  return found.from === found.to ? null : found;
});

/**
 * The way of a bed's nitrogen between two days. Places and streams are summed each for itself, from
 * the pools and from the flows, and nothing is made to fit: that they agree at every place is a law
 * of the run, held by a test.
 *
 * @param fromDay,toDay first and last day, both included
 * @returns g N per m2 of bed; streams of nothing are left out
 * @throws RangeError when a day lies outside the run or `toDay` before `fromDay`
 * @validity any run
 * @source conservation of mass alone
 */
export function ledgerWay(result: SeasonResult, fromDay: DayNumber, toDay: DayNumber): LedgerWay {
  const ledger = bedLedger(result, fromDay, toDay);
  const first = fromDay - result.firstDay;
  const last = toDay - result.firstDay;
  const sums = new Map<string, LedgerStream>();
  ends.forEach((way, index) => {
    if (way === null) return;
    const key = `${way.from} > ${way.to}`;
    const gM2 = sumOver(result.flows[index] ?? [], first, last);
    sums.set(key, { ...way, gM2: (sums.get(key)?.gM2 ?? 0) + gM2 });
  });
  const streams = [...sums.values()].filter(({ gM2 }) => gM2 > 0);
  const at = (lines: readonly { readonly key: Holding; readonly gM2: number }[], name: Holding) =>
    lines.find(({ key }) => key === name)?.gM2 ?? 0;
  const places = holdingNames.map((holding): LedgerPlace => {
    const held = at(ledger.onHand, holding);
    const isStore = holding === 'in the soil itself';
    const sum = (end: 'from' | 'to') =>
      streams.reduce((all, stream) => all + (stream[end] === holding ? stream.gM2 : 0), 0);
    return {
      holding,
      opening: isStore ? Math.max(0, -held) : at(ledger.opening, holding),
      cameIn: sum('to'),
      wentOut: sum('from'),
      end: isStore ? Math.max(0, held) : held,
    };
  });
  return { ledger, streams, places };
}
