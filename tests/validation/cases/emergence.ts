import { emergenceRate } from '../../../app/core/crop/emergence';
import { emergenceSpread, trialsOf, type EmergenceName } from '../../../app/tables/emergence';
import type { Cases, Ours } from './shape';

/** Days at one warmth, by the trials at all others. */
const leftOut =
  (name: EmergenceName, celsius: number): Ours =>
  (values) => {
    const others = trialsOf(name).filter((trial) => trial.celsius !== celsius);
    return values.of(`emergence of ${name}`, emergenceSpread) / emergenceRate(others, celsius);
  };

/** Days at one warmth, by the trials of a relative, or by others' of the same. */
const asRelative =
  (name: EmergenceName, celsius: number): Ours =>
  (values) =>
    values.of(`emergence as ${name}`, emergenceSpread) / emergenceRate(trialsOf(name), celsius);

/** Days from sowing until it is up. */
export const emergenceCases: Cases = {
  'GE-asparagus': leftOut('asparagus', 20),
  'GE-snap-bean': leftOut('snap bean', 20),
  'GE-beet': leftOut('beet', 20),
  'GE-cabbage': leftOut('cabbage', 20),
  'GE-carrot': leftOut('carrot', 20),
  'GE-cauliflower': leftOut('cauliflower', 20),
  'GE-celery': leftOut('celery', 15),
  'GE-cucumber': leftOut('cucumber', 20),
  'GE-eggplant': leftOut('eggplant', 25),
  'GE-lettuce': leftOut('lettuce', 20),
  'GE-melon': leftOut('melon', 25),
  'GE-okra': leftOut('okra', 20),
  'GE-onion': leftOut('onion', 20),
  'GE-parsley': leftOut('parsley', 20),
  'GE-parsnip': leftOut('parsnip', 20),
  'GE-pea': leftOut('pea', 20),
  'GE-pepper': leftOut('pepper', 20),
  'GE-radish': leftOut('radish', 20),
  'GE-spinach': leftOut('spinach', 20),
  'GE-sweet-corn': leftOut('sweet corn', 20),
  'GE-tomato': leftOut('tomato', 20),
  'GE-turnip': leftOut('turnip', 20),
  'GE-watermelon': leftOut('watermelon', 25),
  'GE-broccoli-10': asRelative('cabbage', 10),
  'GE-broccoli-25': asRelative('cabbage', 25),
  'GE-chard-10': asRelative('beet', 10),
  'GE-chard-25': asRelative('beet', 25),
  'GE-broad-bean-15': asRelative('pea', 15),
  'GE-squash-20': asRelative('squash', 20),
  'GE-squash-25': asRelative('squash', 25),
};
