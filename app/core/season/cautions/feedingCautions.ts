import type { DayNumber } from '../../days';
import { type Limits, weigh } from '../limits';
import { plantingAccounts } from '../plantingAccount';
import { at, lastDayOf, mineralInReach, nitrogenOwed, sumDays } from '../seasonAccount';
import type { Caution } from '../verdict';
import type { CautionFacts, Run } from './facts';
import { factCaution, makeCaution } from './makeCaution';
import { nextStart } from './roomCautions';

/**
 * What of the greens on hand mends a hungry bed now: one thin layer of the first kind, no more than
 * there is room for.
 */
function mendWith(
  run: Run,
  facts: CautionFacts,
  limits: Limits,
): Readonly<Record<string, string | number>> {
  const [first] = facts.onHand ?? [];
  const room = run.verdict.room ?? 0;
  if (!first || first.litres <= 0 || first.nitrogenGrams <= 0) return {};
  const area = run.input.areaM2;
  // 1 mm on 1 m2 is 1 L.
  const thin = limits.lines['layer just cut'].note * area;
  const wanted = (room * area * first.litres) / first.nitrogenGrams;
  const litres = Math.min(first.litres, thin, wanted);
  if (litres < leastMendingMillimetres * area) return {};
  if (!first.container) return { mendWith: first.name, mendLitres: litres };
  const halves = Math.max(1, Math.round((2 * litres) / first.container.litres));
  return {
    mendWith: first.name,
    mendLitres: litres,
    mendCount: halves / 2,
    mendOne: first.container.one,
    mendMany: first.container.many,
  };
}

/** Less than this is not worth carrying (ours). */
const leastMendingMillimetres = 0.5;

/** The day the crop goes short, how much it lacks to its end, and which material in store would do. */
function shortCaution(run: Run, facts: CautionFacts, limits: Limits): Caution[] {
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
        ...mendWith(run, facts, limits),
      },
    }),
  ];
}

/** First day after `from` on which a series is no longer above a line; null when it stays above it. */
function lastsUntil(
  series: ArrayLike<number>,
  run: Run,
  from: DayNumber,
  line: number,
): DayNumber | null {
  for (let day = from + 1; day <= lastDayOf(run.result); day += 1)
    if (at(series, run.result, day) <= line) return day;
  return null;
}

/**
 * What was dug or hoed in has taken nitrogen from the soil and not given it back yet, while a crop
 * stands or comes within weeks.
 */
function tiedUpCaution(run: Run, facts: CautionFacts, limits: Limits): Caution[] {
  const { input, result } = run;
  const owed = nitrogenOwed(result);
  const ahead = limits.numbers['short look-ahead'];
  let held = 0;
  let peak = input.today;
  for (let day = input.today; day <= Math.min(input.today + ahead, lastDayOf(result)); day += 1)
    if (at(owed, result, day) > held) {
      held = at(owed, result, day);
      peak = day;
    }
  const weighed = weigh(held, limits.lines['tied up']);
  if (!weighed) return [];
  const start = nextStart(run, input.today);
  if (run.verdict.ratio === null && (start === null || start > input.today + ahead)) return [];
  return [
    makeCaution('tied up', weighed.weight, 'tied up', {
      number: held,
      threshold: weighed.threshold,
      unit: 'g/m2',
      date: lastsUntil(owed, run, peak, limits.lines['tied up'].caution),
      detail: { what: rotting(run, facts) },
    }),
  ];
}

/** What was dug or hoed in last and may be what holds nitrogen back; '' when nobody can tell. */
function rotting(run: Run, facts: CautionFacts): string {
  const { input } = run;
  const layers = input.layers
    .filter(({ placement, day }) => placement !== 'laid' && day <= input.today)
    .map(({ id, day }) => ({ day, name: facts.layers[id]?.materialName ?? '' }));
  const crops = input.plantings.flatMap(({ id, clearingDay, topsFate }) =>
    clearingDay !== null && clearingDay <= input.today && topsFate === 'dug in'
      ? [{ day: clearingDay, name: facts.plantings[id]?.cropName ?? '' }]
      : [],
  );
  return (
    [...layers, ...crops]
      .filter(({ name }) => name !== '')
      .sort((one, other) => other.day - one.day || (one.name < other.name ? -1 : 1))[0]?.name ?? ''
  );
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
    if (weighed && !startsWithin(run, input.today, weeks))
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
  ...shortCaution(run, facts, limits),
  ...tiedUpCaution(run, facts, limits),
  ...washingOutCautions(run, facts, limits),
  ...leafNitrateCaution(run, limits),
];

/** A layer worked into the ground that the next crop must share nitrogen with: how much, until when. */
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
  const crops = after.input.plantings.filter(
    (planting) =>
      planting.startDay <= dug.day + span &&
      (planting.clearingDay === null || planting.clearingDay > dug.day),
  );
  if (crops.length === 0) return [];
  const end = Math.max(
    ...crops.map((planting) => planting.clearingDay ?? Math.max(dug.day, planting.usualEndDay)),
  );
  const without = nitrogenOwed(before.result);
  const more = nitrogenOwed(after.result).map((owed, index) => owed - (without[index] ?? 0));
  let held = 0;
  let peak = dug.day;
  for (let day = dug.day; day <= Math.min(end, lastDayOf(after.result)); day += 1)
    if (at(more, after.result, day) > held) {
      held = at(more, after.result, day);
      peak = day;
    }
  const weighed = weigh(held, limits.lines['tied up']);
  if (!weighed) return [];
  return [
    makeCaution('tied up', weighed.weight, 'tied up', {
      number: held,
      threshold: weighed.threshold,
      unit: 'g/m2',
      date: lastsUntil(more, after, peak, limits.lines['tied up'].caution),
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
