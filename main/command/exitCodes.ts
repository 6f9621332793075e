/** What the command line ends with; one number for each kind of failure, documented in DEVELOPERS.md. */
export const exitCodes = {
  done: 0,
  /** a promise of ours was broken: a mistake in the program */
  broken: 1,
  /** the words typed are not understood */
  usage: 2,
  /** no such file, a folder, or no permission to read it */
  file: 3,
  /** the file is not a garden that this program reads */
  garden: 4,
  /** no bed of that name in the garden */
  bed: 5,
  /** a behaviour line did not hold */
  behaviour: 6,
  /** a weather file that cannot be read, or leaves something to be settled first */
  weather: 7,
  /** nothing to plan for, or with */
  plan: 8,
} as const;
