import type { Standing } from '../../core/reference';
import { row, single } from '../row';
import type { CropRow, Row } from '../shapes';
import type { SourceKey } from '../sources';

interface NitrateLimits {
  readonly leafyLimit: Row;
  readonly poddingLimit: Row;
}

const unit = 'g nitrate-N per m2, 0-30 cm';
const leafy = 4.8;
const podding = 3.4;

const limits = (
  low: number,
  typical: number,
  high: number,
  place: string,
  standing: Standing,
): NitrateLimits => ({
  leafyLimit: row(low * leafy, typical * leafy, high * leafy, unit, 'Voisin2002', place, standing, {
    drawnPer: 'crop',
  }),
  poddingLimit: row(
    low * podding,
    typical * podding,
    high * podding,
    unit,
    'Voisin2002',
    place,
    standing,
    { drawnPer: 'crop' },
  ),
});

/** Nodules of peas stop at 48 kg/ha nitrate-N in leaf and 34 in pod; the spread is ours. */
export const peaLimits = limits(0.8, 1, 1.3, 'abstract: 48 kg/ha leafy, 34 podding', 'read');
/** Nothing was measured on beans day by day: the pea's limits, a fifth higher and far wider. */
export const beanLimits = limits(
  0.8,
  1.2,
  2.3,
  'borrowed from peas, times 1.2 (0.8-2.3)',
  'assumed',
);
/** Nothing was measured on this crop: the pea's limits as they are. */
export const borrowedPeaLimits = limits(0.8, 1, 1.3, 'borrowed from peas', 'assumed');

/** Shares of whole-plant nitrogen taken from the air in soil poor to middling in nitrate. */
export const legume = (
  low: number,
  typical: number,
  high: number,
  source: SourceKey,
  standing: Standing,
  place: string,
  nitrateLimits: NitrateLimits,
): NonNullable<CropRow['legume']> => ({
  usualPercentFixed: row(low, typical, high, '% of plant N', source, place, standing, {
    drawnPer: 'crop',
  }),
  highPercentFixed: single(high, '% of plant N', source, `${place}; upper end`, standing),
  nodulationDays: row(
    21,
    30,
    42,
    'days from sowing',
    'NebraskaLegumes',
    'up to six weeks; the lower end is ours',
    'mixed',
  ),
  ...nitrateLimits,
});
