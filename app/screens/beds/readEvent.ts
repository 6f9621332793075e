import type { ReadingContext } from '../../amounts/amount';
import { readMeasure, readWater, waterMillimetres } from '../../amounts/readMeasure';
import type { Trouble } from '../../controls/Field';
import type { Bed, GardenEvent } from '../../document/schema';
import type { New } from '../../store/contract';
import { amountFailureSentence } from '../../words/messages';

/** The fields of the event dialog as they stand; each kind uses its own. */
export interface EventEntry {
  readonly date: string;
  readonly amount: string;
  readonly plantingId: string;
  readonly nitrate: string;
  readonly organicMatter: string;
  readonly depthCentimetres: number;
  readonly share: number;
}

export interface ReadEvent {
  readonly event: New<GardenEvent> | null;
  readonly troubles: {
    readonly amount?: Trouble;
    readonly nitrate?: Trouble;
    readonly organicMatter?: Trouble;
  };
}

/** A number typed alone; null when empty, NaN when it cannot be read. */
function plainNumber(text: string): number | null {
  const tidy = text
    .trim()
    .replace(/(ppm|mg\/kg|%)$/i, '')
    .trim()
    .replace(',', '.');
  if (tidy === '') return null;
  return /^\d+(\.\d+)?$/.test(tidy) ? Number(tidy) : Number.NaN;
}

function readTest(entry: EventEntry, bed: Bed): ReadEvent {
  const nitrate = plainNumber(entry.nitrate);
  const organicMatter = plainNumber(entry.organicMatter);
  if (nitrate === null && organicMatter === null)
    return {
      event: null,
      troubles: { nitrate: { sentence: 'Give at least one of the two numbers.' } },
    };
  const nitrateIsWrong = nitrate !== null && !(nitrate >= 0 && nitrate <= 500);
  const matterIsWrong = organicMatter !== null && !(organicMatter >= 0.1 && organicMatter <= 60);
  if (nitrateIsWrong || matterIsWrong)
    return {
      event: null,
      troubles: {
        ...(nitrateIsWrong
          ? {
              nitrate: {
                sentence:
                  'Nitrate-N is a number from 0 to 500. If the report says nitrate (NO3), divide it by 4.43.',
              },
            }
          : {}),
        ...(matterIsWrong
          ? { organicMatter: { sentence: 'Organic matter is a number from 0.1 to 60 per cent.' } }
          : {}),
      },
    };
  return {
    troubles: {},
    event: {
      kind: 'soil test',
      date: entry.date,
      bedId: bed.id,
      nitrateMgPerKg: nitrate,
      organicMatterPercent: organicMatter,
      depthCentimetres: entry.depthCentimetres,
    },
  };
}

/** Reads the dialog: the event it means, or what a field needs. */
export function readEvent(
  kind: GardenEvent['kind'],
  entry: EventEntry,
  bed: Bed,
  context: ReadingContext,
): ReadEvent {
  const { date } = entry;
  const bare = { ...context, bareNumber: true };
  switch (kind) {
    case 'water': {
      const reading = readWater(entry.amount, bare);
      if (!reading.ok)
        return {
          event: null,
          troubles: {
            amount: {
              sentence: amountFailureSentence(reading.error),
              suggestion: reading.error.suggestion,
            },
          },
        };
      const millimetres = waterMillimetres(reading.value.quantity, bed.areaM2, context.containers);
      return millimetres === null
        ? { event: null, troubles: { amount: { sentence: 'That container is not known here.' } } }
        : { troubles: {}, event: { kind, date, bedId: bed.id, millimetres } };
    }
    case 'rain gauge':
    case 'harvest': {
      const reading = readMeasure(entry.amount, kind === 'harvest' ? 'weight' : 'rain', bare);
      if (!reading.ok)
        return {
          event: null,
          troubles: {
            amount: {
              sentence: amountFailureSentence(reading.error),
              suggestion: reading.error.suggestion,
            },
          },
        };
      const { value } = reading.value;
      return {
        troubles: {},
        event:
          kind === 'harvest'
            ? { kind, date, bedId: bed.id, plantingId: entry.plantingId, kilograms: value }
            : { kind, date, millimetres: value },
      };
    }
    case 'soil test':
      return readTest(entry, bed);
    case 'rake off':
    case 'dig cover in':
      return { troubles: {}, event: { kind, date, bedId: bed.id, share: entry.share } };
  }
}
