import type { BedChangeFailure } from '../document/bedChanges/changeFailure';

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

/** Why beds were not changed, and what to do; the garden is as it was. */
export function bedChangeSentence(
  failure: BedChangeFailure,
  dayOf: (date: string) => string,
): string {
  switch (failure.kind) {
    case 'no bed':
      return 'That bed is no longer in the garden. Nothing was changed.';
    case 'still to come':
      return 'That day is still to come. Choose today or a day before.';
    case 'written since':
      return `Something is written down for ${failure.bed} on ${dayOf(failure.date)}: it would belong to neither. Take that day, or a later one.`;
    case 'made since':
      return `${failure.bed} was itself made or resized on ${dayOf(failure.date)}. Choose a day after that one.`;
    case 'parts':
      return 'Both parts must be bigger than nothing and smaller than the whole.';
    case 'one bed':
      return 'Choose two beds or more.';
    case 'name':
      return failure.name.trim() === ''
        ? 'A bed needs a name.'
        : `There is a bed called ${failure.name} already. Give it another name.`;
    case 'made of it':
      return `Its ground is now part of ${listed(failure.beds)}. Undo that, or join those instead.`;
  }
}

/** Names of steps, as in "Undo: Split Long bed". */
export const bedStepNames = {
  resize: (bed: string) => `Change the size of ${bed}`,
  split: (bed: string) => `Split ${bed}`,
  join: (beds: readonly string[]) => `Join ${listed(beds)}`,
  retire: (beds: readonly string[]) =>
    beds.length === 1 ? `Put ${beds[0] ?? ''} away` : `Put ${String(beds.length)} beds away`,
  bringBack: (bed: string) => `Bring ${bed} back`,
  plantSame: (crop: string, beds: number) => `Plant ${crop} on ${String(beds)} beds`,
  waterSame: (beds: number) => `Water ${String(beds)} beds`,
  copyYear: (plantings: number, season: string) =>
    `Copy ${plantings === 1 ? '1 planting' : `${String(plantings)} plantings`} of ${season}`,
} as const;
