import { cropSources } from './sources/cropSources';
import { lawnSources } from './sources/lawnSources';
import { materialSources } from './sources/materialSources';
import { nitrateSources } from './sources/nitrateSources';
import { ownSources } from './sources/ownSources';
import { plantSources } from './sources/plantSources';
import type { Source } from './sources/shape';
import { soilSources } from './sources/soilSources';
import { weatherSources } from './sources/weatherSources';

export type { Source } from './sources/shape';

/** Every source a row may name. A row with any other key does not compile. */
export const sources = {
  ...ownSources,
  ...soilSources,
  ...lawnSources,
  ...cropSources,
  ...plantSources,
  ...nitrateSources,
  ...materialSources,
  ...weatherSources,
} as const;

export type SourceKey = keyof typeof sources;

export const sourceOf = (key: SourceKey): Source => sources[key];

/** "Hartz TK and others 2000", for a line on screen; the title and place are in `sourceOf`. */
export function shortSource(key: SourceKey): string {
  const { author, year } = sources[key] as Source;
  return year === null ? author : `${author} ${String(year)}`;
}
