import type { ShownUnit } from '../core/shownUnit';
import type { LawnOutlook, TakenOff } from '../document/lawnOutlook';
import { estimateWithUnit, twoFigures } from './figures';
import { rangeOdds, withRange } from './ranges';

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

/** What went off a lawn for each square metre. */
export const lawnTakenSentence = (
  { nitrogen, phosphorus, potassium }: TakenOff,
  perArea: ShownUnit,
): string =>
  nitrogen.high === 0
    ? 'None of it is written down as carried off this season.'
    : `Carried off the lawn: nitrogen ${withRange(nitrogen, perArea)}, phosphorus about ${estimateWithUnit(phosphorus.typical, perArea)}, potassium about ${estimateWithUnit(potassium.typical, perArea)}.`;

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
