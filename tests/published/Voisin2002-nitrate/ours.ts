import { nitrateSuppression } from '../../../app/core/crop/fixation';
import type { CropInput, LegumeInput } from '../../../app/core/season/input';
import { crops } from '../../../app/tables/crops';
import { fruitingCrop } from '../../core/season/handMadeBed';

const { legume, flowerDays, firstHarvestDays, usualDays } = crops.pea;

const pea: CropInput = {
  ...fruitingCrop,
  flowerDays: flowerDays.typical,
  firstHarvestDays: firstHarvestDays.typical,
  usualDays: usualDays.typical,
};

const nodules: LegumeInput = {
  usualShareFixed: legume.usualPercentFixed.typical / 100,
  highShareFixed: legume.highPercentFixed.typical / 100,
  nodulationDays: legume.nodulationDays.typical,
  leafyLimit: legume.leafyLimit.typical,
  poddingLimit: legume.poddingLimit.typical,
};

/** Least nitrate-N in 0-30 cm at which peas fix nothing, kg/ha. */
export function stoppingNitrate(stage: 'leafy' | 'podding'): number {
  const progress = stage === 'leafy' ? 0.3 : 0.95;
  let fixes = 0;
  let stops = 100;
  for (let round = 0; round < 60; round++) {
    const middle = (fixes + stops) / 2;
    if (nitrateSuppression(nodules, pea, middle, progress) > 0) fixes = middle;
    else stops = middle;
  }
  return stops * 10;
}
