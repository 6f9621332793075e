import { cropName } from '../../document/cropValues';
import { bedsBefore, bedOn } from '../../document/bedPast';
import { materialFrom } from '../../document/materialValues';
import type { Bed, Garden } from '../../document/schema';
import type { ReadingContext } from '../../amounts/amount';
import { amountWords } from '../amountWords';
import { stuffName } from '../beds/chartData';
import { eventWords } from '../beds/eventWords';
import { placementWords } from '../choices';
import { lyingOf } from '../week/layRows';
import type { Shown } from '../shown';

export interface SheetLine {
  readonly id: string;
  readonly date: string;
  readonly words: string;
}

/** A log as it fits on paper: the latest lines, earliest first, and how many more there are. */
export interface SheetLog {
  readonly lines: readonly SheetLine[];
  readonly more: number;
}

/** So many of each fit beside the account and room for notes on one sheet of either paper. */
const most = { layers: 9, plantings: 5, found: 5 } as const;

const lastOf = (lines: readonly SheetLine[], count: number): SheetLog => ({
  lines: [...lines].sort((one, other) => (one.date < other.date ? -1 : 1)).slice(-count),
  more: Math.max(0, lines.length - count),
});

/** What was laid, planted and found on a bed's ground between two days, both included. */
export function sheetLog(
  garden: Garden,
  bed: Bed,
  from: string,
  to: string,
  shown: Shown,
  context: ReadingContext,
): { readonly layers: SheetLog; readonly plantings: SheetLog; readonly found: SheetLog } {
  const beds = new Map([bed, ...bedsBefore(garden, bed)].map((one) => [one.id, one] as const));
  const isIn = (date: string): boolean => date >= from && date <= to;
  const layers = garden.applications.flatMap((layer): SheetLine[] => {
    const on = beds.get(layer.bedId);
    if (!on || !isIn(layer.date)) return [];
    const { nitrogenGramsPerM2 } = lyingOf(garden, bedOn(on, layer.date), layer);
    return [
      {
        id: layer.id,
        date: layer.date,
        words: `${stuffName(materialFrom(garden, layer.from))}, ${amountWords(layer.amount, garden, context, shown)}, ${placementWords[layer.placement]}: ${shown.estimate(nitrogenGramsPerM2, shown.units.nitrogenPerArea)}`,
      },
    ];
  });
  const plantings = garden.plantings.flatMap((planting): SheetLine[] =>
    beds.has(planting.bedId) &&
    planting.started <= to &&
    (planting.cleared === null || planting.cleared >= from) &&
    !garden.plantings.some(({ continues }) => continues?.plantingId === planting.id)
      ? [
          {
            id: planting.id,
            date: planting.started,
            words: `${cropName(garden, planting.cropId)}, ${planting.how}${planting.cleared ? `, cleared ${shown.dayWord(planting.cleared)}` : ''}`,
          },
        ]
      : [],
  );
  const found = garden.events.flatMap((event): SheetLine[] =>
    'bedId' in event &&
    beds.has(event.bedId) &&
    isIn(event.date) &&
    event.kind !== 'water' &&
    event.kind !== 'nothing laid'
      ? [{ id: event.id, date: event.date, words: eventWords[event.kind].line(event, shown) }]
      : [],
  );
  return {
    layers: lastOf(layers, most.layers),
    plantings: lastOf(plantings, most.plantings),
    found: lastOf(found, most.found),
  };
}
