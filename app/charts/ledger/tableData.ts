import { textFromDay } from '../../core/days';
import type { LedgerWay } from '../../core/season/ledgerStreams';
import type { ChartUnits } from '../../words/chartUnits';
import { endName, placeHead } from '../../words/ledgerWords';
import type { TableData } from '../export/tableData';

/** Every stream of a ledger, and what each place held before and after, a row each. */
export function ledgerTable(
  { ledger, streams, places }: LedgerWay,
  areaM2: number,
  units: ChartUnits,
): TableData {
  const days = [textFromDay(ledger.fromDay), textFromDay(ledger.toDay)];
  const amounts = (gM2: number) => [
    gM2 * units.nitrogen.perInside,
    gM2 * areaM2 * units.nitrogenOnBed.perInside,
  ];
  return {
    head: [
      'first day',
      'last day',
      'from',
      'to',
      `nitrogen [${units.nitrogen.short}]`,
      `nitrogen on the bed [${units.nitrogenOnBed.short}]`,
    ],
    rows: [
      ...places.map((place) => [
        ...days,
        'there at the start',
        placeHead(place.holding),
        ...amounts(place.opening),
      ]),
      ...streams.map((stream) => [
        ...days,
        endName(stream.from),
        endName(stream.to),
        ...amounts(stream.gM2),
      ]),
      ...places.map((place) => [
        ...days,
        placeHead(place.holding),
        'there at the end',
        ...amounts(place.end),
      ]),
    ],
  };
}
