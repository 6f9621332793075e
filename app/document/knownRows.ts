/** Which ids of the tables a garden may point at. */
export interface KnownRows {
  hasCrop(id: string): boolean;
  hasMaterial(id: string): boolean;
}
export const knownRows: KnownRows = { hasCrop: () => true, hasMaterial: () => true };
