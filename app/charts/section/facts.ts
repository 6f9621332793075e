import type { Pool } from '../../core/season/flows';
import { topDepth } from '../../core/soil/water';
import type { LyingLayer } from '../cover/geometry';
import { coverFacts } from '../cover/geometry';
import type { PlantShown, SectionData, SectionMark } from './data';

/** What nitrogen in the soil is: for plants to take, held by what lives there, or not rotted yet. */
export const nitrogenKinds = ['ready', 'held', 'unrotted'] as const;
export type NitrogenKind = (typeof nitrogenKinds)[number];

export interface SoilLayerFacts {
  /** mm below the surface */
  readonly from: number;
  readonly to: number;
  /** share of the water that plants can draw on 0-1 */
  readonly water: number;
  /** g N per m2 of bed */
  readonly nitrogen: Readonly<Record<NitrogenKind, number>>;
}

/** All that a drawing of a bed shows, in the model's own units. */
export interface SectionFacts {
  readonly day: number;
  readonly plants: readonly PlantShown[];
  readonly marks: readonly SectionMark[];
  /** oldest first, as they lie from the soil up */
  readonly cover: readonly LyingLayer[];
  readonly vanished: readonly LyingLayer[];
  /** all cover as the model has it [mm] */
  readonly coverDepth: number;
  /** share of the ground it hides 0-1 */
  readonly hidden: number;
  /** g N per m2 that lies in the cover, free and bound */
  readonly coverNitrogen: { readonly free: number; readonly bound: number };
  readonly top: SoilLayerFacts;
  readonly lower: SoilLayerFacts;
  /** deg C */
  readonly soilTemperature: number;
}

/** What is to be seen of a bed on an evening of its run; throws RangeError for other days. */
export function sectionFacts(data: SectionData): SectionFacts {
  const { result, day, plants, marks } = data;
  const cover = coverFacts({ result, layers: data.layers, day });
  const index = day - result.firstDay;
  const pool = (name: Pool): number => result.pools[name][index] ?? 0;
  // compost is one pool on top or dug in: it lies where the layers say
  const isSlowOnTop = data.layers.some(({ stuff }) => stuff === 'compost');
  const slow = pool('slow');
  return {
    day,
    plants,
    marks,
    cover: cover.lying,
    vanished: cover.vanished,
    coverDepth: cover.totalDepth,
    hidden: cover.hidden,
    coverNitrogen: {
      free: pool('coverFree'),
      bound:
        pool('coverResidue') +
        pool('coverMicrobes') +
        pool('coverHumus') +
        (isSlowOnTop ? slow : 0),
    },
    top: {
      from: 0,
      to: topDepth,
      water: result.availableWaterTop[index] ?? 0,
      nitrogen: {
        ready: pool('mineralTop'),
        held: pool('dugMicrobes') + pool('dugHumus'),
        unrotted: pool('dugResidue') + (isSlowOnTop ? 0 : slow),
      },
    },
    lower: {
      from: topDepth,
      to: topDepth + (result.lowerDepth[index] ?? 0),
      water: result.availableWaterLower[index] ?? 0,
      nitrogen: { ready: pool('mineralLower'), held: 0, unrotted: 0 },
    },
    soilTemperature: result.soilTemperature[index] ?? 0,
  };
}
