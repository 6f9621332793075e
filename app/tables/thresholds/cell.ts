import type { Standing } from '../../core/reference';
import type {
  FactId,
  InsteadKey,
  LineId,
  NumberId,
  ThresholdCell,
  ThresholdRow,
} from '../../core/season/limits';
import type { Weight } from '../../core/season/verdict';
import type { SourceKey } from '../sources';

type Cell = ThresholdCell & { readonly source: SourceKey };

/** Where a line comes from: source, place in it, standing, and whether we set it ourselves. */
type Basis = readonly [source: SourceKey, place: string, standing: Standing, judged?: 'judged'];

export const ours = (place: string): Basis => ['Assumed', place, 'assumed', 'judged'];
export const practice = (place: string): Basis => ['CommonPractice', place, 'common practice'];

const cell = (value: number, unit: string, basis: Basis): Cell => ({
  low: value,
  typical: value,
  high: value,
  unit,
  source: basis[0],
  place: basis[1],
  standing: basis[2],
  judged: basis[3] === 'judged',
  drawnPer: 'nothing',
});

type Step = readonly [value: number, basis: Basis] | null;

/** A row that is weighed: note, caution and stop, each with its own basis. */
export const line = (
  id: LineId,
  about: string,
  unit: string,
  note: Step,
  caution: Step,
  stop: Step,
  instead: InsteadKey,
): ThresholdRow => ({
  id,
  about,
  note: note && cell(note[0], unit, note[1]),
  caution: caution && cell(caution[0], unit, caution[1]),
  stop: stop && cell(stop[0], unit, stop[1]),
  number: null,
  fact: null,
  instead,
});

/** A single number of a rule. */
export const number = (
  id: NumberId,
  about: string,
  value: number,
  unit: string,
  basis: Basis,
  instead: InsteadKey = 'nothing',
): ThresholdRow => ({
  id,
  about,
  note: null,
  caution: null,
  stop: null,
  number: cell(value, unit, basis),
  fact: null,
  instead,
});

/** As `number`, with the range in which it is known. */
export const spread = (
  id: NumberId,
  about: string,
  low: number,
  value: number,
  high: number,
  unit: string,
  basis: Basis,
): ThresholdRow => {
  const row = number(id, about, value, unit, basis);
  return { ...row, number: row.number && { ...row.number, low, high } };
};

/** A rule without a number. */
export const fact = (
  id: FactId,
  about: string,
  weight: Weight,
  basis: Basis,
  instead: InsteadKey,
): ThresholdRow => ({
  id,
  about,
  note: null,
  caution: null,
  stop: null,
  number: null,
  fact: {
    weight,
    source: basis[0],
    place: basis[1],
    standing: basis[2],
    judged: basis[3] === 'judged',
  },
  instead,
});
