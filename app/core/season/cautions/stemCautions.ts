import type { DayNumber } from '../../days';
import type { LayerInput, PlantingInput } from '../input';
import type { Limits } from '../limits';
import type { Caution } from '../verdict';
import type { Run } from './facts';
import { factCaution } from './makeCaution';
import { emergenceIn, handsHigh, standingHeights } from './plantSize';

/**
 * Whether a planting comes up through a cover by itself: put in as a bulb, tuber, crown or set, or
 * grown from seed and now on the crown it made. Seed of the same crop does not.
 */
const liftsCover = ({ crop, sown, seasons }: PlantingInput, day: DayNumber): boolean =>
  crop.pushesThrough === true &&
  (!sown || (seasons?.some((one) => one.isRegrowth && day >= one.seasonDay) ?? false));

/**
 * Cover and young plants: over seed or seedlings less than a hand high it smothers them, save those
 * that push through it; on plants a hand or two high it should stay off the stems.
 */
export function stemCautions(after: Run, layers: readonly LayerInput[], limits: Limits): Caution[] {
  const layer = layers.find((one) => one.placement === 'laid');
  if (!layer) return [];
  const { numbers } = limits;
  const standing = standingHeights(after, layer.day, limits).filter(
    ({ planting, hands }) => hands >= 1 || !liftsCover(planting, layer.day),
  );
  const smallest = [...standing].sort((a, b) => a.hands - b.hands)[0];
  if (smallest && smallest.hands < 1) {
    let ready: number | null = null;
    const last = Math.min(layer.day + 90, after.result.firstDay + after.result.days - 1);
    for (let day = layer.day; day <= last && ready === null; day += 1)
      if (handsHigh(after, smallest.planting, day, limits) >= 1) ready = day;
    const emergence = emergenceIn(after, smallest.planting);
    const isUnder = emergence?.kind === 'up' && emergence.day > layer.day;
    return [
      factCaution('seedlings', 'cover over seedlings', limits, {
        number: smallest.hands,
        threshold: 1,
        unit: 'hands',
        date: ready,
        detail: { plantingId: smallest.planting.id, ...(isUnder && { up: emergence.day }) },
        layerId: layer.id,
      }),
    ];
  }
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
