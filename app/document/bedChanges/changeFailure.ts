/** Why a bed was not split, joined, resized, retired or brought back. */
export type BedChangeFailure =
  | { readonly kind: 'no bed' }
  /** the day lies ahead: what is not yet so cannot be reckoned with */
  | { readonly kind: 'still to come' }
  /** something is written down for a bed after that day; on `date` itself it can be changed */
  | { readonly kind: 'written since'; readonly bed: string; readonly date: string }
  /** the bed was itself split off, joined or resized on that day or after it */
  | { readonly kind: 'made since'; readonly bed: string; readonly date: string }
  /** the parts are not the whole, or one is nothing */
  | { readonly kind: 'parts' }
  | { readonly kind: 'one bed' }
  | { readonly kind: 'name'; readonly name: string }
  /** other beds stand on its ground now */
  | { readonly kind: 'made of it'; readonly beds: readonly string[] };
