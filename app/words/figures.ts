import { toShown, type ShownUnit } from '../core/shownUnit';

const minus = (text: string): string => text.replace('-', '−');
const grouped = (text: string): string => text.replace(/^(\d{2,3})(\d{3})$/, '$1,$2');

/**
 * An estimate to two figures: 77.4 as "77", 1234 as "1200", 0.0456 as "0.046". No false digits,
 * and none that say nothing: 2.0 is "2".
 */
export function twoFigures(value: number): string {
  if (!Number.isFinite(value)) return '–';
  if (Math.abs(value) < 5e-7) return '0';
  const rounded = Number(value.toPrecision(2));
  const text = Math.abs(rounded) < 1e-4 ? rounded.toFixed(7).replace(/0+$/, '') : String(rounded);
  return minus(grouped(text));
}

/**
 * A length on a ruler in inches: to the eighth, below half an inch to the sixteenth, from six
 * inches to the half. 13 mm is "1/2 in".
 */
export function rulerFraction(value: number): string {
  const size = Math.abs(value);
  const parts = size < 0.5 ? 16 : size < 6 ? 8 : 2;
  const steps = Math.round(size * parts);
  const whole = Math.floor(steps / parts);
  let top = steps % parts;
  let bottom = parts;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const fraction = top === 0 ? '' : `${top}/${bottom}`;
  const text = [whole > 0 || fraction === '' ? String(whole) : '', fraction]
    .filter(Boolean)
    .join(' ');
  return value < 0 && steps > 0 ? `−${text}` : text;
}

/** An estimate in a shown unit, without the unit. */
export function estimate(inside: number, unit: ShownUnit): string {
  const shown = toShown(inside, unit);
  if (unit.style === 'fraction') return rulerFraction(shown);
  // to two figures 102 F would be 100
  return unit.style === 'whole' ? minus(String(Math.round(shown) || 0)) : twoFigures(shown);
}

export const estimateWithUnit = (inside: number, unit: ShownUnit): string =>
  `${estimate(inside, unit)} ${unit.symbol}`;

/** For reading aloud: "77 grams", "1 pound". */
export function estimateSpoken(inside: number, unit: ShownUnit): string {
  const text = estimate(inside, unit);
  return `${text} ${text === '1' ? unit.one : unit.many}`;
}

/** "1.4 times"; what comes to one is "once". */
export const timesWords = (ratio: number): string =>
  twoFigures(ratio) === '1' ? 'once' : `${twoFigures(ratio)} times`;

/** "about 2 bags"; what is less than a quarter is not said to be about that. */
export const aboutWords = (amount: string): string =>
  amount.startsWith('less than') ? amount : `about ${amount}`;

/** "1 bag", "2 1/2 bags", "half a bag" as figures: "1/2 bag". Estimates, to the quarter below ten. */
export function countOf(count: number, one: string, many: string): string {
  if (count >= 10) return `${twoFigures(count)} ${many}`;
  const quarters = Math.round(count * 4);
  if (quarters === 0 && count > 0) return `less than 1/4 ${one}`;
  const text = ['', '1/4', '1/2', '3/4'][quarters % 4] ?? '';
  const whole = Math.floor(quarters / 4);
  const number = [whole > 0 || text === '' ? String(whole) : '', text].filter(Boolean).join(' ');
  return `${number} ${quarters > 0 && quarters <= 4 ? one : many}`;
}
