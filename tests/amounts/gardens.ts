import type { ReadingContext } from '../../app/amounts/amount';
import { dayOf } from '../../app/core/days';

/** A garden's own words for the reader: bag first, so it is the usual container. */
export const metricGarden: ReadingContext = {
  units: 'metric',
  containers: [
    { id: 'c-bag', name: 'bag', plural: 'bags', litres: 45 },
    { id: 'c-bucket', name: 'bucket', plural: 'buckets', litres: 10 },
    { id: 'c-barrow', name: 'barrow', plural: 'barrows', litres: 85 },
    { id: 'c-can', name: 'can', plural: 'cans', litres: 9 },
    { id: 'c-own', name: "Ann's dry tub", plural: "Ann's dry tubs", litres: 30 },
  ],
  lawns: [
    { id: 'l-back', name: 'Back', areaM2: 220 },
    { id: 'l-front', name: 'Front lawn', areaM2: 90 },
  ],
  lawnId: null,
  places: [
    { id: 'b-wall', names: ['South wall', 'tomatoes'] },
    { id: 'b-far', names: ['Far', 'Far bed', 'sweet corn'] },
  ],
  today: dayOf('2013-06-15'),
};

export const usGarden: ReadingContext = { ...metricGarden, units: 'us' };
export const without = (units: ReadingContext['units']): ReadingContext => ({
  units,
  containers: [],
});
