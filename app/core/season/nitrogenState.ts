import type { DayNumber } from '../days';
import { classLines, type ClassLines } from './excessLines';
import type { BedSeason } from './input';
import type { Limits } from './limits';
import {
  canFix,
  forecastMetOf,
  growsFrom,
  openShareOf,
  type PlantingAccount,
  plantingAccounts,
} from './plantingAccount';
import { lastDayOf, nitrateMgPerKg } from './seasonAccount';
import { turnsShortOn } from './shortOfNitrogen';
import type { NitrogenState } from './verdict';
import type { WatchedSeason } from './watchedSeason';

/** A bed's state and what it was judged by; nitrogen in g per m2 of bed. */
export interface NitrogenJudgement {
  readonly state: NitrogenState;
  /** on hand and to come over total need */
  readonly ratio: number;
  readonly accounts: readonly PlantingAccount[];
  readonly need: number;
  /** of it what is wanted by the end of the run */
  readonly needOfRun: number;
  readonly inCrop: number;
  readonly inReach: number;
  readonly expectedRelease: number;
  readonly expectedTieUp: number;
  readonly onHand: number;
  readonly nitrateMgPerKg: number;
  readonly forecastMet: number;
  readonly openShare: number;
  /** legumes hold half of the need or more */
  readonly isLegumeBed: boolean;
  /** the forecast meets what is still wanted, or little of it is open */
  readonly isProvided: boolean;
  readonly overFed: ClassLines | null;
  readonly flowerNitrate: number | null;
  /** first day on which a bed that is short goes without; null in every other state */
  readonly shortOn: DayNumber | null;
}

const total = (
  accounts: readonly PlantingAccount[],
  of: (account: PlantingAccount) => number,
): number => accounts.reduce((sum, account) => sum + of(account), 0);

/** Highest nitrate round the first flower of the fruit crop with the largest need [mg/kg]; null without one. */
function nitrateAtFlowering(
  accounts: readonly PlantingAccount[],
  input: BedSeason,
  run: WatchedSeason,
  limits: Limits,
): number | null {
  const fruit = accounts.filter((account) => account.planting.crop.excessClass === 'fruit');
  if (fruit.length === 0) return null;
  const { planting } = fruit.reduce((best, one) => (one.need > best.need ? one : best));
  const flower = growsFrom(planting) + (planting.crop.flowerDays ?? planting.crop.firstHarvestDays);
  const first = Math.max(run.firstDay, flower - limits.numbers['flower window before']);
  const last = Math.min(lastDayOf(run), flower + limits.numbers['flower window after']);
  let highest = 0;
  for (let day = first; day <= last; day += 1)
    highest = Math.max(highest, nitrateMgPerKg(input, run, day));
  return highest;
}

/** Nitrate that is enough for everything on the bed [mg/kg]: the most demanding crop's own row. */
export const enoughNitrate = (accounts: readonly PlantingAccount[]): number =>
  accounts.reduce((most, { planting }) => Math.max(most, planting.crop.enoughNitrateLow), 0);

/** Past a line of its class and, if it is a fruit, past a line of nitrate round its first flower. */
export const isRich = (
  { ratio, flowerNitrate }: Pick<NitrogenJudgement, 'ratio' | 'flowerNitrate'>,
  line: number,
  nitrateLine: number,
): boolean => ratio > line && (flowerNitrate === null || flowerNitrate > nitrateLine);

/**
 * The state of a bed on the evening of `today`: the first rule that holds, of over-fed, enough to
 * the end, enough for now, short, about right.
 *
 *     ratio = (taken so far, what was picked counted in + ready N of the top layer and of the part of
 *              the lower one that roots get to + release - tie-up from here to clearing) / total need
 *
 * Total need, never what remains of it: rain and time cannot make an over-fed bed look hungry. A
 * legume's need is the soil's share. Plantings add by their share of the bed.
 *
 * @param run days after `today` are its forecast
 * @param previous state when the bed was last looked at; a state is left only past its margin
 * @returns null where nothing stands that wants anything
 * @throws RangeError when `today` is not a day of the run
 */
export function judgeNitrogen(
  input: BedSeason,
  run: WatchedSeason,
  today: DayNumber,
  limits: Limits,
  previous: NitrogenState | null = null,
): NitrogenJudgement | null {
  if (today < run.firstDay || today > lastDayOf(run))
    throw new RangeError(`Day ${today} is not a day of this run`);
  const { numbers } = limits;
  const accounts = plantingAccounts(input, run, today);
  const need = total(accounts, (account) => account.need);
  if (accounts.length === 0 || need <= 0) return null;

  const inCrop = total(accounts, (account) => account.inCrop);
  const inReach = total(accounts, (account) => account.inReach);
  const expectedRelease = total(accounts, (account) => account.release);
  const expectedTieUp = total(accounts, (account) => account.tieUp);
  const onHand = inCrop + inReach + expectedRelease - expectedTieUp;

  const legumeNeed = total(
    accounts.filter((account) => canFix(account.planting)),
    (account) => account.need,
  );
  const isLegumeBed = legumeNeed >= need / 2;
  const needs = accounts.map((account) => ({
    excessClass: account.planting.crop.excessClass,
    need: account.need,
  }));
  const overFed = classLines(needs, limits, 'over-fed');
  const forecastMet = forecastMetOf(accounts);
  const openShare = openShareOf(accounts);
  const isFruit = overFed?.excessClass === 'fruit';
  const facts = {
    ratio: onHand / need,
    accounts,
    need,
    needOfRun: total(accounts, (account) => account.needOfRun),
    inCrop,
    inReach,
    expectedRelease,
    expectedTieUp,
    onHand,
    nitrateMgPerKg: nitrateMgPerKg(input, run, today),
    forecastMet,
    openShare,
    isLegumeBed,
    isProvided:
      isLegumeBed || forecastMet >= numbers['forecast meets'] || openShare < numbers['little open'],
    overFed,
    flowerNitrate: isFruit ? nitrateAtFlowering(accounts, input, run, limits) : null,
  };
  const state = richState(facts, limits, previous);
  if (state !== null) return { ...facts, state, shortOn: null };
  const shortOn = turnsShortOn(accounts, run, today, limits, previous === 'short');
  return { ...facts, state: shortOn === null ? 'about right' : 'short', shortOn };
}

/** The first of the states of plenty that holds; null: short, or about right. */
function richState(
  facts: Omit<NitrogenJudgement, 'state' | 'shortOn'>,
  limits: Limits,
  previous: NitrogenState | null,
): NitrogenState | null {
  const { numbers } = limits;
  const { ratio, overFed, isLegumeBed, isProvided } = facts;
  const flowering = limits.lines['nitrate at flowering'];
  if (overFed !== null && !isLegumeBed && isProvided) {
    const { caution } = overFed.lines;
    const holds =
      previous === 'over-fed'
        ? isRich(facts, caution - numbers['leaving over-fed'], numbers['leaving enough for now'])
        : isRich(facts, caution, flowering.caution);
    if (holds) return 'over-fed';
  }
  const line =
    previous === 'enough to the end'
      ? numbers['leaving enough to the end']
      : numbers['enough to the end'];
  if (isProvided && ratio > line) return 'enough to the end';
  const enoughLine = enoughNitrate(facts.accounts);
  const leaving = numbers['leaving enough for now'] / flowering.caution;
  const nitrateLine = previous === 'enough for now' ? leaving * enoughLine : enoughLine;
  return ratio <= numbers['enough to the end'] && facts.nitrateMgPerKg >= nitrateLine
    ? 'enough for now'
    : null;
}
