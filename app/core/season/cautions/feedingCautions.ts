import type { DayNumber } from '../../days';
import { type Limits, weigh } from '../limits';
import { plantingAccounts } from '../plantingAccount';
import { dugTieUp, lastDayOf, mineralInReach, sumDays } from '../seasonAccount';
import type { Caution } from '../verdict';
import type { CautionFacts, Run } from './facts';
import { factCaution, makeCaution } from './makeCaution';
import { nextStart } from './roomCautions';

/** When the crop goes short, and how much it lacks to its end. */
function shortCaution(run: Run, limits: Limits): Caution[] {
  const { verdict, input, result } = run;
  if (verdict.state !== 'short') return [];
  const wanted = plantingAccounts(input, result, input.today).reduce(
    (sum, account) => sum + account.stillWanted,
    0,
  );
  return [
    factCaution('short', 'short of nitrogen', limits, {
      number: wanted * (1 - verdict.forecastMet),
      threshold: null,
      unit: 'g/m2',
      date: verdict.turnsOn,
      detail: {
        room: verdict.room ?? 0,
        forecastMet: verdict.forecastMet,
        dryFirst: verdict.dryFirst ? 1 : 0,
      },
    }),
  ];
}

/** First day from which what was dug in gives back more than it takes, judged by the week. */
function tiedUpUntil(run: Run): DayNumber | null {
  const last = lastDayOf(run.result);
  for (let day = run.input.today + 1; day + 6 <= last; day += 1)
    if (dugTieUp(run.result, day, day + 6) <= 0) return day;
  return null;
}

/**
 * What was dug or hoed in holds nitrogen back from a crop. Counted from four weeks ago to four
 * weeks ahead: on a poor soil there is little left to take, and yet it is the rotting that took it.
 */
function tiedUpCaution(run: Run, limits: Limits): Caution[] {
  const { input, result } = run;
  const span = limits.numbers['short look-ahead'];
  const held = dugTieUp(result, input.today - span, input.today + span);
  const weighed = weigh(held, limits.lines['tied up']);
  if (!weighed) return [];
  const start = nextStart(run, input.today);
  const concerns = run.verdict.ratio !== null || (start !== null && start <= input.today + span);
  const until = tiedUpUntil(run);
  if (!concerns || until === input.today + 1) return [];
  return [
    makeCaution('tied up', weighed.weight, 'tied up', {
      number: held,
      threshold: weighed.threshold,
      unit: 'g/m2',
      date: until,
    }),
  ];
}

const startsWithin = (run: Run, day: DayNumber, days: number): boolean =>
  run.input.plantings.some(
    (planting) => planting.startDay >= day && planting.startDay <= day + days,
  );

/** Nitrogen that nobody will take, before rain does. */
function washingOutCautions(run: Run, facts: CautionFacts, limits: Limits): Caution[] {
  const { input, result, verdict } = run;
  const { numbers, lines } = limits;
  const cautions: Caution[] = [];
  const weeks = numbers['empty bed days'];
  if (verdict.ratio === null) {
    const weighed = weigh(verdict.inReach, lines['washing out in an empty bed']);
    if (weighed && !startsWithin(run, input.today + 1, weeks))
      cautions.push(
        makeCaution('washing out', weighed.weight, 'washing out in an empty bed', {
          number: verdict.inReach,
          threshold: weighed.threshold,
          unit: 'g/m2',
          date: input.today,
        }),
      );
  } else {
    const clearings = plantingAccounts(input, result, input.today)
      .map((account) => account.planting.clearingDay)
      .filter((day) => day !== null);
    const clearing = Math.max(...clearings);
    if (Number.isFinite(clearing) && clearing <= lastDayOf(result)) {
      const left = mineralInReach(result, clearing - 1);
      const weighed = weigh(left, lines['washing out at clearing']);
      if (weighed && !startsWithin(run, clearing, weeks))
        cautions.push(
          makeCaution('washing out', weighed.weight, 'washing out at clearing', {
            number: left,
            threshold: weighed.threshold,
            unit: 'g/m2',
            date: clearing,
          }),
        );
    }
  }
  const due = sumDays(
    result.rain,
    result,
    input.today + 1,
    input.today + numbers['rain due window'],
  );
  if (due >= numbers['rain due'] && verdict.nitrateMgPerKg > numbers['nitrate before rain'])
    cautions.push(
      factCaution('washing out', 'rain on nitrate', limits, {
        number: due,
        threshold: numbers['rain due'],
        unit: 'mm',
        detail: { nitrate: verdict.nitrateMgPerKg },
      }),
    );
  if (facts.ownWell && cautions.length > 0)
    cautions.push(factCaution('safety', 'own well', limits));
  return cautions;
}

/** Nitrate in leaf and head crops, which is a caution and not a state. */
function leafNitrateCaution(run: Run, limits: Limits): Caution[] {
  const { input, verdict, result } = run;
  const leaf = plantingAccounts(input, result, input.today).find((account) =>
    ['leaf', 'head'].includes(account.planting.crop.excessClass),
  );
  if (!leaf) return [];
  const weighed = weigh(verdict.nitrateMgPerKg, limits.lines['leaf nitrate']);
  return weighed
    ? [
        makeCaution('salad nitrate', weighed.weight, 'leaf nitrate', {
          number: verdict.nitrateMgPerKg,
          threshold: weighed.threshold,
          unit: 'mg/kg',
          detail: { plantingId: leaf.planting.id },
        }),
      ]
    : [];
}

/** Everything about a bed's nitrogen as it stands: short, tied up, about to be washed out, leaf nitrate. */
export const feedingCautions = (run: Run, facts: CautionFacts, limits: Limits): Caution[] => [
  ...shortCaution(run, limits),
  ...tiedUpCaution(run, limits),
  ...washingOutCautions(run, facts, limits),
  ...leafNitrateCaution(run, limits),
];

/** A layer dug or hoed in before a crop that takes nitrogen from it: what it holds back, and until when. */
export function layerTieUpCautions(
  before: Run,
  after: Run,
  layerIds: readonly string[],
  limits: Limits,
): Caution[] {
  const dug = after.input.layers.find(
    (layer) => layerIds.includes(layer.id) && layer.placement !== 'laid',
  );
  if (!dug) return [];
  const span = limits.numbers['short look-ahead'];
  const hasCrop = after.input.plantings.some(
    (planting) =>
      planting.startDay <= dug.day + span &&
      (planting.clearingDay === null || planting.clearingDay > dug.day),
  );
  if (!hasCrop) return [];
  const held =
    dugTieUp(after.result, dug.day, dug.day + span) -
    dugTieUp(before.result, dug.day, dug.day + span);
  const weighed = weigh(held, limits.lines['tied up']);
  if (!weighed) return [];
  let until: DayNumber | null = null;
  for (let day = dug.day + 1; day + 6 <= lastDayOf(after.result) && until === null; day += 1)
    if (dugTieUp(after.result, day, day + 6) <= 0) until = day;
  return [
    makeCaution('tied up', weighed.weight, 'tied up', {
      number: held,
      threshold: weighed.threshold,
      unit: 'g/m2',
      date: until,
      layerId: dug.id,
    }),
  ];
}

/** Greens on a leaf crop in its last weeks. */
export function saladCautions(
  run: Run,
  layers: readonly { id: string; day: DayNumber; isGreens: boolean }[],
  limits: Limits,
): Caution[] {
  const greens = layers.find((layer) => layer.isGreens);
  if (!greens) return [];
  const most = limits.numbers['salad days'];
  const salad = run.input.plantings.find(
    (planting) =>
      planting.crop.excessClass === 'leaf' &&
      planting.startDay <= greens.day &&
      planting.clearingDay !== null &&
      planting.clearingDay > greens.day &&
      planting.clearingDay - greens.day <= most,
  );
  if (!salad || salad.clearingDay === null) return [];
  return [
    factCaution('salad nitrate', 'greens before a salad', limits, {
      number: salad.clearingDay - greens.day,
      threshold: most,
      unit: 'days',
      date: salad.clearingDay,
      detail: { plantingId: salad.id },
      layerId: greens.id,
    }),
  ];
}
