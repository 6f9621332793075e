import type { DrawnPer, Standing } from '../core/reference';
import type { Row } from './shapes';
import type { SourceKey } from './sources';

interface RowExtra {
  readonly drawnPer?: DrawnPer;
  readonly note?: string;
}

/** One cited number; low, typical and high in the order a reader says them. */
export const row = (
  low: number,
  typical: number,
  high: number,
  unit: string,
  source: SourceKey,
  place: string,
  standing: Standing,
  extra: RowExtra = {},
): Row => ({ low, typical, high, unit, source, place, standing, ...extra });

/** A number for which no range is known or wanted: it is never drawn. */
export const single = (
  value: number,
  unit: string,
  source: SourceKey,
  place: string,
  standing: Standing,
  note?: string,
): Row => ({
  low: value,
  typical: value,
  high: value,
  unit,
  source,
  place,
  standing,
  drawnPer: 'nothing',
  ...(note === undefined ? {} : { note }),
});
