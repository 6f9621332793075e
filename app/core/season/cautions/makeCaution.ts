import type { DayNumber } from '../../days';
import { type FactId, type Limits, type RowId, weightRank } from '../limits';
import { type Caution, type CautionKind, cautionKinds, type Weight } from '../verdict';

interface CautionParts {
  readonly number?: number | null;
  readonly threshold?: number | null;
  readonly unit?: string;
  readonly date?: DayNumber | null;
  readonly detail?: Readonly<Record<string, string | number>>;
  readonly layerId?: string | null;
}

export const makeCaution = (
  kind: CautionKind,
  weight: Weight,
  row: RowId,
  parts: CautionParts = {},
): Caution => ({
  kind,
  weight,
  number: parts.number ?? null,
  threshold: parts.threshold ?? null,
  unit: parts.unit ?? '',
  row,
  date: parts.date ?? null,
  detail: parts.detail ?? {},
  layerId: parts.layerId ?? null,
});

/** A caution whose weight stands in the table beside its fact. */
export const factCaution = (
  kind: CautionKind,
  row: FactId,
  limits: Limits,
  parts: CautionParts = {},
): Caution => makeCaution(kind, limits.facts[row], row, parts);

/** Strongest first, then in the order of the kinds; entries of one kind keep their order. */
export const strongestFirst = (cautions: readonly Caution[]): readonly Caution[] =>
  [...cautions].sort(
    (a, b) =>
      weightRank[b.weight] - weightRank[a.weight] ||
      cautionKinds.indexOf(a.kind) - cautionKinds.indexOf(b.kind),
  );
