import { blend, type Blend, type BlendFailure, type BlendWish } from '../core/cover/blend';
import { drawShare, likelyRange } from '../core/drawRow';
import { seeded } from '../core/random';
import { success, type Result } from '../core/result';
import { massOf } from './layerMass';
import { materialById, type MaterialValues } from './materialValues';
import { rowOrMeasured } from './measuredRow';
import type { Amount, Garden, Wetness } from './schema';

/** A part of a mixture as a gardener says it; `amount` null where it is to be found. */
export interface MixturePart {
  readonly materialId: string;
  readonly wetness: Wetness;
  readonly amount: Amount | null;
}

export interface MixedPart {
  readonly name: string;
  readonly freshKilograms: number;
  readonly dryKilograms: number;
  readonly litres: number;
  readonly carbonKilograms: number;
  readonly nitrogenKilograms: number;
  readonly waterKilograms: number;
}

export interface Mixture {
  readonly blend: Blend;
  readonly parts: readonly MixedPart[];
  /** of the mixture as weighed out, in 80 % of draws of what its parts may hold */
  readonly ratioRange: { readonly low: number; readonly typical: number; readonly high: number };
}

const draws = 400;
const seed = 20_130_615;

const share = (low: number, typical: number, high: number) => ({
  low: low / 100,
  typical: typical / 100,
  high: high / 100,
});

/** Nitrogen as the row spans it, shifted to what was measured; carbon stays, so the ratio moves. */
function nitrogenSpread({ row, nitrogen }: MaterialValues) {
  const { low, typical, high } = rowOrMeasured(row.nitrogenPercent, nitrogen * 100);
  return share(low, typical, high);
}

/**
 * A mixture of materials of the tables or of the garden's own, put together by `blend`.
 * How far its ratio may be off is told by draws of nitrogen and water of the parts (model 1: carbon is
 * held while nitrogen is drawn), the weights standing as they are.
 *
 * @returns kilograms and litres; fails as `blend`
 */
export function mixtureOf(
  garden: Garden,
  parts: readonly MixturePart[],
  wish: BlendWish,
): Result<Mixture, BlendFailure> {
  const asked = parts.map(({ materialId, wetness, amount }) => {
    const material = materialById(garden, materialId);
    const handling = { condition: 'just cut', wetness } as const;
    const unit = massOf(garden, { kind: 'mass', kilograms: 1 }, material, handling, null);
    const typed = amount && massOf(garden, amount.quantity, material, handling, null);
    return {
      material,
      litresPerKilogram: unit.litres / unit.freshKilograms,
      dryShare: unit.dryKilograms / unit.freshKilograms,
      freshKilograms: typed ? typed.freshKilograms : null,
    };
  });
  const mixed = blend(
    asked.map(({ material, dryShare, freshKilograms }) => ({
      freshKilograms,
      moistureFraction: 1 - dryShare,
      carbonFraction: material.carbon,
      nitrogenFraction: material.nitrogen,
    })),
    wish,
  );
  if (!mixed.ok) return mixed;
  const made = asked.map(({ material, litresPerKilogram, dryShare }, index): MixedPart => {
    const freshKilograms = mixed.value.kilograms[index] ?? 0;
    const dryKilograms = freshKilograms * dryShare;
    return {
      name: material.name,
      freshKilograms,
      dryKilograms,
      litres: freshKilograms * litresPerKilogram,
      carbonKilograms: dryKilograms * material.carbon,
      nitrogenKilograms: dryKilograms * material.nitrogen,
      waterKilograms: freshKilograms - dryKilograms,
    };
  });
  const random = seeded(seed);
  const ratios = Array.from({ length: draws }, () => {
    let carbon = 0;
    let nitrogen = 0;
    asked.forEach(({ material, dryShare }, index) => {
      const { low, typical, high } = rowOrMeasured(
        material.row.moisturePercent,
        material.moisture * 100,
      );
      const water = drawShare(share(low, typical, high), random);
      // what is wet on the outside moves the whole range with it
      const dry =
        ((mixed.value.kilograms[index] ?? 0) * dryShare * (1 - water)) / (1 - typical / 100);
      carbon += dry * material.carbon;
      nitrogen += dry * drawShare(nitrogenSpread(material), random);
    });
    return carbon / nitrogen;
  });
  return success({ blend: mixed.value, parts: made, ratioRange: likelyRange(ratios) });
}
