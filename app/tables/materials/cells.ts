import type { Standing } from '../../core/reference';
import { row } from '../row';
import type { Row } from '../shapes';
import type { SourceKey } from '../sources';

type Cell = (
  low: number,
  typical: number,
  high: number,
  source: SourceKey,
  standing: Standing,
  place: string,
) => Row;

const cell =
  (unit: string, drawnPer: 'material' | 'mowing' | 'nothing'): Cell =>
  (low, typical, high, source, standing, place) =>
    row(low, typical, high, unit, source, place, standing, { drawnPer });

export const nitrogen = cell('% of dry matter', 'material');
/** Follows nitrogen when nitrogen is drawn or measured: the carbon stays. */
export const carbonToNitrogen = cell('g C per g N', 'nothing');
export const moisture = cell('% of fresh weight', 'mowing');
export const density = cell('kg fresh per m3', 'mowing');
export const slow = cell('share of nitrogen', 'material');

/** Nobody printed how dense a cover settles: ours throughout. */
export const settled = (low: number, typical: number, high: number): Row =>
  row(low, typical, high, 'kg dry matter per m3', 'Assumed', 'settled on a bed', 'assumed');

export const mineral = (low: number, typical: number, high: number): Row =>
  row(low, typical, high, 'share of nitrogen', 'Assumed', 'ready at once', 'assumed', {
    drawnPer: 'material',
  });
