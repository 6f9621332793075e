import type { ReadingContext } from '../../amounts/amount';
import { readMeasure, readWater, waterMillimetres } from '../../amounts/readMeasure';
import { readNitrate } from '../../amounts/readNitrate';
import type { Trouble } from '../../controls/Field';
import { nitrateFromTest } from '../../core/soil/nitrateTest';
import type { Bed, GardenEvent } from '../../document/schema';
import type { New } from '../../store/contract';
import { amountFailureSentence } from '../../words/messages';
import { nitrateFailureSentence } from '../../words/nitrateWords';

/** What the event dialog can write down; a look at a bed has a dialog of its own, "nothing laid" needs none. */
export type PlainEventKind = PlainEvent['kind'];
export type PlainEvent = Exclude<GardenEvent, { kind: 'look and dig' | 'nothing laid' }>;

/** What a laboratory says of phosphorus and potassium, word for word. */
export interface LabMinerals {
  readonly extractant: string;
  readonly phosphorus: string;
  readonly phosphorusRating: string;
  readonly potassium: string;
  readonly potassiumRating: string;
}
export const noLabMinerals: LabMinerals = {
  extractant: '',
  phosphorus: '',
  phosphorusRating: '',
  potassium: '',
  potassiumRating: '',
};

/** The fields of the event dialog as they stand; each kind uses its own. */
export interface EventEntry {
  readonly date: string;
  readonly amount: string;
  readonly plantingId: string;
  readonly nitrate: string;
  readonly organicMatter: string;
  /** phosphorus, potassium and their ratings, in the laboratory's words */
  readonly minerals: LabMinerals;
  /** how deep the sample was taken, as typed */
  readonly depth: string;
  readonly share: number;
}

export interface ReadEvent {
  readonly event: New<GardenEvent> | null;
  readonly troubles: {
    readonly amount?: Trouble;
    readonly nitrate?: Trouble;
    readonly organicMatter?: Trouble;
    readonly depth?: Trouble;
    readonly extractant?: Trouble;
    readonly phosphorus?: Trouble;
    readonly potassium?: Trouble;
  };
}

/** A figure of a report without the unit that tells what it is of. */
const bareFigure = /^[<>~]?\s*\d[\d.,\s]*$/;

/** A percentage typed; null when empty, NaN when it cannot be read. */
function plainNumber(text: string): number | null {
  const tidy = text.trim().replace(/%$/, '').trim().replace(',', '.');
  if (tidy === '') return null;
  return /^\d+(\.\d+)?$/.test(tidy) ? Number(tidy) : Number.NaN;
}

function readTest(
  entry: EventEntry,
  bed: Bed,
  context: ReadingContext,
  bulkDensityKgPerL: number,
): ReadEvent {
  const troubles: {
    nitrate?: Trouble;
    organicMatter?: Trouble;
    depth?: Trouble;
    extractant?: Trouble;
    phosphorus?: Trouble;
    potassium?: Trouble;
  } = {};
  const printed = Object.entries(entry.minerals)
    .map(([key, text]) => [key, (text as string).trim()] as const)
    .filter(([, text]) => text !== '');
  const { extractant, phosphorusRating, potassiumRating } = Object.fromEntries(
    printed,
  ) as Partial<LabMinerals>;
  const isRated = phosphorusRating !== undefined || potassiumRating !== undefined;
  if (isRated && extractant === undefined)
    troubles.extractant = {
      sentence: 'A rating means nothing without its method. The report names it near the numbers.',
    };
  for (const mineral of ['phosphorus', 'potassium'] as const) {
    const figure = entry.minerals[mineral].trim();
    if (bareFigure.test(figure))
      troubles[mineral] = {
        sentence: `${figure} of what? Add the unit the report prints, such as ppm or mg/100 g.`,
      };
  }
  const hasMinerals = printed.some(([key]) => key !== 'extractant');
  const isBlank = entry.nitrate.trim() === '' && entry.organicMatter.trim() === '' && !hasMinerals;
  if (isBlank) troubles.nitrate = { sentence: 'Give at least one of the numbers.' };

  const depth = readMeasure(entry.depth, 'depth', context);
  if (!depth.ok)
    troubles.depth = {
      sentence: amountFailureSentence(depth.error),
      suggestion: depth.error.suggestion,
    };
  const organicMatter = plainNumber(entry.organicMatter);
  if (organicMatter !== null && !(organicMatter >= 0.1 && organicMatter <= 60))
    troubles.organicMatter = {
      sentence: 'Organic matter is a number from 0.1 to 60 per cent.',
      suggestion: '3',
    };
  const nitrate = entry.nitrate.trim() === '' ? null : readNitrate(entry.nitrate, 'mg/kg');
  if (nitrate && !nitrate.ok)
    troubles.nitrate = {
      sentence: nitrateFailureSentence(nitrate.error),
      suggestion: nitrate.error.suggestion,
    };
  if (Object.keys(troubles).length > 0 || !depth.ok || nitrate?.ok === false)
    return { event: null, troubles };

  const depthCentimetres = depth.value.value / 10;
  const reading = nitrate?.value ?? null;
  const isPlain = reading === null || (reading.unit === 'mg/kg' && reading.form === 'nitrogen');
  return {
    troubles: {},
    event: {
      kind: 'soil test',
      date: entry.date,
      bedId: bed.id,
      nitrateMgPerKg:
        reading === null
          ? null
          : nitrateFromTest(
              reading.value,
              reading.unit,
              depthCentimetres,
              bulkDensityKgPerL,
              reading.form,
            ),
      organicMatterPercent: organicMatter,
      depthCentimetres,
      ...(isPlain ? {} : { nitrateText: reading.text }),
      ...(printed.length > 0
        ? { minerals: Object.fromEntries(printed) as Partial<LabMinerals> }
        : {}),
    },
  };
}

/**
 * Reads the dialog: the event it means, or what a field needs.
 * @param bulkDensityKgPerL of the bed's own soil, for tests given for an area
 */
export function readEvent(
  kind: PlainEventKind,
  entry: EventEntry,
  bed: Bed,
  context: ReadingContext,
  bulkDensityKgPerL: number,
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
      return readTest(entry, bed, context, bulkDensityKgPerL);
    case 'rake off':
    case 'dig cover in':
      return { troubles: {}, event: { kind, date, bedId: bed.id, share: entry.share } };
  }
}
