import type {
  HoldingFormula,
  IngredientName,
  MowingHolding,
  OwnName,
} from '../../document/mowingHolds';
import { numberText } from '../../amounts/amountText';
import { toShown, type ShownUnit } from '../../core/shownUnit';
import { CitedRows } from '../CitedRows';
import { useShown } from '../shown';

const formulas: Readonly<Record<HoldingFormula, string>> = {
  'by volume':
    'dry weight = volume × weight of a litre × (1 − share of water when dry to the touch)',
  'by weighed container':
    'dry weight = volume × weight of the weighed one ÷ what it holds × (1 − its share of water)',
  'by weight': 'dry weight = weight × (1 − share of water)',
  'by area mown': 'dry weight = area × height taken off × dry weight of each cm on a m²',
};

const rowNames: Readonly<Record<IngredientName, string>> = {
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

/** The sum behind a mowing's figures: formula, what you gave, and the cited numbers. */
export function HoldingWhy({ holding }: { readonly holding: MowingHolding }) {
  const { units } = useShown();
  const own: Readonly<Record<OwnName, (value: number) => string>> = {
    litres: (value) => `Volume: ${given(value, units.volume)}`,
    kilograms: (value) => `Weight you gave: ${given(value, units.mass)}`,
    count: (value) => `How many: ${value}`,
    area: (value) => `Area mown: ${given(value, units.area)}`,
    height: (value) => `Taken off: ${given(value, units.depth)}`,
    'weighed kilograms': (value) => `The weighed one: ${given(value, units.mass)}`,
    'container litres': (value) => `It holds: ${given(value, units.volume)}`,
  };
  return (
    <>
      <p>
        {formulas[holding.formula]}; weight = dry weight ÷ (1 − share of water); nitrogen = dry
        weight × its share of nitrogen. The ranges come from 200 draws of the numbers below.
      </p>
      <ul>
        {holding.ingredients.map(
          (ingredient) =>
            ingredient.kind === 'own' && (
              <li key={ingredient.name}>{own[ingredient.name](ingredient.value)} (yours)</li>
            ),
        )}
      </ul>
      <CitedRows
        rows={holding.ingredients.flatMap((ingredient) =>
          ingredient.kind === 'row'
            ? [{ name: rowNames[ingredient.name], row: ingredient.row }]
            : [],
        )}
      />
    </>
  );
}
