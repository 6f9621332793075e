import type { LayerInput } from '../input';
import { type Limits, weigh } from '../limits';
import { canFix, plantingResult } from '../plantingAccount';
import { seasonFirstDay } from '../seasonAccount';
import type { Caution } from '../verdict';
import type { Run } from './facts';
import { makeCaution } from './makeCaution';
import { standingHeights } from './plantSize';

/**
 * What a layer costs legumes: two full runs are compared by the nitrogen each fixes to its end.
 * Never a stop. One thin layer, the first of the season, weighs no more than a note once plants
 * stand a hand high: it feeds them until their nodules work and covers the ground.
 */
export function legumeCautions(
  before: Run,
  after: Run,
  layers: readonly LayerInput[],
  limits: Limits,
): Caution[] {
  const { numbers } = limits;
  const feeding = layers.filter(
    (layer) => layer.materialClass === 'green' || layer.materialClass === 'slow',
  );
  const [first] = feeding;
  if (!first) return [];
  const legumes = before.input.plantings.filter(
    (planting) =>
      canFix(planting) && (planting.clearingDay === null || planting.clearingDay > first.day),
  );
  if (legumes.length === 0) return [];
  const fixedIn = (run: Run): number =>
    legumes.reduce((sum, planting) => sum + plantingResult(run.result, planting.id).fixed, 0);
  const without = fixedIn(before);
  const withLayer = fixedIn(after);
  const loss = (without - withLayer) / Math.max(without, numbers['legume least fixed']);
  const weighed = weigh(loss, limits.lines['legume loss']);
  if (!weighed) return [];

  const season = seasonFirstDay(before.input, first.day);
  const isFirst = !before.input.layers.some(
    (layer) => layer.isGreens && layer.day >= season && layer.day <= first.day,
  );
  const depth = feeding.reduce((sum, layer) => sum + layer.laidDepth, 0);
  const ofLegumes = standingHeights(before, first.day, limits).filter(({ planting }) =>
    canFix(planting),
  );
  const isTall = ofLegumes.length > 0 && ofLegumes.every(({ hands }) => hands >= 1);
  const isPicked = legumes.some((planting) => planting.crop.excessClass === 'legume');
  const isWelcome = isFirst && isPicked && isTall && depth <= numbers['legume first layer'];
  return [
    makeCaution('legume', isWelcome ? 'note' : weighed.weight, 'legume loss', {
      number: loss,
      threshold: isWelcome ? limits.lines['legume loss'].note : weighed.threshold,
      unit: 'share',
      detail: {
        fixedBefore: without,
        fixedAfter: withLayer,
        welcome: isWelcome ? 1 : 0,
        cropId: legumes[0]?.crop.id ?? '',
        plantingId: legumes[0]?.id ?? '',
      },
      layerId: first.id,
    }),
  ];
}
