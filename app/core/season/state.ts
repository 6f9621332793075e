import type { DayNumber } from '../days';
import { coverStateOn } from './coverState';
import type { BedSeason, LayerInput } from './input';
import type { Limits } from './limits';
import { enoughNitrate, isRich, judgeNitrogen } from './nitrogenState';
import type { SeasonResult } from './result';
import { at, lastDayOf, mineralInReach, nitrateMgPerKg, seasonFirstDay } from './seasonAccount';
import { wasShortOn } from './shortOfNitrogen';
import type { BedVerdict, NitrogenState } from './verdict';
import { watchedOf } from './watchedSeason';

/**
 * What feeds, laid or dug in this season up to a day, g N/m2 of bed: total N of greens, and of
 * compost, manure and meals the share that a season frees. Browns and wood are left out: little of
 * theirs is ready within the season. What was raked off again does not count.
 */
export function laidThisSeason(input: BedSeason, result: SeasonResult, today: DayNumber): number {
  const from = seasonFirstDay(input, today);
  let laid = 0;
  for (const layer of input.layers) {
    if (layer.day < from || layer.day > today) continue;
    const feeds =
      layer.materialClass === 'green'
        ? 1
        : layer.materialClass === 'slow'
          ? Math.min(1, layer.mineralShare + layer.slowShare)
          : 0;
    if (feeds > 0) laid += layer.nitrogen * feeds * (1 - rakedShare(input, result, layer, today));
  }
  return laid;
}

/** Share of a layer that was raked off again: of what still lay when it was raked. */
function rakedShare(
  input: BedSeason,
  result: SeasonResult,
  layer: LayerInput,
  today: DayNumber,
): number {
  const lying = result.layers.find(({ id }) => id === layer.id);
  if (!lying) return 0;
  return input.events.reduce(
    (sum, event) =>
      event.kind === 'rake off' && event.day > layer.day && event.day <= today
        ? sum + event.share * (lying.left[event.day - 1 - result.firstDay] ?? 0)
        : sum,
    0,
  );
}

function firstDayBelow(
  mgPerKg: number,
  input: BedSeason,
  result: SeasonResult,
  today: DayNumber,
): DayNumber | null {
  for (let day = today + 1; day <= lastDayOf(result); day += 1)
    if (nitrateMgPerKg(input, result, day) < mgPerKg) return day;
  return null;
}

/**
 * The bed has room for this much greens, g total N per m2; the release of a season is assumed. A
 * crop that wants next to nothing any more has none, whatever it once went without.
 */
function roomFor(
  need: number,
  onHand: number,
  laid: number,
  openShare: number,
  limits: Limits,
): number {
  const { numbers } = limits;
  if (openShare < numbers['little open']) return 0;
  return Math.min(
    Math.max(0, numbers['room aim'] * need - onHand) / numbers['room share'],
    Math.max(0, numbers['room season limit'] - laid),
  );
}

function emptyBed(
  input: BedSeason,
  result: SeasonResult,
  today: DayNumber,
  limits: Limits,
): BedVerdict {
  return {
    state: 'nothing planted',
    coverState: coverStateOn(result, today, limits),
    ratio: null,
    need: 0,
    inCrop: 0,
    inReach: mineralInReach(result, today),
    expectedRelease: 0,
    expectedTieUp: 0,
    nitrateMgPerKg: nitrateMgPerKg(input, result, today),
    turnsOn: null,
    forecastMet: 1,
    openShare: 0,
    dryFirst: false,
    wasShortOn: null,
    room: null,
    excessClass: null,
    overFedLine: null,
    wantsMoreLater: false,
    lackIsPast: null,
    strongly: false,
    flowerNitrate: null,
    laidThisSeason: laidThisSeason(input, result, today),
  };
}

/**
 * The state of a bed on the evening of `today` (`judgeNitrogen`), and what it rests on.
 *
 * @param result the bed's run; days after `today` are its forecast
 * @param previous state when the bed was last looked at; a state is left only past its margin
 * @returns nitrogen in g per m2 of bed
 * @throws RangeError when `today` is not a day of the run
 * @validity release and forecast reach to the end of the run at most. A crop that stands into the next
 *   season is judged by its whole need; the room it leaves is that of this one
 * @source thresholds: `limits`, from the threshold table; most are our own, bracketed by the
 *   trials named there
 */
export function bedVerdict(
  input: BedSeason,
  result: SeasonResult,
  today: DayNumber,
  limits: Limits,
  previous: NitrogenState | null = null,
): BedVerdict {
  const run = watchedOf(result);
  const judged = judgeNitrogen(input, run, today, limits, previous);
  if (judged === null) return emptyBed(input, result, today, limits);
  const { numbers } = limits;
  const { accounts, state, ratio, need, isLegumeBed, overFed, openShare, isProvided } = judged;
  const laid = laidThisSeason(input, result, today);
  const wantsMoreLater =
    state === 'about right' && !isProvided && openShare >= numbers['short least open'];
  return {
    state,
    coverState: coverStateOn(result, today, limits),
    ratio,
    need,
    inCrop: judged.inCrop,
    inReach: judged.inReach,
    expectedRelease: judged.expectedRelease,
    expectedTieUp: judged.expectedTieUp,
    nitrateMgPerKg: judged.nitrateMgPerKg,
    turnsOn:
      state === 'enough for now'
        ? firstDayBelow(enoughNitrate(accounts), input, result, today)
        : judged.shortOn,
    forecastMet: judged.forecastMet,
    openShare,
    dryFirst: at(result.dryness, result, today) > numbers['dry soil'],
    wasShortOn: state === 'short' ? null : wasShortOn(accounts, input, run, today, limits),
    room: isLegumeBed ? null : roomFor(judged.needOfRun, judged.onHand, laid, openShare, limits),
    excessClass:
      overFed?.excessClass ??
      accounts.reduce((best, one) => (one.need > best.need ? one : best)).planting.crop.excessClass,
    overFedLine: isLegumeBed ? null : (overFed?.lines.caution ?? null),
    wantsMoreLater,
    lackIsPast:
      state !== 'about right' || wantsMoreLater || isLegumeBed || ratio >= numbers['short share']
        ? null
        : judged.forecastMet >= numbers['forecast meets']
          ? 'gets the rest'
          : 'wants little',
    strongly:
      state === 'over-fed' &&
      overFed !== null &&
      isRich(judged, overFed.lines.stop, limits.lines['nitrate at flowering'].stop),
    flowerNitrate: judged.flowerNitrate,
    laidThisSeason: laid,
  };
}
