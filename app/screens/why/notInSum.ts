import { anyBed } from '../../document/bedPast';
import { measuredMatter } from '../../document/measuredMatter';
import type { Garden } from '../../document/schema';
import { coefficientRows } from '../../tables/coefficients';
import {
  clayThatHalvesRelease,
  organicMatterRow,
  releaseByClay,
  type TextureName,
} from '../../tables/soils';
import { percent } from '../../words/chartFormat';
import { rowSource } from './sourcesOf';

/** What a soil's clay would do to what it gives, in one line. */
const byClay = (texture: TextureName | null): string =>
  texture === null || releaseByClay(texture) === 1
    ? 'Not in this sum: clay slows it, sand speeds it. Clay that halves it'
    : `Not in this sum: by its clay this ${texture} may give ${percent(releaseByClay(texture))} of that. Clay that halves it`;

/** What nobody asks of a soil. */
const lime =
  'Not in this sum: lime, which nobody is asked for (assumed: none). A third of lime in a soil may take a third off.';

/** What no sum takes from a crop that stands dry. */
const drought =
  'Not in this sum: dry soil slows growth, and with it what a crop can use (assumed: never dry for long).';

/**
 * Where what the soil itself gives comes from, and what the sum leaves out.
 *
 * @param texture of the bed; null where several beds stand behind a figure
 */
export const soilGives = (texture: TextureName | null): readonly string[] => [
  rowSource('Of its nitrogen the soil itself gives', coefficientRows.soilReleaseRate),
  rowSource(byClay(texture), clayThatHalvesRelease),
  lime,
];

/** The same for one bed, with how much humus it has and how fast what lies on it rots. */
export function bedGives(garden: Garden, bedId: string): readonly string[] {
  const bed = anyBed(garden, bedId);
  if (!bed) return soilGives(null);
  return [
    rowSource('Organic matter', organicMatterRow(measuredMatter(garden, bed), bed.mulchYears)),
    ...soilGives(bed.texture),
    rowSource('How fast greens on top rot against dug in', coefficientRows.surfaceRateGreen),
  ];
}

/** Where what roots take in a day comes from, and what the sum leaves out. */
export const rootsTake = (): readonly string[] => [
  rowSource('Of what is ready, roots take in a day', coefficientRows.uptakeShare),
  drought,
];

/** What the sum of ammonia says too little of, measured once (`tests/validation`, CO07). */
const leanGrass =
  'A thick mulch of lean grass lost 39 % of its nitrogen in one trial (Larsson and others 1998): this sum gives it far less.';

/** Where what is lost to the air comes from, and what the sum leaves out. */
export const airTakes = (): readonly string[] => [
  rowSource('To the air from a cover', coefficientRows.ammoniaFactor),
  leanGrass,
  rowSource('To the air from wet soil', coefficientRows.denitrifiedShare),
];
