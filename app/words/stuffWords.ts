/** What the colours of layers stand for. */
export const stuffWords = {
  greens: 'greens',
  leaves: 'leaves',
  straw: 'straw, hay and stalks',
  compost: 'compost and manure',
  other: 'other material',
} as const;
