import type { MowingHolding } from '../../document/mowingHolds';
import { CitedRows } from '../CitedRows';
import { useShown } from '../shown';
import { holdingFormulas, ingredientNames, ownFigure } from './holdingTexts';

/** The sum behind a mowing's figures: formula, what you gave, and the cited numbers. */
export function HoldingWhy({ holding }: { readonly holding: MowingHolding }) {
  const { units } = useShown();
  return (
    <>
      <p>
        {holdingFormulas[holding.formula]}; weight = dry weight ÷ (1 − share of water); nitrogen =
        dry weight × its share of nitrogen. The ranges come from 200 draws of the numbers below.
      </p>
      <ul>
        {holding.ingredients.map(
          (ingredient) =>
            ingredient.kind === 'own' && (
              <li key={ingredient.name}>
                {ownFigure(ingredient.name, ingredient.value, units).join(': ')} (yours)
              </li>
            ),
        )}
      </ul>
      <CitedRows
        rows={holding.ingredients.flatMap((ingredient) =>
          ingredient.kind === 'row'
            ? [{ name: ingredientNames[ingredient.name], row: ingredient.row }]
            : [],
        )}
      />
    </>
  );
}
