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
