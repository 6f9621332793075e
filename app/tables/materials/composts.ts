import type { MaterialRow } from '../shapes';
import { carbonToNitrogen, density, mineral, moisture, nitrogen, settled, slow } from './cells';

/** What has rotted already: most of its nitrogen is slow. */
export const composts = {
  'compost-garden': {
    id: 'compost-garden',
    name: 'Own garden compost',
    materialClass: 'slow',
    isGreens: false,
    isBrowns: false,
    nitrogenPercent: nitrogen(1, 1.5, 3.5, 'Solomon', 'mixed', 'nitrogen of dry matter'),
    carbonToNitrogen: carbonToNitrogen(10, 15, 25, 'Solomon', 'mixed', 'C:N'),
    moisturePercent: moisture(30, 45, 60, 'Sundermeier2016', 'mixed', 'water'),
    densityKgPerM3: density(500, 650, 900, 'AgnewLeonard2003', 'read', 'bulk density'),
    settledDensityKgPerM3: settled(250, 350, 450),
    mineralShare: mineral(0.01, 0.03, 0.08),
    slowShare: slow(
      0.01,
      0.05,
      0.15,
      'HartzManures2000',
      'mixed',
      '2 % in 168 days; field crops took more over years',
    ),
    mayCarryWeedkiller: false,
    note: 'Two analyses lie far apart (1.4 % N, C:N 25 and 3.5 %, 10): a test of your own is worth having.',
  },
  'leaf-mould': {
    id: 'leaf-mould',
    name: 'Leaf mould',
    materialClass: 'slow',
    isGreens: false,
    isBrowns: false,
    nitrogenPercent: nitrogen(0.7, 1.1, 1.6, 'Recalled', 'memory', 'no analysis found'),
    carbonToNitrogen: carbonToNitrogen(20, 30, 45, 'Recalled', 'memory', 'no analysis found'),
    moisturePercent: moisture(40, 55, 65, 'Recalled', 'memory', 'no analysis found'),
    densityKgPerM3: density(250, 400, 550, 'Recalled', 'memory', 'no analysis found'),
    settledDensityKgPerM3: settled(120, 180, 250),
    mineralShare: mineral(0, 0.01, 0.03),
    slowShare: slow(0, 0.02, 0.05, 'Recalled', 'memory', 'between leaves and compost'),
    mayCarryWeedkiller: false,
  },
} as const satisfies Record<string, MaterialRow>;
