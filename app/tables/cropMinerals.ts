import { elementOfOxide } from '../core/units';
import { kilogramsPerPound, kilogramsPerShortTon } from '../core/conversions';
import type { CropId } from './crops';
import { row } from './row';
import type { Row } from './shapes';

/** What a pick carries off besides nitrogen, g of the element per kg fresh. */
export interface CropMineralRows {
  readonly phosphorus: Row;
  readonly potassium: Row;
}

const unit = 'g per kg fresh harvest';

/** Readings of one lot spread by so much (ours). */
const oneReading = { low: 0.6, high: 1.6 } as const;

/** lb of the oxide an acre and tons an acre, to g of the element per kg. */
const grams = (pounds: number, tons: number, element: keyof typeof elementOfOxide): number =>
  (pounds * kilogramsPerPound * 1000 * elementOfOxide[element]) / (tons * kilogramsPerShortTon);

const guide = (
  pounds: readonly [low: number, high: number] | number,
  tons: number,
  element: keyof typeof elementOfOxide,
  printed: string,
): Row => {
  const [low, high] = typeof pounds === 'number' ? [pounds, pounds] : pounds;
  const typical = grams(Math.sqrt(low * high), tons, element);
  const isOne = low === high;
  return row(
    isOne ? typical * oneReading.low : grams(low, tons, element),
    typical,
    isOne ? typical * oneReading.high : grams(high, tons, element),
    unit,
    'NewEnglandGuide2017',
    `table 4, ${printed}; the element of the oxide${isOne ? '; range ours' : ''}`,
    'derived',
    { drawnPer: 'crop' },
  );
};

const fromGuide = (
  name: string,
  tons: number,
  phosphate: readonly [number, number] | number,
  potash: readonly [number, number] | number,
): CropMineralRows => ({
  phosphorus: guide(phosphate, tons, 'phosphorus', name),
  potassium: guide(potash, tons, 'potassium', name),
});

type Three = readonly [low: number, typical: number, high: number];

const hegde = (phosphorus: Three, potassium: Three): CropMineralRows => {
  const place = 'abstract: taken up by the whole plant times the share that is in the fruit';
  const one = (values: Three): Row =>
    row(...values, unit, 'Hegde1997', place, 'derived', { drawnPer: 'crop' });
  return { phosphorus: one(phosphorus), potassium: one(potassium) };
};

const read: Partial<Record<CropId, CropMineralRows>> = {
  cabbage: fromGuide('cabbage, 20 tons', 20, 30, 130),
  broccoli: fromGuide('broccoli heads, 5 tons', 5, 2, 45),
  carrot: fromGuide('carrot roots, 25 tons', 25, 20, 200),
  cauliflower: fromGuide('cauliflower, 6 tons', 6, 18, 43),
  celery: fromGuide('celery tops, 50 tons; phosphate with the roots', 50, 80, 380),
  cucumber: fromGuide('cucumbers, 24 tons', 24, [33, 72], [100, 400]),
  kale: fromGuide('kale, 10 tons', 10, 30, 110),
  lettuce_head: fromGuide('lettuce, 15 tons', 15, 35, 150),
  lettuce_leaf: fromGuide('lettuce, 15 tons', 15, 35, 150),
  melon: fromGuide('muskmelon fruit, 11 tons', 11, 17, 120),
  onion: fromGuide('onion bulbs, 20 tons', 20, 20, 110),
  tomato: hegde([0.1, 0.14, 0.18], [1.65, 2, 2.45]),
  eggplant: hegde([0.1, 0.14, 0.18], [1.25, 1.7, 2.1]),
  pepper: hegde([0.4, 0.5, 0.6], [2.75, 3.4, 4.2]),
};

const ofOthers = 'between the crops that were read';

/** For crops whose own numbers were not at hand. */
export const otherCropMinerals: CropMineralRows = {
  phosphorus: row(0.09, 0.33, 0.8, unit, 'Assumed', ofOthers, 'assumed', { drawnPer: 'crop' }),
  potassium: row(1.3, 3, 6, unit, 'Assumed', ofOthers, 'assumed', { drawnPer: 'crop' }),
};

/** Of green tops that are taken away: their dry weight is told from the nitrogen that goes with them. */
export const greenTopsNitrogen = row(
  1.5,
  2.5,
  3.5,
  '% of dry matter',
  'Assumed',
  'between the spent vines and the green weeds of the materials',
  'assumed',
);

/** Those that were read, for the walk over every cell. */
export const cropMineralRows = read;

/** What a kilogram picked of a crop of the tables carries off. */
export const cropMineralsOf = (tableId: string): CropMineralRows =>
  read[tableId as CropId] ?? otherCropMinerals;
