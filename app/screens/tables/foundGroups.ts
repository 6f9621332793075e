import { otherNamesOf } from '../../words/otherNames';
import { matchWords } from '../find/matchWords';
import type { ListedGroup } from './RowList';

/**
 * The rows whose name, other names or group begin as was typed, in their groups and order; where none
 * does, those a slip or two away.
 */
export function foundGroups<Line>(
  groups: readonly ListedGroup<Line>[],
  typed: string,
): { readonly left: readonly ListedGroup<Line>[]; readonly isNear: boolean } {
  if (typed.trim() === '')
    return { left: groups.filter(({ lines }) => lines.length > 0), isNear: false };
  const all = groups.flatMap((group) =>
    group.lines.map((line) => ({
      words: line.name,
      also: [...(group.also ?? []), ...otherNamesOf(line.tableId)],
      line,
    })),
  );
  const { things, isNear } = matchWords(all, typed);
  const found = new Set(things.map(({ line }) => line));
  return {
    left: groups
      .map((group) => ({ ...group, lines: group.lines.filter((line) => found.has(line)) }))
      .filter(({ lines }) => lines.length > 0),
    isNear,
  };
}
