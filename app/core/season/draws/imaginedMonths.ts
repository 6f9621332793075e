import { dayFromParts, dayOfYear } from '../../days';
import { extraterrestrialRadiation, hargreavesUnder } from '../../soil/evapotranspiration';
import { temperatureFactor } from '../../soil/temperature';
import {
  imaginedClimate,
  imaginedMonthOf,
  innovations,
  innovationsBefore,
  type Innovations,
  type WeatherSpread,
} from '../imagine';
import type { MonthlyNormals } from '../input';
import type { WeatherPlan } from '../runPlan';
import { daysInMonth } from '../smoothNormals';
import { weatherSeed } from './drawnWeather';

/** Days of one calendar month: the first and the last, counted from 0. */
export interface MonthDays {
  readonly year: number;
  readonly month: number;
  readonly first: number;
  readonly last: number;
}

/** Imagined months of all draws, made when first asked for and then shared by the beds of a garden. */
export interface ImaginedMonths {
  /** writes days of a draw into a run's plan from `index` on; its rain is left alone where there is a roof */
  write(days: MonthDays, draw: number, plan: WeatherPlan, index: number, isRoofed: boolean): void;
}

/** Months that are kept, at 1 MB for a thousand draws; what is asked beyond is made anew each time. */
const usualMonths = 48;

/** One calendar month of many draws; a draw's days stand together. */
interface DrawnMonth extends WeatherPlan {
  readonly year: number;
  readonly month: number;
  readonly days: number;
  /** Ra by day of the month [MJ/m2/day] */
  readonly radiation: Float64Array;
  /** 1 where a draw's days are in it */
  readonly isMade: Uint8Array;
}

/**
 * @param count draws 0 to count-1 may be asked for
 * @param mostMonths that are kept
 * @returns the same days as `drawnWeather` gives, bit by bit
 */
export function imaginedMonths(
  normals: MonthlyNormals,
  spread: WeatherSpread,
  latitudeDegrees: number,
  seed: number,
  count: number,
  mostMonths: number = usualMonths,
): ImaginedMonths {
  const climate = imaginedClimate(normals, spread);
  const kept = new Map<number, DrawnMonth>();
  // As months are asked for in order, the month before is mostly the one made last.
  let last: { key: number; draw: number; values: Innovations } | null = null;

  const open = (year: number, month: number, draws: number): DrawnMonth => {
    const days = daysInMonth(year, month);
    const series = (): Float64Array => new Float64Array(days * draws);
    const first = dayFromParts(year, month, 1);
    return {
      year,
      month,
      days,
      radiation: Float64Array.from({ length: days }, (_, day) =>
        extraterrestrialRadiation(latitudeDegrees, dayOfYear(first + day)),
      ),
      isMade: new Uint8Array(draws),
      rain: series(),
      mean: series(),
      airFactor: series(),
      evapotranspiration: series(),
    };
  };

  const make = (into: DrawnMonth, draw: number, at: number): void => {
    const { year, month } = into;
    const key = year * 12 + month;
    const own = weatherSeed(seed, draw);
    const before =
      last !== null && last.key === key - 1 && last.draw === draw
        ? last.values
        : innovationsBefore(climate, own, year, month);
    const values = innovations(climate, own, year, month);
    last = { key, draw, values };
    const made = imaginedMonthOf(climate, before, values, own, year, month, false);
    for (let day = 0; day < into.days; day++) {
      const low = made.minimumCelsius[day]!;
      const high = made.maximumCelsius[day]!;
      const mean = (low + high) / 2;
      into.rain[at + day] = made.rainMillimetres[day]!;
      into.mean[at + day] = mean;
      into.airFactor[at + day] = temperatureFactor(mean);
      into.evapotranspiration[at + day] = hargreavesUnder(into.radiation[day]!, low, high);
    }
  };

  return {
    write({ year, month, first, last: end }, draw, plan, index, isRoofed) {
      const key = year * 12 + month;
      let from = kept.get(key);
      if (!from && kept.size < mostMonths) {
        from = open(year, month, count);
        kept.set(key, from);
      }
      let at = draw * (from?.days ?? 0);
      if (!from) {
        from = open(year, month, 1);
        at = 0;
        make(from, draw, at);
      } else if (from.isMade[draw] === 0) {
        make(from, draw, at);
        from.isMade[draw] = 1;
      }
      const { rain, mean, airFactor, evapotranspiration } = from;
      for (let day = first; day <= end; day++) {
        const to = index + day - first;
        if (!isRoofed) plan.rain[to] = rain[at + day]!;
        plan.mean[to] = mean[at + day]!;
        plan.airFactor[to] = airFactor[at + day]!;
        plan.evapotranspiration[to] = evapotranspiration[at + day]!;
      }
    },
  };
}
