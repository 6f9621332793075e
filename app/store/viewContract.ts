import type { LayingDraft, StopCaution } from './actionsContract';

export const places = [
  'this week',
  'beds',
  'season',
  'lawn',
  'tables',
  'trials',
  'garden',
] as const;
export type PlaceInWindow = (typeof places)[number];

/** A dialog that is open; the screens own what is in it. */
export type OpenDialog =
  | { readonly kind: 'save-as' }
  | { readonly kind: 'open' }
  | { readonly kind: 'close-unsaved' }
  | { readonly kind: 'about' }
  | { readonly kind: 'guide' }
  | { readonly kind: 'colour-scheme' }
  | { readonly kind: 'find' }
  | {
      readonly kind: 'stops';
      readonly drafts: readonly LayingDraft[];
      readonly stops: readonly StopCaution[];
    }
  /** what would not be whole on paper, and on which */
  | {
      readonly kind: 'print';
      readonly cut: readonly { readonly what: string; readonly papers: readonly string[] }[];
    }
  | {
      readonly kind: 'treatment';
      readonly lawnId?: string;
      readonly stockId?: string;
      /** of a lawn: something more that was put on it */
      readonly isAnother?: boolean;
    }
  | { readonly kind: 'edit'; readonly thing: string; readonly id: string | null };

export interface ViewSlice {
  readonly place: PlaceInWindow;
  /** how often a place was gone to, the same one again counted too */
  readonly visits: number;
  readonly openBedId: string | null;
  readonly dialog: OpenDialog | null;
  /** which stop of the tour one is at; null when one is not on it */
  readonly tourStop: number | null;
  /** taken from the garden when it opens, written along when it is saved; no step in the history */
  readonly shownUnits: 'metric' | 'us';
  goTo(place: PlaceInWindow): void;
  /** also asks for its state history */
  openBed(bedId: string | null): void;
  showDialog(dialog: OpenDialog | null): void;
  goOnTour(stop: number | null): void;
  setUnits(units: 'metric' | 'us'): void;
}
