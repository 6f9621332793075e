import { row, single } from '../row';
import type { CropId } from '../crops';
import type { Row } from '../shapes';
import type { FamilyId } from './families';

/** A disease that was seen in a bed keeps its plants away for longer than the family's usual seasons. */
export interface KnownTrouble {
  readonly name: string;
  readonly families: readonly FamilyId[];
  /** plants it crosses over to, or the only ones it concerns */
  readonly crops: readonly CropId[];
  /** null: never again on that ground */
  readonly freeSeasons: Row | null;
}

const unit = 'growing seasons without them';
const place = 'period without a susceptible crop';

export const troubles = {
  clubroot: {
    name: 'Clubroot',
    families: ['Brassicaceae'],
    crops: [],
    freeSeasons: single(7, unit, 'ConnecticutRotation', place, 'read'),
  },
  'Verticillium wilt': {
    name: 'Verticillium wilt',
    families: [],
    crops: ['tomato', 'pepper', 'eggplant', 'potato', 'strawberry'],
    freeSeasons: single(4, unit, 'ConnecticutRotation', place, 'read'),
  },
  'white mould': {
    name: 'White mould',
    families: [],
    crops: [
      'snap_bean_bush',
      'snap_bean_pole',
      'potato',
      'tomato',
      'lettuce_head',
      'lettuce_leaf',
      'cabbage',
    ],
    freeSeasons: row(
      3,
      4,
      8,
      unit,
      'ConnecticutRotation',
      'several years in print; the number is ours',
      'assumed',
    ),
  },
  'onion white rot': {
    name: 'White rot of onions',
    families: ['Amaryllidaceae'],
    crops: [],
    freeSeasons: row(8, 8, 20, unit, 'Recalled', 'its grains live 8-20 years', 'memory'),
  },
  'pea root rot': {
    name: 'Root rot of peas',
    families: ['Fabaceae'],
    crops: [],
    freeSeasons: single(6, unit, 'Recalled', 'six years and more', 'memory'),
  },
  'asparagus wilt': {
    name: 'Wilt of asparagus',
    families: [],
    crops: ['asparagus'],
    freeSeasons: null,
  },
} as const satisfies Record<string, KnownTrouble>;

export type TroubleId = keyof typeof troubles;
