/** The parts of the Garden page, in their order; the id is that of the heading. */
export const gardenParts = [
  { id: 'garden-place', words: 'Place and units', icon: 'sun' },
  { id: 'garden-containers', words: 'Bags and buckets', icon: 'bucket' },
  { id: 'garden-beds', words: 'Beds and plantings', icon: 'bed' },
  { id: 'garden-stock', words: 'Heap and stores', icon: 'heap' },
  { id: 'garden-safety', words: 'Safety', icon: 'gate' },
  { id: 'garden-file', words: 'File', icon: 'paper' },
] as const;

export type GardenPartId = (typeof gardenParts)[number]['id'];
