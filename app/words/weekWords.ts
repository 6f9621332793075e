/** What the form for a mowing says besides its questions. */
export const logWords = {
  change: 'Change',
  first: 'Log a mowing',
  again: 'Mown again?',
  noLawn: 'There is no lawn in this garden yet.',
  addLawn: 'Add one under Lawn',
  catchUp: 'Catch up on earlier mowings in one line',
} as const;

/** "From Back lawn, damp, today." What is taken for granted until something else is said. */
export const mowingTakenWords = (lawn: string, wetness: string, day: string): string =>
  `From ${lawn}, ${wetness}, ${day}.`;

/** Where a part of a mowing went. */
export const shareWords = {
  lawn: 'left on the lawn',
  inHand: 'still in hand',
  aHeap: 'the heap',
  store: 'a store',
  heap: (heap: string, leaves: string | null): string =>
    leaves === null ? heap : `${heap}, with ${leaves},`,
  dried: (store: string): string => `dried, in ${store},`,
  lost: 'lost in drying',
} as const;

/** What is said where the rest of a mowing is sent somewhere by hand. */
export const restChoiceWords = {
  withLeaves: (heap: string, litres: string, leaves: string): string =>
    `${heap}, with ${litres} of ${leaves}`,
  onLawn: 'The rest stays on the lawn.',
  onHeap: (heap: string): string => `The rest goes on ${heap}.`,
  newHeap: 'A heap was started and the rest put on it.',
  dried: 'The rest is dried and kept.',
  soaked: 'Soaked grass cannot be dried. Wait for a dry day, or change how wet it was.',
  forbidden:
    'Not on the heap: what the label forbids on a bed goes into compost too. Leaving it on the lawn is fine.',
} as const;

/** Of clippings that lay too long without a word where they went. */
export const goneWords = {
  title: 'Where did these go?',
  says: 'Lying in hand they have dried or rotted meanwhile: they are offered to no bed any more.',
  left: 'left lying',
  onBed: 'on a bed that day',
  many: (mowings: number): string =>
    `${mowings} earlier mowings are still without a word where they went. One by one below, or at once:`,
  allLeft: (mowings: number): string => `All ${mowings} were left lying`,
} as const;

/** How an amount of a layer may be said. */
export const amountHint = (system: 'metric' | 'us', mayBePart: boolean): string =>
  `Say 1 bag, 5 buckets, ${system === 'us' ? '1/4 in' : '6 mm'}${mayBePart ? ', half, the rest' : ''}`;
