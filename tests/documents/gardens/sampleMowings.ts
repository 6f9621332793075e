import type { Application, Mowing, Stock, Wetness } from '../../../app/document/schema';
import { application, typed } from './parts';

export const bagId = 'container-bag';

const bags = (text: string, count: number) =>
  typed(text, { kind: 'containers', count, containerId: bagId });

const toHeap: Mowing['rest'] = { to: 'heap', stockId: 'stock-heap' };
const toLawn: Mowing['rest'] = { to: 'lawn' };

const mowing = (
  date: string,
  text: string,
  count: number,
  wetness: Wetness,
  rest: Mowing['rest'],
  note?: string,
): Mowing => ({
  id: `mowing-${date}`,
  date,
  lawnId: 'lawn-back',
  amount: bags(text, count),
  wetness,
  kind: null,
  rest,
  ...(note === undefined ? {} : { note }),
});

export const sampleMowings: readonly Mowing[] = [
  {
    ...mowing('2013-04-13', '1 bag', 1, 'dry', toHeap, 'First mowing, winter rubbish in it.'),
    kind: 'lean',
  },
  mowing('2013-04-20', '1 1/2 bags', 1.5, 'damp', toHeap),
  mowing('2013-04-27', '2 bags', 2, 'dry', toHeap, 'One full bag weighed: 11.3 kg.'),
  mowing(
    '2013-05-04',
    '2 bags',
    2,
    'dry',
    toHeap,
    'Seed heads. Two bags of leaves on the heap with it.',
  ),
  mowing('2013-05-12', '1 1/2 bags', 1.5, 'soaked', toLawn, '69 mm of rain this week.'),
  mowing('2013-05-18', '2 1/2 bags', 2.5, 'dry', toHeap),
  mowing('2013-05-25', '2 1/2 bags', 2.5, 'damp', toHeap),
  mowing('2013-06-01', '2 bags', 2, 'dry', toHeap),
  mowing('2013-06-09', '2 1/2 bags', 2.5, 'soaked', toLawn, 'After the storm.'),
  mowing('2013-06-15', '3 bags', 3, 'damp', { to: 'undecided' }, 'Long.'),
];

const layer = (
  date: string,
  bedName: string,
  text: string,
  count: number,
  part: Partial<Application> = {},
): Application =>
  application({
    id: `layer-${date}-${bedName}`,
    date,
    bedId: `bed-${bedName}`,
    from: { source: 'mowing', mowingId: `mowing-${date}` },
    amount: bags(text, count),
    wetness: sampleMowings.find((item) => item.date === date)?.wetness ?? 'dry',
    ...part,
  });

const leaves = (bedName: string): Application =>
  application({
    id: `leaves-${bedName}`,
    date: '2012-11-10',
    bedId: `bed-${bedName}`,
    from: { source: 'elsewhere', materialId: 'leaves-mixed-whole' },
    amount: typed('4 bags of 45 L', { kind: 'volume', litres: 180 }),
    condition: 'crisp',
  });

export const sampleApplications: readonly Application[] = [
  leaves('kitchen'),
  leaves('wall'),
  leaves('squash'),
  layer('2013-04-20', 'gate', '1 bag', 1),
  layer('2013-04-27', 'gate', '1 bag', 1),
  layer('2013-04-27', 'kitchen', '1/2 bag', 0.5),
  layer('2013-05-04', 'gate', '1 bag', 1),
  application({
    id: 'compost-wall',
    date: '2013-05-10',
    bedId: 'bed-wall',
    from: { source: 'stock', stockId: 'stock-compost' },
    amount: typed('60 L', { kind: 'volume', litres: 60 }),
  }),
  layer('2013-05-12', 'squash', '1/2 bag', 0.5),
  layer('2013-05-12', 'wall', '1/2 bag', 0.5),
  layer('2013-05-18', 'gate', '1 1/2 bags', 1.5),
  layer('2013-05-18', 'kitchen', '1/2 bag', 0.5, { condition: 'limp' }),
  layer('2013-05-25', 'gate', '1 bag', 1),
  layer('2013-05-25', 'wall', '1/2 bag', 0.5),
  layer('2013-06-01', 'wall', '1/2 bag', 0.5),
  layer('2013-06-01', 'border', '1/2 bag', 0.5),
  application({
    id: 'straw-squash',
    date: '2013-06-01',
    bedId: 'bed-squash',
    from: { source: 'stock', stockId: 'stock-straw' },
    amount: typed('1 bale, 18 kg', { kind: 'mass', kilograms: 18 }),
    condition: 'crisp',
  }),
  layer('2013-06-09', 'gate', '1 bag', 1),
  layer('2013-06-09', 'beans-grass', '0.6 bag', 0.6),
  layer('2013-06-09', 'wall', '0.4 bag', 0.4),
  layer('2013-06-09', 'border', '1/2 bag', 0.5),
  application({
    id: 'straw-beans',
    date: '2013-06-09',
    bedId: 'bed-beans-straw',
    from: { source: 'stock', stockId: 'stock-straw' },
    amount: typed('11 kg', { kind: 'mass', kilograms: 11 }),
    condition: 'crisp',
  }),
];

const clean = { answer: 'nothing' } as const;

/** What was there on the day, so that what was laid since leaves what is there today. */
export const sampleStock: readonly Stock[] = [
  {
    id: 'stock-heap',
    name: 'Heap',
    materialId: 'compost-garden',
    role: 'heap',
    amount: typed('two thirds of 1 m3', { kind: 'volume', litres: 660 }),
    date: '2013-06-15',
    treatment: clean,
    note: 'Bin of 1 m3, warm.',
  },
  {
    id: 'stock-leaves',
    name: 'Chopped leaves',
    materialId: 'leaves-mixed-shredded',
    role: 'store',
    amount: typed('3 bags of 100 L', { kind: 'volume', litres: 300 }),
    date: '2013-05-05',
    treatment: clean,
    note: 'A bag weighs about 15 kg.',
  },
  {
    id: 'stock-straw',
    name: 'Wheat straw',
    materialId: 'straw-wheat',
    role: 'store',
    amount: typed('47 kg', { kind: 'mass', kilograms: 47 }),
    date: '2013-05-25',
    treatment: clean,
    note: 'Bales of 18 kg; the grower says nothing was sprayed.',
  },
  {
    id: 'stock-compost',
    name: 'Compost',
    materialId: 'compost-garden',
    role: 'store',
    amount: typed('120 L', { kind: 'volume', litres: 120 }),
    date: '2013-05-01',
    treatment: clean,
  },
];
