import type { IconName } from '../../controls/marks/iconPaths';
import type { PlaceInWindow } from '../../store/contract';

/** The places of the window as its head shows them. */
export const placesNow: readonly {
  readonly place: PlaceInWindow;
  readonly words: string;
  readonly icon: IconName;
}[] = [
  { place: 'this week', words: 'This week', icon: 'barrow' },
  { place: 'beds', words: 'Beds', icon: 'bed' },
  { place: 'season', words: 'Season', icon: 'season' },
  { place: 'lawn', words: 'Lawn', icon: 'lawn' },
  { place: 'tables', words: 'Tables', icon: 'packet' },
  { place: 'garden', words: 'Garden', icon: 'garden' },
];
