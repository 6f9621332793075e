import type { Emergence } from '../core/crop/emergence';
import { dayWord } from './chartFormat';
import type { DayStyle } from './dates';

/**
 * When seed in the ground is up, as part of a line: "up about 12 May".
 *
 * @param of.isImagined some of the days before it are imagined
 * @param of.relative the crop whose trials it goes by where nobody tried it, else null
 * @returns '' where nobody knows
 */
export function emergenceWords(
  emergence: Emergence,
  of: { readonly isImagined: boolean; readonly relative: string | null },
  style: DayStyle,
): string {
  if (emergence.kind === 'unknown') return '';
  const as = of.relative === null ? '' : ` (taken as ${of.relative})`;
  if (emergence.kind === 'not yet') return `in soil too cold to come up this season${as}`;
  const weather = of.isImagined ? ', by weather partly imagined' : '';
  return `up about ${dayWord(emergence.day, style)}${as}${weather}`;
}
