import { dayOf, textFromDay } from '../../../app/core/days';
import type {
  Application,
  Garden,
  Mowing,
  Planting,
  WeatherRow,
} from '../../../app/document/schema';
import { crops } from '../../../app/tables/crops';
import { application, bed, emptyGarden, newYorkDays, planting, typed } from './parts';

const yearEnd = '2013-12-31';
const wholeYear = (): WeatherRow[] => newYorkDays('2013-01-01', yearEnd);
const bedId = 'bed-1';
const areaM2 = 6;
const planted = '2013-05-18';

interface Layer {
  readonly date: string;
  readonly millimetres: number;
  readonly material: 'clippings' | 'straw';
  readonly placement?: Application['placement'];
}

interface Check {
  readonly name: string;
  readonly days: WeatherRow[];
  readonly today?: string;
  readonly plantings?: readonly Planting[];
  readonly layers?: readonly Layer[];
}

const clippingsFor = ({ date, millimetres }: Layer): Mowing => ({
  id: `mowing-${date}`,
  date,
  lawnId: 'lawn-1',
  amount: typed(`${String(millimetres * areaM2)} L`, {
    kind: 'volume',
    litres: millimetres * areaM2,
  }),
  wetness: 'dry',
  kind: null,
  rest: { to: 'lawn' },
});

const laid = (layer: Layer): Application =>
  application({
    id: `layer-${layer.date}-${layer.material}`,
    date: layer.date,
    bedId,
    from:
      layer.material === 'straw'
        ? { source: 'stock', stockId: 'stock-1' }
        : { source: 'mowing', mowingId: `mowing-${layer.date}` },
    amount: typed(`${String(layer.millimetres)} mm`, {
      kind: 'depth',
      millimetres: layer.millimetres,
    }),
    condition: layer.material === 'straw' ? 'crisp' : 'just cut',
    placement: layer.placement ?? 'laid',
  });

/** One bed of loam with 3 % organic matter and the weather of New York, for one claim. */
const garden = ({ name, days, today = yearEnd, plantings = [], layers = [] }: Check): Garden => ({
  ...emptyGarden({ name, today }, { days }),
  lawns: [
    {
      id: 'lawn-1',
      name: 'Lawn',
      areaM2: 300,
      grass: 'cool',
      kind: 'ordinary',
      creepingGrass: false,
      seedHeadsSeen: null,
      fouledByPets: false,
      treatment: { answer: 'nothing' },
    },
  ],
  stock: [
    {
      id: 'stock-1',
      name: 'Wheat straw',
      materialId: 'straw-wheat',
      role: 'store',
      amount: typed('50 kg', { kind: 'mass', kilograms: 50 }),
      date: '2013-01-01',
      treatment: { answer: 'nothing' },
    },
  ],
  beds: [bed({ id: bedId, name: 'Bed', areaM2, texture: 'loam' })],
  plantings: [...plantings],
  mowings: layers.filter(({ material }) => material === 'clippings').map(clippingsFor),
  applications: layers.map(laid),
});

const tomatoes = (): Planting =>
  planting({ id: 'planting-1', bedId, cropId: 'tomato', started: planted, how: 'planted' });

/** Climbing beans at the good yield of the table, as the claims about them are made. */
const beans = (): Planting =>
  planting({
    id: 'planting-1',
    bedId,
    cropId: 'snap_bean_pole',
    started: '2013-05-20',
    how: 'sown',
    wanted: { kilogramsPerM2: crops.snap_bean_pole.goodYield.typical },
  });

const sweetPotatoes = (): Planting =>
  planting({
    id: 'planting-1',
    bedId,
    cropId: 'sweet_potato',
    started: '2013-06-01',
    how: 'planted',
  });

const weekly = (first: string, count: number, millimetres: number): Layer[] =>
  Array.from({ length: count }, (_, week) => ({
    date: textFromDay(dayOf(first) + 7 * week),
    millimetres,
    material: 'clippings',
  }));

const straw = (placement: Application['placement']): Layer => ({
  date: planted,
  millimetres: 100,
  material: 'straw',
  placement,
});

const beansAMonthOld = '2013-06-14';
const stormDay = '2013-07-18';
const afterStorm = '2013-07-21';

const withStorm = (days: readonly WeatherRow[], millimetres: number): WeatherRow[] =>
  days.map(([date, lowest, highest, rain]) => [
    date,
    lowest,
    highest,
    date === stormDay ? millimetres : rain,
  ]);

const overFed = (name: string, stormMillimetres: number): Garden =>
  garden({
    name,
    today: afterStorm,
    days: withStorm(newYorkDays('2013-01-01', afterStorm), stormMillimetres),
    plantings: [sweetPotatoes()],
    layers: weekly('2013-04-27', 10, 7.5),
  });

/** Gardens for `check:behaviour`, by file name without its ending. */
export const checkGardens = (): Readonly<Record<string, Garden>> => ({
  'straw-laid': garden({
    name: 'Straw, 10 cm, laid on a tomato bed on planting day',
    days: wholeYear(),
    plantings: [tomatoes()],
    layers: [straw('laid')],
  }),
  'straw-dug': garden({
    name: 'Straw, 10 cm, dug in before tomatoes on planting day',
    days: wholeYear(),
    plantings: [tomatoes()],
    layers: [straw('dug')],
  }),
  'beans-bare': garden({
    name: 'Climbing beans, bare ground',
    days: wholeYear(),
    plantings: [beans()],
  }),
  'beans-one-layer': garden({
    name: 'Climbing beans, one thin layer at 25 days',
    days: wholeYear(),
    plantings: [beans()],
    layers: weekly(beansAMonthOld, 1, 6),
  }),
  'beans-weekly': garden({
    name: 'Climbing beans, 25 mm every week',
    days: wholeYear(),
    plantings: [beans()],
    layers: weekly(beansAMonthOld, 14, 25),
  }),
  dry: garden({
    name: 'No rain and no watering',
    days: wholeYear().map(([date, lowest, highest]) => [date, lowest, highest, 0]),
    plantings: [tomatoes()],
    layers: weekly('2013-06-01', 6, 6),
  }),
  frozen: garden({
    name: 'Air at -5 deg C all year',
    days: wholeYear().map(([date, , , rain]) => [date, -5, -5, rain]),
    layers: [
      ...weekly('2013-06-01', 3, 6),
      { date: '2013-06-02', millimetres: 6, material: 'clippings', placement: 'dug' },
    ],
  }),
  bare: garden({ name: 'Bare bed', days: wholeYear() }),
  rain: overFed('Over-fed, then 100 mm of rain', 100),
  'rain-twin': overFed('Over-fed, without the rain', 0),
});
