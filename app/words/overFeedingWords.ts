import type { UnitSet } from '../amounts/unitSystem';
import type { Caution } from '../core/season/verdict';
import { oddsWords } from './imaginedWords';
import { otherCauses } from './states';

const without = (inTen: number): string => {
  const seasons = Math.round(inTen);
  if (seasons >= 10) return 'nearly all without it';
  return `${seasons < 1 ? 'hardly any' : seasons} without it`;
};

/** What it does, in few words; of flowers too little is known to say any. */
const harms: Readonly<Record<string, string>> = {
  fruit: ': leaf first, fruit late',
  storage: ': tops, and poor keeping',
  'tender storage': ': tops in place of roots',
};

/**
 * The odds of too much before a crop flowers, sets fruit or fills, in one line; a second one where
 * the weather may be to blame as well.
 */
export function overFeedingSentence(
  { number, detail, row, layerId }: Caution,
  { crop, it, day }: { readonly crop: string; readonly it: string; readonly day: string },
  units: UnitSet,
): string {
  const excessClass = String(detail['excessClass']);
  const sets = excessClass === 'flower' || excessClass === 'fruit';
  const when = sets ? `at first flower, about ${day}` : `while ${it}, from about ${day}`;
  const sure = row === 'over-feeding all but sure' ? 'all but surely ' : '';
  const layer = layerId === null ? '' : ` (${without(Number(detail['without'] ?? 0))})`;
  // not the word of the bed's state, which is judged by the day itself and may have other odds
  return `${crop}: ${sure}too much ready ${when}, ${oddsWords((number ?? 0) / 10)}${layer}${harms[excessClass] ?? ''}.${excessClass === 'fruit' ? otherCauses(detail, units) : ''}`;
}
