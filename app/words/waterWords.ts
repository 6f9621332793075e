import type { UnitSet } from '../amounts/unitSystem';
import type { Away, CoverSaved } from '../core/season/waterNeeds';
import { countOf, estimateWithUnit } from './figures';

/** What water is carried in. */
export interface Can {
  readonly litres: number;
  readonly name: string;
  readonly plural: string;
  /** "of 10 L" where it is not the garden's own */
  readonly size: string;
}

/** "5 1/2 cans of 10 L": to half a can, and never none. */
export function cansWords(litres: number, can: Can): string {
  const halves = Math.max(1, Math.round((2 * litres) / can.litres));
  return `${countOf(halves / 2, can.name, can.plural)}${can.size ? ` ${can.size}` : ''}`;
}

/** "12 mm, 8 cans of 10 L" */
export function pourWords(millimetres: number, areaM2: number, can: Can, units: UnitSet): string {
  return `${estimateWithUnit(millimetres, units.rain)}, ${cansWords(millimetres * areaM2, can)}`;
}

/** What the forecast of water is worth. */
export const waterForecastWords =
  'By the imagined days of a usual year: a hot week brings it sooner, a shower puts it off. A finger in the soil outranks it.';

/** less than this is told as none [mm] */
const leastMillimetres = 0.5;

/** Between what depths a cover's saving lies, as `savedWords` says it. */
export function savedRange({ soil }: Pick<CoverSaved, 'soil'>, units: UnitSet): string {
  const [low, high] = [soil.low, soil.high].map((millimetres) =>
    estimateWithUnit(Math.abs(millimetres), units.rain),
  ) as [string, string];
  const bare = (text: string): string => text.replace(` ${units.rain.symbol}`, '');
  return soil.low < 0
    ? `${bare(low)} more to ${high} ${soil.high < 0 ? 'more' : 'less'}`
    : `${bare(low)} to ${high}`;
}

/** What lies on a bed did to its water this season. */
export function savedWords({ soil, caught, atHand }: CoverSaved, units: UnitSet): string {
  const depth = (millimetres: number): string => estimateWithUnit(millimetres, units.rain);
  if (soil.high < leastMillimetres && caught < leastMillimetres)
    return 'What was laid has made no difference to its water yet.';
  const range = `${soil.low < 0 ? 'from ' : ''}${savedRange({ soil }, units)}`;
  const kept = `The soil under what you laid gave off roughly ${depth(Math.abs(soil.typical))} ${soil.typical < 0 ? 'more' : 'less'} (${range}).`;
  const gave =
    caught < leastMillimetres
      ? ''
      : ` The cover itself caught ${depth(caught)} of rain and gave it back to the air.`;
  const now =
    Math.abs(atHand) < leastMillimetres
      ? ' Today its roots have as much at hand as without.'
      : atHand > 0
        ? ` Today its roots have ${depth(atHand)} more at hand than without.`
        : ` Today its roots have ${depth(-atHand)} less at hand than without.`;
  return kept + gave + now;
}

/** How sure what is said of covers is. */
export const savedDoubt =
  'How much a cover slows drying was measured on few soils, mostly under straw. Wind, sun and how even it lies move it as much again.';

/** What to do for a bed before leaving it to itself; `day` writes a day of the two weeks. */
export function awayWords(
  { pour, dueWatered, dueCovered }: Away,
  back: number,
  pourTold: (millimetres: number) => string,
  day: (day: number) => string,
): string {
  const lasts = (due: number | null): boolean => due === null || due > back;
  const water = `water it to the full before you leave (${pourTold(pour)})`;
  if (lasts(dueWatered)) return `${water}. It then lasts till you are back.`;
  if (lasts(dueCovered))
    return `${water} and cover it a hand’s breadth deep with straw or leaves. Watered alone it is due by ${day(dueWatered ?? back)}.`;
  return `${water} and cover it. It does not last two weeks: ask somebody to water it by ${day(dueCovered ?? back)}.`;
}
