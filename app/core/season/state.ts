import type { DayNumber } from '../days';
import { coverStateOn } from './coverState';
import { classLines } from './excessLines';
import type { BedSeason, LayerInput } from './input';
import type { Limits } from './limits';
import {
  canFix,
  forecastMetOf,
  openShareOf,
  type PlantingAccount,
  plantingAccounts,
} from './plantingAccount';
import type { SeasonResult } from './result';
import { at, lastDayOf, mineralInReach, nitrateMgPerKg, seasonFirstDay } from './seasonAccount';
import { turnsShortOn, wasShortOn } from './shortOfNitrogen';
import type { BedVerdict, NitrogenState } from './verdict';

const total = (
  accounts: readonly PlantingAccount[],
  of: (account: PlantingAccount) => number,
): number => accounts.reduce((sum, account) => sum + of(account), 0);

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

/** Highest nitrate round the first flower of the fruit crop with the largest need [mg/kg]; null without one. */
function nitrateAtFlowering(
  accounts: readonly PlantingAccount[],
  input: BedSeason,
  result: SeasonResult,
  limits: Limits,
): number | null {
  const fruit = accounts.filter((account) => account.planting.crop.excessClass === 'fruit');
  if (fruit.length === 0) return null;
  const { planting } = fruit.reduce((best, one) => (one.need > best.need ? one : best));
  const flower = planting.startDay + (planting.crop.flowerDays ?? planting.crop.firstHarvestDays);
  const first = Math.max(result.firstDay, flower - limits.numbers['flower window before']);
  const last = Math.min(lastDayOf(result), flower + limits.numbers['flower window after']);
  let highest = 0;
  for (let day = first; day <= last; day += 1)
    highest = Math.max(highest, nitrateMgPerKg(input, result, day));
  return highest;
}

/** Nitrate that is enough for everything on the bed [mg/kg]: the most demanding crop's own row. */
const enoughNitrate = (accounts: readonly PlantingAccount[]): number =>
  accounts.reduce((most, { planting }) => Math.max(most, planting.crop.enoughNitrateLow), 0);

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
    strongly: false,
    flowerNitrate: null,
    laidThisSeason: laidThisSeason(input, result, today),
  };
}

/**
 * The state of a bed on the evening of `today`: the first rule that holds, of over-fed, enough to
 * the end, enough for now, short, about right; nothing planted where nothing stands.
 *
 *     ratio = (N in the crop, harvests included + mineral N of 0-30 cm and of what roots reach below
 *              + expected release to clearing - expected tie-up) / total need
 *
 * Total need, never what remains of it: rain and time cannot make an over-fed bed look hungry. A
 * legume's need is the soil's share. Plantings add by their share of the bed.
 *
 * @param result the bed's run; days after `today` are its forecast
 * @param previous state when the bed was last looked at; a state is left only past its margin
 * @returns nitrogen in g per m2 of bed
 * @throws RangeError when `today` is not a day of the run
 * @validity need, release and forecast reach to the end of the run at most: a crop that stands
 *   into the next season is judged on its need of this one
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
  if (today < result.firstDay || today > lastDayOf(result))
    throw new RangeError(`Day ${today} is not a day of this run`);
  const { numbers } = limits;
  const accounts = plantingAccounts(input, result, today);
  const need = total(accounts, (account) => account.need);
  if (accounts.length === 0 || need <= 0) return emptyBed(input, result, today, limits);

  const inCrop = total(accounts, (account) => account.inCrop);
  const inReach = total(accounts, (account) => account.inReach);
  const expectedRelease = total(accounts, (account) => account.release);
  const expectedTieUp = total(accounts, (account) => account.tieUp);
  const onHand = inCrop + inReach + expectedRelease - expectedTieUp;
  const ratio = onHand / need;

  const legumeNeed = total(
    accounts.filter((account) => canFix(account.planting)),
    (account) => account.need,
  );
  const legumeBed = legumeNeed >= need / 2;
  const needs = accounts.map((account) => ({
    excessClass: account.planting.crop.excessClass,
    need: account.need,
  }));
  const overFed = classLines(needs, limits, 'over-fed');
  const forecastMet = forecastMetOf(accounts);
  const openShare = openShareOf(accounts);
  const isProvided =
    legumeBed || forecastMet >= numbers['forecast meets'] || openShare < numbers['little open'];

  const isFruit = overFed?.excessClass === 'fruit';
  const flowerNitrate = isFruit ? nitrateAtFlowering(accounts, input, result, limits) : null;
  const flowering = limits.lines['nitrate at flowering'];
  const isRich = (line: number, nitrateLine: number): boolean =>
    ratio > line && (flowerNitrate === null || flowerNitrate > nitrateLine);

  const nitrate = nitrateMgPerKg(input, result, today);
  const enoughLine = enoughNitrate(accounts);
  const leaving = numbers['leaving enough for now'] / flowering.caution;

  let state: NitrogenState = 'about right';
  let turnsOn: DayNumber | null = null;
  const shortOn = turnsShortOn(accounts, result, today, limits, previous === 'short');
  if (
    overFed !== null &&
    !legumeBed &&
    isProvided &&
    (previous === 'over-fed'
      ? isRich(
          overFed.lines.caution - numbers['leaving over-fed'],
          numbers['leaving enough for now'],
        )
      : isRich(overFed.lines.caution, flowering.caution))
  ) {
    state = 'over-fed';
  } else if (
    isProvided &&
    ratio >
      (previous === 'enough to the end'
        ? numbers['leaving enough to the end']
        : numbers['enough to the end'])
  ) {
    state = 'enough to the end';
  } else if (
    ratio <= numbers['enough to the end'] &&
    nitrate >= (previous === 'enough for now' ? leaving * enoughLine : enoughLine)
  ) {
    state = 'enough for now';
    turnsOn = firstDayBelow(enoughLine, input, result, today);
  } else if (shortOn !== null) {
    state = 'short';
    turnsOn = shortOn;
  }

  const laid = laidThisSeason(input, result, today);
  return {
    state,
    coverState: coverStateOn(result, today, limits),
    ratio,
    need,
    inCrop,
    inReach,
    expectedRelease,
    expectedTieUp,
    nitrateMgPerKg: nitrate,
    turnsOn,
    forecastMet,
    openShare,
    dryFirst: at(result.dryness, result, today) > numbers['dry soil'],
    wasShortOn: state === 'short' ? null : wasShortOn(accounts, input, result, today, limits),
    room: legumeBed ? null : roomFor(need, onHand, laid, openShare, limits),
    excessClass:
      overFed?.excessClass ??
      accounts.reduce((best, one) => (one.need > best.need ? one : best)).planting.crop.excessClass,
    overFedLine: legumeBed ? null : (overFed?.lines.caution ?? null),
    wantsMoreLater:
      state === 'about right' && !isProvided && openShare >= numbers['short least open'],
    strongly:
      state === 'over-fed' && overFed !== null && isRich(overFed.lines.stop, flowering.stop),
    flowerNitrate,
    laidThisSeason: laid,
  };
}
