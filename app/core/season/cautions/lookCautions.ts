import type { DayNumber } from '../../days';
import type { Look } from '../draws/signs';
import type { Limits } from '../limits';
import { at } from '../seasonAccount';
import type { Caution } from '../verdict';
import type { CautionFacts, Run } from './facts';
import { factCaution } from './makeCaution';
import { plantForSlugs } from './weatherCautions';

type Told = 'smellsSour' | 'slugsUnderBoard';

/** The day of the latest look for something, if it was found then and not too long ago; else null. */
function foundOn(
  looks: readonly Look[],
  kind: Told,
  today: DayNumber,
  limits: Limits,
): DayNumber | null {
  let latest: Look | null = null;
  for (const look of looks) {
    if (look[kind] === undefined || look.day > today) continue;
    if (latest === null || look.day >= latest.day) latest = look;
  }
  if (latest === null || latest[kind] === false) return null;
  return today - latest.day <= limits.numbers['look holds'] ? latest.day : null;
}

/**
 * What nose and board have found on a bed: a mat that went sour and was not raked off or dug in
 * since, and slugs where they find something to eat under a cover. A look holds for a while; a
 * later one that found nothing ends it.
 */
export function lookCautions(run: Run, facts: CautionFacts, limits: Limits): Caution[] {
  const { input, result } = run;
  const { today } = input;
  const looks = facts.looks ?? [];
  const hidden = at(result.coverFraction, result, today);
  const found: Caution[] = [];
  const sour = foundOn(looks, 'smellsSour', today, limits);
  const isMended = input.events.some(
    ({ kind, day }) =>
      (kind === 'rake off' || kind === 'dig cover in') &&
      sour !== null &&
      day >= sour &&
      day <= today,
  );
  if (sour !== null && !isMended && hidden > 0)
    found.push(factCaution('sour mat', 'sour mat', limits, { date: sour }));
  const slugs = foundOn(looks, 'slugsUnderBoard', today, limits);
  const eaten = slugs === null ? null : plantForSlugs(run, today, limits);
  if (eaten && hidden >= limits.numbers['slug cover'])
    found.push(
      factCaution('slugs', 'slugs seen', limits, {
        date: slugs,
        detail: { plantingId: eaten.id },
      }),
    );
  return found;
}
