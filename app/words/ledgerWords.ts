import type { CameIn, Holding, Moved, WentOut } from '../core/season/ledger';

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

/** Short names for the drawing, where a line has little room. */
export const soilGaveWords = 'given by the soil itself';
export const soilKeptWords = 'added to the soil itself';

/** What is left over when the two sides are compared. */
export function balanceWords(difference: number): string {
  const size = Math.abs(difference);
  return size < 1e-9
    ? 'Both sides agree to less than a billionth of a gram.'
    : `The two sides differ by ${size.toPrecision(2)} g/m²: something in the sums is wrong.`;
}
