import type { CameIn, Holding, Moved, WentOut } from '../core/season/ledger';
import type { LedgerPlace, LedgerStream } from '../core/season/ledgerStreams';
import { accountAmount, amountWithUnit, percent } from './chartFormat';
import type { ChartUnits } from './chartUnits';

/** Lines of the ledger as a gardener reads them; the same names stand in its drawing. */
export const holdingWords: Readonly<Record<Holding, string>> = {
  // the season chart shows the top of it alone, as a laboratory would
  'ready in the soil': 'ready in the soil, as deep as roots go',
  'in the cover': 'in the cover',
  'rotting in the soil': 'rotting in the soil',
  'in compost': 'in compost, still to come',
  'in young humus': 'in last year’s humus',
  'in the crop': 'in the plants',
  'in the soil itself': 'the soil’s own store, more or less than at the start',
};

export const cameInWords: Readonly<Record<CameIn, string>> = {
  'laid on': 'laid on',
  'dug in': 'dug or hoed in',
  'compost and manure': 'compost and the like',
  rain: 'rain',
  'fixed from the air': 'fixed from the air',
  'reached by deeper roots': 'in deeper soil that this season’s roots reach',
};

export const wentOutWords: Readonly<Record<WentOut, string>> = {
  picked: 'picked',
  'cleared away': 'cleared away',
  'raked off': 'raked off',
  'lost to the air': 'lost to the air from the cover',
  'washed out': 'washed out below the roots',
  'lost from wet soil': 'lost to the air from wet soil',
  'left below shallower roots': 'in deeper soil that this season’s roots do not reach',
};

export const movedWords: Readonly<Record<Moved, string>> = {
  'released by the soil': 'released by the soil',
  'released by last year’s humus': 'released by last year’s humus',
  'released by compost': 'released by compost',
  'released by what was dug in': 'released by roots and what was dug in',
  'washed in from the cover': 'washed from the cover into the soil',
  'held back by browns': 'taken from the soil by rotting browns, to come back later',
  'taken up by the crop': 'taken up by the plants',
  'cover dug in': 'cover dug in',
  'left by the crop': 'roots and tops left on the bed',
  'turned to humus at the season’s end': 'turned to humus at the season’s end',
  'compost turned to soil': 'compost turned to soil',
};

/** What is left over when the two sides are compared. */
export function balanceWords(difference: number): string {
  const size = Math.abs(difference);
  return size < 1e-9
    ? 'Both sides come out the same: no gram is missing.'
    : `The two sides differ by ${size.toPrecision(2)} g/m²: something in the sums is wrong.`;
}

/** A place in the drawing, above its pool. */
export const placeHead = (holding: Holding): string => placeNames[holding];

const placeNames: Readonly<Record<Holding, string>> = {
  'ready in the soil': 'ready in the soil',
  'in the cover': 'the cover',
  'rotting in the soil': 'rotting in the soil',
  'in compost': 'compost',
  'in young humus': 'last year’s humus',
  'in the crop': 'the plants',
  'in the soil itself': 'the soil’s own store',
};

/** Either end of a stream, in a list. */
export const endName = (end: LedgerStream['from'] | LedgerStream['to']): string =>
  end in placeNames
    ? placeNames[end as Holding]
    : end in springWords
      ? springWords[end as CameIn]
      : wentOutShort[end as WentOut];

/** Where streams spring at the left of the drawing, short. */
export const springWords: Readonly<Record<CameIn, string>> = {
  'laid on': 'laid on',
  'dug in': 'dug or hoed in',
  'compost and manure': 'compost and the like',
  rain: 'rain',
  'fixed from the air': 'fixed from the air',
  'reached by deeper roots': 'reached by deeper roots',
};

/** The same where what comes in goes into two places: each stream by its own name. */
export const springWordsInto = (from: CameIn, to: Holding | WentOut): string =>
  from === 'compost and manure' ? (compostInto[to] ?? springWords[from]) : springWords[from];

const compostInto: Partial<Record<Holding | WentOut, string>> = {
  'in compost': 'compost and the like, slow',
  'in the cover': 'compost and the like, quick',
  'ready in the soil': 'compost and the like, at once',
  'in the soil itself': 'compost and the like, lasting',
};

/** Where streams leave at the right, short. */
export const wentOutShort: Readonly<Record<WentOut, string>> = {
  picked: 'picked',
  'cleared away': 'cleared away',
  'raked off': 'raked off',
  'lost to the air': 'to the air, from the cover',
  'washed out': 'washed out',
  'lost from wet soil': 'to the air, from wet soil',
  'left below shallower roots': 'below what roots reach',
};

/** What turns back within the bed: where it goes under at the right, and springs again at the left. */
export const turnWords = {
  'held back': { under: 'held back by browns', again: 'held back by browns' },
  left: { under: 'roots and tops left', again: 'roots and tops left' },
} as const;

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** One stream of the drawing in a sentence; `all` is what there was at its upper end in that time. */
export function streamSentence(
  stream: LedgerStream,
  all: number,
  units: ChartUnits,
  allCameIn: number,
): string {
  const grams = amountWithUnit(stream.gM2, units.nitrogen);
  const { from, to } = stream;
  const share = (part: number): string => (part < 0.01 ? 'under 1 %' : percent(part));
  if (from in springWords)
    return `${capital(cameInWords[from as CameIn])}: ${grams}, into ${placeNames[to as Holding]}; ${share(stream.gM2 / allCameIn)} of all that came in.`;
  const had = `${share(stream.gM2 / all)} of what was there and came`;
  const source = placeNames[from as Holding];
  if (to in wentOutShort)
    return `${capital(wentOutWords[to as WentOut])}: ${grams}, from ${fromWords(source)}; ${had}.`;
  return `From ${fromWords(source)} to ${fromWords(placeNames[to as Holding])}: ${grams}, ${had}.`;
}

const fromWords = (place: string): string =>
  place === placeNames['ready in the soil']
    ? 'what is ready in the soil'
    : place === placeNames['rotting in the soil']
      ? 'what rots in the soil'
      : place;

/** One place of the drawing as a sum that goes up: there, came, went on, is there. */
export function placeSentence(place: LedgerPlace, units: ChartUnits): string {
  const grams = (gM2: number) => accountAmount(gM2, units.nitrogen);
  const name = capital(placeNames[place.holding]);
  if (place.holding === 'in the soil itself')
    return `${name}: ${grams(place.cameIn)} came, ${grams(place.wentOut)} went on; on balance it ${
      place.opening > place.end ? `gave ${grams(place.opening)}` : `gained ${grams(place.end)}`
    } ${units.nitrogen.short}.`;
  return `${name}: ${grams(place.opening)} there at the start + ${grams(place.cameIn)} came − ${grams(place.wentOut)} went on = ${grams(place.end)} ${units.nitrogen.short} at the end.`;
}

/** How the drawing is to be read; `thin` is the width that cannot be seen any more [g/m2]; letters stand where something turns back. */
export const wayHowToRead = (thin: number, units: ChartUnits, hasLetters: boolean): string =>
  `From left to right, every stream as wide as its grams; a dotted thread is less than ${amountWithUnit(thin, units.nitrogen)}. ` +
  'Rounded at the left of a place: there at the start. Rounded at its right: there at the end.' +
  (hasLetters ? ' What goes under at a letter springs again at the same letter.' : '');

/** The days an account can be told of. */
export const periodWords = {
  soFar: 'This season so far',
  whole: 'Whole season, with imagined days',
  earlier: (season: string): string => `Season ${season}`,
} as const;
