import type { LikelyRange } from '../core/lawn/clippings';
import { lotOfAmount } from './keptLots';
import { certaintyFactors, fullness } from '../tables/certainty';
import { dryMassPerCentimetre, moistureRow } from '../tables/lawns';
import type { Row } from '../tables/shapes';
import { lotInputOf, weighedContainerOf } from './layerMass';
import { clippingsOf, type MaterialValues } from './materialValues';
import type { Garden, Mowing } from './schema';

export type { LikelyRange } from '../core/lawn/clippings';

/** What went into a figure: a cited row, or a number the gardener gave. */
export type Ingredient =
  | { readonly kind: 'row'; readonly name: IngredientName; readonly row: Row }
  | { readonly kind: 'own'; readonly name: OwnName; readonly value: number };

export type IngredientName =
  | 'density'
  | 'dry mass per cm'
  | 'water'
  | 'water when weighed'
  | 'nitrogen'
  | 'certainty'
  | 'fullness';
export type OwnName =
  'litres' | 'kilograms' | 'count' | 'area' | 'height' | 'weighed kilograms' | 'container litres';

/** Which sum gave the dry matter. */
export type HoldingFormula = 'by volume' | 'by weighed container' | 'by weight' | 'by area mown';

export interface MowingHolding {
  readonly freshKilograms: LikelyRange;
  readonly dryKilograms: LikelyRange;
  readonly nitrogenGrams: LikelyRange;
  readonly formula: HoldingFormula;
  readonly ingredients: readonly Ingredient[];
}

/** Which sum it is, and the figures that are in it besides water and nitrogen. */
function formulaOf(
  garden: Garden,
  mowing: Mowing,
  material: MaterialValues,
): Pick<MowingHolding, 'formula' | 'ingredients'> {
  const { quantity } = mowing.amount;
  switch (quantity.kind) {
    case 'mass':
      return {
        formula: 'by weight',
        ingredients: [{ kind: 'own', name: 'kilograms', value: quantity.kilograms }],
      };
    case 'mown':
      return {
        formula: 'by area mown',
        ingredients: [
          { kind: 'own', name: 'area', value: quantity.areaM2 },
          { kind: 'own', name: 'height', value: quantity.heightMillimetres },
          { kind: 'row', name: 'dry mass per cm', row: dryMassPerCentimetre },
        ],
      };
    case 'depth':
      throw new Error('A mowing has no depth');
    case 'volume':
    case 'containers': {
      const counted =
        quantity.kind === 'containers'
          ? garden.containers.find(({ id }) => id === quantity.containerId)
          : undefined;
      const litres =
        quantity.kind === 'volume' ? quantity.litres : quantity.count * (counted?.litres ?? 0);
      const container = weighedContainerOf(garden, material, quantity);
      const weighed = container?.weighed;
      if (container && weighed) {
        return {
          formula: 'by weighed container',
          ingredients: [
            { kind: 'own', name: 'litres', value: litres },
            { kind: 'own', name: 'weighed kilograms', value: weighed.kilograms },
            { kind: 'own', name: 'container litres', value: container.litres },
            {
              kind: 'row',
              name: 'water when weighed',
              row: moistureRow(material.row, 'just cut', weighed.wetness),
            },
            ...(quantity.kind === 'containers'
              ? [{ kind: 'row' as const, name: 'fullness' as const, row: fullness }]
              : []),
          ],
        };
      }
      return {
        formula: 'by volume',
        ingredients: [
          { kind: 'own', name: 'litres', value: litres },
          { kind: 'row', name: 'density', row: material.row.densityKgPerM3 },
          { kind: 'row', name: 'water', row: material.row.moisturePercent },
        ],
      };
    }
  }
}

/**
 * What a mowing holds: weight as it came off, dry matter, nitrogen, each with the range it lies in
 * 8 times in 10, and what went into the sum. The sums and draws are those of `lotOf`.
 *
 * @returns kg, kg, g
 * @throws on a mowing that its garden could not hold
 */
export function mowingHolds(garden: Garden, mowing: Mowing): MowingHolding {
  const material = clippingsOf(garden, mowing);
  const handling = { condition: 'just cut', wetness: mowing.wetness } as const;
  const lot = lotOfAmount(
    mowing.amount,
    lotInputOf(garden, mowing.amount, material, handling, null),
  );
  const { formula, ingredients } = formulaOf(garden, mowing, material);
  const water = moistureRow(material.row, 'just cut', mowing.wetness);
  const { certainty } = mowing.amount;
  return {
    freshKilograms: lot.freshKilograms,
    dryKilograms: lot.dryKilograms,
    nitrogenGrams: lot.nitrogenGrams,
    formula,
    ingredients: [
      ...ingredients,
      ...(formula === 'by volume'
        ? []
        : [{ kind: 'row' as const, name: 'water' as const, row: water }]),
      { kind: 'row', name: 'nitrogen', row: material.row.nitrogenPercent },
      ...(certainty === 'plain'
        ? []
        : [
            {
              kind: 'row' as const,
              name: 'certainty' as const,
              row: certaintyFactors[certainty],
            },
          ]),
    ],
  };
}
