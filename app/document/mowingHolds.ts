import { drawAmount, drawShare, likelyRange } from '../core/drawRow';
import { seeded, type Random } from '../core/random';
import { certaintyFactors, fullness } from '../tables/certainty';
import { dryMassPerCentimetre, moistureRow } from '../tables/lawns';
import type { Row } from '../tables/shapes';
import { dryKilogramsPerLitre, massOf } from './layerMass';
import { clippingsOf, type MaterialValues } from './materialValues';
import type { Container, Garden, Mowing } from './schema';

/** A number with where it may lie, 8 times in 10. */
export interface LikelyRange {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

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

const drawCount = 400;
/** One fixed seed: the same entry always shows the same range. */
const seed = 20;

const percentRow = (row: Row): Row => ({
  ...row,
  low: row.low / 100,
  typical: row.typical / 100,
  high: row.high / 100,
});

/** The container weighed for this material, or another whose clippings it borrows. */
function weighedContainer(
  garden: Pick<Garden, 'containers'>,
  mowing: Pick<Mowing, 'amount'>,
): Container | null {
  const { quantity } = mowing.amount;
  if (quantity.kind !== 'containers' && quantity.kind !== 'volume') return null;
  const isOfClippings = (one: Container): boolean =>
    one.weighed !== null && (one.weighed.of === undefined || one.weighed.of.startsWith('grass-'));
  const weighed = garden.containers.filter(isOfClippings);
  const own =
    quantity.kind === 'containers'
      ? weighed.find(({ id }) => id === quantity.containerId)
      : undefined;
  const [latest] = [...weighed].sort((one, other) =>
    (one.weighed?.date ?? '') < (other.weighed?.date ?? '') ? 1 : -1,
  );
  return own ?? latest ?? null;
}

interface Sum {
  readonly formula: HoldingFormula;
  readonly ingredients: readonly Ingredient[];
  /** dry kilograms of one draw, given its share of water */
  readonly dry: (random: Random, waterShare: number) => number;
}

function sumOf(garden: Garden, mowing: Mowing, material: MaterialValues): Sum {
  const { quantity } = mowing.amount;
  const litresOf = (): number => {
    if (quantity.kind === 'volume') return quantity.litres;
    if (quantity.kind !== 'containers') throw new Error('Only volumes and containers have litres');
    const container = garden.containers.find(({ id }) => id === quantity.containerId);
    if (!container) throw new Error(`No container ${quantity.containerId}`);
    return quantity.count * container.litres;
  };
  switch (quantity.kind) {
    case 'mass':
      return {
        formula: 'by weight',
        ingredients: [{ kind: 'own', name: 'kilograms', value: quantity.kilograms }],
        dry: (_random, waterShare) => quantity.kilograms * (1 - waterShare),
      };
    case 'mown':
      return {
        formula: 'by area mown',
        ingredients: [
          { kind: 'own', name: 'area', value: quantity.areaM2 },
          { kind: 'own', name: 'height', value: quantity.heightMillimetres },
          { kind: 'row', name: 'dry mass per cm', row: dryMassPerCentimetre },
        ],
        dry: (random) =>
          (quantity.areaM2 *
            (quantity.heightMillimetres / 10) *
            drawAmount(dryMassPerCentimetre, random)) /
          1000,
      };
    case 'depth':
      throw new Error('A mowing has no depth');
    case 'volume':
    case 'containers': {
      const litres = litresOf();
      const container = weighedContainer(garden, mowing);
      const weighed = container?.weighed;
      if (container && weighed) {
        const water = moistureRow(material.row, 'just cut', weighed.wetness);
        const perLitre = dryKilogramsPerLitre(garden, material, container);
        const typicalDryShare = 1 - water.typical / 100;
        return {
          formula: 'by weighed container',
          ingredients: [
            { kind: 'own', name: 'litres', value: litres },
            { kind: 'own', name: 'weighed kilograms', value: weighed.kilograms },
            { kind: 'own', name: 'container litres', value: container.litres },
            { kind: 'row', name: 'water when weighed', row: water },
            { kind: 'row', name: 'fullness', row: fullness },
          ],
          // as wet as the one that was weighed: then the same water is in both
          dry: (random, waterShare) =>
            litres *
            perLitre *
            ((1 -
              (weighed.wetness === mowing.wetness
                ? waterShare
                : drawShare(percentRow(water), random))) /
              typicalDryShare) *
            drawAmount(fullness, random),
        };
      }
      return {
        formula: 'by volume',
        ingredients: [
          { kind: 'own', name: 'litres', value: litres },
          { kind: 'row', name: 'density', row: material.row.densityKgPerM3 },
          { kind: 'row', name: 'water', row: material.row.moisturePercent },
        ],
        dry: (random) =>
          ((litres * drawAmount(material.row.densityKgPerM3, random)) / 1000) *
          (1 - drawShare(percentRow(material.row.moisturePercent), random)),
      };
    }
  }
}

/**
 * What a mowing holds: weight as it came off, dry matter, nitrogen, each with the range it lies in
 * 8 times in 10, and what went into the sum. The middle is the likely mass every other part of the
 * program uses; only the ends come from draws of the rows.
 *
 * @returns kg, kg, g
 * @throws on a mowing that its garden could not hold
 * @source ranges: model 10 (two-piece log-normal and logit-normal, 400 seeded draws)
 */
export function mowingHolds(garden: Garden, mowing: Mowing): MowingHolding {
  const material = clippingsOf(garden, mowing);
  const handling = { condition: 'just cut', wetness: mowing.wetness } as const;
  const likely = massOf(garden, mowing.amount.quantity, material, handling, null);
  const water = moistureRow(material.row, 'just cut', mowing.wetness);
  const certainty = certaintyFactors[mowing.amount.certainty];
  const sum = sumOf(garden, mowing, material);
  const random = seeded(seed);
  const draws = Array.from({ length: drawCount }, () => {
    const waterShare = drawShare(percentRow(water), random);
    const factor = drawAmount(certainty, random);
    const dry = sum.dry(random, waterShare) * factor;
    const nitrogen = drawAmount(percentRow(material.row.nitrogenPercent), random);
    const fresh =
      mowing.amount.quantity.kind === 'mass'
        ? mowing.amount.quantity.kilograms * factor
        : dry / (1 - waterShare);
    return { fresh, dry, nitrogen: dry * 1000 * nitrogen };
  });
  const around = (typical: number, of: (draw: (typeof draws)[number]) => number): LikelyRange => {
    const { low, high } = likelyRange(draws.map(of));
    // the likely value belongs to its range, however the draws fell
    return { low: Math.min(low, typical), typical, high: Math.max(high, typical) };
  };
  return {
    freshKilograms: around(likely.freshKilograms, (draw) => draw.fresh),
    dryKilograms: around(likely.dryKilograms, (draw) => draw.dry),
    nitrogenGrams: around(likely.dryKilograms * 1000 * material.nitrogen, (draw) => draw.nitrogen),
    formula: sum.formula,
    ingredients: [
      ...sum.ingredients,
      ...(sum.formula === 'by volume'
        ? []
        : [{ kind: 'row' as const, name: 'water' as const, row: water }]),
      { kind: 'row', name: 'nitrogen', row: material.row.nitrogenPercent },
      ...(mowing.amount.certainty === 'plain'
        ? []
        : [{ kind: 'row' as const, name: 'certainty' as const, row: certainty }]),
    ],
  };
}
