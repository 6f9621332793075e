import { bedsBefore } from './bedPast';
import { gaugesOf } from './laidOut';
import { lawnTexture } from './lawnWeather';
import { ofBed } from './ofBed';
import type { Bed, Garden, Planting } from './schema';
import { sortedOnce } from './sortedOnce';

/**
 * Remembers with each thing the last that was made of it, for as long as all it was made of are the
 * very same. What is remembered goes when the thing does, so nothing gathers.
 *
 * @returns a function of thing, parts and maker. Parts must be all that the maker reads, none of which
 *   anybody can change any more; what it gives back must not be changed
 */
export function keptWith<Thing extends object, Value>(): (
  thing: Thing,
  parts: readonly unknown[],
  make: () => Value,
) => Value {
  const kept = new WeakMap<Thing, { readonly parts: readonly unknown[]; readonly value: Value }>();
  return (thing, parts, make) => {
    const before = kept.get(thing);
    if (before?.parts.length === parts.length) {
      let at = 0;
      while (at < parts.length && Object.is(before.parts[at], parts[at])) at++;
      if (at === parts.length) return before.value;
    }
    const value = make();
    kept.set(thing, { parts, value });
    return value;
  };
}

/** Plantings that go on where another stood, on whichever bed. */
const goingOn = sortedOnce(({ continues }: Planting) => continues && 'going on');

/**
 * All of a garden that a bed's season, the facts of its cautions and its spread can hang on, save what
 * is on hand of clippings: what all beds share, and what was written down for this one and for those it
 * was made of. Of the other beds only the soil of most counts, which is the lawn's, and plantings that
 * go on from one bed to the next.
 *
 * @param garden one that nobody can change any more: its parts are told apart by what they are
 */
export function bedParts(garden: Garden, bed: Bed): readonly unknown[] {
  const { applications, plantings, events, beds: _beds, retiredBeds: _retired, ...shared } = garden;
  const ground = bed.ground ? bedsBefore(garden, bed) : [];
  const parts: unknown[] = [...Object.values(shared), lawnTexture(garden), gaugesOf(garden)];
  for (const one of [bed, ...ground])
    parts.push(
      one,
      ...ofBed(applications, one.id),
      ...ofBed(plantings, one.id),
      ...ofBed(events, one.id),
    );
  if (bed.ground) parts.push(...goingOn(plantings, 'going on'));
  return parts;
}
