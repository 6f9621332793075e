/**
 * `source.map(make)` whose list is of one build, however often it was asked for before. The list
 * that `map` makes is built otherwise once the code around it has become fast, and all code that has
 * been made fast for the first build is then made anew.
 */
export function listOf<From, To>(
  source: readonly From[],
  make: (from: From, at: number) => To,
): To[] {
  const list: To[] = [];
  for (let at = 0; at < source.length; at++) list.push(make(source[at]!, at));
  return list;
}
