import type { ShownUnit } from '../core/shownUnit';
import type { LawnOutlook } from '../document/lawnOutlook';
import { aboutWords, countOf, twoFigures } from './figures';
import { rangeOdds, type ShownRange, withRange } from './ranges';

interface ContainerWords {
  readonly name: string;
  readonly plural: string;
}

/** "about 2 1/4 bags, likely 1 1/4 to 4 bags (8 times in 10)" */
function countRange(count: ShownRange, { name, plural }: ContainerWords): string {
  const [low, likely, high] = [count.low, count.typical, count.high].map((one) =>
    countOf(one, name, plural),
  );
  const bare = (low ?? '').replace(/ \S+$/, '');
  const between = low === high ? '' : `, likely ${bare} to ${high ?? ''} (${rangeOdds})`;
  return `${aboutWords(likely ?? '')}${between}`;
}

const daysBefore = (days: number): string => {
  const weeks = days / 7;
  if (weeks === 1) return 'a week';
  return Number.isInteger(weeks) ? `${String(weeks)} weeks` : `${twoFigures(days)} days`;
};

/**
 * What stands on a lawn to be mown on a day.
 * @param container what the gardener counts in; null: said by weight
 * @param day as a person says it, "Saturday 22 June"
 */
export function lawnReadySentence(
  outlook: Pick<LawnOutlook, 'containers' | 'freshKilograms' | 'isSinceSupposed' | 'usualDays'>,
  lawn: string,
  day: string,
  container: ContainerWords | null,
  mass: ShownUnit,
): string {
  const amount =
    outlook.containers && container
      ? countRange(outlook.containers.count, container)
      : withRange(outlook.freshKilograms, mass);
  const supposed = outlook.isSinceSupposed
    ? ` No mowing of the last weeks is written down: reckoned as if it was mown ${daysBefore(outlook.usualDays.typical)} before.`
    : '';
  return `${lawn} should give ${amount} on ${day}, if it is mown as short as usual.${supposed}`;
}

/** Why clippings count as lean although the lawn is not. */
export function lawnDroughtSentence({ waterShare }: LawnOutlook): string {
  const share =
    waterShare === null
      ? ''
      : ` got about ${twoFigures(waterShare * 100)} % of the water it wanted`;
  return `The grass${share} over the two weeks before: its clippings count as lean, with less nitrogen.`;
}
