import type { CropId } from './crops';
import type { SourceKey } from './sources';
import type { Standing } from '../core/reference';

/** What a crop is planted as that lifts a loose cover by its own strength. */
export interface PushesThrough {
  readonly plantedAs: 'bulb' | 'tuber' | 'crown' | 'set';
  readonly source: SourceKey;
  readonly place: string;
  readonly standing: Standing;
}

const planted = (plantedAs: PushesThrough['plantedAs'], place: string): PushesThrough => ({
  plantedAs,
  source: 'CommonPractice',
  place,
  standing: 'common practice',
});

/**
 * Crops whose shoots come from a store below the ground and through a cover laid on planting day.
 * Seed of the same crops (onion, asparagus, rhubarb) has no such store: for it nothing here holds.
 */
export const pushesThrough: Partial<Readonly<Record<CropId, PushesThrough>>> = {
  garlic: planted('bulb', 'cloves are strawed over in autumn when they are planted'),
  onion: planted(
    'set',
    'sets come up through a loose cover; of seedlings set out, they stand in it',
  ),
  potato: planted('tuber', 'laid on or in the ground and strawed over'),
  dahlia: planted('tuber', 'planted a hand deep; a cover over them keeps frost off'),
  asparagus: planted('crown', 'spears come through the cover that lies over winter'),
  rhubarb: planted('crown', 'buds come through a loose cover in spring'),
};

/** Whether a crop of the table, planted and not sown, comes up through a cover. */
export const comesThrough = (id: string): boolean =>
  (pushesThrough as Readonly<Record<string, PushesThrough | undefined>>)[id] !== undefined;
