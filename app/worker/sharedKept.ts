import { sharedDraws, type DrawsQuestion, type SharedDraws } from '../core/season/draws/runDraws';

/** Answers what a question shares with others of the same seed, number, place and climate. */
export type SharedKept = (question: DrawsQuestion) => SharedDraws;

/** As many sets as are in use in turn: the quick hundred and the whole thousand. */
const mostSets = 2;
/** What is drawn for amounts that were typed and taken back piles up; then all is made anew. */
const mostUses = 600;

/** The part of a question that what is shared hangs on. */
const keyOf = ({ input, weather, seed, count }: DrawsQuestion): string =>
  JSON.stringify([
    seed,
    count,
    weather.kind === 'generated'
      ? [input.latitudeDegrees, input.normals, weather.spread]
      : weather.kind,
  ]);

/**
 * Keeps what draws share over the beds of a garden and from question to question. A thousand draws
 * of a year ahead keep about 15 MB, so no more than two sets are kept: the ones last used.
 */
export function sharedKept(): SharedKept {
  const sets = new Map<string, { readonly shared: SharedDraws; uses: number }>();
  return (question) => {
    const key = keyOf(question);
    let found = sets.get(key);
    if (!found || found.uses >= mostUses) found = { shared: sharedDraws(question), uses: 0 };
    found.uses += 1;
    // last used, last in order
    sets.delete(key);
    sets.set(key, found);
    for (const oldest of [...sets.keys()].slice(0, -mostSets)) sets.delete(oldest);
    return found.shared;
  };
}
