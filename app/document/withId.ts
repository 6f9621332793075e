import { sortedOnce } from './sortedOnce';

const underId = sortedOnce(({ id }: { readonly id: string }) => id);

/** The entry of that name; undefined where there is none. */
export const withId = <One extends { readonly id: string }>(
  list: readonly One[],
  id: string,
): One | undefined => underId(list, id)[0] as One | undefined;
