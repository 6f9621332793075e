import type { LayerInput } from '../input';
import type { Limits } from '../limits';
import type { Caution } from '../verdict';
import type { Run } from './facts';
import { factCaution } from './makeCaution';
import { coveredPlants, smotheredOn } from './smothered';

/**
 * Cover and young plants: over seed or seedlings less than a hand high it smothers them, save those
 * that push through it; on plants a hand or two high it should stay off the stems.
 */
export function stemCautions(after: Run, layers: readonly LayerInput[], limits: Limits): Caution[] {
  const layer = layers.find((one) => one.placement === 'laid');
  if (!layer) return [];
  const { numbers } = limits;
  const smothered = smotheredOn(after, layer.day, limits);
  if (smothered)
    return [
      factCaution('seedlings', 'cover over seedlings', limits, {
        number: smothered.hands,
        threshold: 1,
        unit: 'hands',
        date: smothered.ready,
        detail: {
          plantingId: smothered.planting.id,
          ...(smothered.up !== null && { up: smothered.up }),
        },
        layerId: layer.id,
      }),
    ];
  const smallest = coveredPlants(after, layer.day, limits)[0];
  const soon = after.input.plantings.find(
    (planting) =>
      planting.sown &&
      planting.startDay > layer.day &&
      planting.startDay - layer.day <= numbers['sown soon'],
  );
  const isYoung = smallest !== undefined && smallest.hands < numbers['stems clear until'];
  if (!soon && !isYoung) return [];
  return [
    factCaution('seedlings', 'stems', limits, {
      number: smallest && isYoung ? smallest.hands : 0,
      threshold: numbers['stems clear until'],
      unit: 'hands',
      date: isYoung ? null : (soon?.startDay ?? null),
      detail: { plantingId: (isYoung ? smallest?.planting.id : soon?.id) ?? '' },
      layerId: layer.id,
    }),
  ];
}
