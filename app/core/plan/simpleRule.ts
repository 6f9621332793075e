import type { BedLimit } from './bedLimits';
import { isPinned, walksTaken, type Ready } from './ready';
import { noCaps, stepGain, stepOf, type Amounts, type Caps } from './settle';
import { depthLine } from './fixedRules';

/**
 * What is done where no solver answers: the hungriest bed first gets the thinnest layer that needs
 * no note, of what is there, then the next, for as many beds as are walked to. Hungry is who lacks
 * most of nine tenths of its need by the square metre. Greens first, then browns on the same terms.
 */
export function simpleAmounts(
  ready: Ready,
  caps: Caps,
  limits: readonly (readonly BedLimit[])[],
): Amounts {
  const { beds, sources, question } = ready;
  const result = noCaps(beds.length);
  const left = [...ready.litres];
  const lacks = beds.map(
    ({ aim, response }) => question.weights.lowShare * aim.need - (response.supplies[0] ?? 0),
  );
  const hungriest = beds
    .map((_bed, at) => at)
    .sort((one, other) => lacks[other]! - lacks[one]! || one - other);
  let walks = (question.wishes.bedsADay ?? Infinity) - walksTaken(ready);
  for (const bed of hungriest) {
    const { response, pinned } = beds[bed]!;
    const isOnTheWay = pinned.length > 0;
    if (walks <= 0 && !isOnTheWay) continue;
    response.layers.forEach(({ day, source, blocked }, layer) => {
      if (day !== 0 || blocked !== null || isPinned(ready, bed, source)) return;
      const one = sources[source]!.oneMillimetre;
      const step = stepOf(ready, bed, layer);
      const thin = question.limits.lines[depthLine(one)].note / Math.max(one.laidDepth, 1e-9);
      for (let depth = step; depth <= thin + 1e-9; depth += step) {
        const gain = stepGain(
          ready,
          { bed, layer, source },
          step,
          result[bed]!,
          [],
          caps,
          limits,
          left,
        );
        if (!(gain > 0)) break;
        result[bed]!.set(layer, depth);
        left[source]! -= step * response.areaM2;
      }
    });
    if (result[bed]!.size > 0 && !isOnTheWay) walks -= 1;
  }
  return result;
}
