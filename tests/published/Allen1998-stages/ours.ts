import { cropCoefficient } from '../../../app/core/crop/stages';
import type { CropInput } from '../../../app/core/season/input';
import { cropOf } from '../../../app/tables/crops';
import { fruitingCrop } from '../../core/season/handMadeBed';

export type StageDays = readonly [number, number, number, number];

/** First share of the season at which a question is answered with yes, by halving. */
function firstShare(isPast: (share: number) => boolean): number {
  let before = 0;
  let after = 1;
  for (let round = 0; round < 60; round++) {
    const middle = (before + after) / 2;
    if (isPast(middle)) after = middle;
    else before = middle;
  }
  return after;
}

/** Days of the four stages as the crop coefficient of that crop runs; throws for an unknown crop. */
export function stageDaysOf(cropId: string): StageDays {
  const row = cropOf(cropId);
  if (!row?.stageSharesSource) throw new Error(`${cropId} has no printed stages`);
  const probe: CropInput = {
    ...fruitingCrop,
    stageShares: row.stageShares,
    cropCoefficientStart: 0.4,
    cropCoefficientMiddle: 1,
    cropCoefficientEnd: 0.6,
  };
  const at = (share: number): number => cropCoefficient(probe, share);
  const rises = firstShare((share) => at(share) > 0.4 + 1e-9);
  const isFull = firstShare((share) => share > rises && at(share) > 1 - 1e-9);
  const falls = firstShare((share) => share > isFull && at(share) < 1 - 1e-9);
  const season = row.stageSharesSource.typical;
  return [
    rises * season,
    (isFull - rises) * season,
    (falls - isFull) * season,
    (1 - falls) * season,
  ];
}
