/** A run of made-up gardens by number, both ends included. */
export interface GardenSet {
  readonly name: string;
  readonly first: number;
  readonly last: number;
  /** what these gardens may be used for */
  readonly note: string;
}

/**
 * The gardens that the plan is held to. While the plan is worked on only those of `tuning` are looked
 * at, which the bench does not report; those held out are played when it is done.
 */
export const gardenSets: readonly GardenSet[] = [
  {
    name: 'goal',
    first: 1,
    last: 200,
    note: 'the gardens of the goal; early versions of the plan, and the sizes of the lawns, were chosen after looking at them',
  },
  {
    name: 'held out',
    first: 1001,
    last: 1200,
    note: 'the plan was never tuned on these',
  },
];

/** Gardens to work on the plan with. */
export const tuning = { first: 2001, last: 2200 } as const;
