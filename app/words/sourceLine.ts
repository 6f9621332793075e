import type { Standing } from '../core/reference';
import type { ThresholdBasis } from '../core/season/limits';

const standingWords: Readonly<Record<Standing, string>> = {
  read: 'read there',
  reported: 'seen second-hand',
  derived: 'worked out from what was read there',
  mixed: 'partly recalled: an estimate',
  memory: 'recalled, not checked: an estimate',
  assumed: 'an estimate of our own',
  'common practice': 'no trial behind it',
  definition: 'so by definition',
  measured: 'your own measurement',
};

const startsLarge = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * Where the line of a caution comes from and how it stands: "Hartz TK and others 2000: ... Read
 * there." A line that we set ourselves says so, whatever it leans on.
 */
export function sourceLine(
  basis: Pick<ThresholdBasis, 'source' | 'place' | 'standing' | 'judged'>,
): string {
  const standing = startsLarge(standingWords[basis.standing]);
  if (basis.standing === 'assumed') return `Our own judgement: ${basis.place}.`;
  if (basis.standing === 'definition')
    return `${startsLarge(basis.place)}: ${standing.toLowerCase()}.`;
  const own = basis.judged ? ' The line itself is our judgement.' : '';
  return `${basis.source}: ${basis.place}. ${standing}.${own}`;
}
