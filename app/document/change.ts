import type { ParseFailure } from './failures';
import { findFault } from './references';
import { gardenSchema, type Garden } from './schema';
import { placeIn } from './thingNames';
import { phraseOf } from './wherePhrases';

type Fault = Extract<ParseFailure, { kind: 'dangling' | 'broken' }>;

const sections = Object.keys(gardenSchema.shape) as (keyof Garden)[];

/**
 * What a changed garden would be refused for when it is next opened, or null. Only sections that
 * are another object than before are checked against the schema, so a change costs what it touches.
 */
export function faultOfChange(before: Garden | null, after: Garden): Fault | null {
  for (const section of sections) {
    if (before && before[section] === after[section]) continue;
    const checked = gardenSchema.shape[section].safeParse(after[section]);
    if (checked.success) continue;
    const [issue] = checked.error.issues;
    return {
      kind: 'broken',
      where: placeIn(after, [section, ...(issue?.path ?? [])]),
      what: issue ? phraseOf(issue, after[section]) : 'not as it should be',
    };
  }
  return findFault(after);
}
