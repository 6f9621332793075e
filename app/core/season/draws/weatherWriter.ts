import { partsFromDay } from '../../days';
import { dayKinds, type BedSeason } from '../input';
import { weatherPlan, type WeatherPlan } from '../runPlan';
import { daysInMonth } from '../smoothNormals';
import type { WeatherSource } from './drawnWeather';
import type { ImaginedMonths, MonthDays } from './imaginedMonths';

const imagined = dayKinds.indexOf('imagined');

/** The imagined days of a run, month by month, with their place in the run. */
function imaginedStretches(
  input: Pick<BedSeason, 'weather' | 'firstDay'>,
): readonly (MonthDays & { readonly index: number })[] {
  const { kind } = input.weather;
  const stretches: (MonthDays & { readonly index: number })[] = [];
  for (let index = 0; index < kind.length; index++) {
    if (kind[index] !== imagined) continue;
    const { year, month, dayOfMonth } = partsFromDay(input.firstDay + index);
    const monthEnds = index + daysInMonth(year, month) - dayOfMonth;
    let last = index;
    while (last < monthEnds && kind[last + 1] === imagined) last++;
    const first = dayOfMonth - 1;
    stretches.push({ year, month, first, last: first + last - index, index });
    index = last;
  }
  return stretches;
}

const copyOf = (plan: WeatherPlan): WeatherPlan => ({
  rain: plan.rain.slice(),
  evapotranspiration: plan.evapotranspiration.slice(),
  mean: plan.mean.slice(),
  airFactor: plan.airFactor.slice(),
});

/** Where a bed's weather is written for each draw: the days of `drawnWeather`, ready for a run. */
export interface WeatherWriter {
  readonly plan: WeatherPlan;
  write(draw: number): void;
}

/** @param months of the garden the bed is in; not needed where whole years stand in */
export function weatherWriter(
  input: BedSeason,
  source: WeatherSource,
  months: ImaginedMonths,
): WeatherWriter {
  const { firstDay, latitudeDegrees } = input;
  const plan = copyOf(weatherPlan(input.weather, firstDay, latitudeDegrees));
  if (source.kind === 'years') {
    const plans = source.seasons.map((season) => weatherPlan(season, firstDay, latitudeDegrees));
    return {
      plan,
      write(draw) {
        const own = plans[draw % plans.length];
        if (!own) return;
        plan.rain.set(own.rain);
        plan.evapotranspiration.set(own.evapotranspiration);
        plan.mean.set(own.mean);
        plan.airFactor.set(own.airFactor);
      },
    };
  }
  const stretches = imaginedStretches(input);
  const isRoofed = source.isRoofed ?? false;
  return {
    plan,
    write(draw) {
      for (const stretch of stretches) months.write(stretch, draw, plan, stretch.index, isRoofed);
    },
  };
}
