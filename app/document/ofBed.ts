import { sortedOnce } from './sortedOnce';

const underBed = sortedOnce(({ bedId }: { readonly bedId?: string }) => bedId);

/** The entries of one bed, in their order; rain, which is of the whole garden, is of none. */
export const ofBed = <One extends object>(
  list: readonly One[],
  bedId: string,
): readonly Extract<One, { readonly bedId: string }>[] =>
  underBed(list, bedId) as readonly Extract<One, { readonly bedId: string }>[];
