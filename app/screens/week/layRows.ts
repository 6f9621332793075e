import type { ReadingContext } from '../../amounts/amount';
import { readAmount } from '../../amounts/readAmount';
import { readShare } from '../../amounts/readShare';
import type { Trouble } from '../../controls/Field';
import { dayOf } from '../../core/days';
import { mowingAccount } from '../../document/accounts';
import { massOf } from '../../document/layerMass';
import { materialFrom, mowingOf } from '../../document/materialValues';
import type {
  Amount,
  Application,
  Bed,
  Garden,
  Mowing,
  Quantity,
  Wetness,
} from '../../document/schema';
import type { LayingDraft, LayingPart } from '../../store/contract';
import { amountFailureSentence } from '../../words/messages';
import { quantityOfPart } from './partOfMowing';

/** One line of a laying as it is being typed. */
export interface LayRow {
  readonly key: string;
  /** "mowing:ID", "stock:ID" or "elsewhere:MATERIAL" */
  readonly what: string;
  readonly bedId: string;
  readonly amount: string;
  /** null: as the days since the mowing suggest */
  readonly condition: Application['condition'] | null;
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
  condition: null,
  placement: 'laid',
  brown: '',
  brownAmount: '',
});

/** Days that clippings in the shade stay limp before they rustle; ours, and only a first guess. */
const limpDays = 3;

/**
 * How clippings most likely are on the day they are laid: just cut on the day itself, limp for the
 * next days, crisp later on, except that a soaked heap of them does not dry.
 */
export function likelyCondition(
  mowing: Pick<Mowing, 'date' | 'wetness'>,
  laidOn: string,
): Application['condition'] {
  const age = dayOf(laidOn) - dayOf(mowing.date);
  if (age <= 0) return 'just cut';
  return age <= limpDays || mowing.wetness === 'soaked' ? 'limp' : 'crisp';
}

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
  /** as chosen, else as its days since the mowing suggest */
  readonly condition: Application['condition'];
  /** what a bare number or a part was taken for, else null */
  readonly takenFor: Quantity | null;
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

/** Dry matter of one source that other lines of the form take. */
export type TakenElsewhere = (what: string) => number;

/** "Half of it", "the rest": so much of the mowing's dry matter, in the measure it was logged in. */
function sharePart(
  garden: Garden,
  bed: Bed | null,
  from: Application['from'],
  text: string,
  condition: Application['condition'],
  taken: number,
): LayingPart | null {
  const share = readShare(text);
  const mowing = mowingOf(garden, from);
  if (!share || !mowing) return null;
  const left = mowingAccount(garden, mowing).leftDryKilograms;
  const wanted = share.share * Math.max(0, share.of === 'all' ? left : left - taken);
  const part = (quantity: Quantity): LayingPart => ({
    from,
    amount: { text: text.trim(), quantity, certainty: 'plain' },
    condition,
    wetness: mowing.wetness,
  });
  const whole = part(quantityOfPart(garden, mowing, wanted));
  // limp clippings fill fewer bags than they did: all of it is all of its dry matter
  const dry = bed ? lyingOf(garden, bed, whole).dryKilograms : 0;
  return dry > 0 ? part(quantityOfPart(garden, mowing, (wanted * wanted) / dry)) : whole;
}

function partOf(
  garden: Garden,
  context: ReadingContext,
  bed: Bed | null,
  what: string,
  text: string,
  condition: Application['condition'],
  taken: TakenElsewhere,
): { part: LayingPart; takenFor: Quantity | null } | { trouble: Trouble } {
  const from = sourceOfRow(what);
  if (!from) return { trouble: { sentence: 'Say first what is laid.' } };
  const share = sharePart(garden, bed, from, text, condition, taken(what));
  if (share) {
    const { quantity } = share.amount;
    return isNothing(quantity)
      ? { trouble: { sentence: 'Nothing of it is left. Lay less on the other beds.' } }
      : { part: share, takenFor: quantity };
  }
  const reading = readAmount(text, 'layer', { ...context, bareNumber: true });
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
    takenFor: isBareNumber(text) ? amount.quantity : null,
    part: {
      from,
      amount,
      condition: reading.value.condition ?? condition,
      // a mowing has its own wetness; only what comes from elsewhere is asked by the line
      wetness: mowing ? usual : (reading.value.wetness ?? usual),
    },
  };
}

/** "3", "1 1/2", "2,5": a number and no word beside it. */
export const isBareNumber = (text: string): boolean => /^[\d\s./,½¼¾⅓⅔]+$/.test(text.trim());

const isNothing = (quantity: Quantity): boolean =>
  (quantity.kind === 'containers' && quantity.count < 1e-6) ||
  (quantity.kind === 'volume' && quantity.litres < 1e-6) ||
  (quantity.kind === 'mass' && quantity.kilograms < 1e-6);

const nothingTaken: TakenElsewhere = () => 0;

/** Reads a row: the laying it means, what it comes to, or what each field needs. */
export function readRow(
  garden: Garden,
  context: ReadingContext,
  row: LayRow,
  date: string,
  taken: TakenElsewhere = nothingTaken,
): ReadRow {
  const bed = garden.beds.find(({ id }) => id === row.bedId) ?? null;
  const from = sourceOfRow(row.what);
  const mowing = from && mowingOf(garden, from);
  const condition = row.condition ?? (mowing ? likelyCondition(mowing, date) : 'just cut');
  const isBlank = row.bedId === '' && row.amount.trim() === '' && row.brownAmount.trim() === '';
  if (isBlank)
    return {
      row,
      condition,
      takenFor: null,
      bed,
      draft: null,
      main: null,
      brown: null,
      troubles: {},
      isBlank: true,
    };
  const main = partOf(garden, context, bed, row.what, row.amount, condition, taken);
  const brown =
    row.brown === ''
      ? null
      : partOf(garden, context, bed, row.brown, row.brownAmount, 'crisp', taken);
  const takenFor = 'part' in main ? main.takenFor : null;
  const troubles = {
    ...(bed ? {} : { bed: { sentence: 'Choose the bed it goes on.' } }),
    ...('trouble' in main ? { amount: main.trouble } : {}),
    ...(brown && 'trouble' in brown ? { brown: brown.trouble } : {}),
  };
  if (!bed || 'trouble' in main || (brown && 'trouble' in brown))
    return {
      row,
      condition,
      takenFor,
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
    condition,
    takenFor,
    bed,
    draft: { bedId: bed.id, date, placement: row.placement, parts, passedStops: [] },
    main: lyingOf(garden, bed, main.part),
    brown: brown ? lyingOf(garden, bed, brown.part) : null,
    troubles: {},
    isBlank,
  };
}

/** Reads all lines of a form; "the rest" is what the other lines leave. */
export function readRows(
  garden: Garden,
  context: ReadingContext,
  rows: readonly LayRow[],
  date: string,
): readonly ReadRow[] {
  const isRest = (row: LayRow): boolean => readShare(row.amount)?.of === 'the rest';
  const plain = rows.map((row) => (isRest(row) ? null : readRow(garden, context, row, date)));
  const done: ReadRow[] = [];
  rows.forEach((row, index) => {
    const others = [...plain.flatMap((one) => one ?? []), ...done.filter((one) => isRest(one.row))];
    done.push(plain[index] ?? readRow(garden, context, row, date, (what) => takenBy(others, what)));
  });
  return done;
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
