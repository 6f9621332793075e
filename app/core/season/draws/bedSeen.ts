import type { DayNumber } from '../../days';
import type { BedSeason } from '../input';
import type { SeasonWatch } from '../watchSeason';
import type { BedSeen, SignCoefficients } from './signs';

/**
 * What of a run somebody could have seen on a day.
 *
 * Need met is what all standing plantings took and fixed over what they wanted in the `daysShown`
 * days up to the look, luxury of one day making up for want of another. Fixing is what legumes
 * fixed in those days over their need times the crop's usual share of it.
 *
 * @param watch a run that kept the day of the look
 */
export function bedSeen(
  input: BedSeason,
  watch: SeasonWatch,
  day: DayNumber,
  { daysShown, leastNeed }: Pick<SignCoefficients, 'daysShown' | 'leastNeed'>,
): BedSeen {
  const index = day - input.firstDay;
  const kept = watch.looks.find((look) => look.index === index);
  if (!kept) throw new Error(`The run kept nothing of day ${String(day)}`);
  const first = Math.max(0, index - daysShown + 1);
  let need = 0;
  let got = 0;
  let usuallyFixed = 0;
  let fixed = 0;
  for (let at = 0; at < watch.plantings.length; at++) {
    const planting = watch.plantings[at]!;
    const { crop, nodulesSeen } = input.plantings[at]!;
    const usual = nodulesSeen === false ? 0 : (crop.legume?.usualShareFixed ?? 0);
    for (let on = first; on <= index; on++) {
      need += planting.dailyNeed[on]!;
      got += planting.dailyUptake[on]! + planting.dailyFixed[on]!;
      usuallyFixed += usual * planting.dailyNeed[on]!;
      fixed += planting.dailyFixed[on]!;
    }
  }
  return {
    needMet: need > leastNeed ? Math.min(1, got / need) : null,
    fixing: usuallyFixed > leastNeed ? fixed / usuallyFixed : null,
    nitrateTop: watch.pools.mineralTop[index]!,
    availableWater: kept.availableWater,
    hidden: kept.hidden,
    coverFill: kept.coverFill,
    lyingDry: kept.lyingDry,
  };
}
