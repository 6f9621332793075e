import type { ShownUnit } from '../core/shownUnit';
import type { LawnOutlook, TakenOff } from '../document/lawnOutlook';
import { aboutWords, countOf, estimateWithUnit, twoFigures } from './figures';
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

/** How a lawn compares with its kind, and what that was learnt from. */
export function lawnRatioSentence({ ratio, learntFrom }: LawnOutlook): string {
  const bounds = `${twoFigures(ratio.low)} to ${twoFigures(ratio.high)}`;
  if (learntFrom === 0) {
    return 'Nothing is known of this lawn yet but its kind: log two mowings and the guess narrows.';
  }
  const likely = twoFigures(ratio.typical);
  const mowings = learntFrom === 1 ? '1 mowing' : `${String(learntFrom)} mowings`;
  return `Learnt from ${mowings}: it gives about ${likely === '1' ? '' : `${likely} times `}what its kind usually does (${bounds}, ${rangeOdds}).`;
}

/** Why clippings count as lean although the lawn is not. */
export function lawnDroughtSentence({ waterShare }: LawnOutlook): string {
  const share =
    waterShare === null
      ? ''
      : ` got about ${twoFigures(waterShare * 100)} % of the water it wanted`;
  return `The grass${share} over the two weeks before: its clippings count as lean, with less nitrogen.`;
}

/** What went off a lawn for each square metre. */
export const lawnTakenSentence = (
  { nitrogen, phosphorus, potassium }: TakenOff,
  perArea: ShownUnit,
): string =>
  `Carried off the lawn: nitrogen ${withRange(nitrogen, perArea)}, phosphorus about ${estimateWithUnit(phosphorus.typical, perArea)}, potassium about ${estimateWithUnit(potassium.typical, perArea)}.`;

/** What carrying clippings off costs a lawn, when most of it is carried off. */
export function lawnCostSentence({ cost, wasMown }: LawnOutlook): string {
  const { collectedShare, yieldLost, feedSavedAtFirst, feedSavedInTheLongRun } = cost;
  const percent = (share: number): string => twoFigures(share * 100);
  const feed = `Left lying, clippings save a lawn about ${percent(feedSavedAtFirst)} % of its feed at first and ${percent(feedSavedInTheLongRun.typical)} % in the long run.`;
  if (!wasMown)
    return `No mowing of this season is written down, nor what was carried off. ${feed}`;
  if (collectedShare < 0.05) return `Nearly all of it was left lying. ${feed}`;
  return `About ${percent(collectedShare)} % of what grew was carried off. Going on so, the lawn loses about ${percent(yieldLost.typical)} % of its growth over the years (${percent(yieldLost.low)} to ${percent(yieldLost.high)} %), unless it is fed. ${feed}`;
}
