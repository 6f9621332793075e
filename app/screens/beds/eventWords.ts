import type { GardenEvent, Quantity } from '../../document/schema';
import { percent } from '../../words/chartFormat';
import { twoFigures } from '../../words/figures';
import { lookLine } from '../../words/lookWords';
import type { Shown } from '../shown';
import { labMineralWords } from '../../words/mineralWords';

export const eventKinds = [
  'water',
  'rain gauge',
  'harvest',
  'soil test',
  'rake off',
  'dig cover in',
  'look and dig',
] as const satisfies readonly GardenEvent['kind'][];

interface EventWords {
  readonly button: string;
  readonly name: string;
  readonly line: (event: GardenEvent, shown: Shown) => string;
}

const only =
  <Kind extends GardenEvent['kind']>(
    kind: Kind,
    words: (event: Extract<GardenEvent, { kind: Kind }>, shown: Shown) => string,
  ) =>
  (event: GardenEvent, shown: Shown): string =>
    event.kind === kind ? words(event as Extract<GardenEvent, { kind: Kind }>, shown) : '';

/** ", put on the heap: about 17 kg"; a weight is what it is written down by. */
const heaped = (quantity: Quantity | undefined, shown: Shown): string =>
  quantity?.kind === 'mass'
    ? `, put on the heap: about ${shown.estimate(quantity.kilograms, shown.units.mass)} as it lay`
    : '';

/** What is done on a bed besides laying, as buttons, names and lines of the log. */
export const eventWords: Readonly<Record<GardenEvent['kind'], EventWords>> = {
  water: {
    button: 'Water',
    name: 'watering',
    line: only(
      'water',
      ({ millimetres }, shown) => `Watered ${shown.estimate(millimetres, shown.units.rain)}`,
    ),
  },
  'rain gauge': {
    button: 'Rain',
    name: 'rain gauge',
    line: only(
      'rain gauge',
      ({ millimetres }, shown) =>
        `Rain gauge, whole garden: ${shown.estimate(millimetres, shown.units.rain)}`,
    ),
  },
  harvest: {
    button: 'Harvest',
    name: 'harvest',
    line: only(
      'harvest',
      ({ kilograms }, shown) => `Picked ${shown.estimate(kilograms, shown.units.mass)}`,
    ),
  },
  'soil test': {
    button: 'Soil test',
    name: 'soil test',
    line: only('soil test', ({ nitrateMgPerKg, organicMatterPercent, minerals }) => {
      const parts = [
        nitrateMgPerKg === null ? '' : `nitrate-N ${twoFigures(nitrateMgPerKg)} mg/kg`,
        organicMatterPercent === null ? '' : `organic matter ${twoFigures(organicMatterPercent)} %`,
        ...labMineralWords(minerals),
      ].filter(Boolean);
      return `Soil test: ${parts.join(', ')}`;
    }),
  },
  'rake off': {
    button: 'Rake off',
    name: 'raking off',
    line: only(
      'rake off',
      ({ share, toHeap }, shown) =>
        `Raked off ${percent(share)} of the cover${heaped(toHeap?.amount.quantity, shown)}`,
    ),
  },
  'dig cover in': {
    button: 'Dig in',
    name: 'digging in',
    line: only('dig cover in', ({ share }) => `Dug in ${percent(share)} of the cover`),
  },
  'look and dig': {
    button: 'Look and dig',
    name: 'a look',
    line: only('look and dig', lookLine),
  },
  'nothing laid': {
    button: 'Nothing laid',
    name: 'nothing laid',
    line: only('nothing laid', () => 'Nothing laid, though the plan of that week had something'),
  },
};
