import type { HoldingFormula, IngredientName, OwnName } from '../../document/mowingHolds';
import { numberText } from '../../amounts/amountText';
import type { UnitSet } from '../../amounts/unitSystem';
import { toShown, type ShownUnit } from '../../core/shownUnit';

/** The sums behind what a mowing weighs, by what was known of it. */
export const holdingFormulas: Readonly<Record<HoldingFormula, string>> = {
  'by volume':
    'dry weight = volume × weight of a litre × (1 − share of water when dry to the touch)',
  'by weighed container':
    'dry weight = volume × weight of the weighed one ÷ what it holds × (1 − its share of water)',
  'by weight': 'dry weight = weight × (1 − share of water)',
  'by area mown': 'dry weight = area × height taken off × dry weight of each cm on a m²',
};

export const ingredientNames: Readonly<Record<IngredientName, string>> = {
  density: 'Weight of loose clippings',
  'dry mass per cm': 'Dry weight of a cm of grass',
  water: 'Water in them, as wet as you said',
  'water when weighed': 'Water in the one that was weighed',
  nitrogen: 'Nitrogen, of dry weight',
  certainty: 'How far “about” may be off',
  fullness: 'How full one is against the weighed one',
};

/** What the person gave, as it was given: no rounding. */
const given = (inside: number, unit: ShownUnit): string =>
  `${numberText(toShown(inside, unit), unit.style === 'fraction')} ${unit.symbol}`;

/** A number the gardener gave: what it is, and as it was given. */
export function ownFigure(
  name: OwnName,
  value: number,
  units: UnitSet,
): readonly [words: string, value: string] {
  switch (name) {
    case 'litres':
      return ['Volume', given(value, units.volume)];
    case 'kilograms':
      return ['Weight you gave', given(value, units.mass)];
    case 'count':
      return ['How many', String(value)];
    case 'area':
      return ['Area mown', given(value, units.area)];
    case 'height':
      return ['Taken off', given(value, units.depth)];
    case 'weighed kilograms':
      return ['The weighed one', given(value, units.mass)];
    case 'container litres':
      return ['It holds', given(value, units.volume)];
  }
}
