import { mowingHolds } from '../../document/mowingHolds';
import type { Garden, Mowing } from '../../document/schema';
import { rangeOdds, rangeWords } from '../../words/ranges';
import type { Why } from '../../words/why';
import type { Shown } from '../shown';
import { holdingFormulas, ingredientNames, ownFigure } from '../week/holdingTexts';
import { sharesOfMowing } from '../week/sharesOfMowing';
import { rowSource } from './sourcesOf';

/**
 * What a mowing weighs, or a part of it.
 *
 * @param partDryKilograms dry weight of the part; null for all of it
 */
export function mowingWeightWhy(
  garden: Garden,
  mowing: Mowing,
  shown: Shown,
  partDryKilograms: number | null = null,
): Why {
  const holding = mowingHolds(garden, mowing);
  const { mass } = shown.units;
  const { between } = rangeWords(holding.freshKilograms, mass);
  const sum = holdingFormulas[holding.formula];
  const whole = [
    ...holding.ingredients.flatMap((ingredient) =>
      ingredient.kind === 'own' ? [ownFigure(ingredient.name, ingredient.value, shown.units)] : [],
    ),
    ['All of it, dry', shown.estimate(holding.dryKilograms.typical, mass)],
    ['All of it, as wet as it was', shown.estimate(holding.freshKilograms.typical, mass)],
  ] as const;
  return {
    of: partDryKilograms === null ? 'What it weighs.' : 'What this part of it weighs.',
    formula: `${sum.charAt(0).toUpperCase()}${sum.slice(1)}; weight = dry weight ÷ (1 − share of water). A part weighs as much of that as it has of the dry weight.`,
    inputs:
      partDryKilograms === null
        ? [
            ...whole,
            ...sharesOfMowing(garden, mowing).map(
              (part) => [`Dry, ${part.words}`, shown.estimate(part.dryKilograms, mass)] as const,
            ),
          ]
        : [...whole, ['This part, dry', shown.estimate(partDryKilograms, mass)]],
    range:
      partDryKilograms !== null || between === null
        ? null
        : `${between} for all of it, ${rangeOdds}`,
    sources: holding.ingredients.flatMap((ingredient) =>
      ingredient.kind === 'row'
        ? [rowSource(ingredientNames[ingredient.name], ingredient.row)]
        : [],
    ),
  };
}
