import type { Wetness } from '../../document/schema';
import { planningRows } from '../../tables/planning';

export interface MixRow {
  readonly key: number;
  readonly materialId: string;
  readonly wetness: Wetness;
  /** empty: how much of it is what is asked */
  readonly text: string;
}

/** What the heap is for. `exact`: the ratio was typed. */
export type MixAim = 'heats' | 'rots' | 'any' | 'exact';

export interface MixDraft {
  readonly rows: readonly MixRow[];
  readonly aim: MixAim;
  /** as typed, or the aim's; empty: any */
  readonly ratio: string;
  readonly water: string;
  readonly nextKey: number;
}

/** Carbon to nitrogen of the aims that have a name, with papers. */
export const aimRows = {
  heats: planningRows.heapCarbonToNitrogen,
  rots: planningRows.slowHeapCarbonToNitrogen,
} as const;

export const aimRatio = (aim: Exclude<MixAim, 'exact'>): string =>
  aim === 'any' ? '' : String(aimRows[aim].typical);

export const startMix = (grass: string, system: 'metric' | 'us'): MixDraft => ({
  rows: [
    { key: 1, materialId: grass, wetness: 'dry', text: system === 'us' ? '20 lb' : '10 kg' },
    { key: 2, materialId: 'leaves-mixed-shredded', wetness: 'dry', text: '' },
  ],
  aim: 'heats',
  ratio: aimRatio('heats'),
  water: '',
  nextKey: 3,
});

export const mostMixed = 8;

export const withPart = (draft: MixDraft, system: 'metric' | 'us'): MixDraft => ({
  ...draft,
  nextKey: draft.nextKey + 1,
  rows: [
    ...draft.rows,
    {
      key: draft.nextKey,
      materialId: 'straw-wheat',
      wetness: 'dry',
      text: system === 'us' ? '2 lb' : '1 kg',
    },
  ],
});

export const withAim = (draft: MixDraft, aim: MixAim): MixDraft =>
  aim === 'exact' ? { ...draft, aim } : { ...draft, aim, ratio: aimRatio(aim) };
