import type { DayNumber } from '../../days';
import type { LayerInput, PlantingInput } from '../input';
import type { Limits } from '../limits';
import { dayKinds } from '../input';
import { standingPlantings } from '../plantingAccount';
import { at, meanDays, sumDays } from '../seasonAccount';
import type { Caution } from '../verdict';
import type { CautionFacts, Run } from './facts';
import { factCaution } from './makeCaution';
import { handsHigh } from './plantSize';

/** A day counts as wet from 1 mm on, as the monthly normals count it. */
const wetDayMillimetres = 1;

/** A planting that slugs would eat on a day: leaves at any age, seedlings and young heads. */
export const plantForSlugs = (
  run: Run,
  day: DayNumber,
  limits: Limits,
): PlantingInput | undefined =>
  run.input.plantings.find((planting) => {
    // What was cleared today still had its slugs this week, and seed sown this week is next.
    const isHere =
      planting.startDay <= day + 7 &&
      (planting.clearingDay === null || planting.clearingDay >= day);
    if (!isHere) return false;
    if (planting.crop.excessClass === 'leaf') return true;
    const mayBeEaten = planting.sown || planting.crop.excessClass === 'head';
    return mayBeEaten && handsHigh(run, planting, day, limits) < limits.numbers['slug young'];
  });

/** Wet, mild weather over a cover where slugs find seedlings or leaves. */
export function slugCautions(
  run: Run,
  day: DayNumber,
  limits: Limits,
  layerId: string | null,
): Caution[] {
  const { numbers } = limits;
  const { result } = run;
  const first = day - 6;
  const rain = sumDays(result.rain, result, first, day);
  let wetDays = 0;
  for (let one = Math.max(first, result.firstDay); one <= day; one += 1)
    if (at(result.rain, result, one) >= wetDayMillimetres) wetDays += 1;
  const nights = meanDays(result.airMinimum, result, first, day) ?? 0;
  const isWet = rain >= numbers['slug rain'] || wetDays >= numbers['slug wet days'];
  if (!isWet || nights <= numbers['slug night']) return [];
  if (at(result.coverFraction, result, day) < numbers['slug cover']) return [];
  const eaten = plantForSlugs(run, day, limits);
  if (!eaten) return [];
  return [
    factCaution('slugs', 'slug weather', limits, {
      number: rain,
      threshold: numbers['slug rain'],
      unit: 'mm',
      detail: { wetDays, nightCelsius: nights, plantingId: eaten.id },
      layerId,
    }),
  ];
}

/** A layer on dry soil: it keeps the next rain for itself. */
export function drySoilCautions(
  before: Run,
  layers: readonly LayerInput[],
  limits: Limits,
): Caution[] {
  const layer = layers.find((one) => one.placement === 'laid');
  if (!layer) return [];
  const left = at(before.result.availableWaterTop, before.result, layer.day);
  if (left >= limits.numbers['dry layer']) return [];
  return [
    factCaution('dry soil', 'dry soil first', limits, {
      number: left,
      threshold: limits.numbers['dry layer'],
      unit: 'share',
      date: layer.day,
      layerId: layer.id,
    }),
  ];
}

/** Greens just cut, with the glass or film shut over them: the ammonia stays in. */
export function glassCautions(
  layers: readonly LayerInput[],
  facts: CautionFacts,
  limits: Limits,
): Caution[] {
  if (facts.roof === 'open') return [];
  const layer = layers.find(
    (one) => one.placement === 'laid' && one.isGreens && one.condition !== 'crisp',
  );
  if (!layer) return [];
  return [
    factCaution('ammonia under glass', 'fresh greens under glass', limits, {
      number: limits.numbers['glass days'],
      threshold: limits.numbers['glass days'],
      unit: 'days',
      date: layer.day + limits.numbers['glass days'],
      layerId: layer.id,
    }),
  ];
}

/** Before the last frost a cover makes clear nights colder for tender plants above it. */
export function frostCautions(
  run: Run,
  facts: CautionFacts,
  day: DayNumber,
  limits: Limits,
  layerId: string | null,
): Caution[] {
  const lastFrost = facts.lastSpringFrost;
  if (lastFrost === null || day > lastFrost) return [];
  const tender = run.input.plantings.find(
    (planting) =>
      planting.crop.frostTender &&
      planting.startDay <= lastFrost &&
      (planting.clearingDay === null || planting.clearingDay > day),
  );
  if (!tender) return [];
  return [
    factCaution('frost', 'frost over cover', limits, {
      date: lastFrost,
      detail: { plantingId: tender.id },
      layerId,
    }),
  ];
}

const imagined = dayKinds.indexOf('imagined');

/**
 * Plants that a measured night is likely to have killed and that nobody has cleared since, each
 * with its first such night. Nights that are only imagined kill nothing, nor do any under a roof; a
 * plant that stays for years comes again.
 */
export function frostKillCautions(
  { input, result }: Run,
  facts: CautionFacts,
  limits: Limits,
): Caution[] {
  if (facts.roof !== 'open') return [];
  return standingPlantings(input, input.today).flatMap((planting): Caution[] => {
    const killedAt = facts.plantings[planting.id]?.killedAtCelsius;
    if (killedAt === undefined || planting.seasons) return [];
    for (let day = Math.max(planting.startDay, result.firstDay); day <= input.today; day += 1) {
      const night = at(result.airMinimum, result, day);
      if (night > killedAt || at(result.kind, result, day) === imagined) continue;
      return [
        factCaution('frost kill', 'killed by frost', limits, {
          number: night,
          threshold: killedAt,
          unit: 'deg C',
          date: day,
          detail: { plantingId: planting.id },
        }),
      ];
    }
    return [];
  });
}
