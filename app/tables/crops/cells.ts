import type { Standing } from '../../core/reference';
import { row, single } from '../row';
import type { CropRow, Row } from '../shapes';
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
  (unit: string, drawn = false): Cell =>
  (low, typical, high, source, standing, place) =>
    row(low, typical, high, unit, source, place, standing, drawn ? { drawnPer: 'crop' } : {});

/** Nitrogen in the crop above ground with what is harvested, at the good yield. */
export const uptake = cell('g N per m2', true);
export const goodYield = cell('kg fresh per m2');
export const removed = cell('g N per kg fresh');
export const days = cell('days');
export const base = cell('deg C');
export const depth = cell('cm');
export const carbonToNitrogen = cell('g C per g N');
export const nitrate = cell('mg nitrate-N per kg, 0-30 cm');

/** Where the crop has no published value of its own. */
export const generalNitrate = nitrate(
  20,
  20,
  25,
  'TexasNewsletter2006',
  'read',
  'cabbage, celery, lettuce, sweet corn, tomato; used for the rest',
);

/** A cover put on before this keeps the soil cold for beans, corn, squash and sweet potatoes. */
export const warmSoil = single(
  15,
  'deg C',
  'Assumed',
  'near the lowest good germination of beans (Harrington and Minges 1954: 1 % at 10, 97 % at 15)',
  'assumed',
);

const factor = 'share of ET0';

/** Crop coefficients and the share of soil water a crop may use, both printed for the crop named. */
export const water = (
  start: number,
  middle: number,
  end: number,
  depletion: number,
  faoCrop: string,
): Pick<CropRow, 'cropCoefficients' | 'depletionShare'> => ({
  cropCoefficients: {
    start: single(start, factor, 'Allen1998', `table 12, ${faoCrop}`, 'read'),
    middle: single(middle, factor, 'Allen1998', `table 12, ${faoCrop}`, 'read'),
    end: single(end, factor, 'Allen1998', `table 12, ${faoCrop}`, 'read'),
  },
  depletionShare: single(
    depletion,
    'share of available water',
    'Allen1998',
    `table 22, ${faoCrop}`,
    'read',
  ),
});

const missing = 'no printed row for this crop';

/** For crops the FAO tables do not list. */
export const usualWater: Pick<CropRow, 'cropCoefficients' | 'depletionShare'> = {
  cropCoefficients: {
    start: single(0.5, factor, 'Assumed', missing, 'assumed'),
    middle: single(1.05, factor, 'Assumed', missing, 'assumed'),
    end: single(0.8, factor, 'Assumed', missing, 'assumed'),
  },
  depletionShare: single(0.45, 'share of available water', 'Assumed', missing, 'assumed'),
};

/** Shares of the season from the printed days of the four stages. */
export const stages = (
  printed: readonly [number, number, number, number],
  where: string,
): Pick<CropRow, 'stageShares' | 'stageSharesSource'> => {
  const total = printed[0] + printed[1] + printed[2] + printed[3];
  return {
    stageShares: [printed[0] / total, printed[1] / total, printed[2] / total, printed[3] / total],
    stageSharesSource: single(
      total,
      'days',
      'Allen1998',
      `table 11, ${where}: ${printed.join(', ')}`,
      'derived',
    ),
  };
};

/** Assumed shares where no days are printed; the missing source says so. */
export const usualStages: Pick<CropRow, 'stageShares' | 'stageSharesSource'> = {
  stageShares: [0.2, 0.3, 0.3, 0.2],
  stageSharesSource: null,
};
