import { normal, seeded, seedFrom, type Random } from '../random';
import type { MonthlyNormals } from './input';
import { daysInMonth, monthlyKnots, smoothNormalOn } from './smoothNormals';

/** How daily weather strays from the monthly normals; rows in `app/tables/imaginedWeather.ts`. */
export interface WeatherSpread {
  /** standard deviation of a day's lowest and highest temperature, by month, January first [deg C] */
  readonly minimumSpreadCelsius: readonly number[];
  readonly maximumSpreadCelsius: readonly number[];
  /** correlation of a day's temperature departure with the day before, 0-1 */
  readonly persistence: number;
  /** correlation of the departures of lowest and highest temperature of a day, 0-1 */
  readonly togetherness: number;
  /** chance of rain after a dry day / chance of rain on any day, 0-1; below 1 wet days keep company */
  readonly wetAfterDry: number;
  /** shape of the Weibull distribution of the rain of a wet day above `wetDayMillimetres`; 1 = exponential */
  readonly amountShape: number;
  /** least rain of a day that counts as wet [mm] */
  readonly wetDayMillimetres: number;
}

export interface ImaginedMonth {
  readonly minimumCelsius: Float64Array;
  readonly maximumCelsius: Float64Array;
  readonly rainMillimetres: Float64Array;
}

/** least difference of a day's highest and lowest temperature [deg C], so that no day is upside down */
const leastRange = 0.5;
/** days of earlier departures that still matter: 0.7^30 is 2e-5 */
const memoryDays = 30;
const chainTries = 60;

/** streams of one month, kept apart so that more rain draws never shift the temperatures */
const temperatureStream = 1;
const rainStream = 2;

/** What is imagined from: normals and their spread, with what all months share. */
export interface ImaginedClimate {
  readonly normals: MonthlyNormals;
  readonly spread: WeatherSpread;
  readonly lowKnots: readonly number[];
  readonly highKnots: readonly number[];
  /** mean of a Weibull draw of the rain's shape */
  readonly meanDraw: number;
}

export const imaginedClimate = (
  normals: MonthlyNormals,
  spread: WeatherSpread,
): ImaginedClimate => ({
  normals,
  spread,
  lowKnots: monthlyKnots(normals.minimumCelsius),
  highKnots: monthlyKnots(normals.maximumCelsius),
  meanDraw: gamma(1 + 1 / spread.amountShape),
});

/** Normal numbers of a month, the raw stuff of its departures: one a day for each temperature. */
export interface Innovations {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

export function innovations(
  climate: ImaginedClimate,
  seed: number,
  year: number,
  month: number,
): Innovations {
  const { togetherness } = climate.spread;
  const apart = Math.sqrt(1 - togetherness * togetherness);
  const random = seeded(seedFrom(seed, year, month, temperatureStream));
  const days = daysInMonth(year, month);
  const low = new Float64Array(days);
  const high = new Float64Array(days);
  for (let day = 0; day < days; day++) {
    const first = normal(random);
    low[day] = first;
    high[day] = togetherness * first + apart * normal(random);
  }
  return { low, high };
}

export const innovationsBefore = (
  climate: ImaginedClimate,
  seed: number,
  year: number,
  month: number,
): Innovations =>
  month === 1
    ? innovations(climate, seed, year - 1, 12)
    : innovations(climate, seed, year, month - 1);

/**
 * Departures from normal in standard deviations, with day-to-day persistence.
 *
 *     a[t] = sqrt(1 - p^2) sum over k >= 0 of p^k e[t-k]
 *
 * which is a first-order autoregression written so that each day depends only on the draws of its
 * own and the month before: no month needs the whole past, and no edge shows between months.
 */
function departures(before: Float64Array, own: Float64Array, persistence: number): Float64Array {
  const result = new Float64Array(own.length);
  const scale = Math.sqrt(1 - persistence * persistence);
  for (let day = 0; day < own.length; day++) {
    const most = Math.min(memoryDays, before.length + day + 1);
    let weight = scale;
    let sum = 0;
    for (let back = 0; back < most; back++) {
      sum += weight * (back <= day ? own[day - back]! : before[before.length + day - back]!);
      weight *= persistence;
    }
    result[day] = sum;
  }
  return result;
}

/**
 * Takes the mean off, which also takes its variance, (1 + p)/(1 - p)/n of a day's; and gives that
 * back.
 */
function centred(values: Float64Array, persistence: number): Float64Array {
  const lost = (1 + persistence) / (1 - persistence) / values.length;
  const widening = 1 / Math.sqrt(Math.max(0.25, 1 - lost));
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => (value - mean) * widening);
}

/**
 * Which days are wet: a two-state chain whose long-run share of wet days is the normal's. Of
 * several chains the first whose count lies within one day of the normal is kept (else the
 * closest): the typical run should not hold a freak month.
 */
function wetDays(random: Random, days: number, wanted: number, wetAfterDry: number): boolean[] {
  const share = Math.min(1, wanted / days);
  const afterDry = Math.min(1, wetAfterDry * share);
  const afterWet = share > 0 ? Math.min(1, 1 - ((1 - share) * afterDry) / share) : 0;
  let best: boolean[] = [];
  let bestDistance = Infinity;
  for (let attempt = 0; attempt < chainTries; attempt++) {
    let wet = random() < share;
    const chain = [wet];
    while (chain.length < days) {
      wet = random() < (wet ? afterWet : afterDry);
      chain.push(wet);
    }
    const distance = Math.abs(chain.filter(Boolean).length - wanted);
    if (distance < bestDistance) {
      best = chain;
      bestDistance = distance;
    }
    if (distance <= 1) break;
  }
  return best;
}

/**
 * Rain of a month's days that adds up to its normal. Every wet day has at least the threshold's
 * rain; what is over is shared out by Weibull draws. A month with less rain than its wet days
 * would need has fewer of them, at least one while the normal is not zero.
 */
function monthRain(
  random: Random,
  days: number,
  total: number,
  wanted: number,
  spread: WeatherSpread,
): Float64Array {
  const rain = new Float64Array(days);
  if (!(total > 0)) return rain;
  const threshold = spread.wetDayMillimetres;
  const most = Math.max(1, Math.floor(total / threshold));
  const chain = wetDays(random, days, Math.min(wanted, most), spread.wetAfterDry);
  const wet = chain.flatMap((isWet, day) => (isWet ? [day] : []));
  if (wet.length === 0) wet.push(Math.floor(random() * days));
  while (wet.length > most) wet.splice(Math.floor(random() * wet.length), 1);
  const least = Math.min(threshold, total / wet.length);
  const draws = wet.map(() => Math.pow(-Math.log(1 - random()), 1 / spread.amountShape));
  const drawn = draws.reduce((sum, value) => sum + value, 0);
  const over = total - least * wet.length;
  wet.forEach((day, index) => {
    rain[day] = least + (drawn > 0 ? (over * (draws[index] ?? 0)) / drawn : over / wet.length);
  });
  return rain;
}

/** Gamma function for arguments over 1 (Lanczos, g = 7, nine terms; a recalled standard form). */
function gamma(x: number): number {
  const terms = [
    676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406,
    12.507343278686905, -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
  ];
  const z = x - 1;
  const sum = terms.reduce((all, term, index) => all + term / (z + index + 1), 0.9999999999998099);
  const t = z + 7.5;
  return Math.sqrt(2 * Math.PI) * Math.pow(t, z + 0.5) * Math.exp(-t) * sum;
}

/**
 * Rain of a month as it may fall in any one year: as many wet days as the chain happens to give,
 * each with its own Weibull draw, so that only the mean over many years is the normal's.
 */
function freeRain(
  random: Random,
  days: number,
  total: number,
  wanted: number,
  spread: WeatherSpread,
  meanDraw: number,
): Float64Array {
  const rain = new Float64Array(days);
  if (!(total > 0)) return rain;
  const usual = Math.max(1, Math.min(days, wanted));
  const share = usual / days;
  const afterDry = Math.min(1, spread.wetAfterDry * share);
  const afterWet = Math.min(1, 1 - ((1 - share) * afterDry) / share);
  const least = Math.min(spread.wetDayMillimetres, total / usual);
  const over = total / usual - least;
  let wet = random() < share;
  for (let day = 0; day < days; day++) {
    if (wet)
      rain[day] =
        least + (over * Math.pow(-Math.log(1 - random()), 1 / spread.amountShape)) / meanDraw;
    wet = random() < (wet ? afterWet : afterDry);
  }
  return rain;
}

/**
 * One imagined calendar month, of the typical run or (`isTypical` false, for draws) as any one year
 * may bring it: then neither its mean temperature nor its rain is held to the normal. It depends on
 * (seed, year, month), the normals and the spread alone, never on `today`, so a day that was
 * imagined once stays as it was until it is measured.
 *
 * - Temperature: the smooth normal of the day + departure x the month's standard deviation. The
 *   departures of a month have mean zero, so its mean is the normal's (days that would be upside
 *   down are drawn apart about their mean).
 * - Rain: dry and wet days by a first-order chain; each month's total is its normal.
 *
 * Not modelled: warmer dry days, spells longer than a month, differences between years. For those
 * a record of three whole years is used instead (`ahead.ts`).
 *
 * @validity months of real years; normals of any place. The spreads were measured in New York and
 *   are borrowed elsewhere
 * @source chain and autoregression are textbook forms; the numbers come as arguments
 */
export const imaginedMonth = (
  normals: MonthlyNormals,
  spread: WeatherSpread,
  seed: number,
  year: number,
  month: number,
  isTypical = true,
): ImaginedMonth => {
  const climate = imaginedClimate(normals, spread);
  const before = innovationsBefore(climate, seed, year, month);
  const own = innovations(climate, seed, year, month);
  return imaginedMonthOf(climate, before, own, seed, year, month, isTypical);
};

/** `imaginedMonth` where climate and innovations are at hand, as when month follows month. */
export function imaginedMonthOf(
  climate: ImaginedClimate,
  before: Innovations,
  own: Innovations,
  seed: number,
  year: number,
  month: number,
  isTypical: boolean,
): ImaginedMonth {
  const { normals, spread, lowKnots, highKnots } = climate;
  const { persistence } = spread;
  const days = daysInMonth(year, month);
  let low = departures(before.low, own.low, persistence);
  let high = departures(before.high, own.high, persistence);
  if (isTypical) {
    low = centred(low, persistence);
    high = centred(high, persistence);
  }
  const lowSpread = spread.minimumSpreadCelsius[month - 1] ?? 0;
  const highSpread = spread.maximumSpreadCelsius[month - 1] ?? 0;
  const minimumCelsius = new Float64Array(days);
  const maximumCelsius = new Float64Array(days);
  for (let day = 0; day < days; day++) {
    const lowest = smoothNormalOn(lowKnots, month, day + 1, days) + lowSpread * low[day]!;
    const highest = smoothNormalOn(highKnots, month, day + 1, days) + highSpread * high[day]!;
    const mean = (lowest + highest) / 2;
    const half = Math.max(leastRange, highest - lowest) / 2;
    minimumCelsius[day] = mean - half;
    maximumCelsius[day] = mean + half;
  }
  const random = seeded(seedFrom(seed, year, month, rainStream));
  const total = normals.rainMillimetres[month - 1] ?? 0;
  const wanted = normals.wetDays[month - 1] ?? 0;
  const rainMillimetres = isTypical
    ? monthRain(random, days, total, wanted, spread)
    : freeRain(random, days, total, wanted, spread, climate.meanDraw);
  return { minimumCelsius, maximumCelsius, rainMillimetres };
}
