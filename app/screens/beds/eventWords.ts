import type { GardenEvent } from '../../document/schema';
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
      ({ share, toHeap }) =>
        `Raked off ${percent(share)} of the cover${toHeap ? `, ${toHeap.amount.text} of it put on the heap` : ''}`,
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
