import type { LayerInput } from '../input';
import { type LineId, type Limits, weigh } from '../limits';
import { at, lastDayOf } from '../seasonAccount';
import type { Caution } from '../verdict';
import type { Run } from './facts';
import { makeCaution } from './makeCaution';

/** Wet and fine: it mats and crusts, whatever it rots like. */
const lieClose = (layer: LayerInput): boolean => layer.materialClass === 'green' || layer.isGreens;

/** Browns lie loose whatever they were called; clippings go by how wilted they are. */
function depthRow(layer: LayerInput): LineId {
  if (!lieClose(layer)) return 'layer crisp';
  if (layer.condition === 'just cut') return 'layer just cut';
  return layer.condition === 'limp' ? 'layer limp' : 'layer crisp';
}

/** Layers whose depth is judged: plant material lying on the bed. Compost has a rule of its own. */
const hasDepthRule = (layer: LayerInput): boolean =>
  layer.placement === 'laid' && layer.materialClass !== 'slow' && layer.materialClass !== 'inert';

/**
 * Depth of each layer as laid. What went on the same bed on the same day under the same line counts
 * as one layer, so that an inch in two halves is still an inch.
 */
export function depthCautions(run: Run, layers: readonly LayerInput[], limits: Limits): Caution[] {
  const cautions: Caution[] = [];
  const done = new Set<string>();
  for (const layer of layers.filter(hasDepthRule)) {
    const row = depthRow(layer);
    const key = `${String(layer.day)} ${row} ${layer.materialClass}`;
    if (done.has(key)) continue;
    done.add(key);
    const together = run.input.layers
      .filter(hasDepthRule)
      .filter(
        (other) =>
          other.day === layer.day &&
          other.materialClass === layer.materialClass &&
          depthRow(other) === row,
      );
    const depth = together.reduce((sum, other) => sum + other.laidDepth, 0);
    const weighed = weigh(depth, limits.lines[row], row === 'layer just cut');
    if (weighed)
      cautions.push(
        makeCaution('layer depth', weighed.weight, row, {
          number: depth,
          threshold: weighed.threshold,
          unit: 'mm',
          date: layer.day,
          detail: {
            condition: lieClose(layer) ? layer.condition : 'browns',
            ...(together.length > 1 && { others: together.length - 1 }),
          },
          layerId: layer.id,
        }),
      );
  }
  return cautions;
}

/** Everything lying on the bed on a day. */
export function allCoverCaution(run: Run, day: number, limits: Limits): Caution[] {
  const depth = at(run.result.coverDepth, run.result, day);
  const weighed = weigh(depth, limits.lines['all cover']);
  return weighed
    ? [
        makeCaution('all cover', weighed.weight, 'all cover', {
          number: depth,
          threshold: weighed.threshold,
          unit: 'mm',
          date: day,
        }),
      ]
    : [];
}

/** New greens on greens that are still wet and hardly rotted. */
export function tooSoonCautions(
  before: Run,
  layers: readonly LayerInput[],
  limits: Limits,
): Caution[] {
  const { numbers } = limits;
  const { input, result } = before;
  const cautions: Caution[] = [];
  const fresh = layers.find((layer) => layer.placement === 'laid' && layer.isGreens);
  if (!fresh) return cautions;
  const earlier = input.layers
    .filter((layer) => layer.placement === 'laid' && layer.isGreens && layer.day < fresh.day)
    .sort((a, b) => b.day - a.day)[0];
  const lying = result.layers.find((layer) => layer.id === earlier?.id);
  if (!earlier || !lying) return cautions;
  const isWet = (day: number): boolean =>
    at(result.coverFill, result, day) > numbers['too soon wetness'] &&
    at(lying.left, result, day) > numbers['too soon left'];
  if (!isWet(fresh.day)) return cautions;
  let ready: number | null = null;
  for (let day = fresh.day + 1; day <= lastDayOf(result) && ready === null; day += 1)
    if (!isWet(day)) ready = day;
  cautions.push(
    makeCaution('too soon', limits.facts['greens too soon'], 'greens too soon', {
      number: at(lying.left, result, fresh.day),
      threshold: numbers['too soon left'],
      unit: 'share',
      date: ready,
      detail: { laidOn: earlier.day, wetness: at(result.coverFill, result, fresh.day) },
      layerId: fresh.id,
    }),
  );
  return cautions;
}

/**
 * Materials outside what the model of rotting was tested on: by their C:N, and wood worked into the
 * soil by what it is. Its rate is that of ground wood in jars; chips and shavings last longer.
 */
export function validityCautions(layers: readonly LayerInput[], limits: Limits): Caution[] {
  const { numbers } = limits;
  const cautions: Caution[] = [];
  for (const layer of layers) {
    if (layer.nitrogen <= 0 || layer.materialClass === 'slow') continue;
    // lying on top chips do not rot at all, and no sum is asked for
    if (layer.materialClass === 'inert' && layer.placement === 'laid') continue;
    const isWood =
      layer.materialClass === 'inert' ||
      (layer.materialClass === 'wood' && layer.placement !== 'laid');
    const ratio = layer.carbon / layer.nitrogen;
    const least = numbers[layer.materialClass === 'green' ? 'least green C:N' : 'least mature C:N'];
    const most = numbers[layer.materialClass === 'green' ? 'most green C:N' : 'most mature C:N'];
    if (!isWood && ratio >= least && ratio <= most) continue;
    cautions.push(
      makeCaution(
        'outside validity',
        limits.facts['outside what was tested'],
        'outside what was tested',
        {
          number: ratio,
          threshold: ratio < least ? least : most,
          unit: 'C:N',
          layerId: layer.id,
          ...(isWood && { detail: { what: 'wood' } }),
        },
      ),
    );
  }
  return cautions;
}
