import type { PlaceInWindow } from '../../store/contract';

/** What is done by a button of a place, and can be found by typing wherever one is. */
export interface PlaceDoing {
  /** `data-doing` of the button */
  readonly id: string;
  readonly place: PlaceInWindow;
  readonly words: string;
  readonly also: readonly string[];
  /** the place as it is called */
  readonly note: string;
  readonly wantsBeds?: boolean;
}

export const placeDoings = [
  {
    id: 'paste-mowings',
    place: 'lawn',
    words: 'Mowings from a spreadsheet',
    also: ['paste', 'table', 'import', 'log'],
    note: 'Lawn',
  },
  {
    id: 'sow',
    place: 'season',
    words: 'Sow or plant something on a bed',
    also: ['planting', 'crop', 'seeds'],
    note: 'Season',
    wantsBeds: true,
  },
  {
    id: 'bring-weather',
    place: 'garden',
    words: 'Bring measured weather',
    also: ['import', 'station', 'rain', 'record', 'csv'],
    note: 'Garden',
  },
  {
    id: 'paste-rain',
    place: 'garden',
    words: 'Rain from a spreadsheet',
    also: ['paste', 'gauge', 'import'],
    note: 'Garden',
  },
  {
    id: 'thermometer',
    place: 'garden',
    words: 'Look at the thermometer',
    also: ['temperature', 'warm', 'cold'],
    note: 'Garden',
  },
  {
    id: 'offer',
    place: 'garden',
    words: 'Somebody offers something',
    also: ['hay', 'manure', 'given', 'straw'],
    note: 'Garden',
  },
  {
    id: 'several-beds',
    place: 'beds',
    words: 'Choose several beds',
    also: ['join', 'together', 'select', 'water', 'put away'],
    note: 'Beds',
    wantsBeds: true,
  },
  {
    id: 'copy-season',
    place: 'beds',
    words: 'Copy a season',
    also: ['last year', 'plantings', 'again', 'rotation'],
    note: 'Beds',
    wantsBeds: true,
  },
  {
    id: 'bed-sheets',
    place: 'beds',
    words: 'Sheets for paper',
    also: ['print', 'bed sheet'],
    note: 'Beds',
    wantsBeds: true,
  },
] as const satisfies readonly PlaceDoing[];

export type DoingId = (typeof placeDoings)[number]['id'];
