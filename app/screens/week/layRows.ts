import type { ReadingContext } from '../../amounts/amount';
import { readAmount } from '../../amounts/readAmount';
import type { Trouble } from '../../controls/Field';
import { massOf } from '../../document/layerMass';
import { materialFrom, mowingOf } from '../../document/materialValues';
import type { Amount, Application, Bed, Garden, Wetness } from '../../document/schema';
import type { LayingDraft, LayingPart } from '../../store/contract';
import { amountFailureSentence } from '../../words/messages';

/** One line of a laying as it is being typed. */
export interface LayRow {
  readonly key: string;
  /** "mowing:ID", "stock:ID" or "elsewhere:MATERIAL" */
  readonly what: string;
  readonly bedId: string;
  readonly amount: string;
  readonly condition: Application['condition'];
  readonly placement: Application['placement'];
  /** what is laid with it, in the same spelling as `what`; empty for nothing */
  readonly brown: string;
  readonly brownAmount: string;
}

let rowCount = 0;
export const newRow = (what: string, bedId = ''): LayRow => ({
  key: `row ${(rowCount += 1)}`,
  what,
  bedId,
  amount: '',
  condition: 'just cut',
  placement: 'laid',
  brown: '',
  brownAmount: '',
});

/** The source a row names, as the garden writes it; null for a row that names nothing. */
export function sourceOfRow(what: string): Application['from'] | null {
  const [kind, ...rest] = what.split(':');
  const id = rest.join(':');
  if (id === '') return null;
  if (kind === 'mowing') return { source: 'mowing', mowingId: id };
  if (kind === 'stock') return { source: 'stock', stockId: id };
  if (kind === 'elsewhere') return { source: 'elsewhere', materialId: id };
  return null;
}

/** What one material of a row comes to on its bed. */
export interface Lying {
  readonly dryKilograms: number;
  readonly freshKilograms: number;
  /** as laid, before it settles */
  readonly millimetres: number;
  /** per m2 of bed */
  readonly nitrogenGramsPerM2: number;
}

export interface ReadRow {
  readonly row: LayRow;
  readonly bed: Bed | null;
  readonly draft: LayingDraft | null;
  readonly main: Lying | null;
  readonly brown: Lying | null;
  readonly troubles: {
    readonly bed?: Trouble;
    readonly amount?: Trouble;
    readonly brown?: Trouble;
  };
  /** nothing was typed yet: no trouble, no draft */
  readonly isBlank: boolean;
}

export function lyingOf(
  garden: Garden,
  bed: Bed,
  part: Pick<LayingPart, 'from' | 'amount' | 'condition' | 'wetness'>,
): Lying {
  const material = materialFrom(garden, part.from);
  const mass = massOf(garden, part.amount.quantity, material, part, bed.areaM2);
  return {
    dryKilograms: mass.dryKilograms,
    freshKilograms: mass.freshKilograms,
    millimetres: mass.litres / bed.areaM2,
    nitrogenGramsPerM2: (mass.dryKilograms * 1000 * material.nitrogen) / bed.areaM2,
  };
}

function partOf(
  garden: Garden,
  context: ReadingContext,
  what: string,
  text: string,
  condition: Application['condition'],
): { part: LayingPart } | { trouble: Trouble } {
  const from = sourceOfRow(what);
  if (!from) return { trouble: { sentence: 'Say first what is laid.' } };
  const reading = readAmount(text, 'layer', context);
  if (!reading.ok)
    return {
      trouble: {
        sentence: amountFailureSentence(reading.error),
        suggestion: reading.error.suggestion,
      },
    };
  const mowing = mowingOf(garden, from);
  const usual: Wetness = mowing?.wetness ?? 'dry';
  const amount: Amount = reading.value.amount;
  return {
    part: {
      from,
      amount,
      condition: reading.value.condition ?? condition,
      // a mowing has its own wetness; only what comes from elsewhere is asked by the line
      wetness: mowing ? usual : (reading.value.wetness ?? usual),
    },
  };
}

/** Reads a row: the laying it means, what it comes to, or what each field needs. */
export function readRow(
  garden: Garden,
  context: ReadingContext,
  row: LayRow,
  date: string,
): ReadRow {
  const bed = garden.beds.find(({ id }) => id === row.bedId) ?? null;
  const isBlank = row.bedId === '' && row.amount.trim() === '' && row.brownAmount.trim() === '';
  if (isBlank)
    return { row, bed, draft: null, main: null, brown: null, troubles: {}, isBlank: true };
  const main = partOf(garden, context, row.what, row.amount, row.condition);
  const brown =
    row.brown === '' ? null : partOf(garden, context, row.brown, row.brownAmount, 'crisp');
  const troubles = {
    ...(bed ? {} : { bed: { sentence: 'Choose the bed it goes on.' } }),
    ...('trouble' in main ? { amount: main.trouble } : {}),
    ...(brown && 'trouble' in brown ? { brown: brown.trouble } : {}),
  };
  if (!bed || 'trouble' in main || (brown && 'trouble' in brown))
    return {
      row,
      bed,
      draft: null,
      main: bed && 'part' in main ? lyingOf(garden, bed, main.part) : null,
      brown: bed && brown && 'part' in brown ? lyingOf(garden, bed, brown.part) : null,
      troubles,
      isBlank,
    };
  const parts = brown ? [main.part, brown.part] : [main.part];
  return {
    row,
    bed,
    draft: { bedId: bed.id, date, placement: row.placement, parts, passedStops: [] },
    main: lyingOf(garden, bed, main.part),
    brown: brown ? lyingOf(garden, bed, brown.part) : null,
    troubles: {},
    isBlank,
  };
}

/** Dry matter that rows take from one source, so that no more is laid than there is. */
export const takenBy = (rows: readonly ReadRow[], what: string): number =>
  rows.reduce(
    (sum, { row, main, brown }) =>
      sum +
      (row.what === what ? (main?.dryKilograms ?? 0) : 0) +
      (row.brown === what ? (brown?.dryKilograms ?? 0) : 0),
    0,
  );
