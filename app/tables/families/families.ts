import { row } from '../row';
import type { Row } from '../shapes';

export interface FamilyRow {
  readonly name: string;
  /** growing seasons without the family; a three-year rotation is two free seasons */
  readonly freeSeasons: Row;
  readonly reason: string;
}

const unit = 'growing seasons without the family';

/** The likely figure is our choice within the seasons that were read. */
const readSeasons = (low: number, typical: number, high: number): Row =>
  row(
    low,
    typical,
    high,
    unit,
    'ConnecticutRotation',
    'years by disease; 2-3 in general advice',
    'derived',
  );

const partlyReadSeasons = (low: number, typical: number, high: number): Row =>
  row(
    low,
    typical,
    high,
    unit,
    'IowaRotation',
    'general advice 2-3; years by disease recalled',
    'mixed',
  );

const recalledSeasons = (low: number, typical: number, high: number): Row =>
  row(low, typical, high, unit, 'Recalled', 'years by disease', 'memory');

/** How long each family stays away from a bed, and why. */
export const families = {
  Brassicaceae: {
    name: 'cabbage family',
    freeSeasons: readSeasons(2, 3, 7),
    reason: 'clubroot stays for years, blackleg and black rot for two to four',
  },
  Solanaceae: {
    name: 'nightshade family',
    freeSeasons: readSeasons(2, 3, 4),
    reason:
      'Verticillium wilt four years, fruit rots three, early blight grows worse with every crop',
  },
  Cucurbitaceae: {
    name: 'gourd family',
    freeSeasons: readSeasons(2, 2, 3),
    reason: 'scab, leaf spots and gummy stem blight',
  },
  Fabaceae: {
    name: 'pea family',
    freeSeasons: readSeasons(2, 2, 4),
    reason: 'root rots and white mould for several years',
  },
  Apiaceae: {
    name: 'carrot family',
    freeSeasons: partlyReadSeasons(2, 3, 3),
    reason: 'leaf blights; cavity spot and carrot fly that stay behind',
  },
  Amaryllidaceae: {
    name: 'onion family',
    freeSeasons: partlyReadSeasons(2, 3, 4),
    reason: 'white rot for many years, basal rot and downy mildew for three or four',
  },
  Amaranthaceae: {
    name: 'beet family',
    freeSeasons: readSeasons(2, 2, 3),
    reason: 'leaf spot three years, beet nematode longer',
  },
  Asteraceae: {
    name: 'daisy family',
    freeSeasons: readSeasons(1, 2, 3),
    reason: 'lettuce drop and bottom rot three years',
  },
  Poaceae: {
    name: 'grass family',
    freeSeasons: readSeasons(1, 1, 3),
    reason: 'smut and leaf blights; a good break for most vegetables',
  },
  Convolvulaceae: {
    name: 'bindweed family',
    freeSeasons: recalledSeasons(2, 3, 4),
    reason: 'scurf, black rot, root-knot nematode',
  },
  Malvaceae: {
    name: 'mallow family',
    freeSeasons: recalledSeasons(2, 2, 3),
    reason: 'root-knot nematode and wilts',
  },
  Polygonaceae: {
    name: 'dock family',
    freeSeasons: recalledSeasons(0, 1, 2),
    reason:
      'buckwheat leaves nothing behind; rhubarb stands for years, not again where its crown rotted',
  },
  Asparagaceae: {
    name: 'asparagus family',
    freeSeasons: recalledSeasons(8, 10, 20),
    reason: 'Fusarium wilt and root rot stay: not again on old asparagus ground',
  },
  Rosaceae: {
    name: 'rose family',
    freeSeasons: recalledSeasons(3, 4, 5),
    reason: 'Verticillium wilt, red core, and ground that is tired of them',
  },
  Lamiaceae: {
    name: 'mint family',
    freeSeasons: recalledSeasons(1, 2, 3),
    reason: 'basil wilt, mint rust',
  },
  Boraginaceae: {
    name: 'borage family',
    freeSeasons: recalledSeasons(0, 1, 1),
    reason: 'a stranger to vegetables: a good break',
  },
  Linaceae: { name: 'flax family', freeSeasons: recalledSeasons(3, 4, 6), reason: 'flax wilt' },
  Caprifoliaceae: {
    name: 'honeysuckle family',
    freeSeasons: recalledSeasons(0, 1, 1),
    reason: 'nothing that matters',
  },
  Montiaceae: {
    name: 'purslane family',
    freeSeasons: recalledSeasons(0, 1, 1),
    reason: 'nothing that matters',
  },
  Aizoaceae: {
    name: 'ice-plant family',
    freeSeasons: recalledSeasons(0, 1, 1),
    reason: 'nothing that matters',
  },
  Plantaginaceae: {
    name: 'plantain family',
    freeSeasons: recalledSeasons(1, 2, 3),
    reason: 'snapdragon rust, Verticillium wilt',
  },
  Tropaeolaceae: {
    name: 'nasturtium family',
    freeSeasons: recalledSeasons(0, 1, 1),
    reason: 'nothing that stays in the soil; cabbage whites eat it',
  },
  Violaceae: {
    name: 'violet family',
    freeSeasons: recalledSeasons(1, 2, 3),
    reason: 'pansy sickness',
  },
  Papaveraceae: {
    name: 'poppy family',
    freeSeasons: recalledSeasons(0, 1, 1),
    reason: 'nothing that matters',
  },
  Iridaceae: {
    name: 'iris family',
    freeSeasons: recalledSeasons(3, 4, 4),
    reason: 'corm rots of gladiolus',
  },
  Liliaceae: { name: 'lily family', freeSeasons: recalledSeasons(2, 3, 4), reason: 'tulip fire' },
  Begoniaceae: {
    name: 'begonia family',
    freeSeasons: recalledSeasons(0, 1, 1),
    reason: 'nothing that matters',
  },
  Balsaminaceae: {
    name: 'balsam family',
    freeSeasons: recalledSeasons(1, 2, 3),
    reason: 'downy mildew that rests in the soil',
  },
  Verbenaceae: {
    name: 'verbena family',
    freeSeasons: recalledSeasons(0, 1, 1),
    reason: 'nothing that matters',
  },
  Caryophyllaceae: {
    name: 'pink family',
    freeSeasons: recalledSeasons(2, 3, 3),
    reason: 'wilt of carnations and sweet william',
  },
  Ranunculaceae: {
    name: 'buttercup family',
    freeSeasons: recalledSeasons(0, 1, 1),
    reason: 'nothing that matters for annuals',
  },
} as const satisfies Record<string, FamilyRow>;

export type FamilyId = keyof typeof families;
