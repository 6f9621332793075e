import weatherText from '../../../node_modules/vega-datasets/data/weather.csv?raw';
import { seasonWeather } from '../../../app/core/season/ahead';
import type {
  BedEvent,
  BedSeason,
  CropInput,
  LayerInput,
  MonthlyNormals,
  PlantingInput,
} from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import type { NitrogenState } from '../../../app/core/season/verdict';
import { dayOf, monthOf } from '../../../app/core/days';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { cropOf } from '../../../app/tables/crops';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import type { CoverLayerShown } from '../../../app/charts/cover/data';
import type { SeasonChartData } from '../../../app/charts/season/data';
import { metricChartUnits } from '../../../app/words/chartUnits';

/*
 * Beds for looking at the drawings: New York's measured weather, invented gardening. States are
 * made up to show every mark; they are not the program's verdict.
 */
const record = weatherText
  .trim()
  .split('\n')
  .slice(1)
  .map((row) => row.split(','))
  .filter((row) => row[0] === 'New York')
  .map((row) => ({
    day: dayOf(row[1] ?? ''),
    rainMillimetres: Number(row[2]),
    maximumCelsius: Number(row[3]),
    minimumCelsius: Number(row[4]),
  }));

const monthly = (value: (days: typeof record) => number): number[] =>
  Array.from({ length: 12 }, (_unused, month) =>
    value(record.filter(({ day }) => monthOf(day) === month + 1)),
  );
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const normals: MonthlyNormals = {
  minimumCelsius: monthly((days) => mean(days.map((day) => day.minimumCelsius))),
  maximumCelsius: monthly((days) => mean(days.map((day) => day.maximumCelsius))),
  rainMillimetres: monthly((days) => days.reduce((sum, day) => sum + day.rainMillimetres, 0) / 4),
  wetDays: monthly((days) => days.filter((day) => day.rainMillimetres >= 1).length / 4),
};

const firstDay = dayOf('2013-01-01');
const lastDay = dayOf('2013-12-31');
const today = dayOf('2013-06-15');
const spread = typicalWeatherSpread(40.8);
const weather = seasonWeather(record, normals, firstDay, lastDay, today, 7, spread, false);

function crop(id: string, need: number): CropInput {
  const row = cropOf(id);
  if (!row) throw new Error(`No crop ${id}`);
  const usualDays = row.usualDays.typical;
  return {
    id,
    excessClass: row.excessClass,
    need,
    harvestNitrogen: need * 0.55,
    harvestGramsPerKilogram: row.removedPerKilogram.typical,
    rootShare: 0.15,
    curveMiddle: row.curveMiddle.typical,
    curveSteepness: row.curveSteepness.typical,
    baseCelsius: row.baseCelsius.typical,
    usualDays,
    firstHarvestDays: row.firstHarvestDays.typical,
    flowerDays: row.flowerDays?.typical ?? null,
    fullRootDepth: row.rootDepthCentimetres.typical * 10,
    cropCoefficientStart: row.cropCoefficients.start.typical,
    cropCoefficientMiddle: row.cropCoefficients.middle.typical,
    cropCoefficientEnd: row.cropCoefficients.end.typical,
    stageShares: row.stageShares,
    depletionShare: row.depletionShare.typical,
    residueCarbonToNitrogen: row.residueCarbonToNitrogen.typical,
    residueIsGreen: row.residueIsGreen,
    legume: row.legume && {
      usualShareFixed: row.legume.usualPercentFixed.typical / 100,
      highShareFixed: row.legume.highPercentFixed.typical / 100,
      nodulationDays: row.legume.nodulationDays.typical,
      leafyLimit: row.legume.leafyLimit.typical,
      poddingLimit: row.legume.poddingLimit.typical,
    },
    enoughNitrateLow: row.enoughNitrate.low,
    enoughNitrateHigh: row.enoughNitrate.high,
    warmSoilCelsius: row.warmSoilCelsius?.typical ?? null,
    eatenFromSoil: row.eatenFromSoil,
    seedFlyRisk: row.seedFlyRisk,
    frostTender: row.frostTender,
  };
}

function planting(input: {
  id: string;
  crop: string;
  need: number;
  start: string;
  pick: string;
  clear: string;
  sown: boolean;
  share?: number;
}): PlantingInput {
  const row = crop(input.crop, input.need);
  const startDay = dayOf(input.start);
  const clearingDay = dayOf(input.clear);
  let normalDegreeDays = 0;
  for (let day = startDay; day < clearingDay; day += 1) {
    const month = monthOf(day) - 1;
    const middle =
      ((normals.minimumCelsius[month] ?? 0) + (normals.maximumCelsius[month] ?? 0)) / 2;
    normalDegreeDays += Math.max(0, middle - row.baseCelsius);
  }
  return {
    id: input.id,
    crop: row,
    share: input.share ?? 1,
    startDay,
    sown: input.sown,
    firstHarvestDay: dayOf(input.pick),
    usualEndDay: clearingDay,
    clearingDay,
    cleared: false,
    topsFate: 'taken away',
    normalDegreeDays,
    nodulesSeen: null,
  };
}

interface Laid {
  readonly date: string;
  readonly what: 'Clippings' | 'Wheat straw' | 'Leaves' | 'Rye' | 'Garden compost';
  readonly dryKgPerM2: number;
  readonly gramsPerM2: number;
  readonly freshKgPerM2: number;
  readonly depth: number;
  readonly placement?: 'laid' | 'hoed' | 'dug';
}

const bag = (area: number, count: number, date: string): Laid => ({
  date,
  what: 'Clippings',
  dryKgPerM2: (2.26 * count) / area,
  gramsPerM2: (77 * count) / area,
  freshKgPerM2: (11.3 * count) / area,
  depth: (45 * count) / area,
});

const stuffOf = {
  Clippings: 'greens',
  Rye: 'greens',
  'Wheat straw': 'straw',
  Leaves: 'leaves',
  'Garden compost': 'compost',
} as const;

function layer(laid: Laid, index: number): LayerInput {
  const isGreens = laid.what === 'Clippings';
  const isCompost = laid.what === 'Garden compost';
  return {
    id: `layer-${index}`,
    day: dayOf(laid.date),
    materialId: laid.what,
    materialClass: isCompost ? 'slow' : isGreens ? 'green' : 'mature',
    isGreens,
    placement: laid.placement ?? 'laid',
    condition: 'just cut',
    freshKgPerM2: laid.freshKgPerM2,
    dryKgPerM2: laid.dryKgPerM2,
    nitrogen: laid.gramsPerM2,
    carbon: laid.dryKgPerM2 * (isCompost ? 250 : 440),
    laidDepth: laid.depth,
    settledDensityKgPerM3: isGreens ? 50 : isCompost ? 400 : 40,
    mineralShare: isCompost ? 0.03 : 0,
    slowShare: isCompost ? 0.2 : 0,
  };
}

export interface ExampleBed {
  readonly name: string;
  readonly areaM2: number;
  readonly season: SeasonChartData;
  readonly cover: readonly CoverLayerShown[];
  readonly coverState: 'bare' | 'thin' | 'good' | 'too deep';
}

function exampleBed(input: {
  name: string;
  areaM2: number;
  organicMatter: number;
  plantings: readonly (PlantingInput & { readonly shownName: string })[];
  laid: readonly Laid[];
  states: readonly (readonly [string, NitrogenState])[];
  state: NitrogenState;
  coverState: ExampleBed['coverState'];
  events?: readonly BedEvent[];
  tests?: readonly { day: number; mgPerKg: number }[];
}): ExampleBed {
  const layers = input.laid.map(layer);
  const bed: BedSeason = {
    bedId: input.name,
    areaM2: input.areaM2,
    latitudeDegrees: 40.8,
    firstDay,
    lastDay,
    today,
    seasonStarts: [],
    weather,
    normals,
    soil: {
      fieldCapacity: 0.27,
      wiltingPoint: 0.12,
      bulkDensityKgPerL: 1.3,
      organicMatterPercent: input.organicMatter,
      startingMineralTop: null,
    },
    keptMoist: false,
    plantings: input.plantings,
    layers,
    events: input.events ?? [],
    coefficients: typicalCoefficients(),
  };
  const result = runSeason(bed);
  const first = input.plantings[0];
  return {
    name: input.name,
    areaM2: input.areaM2,
    coverState: input.coverState,
    season: {
      result,
      verdict: {
        state: input.state,
        turnsOn: input.state === 'short' ? dayOf('2013-07-04') : null,
      },
      history: input.states.map(([date, state]) => ({ day: dayOf(date), state })),
      cropBand: first
        ? {
            lowMgPerKg: first.crop.enoughNitrateLow,
            highMgPerKg: first.crop.enoughNitrateHigh,
          }
        : null,
      bulkDensityKgPerL: 1.3,
      tests: input.tests ?? [],
      plantings: input.plantings.map((one) => ({
        id: one.id,
        name: one.shownName,
        sown: one.sown,
        flowerDay: one.crop.flowerDays === null ? null : one.startDay + one.crop.flowerDays,
        firstHarvestDay: one.firstHarvestDay,
      })),
      layers: input.laid.map((laid, index) => ({
        id: `layer-${index}`,
        name: laid.what,
        day: dayOf(laid.date),
        laidDepth: laid.depth,
        stuff: stuffOf[laid.what],
        inSoil: laid.placement !== undefined && laid.placement !== 'laid',
      })),
      units: metricChartUnits,
    },
    cover: input.laid
      .map((laid, index) => ({ ...laid, id: `layer-${index}` }))
      .filter((laid) => laid.placement === undefined)
      .map((laid) => ({
        id: laid.id,
        name: laid.what,
        stuff: stuffOf[laid.what],
        day: dayOf(laid.date),
        laidDepth: laid.depth,
      })),
  };
}

const named = (shownName: string, value: PlantingInput) => ({ ...value, shownName });

export const exampleBeds = (): readonly ExampleBed[] => [
  exampleBed({
    name: 'Gate bed',
    areaM2: 6,
    organicMatter: 2.6,
    plantings: [
      named(
        'Sweet potato',
        planting({
          id: 'p1',
          crop: 'sweet_potato',
          need: 11,
          start: '2013-06-01',
          pick: '2013-10-01',
          clear: '2013-10-05',
          sown: false,
        }),
      ),
    ],
    laid: [
      bag(6, 1, '2013-04-20'),
      bag(6, 1, '2013-04-27'),
      bag(6, 1, '2013-05-04'),
      bag(6, 1.5, '2013-05-18'),
      bag(6, 1, '2013-05-25'),
      bag(6, 1, '2013-06-09'),
    ],
    states: [
      ['2013-03-30', 'nothing planted'],
      ['2013-06-01', 'enough for now'],
      ['2013-06-08', 'over-fed'],
    ],
    state: 'over-fed',
    coverState: 'good',
    tests: [{ day: dayOf('2013-05-28'), mgPerKg: 11 }],
  }),
  exampleBed({
    name: 'Far bed',
    areaM2: 9,
    organicMatter: 2.6,
    plantings: [
      named(
        'Sweet corn',
        planting({
          id: 'p1',
          crop: 'sweet_corn',
          need: 14.9,
          start: '2013-05-18',
          pick: '2013-08-05',
          clear: '2013-08-20',
          sown: true,
        }),
      ),
    ],
    laid: [
      {
        date: '2013-04-27',
        what: 'Rye',
        dryKgPerM2: 0.31,
        gramsPerM2: 4.5,
        freshKgPerM2: 1.5,
        depth: 30,
        placement: 'dug',
      },
    ],
    states: [
      ['2013-03-30', 'nothing planted'],
      ['2013-05-18', 'about right'],
      ['2013-06-08', 'short'],
    ],
    state: 'short',
    coverState: 'bare',
    tests: [{ day: dayOf('2013-05-28'), mgPerKg: 1 }],
  }),
  exampleBed({
    name: 'Bean row',
    areaM2: 9,
    organicMatter: 3,
    plantings: [
      named(
        'Climbing beans',
        planting({
          id: 'p1',
          crop: 'snap_bean_pole',
          need: 11.9,
          start: '2013-05-11',
          pick: '2013-07-12',
          clear: '2013-09-20',
          sown: true,
        }),
      ),
      named(
        'Spinach',
        planting({
          id: 'p2',
          crop: 'spinach',
          need: 6,
          start: '2013-09-21',
          pick: '2013-10-25',
          clear: '2013-11-20',
          sown: true,
        }),
      ),
    ],
    laid: [
      {
        date: '2013-05-10',
        what: 'Garden compost',
        dryKgPerM2: 3,
        gramsPerM2: 45,
        freshKgPerM2: 6,
        depth: 11,
      },
      {
        date: '2013-06-01',
        what: 'Wheat straw',
        dryKgPerM2: 1.2,
        gramsPerM2: 7,
        freshKgPerM2: 1.4,
        depth: 40,
      },
      {
        date: '2013-06-02',
        what: 'Leaves',
        dryKgPerM2: 0.5,
        gramsPerM2: 4,
        freshKgPerM2: 0.9,
        depth: 18,
      },
      bag(4.5, 0.6, '2013-06-09'),
    ],
    states: [
      ['2013-03-30', 'nothing planted'],
      ['2013-05-11', 'about right'],
      ['2013-05-25', 'enough for now'],
      ['2013-06-08', 'about right'],
    ],
    state: 'about right',
    coverState: 'good',
    events: [
      { kind: 'water', day: dayOf('2013-05-15'), depth: 8 },
      { kind: 'water', day: dayOf('2013-05-20'), depth: 12 },
    ],
  }),
  exampleBed({
    name: 'Empty bed',
    areaM2: 4,
    organicMatter: 3,
    plantings: [],
    laid: [],
    states: [],
    state: 'nothing planted',
    coverState: 'bare',
  }),
];
